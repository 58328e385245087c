package org.longlow.constraints.passage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** Room over the elevation by brute force, and the widest way through gaps of known width. */
class LimbWaysTest {

  private static final Lattice WINDOW = Lattice.over(0, 1000, 0, 800);
  private static final Interval LIMB = new Interval(100, 200);
  private static final Interval OUT = new Interval(100, 1e6);

  /** Twice half a cell at either side of a gap, and cells that edges go through. */
  private static final double CELLS = 3 * Lattice.CELL_MM;

  private static Prism box(double x0, double x1, double z0, double z1, double from, double to) {
    return new Prism(
        new GeometryFactory().toGeometry(new Envelope(x0, x1, z0, z1)), new Interval(from, to));
  }

  @Test
  void roomIsTheDistanceToTheNearestFilledCell() {
    Random random = new Random(3);
    boolean[] filled = new boolean[WINDOW.cells()];
    for (int i = 0; i < 25; i++) {
      filled[random.nextInt(filled.length)] = true;
    }
    int[] clear = WINDOW.clearMm(filled);
    for (int i = 0; i < filled.length; i++) {
      double nearest = Double.POSITIVE_INFINITY;
      for (int k = 0; k < filled.length; k++) {
        if (filled[k]) {
          nearest = Math.min(nearest, WINDOW.middle(i).distance(WINDOW.middle(k)));
        }
      }
      // whole millimetres
      assertThat((double) clear[i])
          .isCloseTo(Math.max(0, nearest - Lattice.CELL_MM / 2), within(0.51));
    }
  }

  /** What a body covers, by its own corners, and nothing across the machine from it. */
  @Test
  void cellsAreFilledWithinTheBandOnly() {
    List<Prism> bodies = List.of(box(200, 450, 100, 300, 150, 400));
    boolean[] within = WINDOW.filled(bodies, LIMB);
    boolean[] other = WINDOW.filled(bodies, LIMB.mirrored());
    for (int i = 0; i < within.length; i++) {
      PointMm m = WINDOW.middle(i);
      boolean inside = m.x() > 200 && m.x() < 450 && m.z() > 100 && m.z() < 300;
      boolean near = m.x() > 170 && m.x() < 480 && m.z() > 70 && m.z() < 330;
      assertThat(!inside || within[i]).as("%s", m).isTrue();
      assertThat(near || !within[i]).as("%s", m).isTrue();
      assertThat(other[i]).isFalse();
    }
  }

  private static LimbWays ways(List<Prism> bodies) {
    return new LimbWays(
        WINDOW,
        WINDOW.clearMm(WINDOW.filled(bodies, LIMB)),
        WINDOW.clearMm(WINDOW.filled(bodies, OUT)),
        new boolean[WINDOW.cells()]);
  }

  /**
   * A room closed all round within the limb's band, with a side wall that is open from a sill up to
   * a lintel: the way out is as wide as that opening.
   */
  @ParameterizedTest
  @ValueSource(doubles = {150, 250, 350})
  void theWayOutIsAsWideAsTheOpening(double wide) {
    double sill = 200;
    LimbWays ways =
        ways(
            List.of(
                box(0, 1000, -50, 25, 0, 300),
                box(0, 1000, 775, 850, 0, 300),
                box(-50, 25, 0, 800, 0, 300),
                box(975, 1050, 0, 800, 0, 300),
                box(0, 1000, 0, sill, 250, 260),
                box(0, 1000, sill + wide, 800, 250, 260)));
    int from = WINDOW.cell(new PointMm(500, 600));
    double through = 2.0 * ways.widestMm(from);
    assertThat(through).isLessThanOrEqualTo(wide).isGreaterThan(wide - CELLS);
    double height = ways.sill(from, 40).orElseThrow().z();
    assertThat(height).isBetween(sill, sill + CELLS);
    assertThat(ways.sill(from, (int) (wide / 2) + 1)).isEmpty();
  }

  /** Every radius by itself: cells with room for it, flooded from a place to where it leaves. */
  @Test
  void theWidestWayIsTheLargestRadiusThatFloodsOut() {
    Lattice small = Lattice.over(0, 500, 0, 400);
    int[][] beside = beside(small);
    Random random = new Random(5);
    int n = small.cells();
    int some = 0;
    for (int k = 0; k < 60; k++) {
      int[] free = random.ints(n, 0, 60).toArray();
      int[] leaves = new int[n];
      boolean[] walls = new boolean[n];
      for (int i = 0; i < n; i++) {
        leaves[i] = random.nextInt(30) == 0 ? random.nextInt(free[i] + 1) : 0;
        walls[i] = random.nextInt(9) == 0;
      }
      int from = random.nextInt(n);
      int widest = 0;
      for (int r = 1; r < 60; r++) {
        widest = flooded(beside, free, leaves, walls, from, r) ? r : widest;
      }
      LimbWays ways = new LimbWays(small, free, leaves, walls);
      assertThat(ways.widestMm(from)).isEqualTo(widest);
      int other = random.nextInt(n);
      assertThat(ways.widestMm(from, other)).isEqualTo(Math.max(widest, ways.widestMm(other)));
      some += widest > 0 ? 1 : 0;
    }
    assertThat(some).isGreaterThan(20);
  }

  /** Which cells lie beside each, by how far their middles are apart. */
  private static int[][] beside(Lattice lattice) {
    PointMm[] middles =
        IntStream.range(0, lattice.cells()).mapToObj(lattice::middle).toArray(PointMm[]::new);
    int[][] beside = new int[middles.length][];
    for (int i = 0; i < middles.length; i++) {
      PointMm at = middles[i];
      beside[i] =
          IntStream.range(0, middles.length)
              .filter(j -> at.distance(middles[j]) < 1.1 * Lattice.CELL_MM)
              .toArray();
    }
    return beside;
  }

  private static boolean flooded(
      int[][] beside, int[] free, int[] leaves, boolean[] walls, int from, int r) {
    boolean[] wet = new boolean[free.length];
    wet[from] = !walls[from] && free[from] >= r;
    boolean out = false;
    for (boolean more = true; more; ) {
      more = false;
      for (int i = 0; i < wet.length; i++) {
        for (int j : wet[i] ? beside[i] : new int[0]) {
          if (!wet[j] && !walls[j] && free[j] >= r) {
            wet[j] = true;
            more = true;
          }
        }
        out |= wet[i] && leaves[i] >= r;
      }
    }
    return out;
  }

  @Test
  void nothingGetsOutOfARoomThatIsShut() {
    LimbWays ways = ways(List.of(box(0, 1000, 0, 800, 250, 260), box(450, 550, 0, 800, 0, 300)));
    assertThat(ways.widestMm(WINDOW.cell(new PointMm(700, 400)))).isZero();
  }

  /** A post hides what lies behind it on straight lines, and nothing else. */
  @Test
  void whatIsBehindAPostIsNotSeen() {
    boolean[] filled = WINDOW.filled(List.of(box(400, 500, 0, 400, 100, 200)), LIMB);
    boolean[] seen = WINDOW.seen(filled, WINDOW.cell(new PointMm(100, 700)));
    assertThat(seen[WINDOW.cell(new PointMm(700, 100))]).isFalse();
    assertThat(seen[WINDOW.cell(new PointMm(300, 100))]).isTrue();
    assertThat(seen[WINDOW.cell(new PointMm(900, 600))]).isTrue();
  }

  /** A grip where a hip would be: whoever gets in stands ahead of it or behind it. */
  @Test
  void whereSomethingFillsTheirPlaceTheyStandBesideIt() {
    boolean[] filled = WINDOW.filled(List.of(box(90, 140, 690, 720, 100, 200)), LIMB);
    boolean[] seen = WINDOW.seen(filled, WINDOW.cell(new PointMm(100, 700)));
    assertThat(seen[WINDOW.cell(new PointMm(700, 100))]).isTrue();
    assertThat(seen[WINDOW.cell(new PointMm(100, 700))]).isFalse();
    // a long one, whose nearer end is behind
    boolean[] row = WINDOW.filled(List.of(box(90, 600, 690, 720, 100, 200)), LIMB);
    boolean[] behind = WINDOW.seen(row, WINDOW.cell(new PointMm(100, 700)));
    assertThat(behind[WINDOW.cell(new PointMm(50, 650))]).isTrue();
    assertThat(behind[WINDOW.cell(new PointMm(50, 780))]).isTrue();
    assertThat(behind[WINDOW.cell(new PointMm(650, 700))]).isFalse();
  }
}
