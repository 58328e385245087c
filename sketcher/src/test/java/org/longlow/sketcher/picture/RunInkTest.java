package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;

/** Chains as drawn, read back from the marks and held against the figures of the file. */
class RunInkTest {

  private static final Study HERON = Shipped.study("heron");

  private static List<Geometry> chain(Drawing drawing, String layer) {
    return drawing.layers().stream()
        .filter(l -> l.id().equals(layer))
        .flatMap(l -> l.marks().stream())
        .filter(m -> m.subject().equals("tie:chain"))
        .map(m -> ((Mark.Shape) m).geometry())
        .toList();
  }

  @Test
  void aBandOfItsLengthRunsRoundBothSprockets() {
    List<Geometry> marks =
        chain(ElevationPicture.of(HERON, PictureOptions.PLAIN.withAsDrawn()), "runs");
    // 84 links of 15.875 mm with plates 16 mm high; chords of 5 degrees take 0.02 % off an arc
    double length = 84 * 15.875;
    assertThat(marks.get(0).getArea()).isCloseTo(16 * length, within(0.001 * 16 * length));
    assertThat(marks.get(1).getLength()).isCloseTo(length, within(0.001 * length));
    // its pitch line keeps to the pitch circles, 16 and 40 teeth, and goes nowhere else
    PointMm axle = HERON.placed().places().pin("rearAxle");
    double wheel = 15.875 / (2 * Math.sin(Math.PI / 40));
    double nearest = Double.POSITIVE_INFINITY;
    for (Coordinate c : marks.get(1).getCoordinates()) {
      nearest = Math.min(nearest, axle.distance(new PointMm(c.x, c.y)));
    }
    assertThat(nearest).isCloseTo(wheel, within(1e-6));
  }

  @Test
  void fromAboveItLiesAtTheLeftAsBroadAsItIs() {
    Drawing plan =
        AspectPicture.of(HERON, PictureOptions.PLAIN.withAsDrawn().withAspect(Aspect.PLAN));
    Envelope box = new Envelope();
    List<Geometry> hidden = chain(plan, "hidden");
    hidden.forEach(g -> box.expandToInclude(g.getEnvelopeInternal()));
    chain(plan, "runs").forEach(g -> box.expandToInclude(g.getEnvelopeInternal()));
    // 92 mm to the left, 20 mm broad
    assertThat(box.getMinY()).isCloseTo(82, within(1e-6));
    assertThat(box.getMaxY()).isCloseTo(102, within(1e-6));
  }
}
