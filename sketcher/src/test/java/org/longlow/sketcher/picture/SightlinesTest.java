package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.space.Convex;
import org.longlow.constraints.space.Hull;
import org.longlow.svg.drawing.Planar;

/** What stands before what, with areas worked out by hand; axes across, up and towards. */
class SightlinesTest {

  private static Shadow box(double x1, double x2, double y1, double y2, double z1, double z2) {
    return slanted(x1, x2, y1, y2, z1, z2, 0);
  }

  /** A box whose right end comes so much nearer than its left. */
  private static Shadow slanted(
      double x1, double x2, double y1, double y2, double z1, double z2, double nearer) {
    Convex body =
        Hull.of(
            List.of(
                new double[] {x1, y1, z1},
                new double[] {x2, y1, z1 + nearer},
                new double[] {x1, y2, z1},
                new double[] {x2, y2, z1 + nearer},
                new double[] {x1, y1, z2},
                new double[] {x2, y1, z2 + nearer},
                new double[] {x1, y2, z2},
                new double[] {x2, y2, z2 + nearer}));
    Geometry area = Planar.rectangle(x1, y1, x2, y2);
    return Shadow.of(area, body);
  }

  private static Map<String, Sightlines.Seen> seen(Shadow a, boolean hides, Shadow... others) {
    Sightlines sightlines = new Sightlines();
    sightlines.add("a", List.of(a), hides);
    sightlines.add("b", List.of(others), true);
    return sightlines.seen(0.5);
  }

  private static double area(Map<String, Sightlines.Seen> seen, String name) {
    return seen.get(name).area().getArea();
  }

  @Test
  void whatIsNearerHidesWhatIsBehindAndDashesItsEdge() {
    var seen = seen(box(0, 100, 0, 100, 0, 10), true, box(50, 150, 0, 100, 20, 30));
    assertThat(area(seen, "a")).isCloseTo(5000.0, within(0.1));
    assertThat(area(seen, "b")).isCloseTo(10000.0, within(0.1));
    assertThat(seen.get("a").edge().getLength()).isCloseTo(200.0, within(1.0));
    assertThat(seen.get("a").hidden().getLength()).isCloseTo(200.0, within(1.0));
    assertThat(seen.get("b").hidden().isEmpty()).isTrue();
  }

  /** Its far end is nearest of all, but not where the other is. */
  @Test
  void theNearestPointOfAllDoesNotDecide() {
    Shadow slanted = slanted(0, 200, 0, 100, 0, 10, 100);
    var seen = seen(slanted, true, box(0, 40, 0, 100, 40, 50));
    assertThat(slanted.nearMm()).isGreaterThan(50);
    assertThat(area(seen, "b")).as("wholly seen").isCloseTo(4000.0, within(0.1));
    assertThat(area(seen, "a")).isCloseTo(16000.0, within(0.1));
  }

  @Test
  void oneMayBeBeforeAndBehindPiecesOfAnother() {
    var seen =
        seen(
            box(0, 300, 0, 100, 20, 30),
            true,
            box(0, 100, 0, 100, 0, 10),
            box(200, 300, 0, 100, 40, 50));
    assertThat(area(seen, "a")).isCloseTo(20000.0, within(0.1));
    assertThat(area(seen, "b")).isCloseTo(10000.0, within(0.1));
  }

  @Test
  void threeMayGoRoundEachOther() {
    // each bar lies over the next by its end that comes nearer
    Sightlines sightlines = new Sightlines();
    sightlines.add("low", List.of(slanted(0, 300, 0, 50, 0, 5, 60)), true);
    sightlines.add("flat", List.of(box(0, 50, 0, 300, 30, 35)), true);
    sightlines.add("right", List.of(box(250, 300, 0, 300, 20, 25)), true);
    var seen = sightlines.seen(0.5);
    assertThat(area(seen, "flat")).as("over the far end of low").isCloseTo(15000.0, within(0.1));
    assertThat(area(seen, "low")).isCloseTo(12500.0, within(0.1));
    assertThat(area(seen, "right")).as("under the near end").isCloseTo(12500.0, within(0.1));
  }

  /** In each other: what is nearer in the middle of what both cover. */
  @Test
  void ofTwoInEachOtherTheNearerFaceIsSeen() {
    var seen = seen(box(0, 100, 0, 100, 0, 40), true, box(20, 80, 20, 80, 10, 60));
    assertThat(area(seen, "b")).isCloseTo(3600.0, within(0.1));
    assertThat(area(seen, "a")).isCloseTo(6400.0, within(0.1));
    var other = seen(box(0, 100, 0, 100, 0, 40), true, box(20, 80, 20, 80, -20, 30));
    assertThat(area(other, "b")).isZero();
    assertThat(area(other, "a")).isCloseTo(10000.0, within(0.1));
  }

  @Test
  void whatIsSeenThroughHidesNothing() {
    var seen = seen(box(0, 100, 0, 100, 20, 30), false, box(0, 100, 0, 100, 0, 10));
    assertThat(area(seen, "a")).isCloseTo(10000.0, within(0.1));
    assertThat(area(seen, "b")).isCloseTo(10000.0, within(0.1));
  }
}
