package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.demo.Demos;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.desk.Wren;
import org.longlow.svg.drawing.Colour;

/** What was hidden, or could not be read, with large letters, by night or in inches. */
@Windowed
class SeenWhateverItsSizeWalkTest extends Walk {

  private void letters(int percent) {
    Hands.onFx(
        () -> {
          hands.window().textSize().use(percent);
          return null;
        });
    hands.settle();
  }

  private boolean isViewOffered(String word) {
    return Hands.onFx(() -> hands.node("aspect-" + word, Node.class).isVisible());
  }

  private boolean isTicketSeen() {
    return Hands.onFx(() -> hands.node("bench-ticket", Node.class).isVisible());
  }

  private Bounds at(String id) {
    Node node = hands.node(id, Node.class);
    return Hands.onFx(() -> node.localToScene(node.getLayoutBounds()));
  }

  /** The window is 1280 px wide: at 200 % a list and a ticket are as wide as the card. */
  @Test
  @Tag("long")
  void listAndTicketTogetherLeaveTheMachineToBeSeen() throws Exception {
    begin(Demos.layout("heron"));
    pick("part:engine");
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3);
    assertThat(isTicketSeen()).as("both have room").isTrue();
    hands.press(KeyCode.ESCAPE);
    letters(150);
    assertThat(isViewOffered("front")).as("the window has room for it").isTrue();
    letters(200);
    assertThat(isViewOffered("front")).isFalse();
    assertThat(isTicketSeen()).isTrue();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3);
    assertThat(isTicketSeen()).as("it stands aside").isFalse();
    pick("part:pan");
    assertThat(isTicketSeen()).isFalse();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT1);
    assertThat(isTicketSeen()).as("asked for").isTrue();
    pick("part:engine");
    assertThat(isTicketSeen()).as("asked for the pan only").isFalse();
    hands.press(KeyCode.ESCAPE);
    assertThat(isTicketSeen()).as("the list is closed").isTrue();
  }

  @Test
  @Tag("long")
  void kindsToDrawCanBeReadByNightAndLeaveWhatThePenSaysToBeRead() throws Exception {
    begin(Wren.layout());
    hands.click("night");
    letters(200);
    hands.moveTo(hands.at(700, 300)).press(KeyCode.P);
    hands.until("the kinds", () -> hands.node("kind-words", Node.class).isFocused());
    ListCell<?> picked =
        Hands.onFx(
            () ->
                hands.node("kind-list", Node.class).lookupAll(".list-cell").stream()
                    .map(c -> (ListCell<?>) c)
                    .filter(c -> c.isVisible() && c.isSelected())
                    .findFirst()
                    .get());
    Color words = (Color) Hands.onFx(picked::getTextFill);
    Color ground = (Color) Hands.onFx(() -> picked.getBackground().getFills().get(0).getFill());
    assertThat(Contrast.of(colour(words), colour(ground))).isGreaterThan(4.5);
    Board board = hands.window().board();
    double said = Hands.onFx(() -> board.localToScene(0, HandlesInk.sayingTopPx(board, 2)).getY());
    assertThat(at("kind-slip").getMaxY()).isLessThanOrEqualTo(said + 1);
  }

  @Test
  @Tag("long")
  void eachPartCanBePickedByAKeyAlone() throws Exception {
    begin(Wren.layout());
    List<String> parts = List.copyOf(hands.layout().parts().keySet());
    for (int i : new int[] {0, 1}) {
      hands.press(KeyCode.Q);
      assertThat(hands.desk().options().chosen()).isEqualTo("part:" + parts.get(i));
    }
    hands.press(KeyCode.SHIFT, KeyCode.Q);
    assertThat(hands.desk().options().chosen()).isEqualTo("part:" + parts.get(0));
  }

  @Test
  void noLineEndsWithinAFigure() {
    assertThat(Bits.unbroken("it is 8 5/8 in too far, 2 of 3 parts, 1/2 in"))
        .isEqualTo("it is 8\u00a05/8\u00a0in too far, 2 of 3 parts, 1/2 in");
  }

  private static Colour colour(Color c) {
    return new Colour(
        (int) Math.round(255 * c.getRed()),
        (int) Math.round(255 * c.getGreen()),
        (int) Math.round(255 * c.getBlue()));
  }

  /** One that needs care has a number only while it is picked. */
  @Test
  void theSignInTheListHasItsNumberWhileThatIsOnTheCard() throws Exception {
    begin(Demos.layout("curlew"));
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3);
    Finding first = hands.shown().findings().get(0);
    assertThat(first.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(numbers()).isZero();
    hands.press(KeyCode.ENTER);
    assertThat(hands.shown().isMarked(first.id())).isTrue();
    assertThat(numbers()).isEqualTo(1);
    Hands.onFx(
        () -> {
          hands.desk().chooseFinding("");
          return null;
        });
    hands.settle();
    assertThat(numbers()).isZero();
  }

  private long numbers() {
    return Hands.onFx(
        () ->
            hands.node("findings", Node.class).lookupAll(".sign-number").stream()
                .filter(n -> ((Label) n).isVisible())
                .count());
  }

  /** By hand: 390 mm are 15.354 in, which is 15 3/8 to the sixteenth; 48 kg are 105.8 lb. */
  @Test
  @Tag("long")
  void aFirstMachineIsSpokenOfInTheUnitsShownLast() throws Exception {
    begin(Wren.layout());
    hands.press(KeyCode.U);
    assertThat(hands.node("undo", StepButton.class).getText()).isEqualTo("Take back: show inches");
    Hands.onFx(
        () -> {
          hands.desk().leave();
          return null;
        });
    hands.settle();
    hands.click("first-make");
    hands.until("a machine", () -> hands.desk().shown().isPresent());
    hands.settle();
    assertThat(hands.layout().units()).isEqualTo(Units.IN);
    assertThat(Hands.onFx(() -> hands.desk().notices().stream().map(Notice::text).toList()))
        .anyMatch(t -> t.contains("15 3/8 x ") && t.contains("106 lb"))
        .noneMatch(t -> t.contains(" mm"));
    assertThat(hands.layout().notes()).noneMatch(n -> n.contains(" mm"));
  }
}
