package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Control;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javafx.util.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.desk.Habits;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;
import org.longlow.svg.drawing.Tone;

/** How the window behaves whatever is done in it, a walk for each manner. */
@Windowed
class MannersWalkTest extends Walk {

  /** As many as run round the smallest box, twice as wide as a line. */
  private static final int LEAST_RING_PX = 40;

  @BeforeEach
  void open() throws Exception {
    openOn(Wren.layout());
  }

  private static boolean isSeen(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (!n.isVisible()) {
        return false;
      }
    }
    return node != null;
  }

  @Test
  @Tag("long")
  void theKeyboardIsSeenFromTheStartPageOnAndNeverOnWhatIsHidden() {
    hands.settle();
    assertThat(Called.of(focused())).isEqualTo("open-path");
    for (int i = 0; i < 12; i++) {
      hands.press(KeyCode.TAB);
      Node now = focused();
      assertThat(isSeen(now)).as(String.valueOf(now)).isTrue();
      assertThat(Hands.onFx(() -> isWithin(now, "start"))).as(now.toString()).isTrue();
    }
    hands.click("machine-wren");
    assertThat(Called.of(focused())).isEqualTo("board");
    for (int i = 0; i < 24; i++) {
      hands.press(KeyCode.TAB);
      Node now = focused();
      assertThat(isSeen(now)).as(String.valueOf(now)).isTrue();
      assertThat(Hands.onFx(() -> isWithin(now, "start"))).as(now.toString()).isFalse();
    }
  }

  private static boolean isWithin(Node node, String id) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (id.equals(Called.of(n))) {
        return true;
      }
    }
    return false;
  }

  @Test
  void everyButtonTellsWhatItDoesAndByWhichKey() {
    List<String> silent = new ArrayList<>(Hands.onFx(() -> silent(hands.window())));
    hands.click("machine-wren");
    for (String subject : List.of("", "pin:panFront", "part:pan", "tie:backLong")) {
      pick(subject);
      silent.addAll(Hands.onFx(() -> silent(hands.window())));
    }
    assertThat(silent).isEmpty();
    Map<String, String> deeds =
        Map.of(
            "save", "save",
            "find", "find anything by words",
            "add", "add something",
            "make", "paper: templates, drawing, report, printer",
            "keys", "list of keys",
            "fit", "fit the machine into the drawing",
            "night", "night or day",
            "dimensions", "dimensions on and off",
            "undo", "take back",
            "trace", "trace from a photo or an SVG file");
    List<Deed> all = Hands.onFx(() -> hands.window().deeds());
    deeds.forEach(
        (id, words) -> {
          String key =
              all.stream().filter(d -> d.words().equals(words)).findFirst().orElseThrow().keys();
          assertThat(Tip.of(hands.node(id, Control.class))).as(id).endsWith("key " + key);
        });
    Control find = hands.node("find", Control.class);
    assertThat(find.getTooltip()).as("made for nobody").isNull();
    hands.moveTo(Hands.onFx(() -> Hands.middle(find)));
    assertThat(find.getTooltip().getText()).isEqualTo(Tip.of(find)).contains("Ctrl F");
    Hands.onFx(() -> Bits.told(find, "something else"));
    assertThat(find.getTooltip().getText()).isEqualTo("something else");
  }

  private static List<String> silent(Parent root) {
    List<String> found = new ArrayList<>();
    for (Node node : root.lookupAll("*")) {
      if (node instanceof ButtonBase button && isSeen(node) && Tip.of(button).isBlank()) {
        // what a control is made of is told by the control
        if (!(button.getParent() instanceof Control)) {
          found.add(Called.of(button) + " " + button.getText());
        }
      }
    }
    return found;
  }

  @Test
  @Tag("long")
  void everyControlShowsTheKeyboardByDayAndNight() {
    List<String> dark = new ArrayList<>(without());
    hands.click("machine-wren");
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3);
    for (String subject : List.of("pin:panFront", "part:pan")) {
      pick(subject);
      dark.addAll(without());
    }
    assertThat(dark).isEmpty();
  }

  /** Controls on which nothing of the ring's colour is seen once they have the keyboard. */
  private List<String> without() {
    return Hands.onFx(
        () -> {
          List<String> dark = new ArrayList<>();
          for (Look look : List.of(Look.NIGHT, Look.DAY)) {
            hands.window().use(look);
            for (Node node : hands.window().lookupAll("*")) {
              if (node instanceof Control c
                  && c.isFocusTraversable()
                  && isSeen(c)
                  && !c.isDisabled()) {
                c.requestFocus();
                if (c.isFocused() && !isRinged(c, look)) {
                  dark.add(c + (look.night() ? " by night" : " by day"));
                }
              }
            }
          }
          return dark;
        });
  }

  private static boolean isRinged(Control control, Look look) {
    WritableImage seen = control.snapshot(new SnapshotParameters(), null);
    Color ring = DrawingPainter.colour(look.palette().of(Tone.CHOSEN));
    int found = 0;
    for (int x = 0; x < seen.getWidth(); x++) {
      for (int y = 0; y < seen.getHeight(); y++) {
        found += seen.getPixelReader().getColor(x, y).equals(ring) ? 1 : 0;
      }
    }
    return found >= LEAST_RING_PX;
  }

  @Test
  @Tag("long")
  void keysWorkWhereverTheKeyboardIsUnlessItTypes() {
    hands.click("machine-wren");
    for (String id : List.of("night", "stature", "seat-Tor", "findings", "save-as")) {
      hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3);
      Node there = hands.node(id, Node.class);
      focus(there);
      double fitted = scale();
      Hands.onFx(
          () -> {
            hands.window().board().setFrame(hands.window().board().frame().zoomedAt(9, 9, 2));
            return null;
          });
      assertThat(scale()).isNotEqualTo(fitted);
      hands.press(KeyCode.F);
      assertThat(scale()).as("F on " + id).isCloseTo(fitted, within(0.01 * fitted));
      assertThat(focused()).as("the keyboard stays").isSameAs(there);
      hands.press(KeyCode.N);
      assertThat(hands.desk().options().chosen()).as("N on " + id).startsWith("pin:");
      hands.press(KeyCode.ESCAPE);
    }
    hands.press(KeyCode.SLASH).write("f");
    assertThat(hands.node("find-words", TextField.class).getText()).isEqualTo("f");
  }

  private double scale() {
    return Hands.onFx(() -> hands.window().board().frame().pxPerMm());
  }

  private void focus(Node node) {
    Hands.onFx(
        () -> {
          node.requestFocus();
          return null;
        });
    hands.settle();
    assertThat(focused()).isSameAs(node);
  }

  @Test
  void aNoticeMovesNothingAndGoesAwayByItselfUnlessItAsks() {
    hands.click("machine-wren");
    Bounds before = Hands.onFx(() -> hands.window().board().localToScene(boardBox()));
    Notice asks =
        new Notice(
            "asks", Notice.Mood.CARE, "Really?", List.of(new Notice.Answer("Yes", () -> {})));
    Notice bad = new Notice("bad", Notice.Mood.BAD, "It could not be written.", List.of());
    Notice said = new Notice("said", Notice.Mood.SAID, "Saved.", List.of());
    assertThat(NoticeStrip.lingers(asks).isIndefinite()).isTrue();
    assertThat(NoticeStrip.lingers(bad).isIndefinite()).isTrue();
    assertThat(NoticeStrip.lingers(said)).isBetween(Duration.seconds(4), Duration.seconds(6));
    NoticeStrip quick =
        Hands.onFx(
            () ->
                new NoticeStrip(
                    hands.desk(), n -> n.equals(asks) ? Duration.INDEFINITE : Duration.millis(60)));
    Hands.onFx(
        () -> {
          hands.window().getChildren().add(quick);
          hands.desk().tell(said);
          hands.desk().tell(asks);
          return null;
        });
    assertThat(Hands.onFx(() -> hands.window().board().localToScene(boardBox()))).isEqualTo(before);
    hands.until("what only tells is gone", () -> hands.desk().notices().equals(List.of(asks)));
    hands.press(KeyCode.ESCAPE);
    assertThat(hands.desk().notices()).as("Escape puts it away").isEmpty();
  }

  private Bounds boardBox() {
    return hands.window().board().getBoundsInLocal();
  }

  @Test
  @Tag("long")
  void lettersGrowByKeysAreKeptAndNothingIsPushedOut() {
    hands.click("machine-wren");
    hands.press(KeyCode.SHORTCUT, KeyCode.EQUALS);
    assertThat(hands.window().textSize().percent()).isEqualTo(110);
    Hands.onFx(
        () -> {
          hands.window().textSize().use(200);
          return null;
        });
    hands.settle();
    assertThat(hands.window().textSize().percent()).isEqualTo(200);
    assertThat(Habits.at(folder.resolve("home")).textPercent()).isEqualTo(200);
    assertThat(fontOf("save")).isEqualTo(24);
    assertThat(outside()).isEmpty();
    assertThat(Hands.onFx(() -> Shortened.in(hands.window()))).isEmpty();
    hands.press(KeyCode.SHORTCUT, KeyCode.M);
    Button write = hands.node("make-start", Button.class);
    hands.until("sheets", () -> !write.isDisabled());
    hands.settle();
    assertThat(outside()).as("the paper slip").isEmpty();
    assertThat(Hands.onFx(() -> Shortened.in(hands.window()))).isEmpty();
    hands.click("make-folder");
    Bounds seen = Hands.onFx(() -> focused().localToScene(focused().getBoundsInLocal()));
    assertThat(Hands.onFx(() -> hands.window().localToScene(hands.window().getBoundsInLocal())))
        .as("what is scrolled to is seen")
        .matches(window -> window.contains(seen));
    hands.press(KeyCode.ESCAPE);
    hands.press(KeyCode.SHORTCUT, KeyCode.MINUS);
    assertThat(hands.window().textSize().percent()).isEqualTo(175);
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT0);
    assertThat(fontOf("save")).isEqualTo(12);
  }

  private double fontOf(String id) {
    return hands.node(id, Button.class).getFont().getSize();
  }

  /** Controls that are seen in no part, and do not scroll into view. */
  private List<String> outside() {
    return Hands.onFx(
        () -> {
          List<String> out = new ArrayList<>();
          double w = hands.window().getWidth();
          double h = hands.window().getHeight();
          for (Node node : hands.window().lookupAll("*")) {
            if (node instanceof Control c && c.isFocusTraversable() && isSeen(c)) {
              Bounds b = c.localToScene(c.getBoundsInLocal());
              boolean inside =
                  b.getMinX() >= 0 && b.getMinY() >= 0 && b.getMaxX() <= w && b.getMaxY() <= h;
              if (!inside && !scrolls(c)) {
                out.add(Called.of(c) + " at " + b);
              }
            }
          }
          return out;
        });
  }

  private static boolean scrolls(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (n instanceof ScrollPane) {
        return true;
      }
    }
    return false;
  }

  @Test
  @Tag("long")
  void manyPeopleWithLongNamesScrollAndPushNothingOut() throws Exception {
    StringBuilder more = new StringBuilder("\"crew\": {");
    String last = "";
    for (int i = 0; i < 11; i++) {
      last = "SomebodyWhoseNameHasSixtyLettersAndWhoRidesOnSundaysOnlyNo" + (10 + i);
      more.append('"').append(last).append('"');
      more.append(": {\"sex\": \"male\", \"stature\": \"1780 mm\", \"mass\": \"80 kg\"},");
    }
    ReadResult read = LayoutReader.read(Wren.text().replace("\"crew\": {", more), null);
    hands.abandon();
    openOn(((ReadResult.Read) read).layout());
    hands.click("machine-wren");
    assertThat(hands.layout().crew()).hasSizeGreaterThan(11);
    assertThat(outside()).isEmpty();
    String name = last;
    ScrollPane people = (ScrollPane) Hands.onFx(() -> hands.window().lookup(".people"));
    assertThat(isWithin(people, name)).isFalse();
    Hands.onFx(
        () -> {
          hands.desk().seat(name);
          return null;
        });
    hands.settle();
    assertThat(isWithin(people, name)).as("who is seated is seen").isTrue();
    assertThat(Tip.of(hands.node("seat-" + name, Control.class))).contains(name);
  }

  private boolean isWithin(ScrollPane people, String name) {
    Node seat = hands.node("seat-" + name, Node.class);
    return Hands.onFx(
        () -> {
          Bounds seen = people.localToScene(people.getBoundsInLocal());
          Bounds at = seat.localToScene(seat.getBoundsInLocal());
          return at.getMinX() >= seen.getMinX() - 1 && at.getMaxX() <= seen.getMaxX() + 1;
        });
  }

  @Test
  void namesAreOfferedWhileAFormulaIsTyped() {
    hands.click("machine-wren");
    hands.click("field-panSpan");
    TextField field = hands.node("field-panSpan", TextField.class);
    hands.press(KeyCode.SHORTCUT, KeyCode.A).write("panl");
    hands.until("names", () -> hands.find("name-help").isPresent());
    hands.press(KeyCode.ESCAPE);
    assertThat(hands.find("name-help")).as("Escape closes the names").isEmpty();
    assertThat(field.getText()).as("and nothing else").isEqualTo("panl");
    hands.write("e");
    hands.until("names", () -> hands.find("name-help").isPresent());
    hands.press(KeyCode.TAB);
    assertThat(field.getText()).isEqualTo("panLength");
    assertThat(focused()).as("Tab puts in and stays").isSameAs(field);
    hands.write(" - w");
    hands.until("names", () -> hands.find("name-help").isPresent());
    hands.press(KeyCode.DOWN).press(KeyCode.UP).press(KeyCode.ENTER);
    assertThat(field.getText()).startsWith("panLength - ").hasSizeGreaterThan(13);
    assertThat(hands.layout().measures().get("panSpan").is().text())
        .as("Enter puts in and does not yet type it over")
        .isNotEqualTo(field.getText());
  }

  @Test
  @Tag("long")
  void whatContradictsIsLetGoOfBesideItsFieldAsOneStep() {
    hands.click("machine-wren");
    Layout before = hands.layout();
    hands.typeInto("field-panSpan", "panLength + 50 mm");
    assertThat(hands.layout()).isSameAs(before);
    Button offer = hands.node("loosen-panLong", Button.class);
    assertThat(offer.getText()).isEqualTo("let go of tie panLong");
    // it is in view, for the pointer finds it
    hands.moveTo(Hands.onFx(() -> Hands.middle(offer)));
    assertThat(hands.shown().live()).as("shown beforehand").isTrue();
    assertThat(hands.layout()).isSameAs(before);
    hands.click("loosen-panLong");
    assertThat(hands.layout().ties()).doesNotContainKey("panLong").containsKey("panLevel");
    assertThat(hands.layout().measures().get("panSpan").is().text()).isEqualTo("panLength + 50 mm");
    assertThat(hands.shown().study().placed().holds()).isTrue();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout()).as("one step").isSameAs(before);
  }

  @Test
  @Tag("long")
  void anEmptyFieldTellsWhatStandsInAndTickingFreeAsksForARange() {
    hands.click("machine-wren");
    Layout before = hands.layout();
    hands.click("free-wheelbase");
    assertThat(hands.layout()).as("nothing changes").isSameAs(before);
    assertThat(hands.node("free-wheelbase", CheckBox.class).isSelected()).isFalse();
    assertThat(Called.of(focused())).isEqualTo("free-from-wheelbase");
    hands.press(KeyCode.ENTER);
    assertThat(hands.layout()).as("asked for one end at least").isSameAs(before);
    hands.write("1600 mm").press(KeyCode.ENTER);
    assertThat(hands.layout().measures().get("wheelbase").free()).isTrue();
    assertThat(hands.layout().measures().get("wheelbase").from().orElseThrow().text())
        .isEqualTo("1600 mm");
    assertThat(Hands.onFx(() -> hands.find("free-from-wheelbase"))).as("answered").isEmpty();
    pick("measure:frontRadius").click("field-frontRadius-free");
    assertThat(hands.layout().measures().get("frontRadius").free()).isFalse();
    assertThat(Called.of(focused())).isEqualTo("free-from-frontRadius");
    hands.press(KeyCode.ESCAPE);
    assertThat(isSeen(hands.node("free-from-frontRadius", Node.class))).isFalse();
    pick("part:pan");
    hands.typeInto("field-pan-mass", "2 kg");
    assertThat(hands.layout().parts().get("pan").base().mass()).isPresent();
    hands.typeInto("field-pan-mass", " ");
    TextField mass = hands.node("field-pan-mass", TextField.class);
    assertThat(mass.getText()).isBlank();
    assertThat(mass.getPromptText()).isEqualTo("from the material");
    pick("part:grips");
    mass = hands.node("field-grips-mass", TextField.class);
    assertThat(mass.getPromptText()).isEqualTo("not known: give it or a material");
    // first of its fields, and the next one follows also once it is filled in
    hands.typeInto("field-grips-mass", "1 kg");
    assertThat(hands.layout().parts().get("grips").base().mass()).isPresent();
    assertThat(Called.of(focused())).isEqualTo("field-grips-mass");
    hands.press(KeyCode.TAB);
    assertThat(Called.of(focused())).isEqualTo("field-grips-diameter");
    Hands.onFx(
        () -> {
          hands
              .desk()
              .edit(
                  Edits.set(new Target.OfPin("gripPin", true), ""),
                  new Target.OfPin("gripPin", true),
                  "");
          return null;
        });
    hands.settle();
    assertThat(hands.desk().trouble().orElseThrow().refused().words()).contains("empty");
  }
}
