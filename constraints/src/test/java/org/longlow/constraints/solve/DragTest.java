package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverLimit;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.SolverTie;
import org.longlow.constraints.solve.relation.Circles;
import org.longlow.constraints.solve.relation.Relations;

/** Dragging: nearest reachable point, ties at every step, limits slid along, branches kept. */
class DragTest {
  private static final double SOLVER_MM = 1e-6;

  /** The objective is flat near its least value: square root of rounding over a metre. */
  private static final double NEAREST_MM = 1e-4;

  private static void holds(Problem problem, SolveReport report) {
    assertThat(report.status().holds()).as(report.status().toString()).isTrue();
    for (SolverTie tie : problem.ties()) {
      for (Relation relation : tie.relations()) {
        assertThat(relation.evaluate(report.x(), null)).isCloseTo(0, offset(SOLVER_MM));
      }
    }
    for (SolverLimit limit : problem.limits()) {
      assertThat(limit.roomMm(report.x())).isGreaterThan(-SOLVER_MM);
    }
  }

  @Test
  void crankPinFollowsTheNearestPointOfItsCircle() {
    Problem.Builder b = Problem.builder();
    Pt o = StillPin.in(b, "pivot", 0, 0);
    Pt p = b.pin("pin", 100, 0);
    b.tie("crank", Relations.distance(o, p, 100));
    Problem problem = b.build();
    DragSession drag = Solver.drag(problem, problem.start(), SolverSettings.DEFAULT, 2, 3);
    for (int k = 0; k <= 200; k++) {
      double angle = 4 * Math.PI * k / 200;
      double radius = 100 + 60 * Math.sin(7 * angle);
      SolveReport report = drag.moveTo(radius * Math.cos(angle), radius * Math.sin(angle));
      holds(problem, report);
      assertThat(report.x()[2]).isCloseTo(100 * Math.cos(angle), offset(NEAREST_MM));
      assertThat(report.x()[3]).isCloseTo(100 * Math.sin(angle), offset(NEAREST_MM));
    }
  }

  @Test
  void pointerFarOutsideStillGivesTheNearestPoint() {
    Problem.Builder b = Problem.builder();
    Pt o = StillPin.in(b, "pivot", 0, 0);
    Pt p = b.pin("pin", 100, 0);
    b.tie("crank", Relations.distance(o, p, 100));
    Problem problem = b.build();
    DragSession drag = Solver.drag(problem, problem.start(), SolverSettings.DEFAULT, 2, 3);
    for (double degrees : new double[] {10, 60, 130, 200, 340}) {
      double a = Math.toRadians(degrees);
      SolveReport report = drag.moveTo(2000 * Math.cos(a), 2000 * Math.sin(a));
      holds(problem, report);
      assertThat(report.x()[2]).isCloseTo(100 * Math.cos(a), offset(1e-3));
      assertThat(report.x()[3]).isCloseTo(100 * Math.sin(a), offset(1e-3));
    }
  }

  /**
   * A pin near the hinge swings all of a long frame: staying near, eighteen metres away, must not
   * hold it back, nor cost a round of work for every bit of the way.
   */
  @Test
  void aPinOfALongFrameReachesItsPlaceInFewSteps() {
    Problem.Builder b = Problem.builder();
    Pt hinge = StillPin.in(b, "hinge", 0, 0);
    Pt lower = hinge;
    Pt upper = b.pin("upper 0", 0, 200);
    Pt held = upper;
    b.tie("post 0", Relations.distance(lower, upper, 200));
    for (int k = 1; k <= 60; k++) {
      Pt lowerNext = b.pin("lower " + k, 300 * k, 0);
      Pt upperNext = b.pin("upper " + k, 300 * k, 200);
      b.tie("rail " + k, Relations.distance(lower, lowerNext, 300));
      b.tie("brace " + k, Relations.distance(upper, lowerNext, Math.hypot(300, 200)));
      b.tie("post " + k, Relations.distance(lowerNext, upperNext, 200));
      b.tie("top " + k, Relations.distance(upper, upperNext, 300));
      lower = lowerNext;
      upper = upperNext;
    }
    Problem problem = b.build();
    int x = held.x().variables()[0];
    int z = held.z().variables()[0];
    int far = lower.x().variables()[0];
    DragSession drag = Solver.drag(problem, problem.start(), SolverSettings.DEFAULT, x, z);
    for (int k = 1; k <= 20; k++) {
      double turn = Math.toRadians(0.3 * k);
      double radius = 200 + 10 * Math.sin(k);
      SolveReport report = drag.moveTo(-radius * Math.sin(turn), radius * Math.cos(turn));
      holds(problem, report);
      assertThat(report.x()[x]).isCloseTo(-200 * Math.sin(turn), offset(SOLVER_MM));
      assertThat(report.x()[z]).isCloseTo(200 * Math.cos(turn), offset(SOLVER_MM));
      assertThat(report.x()[far]).isCloseTo(18_000 * Math.cos(turn), offset(NEAREST_MM));
      assertThat(report.iterations()).isLessThanOrEqualTo(8);
    }
  }

  @Test
  void limitIsSlidAlong() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("pin", 0, 50);
    b.limit("ground", Relations.fix(p.z(), 0));
    b.limit("wall", Relations.equal(Quantity.of(120), p.x()));
    Problem problem = b.build();
    DragSession drag = Solver.drag(problem, problem.start(), SolverSettings.DEFAULT, 0, 1);
    for (int k = 0; k <= 40; k++) {
      SolveReport report = drag.moveTo(5 * k, -30);
      holds(problem, report);
      assertThat(report.x()[0]).isCloseTo(Math.min(5 * k, 120), offset(SOLVER_MM));
      assertThat(report.x()[1]).isCloseTo(0, offset(SOLVER_MM));
      assertThat(report.activeLimits()).contains("ground");
    }
  }

  @Test
  void fourBarDraggedRoundAndRoundComesBackAndKeepsItsBranch() {
    Problem.Builder b = Problem.builder();
    Pt o = StillPin.in(b, "crank pivot", 0, 0);
    Pt e = StillPin.in(b, "rocker pivot", 200, 0);
    Pt p = b.pin("crank pin", 50, 0);
    Pt q = b.pin("rocker pin", 180, 145);
    b.tie("crank", Relations.distance(o, p, 50));
    b.tie("coupler", Relations.distance(p, q, 190));
    b.tie("rocker", Relations.distance(e, q, 150));
    Problem problem = b.build();
    double[] begin = Solver.solve(problem).x();
    DragSession drag = Solver.drag(problem, begin, SolverSettings.DEFAULT, 4, 5);
    double turn = cross(begin);
    SolveReport last = null;
    for (int k = 0; k <= 288; k++) {
      double angle = 2 * Math.PI * k / 72 + Math.atan2(begin[5], begin[4]);
      last = drag.moveTo(55 * Math.cos(angle), 55 * Math.sin(angle));
      holds(problem, last);
      assertThat(cross(last.x()) * turn).isPositive();
    }
    assertThat(last.x()).containsExactly(begin, offset(1e-3));
  }

  private static double cross(double[] x) {
    return (x[6] - x[4]) * x[7] - (x[7] - x[5]) * (x[6] - 200);
  }

  @Test
  void armReachesTowardsThePointerAndLeavesTheRestInPeace() {
    Problem.Builder b = Problem.builder();
    Pt o = StillPin.in(b, "shoulder", 0, 0);
    Pt p = b.pin("elbow", 80, 60);
    Pt q = b.pin("hand", 150, 0);
    Pt r = b.pin("bystander", 500, 500);
    b.tie("upper", Relations.distance(o, p, 100));
    b.tie("fore", Relations.distance(p, q, 95));
    b.tie("tether", Relations.distance(r, Pt.at(600, 500), 100));
    Problem problem = b.build();
    double[] begin = Solver.solve(problem).x();
    DragSession drag = Solver.drag(problem, begin, SolverSettings.DEFAULT, 4, 5);
    for (int k = 0; k <= 60; k++) {
      double x = 150 - 3 * k;
      double z = 40 + 2 * k;
      SolveReport report = drag.moveTo(x, z);
      holds(problem, report);
      if (Math.hypot(x, z) < 190) {
        // Within reach: the hand is at the pointer.
        assertThat(report.x()[4]).isCloseTo(x, offset(SOLVER_MM));
        assertThat(report.x()[5]).isCloseTo(z, offset(SOLVER_MM));
      }
      assertThat(report.x()[6]).isEqualTo(begin[6]);
      assertThat(report.x()[7]).isEqualTo(begin[7]);
    }
    // Out of reach: stretched towards the pointer.
    SolveReport far = drag.moveTo(0, 1000);
    holds(problem, far);
    assertThat(far.x()[5]).isCloseTo(195, offset(NEAREST_MM));
  }

  @Test
  void wishesGiveWayToThePointerAndComeBackAfterIt() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 0, 0);
    b.pin("q", 100, 0);
    b.tie("bar", Relations.distance(p, Pt.variables(2, 3), 100));
    b.wish("level", 1, Relations.vertical(p, Pt.variables(2, 3), Quantity.of(0)));
    Problem problem = b.build();
    DragSession drag = Solver.drag(problem, problem.start(), SolverSettings.DEFAULT, 0, 1);
    SolveReport report = drag.moveTo(10, 70);
    holds(problem, report);
    assertThat(report.x()[0]).isCloseTo(10, offset(1e-5));
    assertThat(report.x()[1]).isCloseTo(70, offset(1e-5));
    // The other end is free, so the bar can be level too.
    assertThat(report.x()[3]).isCloseTo(70, offset(1e-4));
  }

  /** Over a disc of 50 mm, the pointer going straight through it 10 mm above its middle. */
  @ParameterizedTest(name = "steps of {0} mm")
  @ValueSource(doubles = {1, 10, 90})
  void whatLimitsKeepOutIsGoneRoundNotThrough(double step) {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 0, 10);
    Pt disc = StillPin.in(b, "disc", 100, 0);
    b.limit("clear", Circles.tangentOutside(p, Quantity.of(0), disc, Quantity.of(50)));
    Problem problem = b.build();
    DragSession drag = Solver.drag(problem, problem.start(), SolverSettings.DEFAULT, 0, 1);
    double x = 0;
    double z = 10;
    boolean over = false;
    for (double to = step; to < 250 + step; to += step) {
      SolveReport report = drag.moveTo(Math.min(250, to), 10);
      holds(problem, report);
      double nowX = report.x()[0];
      double nowZ = report.x()[1];
      // never further than small steps lead round it: the way over it is 150 mm long
      assertThat(Math.hypot(nowX - x, nowZ - z)).isLessThan(Math.max(85, 2 * step));
      over |= nowZ > 40;
      x = nowX;
      z = nowZ;
    }
    assertThat(over || step > 25).isTrue();
    SolveReport there = drag.moveTo(250, 10);
    assertThat(there.x()[0]).isCloseTo(250, offset(NEAREST_MM));
    assertThat(there.x()[1]).isCloseTo(10, offset(NEAREST_MM));
  }
}
