package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TubePart;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.desk.Wren;

/** The first steps of somebody who begins with two wheels. */
@Windowed
class TwoWheelsWalkTest extends Walk {

  @BeforeEach
  void open() throws Exception {
    openOn();
    hands.click("first-rider").write("man 1770 mm, 86 kg");
    hands.click("first-recline").write("40 deg");
    hands.click("first-wheels");
    hands.until("wheels", () -> hands.desk().shown().isPresent());
    hands.settle();
  }

  private String said() {
    return Hands.onFx(
        () -> String.join("\n", hands.desk().notices().stream().map(Notice::text).toList()));
  }

  private String label(String id) {
    return Hands.onFx(() -> hands.node(id, Label.class).getText());
  }

  private boolean asDrawn() {
    return hands.shown().standing().isEmpty();
  }

  @Test
  @Tag("long")
  void whoRidesIsKeptAndWhatIsLackingLeads() {
    assertThat(hands.layout().crew()).hasSize(1);
    assertThat(said()).contains("recline of the back is not used");
    Finding first = hands.shown().findings().get(0);
    assertThat(first.text()).startsWith("This machine cannot be ridden yet");
    List<String> tags =
        Hands.onFx(
            () ->
                hands.window().lookupAll(".tag").stream()
                    .filter(n -> n.isVisible())
                    .sorted((a, b) -> Double.compare(a.getLayoutX(), b.getLayoutX()))
                    .map(n -> ((Button) n).getText())
                    .toList());
    assertThat(tags.get(0)).startsWith("machine");

    // the list opens with nothing spread; what is told of the whole leaves the card as it is
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3).settle();
    assertThat(hands.desk().finding()).isEmpty();
    assertThat(focused()).isInstanceOf(ListView.class);
    ListView<?> list = (ListView<?>) focused();
    assertThat(Hands.onFx(() -> list.getSelectionModel().isEmpty())).isTrue();
    assertThat(asDrawn()).isTrue();
    for (int i = 0; i < 4; i++) {
      hands.press(KeyCode.DOWN).settle();
      assertThat(hands.desk().finding()).isEqualTo(hands.shown().findings().get(i).id());
      assertThat(asDrawn()).as(hands.desk().finding()).isTrue();
    }
    hands.press(KeyCode.ESCAPE);
    hands.click("bundle-fail").settle();
    assertThat(hands.desk().finding()).isEmpty();
    hands.press(KeyCode.DOWN).settle();
    assertThat(hands.shown().findings())
        .filteredOn(f -> f.verdict() == Verdict.FAIL)
        .first()
        .extracting(Finding::id)
        .isEqualTo(hands.desk().finding());
  }

  @Test
  void oneComesBackToTheMachineAsDrawn() {
    hands.click("stance-unladen").settle();
    assertThat(asDrawn()).isFalse();
    pick("pin:frontAxle");
    Label told = hands.node("told-as-drawn", Label.class);
    assertThat(Hands.onFx(told::isVisible)).isTrue();
    assertThat(label("told-as-drawn")).contains("as drawn").contains("unladen");
    hands.click("stance-as-drawn").settle();
    assertThat(asDrawn()).isTrue();
    assertThat(Hands.onFx(told::isVisible)).isFalse();
    pickOnCard("");
    hands.press(KeyCode.CLOSE_BRACKET).settle();
    assertThat(asDrawn()).isFalse();
    hands.press(KeyCode.OPEN_BRACKET).settle();
    assertThat(asDrawn()).isTrue();
  }

  @Test
  @Tag("long")
  void aRailIsDrawnPointByPointAndAGhostSaysWhatItCanHangOn() {
    pickOnCard("");
    hands.press(KeyCode.P);
    hands.until("the kinds", () -> hands.node("kind-words", Node.class).isFocused());
    hands.write("rai").press(KeyCode.ENTER);
    assertThat(hands.node("kind-slip", Node.class).isVisible()).isFalse();
    // an arrow picks another at once; Escape closes the list alone
    hands.press(KeyCode.K);
    hands.until("the kinds", () -> hands.node("kind-words", Node.class).isFocused());
    assertThat(((DrawHand) pen()).kind()).isEqualTo("rail");
    hands.press(KeyCode.DOWN);
    assertThat(((DrawHand) pen()).kind()).isNotEqualTo("rail");
    hands.press(KeyCode.UP).press(KeyCode.ESCAPE);
    assertThat(hands.node("kind-slip", Node.class).isVisible()).isFalse();
    assertThat(((DrawHand) pen()).kind()).isEqualTo("rail");
    hands.clickAt(hands.at(400, 500)).clickAt(hands.at(900, 500));
    Point2D axle = hands.pin("frontAxle");
    hands.clickAt(axle.add(2, 2));
    hands.press(KeyCode.ENTER).settle();
    TubePart rail = (TubePart) hands.layout().parts().get("rail");
    assertThat(rail.path()).containsExactly("railBegin", "railBend", "frontAxle");
    hands.press(KeyCode.SHORTCUT, KeyCode.Z).settle();
    assertThat(hands.layout().parts()).doesNotContainKey("rail");

    pickOnCard("");
    hands.press(KeyCode.A);
    hands.until("the drawer", () -> hands.find("gallery-slip").get().isVisible());
    hands.write("latch").press(KeyCode.ENTER);
    hands.moveTo(hands.at(800, 900));
    Hand hand = Hands.onFx(() -> hands.window().hands().hand());
    assertThat(((Placing) hand).words()).noneMatch(w -> w.contains("nothing here"));
    hands.press(KeyCode.H);
    assertThat(((Placing) hand).words()).anyMatch(w -> w.contains("nothing here to hang it on"));
    hands.moveTo(hands.pin("frontAxle"));
    assertThat(((Placing) hand).words()).noneMatch(w -> w.contains("nothing here"));
    hands.press(KeyCode.H);
    assertThat(((Placing) hand).words()).anyMatch(w -> w.startsWith("hangs on frontWheel"));

    // arrows are drawn to what is near as the pointer is, and go on from there
    PointMm spot = hands.shown().places().pin("frontAxle");
    hands.moveTo(hands.at(spot.x() - 100, spot.z() + 100));
    hands.press(KeyCode.SHIFT, KeyCode.RIGHT);
    assertThat(((Placing) hand).words()).noneMatch(w -> w.startsWith("axle of frontWheel"));
    hands.press(KeyCode.SHIFT, KeyCode.DOWN);
    assertThat(((Placing) hand).words()).anyMatch(w -> w.startsWith("axle of frontWheel"));
    hands.press(KeyCode.SHIFT, KeyCode.DOWN);
    assertThat(((Placing) hand).words()).noneMatch(w -> w.startsWith("axle of frontWheel"));
  }

  private Hand pen() {
    return Hands.onFx(() -> hands.window().hands().hand());
  }

  @Test
  @Tag("long")
  void aSecondPanIsForThePassengerAndSaysSo() {
    for (String pan : List.of("pan", "pan2")) {
      pickOnCard("");
      hands.press(KeyCode.A);
      hands.until("the drawer", () -> hands.find("gallery-slip").get().isVisible());
      hands.write("pan").press(KeyCode.ENTER);
      double x = pan.equals("pan") ? 700 : 200;
      hands.clickAt(hands.at(x, 500)).clickAt(hands.at(x + 330, 520)).settle();
      assertThat(hands.layout().parts()).containsKey(pan);
    }
    assertThat(seat("pan")).contains("rider");
    assertThat(seat("pan2")).contains("passenger");
    assertThat(said()).contains("pan for the seat passenger");
  }

  private Optional<String> seat(String part) {
    return hands.layout().parts().get(part).seatOf();
  }

  @Test
  @Tag("long")
  void whatIsTouchedButNotChangedIsNoStep() {
    Layout before = hands.layout();
    Slider mass = hands.node("mass", Slider.class);
    hands.slide(mass.lookup(".thumb"), 0, 0).settle();
    assertThat(hands.layout()).isSameAs(before);
    hands.slide(mass.lookup(".thumb"), 30, 0).settle();
    assertThat(hands.layout()).isNotSameAs(before);

    hands.click("save-as").settle();
    TextField path = hands.node("save-path", TextField.class);
    assertThat(Hands.onFx(path::getSelectedText)).isNotEmpty().isEqualTo(Hands.onFx(path::getText));
    hands.press(KeyCode.ESCAPE).settle();

    pick("tie:baseline");
    String good = Hands.onFx(() -> hands.node("field-baseline-is", TextField.class).getText());
    hands.typeInto("field-baseline-is", "nonsense").settle();
    assertThat(hands.desk().trouble()).isPresent();
    hands.typeInto("field-baseline-is", good).settle();
    assertThat(hands.desk().trouble()).isEmpty();
  }

  /** From the smallest to the tallest rider the fitted card makes room; one zoomed stays. */
  @Test
  @Tag("long")
  void nobodyIsCutOffByWhoComesNext() throws Exception {
    hands.abandon();
    Layout wren = Wren.layout();
    begin(
        Change.set(
            Change.set(wren, Formula.of(1250, Unit.MM), "crew", "Mara", "stature"),
            Formula.of(2150, Unit.MM),
            "crew",
            "Tor",
            "stature"));
    hands.click("seat-Mara").press(KeyCode.F).settle();
    ViewFrame small = Hands.onFx(() -> hands.window().board().frame());
    assertThat(cut(small)).isFalse();
    hands.click("seat-Tor").settle();
    ViewFrame tall = Hands.onFx(() -> hands.window().board().frame());
    assertThat(cut(small)).as("without room made for him").isTrue();
    assertThat(cut(tall)).isFalse();
    hands.click("seat-Mara").press(KeyCode.F).settle();
    hands.moveTo(hands.at(0, 0)).scroll(1);
    ViewFrame zoomed = Hands.onFx(() -> hands.window().board().frame());
    hands.click("seat-Tor").settle();
    assertThat(Hands.onFx(() -> hands.window().board().frame())).isEqualTo(zoomed);
  }

  private boolean cut(ViewFrame frame) {
    Board board = hands.window().board();
    Spots.Box card = new Spots.Box(0, 0, board.getWidth(), board.getHeight());
    return Fitting.cutsOff(hands.shown().drawing(), frame, card);
  }
}
