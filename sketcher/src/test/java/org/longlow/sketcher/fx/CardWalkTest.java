package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/**
 * The machine on the card keeps its place and is not hidden, in small windows and large letters.
 */
@Windowed
class CardWalkTest extends Walk {

  @BeforeEach
  void open() throws Exception {
    begin(Demos.layout("heron"));
  }

  /** Leaves the window so much of its 1280 x 800 px; the rest is padding. */
  private void size(double wide, double high) {
    Hands.onFx(
        () -> {
          hands.window().setPadding(new Insets(0, 1280 - wide, 800 - high, 0));
          return null;
        });
    hands.settle();
  }

  private void letters(int percent) {
    Hands.onFx(
        () -> {
          hands.window().textSize().use(percent);
          return null;
        });
    hands.settle();
  }

  private Bounds at(Node node) {
    return Hands.onFx(() -> node.localToScene(node.getLayoutBounds()));
  }

  @Test
  @Tag("long")
  void theCardKeepsItsPlaceWhateverCanBeTakenBack() {
    size(1024, 700);
    Bounds before = at(hands.window().board());
    String pin = hands.layout().pins().keySet().iterator().next();
    boolean nailed = hands.layout().pins().get(pin).nailed();
    for (boolean on : new boolean[] {!nailed, nailed}) {
      Hands.onFx(
          () -> {
            hands.desk().edit(Edits.nail(pin, on), new Target.OfPin(pin, true), "");
            return null;
          });
      hands.settle();
      assertThat(at(hands.window().board())).isEqualTo(before);
    }
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(Hands.onFx(() -> hands.desk().session().get().redoName())).isPresent();
    assertThat(at(hands.window().board())).isEqualTo(before);
    assertThat(Hands.onFx(() -> Shortened.in(hands.window()))).isEmpty();
  }

  @Test
  void theTicketHidesNobodysHeadAndStandsAsideForFindings() {
    for (int percent : new int[] {100, 200}) {
      letters(percent);
      for (String subject : List.of("", "part:pan", "pin:backTop")) {
        pick(subject);
        Bounds ticket = at(hands.node("bench-ticket", Node.class));
        for (Bounds head : heads()) {
          assertThat(ticket.intersects(head)).as(percent + " %, " + subject).isFalse();
        }
      }
    }
    pick("");
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3);
    assertThat(hands.node("bench-ticket", Node.class).isVisible()).isFalse();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT1);
    assertThat(hands.node("bench-ticket", Node.class).isVisible()).as("asked for").isTrue();
  }

  private List<Bounds> heads() {
    return Hands.onFx(
        () -> {
          List<Bounds> boxes = new ArrayList<>();
          Board board = hands.window().board();
          for (BoardState.Head head : hands.desk().shown().get().heads()) {
            double r = head.radiusMm() * board.frame().pxPerMm();
            double x = board.frame().screenX(head.at().x());
            double y = board.frame().screenY(head.at().z());
            boxes.add(board.localToScene(new BoundingBox(x - r, y - r, 2 * r, 2 * r)));
          }
          return boxes;
        });
  }

  @Test
  void aScreenThatIsTooSmallScrollsOverTheWholeWindow() {
    Hands.onFx(
        () -> {
          Region window = new Region();
          assertThat(LonglowWindow.framed(window, 1000, 620)).isSameAs(window);
          ScrollPane small = (ScrollPane) LonglowWindow.framed(window, 640, 480);
          assertThat(small.getContent()).isSameAs(window);
          assertThat(window.getMinWidth()).isEqualTo(1000);
          assertThat(window.getMinHeight()).isEqualTo(620);
          return null;
        });
  }

  @Test
  @Tag("long")
  void aStepIsNamedInWholeWordsOrNotAtAll() {
    String pin = hands.layout().pins().keySet().iterator().next();
    boolean nailed = hands.layout().pins().get(pin).nailed();
    Hands.onFx(
        () -> {
          hands.desk().edit(Edits.nail(pin, !nailed), new Target.OfPin(pin, true), "");
          return null;
        });
    hands.settle();
    String step = Hands.onFx(() -> hands.desk().session().get().undoName().orElseThrow());
    List<String> beginnings = new ArrayList<>(List.of("Take back", "Take back: " + step));
    for (int i = step.indexOf(' '); i > 0; i = step.indexOf(' ', i + 1)) {
      beginnings.add("Take back: " + step.substring(0, i) + "\u2026");
    }
    for (int percent : new int[] {100, 125, 200}) {
      letters(percent);
      for (double wide : new double[] {1024, 1280}) {
        size(wide, 800);
        StepButton undo = hands.node("undo", StepButton.class);
        assertThat(undo.getText()).as(percent + " %, " + wide).isIn(beginnings);
        assertThat(Tip.of(undo)).contains(step);
        assertThat(Hands.onFx(() -> Shortened.in(undo.getParent()))).isEmpty();
      }
    }
  }

  @Test
  @Tag("long")
  void theCushionBenchScrollsWhereItsLettersAreTooLarge() {
    letters(200);
    pick("part:pan");
    hands.press(KeyCode.B);
    Bounds slip = at(hands.node("cushion-ticket", Node.class));
    Bounds board = at(hands.window().board());
    assertThat(board.contains(slip)).isTrue();
    Node pane = hands.node("cushion-bench", Node.class);
    Node field = Hands.onFx(() -> Hands.called(pane, "field-pan-layer-1-thickness").get());
    Node scrolled = Hands.onFx(() -> scrolledRound(pane));
    assertThat(slip.contains(at(scrolled))).as("what scrolls is in its slip").isTrue();
    assertThat(at(pane).contains(at(field))).as("what is on it scrolls with it").isTrue();
    assertThat(at(pane).getHeight()).isGreaterThan(at(scrolled).getHeight());
  }

  private static Node scrolledRound(Node node) {
    Node at = node.getParent();
    while (!(at instanceof ScrollPane)) {
      at = at.getParent();
    }
    return at;
  }

  /** At the scale it is fitted to, every name is written inside of the rules. */
  @Test
  void namesAreNotCutByTheRules() {
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3);
    assertThat(outOfTheCard()).isEmpty();
    letters(200);
    assertThat(outOfTheCard()).isEmpty();
  }

  /** With large letters in a small window no figure is cut, nor under a tag. */
  @Test
  @Tag("long")
  void dimensionsAreSeenWholeWithLargeLetters() {
    letters(200);
    hands.press(KeyCode.D);
    List<String> cut =
        Hands.onFx(
            () -> {
              Board board = hands.window().board();
              double rule = Rule.widthPx(board.letters());
              double top = hands.node("tags", Region.class).getHeight();
              BoundingBox seen =
                  new BoundingBox(
                      rule, top, board.getWidth() - rule, board.getHeight() - rule - top);
              List<String> out = new ArrayList<>();
              for (Spots.Box word :
                  Fitting.words(
                      hands.desk().shown().get().drawing(), board.frame(), board.letters())) {
                if (!seen.contains(word.x(), word.y(), word.width(), word.height())) {
                  out.add(word.toString());
                }
              }
              return out;
            });
    assertThat(cut).isEmpty();
  }

  /** Whoever picks something sees its first fields, however many tools stand over them. */
  @Test
  @Tag("long")
  void theFirstFieldsOfATicketAreSeen() {
    for (int percent : new int[] {100, 150}) {
      letters(percent);
      for (String subject : List.of("", "part:pan", "pin:backTop", "part:engine", "tie:baseline")) {
        pick(subject);
        Node ticket = hands.node("bench-ticket", Node.class);
        Node field = Hands.onFx(() -> ticket.lookup(".bench-row"));
        assertThat(at(ticket).contains(at(field))).as(percent + " %, " + subject).isTrue();
      }
    }
  }

  private List<String> outOfTheCard() {
    return Hands.onFx(
        () -> {
          List<String> out = new ArrayList<>();
          Board board = hands.window().board();
          double letters = board.letters();
          hands.desk().shown().get().drawing().layers().stream()
              .filter(l -> l.id().equals("names"))
              .flatMap(l -> l.marks().stream())
              .filter(org.longlow.svg.drawing.Mark.Words.class::isInstance)
              .map(org.longlow.svg.drawing.Mark.Words.class::cast)
              .forEach(
                  w -> {
                    javafx.scene.text.Text text = new javafx.scene.text.Text(w.text());
                    double capital = w.heightMm() * ViewFrame.PX_PER_PAPER_MM;
                    text.setFont(new DrawingPainter(Look.DAY.palette(), letters).font(capital));
                    double wide = text.getLayoutBounds().getWidth();
                    PointMm at = new PointMm(board.frame().screenX(w.x()), 0);
                    double from = at.x() - w.anchor().along() * wide;
                    if (from < Rule.widthPx(letters) || from + wide > board.getWidth()) {
                      out.add(w.text() + " from " + from + " px");
                    }
                  });
          return out;
        });
  }

  @Test
  @Tag("long")
  void noBarIsLeftWhenLettersBecomeSmallAgain() {
    letters(200);
    size(700, 800);
    letters(100);
    size(1280, 800);
    List<Node> bars =
        Hands.onFx(
            () ->
                Hands.called(hands.window(), "crew").get().lookupAll(".scroll-bar").stream()
                    .filter(n -> n instanceof ScrollBar && n.isVisible())
                    .toList());
    assertThat(bars).isEmpty();
  }

  @Test
  @Tag("long")
  void figuresWithLargeLettersLeaveTheMachineToBeSeen() {
    double plain = Hands.onFx(() -> hands.window().board().frame().pxPerMm());
    hands.press(KeyCode.D);
    letters(200);
    double large = Hands.onFx(() -> hands.window().board().frame().pxPerMm());
    // rules, tags and the words of dimensions are all twice as large
    assertThat(large).isGreaterThan(0.27 * plain);
    letters(100);
    hands.press(KeyCode.D);
    assertThat(Hands.onFx(() -> hands.window().board().frame().pxPerMm()))
        .as("and it comes back")
        .isGreaterThan(0.9 * plain);
  }
}
