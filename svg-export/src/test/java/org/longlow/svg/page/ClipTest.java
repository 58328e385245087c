package org.longlow.svg.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

class ClipTest {

  private static final Envelope BOX = new Envelope(0, 100, 0, 60);

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  // JTS overlay judges: an independent algorithm on the same input.
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void linesAndAreasAreThoseOfAnOverlay(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Coordinate[] points = new Coordinate[12];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Coordinate(random.nextDouble(-80, 180), random.nextDouble(-60, 120));
    }
    Geometry hull = new ConvexHull(points, Planar.FACTORY).getConvexHull();
    Geometry shape = hull.difference(Planar.disc(50, 30, random.nextDouble(2, 40)));
    Polygon box = Planar.rectangle(BOX);
    assertThat(Clip.areas(shape, BOX).getArea())
        .isEqualTo(shape.intersection(box).getArea(), within(1e-6));
    assertThat(Clip.lines(shape, BOX).getLength())
        .isEqualTo(shape.getBoundary().intersection(box).getLength(), within(1e-6));
  }

  @Test
  void aCutOutlineHasNoEdgeAlongTheRectangle() {
    Drawing cut = clip(Style.area(Tone.TANK, 0.5).withStroke(Tone.INK, 0.5));
    List<Mark> marks = cut.layers().get(0).marks();
    assertThat(marks).hasSize(2);
    Mark.Shape area = (Mark.Shape) marks.get(0);
    Mark.Shape line = (Mark.Shape) marks.get(1);
    assertThat(area.style().stroke()).isNull();
    assertThat(area.geometry().getArea()).isEqualTo(50 * 40.0);
    assertThat(line.style().fill()).isNull();
    assertThat(line.geometry().getLength()).isEqualTo(50 + 40 + 50.0);
    assertThat(line.subject()).isEqualTo("part");
  }

  private static Drawing clip(Style style) {
    return Clip.drawing(
        Drawing.of(
            "",
            new Layer(
                "l",
                "",
                List.of(new Mark.Shape("part", Planar.rectangle(50, 10, 150, 50), style)))),
        BOX);
  }

  @Test
  void anOutlineThatCrossesItselfIsCutWithoutComplaint() {
    Polygon bow = Planar.polygon(-50, -50, 150, 150, 150, -50, -50, 150);
    assertThat(bow.isValid()).isFalse();
    assertThat(Clip.lines(bow, BOX).getLength()).isGreaterThan(100);
    assertThat(Clip.areas(bow, BOX).isEmpty()).isFalse();
  }

  @Test
  void wordsAreKeptWholeSlidInsideOrLeftOut() {
    Mark near = Mark.Words.level("a long label", 95, 58, 5, Anchor.START, Tone.INK);
    Mark outside = Mark.Words.level("elsewhere", 101, 30, 5, Anchor.START, Tone.INK);
    Drawing cut = Clip.drawing(Drawing.of("", new Layer("l", "", List.of(near, outside))), BOX);
    assertThat(cut.layers().get(0).marks()).hasSize(1);
    Mark.Words kept = (Mark.Words) cut.layers().get(0).marks().get(0);
    assertThat(kept.text()).isEqualTo("a long label");
    Envelope grown = new Envelope(BOX);
    grown.expandBy(1e-9);
    assertThat(grown.contains(kept.boxMm())).isTrue();
  }
}
