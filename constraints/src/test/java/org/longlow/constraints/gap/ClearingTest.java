package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** Ways out of an overlap, held against trial shifts in many directions. */
class ClearingTest {

  private static final Interval WIDE = new Interval(-1000, 1000);

  private static Geometry shifted(Geometry g, PointMm by) {
    return AffineTransformation.translationInstance(by.x(), by.z()).transform(g);
  }

  private static Clearing clearing(Solid still, Solid moved, double gapMm) {
    return new Clearing(List.of(new Clearing.Position(still, moved)), gapMm);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void noTrialShiftThatIsSmallerClearsAndItDoes(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int overlapping = 0;
    while (overlapping < 25) {
      Geometry a = Bodies.outline(random, 0, 0, 20 + random.nextDouble(60));
      double far = random.nextDouble(60);
      PointMm at = PointMm.unit(random.nextDouble(6.28)).times(far);
      Geometry b = Bodies.outline(random, at.x(), at.z(), 10 + random.nextDouble(50));
      if (!(a.intersection(b).getArea() > 1)) {
        continue;
      }
      overlapping++;
      Solid still = Bodies.body("a", a, WIDE);
      Solid moved = Bodies.body("b", b, WIDE);
      PointMm way = clearing(still, moved, 0).elevation();
      double mm = way.length();
      assertThat(still.to(moved, 100).gapMm()).isCloseTo(-mm, within(1e-3));
      // touching edges share slivers of rounding: a hundredth of a millimetre of room is tried
      assertThat(a.intersection(shifted(b, way)).getArea()).isLessThan(1e-3);
      PreparedGeometry core = PreparedGeometryFactory.prepare(a.buffer(-0.01));
      Geometry less = b.buffer(-0.01);
      for (int ring = 0; ring < 12; ring++) {
        double reach = (mm - 0.05) * (1 - ring * ring / 144.0);
        for (int k = 0; k < 90; k++) {
          PointMm trial = PointMm.unit(2 * Math.PI * (k + 0.07 * ring) / 90).times(reach);
          assertThat(core.intersects(shifted(less, trial)))
              .as("shift %s where %s is said", trial, way)
              .isTrue();
        }
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {5, 6})
  void shiftLeavesTheGapAskedAndHardlyMore(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 60; i++) {
      Geometry a = Bodies.outline(random, 0, 0, 20 + random.nextDouble(60));
      PointMm at = PointMm.unit(random.nextDouble(6.28)).times(random.nextDouble(120));
      Geometry b = Bodies.outline(random, at.x(), at.z(), 10 + random.nextDouble(50));
      double asked = 2 + random.nextDouble(12);
      double room = random.nextDouble(-5, asked);
      Solid still = Bodies.body("a", a, new Interval(-10, 10));
      Interval beside = new Interval(10 + room, 40);
      Solid moved = Bodies.body("b", b, beside);
      PointMm way = clearing(still, moved, asked).elevation();
      Geometry there = shifted(b, way);
      double left = Math.hypot(a.distance(there), Math.max(0, room));
      assertThat(left).isGreaterThanOrEqualTo(asked);
      if (way.length() > 0.1) {
        Solid back = Bodies.body("b", shifted(b, way.times(1 - 0.05 / way.length())), beside);
        Gap less = still.to(back, asked);
        assertThat(less == null ? asked : less.gapMm()).isLessThanOrEqualTo(asked + 1e-9);
      }
    }
  }

  @Test
  void mirroredBodiesHaveTheMirroredWayOut() {
    SplittableRandom random = new SplittableRandom(8);
    AffineTransformation mirror = AffineTransformation.scaleInstance(-1, 1);
    for (int i = 0; i < 60; i++) {
      Geometry a = Bodies.outline(random, 0, 0, 50);
      Geometry b = Bodies.outline(random, 30, 10, 40);
      double y = random.nextDouble(-60, 60);
      Solid still = Bodies.body("a", a, new Interval(-30, 20));
      Solid moved = Bodies.body("b", b, new Interval(y, y + 45));
      Clearing way = clearing(still, moved, 4);
      Clearing ahead =
          clearing(
              Bodies.body("a", mirror.transform(a), new Interval(-20, 30)),
              Bodies.body("b", mirror.transform(b), new Interval(-y - 45, -y)),
              4);
      assertThat(ahead.elevation().length()).isCloseTo(way.elevation().length(), within(1e-3));
      assertThat(Math.abs(ahead.acrossMm())).isCloseTo(Math.abs(way.acrossMm()), within(1e-9));
      Clearing swapped = clearing(moved, still, 4);
      assertThat(swapped.elevation().length()).isCloseTo(way.elevation().length(), within(0.05));
      assertThat(Math.abs(swapped.acrossMm())).isCloseTo(Math.abs(way.acrossMm()), within(1e-9));
    }
  }

  @Test
  void allPositionsAreClearedAtOnce() {
    Solid still = Bodies.body("a", Bodies.plate(0, 0, 100, 20), WIDE);
    Solid other = Bodies.body("a", Bodies.plate(0, 0, 20, 100), WIDE);
    Solid moved = Bodies.body("b", Bodies.plate(15, 15, 30, 30), WIDE);
    Clearing one = clearing(still, moved, 0);
    assertThat(one.elevation().length()).isCloseTo(5, within(1e-3));
    Clearing both =
        new Clearing(
            List.of(new Clearing.Position(still, moved), new Clearing.Position(other, moved)), 0);
    assertThat(both.elevation().x()).isCloseTo(5, within(1e-3));
    assertThat(both.elevation().z()).isCloseTo(5, within(1e-3));
    // 5.1 mm along z alone leaves the second of them
    assertThat(both.elevation().length()).isGreaterThan(5.1);
  }

  // A peg deep in a slot comes out of its wall sideways, not out of the slot.
  @Test
  void pocketsAreUsed() {
    Geometry slotted = Bodies.plate(0, 0, 200, 200).difference(Bodies.plate(90, 20, 30, 200));
    Solid still = Bodies.body("a", slotted, WIDE);
    Solid peg = Bodies.body("b", Bodies.plate(84, 60, 20, 20), WIDE);
    PointMm way = clearing(still, peg, 3).elevation();
    assertThat(way.x()).isCloseTo(9, within(0.01));
    assertThat(way.z()).isCloseTo(0, within(0.01));
  }

  @Test
  void acrossIsTheSmallestShiftOfTheWholeBody() {
    Geometry plate = Bodies.plate(0, 0, 100, 100);
    Solid still = Bodies.body("a", plate, new Interval(-50, 50));
    Solid left = Bodies.body("b", plate, new Interval(42, 90));
    assertThat(clearing(still, left, 3).acrossMm()).isCloseTo(11, within(1e-9));
    Solid right = Bodies.body("b", plate, new Interval(-90, -42));
    assertThat(clearing(still, right, 3).acrossMm()).isCloseTo(-11, within(1e-9));
    assertThat(clearing(still, right, 3).apartMm()).isCloseTo(11, within(1e-9));
    // what stands on both sides cannot be shifted out of both, but both can be set out
    Solid pair = Bodies.body("b", plate, new Interval(42, 90), new Interval(-90, -42));
    assertThat(clearing(still, pair, 3).apartMm()).isCloseTo(11, within(1e-9));
    assertThat(Math.abs(clearing(still, pair, 3).acrossMm())).isGreaterThan(90);
    assertThat(still.to(pair, 100).gapMm()).isCloseTo(-100, within(1e-9));
  }

  /** A cowl of 60 mm to each side that reaches 10 mm into grips: 10 and the gap narrower. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"both", "left", "right"})
  void whatFillsTheMiddleGetsNarrowerByNoMoreThanItMust(String side) {
    Geometry plate = Bodies.plate(0, 0, 100, 100);
    Interval left = new Interval(50, 80);
    Interval right = new Interval(-80, -50);
    Solid grips =
        switch (side) {
          case "left" -> Bodies.body("a", plate, left);
          case "right" -> Bodies.body("a", plate, right);
          default -> Bodies.body("a", plate, left, right);
        };
    Solid cowl = Bodies.body("b", plate, new Interval(-60, 60));
    double apart = clearing(grips, cowl, 3).apartMm();
    assertThat(apart).isCloseTo(-13, within(1e-9));
    assertThat(grips.leastAcrossMm(cowl.apart(apart))).isCloseTo(3, within(1e-9));
  }

  /** Seeded: done, it clears, and a millimetre less does not; beside or over the middle. */
  @Test
  void apartIsTheLeastThatClears() {
    SplittableRandom random = new SplittableRandom(19);
    Geometry plate = Bodies.plate(0, 0, 100, 100);
    int cleared = 0;
    int gone = 0;
    for (int i = 0; i < 400; i++) {
      Interval[] ways = new Interval[2];
      for (int k = 0; k < 2; k++) {
        double from = random.nextDouble(-90, 60);
        ways[k] = new Interval(from, from + random.nextDouble(1, 50));
      }
      Solid still = Bodies.body("a", plate, ways[0]);
      Solid moved = Bodies.body("b", plate, ways[1]);
      double apart = clearing(still, moved, 3).apartMm();
      if (still.leastAcrossMm(moved) >= 3) {
        assertThat(apart).isZero();
        continue;
      }
      double most = Math.min(Math.abs(apart), 200);
      // no smaller one does, either way
      for (double mm = most - 0.01; mm > 0; mm -= 1) {
        assertThat(still.leastAcrossMm(moved.apart(mm))).isLessThan(3);
        Solid in = moved.apart(-mm);
        assertThat(in.hasFaces() ? still.leastAcrossMm(in) : 0).isLessThan(3);
      }
      if (Double.isInfinite(apart)) {
        gone++;
        continue;
      }
      assertThat(still.leastAcrossMm(moved.apart(apart))).isGreaterThanOrEqualTo(3 - 1e-9);
      cleared++;
    }
    assertThat(cleared).isGreaterThan(100);
    assertThat(gone).isGreaterThan(10);
  }

  // Euclid I.47: with 4 mm in the elevation, 3 mm across are 5 mm.
  @Test
  void acrossCountsTheDistanceInTheElevation() {
    Solid still = Bodies.body("a", Bodies.plate(0, 0, 100, 100), new Interval(-50, 50));
    Solid moved = Bodies.body("b", Bodies.plate(104, 0, 50, 50), new Interval(51, 60));
    assertThat(clearing(still, moved, 5).acrossMm()).isCloseTo(2, within(1e-9));
    assertThat(clearing(still, moved, 4).acrossMm()).isZero();
  }

  @Test
  void depthOfUnitedPrismsIsThatOfTheWholeBody() {
    Prism low = new Prism(Bodies.plate(0, 0, 100, 10), WIDE);
    Prism high = new Prism(Bodies.plate(0, 9, 100, 10), WIDE);
    Solid still = new Solid("a", List.of(low, high));
    Solid moved = Bodies.body("b", Bodies.plate(20, 8, 10, 30), WIDE);
    // out of each plate alone it would be 2 and 11 mm; it has to leave both
    assertThat(still.to(moved, 100).gapMm()).isCloseTo(-11, within(1e-3));
  }
}
