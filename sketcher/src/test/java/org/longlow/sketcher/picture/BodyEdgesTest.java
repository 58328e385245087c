package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Where lines leave what is filled, against cutting them with it. */
class BodyEdgesTest {

  private static Drawing picture(String subject, Geometry... areas) {
    return Drawing.of(
        "",
        new Layer(
            "body",
            "",
            java.util.Arrays.stream(areas)
                .map(a -> (Mark) new Mark.Shape(subject, a, Style.area(Tone.INK, 1)))
                .toList()));
  }

  private static Geometry blot(SplittableRandom random, double x, double y) {
    Coordinate[] ring = new Coordinate[13];
    for (int i = 0; i < 12; i++) {
      double r = 20 + 60 * random.nextDouble();
      ring[i] =
          new Coordinate(x + r * Math.cos(i * Math.PI / 6), y + r * Math.sin(i * Math.PI / 6));
    }
    ring[12] = ring[0].copy();
    return Planar.FACTORY.createPolygon(ring);
  }

  @Test
  void linesEndWhereCuttingThemSaysTheyDo() {
    SplittableRandom random = new SplittableRandom(7);
    int met = 0;
    for (int i = 0; i < 400; i++) {
      Geometry a = blot(random, 0, 0);
      Geometry b = blot(random, 90, 30);
      BodyEdges bodies = BodyEdges.of(picture("part:x", a, b));
      boolean level = i % 2 == 0;
      double at = -80 + 200 * random.nextDouble();
      double from = -100 + 200 * random.nextDouble();
      double to = i % 4 < 2 ? 300 : -300;
      Geometry line = level ? Planar.line(from, at, to, at) : Planar.line(at, from, at, to);
      Geometry inside = line.intersection(a.union(b));
      double wanted = from;
      if (!inside.isEmpty()) {
        var box = inside.getEnvelopeInternal();
        double low = level ? box.getMinX() : box.getMinY();
        double high = level ? box.getMaxX() : box.getMaxY();
        wanted = to > from ? high : low;
        met++;
      }
      assertThat(bodies.left(level, at, from, to)).isCloseTo(wanted, within(1e-6));
    }
    assertThat(met).isGreaterThan(100);
  }

  @Test
  void onlyPartsAndPeopleCount() {
    Geometry box = Planar.rectangle(0, 0, 10, 10);
    assertThat(BodyEdges.of(picture("part:a", box)).left(true, 5, -1, 20)).isEqualTo(10);
    assertThat(BodyEdges.of(picture("person:a", box)).left(true, 5, 20, -1)).isEqualTo(0);
    assertThat(BodyEdges.of(picture("ground", box)).left(true, 5, -1, 20)).isEqualTo(-1);
    assertThat(BodyEdges.NONE.left(true, 5, -1, 20)).isEqualTo(-1);
  }
}
