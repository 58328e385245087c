package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** Bodies set aside, set apart, turned, bored and laid over each other, by hand and beside JTS. */
class SolidTest {

  private static final double TRUE_MM = 1e-9;
  private static final Geometry PLATE = Bodies.plate(0, 0, 100, 50);

  private static Solid at(double from, double to) {
    return Bodies.body("b", PLATE, new Interval(from, to));
  }

  private static double gap(Solid a, Solid b) {
    return a.leastAcrossMm(b);
  }

  @Test
  void acrossGoesToTheLeft() {
    Solid wall = at(100, 110);
    assertThat(gap(at(10, 20), wall)).isCloseTo(80, within(TRUE_MM));
    assertThat(gap(at(10, 20).across(30), wall)).isCloseTo(50, within(TRUE_MM));
    assertThat(gap(at(10, 20).across(-30), wall)).isCloseTo(110, within(TRUE_MM));
    assertThat(at(10, 20).across(30).to(wall, 1000).gapMm()).isCloseTo(50, within(TRUE_MM));
  }

  @Test
  void apartSetsBothSidesOutAndLetsTheMiddleGrow() {
    Solid left = at(500, 510);
    Solid right = at(-510, -500);
    for (double mm : new double[] {30, -5}) {
      // from 40 to 60 mm on the left: its ends by their distance from the walls
      assertThat(gap(at(40, 60).apart(mm), left)).isCloseTo(440 - mm, within(TRUE_MM));
      assertThat(gap(at(40, 60).apart(mm), right)).isCloseTo(540 + mm, within(TRUE_MM));
      assertThat(gap(at(-60, -40).apart(mm), right)).isCloseTo(440 - mm, within(TRUE_MM));
      assertThat(gap(at(-60, -40).apart(mm), left)).isCloseTo(540 + mm, within(TRUE_MM));
      // over the middle, more to the left
      assertThat(gap(at(-20, 60).apart(mm), left)).isCloseTo(440 - mm, within(TRUE_MM));
      assertThat(gap(at(-20, 60).apart(mm), right)).isCloseTo(480 - mm, within(TRUE_MM));
      assertThat(gap(at(-60, 20).apart(mm), right)).isCloseTo(440 - mm, within(TRUE_MM));
      assertThat(gap(at(-60, 20).apart(mm), left)).isCloseTo(480 - mm, within(TRUE_MM));
      // against the middle from one side it does not grow
      assertThat(gap(at(0, 20).apart(mm), left)).isCloseTo(480 - mm, within(TRUE_MM));
      assertThat(gap(at(0, 20).apart(mm), right)).isCloseTo(500 + mm, within(TRUE_MM));
      assertThat(gap(at(-20, 0).apart(mm), right)).isCloseTo(480 - mm, within(TRUE_MM));
      assertThat(gap(at(-20, 0).apart(mm), left)).isCloseTo(500 + mm, within(TRUE_MM));
    }
    // what is set in by more than half of it is gone
    assertThat(at(-5, 5).apart(-5).hasFaces()).isTrue();
    assertThat(at(-5, 5).apart(-5.1).hasFaces()).isFalse();
    assertThat(at(-5, 5).apart(-5.1).to(left, 1e6)).isNull();
  }

  @Test
  void turnIsTheAngleOfTheSameBodyElsewhere() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 100; i++) {
      Solid body = Bodies.body("b", Bodies.outline(random, 40, -20, 60), new Interval(0, 9));
      double turn = random.nextDouble(-3.1, 3.1);
      RigidMotion motion =
          new RigidMotion(turn, new PointMm(random.nextDouble(900), random.nextDouble(900)));
      assertThat(body.turnRad(body.moved(motion))).isCloseTo(turn, within(1e-9));
    }
    Solid plate = at(0, 9);
    RigidMotion tenth = new RigidMotion(0.1, PointMm.ORIGIN);
    // grown by 1 %, other corners, more outlines, nothing left: no longer the same body
    Geometry grown = AffineTransformation.scaleInstance(1.01, 1.01).transform(PLATE);
    assertThat(plate.turnRad(Bodies.body("b", grown, new Interval(0, 9)).moved(tenth))).isZero();
    Solid disc = Bodies.body("b", Curves.disc(PointMm.ORIGIN, 50), new Interval(0, 9));
    assertThat(plate.turnRad(disc.moved(tenth))).isZero();
    Interval wide = new Interval(0, 9);
    Solid two = new Solid("b", List.of(new Prism(PLATE, wide), new Prism(grown, wide)));
    assertThat(plate.turnRad(two.moved(tenth))).isZero();
    Solid none = new Solid("b", List.of());
    assertThat(none.turnRad(none)).isZero();
  }

  @Test
  void beyondTakesDiscsAway() {
    Solid plate = at(0, 9);
    PointMm corner = new PointMm(0, 0);
    // the corner in the disc, a pin 5 mm off it: 30 mm less 5 mm
    Solid pin = Bodies.body("pin", Bodies.plate(-5, -5, 5, 5), new Interval(0, 9));
    assertThat(plate.to(pin, 1e3).gapMm()).isZero();
    Solid bored = plate.beyond(List.of(corner), 30);
    assertThat(bored.to(pin, 1e3).gapMm()).isCloseTo(30, within(0.02));
    assertThat(bored.overlaps(Bodies.body("c", Curves.disc(corner, 29), new Interval(0, 9))))
        .isFalse();
    assertThat(bored.overlaps(Bodies.body("c", Curves.disc(corner, 31), new Interval(0, 9))))
        .isTrue();
    // two points at once, one of them far away; then all of it
    Solid twice = plate.beyond(List.of(corner, new PointMm(1e4, 0), new PointMm(100, 50)), 30);
    Solid opposite = Bodies.body("pin", Bodies.plate(100, 50, 5, 5), new Interval(0, 9));
    assertThat(twice.to(pin, 1e3).gapMm()).isCloseTo(30, within(0.02));
    assertThat(twice.to(opposite, 1e3).gapMm()).isCloseTo(30, within(0.02));
    assertThat(plate.beyond(List.of(new PointMm(50, 25)), 56).hasFaces()).isFalse();
    assertThat(plate.beyond(List.of(new PointMm(50, 25)), 55).hasFaces()).isTrue();
    // out of reach of the disc it stays
    assertThat(plate.beyond(List.of(new PointMm(131, 0)), 30).to(pin, 1e3).gapMm()).isZero();
  }

  @Test
  void reachIsThatOfTheFarthestCorner() {
    Interval wide = new Interval(0, 9);
    Solid two =
        new Solid(
            "b", List.of(new Prism(PLATE, wide), new Prism(Bodies.plate(200, 0, 10, 10), wide)));
    assertThat(two.reachMm(PointMm.ORIGIN)).isCloseTo(Math.hypot(210, 10), within(TRUE_MM));
    assertThat(two.reachMm(new PointMm(300, 0))).isCloseTo(Math.hypot(300, 50), within(TRUE_MM));
  }

  @Test
  void overlapsAreSharedInAllThreeDirections() {
    Solid plate = at(0, 9);
    Interval side = new Interval(5, 20);
    assertThat(plate.overlaps(Bodies.body("c", Bodies.plate(99, 0, 50, 50), side))).isTrue();
    assertThat(plate.overlaps(Bodies.body("c", Bodies.plate(100, 0, 50, 50), side))).isFalse();
    assertThat(plate.overlaps(Bodies.body("c", Bodies.plate(90, 0, 50, 50), new Interval(9, 20))))
        .isFalse();
    // one inside the other, each way
    Solid small = Bodies.body("c", Bodies.plate(40, 20, 5, 5), side);
    assertThat(plate.overlaps(small)).isTrue();
    assertThat(small.overlaps(plate)).isTrue();
  }

  /** The farthest corner of the common area from the nearest of some pins, beside JTS. */
  @Test
  void overlapsReachAwayFromPins() {
    SplittableRandom random = new SplittableRandom(12);
    Interval wide = new Interval(0, 9);
    int shared = 0;
    for (int i = 0; i < 200; i++) {
      Geometry a = Bodies.outline(random, 0, 0, 60);
      Geometry b = Bodies.outline(random, random.nextDouble(120), random.nextDouble(60), 50);
      List<PointMm> pins =
          List.of(
              new PointMm(random.nextDouble(100), random.nextDouble(50)),
              new PointMm(random.nextDouble(100), random.nextDouble(50)));
      Geometry common = a.intersection(b);
      double most = 0;
      for (Coordinate c : common.getArea() > 1 ? common.getCoordinates() : new Coordinate[0]) {
        most =
            Math.max(
                most,
                pins.stream()
                    .mapToDouble(p -> Math.hypot(c.x - p.x(), c.y - p.z()))
                    .min()
                    .getAsDouble());
      }
      shared += most > 0 ? 1 : 0;
      Solid first = Bodies.body("a", a, wide);
      assertThat(first.overlapsAwayMm(Bodies.body("b", b, wide), pins))
          .as("pair %d", i)
          .isCloseTo(most, within(1e-6));
      assertThat(first.overlapsAwayMm(Bodies.body("b", b, new Interval(9, 12)), pins)).isZero();
    }
    assertThat(shared).isGreaterThan(50);
  }

  /** Distances below a cut, with several outlines at several places across the machine. */
  @Test
  void distanceIsTheLeastOverAllOutlinesAndNothingBeyondTheCut() {
    SplittableRandom random = new SplittableRandom(22);
    int overlapping = 0;
    for (int i = 0; i < 300; i++) {
      List<Prism> some = prisms(random, 0);
      List<Prism> others = prisms(random, 80);
      double least = Double.POSITIVE_INFINITY;
      boolean in = false;
      for (Prism p : some) {
        for (Prism q : others) {
          double across = p.across().gap(q.across());
          double side = p.outline().distance(q.outline());
          in |= across < 0 && p.outline().intersection(q.outline()).getArea() > 1e-3;
          least = Math.min(least, Math.hypot(Math.max(0, across), side));
        }
      }
      Solid a = new Solid("a", some);
      Solid b = new Solid("b", others);
      overlapping += in ? 1 : 0;
      assertThat(a.overlaps(b)).isEqualTo(in);
      assertThat(a.apartMm(b, 1e6)).isCloseTo(in ? -1 : least, within(TRUE_MM));
      Gap gap = a.to(b, 1e6);
      assertThat(Math.max(0, gap.gapMm())).isCloseTo(in ? 0 : least, within(TRUE_MM));
      assertThat(gap.gapMm() < 0).isEqualTo(in);
      if (!in && least > 1) {
        assertThat(a.apartMm(b, least - 0.01)).isInfinite();
        assertThat(a.apartMm(b, least + 0.01)).isCloseTo(least, within(TRUE_MM));
        assertThat(a.to(b, least - 0.01)).isNull();
        assertThat(a.to(b, least + 0.01).gapMm()).isCloseTo(least, within(TRUE_MM));
      }
    }
    assertThat(overlapping).isBetween(15, 285);
  }

  private static List<Prism> prisms(SplittableRandom random, double x) {
    Prism[] prisms = new Prism[1 + random.nextInt(3)];
    for (int k = 0; k < prisms.length; k++) {
      double y = random.nextDouble(-60, 60);
      prisms[k] =
          new Prism(
              Bodies.outline(random, x + random.nextDouble(150), random.nextDouble(150), 50),
              new Interval(y, y + random.nextDouble(40)));
    }
    return List.of(prisms);
  }

  /** A gap says where it is: the middle between the nearest points, or of what is common. */
  @Test
  void whereIsBetweenThem() {
    Solid left = Bodies.body("l", Bodies.plate(0, 0, 100, 50), new Interval(0, 9));
    Gap apart = left.to(Bodies.body("r", Bodies.plate(130, 50, 10, 10), new Interval(0, 9)), 99);
    assertThat(apart.where().distance(new PointMm(115, 50))).isLessThan(TRUE_MM);
    // of two overlaps the larger, 10 by 50 against 4 by 10 mm
    Interval wide = new Interval(0, 9);
    Solid two =
        new Solid(
            "two",
            List.of(
                new Prism(Bodies.plate(20, -10, 4, 20), wide),
                new Prism(Bodies.plate(90, -10, 30, 80), wide)));
    assertThat(left.to(two, 99).where().distance(new PointMm(95, 25))).isLessThan(1e-6);
    Solid twice =
        new Solid(
            "two",
            List.of(
                new Prism(Bodies.plate(90, -10, 30, 80), wide),
                new Prism(Bodies.plate(20, -10, 4, 20), wide)));
    assertThat(left.to(twice, 99).where().distance(new PointMm(95, 25))).isLessThan(1e-6);
  }

  @Test
  void outlinesAreThoseOfTheFacesEachOnce() {
    Interval a = new Interval(0, 9);
    Interval b = new Interval(20, 29);
    Geometry other = Bodies.plate(200, 0, 9, 9);
    Geometry none = Curves.disc(PointMm.ORIGIN, 0);
    List<Prism> prisms =
        List.of(new Prism(PLATE, a), new Prism(none, a), new Prism(other, a), new Prism(PLATE, b));
    assertThat(Solid.outlines(prisms)).containsExactly(PLATE, other);
    Solid solid = new Solid("s", prisms);
    // the plate stands on both sides
    assertThat(gap(solid, at(40, 50))).isCloseTo(11, within(TRUE_MM));
    assertThat(gap(solid, at(-50, -40))).isCloseTo(40, within(TRUE_MM));
  }
}
