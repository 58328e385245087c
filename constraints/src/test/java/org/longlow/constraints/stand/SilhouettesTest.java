package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.machine.ride.Silhouette;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Made;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** Silhouettes against a raster of closed forms: each of its cells is asked for by itself. */
class SilhouettesTest {

  /** Says whether a place of the page is hidden. */
  private interface Hidden {
    boolean at(double across, double up);
  }

  private static final Ground LEVEL = new Ground(PointMm.ORIGIN, new PointMm(1000, 0));

  /** A wedge: 100 to a side at x 0, 0 at x 300, from 0 to 90 high. */
  private static final PartShape WEDGE =
      Made.solid(
          Made.outline(0, 0, 300, 0, 300, 90, 0, 90),
          Made.spread(100, 100, false),
          new Breadth(Made.stations(false, 0, 100, 300, 0), Profile.FLAT));

  /** A bar across: x 250 to 290, z 60 to 160, from 150 right to 40 left. */
  private static final PartShape BAR =
      Made.solid(
          Made.outline(250, 60, 290, 60, 290, 160, 250, 160),
          Made.spread(40, 150, false),
          Breadth.EVEN);

  /** A frame seen from the side: a triangle with nothing in its middle, made of three bars. */
  private static final PartShape FRAME =
      Made.solid(
          Made.outline(
              400, 0, 520, 0, 520, 20, 420, 20, 420, 100, 500, 100, 500, 20, 520, 20, 520, 120, 400,
              120),
          Made.spread(10, 10, false),
          Breadth.EVEN);

  private static void isThatOf(Silhouette s, double cell, Hidden hidden) {
    double n = 0;
    double across = 0;
    double up = 0;
    for (double x = -400 + cell / 2; x < 700; x += cell) {
      for (double y = -400 + cell / 2; y < 400; y += cell) {
        if (hidden.at(x, y)) {
          n++;
          across += x;
          up += y;
        }
      }
    }
    assertThat(s.areaMm2()).isCloseTo(n * cell * cell, within(0.005 * s.areaMm2()));
    assertThat(s.centroid().x()).isCloseTo(across / n, within(0.5));
    assertThat(s.centroid().z()).isCloseTo(up / n, within(0.5));
  }

  private static Silhouette of(Ground ground, SeenFrom from, PartShape... shapes) {
    return Silhouettes.of(List.of(shapes), Rider.NOBODY, ground, from).orElseThrow();
  }

  private static boolean in(double v, double from, double to) {
    return v > from && v < to;
  }

  @Test
  void whatOverlapsCountsOnceFromEachSide() {
    isThatOf(
        of(LEVEL, SeenFrom.SIDE, WEDGE, BAR, FRAME),
        0.5,
        (x, z) ->
            in(x, 0, 300) && in(z, 0, 90)
                || in(x, 250, 290) && in(z, 60, 160)
                || in(x, 400, 520) && in(z, 0, 120) && !(in(x, 420, 500) && in(z, 20, 100)));
    isThatOf(
        of(LEVEL, SeenFrom.FRONT, WEDGE, BAR),
        0.5,
        (y, z) -> in(y, -100, 100) && in(z, 0, 90) || in(y, -150, 40) && in(z, 60, 160));
    isThatOf(
        of(LEVEL, SeenFrom.ABOVE, WEDGE, BAR),
        0.5,
        (x, y) -> in(x, 0, 300) && Math.abs(y) < 100 - x / 3 || in(x, 250, 290) && in(y, -150, 40));
  }

  @Test
  void peopleCountWithTheMachine() {
    Prism body = new Prism(BAR.outline(), new Interval(-30, 30));
    Rider rider = new Rider(List.of(new Rider.Seated(null, List.of(), List.of(body))));
    Silhouette s = Silhouettes.of(List.of(WEDGE), rider, LEVEL, SeenFrom.FRONT).orElseThrow();
    isThatOf(
        s, 0.5, (y, z) -> in(y, -100, 100) && in(z, 0, 90) || in(y, -30, 30) && in(z, 60, 160));
  }

  @Test
  void theRoadGivesTheAxes() {
    // the road rises by 3 on 4 and begins at (40, -20)
    Ground slope = new Ground(new PointMm(40, -20), new PointMm(40 + 800, -20 + 600));
    isThatOf(
        of(slope, SeenFrom.SIDE, WEDGE),
        0.5,
        (along, up) -> {
          double x = 40 + 0.8 * along - 0.6 * up;
          double z = -20 + 0.6 * along + 0.8 * up;
          return in(x, 0, 300) && in(z, 0, 90);
        });
    // across the road nothing changes but the heights: x·-0.6 + z·0.8 of its corners
    Silhouette front = of(slope, SeenFrom.FRONT, BAR);
    assertThat(front.areaMm2())
        .isCloseTo(190 * ((160 - 60) * 0.8 + (290 - 250) * 0.6), within(1e-3 * front.areaMm2()));
    assertThat(front.centroid().x()).isCloseTo(-55, within(0.01));
    assertThat(front.centroid().z()).isCloseTo((270 - 40) * -0.6 + (110 + 20) * 0.8, within(0.05));
  }

  @Test
  void nothingHasNone() {
    assertThat(Silhouettes.of(List.of(), Rider.NOBODY, LEVEL, SeenFrom.SIDE)).isEmpty();
  }
}
