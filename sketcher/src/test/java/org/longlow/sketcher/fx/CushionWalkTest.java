package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.picture.CushionStack;

/** The cushion bench by pointer and by keys alone, seen on the layout and on what it shows. */
@Windowed
class CushionWalkTest extends Walk {

  @BeforeEach
  void open() throws Exception {
    begin(Wren.layout());
    pickOnCard("part:pan");
  }

  private List<FoamSpec> layers() {
    return ((CushionPart) hands.layout().parts().get("pan")).layers();
  }

  private String thickness(int layer) {
    return layers().get(layer).thickness().text();
  }

  private CushionStack shown() {
    return CushionStack.of(hands.shown().study(), "pan").orElseThrow();
  }

  private double sink(String who) {
    return shown().loads().stream()
        .filter(l -> l.who().equals(who))
        .findFirst()
        .orElseThrow()
        .carried()
        .orElseThrow()
        .safeSinkMm();
  }

  private CushionPane pane() {
    return hands.node("cushion-bench", CushionPane.class);
  }

  private Point2D edge(int layer) {
    return Hands.onFx(() -> pane().drawing().localToScreen(pane().drawing().edge(layer)));
  }

  private boolean isOpen() {
    return Hands.onFx(() -> hands.find("cushion-bench").isPresent());
  }

  @Test
  @Tag("long")
  void anEdgeIsDraggedLiveAndIsOneStep() {
    hands.click("cushion-open");
    Layout before = hands.layout();
    double sink = sink("Tor");
    Verdict verdict = shown().loads().get(1).verdict();
    double strip = Hands.onFx(() -> pane().localToScene(0, 0).getX());
    assertThat(rightOfMachine()).as("the machine lies beside the bench").isLessThan(strip);

    // one millimetre of foam is so many pixels
    double px = edge(1).getY() - edge(0).getY();
    double perMm = px / 25;
    Point2D from = edge(1);
    hands.dragFrom(from, 0, -12 * perMm);
    assertThat(hands.shown().live()).isTrue();
    assertThat(hands.layout()).as("no step yet").isSameAs(before);
    assertThat(shown().layers().get(1).thicknessMm()).isCloseTo(52, within(0.5));
    assertThat(shown().layers().get(0).thicknessMm()).isEqualTo(25);
    assertThat(edge(1).distance(from.subtract(0, 12 * perMm)))
        .as("the edge follows the hand")
        .isLessThan(perMm);
    assertThat(sink("Tor")).as("more foam, more sink").isGreaterThan(sink + 1);

    hands.letGo();
    assertThat(thickness(1)).isEqualTo("52 mm");
    assertThat(hands.desk().session().get().undoName()).contains("make layer 2 of pan 52 mm thick");
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout()).isSameAs(before);
    assertThat(shown().loads().get(1).verdict()).isEqualTo(verdict);

    // Escape while dragging puts it back and closes nothing
    hands.dragFrom(edge(0), 0, -20);
    hands.press(KeyCode.ESCAPE);
    assertThat(isOpen()).isTrue();
    hands.letGo();
    assertThat(hands.layout()).isSameAs(before);
    assertThat(hands.shown().live()).isFalse();
    hands.press(KeyCode.ESCAPE);
    assertThat(isOpen()).isFalse();
  }

  private double rightOfMachine() {
    return Hands.onFx(
        () -> {
          Board board = hands.window().board();
          return board
              .localToScene(board.frame().screenX(board.machineBox().get().getMaxX()), 0)
              .getX();
        });
  }

  @Test
  void whatIsRefusedMarksItsFieldAndIsSeen() {
    hands.press(KeyCode.B);
    Hands.onFx(
        () -> {
          hands.window().textSize().use(200);
          return null;
        });
    hands.settle();
    hands.typeInto("cushion-bench field-pan-layer-1-support-factor", "1.05");
    Node field = Hands.onFx(() -> Hands.called(pane(), "field-pan-layer-1-support-factor").get());
    Node said = Hands.onFx(() -> Hands.called(pane(), "trouble-pan-layer-1-support-factor").get());
    Node other = Hands.onFx(() -> Hands.called(pane(), "field-pan-layer-1-density").get());
    assertThat(field.getPseudoClassStates()).extracting(Object::toString).contains("wrong");
    assertThat(other.getPseudoClassStates()).extracting(Object::toString).doesNotContain("wrong");
    Node slip = hands.node("cushion-ticket", Node.class);
    assertThat(
            Hands.onFx(
                () ->
                    slip.localToScene(slip.getLayoutBounds())
                        .contains(said.localToScene(said.getLayoutBounds()))))
        .as("with what is wrong of it")
        .isTrue();
  }

  @Test
  @Tag("long")
  void allOfItIsDoneByKeysAlone() {
    hands.press(KeyCode.B);
    assertThat(isOpen()).isTrue();
    Layout before = hands.layout();
    hands.press(KeyCode.RIGHT).press(KeyCode.SHIFT, KeyCode.RIGHT).press(KeyCode.ALT, KeyCode.LEFT);
    assertThat(thickness(0)).isEqualTo("35.9 mm");
    hands.press(KeyCode.PAGE_DOWN);
    assertThat(layers()).extracting(FoamSpec::name).containsExactly("firm", "soft");
    hands.press(KeyCode.INSERT);
    assertThat(layers()).extracting(FoamSpec::name).containsExactly("firm", "soft", "soft");
    hands.press(KeyCode.UP).press(KeyCode.DELETE);
    assertThat(layers()).extracting(FoamSpec::name).containsExactly("soft", "soft");

    // into the data sheet, and what is no such foam is told beside its field
    hands.press(KeyCode.ENTER).press(KeyCode.SHORTCUT, KeyCode.A).write("27 mm");
    hands.press(KeyCode.ENTER);
    assertThat(thickness(0)).isEqualTo("27 mm");
    hands.typeInto("cushion-bench field-pan-layer-1-support-factor", "1.05");
    assertThat(hands.desk().trouble().orElseThrow().refused().words()).contains("allowed");
    hands.press(KeyCode.ESCAPE);

    // a grade is shown while the keyboard is on it, and Enter takes it
    Hands.onFx(
        () -> {
          Hands.called(pane(), "cushion-grades").get().requestFocus();
          return null;
        });
    hands.settle();
    hands.press(KeyCode.HOME);
    assertThat(hands.shown().live()).as("only shown").isTrue();
    assertThat(shown().layers().get(0).name()).isEqualTo("very soft polyether");
    assertThat(layers().get(0).name()).isEqualTo("soft");
    hands.press(KeyCode.DOWN).press(KeyCode.ENTER);
    assertThat(layers().get(0).name()).isEqualTo("HR 45/25");
    assertThat(thickness(0)).as("as thick as it was").isEqualTo("27 mm");
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(layers().get(0).name()).as("one step").isEqualTo("soft");
    hands.press(KeyCode.SHORTCUT, KeyCode.Y);

    hands.click("cushion-closed");
    assertThat(layers().get(0).closedCell()).isTrue();
    hands.typeInto("cushion-bench field-pan-layer-1-wall-stress", "9 kPa");
    assertThat(layers().get(0).wallStress().orElseThrow().text()).isEqualTo("9 kPa");

    hands.press(KeyCode.ESCAPE).press(KeyCode.ESCAPE);
    assertThat(isOpen()).isFalse();
    for (int i = 0; i < 10; i++) {
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    }
    assertThat(hands.layout()).isSameAs(before);
  }

  @Test
  @Tag("long")
  void withNoCushionPickedItSaysWhatToPick() {
    pick("part:fork").press(KeyCode.B);
    assertThat(isOpen()).isFalse();
    assertThat(hands.desk().notices())
        .anyMatch(n -> n.text().contains("Pick a pan, back or head rest"));
    pick("part:back").press(KeyCode.B);
    assertThat(Hands.onFx(() -> pane().cushion())).isEqualTo("back");
    // another cushion picked comes onto the bench; what was taken out of the machine leaves it
    pick("part:pan");
    assertThat(Hands.onFx(() -> pane().cushion())).isEqualTo("pan");
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3);
    assertThat(isOpen()).as("the list of findings takes its place").isFalse();
  }
}
