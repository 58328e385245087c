package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.gap.Bodies.body;
import static org.longlow.constraints.gap.Bodies.hull;
import static org.longlow.constraints.gap.Bodies.plate;
import static org.longlow.constraints.gap.Bodies.rooms;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.rider.geom.PointMm;

/** Places where bodies come close, beside JTS and brute force. */
class ContactsTest {

  private static final double TRUE_MM = 1e-9;

  @Test
  void edgesSideBySideMakeTwoContacts() {
    // the shorter edge's ends, tilted a little: one 30 mm away, the other by its own height
    Geometry tilted =
        AffineTransformation.rotationInstance(0.01, 100, 50).transform(plate(100, 50, 200, 20));
    Contacts turned = Contacts.of(body(plate(0, 0, 400, 20)), body(tilted), 10, 100, 6);
    double[] rooms = rooms(turned, 10);
    assertThat(rooms[0]).isCloseTo(20, within(TRUE_MM));
    assertThat(rooms[1]).isCloseTo(20 + 200 * Math.sin(0.01), within(TRUE_MM));
  }

  @Test
  void theOtherEdgeMayBeTheShorter() {
    // the lower box ends under the tilted edge: its corner is the second place
    Geometry upper =
        AffineTransformation.rotationInstance(0.02, 0, 50).transform(plate(0, 50, 400, 20));
    Contacts contacts = Contacts.of(body(plate(-10, 0, 210, 20)), body(upper), 10, 100, 6);
    // corner (200, 20) off the line through (0, 50) that rises by 0.02 rad
    double second = 200 * Math.sin(0.02) + 30 * Math.cos(0.02) - 10;
    // and its own first corner, 10 mm aside and 30 mm above
    assertThat(rooms(contacts, 10))
        .usingElementComparator((x, y) -> Math.abs(x - y) < TRUE_MM ? 0 : Double.compare(x, y))
        .contains(20, Math.hypot(10, 30) - 10, second);
  }

  @Test
  void facesFartherApartAcrossThanTheGapHaveNoContact() {
    Solid low = body("b", plate(0, 0, 100, 100), new Interval(0, 10));
    Solid high = body("b", plate(0, 110, 100, 100), new Interval(16, 30));
    assertThat(Contacts.of(low, high, 6, 1000, 6).count()).isZero();
    // 3, 4, 5: with 6 mm across, 8 mm in the elevation leave 10 mm
    assertThat(rooms(Contacts.of(low, high, 10, 1000, 6), 10)[0]).isCloseTo(2, within(TRUE_MM));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void theLeastRoomIsTheDistance(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 300; i++) {
      Geometry a = hull(random, 0, 0, 100);
      Geometry b = hull(random, random.nextDouble(150, 300), random.nextDouble(-100, 100), 100);
      Geometry c = hull(random, random.nextDouble(150, 300), random.nextDouble(-400, -200), 100);
      Geometry bent = b.union(c);
      if (a.intersects(bent)) {
        continue;
      }
      double gap = random.nextDouble(0, 40);
      double[] rooms = rooms(Contacts.of(body(a), body(bent), gap, 1e4, 9), gap);
      assertThat(rooms[0]).as("pair " + i).isCloseTo(a.distance(bent) - gap, within(1e-9));
    }
  }

  /** Of two convex outlines, by shifting one in 3,600 directions until JTS finds them apart. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void theWayOutIsTheShortestShift(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int overlaps = 0;
    for (int i = 0; i < 40; i++) {
      Geometry a = hull(random, 0, 0, 100);
      Geometry b = hull(random, random.nextDouble(-120, 120), random.nextDouble(-120, 120), 100);
      if (!(a.intersection(b).getArea() > 1)) {
        continue;
      }
      overlaps++;
      double[] rooms = rooms(Contacts.of(body(a), body(b), 0, 1e4, 9), 0);
      assertThat(rooms).hasSize(1);
      double shortest = Double.POSITIVE_INFINITY;
      for (int d = 0; d < 3600; d++) {
        double angle = Math.PI * d / 1800;
        shortest = Math.min(shortest, shift(a, b, Math.cos(angle), Math.sin(angle)));
      }
      // 0.05 deg beside the best direction a corner 400 mm away costs 0.35 mm
      assertThat(-rooms[0]).as("pair " + i).isBetween(shortest - 0.35, shortest + 1e-9);
    }
    assertThat(overlaps).isGreaterThan(10);
  }

  /** How far b must go that way to come off a: widths of the two along the direction. */
  private static double shift(Geometry a, Geometry b, double dx, double dz) {
    double most = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    for (Coordinate c : a.getCoordinates()) {
      most = Math.max(most, c.x * dx + c.y * dz);
    }
    for (Coordinate c : b.getCoordinates()) {
      least = Math.min(least, c.x * dx + c.y * dz);
    }
    return most - least;
  }

  @Test
  void aCoverThatIsRunThroughIsLeftOnTheSideItIsNearTo() {
    // a bent cover, 4 mm thick, dips 20 mm into a box 200 mm wide
    List<PointMm> ring = new ArrayList<>();
    ring.add(new PointMm(-300, 180));
    ring.add(new PointMm(-60, 80));
    ring.add(new PointMm(60, 80));
    ring.add(new PointMm(300, 180));
    ring.add(new PointMm(300, 184));
    ring.add(new PointMm(60, 84));
    ring.add(new PointMm(-60, 84));
    ring.add(new PointMm(-300, 184));
    Solid cover = body(Curves.polygon(ring));
    Solid box = body(plate(-100, 0, 200, 100));
    double[] rooms = rooms(Contacts.of(cover, box, 5, 100, 6), 5);
    assertThat(rooms[0]).isCloseTo(-20 - 5, within(TRUE_MM));
    assertThat(rooms(Contacts.of(box, cover, 5, 100, 6), 5)[0]).isCloseTo(-25, within(TRUE_MM));
  }
}
