package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;

/** A plate 600 by 400 mm from y = 200 to 206 mm, and a bar of 30 mm that is inside its outline. */
class SideBySideTest {

  private static final Geometry PLATE = Bodies.plate(0, 0, 600, 400);
  private static final Interval SIDE = new Interval(200, 206);

  private static Solid plate() {
    return Bodies.body("plate", PLATE, SIDE);
  }

  /** A bar that reaches some mm down from the upper edge of the plate. */
  private static Solid bar(double belowMm, double room) {
    return Bodies.body(
        "bar", Bodies.plate(100, 400 - belowMm, 400, 30), new Interval(100, 200 - room));
  }

  /** By hand: short = asked - room, needed = √(asked² - room²), both sides of 25 mm and 5 times. */
  @ParameterizedTest(name = "{0} mm deep, {1} mm beside, {2} mm asked")
  @CsvSource({
    // 8 short: 40 mm, of which √(15² - 7²) = 13.266 beyond the edge
    "26.73, 7, 15, false",
    "26.74, 7, 15, true",
    // 2 short: 25 mm all the same, of which √(9² - 7²) = 5.657 beyond the edge
    "19.34, 7, 9, false",
    "19.35, 7, 9, true",
    // 3 mm in each other across: 8 short, all 5 mm beyond the edge
    "34.99, -3, 5, false",
    "35.01, -3, 5, true",
    // level with each other: 5 short, 25 mm
    "19.99, 0, 5, false",
    "20.01, 0, 5, true",
  })
  void aLongWayOutForLittleAcrossIsNoWay(double below, double room, double asked, boolean beside) {
    List<SideBySide.Pair> pairs = SideBySide.of(bar(below, room), plate(), asked);
    assertThat(pairs).hasSize(beside ? 1 : 0);
    assertThat(SideBySide.of(plate(), bar(below, room), asked)).hasSize(beside ? 1 : 0);
    if (beside) {
      double needed = room > 0 ? Math.sqrt(asked * asked - room * room) : asked;
      assertThat(pairs.get(0).shortMm()).isCloseTo(asked - room, within(1e-9));
      assertThat(pairs.get(0).wayMm()).isCloseTo(below + needed, within(1e-9));
    }
  }

  @Test
  void whatKeepsItsGapAcrossIsNotShort() {
    assertThat(SideBySide.of(bar(200, 15), plate(), 15)).isEmpty();
    assertThat(SideBySide.of(bar(200, 14.99), plate(), 15)).hasSize(1);
  }

  @Test
  void onlyWhatOverlapsInTheElevationLiesBeside() {
    Interval beside = new Interval(100, 193);
    // the boxes touch or overlap, the outlines do not
    Geometry angle = Bodies.plate(0, 0, 300, 300).difference(Bodies.plate(20, 20, 300, 300));
    Solid corner = Bodies.body("angle", angle, SIDE);
    assertThat(SideBySide.of(corner, Bodies.body("b", Bodies.plate(60, 60, 99, 99), beside), 15))
        .isEmpty();
    assertThat(SideBySide.of(plate(), Bodies.body("b", Bodies.plate(601, 0, 99, 99), beside), 15))
        .isEmpty();
    // a cross: neither holds a corner of the other; 40 mm wide, so (40 + 200) / 2 and 13.266 mm
    Solid upright = Bodies.body("u", Bodies.plate(280, -200, 40, 800), beside);
    Solid level = Bodies.body("l", Bodies.plate(0, 100, 600, 200), SIDE);
    assertThat(SideBySide.of(upright, level, 15))
        .singleElement()
        .extracting(SideBySide.Pair::wayMm)
        .satisfies(mm -> assertThat((double) mm).isCloseTo(320 + 13.2665, within(1e-3)));
  }

  @Test
  void twoOverTheMiddleCannotGoAside() {
    Geometry bar = Bodies.plate(100, 200, 400, 30);
    Solid middle = Bodies.body("m", PLATE, new Interval(-3, 3));
    assertThat(SideBySide.of(middle, Bodies.body("b", bar, new Interval(-10, 10)), 5)).isEmpty();
    // one that ends at the middle plane stands over it no more
    assertThat(SideBySide.of(middle, Bodies.body("b", bar, new Interval(0, 10)), 5)).hasSize(1);
    assertThat(SideBySide.of(middle, Bodies.body("b", bar, new Interval(-10, 0)), 5)).hasSize(1);
    Solid left = Bodies.body("l", PLATE, new Interval(0, 3));
    assertThat(SideBySide.of(left, Bodies.body("b", bar, new Interval(-10, 10)), 5)).hasSize(1);
  }

  @Test
  void pairsSayWhichOutlines() {
    Geometry far = Bodies.plate(900, 0, 50, 50);
    Geometry bar = Bodies.plate(100, 150, 400, 30);
    Solid two = new Solid("two", List.of(new Prism(far, SIDE), new Prism(PLATE, SIDE)));
    Interval beside = new Interval(100, 193);
    Solid three =
        new Solid(
            "three",
            List.of(
                new Prism(far, beside),
                new Prism(Bodies.plate(2000, 0, 9, 9), beside),
                new Prism(bar, beside)));
    // the small plate is 50 mm wide: 63.3 mm out of itself
    assertThat(SideBySide.of(two, three, 15))
        .extracting(SideBySide.Pair::first, SideBySide.Pair::second)
        .containsExactly(tuple(0, 0), tuple(1, 2));
  }
}
