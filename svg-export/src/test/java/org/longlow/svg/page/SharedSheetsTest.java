package org.longlow.svg.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.match.HausdorffSimilarityMeasure;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Pieces that share a sheet: whole, true to size, with room for the saw, clear of bars. */
class SharedSheetsTest {

  /** A piece without words that can be turned. */
  private record Piece(Geometry cut, double turnRad) implements LaidOut {
    @Override
    public Drawing on(Function<Envelope, Tiling> sheets) {
      Geometry lies = AffineTransformation.rotationInstance(turnRad).transform(cut);
      return Drawing.of(
          "",
          new Layer("outline", "", List.of(new Mark.Shape("piece", lies, Style.wide(Tone.INK)))));
    }

    @Override
    public Optional<Geometry> ink() {
      return Optional.of(cut);
    }

    @Override
    public LaidOut turned(double rad) {
      return new Piece(cut, turnRad + rad);
    }
  }

  private static List<LaidOut> pieces(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<LaidOut> out = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double a = random.nextDouble(15, 150);
      double b = random.nextDouble(15, 90);
      double off = random.nextDouble(0, 40);
      Geometry g =
          random.nextBoolean()
              ? Planar.polygon(0, 0, a, off, a - 5, b + off, 3, b)
              : Planar.disc(0, 0, b / 2).union(Planar.rectangle(0, -5, a, 5));
      out.add(new Piece(AffineTransformation.translationInstance(i * 900, -300).transform(g), 0));
    }
    return out;
  }

  /** A bar that lies slantwise is as long as it is, not as its box. */
  @Test
  void whatIsLongHasAPieceOfARollForItself() {
    List<LaidOut> bars = new ArrayList<>();
    for (double length : new double[] {1230, 1100, 300, 200}) {
      Geometry bar = Planar.rectangle(0, 0, length, 30);
      bars.add(new Piece(AffineTransformation.rotationInstance(Math.PI / 4).transform(bar), 0));
    }
    SharedSheets.Shared shared =
        SharedSheets.of("Small parts", bars, TemplateSettings.on(Paper.roll(610)));
    assertThat(shared.left(4)).containsExactly(0);
    assertThat(shared.pages())
        .allMatch(p -> Math.max(p.paper().widthMm(), p.paper().heightMm()) <= 1200 + 21);
    // sheets have one length: there what fits one may share it
    assertThat(SharedSheets.of("Small parts", bars, TemplateSettings.on(Paper.A0)).left(4))
        .doesNotContain(1, 2, 3);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void piecesKeepTheirShapeAndRoomForTheSaw(long seed) {
    List<LaidOut> pieces = pieces(seed);
    TemplateSettings settings = TemplateSettings.on(seed % 2 == 0 ? Paper.A4 : Paper.LETTER);
    SharedSheets.Shared shared = SharedSheets.of("Small parts", pieces, settings);
    assertThat(shared.left(pieces.size())).hasSizeLessThanOrEqualTo(1);
    assertThat(shared.pages()).hasSizeLessThan(pieces.size() / 2);
    for (int n = 0; n < shared.pages().size(); n++) {
      Page page = shared.pages().get(n);
      List<Geometry> lie =
          TemplateSheetsTest.shapes(page, "piece").map(Mark.Shape::geometry).toList();
      assertThat(lie).hasSameSizeAs(shared.pieces().get(n)).hasSizeGreaterThan(1);
      Envelope printable =
          new Envelope(10, page.paper().widthMm() - 10, 10, page.paper().heightMm() - 10);
      List<Geometry> blocks = new ArrayList<>();
      TemplateSheetsTest.shapes(page, "scale-bar").forEach(s -> blocks.add(s.geometry()));
      assertThat(blocks).hasSizeGreaterThanOrEqualTo(2);
      for (int i = 0; i < lie.size(); i++) {
        assertThat(printable.contains(lie.get(i).getEnvelopeInternal())).isTrue();
        Geometry drawn = ((Piece) pieces.get(shared.pieces().get(n).get(i))).cut();
        assertThat(lie.get(i).getArea()).isCloseTo(drawn.getArea(), withinMm(1e-6));
        assertThat(turnedLike(drawn, lie.get(i))).as("its shape, turned").isTrue();
        for (int k = 0; k < i; k++) {
          assertThat(lie.get(i).distance(lie.get(k))).isGreaterThanOrEqualTo(6);
        }
        for (Geometry block : blocks) {
          assertThat(lie.get(i).distance(block)).isGreaterThan(1);
        }
      }
    }
  }

  private static org.assertj.core.data.Offset<Double> withinMm(double mm) {
    return org.assertj.core.data.Offset.offset(mm);
  }

  /** Whether the second is the first turned about by the angle of its first side and moved. */
  private static boolean turnedLike(Geometry drawn, Geometry lies) {
    var a = drawn.getCoordinates();
    var b = lies.getCoordinates();
    double turn =
        Math.atan2(b[1].y - b[0].y, b[1].x - b[0].x) - Math.atan2(a[1].y - a[0].y, a[1].x - a[0].x);
    AffineTransformation t = AffineTransformation.translationInstance(-a[0].x, -a[0].y);
    t.rotate(turn).translate(b[0].x, b[0].y);
    return t.transform(drawn).equalsExact(lies, 0.001)
        && new HausdorffSimilarityMeasure().measure(t.transform(drawn), lies) > 0.99;
  }
}
