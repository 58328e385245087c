package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** The distance and the overlap of outlines, held against those of JTS on seeded shapes. */
class KernelAgainstJtsTest {

  /** So many pairs of each seed. */
  private static final int EACH = Boolean.getBoolean("longlow.long") ? 300 : 100;

  private static final Interval FLAT = new Interval(-50, 50);

  /** A star-like outline, a plate on a 10 mm grid, a strip, a disc, or a ring with a hole. */
  private static Geometry shape(SplittableRandom random) {
    PointMm at = new PointMm(random.nextDouble(600), random.nextDouble(400));
    double size = 10 + random.nextDouble(150);
    switch (random.nextInt(5)) {
      case 0:
        List<PointMm> star = new ArrayList<>();
        int n = 3 + random.nextInt(30);
        for (int i = 0; i < n; i++) {
          double reach = size * (0.3 + 0.7 * random.nextDouble());
          star.add(at.plus(PointMm.unit(2 * Math.PI * i / n).times(reach)));
        }
        return Curves.polygon(star);
      case 1:
        double x = 10 * random.nextInt(60);
        double z = 10 * random.nextInt(40);
        double w = 10 * (1 + random.nextInt(15));
        double h = 10 * (1 + random.nextInt(15));
        return Curves.polygon(
            List.of(
                new PointMm(x, z),
                new PointMm(x, z + h),
                new PointMm(x + w, z + h),
                new PointMm(x + w, z)));
      case 2:
        List<PointMm> line = new ArrayList<>(List.of(at));
        for (int i = 0; i < 3; i++) {
          line.add(line.get(i).plus(PointMm.unit(random.nextDouble(6.28)).times(size)));
        }
        return Curves.strip(line, 5 + random.nextDouble(20));
      case 3:
        return Curves.disc(at, size);
      default:
        return Curves.disc(at, size).difference(Curves.disc(at, 0.7 * size));
    }
  }

  private static Solid body(String name, Geometry outline) {
    return new Solid(name, List.of(new Prism(outline, FLAT)));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void distancesAreThoseOfJts(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int apart = 0;
    for (int i = 0; i < EACH; i++) {
      Geometry a = shape(random);
      Geometry b = shape(random);
      double expected = a.distance(b);
      Gap gap = body("a", a).to(body("b", b), 1e6);
      assertThat(Math.max(0, gap.gapMm())).isCloseTo(expected, within(1e-9));
      if (expected > 0) {
        apart++;
        assertThat(body("a", a).to(body("b", b), expected * (1 - 1e-9))).isNull();
      }
    }
    assertThat(apart).isBetween(EACH / 10, EACH * 9 / 10);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22, 23, 24, 25, 26})
  void overlapsAreThoseOfJts(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int overlapping = 0;
    for (int i = 0; i < EACH; i++) {
      Geometry a = shape(random);
      Geometry b = shape(random);
      Geometry common = a.intersection(b);
      Overlap overlap = new Overlap(Edges.of(a), Edges.of(b));
      // pieces beside a shared edge are told apart 1e-7 mm off it, over some 1000 mm of edge
      assertThat(overlap.areaMm2()).isCloseTo(common.getArea(), within(1e-3));
      if (common.getArea() > 1) {
        overlapping++;
        assertThat(overlap.middle().x()).isCloseTo(common.getCentroid().getX(), within(1e-5));
        assertThat(overlap.middle().z()).isCloseTo(common.getCentroid().getY(), within(1e-5));
      }
    }
    assertThat(overlapping).isGreaterThan(EACH / 10);
  }

  @Test
  void movedBodyHasTheGapOfTheMovedOutline() {
    SplittableRandom random = new SplittableRandom(31);
    for (int i = 0; i < 200; i++) {
      Geometry a = shape(random);
      Geometry b = shape(random);
      double turn = random.nextDouble(-3, 3);
      PointMm shift = new PointMm(random.nextDouble(-300, 300), random.nextDouble(-300, 300));
      Geometry moved =
          AffineTransformation.rotationInstance(turn).translate(shift.x(), shift.z()).transform(a);
      Gap gap = body("a", a).moved(new RigidMotion(turn, shift)).to(body("b", b), 1e6);
      assertThat(Math.max(0, gap.gapMm())).isCloseTo(moved.distance(b), within(1e-9));
    }
  }

  @Test
  void sharedEdgeIsATouchAndNoOverlap() {
    Geometry a = Curves.polygon(box(0, 0, 100));
    Geometry b = Curves.polygon(box(100, 20, 30));
    Gap gap = body("a", a).to(body("b", b), 40);
    assertThat(gap.gapMm()).isZero();
    assertThat(gap.where().x()).isCloseTo(100, within(1e-9));
    assertThat(gap.where().z()).isCloseTo(35, within(1e-9));
  }

  @Test
  void bodyInAHoleStaysClear() {
    Geometry ring = Curves.disc(PointMm.ORIGIN, 100).difference(Curves.polygon(box(-50, -50, 100)));
    Gap gap = body("ring", ring).to(body("pin", Curves.polygon(box(-5, -5, 10))), 100);
    assertThat(gap.gapMm()).isCloseTo(45, within(1e-9));
  }

  @Test
  void deeperOverlapIsLookedForOnlyBelowTheCut() {
    Solid a = body("a", Curves.polygon(box(0, 0, 100)));
    Solid b = body("b", Curves.polygon(box(93, 0, 100)));
    assertThat(a.to(b, -6.9).gapMm()).isCloseTo(-7, within(1e-9));
    assertThat(a.to(b, -7.1)).isNull();
  }

  private static List<PointMm> box(double x, double z, double size) {
    return List.of(
        new PointMm(x, z),
        new PointMm(x + size, z),
        new PointMm(x + size, z + size),
        new PointMm(x, z + size));
  }
}
