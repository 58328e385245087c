package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.desk.Wren;

/** A window that is closed or dies in the midst of something: the work is offered again. */
@Windowed
class CutShortWalkTest extends Walk {

  private Path home;
  private Layout unsaved;

  @BeforeEach
  void edit() throws Exception {
    home = folder.resolve("home");
    hands = Hands.at(home, List.of(Wren.layout()));
    hands.click("machine-wren");
    hands.typeInto("field-wheelbase", "1675 mm");
    unsaved = hands.layout();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2);
  }

  private boolean mayClose() {
    return Hands.onFx(() -> hands.window().mayClose(() -> {}));
  }

  private boolean isKept() {
    try (Stream<Path> files = Files.list(home)) {
      return files.anyMatch(f -> f.getFileName().toString().contains("wren"));
    } catch (IOException e) {
      return false;
    }
  }

  /** Nothing is saved and nothing is tidied up, as when a program is killed. */
  private void dieAndStartAgain() throws Exception {
    hands.until("the copy", this::isKept);
    hands.abandon();
    hands = Hands.at(home, List.of(Wren.layout()));
    hands.click("resume-wren");
    assertThat(hands.layout()).isEqualTo(unsaved);
    assertThat(Hands.onFx(() -> hands.desk().session().get().isChanged())).isTrue();
  }

  @Test
  void withThePaperSlipOpen() throws Exception {
    hands.press(KeyCode.SHORTCUT, KeyCode.M);
    assertThat(hands.node("paper-slip", Node.class).isVisible()).isTrue();
    // what is typed as the name of a paper opens nothing, letters elsewhere are not for the card
    Hands.onFx(
        () -> {
          hands.desk().choose("part:tank");
          hands.node("paper-size", Node.class).requestFocus();
          return null;
        });
    hands.press(KeyCode.A).press(KeyCode.DIGIT3);
    assertThat(hands.node("paper-slip", Node.class).isVisible()).isTrue();
    Hands.onFx(
        () -> {
          hands.node("paper-all", Node.class).requestFocus();
          return null;
        });
    hands.press(KeyCode.C).press(KeyCode.DELETE);
    assertThat(hands.layout()).as("the card lies hidden").isEqualTo(unsaved);
    assertThat(mayClose()).as("asked once").isFalse();
    assertThat(hands.desk().notices().get(0).text()).contains("offered the next time");
    assertThat(mayClose()).as("the work is kept").isTrue();
    dieAndStartAgain();
    assertThat(hands.find("paper-slip").filter(Node::isVisible)).isEmpty();
  }

  @Test
  @Tag("long")
  void whileAValueIsTyped() throws Exception {
    hands.click("field-boardTop").press(KeyCode.SHORTCUT, KeyCode.A).write("433 mm");
    assertThat(hands.layout()).as("not entered").isEqualTo(unsaved);
    assertThat(mayClose()).as("it is tried first").isFalse();
    hands.until(
        "asked", () -> hands.desk().notices().stream().anyMatch(n -> n.topic().equals("close")));
    unsaved = hands.layout();
    assertThat(unsaved.measures().get("boardTop").is().text()).isEqualTo("433 mm");
    assertThat(mayClose()).as("the work is kept").isTrue();
    dieAndStartAgain();
  }

  @Test
  @Tag("long")
  void whileAnOutlineIsDrawn() throws Exception {
    hands.press(KeyCode.P);
    assertThat(Hands.onFx(() -> hands.window().hands().hand())).isInstanceOf(DrawHand.class);
    for (Point2D corner : List.of(hands.at(900, 600), hands.at(1000, 600))) {
      hands.clickAt(corner);
    }
    assertThat(mayClose()).as("asked once").isFalse();
    assertThat(Hands.onFx(() -> hands.window().hands().hand()))
        .as("to be gone on with")
        .isInstanceOf(DrawHand.class);
    assertThat(mayClose()).isTrue();
    dieAndStartAgain();
    assertThat(hands.layout().parts()).as("two points are no part").isEqualTo(unsaved.parts());
  }
}
