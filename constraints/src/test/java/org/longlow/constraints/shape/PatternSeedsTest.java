package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.layout.SolidPart;

/**
 * Flat patterns from fixed seeds, rolled back onto solids that are written out here. They are those
 * of a tank without a thickness, whose outer face they are, so that nothing of a fold is in them.
 */
class PatternSeedsTest {

  private static final double NEAR_MM = 0.1;

  private static List<FlatPiece> patterns(Outline outline, Breadth breadth) {
    SolidPart made = Made.formed(outline, Made.spread(90, 90, false), breadth, Formers.NONE);
    Part tank =
        new SolidPart(
            made.base(),
            SolidPart.Kind.TANK,
            made.frame(),
            made.outline(),
            made.breadth(),
            List.of());
    return Unrolled.of(tank, Made.PLACES).orElseThrow().patterns();
  }

  /**
   * A cone of any section that narrows about a tip: a place at a share of its length lies on a
   * section that many times as large. Rolled up again, each point of the flat edge is as far from
   * the tip as the point of the body that is as far along the edge.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void wrapsKeepTheWayRoundAndTheWayToTheTip(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double high = random.nextDouble(40, 90);
    double broad = random.nextDouble(40, 120);
    double length = random.nextDouble(80, 300);
    double share = random.nextDouble(0.3, 0.9);
    double lift = random.nextDouble(-40, 40);
    double h = high * share;
    Profile oval = Made.profile(Profile.Shape.OVAL);
    FlatPiece wrap =
        patterns(
                Made.outline(0, -high, length, lift - h, length, lift + h, 0, high),
                new Breadth(Made.stations(false, 0, broad, length, broad * share), oval))
            .get(0);
    double tipX = length / (1 - share);
    double tipZ = lift / (1 - share);
    List<double[]> round = new ArrayList<>();
    int n = 20_000;
    double way = 0;
    double[] before = null;
    for (int i = 0; i <= n; i++) {
      double a = -Math.PI / 2 - 2 * Math.PI * i / n;
      // from the lowest middle to the left
      double[] p = {0, -broad * Math.cos(a), high * Math.sin(a)};
      way += before == null ? 0 : far(p, before);
      round.add(new double[] {way, far(p, new double[] {tipX, 0, tipZ})});
      before = p;
    }
    Coordinate[] ring = wrap.outline().getCoordinates();
    double area = 0;
    for (int i = 1; i < round.size(); i++) {
      // a thin triangle to the tip, less its tip
      double a = round.get(i - 1)[1];
      double b = round.get(i)[1];
      double c = round.get(i)[0] - round.get(i - 1)[0];
      double s = (a + b + c) / 2;
      area += Math.sqrt(Math.max(0, s * (s - a) * (s - b) * (s - c))) * (1 - share * share);
    }
    assertThat(wrap.outline().getArea()).isCloseTo(area, within(0.0005 * area));
    double whole = 0;
    for (int i = 0; i + 1 < ring.length; i++) {
      whole += ring[i].distance(ring[i + 1]);
    }
    double seam = round.get(0)[1] * (1 - share);
    assertThat(whole).isCloseTo(way * (1 + share) + 2 * seam, within(NEAR_MM));
    // where each point is about the tip, which lies where both seams meet
    Coordinate tip = tip(ring, round.get(0)[1], seam);
    for (Coordinate c : ring) {
      double r = c.distance(tip);
      assertThat(
              round.stream().mapToDouble(q -> Math.abs(q[1] - r)).min().orElseThrow() < NEAR_MM
                  || round.stream().mapToDouble(q -> Math.abs(q[1] * share - r)).min().orElseThrow()
                      < NEAR_MM)
          .as("%s", c)
          .isTrue();
    }
  }

  /** The lower end of a seam gone on to as long as it is to the tip, which lies off the fan. */
  private static Coordinate tip(Coordinate[] ring, double toTip, double seam) {
    for (int i = 0; i + 1 < ring.length; i++) {
      for (int way = 0; way < 2; way++) {
        Coordinate low = ring[i + way];
        Coordinate high = ring[i + 1 - way];
        if (Math.abs(low.distance(high) - seam) < 1e-6) {
          double on = toTip / seam;
          Coordinate tip =
              new Coordinate(low.x + on * (high.x - low.x), low.y + on * (high.y - low.y));
          double most = Arrays.stream(ring).mapToDouble(tip::distance).max().orElseThrow();
          if (most < 1.5 * toTip) {
            return tip;
          }
        }
      }
    }
    throw new AssertionError("no seam of " + seam);
  }

  private static double far(double[] p, double[] q) {
    return Math.hypot(Math.hypot(p[0] - q[0], p[1] - q[1]), p[2] - q[2]);
  }

  /** Sides that are straight up: each place of the flat side is as far along as the line is. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void sidesKeepTheWayAlongTheirStations(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int n = random.nextInt(3, 7);
    double[] stations = new double[2 * n];
    double[] along = new double[n];
    for (int i = 0; i < n; i++) {
      stations[2 * i] = i == 0 ? 0 : stations[2 * i - 2] + random.nextDouble(30, 90);
      stations[2 * i + 1] = random.nextDouble(40, 120);
      along[i] =
          i == 0
              ? 0
              : along[i - 1]
                  + Math.hypot(
                      stations[2 * i] - stations[2 * i - 2],
                      stations[2 * i + 1] - stations[2 * i - 1]);
    }
    double end = stations[2 * n - 2];
    double rise = random.nextDouble(-20, 60);
    FlatPiece side =
        patterns(
                Made.outline(0, 0, end, 0, end, 100 + rise, 0, 100),
                new Breadth(Made.stations(false, stations), Profile.FLAT))
            .get(0);
    assertThat(side.longMm()).isCloseTo(along[n - 1], within(1e-6));
    for (Coordinate c : side.outline().getCoordinates()) {
      int k = 0;
      while (k + 2 < n && along[k + 1] < c.x) {
        k++;
      }
      double share = (c.x - along[k]) / (along[k + 1] - along[k]);
      double x = stations[2 * k] + share * (stations[2 * k + 2] - stations[2 * k]);
      double roof = 100 + rise * x / end;
      double off = Math.min(Math.abs(c.y), Math.abs(c.y - roof));
      assertThat(Math.min(off, Math.min(Math.abs(x), Math.abs(end - x)))).isLessThan(NEAR_MM);
    }
    assertThat(side.folds()).hasSizeLessThanOrEqualTo(n - 2);
  }
}
