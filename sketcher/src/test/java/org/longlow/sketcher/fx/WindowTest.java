package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.event.Event;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.stand.Standing;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.LayoutFile;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.edit.PinFreedom;
import org.longlow.svg.drawing.Tone;

/** The builder's walk through the window, with real pointer and key events. */
@Windowed
class WindowTest extends Walk {

  /** On Linux the toolkit lays out text by libpango; where that is missing no window opens. */
  static boolean textCanBeLaidOut() {
    if (!System.getProperty("os.name").startsWith("Linux")) {
      return true;
    }
    try {
      Class.forName("com.sun.javafx.font.freetype.OSPango");
      return true;
    } catch (ClassNotFoundException | LinkageError e) {
      return false;
    }
  }

  @BeforeEach
  void open() throws Exception {
    openOn(Wren.layout());
  }

  private static Map<String, Verdict> verdicts(BoardState shown) {
    return shown.study().findings().stream()
        .collect(Collectors.toMap(Finding::id, Finding::verdict, (a, b) -> a));
  }

  @Test
  void draggingTheBackRestChangesVerdictsAndUndoBringsThemBack() {
    hands.click("machine-wren");
    Layout before = hands.layout();
    Map<String, Verdict> verdictsBefore = verdicts(hands.shown());
    double length = backLength(hands.shown());

    hands.drag("backTop", -70, 60);
    assertThat(hands.shown().live()).isTrue();
    assertThat(hands.desk().drags().drag()).isPresent();
    assertThat(hands.desk().drags().drag().get().words().get(1))
        .startsWith("520.0 mm from backLow");
    assertThat(verdicts(hands.shown())).as("findings follow").isNotEqualTo(verdictsBefore);
    assertThat(hands.layout()).as("not a step yet").isSameAs(before);

    hands.letGo();
    assertThat(hands.layout()).isNotEqualTo(before);
    assertThat(backLength(hands.shown())).isCloseTo(length, within(1e-6));
    assertThat(Hands.onFx(() -> hands.desk().session().get().undoName())).contains("move backTop");

    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout()).isSameAs(before);
    assertThat(verdicts(hands.shown())).isEqualTo(verdictsBefore);
    hands.press(KeyCode.SHORTCUT, KeyCode.Y);
    assertThat(hands.layout()).isNotEqualTo(before);
  }

  @Test
  @Tag("long")
  void aThingIsRenamedWhereverItIsNamedAndTakenOutOnceItWasSaidWhatGoesWithIt() {
    hands.click("machine-wren");
    Layout before = hands.layout();
    pick("pin:backTop").typeInto("entry-name", "crest").settle();
    assertThat(hands.layout().pins()).containsKey("crest").doesNotContainKey("backTop");
    hands.until(
        "the pin is still picked", () -> hands.desk().options().chosen().equals("pin:crest"));
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout()).isSameAs(before);

    pick("pin:backTop").typeInto("entry-name", "backLow").settle();
    assertThat(hands.layout()).as("a name that is taken").isSameAs(before);
    assertThat(hands.desk().trouble().orElseThrow().refused().words()).contains("already backLow");
    hands.press(KeyCode.ESCAPE);
    hands.click("take-out").settle();
    assertThat(hands.layout()).as("asked first").isSameAs(before);
    hands.click("answer-take-out-backtop").settle();
    assertThat(hands.layout().pins()).doesNotContainKey("backTop");
    assertThat(hands.desk().options().chosen())
        .as("what it could not be called")
        .isNotEqualTo("pin:backLow");
    assertThat(hands.layout().parts().keySet()).isNotEqualTo(before.parts().keySet());
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout()).isSameAs(before);
  }

  @Test
  @Tag("long")
  void whatStandsInTheFieldsAsAnExampleMakesAMachine() {
    List<String> asked =
        List.of("second", "wheelbase", "front-tyre", "rear-tyre", "recline", "box", "law", "rider");
    Hands.onFx(
        () -> {
          asked.stream()
              .map(word -> hands.node("first-" + word, TextField.class))
              .forEach(
                  field ->
                      field.setText(field.getPromptText().replace("it follows; such as ", "")));
          return null;
        });
    hands.click("first-rider").press(KeyCode.ENTER);
    hands.until("the machine", () -> hands.desk().shown().isPresent());
    assertThat(hands.layout().crew()).hasSize(2);
  }

  @Test
  void aFirstMachineIsMadeFromAnswersAndWhatIsWrongStandsBesideItsField() {
    hands.typeInto("first-recline", "70 furlong");
    assertThat(hands.desk().session()).isEmpty();
    assertThat(hands.node("trouble-first-recline", Label.class).getText()).contains("furlong");
    assertThat(hands.node("first-recline", TextField.class).isFocused())
        .as("the keyboard is where it is refused")
        .isTrue();
    hands.typeInto("first-rider", "woman 1620 mm, 58 kg");
    hands.typeInto("first-recline", "35 deg");
    hands.until("the machine", () -> hands.desk().shown().isPresent());
    assertThat(hands.layout().crew().values().iterator().next().stature().text())
        .isEqualTo("1620 mm");
    assertThat(hands.layout().parts()).hasSizeGreaterThan(20);
    assertThat(Hands.onFx(() -> hands.desk().session().get().isChanged())).isTrue();
    // what is met at full lock is named among what is left to decide
    assertThat(hands.shown().study().findings())
        .filteredOn(f -> f.verdict() == Verdict.FAIL)
        .allMatch(f -> List.of("lock", "hands").contains(f.kind().word()));
  }

  private static boolean canBePressed(String key) {
    return Stream.of(KeyCode.values())
        .flatMap(
            code ->
                Stream.of(false, true)
                    .flatMap(
                        shift ->
                            Stream.of(pressed(code, shift, false), pressed(code, shift, true))))
        .anyMatch(e -> Keys.isOne(key, e));
  }

  private static KeyEvent pressed(KeyCode code, boolean shift, boolean ctrl) {
    return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, ctrl, false, false);
  }

  @Test
  void noKeyDoesTwoThings() {
    hands.click("machine-wren");
    List<String> keys =
        Hands.onFx(() -> hands.window().deeds()).stream()
            .flatMap(d -> java.util.Arrays.stream(d.keys().split(", ")))
            .filter(k -> !k.isEmpty())
            .toList();
    List<String> all = new java.util.ArrayList<>(keys);
    BoardHands.keys().forEach(k -> all.addAll(List.of(k[0].split(", "))));
    assertThat(all).hasSizeGreaterThan(20).doesNotHaveDuplicates();
    // by the sign on the keyboard, which is not the same everywhere
    List<String> bySign = List.of("Ctrl +", "Ctrl \u2212");
    assertThat(keys).filteredOn(k -> !bySign.contains(k)).allMatch(WindowTest::canBePressed);
  }

  @Test
  @Tag("long")
  void anythingIsFoundByItsWordsAndFilledInOnItsTicket() {
    hands.click("machine-wren");
    hands.press(KeyCode.SHORTCUT, KeyCode.F).write("backlong").press(KeyCode.ENTER);
    assertThat(hands.desk().options().chosen()).isEqualTo("tie:backLong");
    hands.typeInto("field-backLong-is", "530 mm");
    assertThat(hands.layout().ties().get("backLong").is().orElseThrow().text()).isEqualTo("530 mm");
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z);

    hands.press(KeyCode.SLASH).write("pan cushion").press(KeyCode.ENTER);
    assertThat(hands.desk().options().chosen()).isEqualTo("part:pan");
    int layers = layers();
    hands.click("more-pan-another-layer");
    assertThat(layers()).isEqualTo(layers + 1);
    hands.click("drop-pan-layer-1");
    assertThat(layers()).isEqualTo(layers);

    hands.press(KeyCode.SHORTCUT, KeyCode.F).write("next stance").press(KeyCode.ENTER);
    assertThat(hands.shown().standing().get().condition().says()).isEqualTo("full bump");
    hands.press(KeyCode.SHORTCUT, KeyCode.F).press(KeyCode.ESCAPE);
    assertThat(hands.node("find-slip", javafx.scene.Node.class).isVisible()).isFalse();
    assertThat(hands.desk().options().chosen()).as("Escape closes only that").isNotEmpty();
  }

  private int layers() {
    return ((org.longlow.constraints.layout.CushionPart) hands.layout().parts().get("pan"))
        .layers()
        .size();
  }

  private static org.assertj.core.data.Offset<Double> within(double d) {
    return org.assertj.core.data.Offset.offset(d);
  }

  @Test
  @Tag("long")
  void aPinGoesWhereItIsLetGoHoweverQuickTheHand() {
    hands.click("machine-wren");
    Point2D from = hands.pin("backTop");
    hands.drag("backTop", -40, 20).letGo();
    Point2D slowly = hands.pin("backTop");
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.pin("backTop")).isEqualTo(from);
    hands.drag("backTop", -1, 0);
    Hands.onFx(
        () -> {
          Event.fireEvent(hands.window().board(), released(from.add(-40, 20)));
          return null;
        });
    hands.letGo();
    assertThat(hands.pin("backTop").distance(slowly)).isLessThan(1);
    assertThat(slowly.distance(from)).isGreaterThan(10);
  }

  /** A button let go farther on than the pointer was last told of, as a busy machine sends it. */
  private MouseEvent released(Point2D screen) {
    Board board = hands.window().board();
    Point2D at = board.localToScene(board.screenToLocal(screen));
    return Fingers.event(MouseEvent.MOUSE_RELEASED, at, screen, MouseButton.PRIMARY, 1);
  }

  /** Heron's notes: leaning the rider's back changes what is comfortable. */
  @Test
  @Tag("long")
  void heronsBackRestIsDraggedAFindingChangesVerdictAndIsPickedInItsStance() throws Exception {
    hands.abandon();
    begin(Demos.layout("heron"));
    Layout before = hands.layout();
    Map<String, Verdict> verdictsBefore = verdicts(hands.shown());
    hands.drag("backTop", -45, 25).letGo();
    Map<String, Verdict> now = verdicts(hands.shown());
    assertThat(now.entrySet().stream().filter(e -> e.getValue() != verdictsBefore.get(e.getKey())))
        .as("verdicts that changed")
        .isNotEmpty();
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout()).isSameAs(before);
    assertThat(verdicts(hands.shown())).isEqualTo(verdictsBefore);

    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3);
    assertThat(hands.desk().finding()).as("none is spread open before one is picked").isEmpty();
    hands.press(KeyCode.DOWN);
    Finding worst = hands.shown().findings().get(0);
    assertThat(worst.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(hands.desk().finding()).isEqualTo(worst.id());
    assertThat(hands.shown().standing().map(Standing::condition)).isEqualTo(worst.stance());
  }

  @Test
  @Tag("long")
  void theListOfFindingsStaysAwayOnceItIsPutAway() {
    hands.click("machine-wren");
    Node list = hands.node("findings-ticket", Node.class);
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT3).settle();
    assertThat(list.isVisible()).isTrue();
    hands.press(KeyCode.ESCAPE).settle();
    assertThat(list.isVisible()).isFalse();
    Hands.onFx(
        () -> {
          hands.desk().chooseFinding(hands.shown().findings().get(0).id());
          return null;
        });
    hands.settle();
    assertThat(list.isVisible()).as("a finding picked is read there").isTrue();
    hands.press(KeyCode.ESCAPE).settle();
    hands.click("stance-full-bump").settle();
    assertThat(list.isVisible()).as("what the card shows next").isFalse();
  }

  @Test
  @Tag("long")
  void aSectionIsOpenedBySliderAndByHandAndStopsWhereItFirstComesTooClose() throws Exception {
    hands.abandon();
    begin(Demos.layout("heron"));
    double from =
        hands.shown().study().findings().stream()
            .filter(f -> f.from().isPresent())
            .mapToDouble(f -> f.from().getAsDouble())
            .min()
            .orElseThrow();
    hands.click("stance-open-lid");
    Slider slider = hands.node("opening-share", Slider.class);
    assertThat(Hands.onFx(slider::getValue)).isEqualTo(1);
    hands.slide(slider.lookup(".thumb"), -400, 0);
    assertThat(opening()).isZero();
    hands.slide(slider.lookup(".thumb"), 100, 0);
    assertThat(opening()).as("stopped").isCloseTo(from, within(1e-9));
    hands.press(KeyCode.RIGHT);
    assertThat(opening()).as("taken up again").isGreaterThan(from + 0.01);

    double before = opening();
    Point2D lid = hands.somewhereOn("part:lid");
    hands.dragFrom(lid, 60, 60).letGo();
    assertThat(opening()).isNotEqualTo(before);
  }

  private double opening() {
    return Hands.onFx(() -> hands.desk().options().opening());
  }

  private static double backLength(BoardState shown) {
    return shown
        .study()
        .placed()
        .places()
        .pin("backLow")
        .distance(shown.study().placed().places().pin("backTop"));
  }

  @Test
  @Tag("long")
  void theCardShowsWhereThePinIsAndFollowsIt() {
    hands.click("machine-wren");
    Point2D before = hands.pin("backTop");
    Color ink = DrawingPainter.colour(Look.DAY.palette().of(Tone.INK));
    // the ring of a pin that can move is 2 px wide and 4.5 px from its middle
    assertThat(far(hands.pixel(before.add(-4.5, 0)), ink)).isLessThan(0.25);
    hands.drag("backTop", -60, 50).letGo();
    Point2D after = hands.pin("backTop");
    assertThat(after.distance(before)).isGreaterThan(30);
    hands.moveTo(new Point2D(after.getX() + 300, after.getY() - 130));
    assertThat(far(hands.pixel(after.add(-4.5, 0)), ink)).isLessThan(0.25);
    assertThat(far(hands.pixel(before.add(-4.5, 0)), ink)).as("it is gone").isGreaterThan(0.3);
  }

  @Test
  @Tag("long")
  void aLimitIsFeltAndNamed() {
    hands.click("machine-wren");
    // far beyond 60 degrees from vertical, where the limit of the back stops it
    hands.drag("backTop", -120, 260);
    assertThat(hands.desk().drags().drag().get().stops()).contains("backLean");
    hands.letGo();
    PointMm d =
        hands
            .shown()
            .study()
            .placed()
            .places()
            .pin("backTop")
            .minus(hands.shown().study().placed().places().pin("backLow"));
    assertThat(Math.toDegrees(Math.atan2(-d.x(), d.z()))).isCloseTo(60, within(1e-4));
  }

  @Test
  void whatCannotMoveSaysWhichTiesHoldIt() {
    hands.click("machine-wren");
    Layout before = hands.layout();
    hands.moveTo(hands.pin("panFront"));
    hands.until("its freedom", () -> hands.desk().drags().freedom().isPresent());
    PinFreedom held = hands.desk().drags().freedom().get();
    assertThat(held.kind()).isEqualTo(PinFreedom.Kind.HELD);
    assertThat(held.holders())
        .containsExactlyInAnyOrder("panHeight", "panPlace", "panLong", "panLevel");
    hands.moveTo(hands.pin("backTop"));
    hands.until("its freedom", () -> hands.desk().drags().freedom().isPresent());
    assertThat(hands.desk().drags().freedom().get().kind()).isEqualTo(PinFreedom.Kind.LINE);
    assertThat(hands.desk().drags().freedom().get().ways()).hasSize(2);
    hands.moveTo(hands.pin("gripPin"));
    hands.until("its freedom", () -> hands.desk().drags().freedom().isPresent());
    assertThat(hands.desk().drags().freedom().get().words())
        .isEqualTo("gripPin is nailed in place");
    hands.drag("gripPin", 40, 40).letGo();
    assertThat(hands.layout()).isSameAs(before);
  }

  @Test
  void aTypedMeasureIsSolvedAndAContradictionIsExplainedBesideTheField() {
    hands.click("machine-wren");
    hands.typeInto("field-wheelbase", "66 1/2 in");
    assertThat(hands.layout().measures().get("wheelbase").is().text()).isEqualTo("66 1/2 in");
    assertThat(hands.shown().study().placed().places().pin("frontAxle").x())
        .isCloseTo(66.5 * 25.4, within(1e-6));

    Layout good = hands.layout();
    hands.typeInto("field-panSpan", "panLength + 50 mm");
    assertThat(hands.layout()).as("the last good layout stays").isSameAs(good);
    Label trouble = hands.node("trouble-panSpan", Label.class);
    assertThat(trouble.isVisible()).isTrue();
    assertThat(trouble.getText())
        .contains("cannot all hold")
        .contains("tie panLong: distance panRear, panFront = panLength")
        .contains("tie panLevel: ahead panRear, panFront = panSpan");

    hands.typeInto("field-panSpan", "panLength - 4 mm");
    assertThat(trouble.isVisible()).isFalse();
    assertThat(hands.layout().measures().get("panSpan").is().text()).isEqualTo("panLength - 4 mm");

    hands.typeInto("field-rake", "27 furlong");
    assertThat(hands.node("trouble-rake", Label.class).getText()).contains("furlong");
    assertThat(hands.layout().measures().get("rake").is().text()).isEqualTo("27 deg");
  }

  @Test
  @Tag("long")
  void thePersonOnTheSeatIsSwitchedAndStanceSteppedByPointerAndKeys() {
    hands.click("machine-wren");
    assertThat(hands.desk().options().person()).isEqualTo("Mara");
    assertThat(hands.shown().standing().get().condition().says()).isEqualTo("laden, Mara");
    hands.click("seat-Tor");
    assertThat(hands.shown().standing().get().condition().says()).isEqualTo("laden, Tor");
    hands.press(KeyCode.COMMA);
    assertThat(hands.desk().options().person()).isEqualTo("Mara");
    hands.click("ghost-Tor");
    assertThat(hands.desk().options().ghosts()).containsExactly("Tor");
    hands.press(KeyCode.CLOSE_BRACKET);
    assertThat(hands.shown().standing().get().condition().says()).isEqualTo("full bump");
    hands.click("stance-unladen");
    assertThat(hands.shown().standing().get().condition().says()).isEqualTo("unladen");
  }

  @Test
  @Tag("long")
  void theStatureSliderIsSeenWhileItMovesAndIsOneStep() {
    hands.click("machine-wren");
    PointMm hip = hip();
    hands.slide(hands.node("stature", Slider.class).lookup(".thumb"), 40, 0);
    double tall = hands.layout().crew().get("Mara").stature().evaluate(n -> Double.NaN);
    assertThat(tall).isBetween(1700.0, 1950.0);
    assertThat(hip().distance(hip)).as("the body follows").isGreaterThan(1);
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout().crew()).isEqualTo(Wren.layout().crew());
    assertThat(Hands.onFx(() -> hands.desk().session().get().undoName())).isEmpty();
  }

  private PointMm hip() {
    return hands.shown().study().sitting("Mara", "rider").get().posture().get().eye();
  }

  /** Everything from opening to saving, without the pointer. */
  @Test
  @Tag("long")
  void theWholeWalkGoesByKeyboard() {
    Path file = folder.resolve("keys.json");
    hands.until("focus", () -> hands.window().getScene().getFocusOwner() != null);
    Hands.onFx(
        () -> {
          hands.find("machine-wren").get().requestFocus();
          return null;
        });
    hands.press(KeyCode.SPACE);
    assertThat(hands.desk().session()).isPresent();
    while (!hands.desk().options().chosen().equals("pin:backTop")) {
      hands.press(KeyCode.N);
    }
    Layout before = hands.layout();
    hands.press(KeyCode.SHIFT, KeyCode.LEFT);
    assertThat(hands.layout()).isNotSameAs(before);
    double x = hands.shown().study().placed().places().pin("backTop").x();
    assertThat(x).isBetween(40.0, 55.0);
    hands.press(KeyCode.CLOSE_BRACKET).press(KeyCode.PERIOD).press(KeyCode.D).press(KeyCode.L);
    assertThat(hands.desk().options().person()).isEqualTo("Tor");
    assertThat(hands.desk().options().dimensions()).isTrue();
    double scale = Hands.onFx(() -> hands.window().board().frame().pxPerMm());
    hands.press(KeyCode.MINUS);
    assertThat(Hands.onFx(() -> hands.window().board().frame().pxPerMm())).isLessThan(scale);
    hands.press(KeyCode.F);
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT1);
    assertThat(Called.of(focused())).startsWith("field-");
    hands.press(KeyCode.SHORTCUT, KeyCode.S);
    hands.press(KeyCode.SHORTCUT, KeyCode.A).write(file.toString()).press(KeyCode.ENTER);
    assertThat(saved(file)).isEqualTo(hands.layout());
  }

  @Test
  void zoomKeepsWhatIsUnderThePointer() {
    hands.click("machine-wren");
    Point2D at = hands.pin("crank");
    hands.moveTo(at).scroll(3);
    assertThat(hands.pin("crank").distance(at)).isLessThan(1);
    double near = Hands.onFx(() -> hands.window().board().frame().pxPerMm());
    hands.scroll(-6);
    assertThat(Hands.onFx(() -> hands.window().board().frame().pxPerMm())).isNotEqualTo(near);
    assertThat(hands.pin("crank").distance(at)).isLessThan(1);
  }

  @Test
  void nothingIsCutShortAndEveryControlHasAName() {
    hands.click("machine-wren");
    hands.typeInto("field-wheelbase", "1640 mm + 3 mm + 2 mm + 1 mm + 0.5 mm");
    hands.typeInto("field-panSpan", "panLength + 50 mm");
    for (String subject : List.of("", "pin:panFront", "part:pan", "person:Tor")) {
      pick(subject);
      assertThat(Hands.onFx(() -> Shortened.in(hands.window()))).as(subject).isEmpty();
      assertThat(Hands.onFx(() -> Shortened.nameless(hands.window()))).as(subject).isEmpty();
    }
    hands.press(KeyCode.F1);
    assertThat(Hands.onFx(() -> Shortened.in(hands.window()))).isEmpty();
  }

  @Test
  @Tag("long")
  void savedKilledAndRecovered() throws Exception {
    hands.click("machine-wren");
    hands.typeInto("field-wheelbase", "1660 mm");
    Path file = folder.resolve("mine.json");
    hands.press(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.S);
    hands.typeInto("save-path", file.toString());
    assertThat(saved(file)).isEqualTo(hands.layout());

    hands.typeInto("field-wheelbase", "1670 mm");
    Layout unsaved = hands.layout();
    Path copy = Hands.onFx(() -> hands.desk().autosave().copyOf(hands.desk().session().get()));
    assertThat(copy.getFileName().toString()).startsWith(".mine.json.longlow-autosave");
    hands.until("the copy", () -> Files.exists(copy));
    hands.abandon();

    openOn();
    hands.click("recent-mine-json");
    assertThat(hands.layout().measures().get("wheelbase").is().text()).isEqualTo("1660 mm");
    hands.click("answer-take-it-up-again");
    assertThat(hands.layout()).isEqualTo(unsaved);
    hands.press(KeyCode.SHORTCUT, KeyCode.S);
    assertThat(saved(file)).isEqualTo(unsaved);
    hands.until("the copy to go", () -> !Files.exists(copy));
  }

  @Test
  @Tag("long")
  void workThatNeverHadAFileIsOfferedOnTheStartPageUntilItIsSaved() throws Exception {
    Path home = folder.resolve("home");
    hands.click("machine-wren");
    hands.typeInto("field-wheelbase", "1675 mm");
    Layout unsaved = hands.layout();
    hands.until("the copy", () -> copies(home) == 1);
    hands.abandon();

    hands = Hands.at(home, List.of(Wren.layout()));
    hands.click("resume-wren");
    assertThat(hands.layout()).isEqualTo(unsaved);
    assertThat(Hands.onFx(() -> hands.desk().session().get().isChanged())).isTrue();
    hands.until("one copy", () -> copies(home) == 1);
    hands.press(KeyCode.SHORTCUT, KeyCode.S);
    hands.typeInto("save-path", folder.resolve("kept.json").toString());
    assertThat(saved(folder.resolve("kept.json"))).isEqualTo(unsaved);
    hands.until("no copy", () -> copies(home) == 0);
  }

  private static long copies(Path home) throws java.io.IOException {
    if (!Files.isDirectory(home)) {
      return 0;
    }
    try (var files = Files.list(home)) {
      return files.filter(f -> f.toString().endsWith(".longlow-autosave.json")).count();
    }
  }

  @Test
  @Tag("long")
  void stepsThatComeQuickerThanAnswersAddUp() {
    hands.click("machine-wren");
    while (!hands.desk().options().chosen().equals("pin:pegPin")) {
      hands.press(KeyCode.N);
    }
    double x = hands.shown().study().placed().places().pin("pegPin").x();
    Hands.onFx(
        () -> {
          for (int i = 0; i < 10; i++) {
            hands.desk().drags().nudge("pegPin", new PointMm(1, 0));
          }
          return null;
        });
    hands.until(
        "ten steps",
        () ->
            Math.abs(
                    hands.desk().shown().get().study().placed().places().pin("pegPin").x() - x - 10)
                < 1e-4);
  }

  private static Layout saved(Path file) {
    return ((LayoutFile.Opening.Opened) LayoutFile.open(file)).layout();
  }

  @Test
  @Tag("long")
  void aFileChangedByAnotherIsNoticed() throws Exception {
    Path file = Wren.file(folder);
    hands.typeInto("open-path", file.toString());
    Files.writeString(file, Wren.text().replace("\"1640 mm\"", "\"1650 mm\""));
    hands.click("answer-bring-in-the-other-file");
    assertThat(hands.layout().measures().get("wheelbase").is().text()).isEqualTo("1650 mm");
  }

  @Test
  void aBrokenFileIsExplainedFaultByFault() throws Exception {
    Path file = folder.resolve("broken.json");
    Files.writeString(
        file,
        Wren.text()
            .replace("\"wheelbase\": \"1640 mm\"", "\"wheelbase\": \"1640 kg\"")
            .replace("[\"lowA\", \"lowB\", \"lowC\"]", "[\"lowA\", \"nowhere\"]"));
    hands.typeInto("open-path", file.toString());
    assertThat(hands.desk().session()).isEmpty();
    int faults = hands.desk().files().refusal().get().faults().size();
    assertThat(faults).isGreaterThanOrEqualTo(2);
    assertThat(Hands.onFx(() -> hands.window().lookupAll(".fault").size())).isEqualTo(faults);
  }

  @Test
  @Tag("long")
  void whileTheMachineIsWorkedOutTheWindowSaysSoAndADragIsRefusedInWords() {
    Hands.onFx(
        () -> {
          // one turn of the interface thread, so that no answer comes between
          hands.desk().files().openCopy(Wren.layout(), Optional.empty());
          assertThat(hands.desk().isBeginning()).isTrue();
          assertThat(((Label) hands.find("working").get()).getText()).startsWith("working");
          for (String id : List.of("bench", "findings", "crew")) {
            assertThat(hands.find(id).get().isDisabled()).as(id).isTrue();
          }
          assertThat(hands.desk().drags().grab("backTop")).isFalse();
          assertThat(((Label) hands.find("notice-not-yet").get()).getText())
              .contains("still being worked out");
          return null;
        });
    hands.settle();
    assertThat(hands.node("working", Label.class).getText()).isEmpty();
    assertThat(hands.find("bench").get().isDisabled()).isFalse();
    Layout before = hands.layout();
    hands.drag("backTop", -40, 20).letGo();
    assertThat(hands.layout()).isNotEqualTo(before);
  }

  @Test
  void aFileBeingReadIsToldOfOnTheStartPage() throws Exception {
    Path file = Wren.file(folder);
    Hands.onFx(
        () -> {
          hands.desk().files().open(file);
          Label opening = (Label) hands.find("opening").get();
          assertThat(opening.getText()).contains("Opening", file.toString());
          assertThat(hands.find("open-path").get().isDisabled()).isTrue();
          return null;
        });
    hands.settle();
    assertThat(hands.node("opening", Label.class).getText()).isEmpty();
    hands.until("the machine", () -> hands.desk().shown().isPresent());
  }

  @Test
  @Tag("long")
  void aPressWhileTheLastMoveSettlesIsRefusedInWords() {
    hands.click("machine-wren");
    hands.drag("backTop", -40, 20);
    Hands.onFx(
        () -> {
          hands.desk().drags().letGo();
          assertThat(hands.desk().drags().grab("pegPin")).isFalse();
          assertThat(((Label) hands.find("notice-not-yet").get()).getText())
              .contains("last move", "once more");
          return null;
        });
    hands.letGo();
  }

  @Test
  @Tag("long")
  void anotherThingIsReadFromItsNameDown() {
    hands.click("machine-wren");
    for (String subject : List.of("part:pan", "pin:backTop")) {
      pick(subject);
      ScrollPane scroll =
          Hands.onFx(() -> (ScrollPane) hands.node("bench", Parent.class).lookup(".slip-scroll"));
      assertThat(Hands.onFx(scroll::getVvalue)).as(subject).isZero();
      Hands.onFx(
          () -> {
            scroll.setVvalue(0.5);
            return null;
          });
    }
  }

  @Test
  @Tag("long")
  void theListOfFindingsIsWrittenAnewInTheUnitsTurnedTo() {
    hands.click("machine-wren");
    Hands.onFx(
        () -> {
          hands.desk().chooseFinding(hands.shown().findings().get(0).id());
          return null;
        });
    hands.settle();
    hands.until("lengths in mm", () -> !findingsSaying(" mm").isEmpty());
    hands.press(KeyCode.U).settle();
    assertThat(hands.layout().units()).isEqualTo(Units.IN);
    hands.until("none is left in mm", () -> findingsSaying(" mm").isEmpty());
    assertThat(findingsSaying(" in")).isNotEmpty();
  }

  /** Returns what is read in the list of findings and matches a unit after a figure. */
  private List<String> findingsSaying(String unit) {
    return Hands.onFx(
        () ->
            hands.node("findings-ticket", Parent.class).lookupAll(".finding-text").stream()
                .map(n -> ((Label) n).getText())
                .filter(t -> t.matches("(?s).*[0-9]" + unit + "\\b.*"))
                .toList());
  }

  @Test
  @Tag("long")
  void unitsAreSaidWhereFiguresAreBare() {
    assertThat(Rule.note(false, false)).isEmpty();
    assertThat(Rule.note(true, false)).isEqualTo("all dimensions in mm");
    assertThat(Rule.note(true, true)).isEqualTo("all dimensions in inches");
    assertThat(Rule.note(false, true)).isEmpty();
    hands.click("machine-wren");
    Color card = DrawingPainter.colour(Look.DAY.palette().of(Tone.PAPER));
    assertThat(noteIsWritten(card)).isFalse();
    hands.press(KeyCode.U);
    assertThat(hands.layout().units()).isEqualTo(Units.IN);
    assertThat(hands.node("inches", ToggleButton.class).isSelected()).isTrue();
    assertThat(hands.node("field-wheelbase", TextField.class).getText()).endsWith(" in");
    String before = hands.layout().measures().get("wheelbase").is().text();
    hands.click("field-wheelbase").press(KeyCode.ENTER);
    assertThat(hands.layout().measures().get("wheelbase").is().text()).isEqualTo(before);
    hands.click("inches");
    assertThat(hands.layout().units()).isEqualTo(Units.MM);
    assertThat(hands.node("inches", ToggleButton.class).isSelected()).isFalse();
    hands.press(KeyCode.D);
    assertThat(noteIsWritten(card)).isTrue();
    hands.drag("backTop", -40, 20);
    assertThat(hands.desk().drags().drag().get().words().get(0))
        .matches("backTop  \\S+ mm forward  \\S+ mm up");
    hands.letGo();
  }

  private boolean noteIsWritten(Color card) {
    Point2D corner =
        Hands.onFx(
            () -> {
              Board board = hands.window().board();
              return board.localToScreen(board.getWidth(), board.getHeight() - Rule.widthPx(1));
            });
    Point2D words = corner.subtract(Rule.NOTE_OFF_PX + 60, Rule.NOTE_OFF_PX + 3);
    Node whole = hands.window().board().getParent();
    return hands.pixels(whole, words, 58).stream().anyMatch(c -> far(c, card) > 0.3);
  }

  /** A slip over the corner pushes it aside, one as broad as the card upwards. */
  @Test
  void theNoteOnUnitsLiesUnderNoSlip() {
    DrawingPainter painter = new DrawingPainter(Look.DAY.palette());
    Spots.Box seen = new Spots.Box(24, 40, 900, 500);
    Spots.Box corner = new Spots.Box(700, 100, 220, 436);
    Spots.Box beside = new Spots.Box(560, 300, 136, 236);
    Spots.Box broad = new Spots.Box(30, 300, 890, 236);
    for (List<Spots.Box> slips :
        List.of(List.<Spots.Box>of(), List.of(corner), List.of(corner, beside), List.of(broad))) {
      Pen pen = new Pen(painter);
      Rule.note(pen, painter, "all dimensions in mm", seen, slips);
      List<Ink> inks = pen.taken();
      assertThat(inks).hasSize(1);
      // an ink of words reaches as far below its base line as above
      Spots.Box ink = inks.get(0).within(seen.grown(20)).orElseThrow();
      Spots.Box at = new Spots.Box(ink.x(), ink.centreY() - 8, ink.width(), 8);
      assertThat(at.width()).isGreaterThan(80);
      assertThat(slips).allMatch(slip -> slip.shared(at) == 0);
      assertThat(at.bottom() > 530).isEqualTo(!slips.contains(broad));
    }
  }

  @Test
  void aPinMovesInTheSameWordsBeforeAndAfterItsFreedomIsKnown() {
    hands.click("machine-wren");
    PinFreedom free =
        new PinFreedom("gripPin", PinFreedom.Kind.PLANE, List.of(), Map.of(), List.of(), List.of());
    assertThat(free.words()).isEqualTo("gripPin can move");
    hands.press(KeyCode.F1);
    assertThat(hands.window().lookupAll(".bench-label").stream().map(n -> ((Label) n).getText()))
        .noneMatch(t -> t.contains("card"))
        .anyMatch(t -> t.contains("the drawing"));
  }
}
