package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Photo;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.LayoutFile;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.photo.PhotoPlace;
import org.longlow.sketcher.photo.Pixel;

/** A photo put under the drawing and made to fit, with real pointer and key events. */
@Windowed
class PhotoWalkTest extends Walk {

  private static final int WIDE = 800;
  private static final int HIGH = 600;

  /** Two red spots of the photo, 300 pixels apart, on a blue ground. */
  private static final Pixel LEFT = new Pixel(100, 200);

  private static final Pixel RIGHT = new Pixel(400, 200);

  private Path layout;

  @BeforeEach
  void open() throws Exception {
    layout = Wren.file(Files.createDirectories(folder.resolve("machine")));
    openOn(Wren.layout());
    open(layout);
  }

  private static Path photo(Path file) throws IOException {
    BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(java.awt.Color.BLUE);
    g.fillRect(0, 0, WIDE, HIGH);
    g.setColor(java.awt.Color.RED);
    for (Pixel spot : List.of(LEFT, RIGHT)) {
      g.fillRect((int) spot.right() - 12, (int) spot.down() - 12, 24, 24);
    }
    g.dispose();
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  private Photo only() {
    return hands.layout().photos().values().iterator().next();
  }

  private static PointMm machine(BoardState shown, Pixel pixel) {
    Photo photo = shown.layout().photos().values().iterator().next();
    return PhotoPlace.of(photo, shown.layout(), shown.places()).inMachine(pixel).orElseThrow();
  }

  /** Where on the screen a place of the machine, or a pixel of the photo, is. */
  private Point2D screen(PointMm machine) {
    return Hands.onFx(
        () -> {
          PointMm px = hands.window().board().onScreen(machine);
          return hands.window().board().localToScreen(px.x(), px.z());
        });
  }

  private Point2D screen(Pixel pixel) {
    return screen(machine(hands.shown(), pixel));
  }

  /** Puts a file in; its name is not typed letter by letter, which takes long. */
  private void putIn(Path file) {
    hands.click("trace");
    TextField field = hands.node("trace-file", TextField.class);
    Hands.onFx(
        () -> {
          field.setText(file.toString());
          return null;
        });
    hands.press(KeyCode.ENTER);
  }

  private void seen() {
    hands.until("the photo on the card", () -> isRed(Hands.onFx(() -> hands.pixel(screen(LEFT)))));
  }

  private static boolean isRed(Color c) {
    return c.getRed() > c.getBlue() + 0.15 && c.getRed() > c.getGreen() + 0.15;
  }

  private static boolean isBlue(Color c) {
    return c.getBlue() > c.getRed() + 0.15 && c.getBlue() > c.getGreen() + 0.15;
  }

  private Optional<String> undoName() {
    return Hands.onFx(() -> hands.desk().session().get().undoName());
  }

  private void clickAt(Point2D at) {
    hands.moveTo(at).pressHere();
  }

  @Test
  void thatItMustBeSavedIsSaidBeforeAPathIsTypedAndOfferedThere() throws Exception {
    assertThat(hands.press(KeyCode.I).settle().node("trace-unsaved", Node.class).isVisible())
        .as("it has a file")
        .isFalse();
    hands.abandon();
    hands = Hands.at(folder.resolve("fresh"), List.of(Wren.layout()));
    hands.click("machine-wren").press(KeyCode.I).settle();
    assertThat(hands.node("trace-unsaved", Node.class).isVisible()).isTrue();
    assertThat(hands.node("trace-save", Node.class).isFocused()).isTrue();
    hands.press(KeyCode.ENTER);
    TextField path = hands.node("save-path", TextField.class);
    assertThat(path.isFocused()).isTrue();
    Path saved = Files.createDirectories(folder.resolve("kept")).resolve("wren.json");
    Hands.onFx(
        () -> {
          path.setText(saved.toString());
          return null;
        });
    hands.press(KeyCode.ENTER);
    hands.until("it is saved", () -> Files.exists(saved));
    hands.settle();
    assertThat(hands.node("trace-unsaved", Node.class).isVisible()).isFalse();
    assertThat(hands.node("trace-file", TextField.class).isFocused()).isTrue();
  }

  @Test
  @Tag("long")
  void aPhotoIsPutInAndScaledByTwoPointsAndALengthAndLiesWhereItShould() throws Exception {
    hands.press(KeyCode.I).settle();
    hands.typeInto("trace-file", photo(layout.resolveSibling("side.png")).toString());
    assertThat(hands.layout().photos()).containsOnlyKeys("side");
    assertThat(only().file()).isEqualTo("side.png");
    assertThat(hands.desk().options().chosen()).isEqualTo("photo:side");
    hands.settle();
    assertThat(Hands.onFx(() -> Shortened.in(hands.node("photo-tools", Parent.class)))).isEmpty();
    seen();
    assertThat(isBlue(hands.pixel(screen(new Pixel(250, 200))))).as("its ground").isTrue();

    PointMm kept = machine(hands.shown(), LEFT);
    hands.click("photo-scale");
    clickAt(screen(LEFT));
    clickAt(screen(RIGHT));
    hands.typeInto("photo-first", "5 kg").settle();
    assertThat(undoName()).as("refused").contains("put in photo side");
    assertThat(hands.node("trouble-photo", Label.class).getText()).contains("length");
    hands.typeInto("photo-first", "16 in").settle();
    assertThat(undoName()).contains("scale photo side by 16 in");
    PointMm left = machine(hands.shown(), LEFT);
    PointMm right = machine(hands.shown(), RIGHT);
    // marks are as fine as pixels of the screen, some 2 mm each here
    double mmPerPx = Hands.onFx(() -> 1 / hands.window().board().frame().pxPerMm());
    assertThat(left.distance(kept)).isLessThan(2 * mmPerPx);
    assertThat(left.distance(right)).isCloseTo(406.4, within(2 * mmPerPx));

    Point2D at = screen(kept.plus(new PointMm(406.4, 0)));
    assertThat(isRed(hands.pixel(at))).as("the other spot, 16 in further").isTrue();
    squareUp();
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(undoName()).contains("put in photo side");
    hands.until("undone on the card", () -> !isRed(hands.pixel(at)));
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout().photos()).isEmpty();
  }

  /** Four corners by pointer: what they enclose is as large then as was typed. */
  private void squareUp() {
    List<Pixel> corners =
        List.of(new Pixel(120, 420), new Pixel(400, 400), new Pixel(380, 210), new Pixel(140, 220));
    hands.click("photo-square");
    corners.forEach(c -> clickAt(screen(c)));
    hands.typeInto("photo-first", "900 mm").settle();
    assertThat(undoName()).as("its height is asked too").contains("scale photo side by 16 in");
    hands.typeInto("photo-second", "600 mm").settle();
    assertThat(undoName()).contains("square up photo side");
    PointMm low = machine(hands.shown(), corners.get(0));
    assertThat(machine(hands.shown(), corners.get(1)).minus(low).x()).isCloseTo(900, within(20.0));
    assertThat(machine(hands.shown(), corners.get(2)).minus(low).x()).isCloseTo(900, within(20.0));
    assertThat(machine(hands.shown(), corners.get(2)).minus(low).z()).isCloseTo(600, within(20.0));
    assertThat(machine(hands.shown(), corners.get(3)).minus(low).z()).isCloseTo(600, within(20.0));
    seen();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2);
  }

  private boolean looksTaken(String button) {
    return Hands.onFx(
        () ->
            hands.find(button).orElseThrow().getPseudoClassStates().stream()
                .anyMatch(state -> state.getPseudoClassName().equals("taken")));
  }

  @Test
  @Tag("long")
  void byKeysAloneItIsLevelledPushedFadedAndHidden() throws Exception {
    putIn(photo(layout.resolveSibling("side.png")));
    seen();
    Hands.onFx(
        () -> {
          hands.find("photo-level").orElseThrow().requestFocus();
          return null;
        });
    hands.press(KeyCode.SPACE).press(KeyCode.ENTER);
    for (int i = 0; i < 5; i++) {
      hands.press(KeyCode.SHIFT, KeyCode.RIGHT);
    }
    // the marks are 100 px apart and 20 up; in a stance the machine itself may be pitched
    double rise =
        Hands.onFx(
            () -> {
              Board board = hands.window().board();
              return board.inMachine(500, 300).minus(board.inMachine(400, 320)).angleRad();
            });
    assertThat(Math.toDegrees(rise)).isCloseTo(11.3, within(1.0));
    hands.press(KeyCode.SHIFT, KeyCode.UP).press(KeyCode.ENTER).settle();
    assertThat(undoName()).contains("level photo side");
    assertThat(only().turn().orElseThrow().evaluate(n -> 0)).isCloseTo(-rise, within(1e-5));

    double x = only().x().evaluate(n -> 0);
    Hands.onFx(
        () -> {
          hands.find("photo-move").orElseThrow().requestFocus();
          return null;
        });
    hands.press(KeyCode.SPACE).press(KeyCode.RIGHT).press(KeyCode.SHIFT, KeyCode.RIGHT);
    assertThat(looksTaken("photo-move")).isTrue();
    assertThat(looksTaken("photo-level")).isFalse();
    assertThat(only().x().evaluate(n -> 0)).isCloseTo(x + 11, within(1e-6));
    for (boolean locked : new boolean[] {true, false}) {
      Hands.onFx(
          () -> {
            hands.find("photo-locked").orElseThrow().requestFocus();
            return null;
          });
      hands.press(KeyCode.SPACE).settle();
      assertThat(only().locked()).isEqualTo(locked);
      assertThat(Hands.onFx(() -> hands.window().hands().hand().says()))
          .as("nothing is said of what can be done no more")
          .isEmpty();
      assertThat(looksTaken("photo-move")).isFalse();
    }

    Slider fade = hands.node("photo-fade", Slider.class);
    Hands.onFx(
        () -> {
          fade.requestFocus();
          return null;
        });
    hands.press(KeyCode.LEFT).settle();
    assertThat(only().fade().evaluate(n -> 0)).isCloseTo(0.45, within(1e-9));
    Hands.onFx(
        () -> {
          hands.find("photo-hidden").orElseThrow().requestFocus();
          return null;
        });
    hands.press(KeyCode.SPACE).settle();
    assertThat(only().hidden()).isTrue();
    hands.until("the photo gone", () -> !isRed(hands.pixel(screen(LEFT))));
  }

  @Test
  @Tag("long")
  void filesFromElsewhereAreCopiedIfAgreedToAndWhatIsMissingOrNoPhotoIsTold() throws Exception {
    Path elsewhere = photo(Files.createDirectories(folder.resolve("phone")).resolve("side.png"));
    Path mine = Files.writeString(layout.resolveSibling("side.png"), "something of mine");
    putIn(elsewhere);
    assertThat(hands.layout().photos()).as("asked first").isEmpty();
    hands.click("answer-copy-it").settle();
    assertThat(only().file()).isEqualTo("side-2.png");
    assertThat(Files.mismatch(elsewhere, layout.resolveSibling("side-2.png"))).isEqualTo(-1);
    assertThat(mine).hasContent("something of mine");
    seen();
    putIn(elsewhere);
    hands.click("answer-not-now").settle();
    assertThat(hands.layout().photos()).hasSize(1);

    Layout before = hands.layout();
    putIn(Files.writeString(layout.resolveSibling("words.png"), "no photo"));
    assertThat(hands.node("notice-trace", Label.class).getText())
        .contains("words.png is no PNG or JPEG file");
    assertThat(hands.layout()).isSameAs(before);
    anotherFileIsMissing();
  }

  /** A missing photo is a notice, and the machine opens all the same. */
  private void anotherFileIsMissing() throws Exception {
    String with =
        Wren.text()
            .replaceFirst(
                "(?s)\\}\\s*$",
                ", \"photos\": {\"lost\": {\"file\": \"lost.jpg\", \"at\": [\"0 mm\", \"1 m\"],"
                    + " \"scale\": \"1 mm\"}}}");
    Path file = Files.writeString(layout.resolveSibling("other.json"), with);
    assertThat(LayoutFile.open(file)).isInstanceOf(LayoutFile.Opening.Opened.class);
    Hands.onFx(
        () -> {
          hands.desk().files().open(file);
          return null;
        });
    hands.until(
        "the notice",
        () -> hands.find("notice-photo-lost").map(n -> ((Label) n).getText()).isPresent());
    assertThat(hands.node("notice-photo-lost", Label.class).getText())
        .contains("lost.jpg does not exist");
    assertThat(hands.shown().layout().photos()).containsOnlyKeys("lost");
    pick("photo:lost");
    hands.click("take-out").settle();
    assertThat(hands.find("notice-photo-lost")).as("of a photo that is no more").isEmpty();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z).settle();
    hands.until("the notice again", () -> hands.find("notice-photo-lost").isPresent());
    photo(layout.resolveSibling("lost.jpg"));
    hands.click("answer-look-again");
    seen();
    assertThat(hands.find("notice-photo-lost")).isEmpty();
  }

  @Test
  @Tag("long")
  void anOutlineIsTakenFromAPathOfAnSvgFileAndSeenWhereItLies() throws Exception {
    Path svg =
        Files.writeString(
            layout.resolveSibling("parts.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' viewBox='0 0 200 100'>"
                + "<path d='M0 0 H10 V10 Z'/><path d='M0 0 H10 V10 Z'/>"
                + "<path id='can' d='M0 0 H100 V60 H0 Z'/></svg>");
    putIn(svg);
    assertThat(hands.node("outline-unit", TextField.class).getText()).isEqualTo("0.5 mm");
    assertThat(hands.node("outline-path-1", javafx.scene.control.ToggleButton.class).isDisabled())
        .as("a path without a name")
        .isTrue();
    hands.click("outline-path-2");
    hands.typeInto("outline-wide", "300 mm");
    assertThat(undoName()).contains("add box from parts.svg");
    assertThat(hands.desk().options().chosen()).isEqualTo("part:box");
    PointMm corner = hands.shown().places().pin("boxSheet");
    PointMm middle = corner.plus(new PointMm(150, -90));
    assertThat(
            Hands.onFx(
                () -> {
                  PointMm px = hands.window().board().onScreen(middle);
                  return hands.window().board().subjectAt(px.x(), px.z());
                }))
        .contains("part:box");
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout().parts()).doesNotContainKey("box");
    assertThat(hands.layout().pins()).doesNotContainKey("boxSheet");
  }
}
