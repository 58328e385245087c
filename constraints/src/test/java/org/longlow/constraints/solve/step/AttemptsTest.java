package org.longlow.constraints.solve.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.StillPin;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.Work;
import org.longlow.constraints.solve.relation.Relations;

/** Of several tries that all miss, the one that misses least is kept. */
class AttemptsTest {

  private static final int LAST = 7;

  /** Two free pins tied to three that stay, and to each other, by lengths that cannot all hold. */
  private record Frame(double[][] fixed, double[] lengths, double[] start) {

    static Frame random(Random random) {
      double[][] fixed = new double[3][];
      for (int i = 0; i < 3; i++) {
        fixed[i] = new double[] {random.nextDouble() * 500, random.nextDouble() * 500};
      }
      double[] lengths = random.doubles(7, 20, 500).toArray();
      return new Frame(fixed, lengths, random.doubles(4, 0, 500).toArray());
    }

    Problem problem() {
      Problem.Builder b = Problem.builder();
      Pt[] at = new Pt[3];
      for (int i = 0; i < 3; i++) {
        at[i] = StillPin.in(b, "f" + i, fixed[i][0], fixed[i][1]);
      }
      Pt p = b.pin("p", start[0], start[1]);
      Pt q = b.pin("q", start[2], start[3]);
      for (int i = 0; i < 3; i++) {
        b.tie("p" + i, Relations.distance(p, at[i], lengths[i]));
        b.tie("q" + i, Relations.distance(q, at[i], lengths[3 + i]));
      }
      b.tie("pq", Relations.distance(p, q, lengths[6]));
      return b.build();
    }

    /**
     * Root of the sum of squares of how far pins are from where a length holds, mm; where both ends
     * can go there, each goes half of it.
     */
    double missMm(double[] x) {
      double sum = Math.pow(Math.hypot(x[0] - x[2], x[1] - x[3]) - lengths[6], 2) / 2;
      for (int i = 0; i < 3; i++) {
        sum += Math.pow(Math.hypot(x[0] - fixed[i][0], x[1] - fixed[i][1]) - lengths[i], 2);
        sum += Math.pow(Math.hypot(x[2] - fixed[i][0], x[3] - fixed[i][1]) - lengths[3 + i], 2);
      }
      return Math.sqrt(sum);
    }

    /** What is missed where so many tries leave it, mm. */
    double after(int tries) {
      Problem problem = problem();
      GroupSystem system = new GroupSystem(Group.split(problem).get(0), problem);
      double[] x = problem.start();
      new Attempts(system, new Restoration(system, true))
          .restore(
              x, system.take(x), 1e-8, SolverSettings.DEFAULT, false, Try.all(false, tries - 1));
      // pins that stay come first
      return missMm(Arrays.copyOfRange(x, 6, 10));
    }
  }

  @Test
  void moreTriesLeaveNoMoreMissed() {
    Random random = new Random(20_260_801);
    int better = 0;
    for (int k = 0; k < 40; k++) {
      Frame frame = Frame.random(random);
      double last = frame.after(1);
      for (int tries = 2; tries <= LAST; tries++) {
        double missed = frame.after(tries);
        assertThat(missed)
            .as("frame %d, %d tries", k, tries)
            .isLessThanOrEqualTo(last * (1 + 2e-6));
        better += missed < last - 1 ? 1 : 0;
        last = missed;
      }
    }
    // some first tries end in a hollow that others leave
    assertThat(better).isPositive();
  }

  /** A pin 60 mm from one end and 30 mm from the other of 100 mm: each is missed by 5 mm. */
  @Test
  void whatCannotBeMetIsMissedByTheLeastSquares() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 55, 1);
    b.tie("left", Relations.distance(p, StillPin.in(b, "a", 0, 0), 60));
    b.tie("right", Relations.distance(p, StillPin.in(b, "b", 100, 0), 30));
    SolveReport report = Solver.solve(b.build());
    assertThat(report.status().holds()).isFalse();
    assertThat(report.x()[0]).isCloseTo(65, within(1e-3));
    assertThat(report.maxResidualMm()).isCloseTo(5, within(1e-3));
  }

  // --- one try at a time

  private static Try way(boolean keeps, boolean fromBest, double share, Try.Ties ties, int seed) {
    return new Try("a way", keeps, fromBest, share, ties, seed);
  }

  private static final Try PLAIN = way(false, false, 0, Try.Ties.ALL_AT_ONCE, 1);

  /** Two pins that cannot be both 60 from one end and 30 from the other of 100, bending. */
  private static GroupSystem tooShort() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 20, 70);
    b.tie("left", Relations.distance(p, Pt.at(0, 0), 60));
    b.tie("right", Relations.distance(p, Pt.at(100, 0), 30));
    Problem problem = b.build();
    return new GroupSystem(Group.split(problem).get(0), problem);
  }

  private static int steps(GroupSystem system, double[] x, Try... tries) {
    Attempts attempts = new Attempts(system, new Restoration(system, true));
    assertThat(
            attempts.restore(
                x, new double[] {20, 70}, 1e-9, SolverSettings.DEFAULT, false, List.of(tries)))
        .isNotEqualTo(Restoration.End.HOLDS);
    assertThat(attempts.wasShaken()).isFalse();
    return attempts.steps();
  }

  /** From the best there is nothing left to do; from the beginning all of it again. */
  @Test
  void aTryGoesOnFromTheBestOrBeginsAgain() {
    double[] x = {20, 70};
    int once = steps(tooShort(), x, PLAIN);
    assertThat(once).isGreaterThan(3);
    assertThat(x[0]).isCloseTo(65, within(1e-2));
    assertThat(x[1]).isCloseTo(0, within(1e-2));
    assertThat(steps(tooShort(), x, PLAIN, PLAIN)).isEqualTo(2 * once);
    assertThat(x[0]).isCloseTo(65, within(1e-2));
    Try onwards = way(false, true, 0, Try.Ties.ALL_AT_ONCE, 2);
    assertThat(steps(tooShort(), x, PLAIN, onwards)).isBetween(once, once + 2);
    // where nothing is known yet, the best is the beginning
    assertThat(steps(tooShort(), x, onwards)).isEqualTo(once);
  }

  /** A guard that held nothing back spares the same way without it; one that did does not. */
  @Test
  void theSameWayIsNotGoneTwice() {
    Try guarded = way(true, false, 0, Try.Ties.ALL_AT_ONCE, 3);
    double[] x = {20, 70};
    int once = steps(crossing(), x, guarded);
    assertThat(once).isPositive();
    assertThat(steps(crossing(), x, guarded, PLAIN)).isEqualTo(once);
    assertThat(steps(crossing(), x, PLAIN, guarded)).isEqualTo(2 * once);
    int straight = steps(tooShort(), x, guarded);
    assertThat(steps(tooShort(), x, guarded, PLAIN)).isGreaterThan(straight + 5);
  }

  /** Lines that do not meet in one point. */
  private static GroupSystem crossing() {
    Problem.Builder b = Problem.builder();
    b.variable("x", 20);
    b.variable("z", 70);
    b.tie("t0", new Row(new double[] {1, 0}, 40, false));
    b.tie("t1", new Row(new double[] {0.6, 0.8}, 80, false));
    b.tie("t2", new Row(new double[] {-0.8, 0.6}, 80, false));
    Problem problem = b.build();
    return new GroupSystem(Group.split(problem).get(0), problem);
  }

  @Test
  void noTryBeginsWhenTheWorkIsSpent() {
    GroupSystem system = tooShort();
    Work work = new Work(1);
    work.add(2);
    system.charge(work);
    double[] x = {20, 70};
    assertThat(steps(system, x, PLAIN, PLAIN)).isZero();
    assertThat(x).containsExactly(20, 70);
  }

  /**
   * Ties one after the other: each is one step where it is a line, and one that fails is passed.
   */
  @Test
  void tiesAreTakenInOneAfterTheOther() {
    for (Try.Ties order : List.of(Try.Ties.IN_THEIR_ORDER, Try.Ties.IN_ANY_ORDER)) {
      Problem.Builder b = Problem.builder();
      b.variable("x", 0);
      b.variable("z", 0);
      b.tie("x", new Row(new double[] {1, 0}, 40, false));
      b.tie("both", new Row(new double[] {0.6, 0.8}, 80, false));
      Problem problem = b.build();
      GroupSystem system = new GroupSystem(Group.split(problem).get(0), problem);
      Attempts attempts = new Attempts(system, new Restoration(system, true));
      double[] x = {0, 0};
      Try byTie = way(false, false, 0, order, 3);
      assertThat(
              attempts.restore(
                  x, new double[2], 1e-9, SolverSettings.DEFAULT, false, List.of(byTie)))
          .isEqualTo(Restoration.End.HOLDS);
      assertThat(attempts.steps()).isBetween(2, 3);
      assertThat(x).containsExactly(new double[] {40, 70}, within(1e-8));
      assertThat(system.tieOn).containsOnly(true);
    }
  }

  /** x is asked to 0, 0 and 90; without the one that is off by most the others hold. */
  @Test
  void whatFailsIsTakenInLast() {
    Problem.Builder b = Problem.builder();
    b.variable("x", 50);
    b.tie("here", new Row(new double[] {1}, 0, false));
    b.tie("there", new Row(new double[] {1}, 90, false));
    Problem problem = b.build();
    GroupSystem system = new GroupSystem(Group.split(problem).get(0), problem);
    Attempts attempts = new Attempts(system, new Restoration(system, true));
    double[] x = {50};
    Try last = way(false, true, 0, Try.Ties.FAILING_LAST, 4);
    attempts.restore(
        x, new double[] {50}, 1e-9, SolverSettings.DEFAULT, false, List.of(PLAIN, last));
    assertThat(x[0]).isCloseTo(45, within(1e-6));
    assertThat(system.tieOn).containsOnly(true);
  }

  /**
   * Values 100, 250 and 400 (in threes 1200) are shaken by a tenth of 300 at most, and by most of
   * it.
   */
  @Test
  void aShakeReachesAsFarAsItsShareOfTheExtent() {
    Problem.Builder b = Problem.builder();
    b.variable("a", 100);
    b.variable("b", 250);
    b.variable(new Problem.Variable("c", 1200, 1200, 3, false));
    b.tie("all", new Row(new double[] {1, 1, 1}, 0, false));
    Problem problem = b.build();
    GroupSystem system = new GroupSystem(Group.split(problem).get(0), problem);
    Attempts attempts = new Attempts(system, new Restoration(system, true));
    double[] begin = {100, 250, 1200};
    double[] most = new double[3];
    double[] least = new double[3];
    for (int seed = 0; seed < 60; seed++) {
      double[] x = begin.clone();
      Try shaken = way(false, false, 0.1, Try.Ties.ALL_AT_ONCE, seed);
      // everything is near enough: what is left is the shaken start
      assertThat(attempts.restore(x, begin, 1e9, SolverSettings.DEFAULT, false, List.of(shaken)))
          .isEqualTo(Restoration.End.HOLDS);
      assertThat(attempts.wasShaken()).isTrue();
      for (int j = 0; j < 3; j++) {
        most[j] = Math.max(most[j], x[j] - begin[j]);
        least[j] = Math.min(least[j], x[j] - begin[j]);
      }
      double[] again = begin.clone();
      attempts.restore(again, begin, 1e9, SolverSettings.DEFAULT, false, List.of(shaken));
      assertThat(again).isEqualTo(x);
    }
    for (int j = 0; j < 3; j++) {
      double reach = j == 2 ? 90 : 30;
      assertThat(most[j]).isBetween(0.8 * reach, reach);
      assertThat(least[j]).isBetween(-reach, -0.8 * reach);
    }
  }

  /** What limits miss counts beside ties: of two tries the one that breaks them less is kept. */
  @Test
  void limitsCountInWhatIsMissed() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", -100, 1);
    b.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    b.limit("right", Relations.fix(p.x(), 150));
    Problem problem = b.build();
    GroupSystem system = new GroupSystem(Group.split(problem).get(0), problem);
    Attempts attempts = new Attempts(system, new Restoration(system, true));
    double[] x = problem.start();
    Restoration.End end =
        attempts.restore(
            x, problem.start(), 1e-9, SolverSettings.DEFAULT, true, Try.all(false, 12));
    assertThat(end).isNotEqualTo(Restoration.End.HOLDS);
    // tie and limit share what is missing of 50
    assertThat(x[0]).isCloseTo(125, within(1.0));
    assertThat(x[1]).isCloseTo(0, within(1.0));
    double[] free = problem.start();
    assertThat(
            attempts.restore(
                free, problem.start(), 1e-9, SolverSettings.DEFAULT, false, Try.all(false, 12)))
        .isEqualTo(Restoration.End.HOLDS);
    assertThat(free[0]).isCloseTo(-100, within(0.1));
  }

  // --- the list of tries

  /** Near by first, then from far and farther, no two from the same start. */
  @Test
  void triesGoFartherAndFartherAndNoneIsMadeTwice() {
    assertThat(Try.plain(false)).hasSize(1);
    assertThat(Try.plain(true)).extracting(Try::keepsTurns).containsExactly(true, false);
    assertThat(Try.shaken(2)).hasSize(2);
    var tries = Try.shaken(13);
    assertThat(tries).hasSize(13);
    assertThat(Try.all(true, 13)).hasSize(15).endsWith(tries.toArray(Try[]::new));
    assertThat(Try.all(true, 13)).extracting(Try::seed).doesNotHaveDuplicates();
    var far = tries.subList(3, 13);
    assertThat(tries.subList(0, 3)).allMatch(t -> t.shakeShare() <= 0.05);
    assertThat(far).noneMatch(Try::fromBest).noneMatch(Try::keepsTurns);
    // up to the whole extent of the group
    for (double share : new double[] {0.2, 0.4, 0.6, 0.8, 1}) {
      assertThat(far.stream().filter(t -> Math.abs(t.shakeShare() - share) < 1e-12)).hasSize(2);
    }
    assertThat(far.stream().filter(t -> t.ties() == Try.Ties.ALL_AT_ONCE)).hasSize(5);
    assertThat(far.stream().filter(t -> t.ties() == Try.Ties.IN_ANY_ORDER)).hasSize(5);
  }
}
