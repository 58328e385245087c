package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TubePart;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Selection;
import org.longlow.sketcher.desk.Wren;

/** Parts are taken from the drawer and laid on the card; several are handled together. */
@Windowed
class AddingWalkTest extends Walk {

  @BeforeEach
  void open() throws Exception {
    // nobody sits on it: what is walked through here is not about people, and each step is quick
    Layout bare = Wren.layout();
    for (String group : List.of("crew", "limits", "wishes", "stances")) {
      bare = Change.set(bare, Map.of(), group);
    }
    openOn(bare);
    hands.click("machine-wren");
  }

  private <T> T fx(Callable<T> job) {
    return Hands.onFx(job);
  }

  private PointMm pin(String name) {
    return fx(() -> hands.desk().shown().get().study().placed().places().pin(name));
  }

  private Hands take(String words) {
    hands.press(KeyCode.A);
    hands.until("the drawer", () -> hands.find("gallery-slip").get().isVisible());
    hands.write(words);
    return hands.press(KeyCode.ENTER);
  }

  /** Returns what the ticket will have been of whenever it is laid out and seen. */
  private List<String> ticketTells() {
    List<String> told = new ArrayList<>();
    Node ticket = hands.node("bench-ticket", Node.class);
    fx(
        () -> {
          Label head = (Label) ticket.lookup(".ticket-head");
          hands
              .window()
              .getScene()
              .addPostLayoutPulseListener(
                  () -> {
                    if (ticket.isVisible()) {
                      told.add(head.getText());
                    }
                  });
          return null;
        });
    return told;
  }

  @Test
  @Tag("long")
  void threePartsAreLaidOnByPointerAndOneByKeys() {
    Layout before = hands.layout();
    Point2D open = hands.at(200, 1150);
    Point2D body = hands.at(400, 1100);
    Color bare = hands.pixel(body);

    take("silenc");
    Point2D spot = hands.at(203, 1098);
    hands.moveTo(spot);
    Color ghost = hands.pixel(body);
    assertThat(hands.layout()).as("a ghost is no part").isSameAs(before);
    hands.clickAt(spot);
    assertThat(hands.layout().parts()).containsKey("silencer");
    PointMm at = pin("silencerPin");
    assertThat(at.x() % 5).isZero();
    assertThat(at.z() % 5).isZero();
    assertThat(at.distance(new PointMm(203, 1098))).isLessThan(8);
    assertThat(hands.desk().options().chosen()).isEqualTo("part:silencer");
    hands.press(KeyCode.ESCAPE).moveTo(open);
    // it reaches higher than the machine was fitted in
    Color laid = hands.pixel(hands.at(400, 1100));
    assertThat(far(laid, bare)).as("its colour on the card").isGreaterThan(0.06);
    assertThat(far(ghost, bare)).as("its ghost's colour").isGreaterThan(0.05);

    hands.click("add").click("add-rail");
    hands.clickAt(hands.at(1402, 1001));
    assertThat(hands.layout().parts())
        .as("its other end has no place yet")
        .doesNotContainKey("rail");
    Point2D crank = hands.pin("crank");
    hands.clickAt(crank.add(3, -2));
    TubePart rail = (TubePart) hands.layout().parts().get("rail");
    assertThat(rail.path()).containsExactly("railRear", "crank");
    assertThat(pin("railRear").distance(new PointMm(1402, 1001))).isLessThan(8);

    take("tail lamp");
    List<String> told = ticketTells();
    hands.clickAt(hands.at(-200, 700));
    assertThat(hands.layout().parts()).containsKey("tailLamp");
    assertThat(told)
        .as("never of the whole machine")
        .isNotEmpty()
        .allMatch(t -> t.contains("tailLamp"));

    take("latch");
    PointMm middle =
        fx(
            () -> {
              Board board = hands.window().board();
              return board.inMachine(board.getWidth() / 2, board.getHeight() / 2);
            });
    hands.press(KeyCode.SHIFT, KeyCode.RIGHT).press(KeyCode.SHIFT, KeyCode.UP);
    hands.press(KeyCode.ENTER);
    // ten steps of the grid each way, from near the middle of the card
    assertThat(pin("latchPin").x() - middle.x()).isBetween(30.0, 120.0);
    assertThat(pin("latchPin").z() - middle.z()).isBetween(30.0, 120.0);
    assertThat(hands.layout().parts()).hasSize(before.parts().size() + 4);
    for (int i = 0; i < 4; i++) {
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    }
    assertThat(hands.layout()).isSameAs(before);
  }

  @Test
  void enterTakesWhatIsCalledJustSo() {
    take("plate");
    hands.clickAt(hands.at(-200, 700));
    assertThat(hands.desk().options().chosen()).as("not the plate lamp").startsWith("part:plate");
    String name = hands.desk().options().chosen().substring("part:".length());
    assertThat(((LampPart) hands.layout().parts().get(name)).type()).isEqualTo(LampPart.Kind.PLATE);
  }

  @Test
  void whatItHangsOnIsOfferedAndEscapeDropsIt() {
    take("box");
    hands.moveTo(hands.at(900, 400));
    hands.press(KeyCode.DIGIT1);
    hands.clickAt(hands.at(900, 400));
    assertThat(hands.layout().parts().get("box").base().touches()).containsExactly("engine");

    take("pin");
    hands.clickAt(hands.at(1300, 1000));
    hands.until("the pin", () -> hands.desk().shown().get().layout().pins().containsKey("pin"));
    assertThat(hands.desk().options().chosen()).isEqualTo("pin:pin");
    hands.press(KeyCode.ESCAPE);
    Layout now = hands.layout();
    take("radiator");
    assertThat(hands.find("bench-ticket").get().isVisible()).as("out of the way").isFalse();
    hands.moveTo(hands.at(1200, 900)).press(KeyCode.ESCAPE);
    assertThat(hands.find("bench-ticket").get().isVisible()).isTrue();
    hands.clickAt(hands.at(1200, 1100));
    assertThat(hands.layout()).isSameAs(now);

    hands.press(KeyCode.ESCAPE);
    take("tie distance");
    assertThat(hands.layout()).as("no pins are picked").isSameAs(now);
    assertThat(hands.desk().trouble().orElseThrow().refused().words()).contains("2 pins");
  }

  @Test
  @Tag("long")
  void severalArePickedMovedCopiedNailedAndTakenOutAsOneStepEach() {
    Layout before = hands.layout();
    hands.press(KeyCode.F).click("bench-away");
    hands.dragAt(hands.at(840, 870), hands.at(1650, 480), KeyCode.SHIFT);
    assertThat(hands.desk().selection())
        .as("what lies wholly in the rectangle")
        .isEqualTo(new Selection(List.of("part:tank", "part:headlamp")));
    hands.press(KeyCode.ESCAPE);
    assertThat(hands.desk().selection()).isEqualTo(Selection.NONE);

    hands.click("bench-away"); // the ticket of the whole machine is back
    hands.clickAt(hands.at(1060, 640));
    hands.clickAt(hands.at(1440, 760), KeyCode.SHIFT);
    assertThat(hands.desk().selection().parts()).containsExactly("tank", "headlamp");
    assertThat(hands.desk().options().chosen()).isEqualTo("part:headlamp");
    assertThat(hands.node("picked", Label.class).getText()).contains("tank", "headlamp");

    hands.press(KeyCode.C);
    assertThat(hands.layout().parts()).containsKeys("tank2", "headlamp2");
    assertThat(hands.desk().selection().parts()).containsExactly("tank2", "headlamp2");
    PointMm tank = pin("tankPin2");
    hands.press(KeyCode.K);
    assertThat(hands.layout().pins().get("tankPin2").nailed()).isFalse();
    hands.press(KeyCode.UP);
    assertThat(pin("tankPin2").z()).isCloseTo(tank.z() + 1, within(1e-6));
    assertThat(pin("lampPin2").z()).isCloseTo(pin("lampPin").z() + 61, within(1e-6));
    hands.click("bench-away");
    Point2D hold = hands.at(tank.x() + 60, tank.z());
    hands.dragAt(hold, hold.add(40, -30));
    assertThat(pin("tankPin2").x()).isGreaterThan(tank.x() + 20);
    assertThat(pin("lampPin2").z()).isGreaterThan(pin("lampPin").z() + 70);
    hands.press(KeyCode.DELETE);
    assertThat(hands.layout().parts()).doesNotContainKeys("tank2", "headlamp2");
    for (int i = 0; i < 5; i++) {
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    }
    assertThat(hands.layout()).isSameAs(before);
  }
}
