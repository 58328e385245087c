package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.demo.Demos;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.ChartWork;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.picture.BalanceChart;

/** The chart of balance under its finding: of the machine shown, and of no other. */
@Tag("long")
@Windowed
class ChartWalkLongTest extends Walk {

  private boolean drawn() {
    return Hands.onFx(
        () ->
            hands.find("balance-chart").filter(n -> n.isVisible()).isPresent()
                && hands.node("balance-chart", SheetView.class).getParent().isVisible());
  }

  private void read(String id) {
    Hands.onFx(
        () -> {
          hands.desk().chooseFinding(id);
          return null;
        });
    hands.settle();
  }

  @Test
  void itComesWithItsFindingAndFollowsTheMachine() throws Exception {
    begin(Demos.layout("dunlin"));
    assertThat(drawn()).isFalse();
    read("balance.balance");
    hands.until("the chart", this::drawn);
    String before = hands.node("balance-words", Label.class).getText();
    assertThat(before).contains("as it is: balances from", "rear wheel 3 kg heavier");

    Hands.onFx(
        () -> {
          Target mass = new Target.OfPart("frontWheel", List.of("mass"), "mass");
          hands.desk().edit(Edits.set(mass, "30 kg"), mass, "30 kg");
          return null;
        });
    hands.settle();
    read("balance.balance");
    BoardState shown = hands.shown();
    BalanceChart now = BalanceChart.of(shown.study()).orElseThrow();
    String expected = "as it is: balances from " + now.rows().get(0).get(1);
    assertThat(before).doesNotContain(expected);
    hands.until(
        "the chart of what is there now",
        () -> hands.node("balance-words", Label.class).getText().contains(expected));
    assertThat(drawn()).isTrue();
    // while it is moved there is none rather than that of before
    BoardState moving =
        new BoardState(
            shown.layout(),
            shown.study(),
            shown.options(),
            shown.standing(),
            shown.eye(),
            shown.drawing(),
            shown.movable(),
            shown.findings(),
            false,
            true);
    assertThat(Hands.<Boolean>onFx(() -> new ChartWork(hands.desk()).of(moving).isEmpty()))
        .isTrue();

    read("trail.unladen");
    assertThat(drawn()).isFalse();
  }
}
