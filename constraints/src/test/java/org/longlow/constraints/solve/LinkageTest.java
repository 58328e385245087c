package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.relation.Relations;

/** Four-bar linkages and sliders against closed forms; walks that must not change branch. */
class LinkageTest {
  /** A tie off by 1e-9 mm moves a linkage away from dead points by little more. */
  private static final double SOLVER_MM = 1e-6;

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  /** Ground d along x, crank a at the origin, coupler b, rocker c. */
  private record FourBar(double a, double b, double c, double d) {
    static FourBar crankRocker(SplittableRandom random) {
      while (true) {
        FourBar f =
            new FourBar(
                random.nextDouble(20, 80),
                random.nextDouble(100, 400),
                random.nextDouble(100, 400),
                random.nextDouble(100, 400));
        double longest = Math.max(f.b, Math.max(f.c, f.d));
        double others = f.b + f.c + f.d - longest;
        // Grashof with some room, crank shortest: the crank turns fully and the rocker never
        // reaches a dead point.
        if (f.a + longest < 0.98 * others) {
          return f;
        }
      }
    }

    /**
     * Rocker angle on the open branch from Freudenstein's equation K1 cos psi - K2 cos phi + K3 =
     * cos(phi - psi).
     */
    double rocker(double phi) {
      double k1 = d / a;
      double k2 = d / c;
      double k3 = (a * a - b * b + c * c + d * d) / (2 * a * c);
      // (k1 - cos phi) cos psi - sin phi sin psi = k2 cos phi - k3, a form A cos psi + B sin psi =
      // C.
      double p = k1 - Math.cos(phi);
      double q = -Math.sin(phi);
      double r = k2 * Math.cos(phi) - k3;
      double base = Math.atan2(q, p);
      double swing = Math.acos(Math.max(-1, Math.min(1, r / Math.hypot(p, q))));
      return base + swing;
    }

    double miss(double phi, double psi) {
      double k1 = d / a;
      double k2 = d / c;
      double k3 = (a * a - b * b + c * c + d * d) / (2 * a * c);
      return k1 * Math.cos(psi) - k2 * Math.cos(phi) + k3 - Math.cos(phi - psi);
    }

    Problem problem(double phi, double ax, double az, double bx, double bz) {
      Problem.Builder builder = Problem.builder();
      Pt o = StillPin.in(builder, "crank pivot", 0, 0);
      Pt e = StillPin.in(builder, "rocker pivot", d, 0);
      Pt p = builder.pin("crank pin", ax, az);
      Pt q = builder.pin("rocker pin", bx, bz);
      builder.tie("crank", Relations.distance(o, p, a));
      builder.tie("coupler", Relations.distance(p, q, b));
      builder.tie("rocker", Relations.distance(e, q, c));
      builder.tie("drive", Relations.angleToHorizontal(o, p, Quantity.of(phi)));
      return builder.build();
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void crankTurnsRoundOnOneBranchOfFreudensteinsEquation(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    FourBar f = FourBar.crankRocker(random);
    double psi = f.rocker(0);
    double[] x = {0, 0, f.d, 0, f.a, 0, f.d + f.c * Math.cos(psi), f.c * Math.sin(psi)};
    double turn = Math.signum(cross(x, f));
    int steps = 72;
    SolveSession session =
        new SolveSession(f.problem(0, x[4], x[5], x[6], x[7]), SolverSettings.DEFAULT);
    double[] begin = null;
    for (int k = 0; k <= 2 * steps; k++) {
      // Once round forward, once round backward.
      double phi = 2 * Math.PI * (k <= steps ? k : 2 * steps - k) / steps;
      SolveReport report = session.solve(f.problem(phi, x[4], x[5], x[6], x[7]));
      assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
      x = report.x();
      double found = Math.atan2(x[7], x[6] - f.d);
      assertThat(f.miss(phi, found)).isCloseTo(0, offset(1e-7));
      assertThat(Math.signum(cross(x, f))).isEqualTo(turn);
      if (k == 0) {
        begin = x.clone();
      }
    }
    assertThat(x).containsExactly(begin, offset(SOLVER_MM));
  }

  /** Coupler cross rocker: its sign is the branch. */
  private static double cross(double[] x, FourBar f) {
    double ux = x[6] - x[4];
    double uz = x[7] - x[5];
    double vx = x[6] - f.d;
    double vz = x[7];
    return ux * vz - uz * vx;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void bigCrankStepsKeepTheBranch(long seed) {
    SplittableRandom random = new SplittableRandom(1000 + seed);
    FourBar f = FourBar.crankRocker(random);
    double phi = random.nextDouble(2 * Math.PI);
    double psi = f.rocker(phi);
    double[] x = {
      0,
      0,
      f.d,
      0,
      f.a * Math.cos(phi),
      f.a * Math.sin(phi),
      f.d + f.c * Math.cos(psi),
      f.c * Math.sin(psi)
    };
    double turn = Math.signum(cross(x, f));
    for (int k = 0; k < 12; k++) {
      phi += random.nextDouble(-1.5, 1.5);
      SolveReport report = Solver.solve(f.problem(phi, x[4], x[5], x[6], x[7]));
      assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
      x = report.x();
      assertThat(Math.signum(cross(x, f))).isEqualTo(turn);
      // The crank may pass in line with the coupler, but the rocker of this linkage never does.
      assertThat(report.turned()).doesNotContain("rocker pin.x");
    }
  }

  @Test
  void sliderCrankMatchesClosedForm() {
    double r = 45;
    double l = 140;
    double[] x = {r, 0, r + l, 0};
    for (int k = 0; k <= 90; k++) {
      double phi = 2 * Math.PI * k / 90;
      Problem.Builder b = Problem.builder();
      Pt o = StillPin.in(b, "shaft", 0, 0);
      Pt p = b.pin("crank pin", x[x.length - 4], x[x.length - 3]);
      Pt s = b.pin("slider", x[x.length - 2], x[x.length - 1]);
      b.tie("crank", Relations.distance(o, p, r));
      b.tie("rod", Relations.distance(p, s, l));
      b.tie("guide", Relations.fix(s.z(), 0));
      b.tie("drive", Relations.angleToHorizontal(o, p, Quantity.of(phi)));
      SolveReport report = Solver.solve(b.build());
      assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
      x = report.x();
      double expected =
          r * Math.cos(phi) + Math.sqrt(l * l - r * r * Math.sin(phi) * Math.sin(phi));
      assertThat(x[4]).isCloseTo(expected, offset(SOLVER_MM));
    }
  }

  @Test
  void measureSteppedThereAndBackEndsWhereItBegan() {
    // A trellis whose bottom rail is stepped from 300 to 360 and back; everything is settled by
    // ties.
    double[] home = null;
    double[] x = null;
    for (int k = 0; k <= 24; k++) {
      double rail = 300 + 60.0 * (k <= 12 ? k : 24 - k) / 12;
      Problem problem = trellis(rail);
      SolveReport report =
          Solver.solve(x == null ? problem : problem.withStart(x), SolverSettings.DEFAULT);
      assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
      assertThat(report.turned()).isEmpty();
      x = report.x();
      home = home == null ? x.clone() : home;
    }
    assertThat(x).containsExactly(home, offset(SOLVER_MM));
  }

  @Test
  void freeMeasureSteppedThereAndBackWithOneAnchorEndsWhereItBegan() {
    // A chain of three links has freedom to spare; the anchor makes the answer a function of the
    // length alone.
    double[] anchor = {0, 0, 90, 40, 190, 30, 260, 0};
    double[] x = anchor;
    double[] first = null;
    for (int k = 0; k <= 40; k++) {
      double middle = 100 + 40.0 * (k <= 20 ? k : 40 - k) / 20;
      Problem.Builder b = Problem.builder();
      Pt o = StillPin.in(b, "o", 0, 0);
      Pt p = b.pin("p", anchor[2], anchor[3]);
      Pt q = b.pin("q", anchor[4], anchor[5]);
      Pt e = StillPin.in(b, "e", 260, 0);
      b.tie("one", Relations.distance(o, p, 100));
      b.tie("two", Relations.distance(p, q, middle));
      b.tie("three", Relations.distance(q, e, 90));
      SolveReport report = Solver.solve(b.build().with(x, anchor), SolverSettings.DEFAULT);
      assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
      x = report.x();
      first = first == null ? x.clone() : first;
    }
    assertThat(x).containsExactly(first, offset(SOLVER_MM));
  }

  private static Problem trellis(double rail) {
    Problem.Builder b = Problem.builder();
    Pt a = StillPin.in(b, "a", 0, 0);
    Pt c = b.pin("b", 300, 5);
    Pt d = b.pin("c", 150, 200);
    Pt e = b.pin("d", 450, 210);
    b.tie("level", Relations.fix(c.z(), 0));
    b.tie("rail", Relations.distance(a, c, rail));
    b.tie("back stay", Relations.distance(a, d, 260));
    b.tie("front stay", Relations.distance(c, d, 250));
    b.tie("top", Relations.distance(d, e, 300));
    b.tie("nose", Relations.distance(c, e, 255));
    return b.build();
  }
}
