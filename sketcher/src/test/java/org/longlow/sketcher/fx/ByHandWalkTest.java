package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Photo;
import org.longlow.constraints.layout.TubePart;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.photo.PhotoPlace;
import org.longlow.sketcher.photo.Pixel;

/**
 * A machine made by hand alone, from an empty card and without a file: wheels, frame, a traced
 * engine, seat, lamps, crew, ties, a limit, a section; nothing fails in the end, and it is printed,
 * saved and read back.
 */
@Windowed
class ByHandWalkTest extends Walk {

  private static final double[][] ENGINE = {
    {0, 30},
    {0, 135},
    {40, 175},
    {140, 185},
    {170, 310},
    {320, 310},
    {350, 190},
    {390, 150},
    {390, 50},
    {350, 0},
    {30, 0}
  };

  /** Pixels of the photo to a millimetre of the engine. */
  private static final double PX_PER_MM = 1.5;

  private void wheelsAlone() throws Exception {
    openOn();
    fill("first-law", "us");
    fill("first-wheelbase", "1680 mm");
    hands.click("first-wheels");
    hands.until("two wheels", () -> hands.desk().shown().isPresent());
    hands.settle();
  }

  private void fill(String id, String text) {
    hands.click(id);
    hands.write(text);
  }

  /** Puts a text in that would take long letter by letter. */
  private void paste(String id, String text) {
    TextField field = hands.node(id, TextField.class);
    Hands.onFx(
        () -> {
          field.requestFocus();
          field.setText(text);
          return null;
        });
    hands.press(KeyCode.ENTER);
  }

  private PointMm pin(String name) {
    return Hands.onFx(() -> hands.desk().shown().get().study().placed().places().pin(name));
  }

  /** Back to the card with nothing picked and everything in view. */
  private void card() {
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2);
  }

  /** Takes a kind from the drawer and gives its pins these places, x and z one after another. */
  private void lay(String words, double... xz) {
    card();
    hands.press(KeyCode.A);
    hands.write(words);
    hands.press(KeyCode.ENTER);
    for (int i = 0; i < xz.length; i += 2) {
      hands.clickAt(hands.at(xz[i], xz[i + 1]));
    }
    assertThat(hands.desk().trouble()).as(words).isEmpty();
  }

  private void type(String... fieldsAndTexts) {
    for (int i = 0; i < fieldsAndTexts.length; i += 2) {
      hands.typeInto("field-" + fieldsAndTexts[i], fieldsAndTexts[i + 1]);
      assertThat(hands.desk().trouble()).as(fieldsAndTexts[i]).isEmpty();
    }
  }

  /** Bends the tube that is picked: a double click between two of its pins, then its place. */
  private void bend(String tube, int after, double x, double z) {
    TubePart before = (TubePart) hands.layout().parts().get(tube);
    Point2D middle =
        at(pin(before.path().get(after)).towards(pin(before.path().get(after + 1)), 0.45));
    card();
    hands.press(KeyCode.E);
    hands.clickTwiceAt(middle);
    hands.until(
        "a bend of " + tube,
        () ->
            ((TubePart) hands.desk().session().get().layout().parts().get(tube)).path().size()
                > before.path().size());
    hands.press(KeyCode.ENTER);
    String bend = ((TubePart) hands.layout().parts().get(tube)).path().get(after + 1);
    type(bend + "-x", x + " mm", bend + "-z", z + " mm");
  }

  private Point2D at(PointMm p) {
    return hands.at(p.x(), p.z());
  }

  @Test
  @Tag("long")
  void aWholeMachineIsMadeFromAnEmptyCard() throws Exception {
    wheelsAlone();
    chassis();
    Path file = folder.resolve("mine.json");
    hands.press(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.S);
    paste("save-path", file.toString());
    hands.until("saved", () -> Files.exists(file));
    engine();
    drive();
    seat();
    lamps();
    relations();
    people();
    assertThat(hands.shown().study().findings())
        .filteredOn(f -> f.verdict() == Verdict.FAIL)
        .extracting(Finding::text)
        .isEmpty();
    Layout made = hands.layout();
    assertThat(made.parts()).hasSizeGreaterThanOrEqualTo(25);
    assertThat(made.parts().values().stream().map(Part::kind).distinct().count())
        .as("kinds")
        .isGreaterThanOrEqualTo(15);
    assertThat(made.crew()).hasSize(1);
    assertThat(made.photos()).hasSize(1);
    Path sheets = folder.resolve("sheets");
    card();
    hands.press(KeyCode.SHORTCUT, KeyCode.M);
    hands.until("a sheet", () -> hands.find("paper-sheet").filter(Node::isVisible).isPresent());
    hands.click("paper-all");
    hands.until(
        "sheets laid out",
        () ->
            ((Label) hands.find("paper-words").get()).getText().contains("sheets of A4")
                && !hands.find("make-start").get().isDisabled());
    hands.typeInto("make-folder", sheets.toString());
    hands.until(
        "sheets on disk",
        () -> ((Label) hands.find("make-words").get()).getText().contains("in " + sheets));
    hands.settle();
    try (Stream<Path> files = Files.list(sheets)) {
      assertThat(files.filter(f -> f.toString().endsWith(".svg"))).hasSizeGreaterThan(10);
    }
    hands.press(KeyCode.ESCAPE).press(KeyCode.SHORTCUT, KeyCode.S);
    hands.settle();
    assertThat(((ReadResult.Read) LayoutReader.read(file)).layout()).isEqualTo(made);
  }

  private void chassis() {
    lay("telescopic", 1395, 770, 1460, 635, 1680, 291);
    type("telescopicFork-tube", "36 mm", "telescopicFork-y", "91 mm");
    type("telescopicFork-bump", "50 mm", "telescopicFork-droop", "45 mm");
    type("telescopicFork-rate", "6.6 N/mm", "telescopicFork-preload", "355 N");
    type("telescopicForkTop-x", "1395 mm", "telescopicForkTop-z", "770 mm");
    type("telescopicForkBottom-x", "1460 mm", "telescopicForkBottom-z", "635 mm");
    lay("swingarm", 365, 310, 0, 301);
    type("swingarm-depth", "45 mm", "swingarm-left", "106 mm", "swingarm-right", "106 mm");
    type("swingarm-bump", "50 mm", "swingarm-droop", "45 mm");
    type("swingarm-rate", "15.9 N/mm", "swingarm-preload", "315 N");
    lay("rail", 1460, 635, 365, 310);
    type("rail-bend-radius", "70 mm", "rail-y", "131 mm");
    bend("rail", 0, 1300, 190);
    bend("rail", 1, 380, 190);
    lay("rail", 365, 310, 145, 860);
    choose("rail2-another-touch", "rail");
    type("rail2-diameter", "28 mm", "rail2-y", "131 mm");
    bend("rail2", 0, 365, 475);
    lay("rail", 265, 640, -285, 640);
    choose("rail3-another-touch", "rail2");
    type("rail3-diameter", "28 mm", "rail3-y", "131 mm");
    lay("stand", 730, 210, 700, 15, 530, 215);
    type("standFoot-z", "15 mm");
    type("stand-y", "265 mm", "stand-lean", "13 deg");
  }

  /** Photographed from the side with a rule beside it, put under the drawing and traced. */
  private void engine() throws Exception {
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.I);
    paste("trace-file", photo(folder.resolve("bench.png")).toString());
    hands.until("the photo", () -> !hands.desk().session().get().layout().photos().isEmpty());
    hands.settle();
    hands.click("photo-scale");
    hands.clickAt(screen(pixel(0, 60))).clickAt(screen(pixel(390, 60)));
    hands.typeInto("photo-first", "390 mm");
    hands.click("photo-move");
    hands.dragAt(screen(pixel(0, 30)), hands.at(805, 240));
    hands.press(KeyCode.ESCAPE);
    PointMm crown = onPhoto(pixel(320, 310));
    assertThat(crown.x()).as("scaled and laid where it goes").isCloseTo(1125, within(8.0));
    assertThat(crown.z()).isCloseTo(520, within(8.0));
    Color ground = hands.pixel(hands.at(815, 480));
    Color metal = hands.pixel(hands.at(1000, 300));
    assertThat(ground.getBlue() - metal.getBlue()).as("seen through").isGreaterThan(0.1);
    card();
    draw("engine", ENGINE, 805, 210);
    type("engine-left", "125 mm", "engine-right", "125 mm", "engine-mass", "48 kg");
    assertThat(hands.pixel(hands.at(1000, 300))).as("metal drawn over it").isNotEqualTo(metal);
  }

  private static Path photo(Path file) throws Exception {
    BufferedImage image = new BufferedImage(800, 600, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(java.awt.Color.BLUE);
    g.fillRect(0, 0, 800, 600);
    g.setColor(java.awt.Color.RED);
    java.awt.Polygon shape = new java.awt.Polygon();
    for (double[] p : ENGINE) {
      shape.addPoint((int) pixel(p[0], p[1]).right(), (int) pixel(p[0], p[1]).down());
    }
    g.fill(shape);
    g.dispose();
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  /** Where a point of the engine is on the photo. */
  private static Pixel pixel(double xMm, double zMm) {
    return new Pixel(100 + PX_PER_MM * xMm, 540 - PX_PER_MM * zMm);
  }

  private PointMm onPhoto(Pixel pixel) {
    BoardState shown = hands.shown();
    Photo photo = shown.layout().photos().values().iterator().next();
    return PhotoPlace.of(photo, shown.layout(), shown.places()).inMachine(pixel).orElseThrow();
  }

  private Point2D screen(Pixel pixel) {
    return at(onPhoto(pixel));
  }

  /** Draws a part point by point, x and z from here. */
  private void draw(String kind, double[][] points, double x, double z) {
    card();
    hands.press(KeyCode.P);
    hands.until("the kinds", () -> hands.node("kind-words", Node.class).isFocused());
    hands.write(kind).press(KeyCode.ENTER);
    for (double[] p : points) {
      hands.clickAt(hands.at(x + p[0], z + p[1]));
    }
    hands.press(KeyCode.ENTER);
    hands.settle();
    assertThat(hands.desk().trouble()).as(kind).isEmpty();
    hands.until(kind, () -> hands.desk().options().chosen().startsWith("part:" + kind));
  }

  private void drive() {
    lay("battery", 430, 265);
    draw("tank", new double[][] {{0, 0}, {175, 0}, {175, 160}, {0, 160}}, 600, 250);
    type("tank-left", "110 mm", "tank-right", "110 mm", "tank-mass", "8 kg");
    lay("exhaust", 1180, 330, 1240, 160, 420, 215);
    choose("exhaust-another-touch", "engine");
    type("exhaust-y", "-60 mm");
    lay("silencer", 420, 215);
    choose("silencer-another-touch", "exhaust");
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.T);
    type("silencer-left", "-160 mm", "silencer-right", "240 mm");
  }

  private void seat() {
    lay("back", 400, 480, 150, 915);
    type("backFrom-x", "400 mm", "backFrom-z", "480 mm");
    type("backTo-x", "150 mm", "backTo-z", "915 mm");
    type("back-left", "150 mm", "back-right", "150 mm");
    lay("pan", 425, 430, 795, 515);
    choose("pan-another-touch", "back");
    type("pan-layer-1-ifd-25", "200 N", "pan-layer-2-thickness", "70 mm");
    // from further away, for it is higher than what is there
    card();
    hands.moveTo(hands.at(800, 100)).scroll(-8);
    lay("head rest", 105, 1095, 70, 1220);
    assertThat(hands.desk().options().chosen()).isEqualTo("part:headRest");
    lay("footboards", 1245, 255, 1470, 450);
    type("footboards-y", "290 mm");
    lay("grips", 800, 830);
    type("grips-y", "225 mm");
    lay("rail", 1395, 770, 800, 830);
    type("rail4-diameter", "22 mm", "rail4-bend-radius", "70 mm", "rail4-y", "185 mm");
    tick("rail4-steered");
    choose("rail4-another-touch", "rider");
    bend("rail4", 0, 1325, 870);
    draw("cowl", new double[][] {{0, 0}, {320, 0}, {300, 70}, {60, 60}}, -260, 690);
    type("cowl-left", "90 mm", "cowl-right", "90 mm", "cowl-thickness", "3 mm");
    type("cowl-material", "laminate");
  }

  private void choose(String list, String words) {
    hands.choose((list.contains("-another-") ? "more-" : "field-") + list, words);
    assertThat(hands.desk().trouble()).as(list).isEmpty();
  }

  private void tick(String field) {
    hands.click("field-" + field);
  }

  private void lamps() {
    lay("headlamp", 1530, 710);
    tick("headlamp-steered");
    choose("headlamp-another-touch", "telescopicFork");
    type("headlamp-half-width", "75 mm", "headlamp-half-height", "60 mm");
    type("headlamp-depth", "80 mm");
    lay("front signals", 1505, 815);
    tick("frontSignals-steered");
    lay("tail lamp", -340, 665);
    lay("stop lamp", -340, 725);
    type("stopLamp-half-width", "60 mm", "stopLamp-half-height", "25 mm");
    lay("rear signals", -355, 690);
    lay("plate lamp", -345, 590);
    card();
    hands.press(KeyCode.A);
    hands.click("add-plate").clickAt(hands.at(-370, 500));
    lay("rear reflector", -370, 400);
    lay("side reflectors", 1610, 440);
    type("sideReflectors-y", "120 mm");
    tick("sideReflectors-steered");
    lay("side reflectors", -215, 680);
    type("sideReflectors2-y", "151 mm");
    choose("sideReflectors2-colour", "red");
  }

  /** The pan keeps its length, the grips a height over it, and the cowl opens. */
  private void relations() {
    int ties = hands.layout().ties().size();
    card();
    hands.clickAt(hands.pin("panFrom")).clickAt(hands.pin("panTo"), KeyCode.SHIFT);
    lay("tie distance");
    assertThat(hands.layout().ties()).hasSize(ties + 1);
    hands.press(KeyCode.ESCAPE);
    card();
    hands.clickAt(hands.pin("panFrom")).clickAt(hands.pin("gripsPin"), KeyCode.SHIFT);
    lay("limit above");
    assertThat(hands.layout().limits()).hasSize(1);
    hands.press(KeyCode.ESCAPE);
    card();
    hands.clickAt(hands.at(-100, 720)).clickAt(hands.pin("cowlAt"), KeyCode.SHIFT);
    assertThat(hands.desk().options().chosen()).startsWith("p");
    lay("section");
    assertThat(hands.layout().sections()).hasSize(1);
  }

  private void people() {
    lay("man");
    type("man-stature", "1755 mm", "man-mass", "85 kg");
  }

  @Test
  void theFirstTenStepsGoByKeysAlone() throws Exception {
    openOn();
    reach("first-wheelbase");
    hands.write("1680 mm");
    reach("first-wheels");
    hands.press(KeyCode.SPACE);
    hands.until("two wheels", () -> hands.desk().shown().isPresent());
    hands.settle();
    PointMm middle =
        Hands.onFx(
            () -> {
              Board board = hands.window().board();
              return board.inMachine(board.getWidth() / 2, board.getHeight() / 2);
            });
    byKeys("battery");
    assertThat(pin("batteryPin").distance(middle)).isLessThan(60);
    hands.press(KeyCode.SHIFT, KeyCode.LEFT).press(KeyCode.DOWN);
    assertThat(pin("batteryPin").x()).isLessThan(middle.x());
    byKeys("engine", KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.RIGHT);
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT1);
    reach("field-engine-mass");
    hands.press(KeyCode.SHORTCUT, KeyCode.A).write("52 kg").press(KeyCode.ENTER);
    assertThat(hands.layout().parts().get("engine").base().mass().orElseThrow().toString())
        .contains("52");
    byKeys("tank", KeyCode.LEFT, KeyCode.LEFT, KeyCode.UP, KeyCode.UP);
    hands.press(KeyCode.C);
    assertThat(hands.layout().parts()).containsKeys("battery", "engine", "tank", "tank2");
    hands.press(KeyCode.DELETE);
    assertThat(hands.layout().parts()).doesNotContainKey("tank2");
    Path file = folder.resolve("keys.json");
    hands.press(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.S);
    paste("save-path", file.toString());
    hands.until("saved", () -> Files.exists(file));
    assertThat(((ReadResult.Read) LayoutReader.read(file)).layout()).isEqualTo(hands.layout());
  }

  /** Takes a kind from the drawer and puts it down after these steps from the card's middle. */
  private void byKeys(String words, KeyCode... steps) {
    card();
    hands.press(KeyCode.A).write(words).press(KeyCode.ENTER);
    for (KeyCode step : steps) {
      hands.press(KeyCode.SHIFT, step);
    }
    hands.press(KeyCode.ENTER);
  }

  /** Goes on from field to field until this one has the focus. */
  private void reach(String id) {
    for (int i = 0; i < 60; i++) {
      Node owner = Hands.onFx(() -> hands.window().getScene().getFocusOwner());
      if (owner != null && id.equals(Called.of(owner))) {
        return;
      }
      hands.press(KeyCode.TAB);
    }
    throw new AssertionError("never came to " + id);
  }
}
