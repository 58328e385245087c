package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.gap.Bodies.body;
import static org.longlow.constraints.gap.Bodies.hull;
import static org.longlow.constraints.gap.Bodies.plate;
import static org.longlow.constraints.gap.Bodies.rooms;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** Contacts measured again after a small move, their slopes, and that left is like right. */
class ContactSidesTest {

  private static double[] sides(Contacts contacts, Geometry outline, boolean first) {
    double[] sides = new double[contacts.count()];
    if (first) {
      contacts.sidesOfFirst(0, outline, sides);
    } else {
      contacts.sidesOfSecond(0, outline, sides);
    }
    return sides;
  }

  /** A hundredth of a millimetre does not change which places are nearest. */
  @Test
  void measuredAgainTheLeastIsTheDistanceOfTheMovedOutlines() {
    SplittableRandom random = new SplittableRandom(17);
    for (int i = 0; i < 200; i++) {
      Geometry a = hull(random, 0, 0, 100);
      Geometry b = hull(random, random.nextDouble(210, 300), random.nextDouble(-100, 100), 100);
      Contacts contacts = Contacts.of(body(a), body(b), 5, 1e4, 20);
      AffineTransformation move =
          AffineTransformation.translationInstance(
              random.nextDouble(-0.01, 0.01), random.nextDouble(-0.01, 0.01));
      move.rotate(random.nextDouble(-1e-5, 1e-5));
      Geometry nearA = move.transform(a);
      Geometry nearB = move.transform(b);
      assertThat(Arrays.stream(sides(contacts, nearA, true)).min().getAsDouble())
          .isCloseTo(nearA.distance(b), within(1e-6));
      assertThat(Arrays.stream(sides(contacts, nearB, false)).min().getAsDouble())
          .isCloseTo(a.distance(nearB), within(1e-6));
      // unmoved, each is its own room over no gap
      double[] same = sides(contacts, a, true);
      for (int k = 0; k < contacts.count(); k++) {
        assertThat(same[k]).isCloseTo(contacts.roomMm(k, 0), within(1e-9));
      }
      assertThat(sides(contacts, b, false)).containsExactly(same, within(1e-9));
    }
  }

  @Test
  void anOverlapIsMeasuredAgainToo() {
    Geometry a = plate(0, 0, 100, 100);
    Geometry b = plate(93, 10, 100, 60);
    for (boolean swapped : new boolean[] {false, true}) {
      Contacts contacts =
          swapped
              ? Contacts.of(body(b), body(a), 5, 100, 6)
              : Contacts.of(body(a), body(b), 5, 100, 6);
      assertThat(contacts.count()).isEqualTo(1);
      assertThat(contacts.roomMm(0, 5)).isCloseTo(-12, within(1e-9));
      assertThat(sides(contacts, plate(0, 0, 101, 100), !swapped)[0]).isCloseTo(-8, within(1e-9));
      assertThat(sides(contacts, plate(96, 10, 100, 60), swapped)[0]).isCloseTo(-4, within(1e-9));
    }
  }

  /** One with fewer corners cannot be compared place by place. */
  @Test
  void anotherOutlineSaysSo() {
    Geometry low = plate(0, 0, 400, 20);
    Geometry high = plate(100, 50, 200, 20);
    GeometryFactory factory = new GeometryFactory();
    Geometry three =
        factory.createPolygon(
            new Coordinate[] {
              new Coordinate(0, 0), new Coordinate(9, 0), new Coordinate(0, 9), new Coordinate(0, 0)
            });
    Contacts contacts = Contacts.of(body(low), body(high), 10, 80, 6);
    double[] full = sides(contacts, low, true);
    assertThat(full).containsExactly(30, 30);
    // all four corners and edges of each are there: the fourth one is missing in a triangle
    Contacts all = Contacts.of(body(low), body(high), 10, 1e4, 20);
    double[] few = sides(all, three, true);
    double[] none = sides(all, factory.createPolygon(), true);
    assertThat(Arrays.stream(few).filter(Double::isNaN).count()).isPositive();
    assertThat(none).containsOnly(Double.NaN);
    Contacts in = Contacts.of(body(low), body(plate(10, 15, 20, 90)), 10, 80, 6);
    assertThat(sides(in, factory.createPolygon(), true)).containsExactly(Double.NaN);
  }

  /** The slope of what is needed in the elevation, beside a central difference. */
  @Test
  void slopeOfTheRoom() {
    Geometry low = plate(0, 0, 100, 100);
    Geometry high = plate(0, 110, 100, 100);
    for (double room : new double[] {-4, 0, 6}) {
      Solid a = Bodies.body("a", low, new Interval(0, 10));
      Solid b = Bodies.body("b", high, new Interval(10 + room, 30));
      Contacts contacts = Contacts.of(a, b, 10, 1000, 6);
      double step = 1e-5;
      double slope = (contacts.roomMm(0, 10 - step) - contacts.roomMm(0, 10 + step)) / (2 * step);
      assertThat(contacts.neededSlope(0, 10)).isCloseTo(slope, within(1e-6));
      // 6, 8, 10
      assertThat(slope).isCloseTo(room > 0 ? 10.0 / 8 : 1, within(1e-6));
    }
    Solid a = Bodies.body("a", low, new Interval(0, 10));
    Solid b = Bodies.body("b", high, new Interval(16, 30));
    // asked for less than is there across, nothing is needed in the elevation
    Contacts contacts = Contacts.of(a, b, 10, 1000, 6);
    assertThat(contacts.roomMm(0, 6)).isCloseTo(10, within(1e-9));
    assertThat(contacts.roomMm(0, 5)).isCloseTo(10, within(1e-9));
  }

  /** The same places from either body, mirrored, and upside down. */
  @Test
  void placesAreTheSameFromBothSidesAndMirrored() {
    SplittableRandom random = new SplittableRandom(31);
    AffineTransformation mirror = AffineTransformation.scaleInstance(-1, 1);
    AffineTransformation turn = AffineTransformation.rotationInstance(Math.PI);
    for (int i = 0; i < 200; i++) {
      Geometry a = hull(random, 0, 0, 100);
      Geometry b =
          hull(random, random.nextDouble(180, 260), random.nextDouble(-100, 100), 100)
              .union(hull(random, random.nextDouble(180, 260), random.nextDouble(-300, -80), 80));
      double[] here = rooms(Contacts.of(body(a), body(b), 4, 150, 50), 4);
      assertThat(rooms(Contacts.of(body(b), body(a), 4, 150, 50), 4))
          .as("swapped %d", i)
          .containsExactly(here, within(1e-9));
      for (AffineTransformation t : List.of(mirror, turn)) {
        Contacts there = Contacts.of(body(t.transform(a)), body(t.transform(b)), 4, 150, 50);
        assertThat(rooms(there, 4)).as("pair %d", i).containsExactly(here, within(1e-9));
      }
    }
  }

  @Test
  void cornerToCornerIsOnePlace() {
    // 30 by 40 mm apart, 50 mm; no other corner is nearer than its neighbours
    Contacts contacts =
        Contacts.of(body(plate(0, 0, 100, 100)), body(plate(130, 140, 50, 50)), 5, 1e4, 9);
    assertThat(rooms(contacts, 5)).containsExactly(new double[] {45}, within(1e-9));
    // 20 mm above a longer edge: both corners above it; its own corners √(100² + 30²) away
    Contacts level =
        Contacts.of(body(plate(0, 0, 400, 20)), body(plate(100, 50, 200, 20)), 10, 100, 9);
    double far = Math.hypot(100, 30) - 10;
    assertThat(rooms(level, 10)).containsExactly(new double[] {20, 20, far, far}, within(1e-9));
    // 90 mm in reach: the far ones are not
    Contacts near =
        Contacts.of(body(plate(0, 0, 400, 20)), body(plate(100, 50, 200, 20)), 10, 90, 9);
    assertThat(near.count()).isEqualTo(2);
    Contacts most =
        Contacts.of(body(plate(0, 0, 400, 20)), body(plate(100, 50, 200, 20)), 10, 100, 3);
    assertThat(rooms(most, 10)).containsExactly(new double[] {20, 20, far}, within(1e-9));
  }

  @Test
  void facesAreNamedAndMayBeLeftOut() {
    Interval wide = new Interval(0, 9);
    Solid two =
        new Solid(
            "two",
            List.of(new Prism(plate(0, 0, 10, 10), wide), new Prism(plate(500, 0, 10, 10), wide)));
    Solid three =
        new Solid(
            "three",
            List.of(
                new Prism(plate(1000, 0, 10, 10), wide),
                new Prism(plate(0, 20, 10, 10), wide),
                new Prism(plate(500, 30, 10, 10), wide)));
    Contacts all = Contacts.of(two, three, 5, 40, 20);
    assertThat(all.facesOfFirst()).containsExactly(0, 1);
    assertThat(all.facesOfSecond()).containsExactly(1, 2);
    Contacts one = Contacts.of(two, three, 5, 40, 20, List.of(new SideBySide.Pair(0, 1, 1, 99)));
    assertThat(one.facesOfFirst()).containsExactly(1);
    assertThat(one.facesOfSecond()).containsExactly(2);
    assertThat(one.roomMm(0, 5)).isCloseTo(15, within(1e-9));
    Contacts other =
        Contacts.of(
            two,
            three,
            5,
            40,
            20,
            List.of(new SideBySide.Pair(0, 2, 1, 99), new SideBySide.Pair(1, 1, 1, 99)));
    assertThat(other.count()).isEqualTo(all.count());
    // only contacts of the outline that is said are measured
    double[] sides = new double[all.count()];
    Arrays.fill(sides, -77);
    all.sidesOfFirst(1, plate(500, 1, 10, 10), sides);
    assertThat(Arrays.stream(sides).filter(s -> s == -77).count()).isEqualTo(2);
    assertThat(Arrays.stream(sides).filter(s -> Math.abs(s - 19) < 1e-9).count()).isEqualTo(2);
    Arrays.fill(sides, -77);
    all.sidesOfSecond(1, plate(0, 21, 10, 10), sides);
    assertThat(Arrays.stream(sides).filter(s -> s == -77).count()).isEqualTo(2);
    assertThat(Arrays.stream(sides).filter(s -> Math.abs(s - 11) < 1e-9).count()).isEqualTo(2);
  }

  /** A plate of which a corner of the other sticks out: the way is across an edge of the second. */
  @Test
  void anOverlapMayBeLeftAcrossAnEdgeOfTheOther() {
    Geometry wedge =
        new GeometryFactory()
            .createPolygon(
                new Coordinate[] {
                  new Coordinate(95, 50),
                  new Coordinate(95, -500),
                  new Coordinate(300, -400),
                  new Coordinate(95, 50)
                });
    Geometry disc = Curves.disc(new PointMm(0, -200), 100);
    // 5 mm across the upright edge of the wedge
    for (boolean swapped : new boolean[] {false, true}) {
      Solid a = body(swapped ? wedge : disc);
      Solid b = body(swapped ? disc : wedge);
      Contacts contacts = Contacts.of(a, b, 0, 100, 6);
      assertThat(contacts.count()).isEqualTo(1);
      assertThat(contacts.roomMm(0, 0)).isCloseTo(-5, within(1e-9));
      Geometry moved = AffineTransformation.translationInstance(2, 0).transform(wedge);
      assertThat(sides(contacts, moved, swapped)[0]).isCloseTo(-3, within(1e-9));
      assertThat(sides(contacts, new GeometryFactory().createPolygon(), swapped)[0]).isNaN();
    }
  }

  /** Places keep their numbers while they come nearer and go: in the order of the outlines. */
  @Test
  void placesKeepTheirNumbers() {
    Geometry low = plate(0, 0, 400, 20);
    AffineTransformation less = AffineTransformation.rotationInstance(0.02, 200, 50);
    AffineTransformation more = AffineTransformation.rotationInstance(-0.02, 200, 50);
    Geometry bar = plate(100, 50, 200, 20);
    Contacts one = Contacts.of(body(low), body(less.transform(bar)), 10, 80, 6);
    Contacts two = Contacts.of(body(low), body(more.transform(bar)), 10, 80, 6);
    assertThat(one.count()).isEqualTo(2);
    assertThat(two.count()).isEqualTo(2);
    double shift = 100 * Math.sin(0.02);
    assertThat(one.roomMm(0, 10)).isCloseTo(20 - shift, within(1e-6));
    assertThat(one.roomMm(1, 10)).isCloseTo(20 + shift, within(1e-6));
    assertThat(two.roomMm(0, 10)).isCloseTo(20 + shift, within(1e-6));
    assertThat(two.roomMm(1, 10)).isCloseTo(20 - shift, within(1e-6));
  }
}
