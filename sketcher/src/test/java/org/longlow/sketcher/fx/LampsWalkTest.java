package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.start.Answers;
import org.longlow.constraints.start.FirstMachine;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.edit.LampSet;

/** Lamps that are lacking are added from the finding that says so, and from the drawer. */
@Windowed
class LampsWalkTest extends Walk {

  private List<Finding> lacking() {
    return hands.shown().study().findings().stream().filter(LampSet::isAsked).toList();
  }

  @Test
  void oneStepAddsThemAll() throws Exception {
    Answers us = new Answers.Builder().law(List.of("us")).answers();
    begin(((FirstMachine.Made) FirstMachine.wheels(us, Optional.empty(), Units.MM)).layout());
    Layout before = hands.layout();
    List<Finding> lacking = lacking();
    assertThat(lacking).hasSizeGreaterThanOrEqualTo(8);
    Hands.onFx(
        () -> {
          hands.desk().chooseFinding(lacking.get(0).id());
          return null;
        });
    hands.settle();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.M);
    assertThat(hands.node("mend-lamps", Button.class).isFocused()).isTrue();
    hands.press(KeyCode.ENTER);
    assertThat(lacking()).isEmpty();
    Layout lit = hands.layout();

    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout()).isSameAs(before);
    hands.press(KeyCode.ESCAPE).press(KeyCode.ESCAPE).press(KeyCode.A);
    Hands.onFx(
        () -> {
          hands.node("gallery-words", TextField.class).setText("reflectors rules");
          return null;
        });
    hands.press(KeyCode.ENTER);
    hands.settle();
    assertThat(hands.layout()).isEqualTo(lit);
  }
}
