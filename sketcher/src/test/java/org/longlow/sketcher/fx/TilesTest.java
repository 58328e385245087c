package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.PinDrag;
import org.longlow.sketcher.picture.ElevationPicture;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Tone;
import org.testfx.api.FxToolkit;

/** What is painted piece by piece is what painting everything gives. */
@Windowed
class TilesTest {

  private static final int WIDE = 1000;
  private static final int HIGH = 560;
  private static final int MOVES = 12;

  /** The toolkit works out where a line crosses a row of pixels from where it enters the clip. */
  private static final int ROUNDING = 2;

  @BeforeAll
  static void start() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  /** Pins are dragged about, people and names go and come, the card is moved and enlarged. */
  @ParameterizedTest
  @MethodSource("org.longlow.sketcher.picture.Shipped#sample")
  void pixelForPixel(String machine) {
    Study study = org.longlow.sketcher.picture.Shipped.study(machine);
    Layout layout = study.layout();
    PictureOptions look =
        PictureOptions.PLAIN.withNames(true).withDimensions(true).withDenominator(12);
    DrawingPainter painter = new DrawingPainter(Look.DAY.palette());
    Steady steady = new Steady();
    Tiles tiles = Hands.onFx(() -> sized(new Tiles(true)));
    ViewFrame frame = new ViewFrame(0.32, 120, 470);
    List<String> pins = new ArrayList<>(layout.pins().keySet());
    Random random = new Random(20260);
    PinDrag drag = null;
    for (int i = 0; i < MOVES; i++) {
      if (i % 4 == 0) {
        drag = null;
        while (drag == null) {
          drag = PinDrag.of(study.placed(), pins.get(random.nextInt(pins.size()))).orElse(null);
        }
      }
      if (i % 5 == 3) {
        look = look.withDimensions(!look.dimensions()).withNames(random.nextBoolean());
      }
      if (i == 6) {
        frame = frame.panned(7.3, -3.1);
      }
      PointMm from = study.placed().places().pin(drag.pin());
      PointMm step = new PointMm(random.nextGaussian() * 8, random.nextGaussian() * 8);
      List<Ink> inks = new ArrayList<>();
      ViewFrame seen = frame;
      var drawing = ElevationPicture.of(drag.moveTo(from.plus(step)), look);
      Hands.onFx(
          () -> {
            Pen pen = new Pen(painter);
            pen.setFill(painter.colour(Tone.PAPER));
            pen.fillRect(0, 0, WIDE, HIGH);
            steady
                .moving(drawing, seen.pxPerMm())
                .forEach(m -> pen.add(MarkInk.of(painter, m, seen, 1, 1)));
            Rule.paint(pen, painter, seen, false, WIDE, HIGH);
            inks.addAll(pen.taken());
            tiles.paint(inks);
            return null;
          });
      assertThat(farthest(pixels(tiles), pixels(whole(inks))))
          .as("move %d", i)
          .isLessThanOrEqualTo(ROUNDING);
    }
    assertThat(tiles.painted()).as("not everything each time").isLessThan(MOVES * 4 * 7 * 3 / 4);
  }

  /** What lies over the card is seen through, and goes away again. */
  @Test
  void whatIsTakenAwayLeavesNothing() {
    DrawingPainter painter = new DrawingPainter(Look.NIGHT.palette());
    Tiles tiles = Hands.onFx(() -> sized(new Tiles(false)));
    Random random = new Random(7);
    Pen pen = new Pen(painter);
    for (int i = 0; i < 10; i++) {
      for (int k = 0; k < 8; k++) {
        double x = random.nextDouble() * WIDE;
        double y = random.nextDouble() * HIGH;
        pen.setStroke(Color.hsb(40 * k, 1, 0.8));
        pen.setFill(Color.hsb(40 * k, 1, 0.5, 0.6));
        pen.setLineWidth(0.5 + 3 * random.nextDouble());
        pen.setLineDashes(random.nextBoolean() ? new double[] {3, 4} : new double[0]);
        double far = 90 * random.nextDouble();
        double[] across = {x, x + far, x + 20, x - far};
        double[] down = {y, y - 30, y + far, y - far};
        switch (k) {
          case 0 -> pen.strokeLine(x, y, x + 5 * far, y - 4 * far);
          case 1 -> pen.strokeOval(x, y, far, 60);
          case 2 -> pen.fillOval(x, y, far, 60);
          case 3 -> pen.strokeRect(x, y, far, 40);
          case 4 -> pen.strokePolyline(across, down, 4);
          case 5 -> pen.strokePolygon(across, down, 4);
          case 6 -> pen.fillPolygon(across, down, 4);
          default -> {
            pen.setLetters(
                painter.font(9),
                javafx.scene.text.TextAlignment.CENTER,
                javafx.geometry.VPos.BASELINE);
            pen.fillText("jump over " + i, x, y);
          }
        }
      }
      List<Ink> inks = pen.taken();
      Hands.onFx(
          () -> {
            tiles.paint(inks);
            return null;
          });
      assertThat(farthest(pixels(tiles), pixels(whole(inks))))
          .as("step %d", i)
          .isLessThanOrEqualTo(ROUNDING);
    }
    Hands.onFx(
        () -> {
          tiles.paint(List.of());
          return null;
        });
    assertThat(Arrays.stream(pixels(tiles)).allMatch(p -> p == 0)).as("nothing left").isTrue();
  }

  private static Tiles sized(Tiles tiles) {
    tiles.take(WIDE, HIGH);
    return tiles;
  }

  /** Everything on one canvas, as if there were no tiles. */
  private static Canvas whole(List<Ink> inks) {
    return Hands.onFx(
        () -> {
          Canvas canvas = new Canvas(WIDE, HIGH);
          inks.forEach(ink -> ink.paint(canvas.getGraphicsContext2D()));
          return canvas;
        });
  }

  private static int[] pixels(Node node) {
    return Hands.onFx(
        () -> {
          SnapshotParameters clear = new SnapshotParameters();
          clear.setFill(Color.TRANSPARENT);
          clear.setViewport(new javafx.geometry.Rectangle2D(0, 0, WIDE, HIGH));
          WritableImage seen = node.snapshot(clear, null);
          int[] argb = new int[WIDE * HIGH];
          seen.getPixelReader()
              .getPixels(0, 0, WIDE, HIGH, PixelFormat.getIntArgbPreInstance(), argb, 0, WIDE);
          return argb;
        });
  }

  /** Returns by how much the channel of the pixel that differs most does, in 255ths. */
  private static int farthest(int[] a, int[] b) {
    int most = 0;
    for (int i = 0; i < a.length; i++) {
      for (int shift = 0; shift < 32 && a[i] != b[i]; shift += 8) {
        most = Math.max(most, Math.abs((a[i] >> shift & 255) - (b[i] >> shift & 255)));
      }
    }
    return most;
  }

  /** Its box is that of where it lies, or what was painted there would stay. */
  @Test
  void whatIsPickedTooSaysHowFarItReachesOnTheRoad() {
    Geometry outline = Planar.rectangle(100, 200, 300, 250);
    assertThat(outline.getEnvelopeInternal().getMinY()).isEqualTo(200);
    Ground low = new Ground(new PointMm(0, -40), new PointMm(1600, -40));
    assertThat(Picking.onRoad(low, outline).getEnvelopeInternal())
        .isEqualTo(new Envelope(100, 300, 240, 290));
  }
}
