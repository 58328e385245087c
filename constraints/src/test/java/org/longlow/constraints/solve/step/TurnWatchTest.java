package org.longlow.constraints.solve.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.relation.Relations;

/** Which chains of two links are watched, and which steps leap over straight. */
class TurnWatchTest {

  /** Of arms at a right angle; a step may take it down to 0.4 of its bend, and not over. */
  @ParameterizedTest
  @CsvSource({
    "90, 30, false",
    "90, 24, false",
    "90, 23, true",
    "90, -90, true",
    "-90, -24, false",
    "-90, -23, true",
    "0.1, -90, false"
  })
  void aChainMayNotLeapOverStraight(double beforeDeg, double afterDeg, boolean leaps) {
    Problem.Builder b = Problem.builder();
    Pt a = b.pin("a", 0, 0);
    Pt knee = b.pin("knee", 0, 0);
    Pt c = b.pin("c", 0, 0);
    b.tie("one", Relations.distance(a, knee, 50)).tie("other", Relations.distance(knee, c, 30));
    Problem problem = b.build();
    TurnWatch watch = new GroupSystem(Group.split(problem).get(0), problem).watch;
    assertThat(watch.count()).isEqualTo(1);
    double[] before = new double[1];
    double[] after = new double[1];
    watch.bends(bent(beforeDeg), before);
    watch.bends(bent(afterDeg), after);
    assertThat(before[0]).isCloseTo(Math.sin(Math.toRadians(beforeDeg)), within(1e-12));
    assertThat(watch.leaps(before, after)).isEqualTo(leaps);
    assertThat(watch.turned(before, after)).isEqualTo(beforeDeg == 90 && afterDeg == -90);
    assertThat(watch.turnedPins(before, after)).hasSize(watch.turned(before, after) ? 1 : 0);
  }

  /** From the knee one arm back along x and the other an angle off it. */
  private static double[] bent(double deg) {
    double r = Math.toRadians(deg);
    double x = 7;
    double z = -11;
    return new double[] {x + 50, z, x, z, x + 30 * Math.cos(r), z + 30 * Math.sin(r)};
  }

  /** Four tenths of the bend are kept, no less; up to a sine of 0.002 a chain is straight. */
  @ParameterizedTest
  @CsvSource({
    "0.5, 0.2, false",
    "0.5, 0.1999, true",
    "-0.5, -0.2, false",
    "-0.5, -0.1999, true",
    "0.002, -1, false",
    "0.0021, -1, true",
    "0.0021, 0.00084, false"
  })
  void aStepMayTakeSixTenthsOfABend(double before, double after, boolean leaps) {
    TurnWatch watch =
        TurnWatch.of(twoLinks().ties().stream().map(t -> t.relations().get(0)).toList());
    assertThat(watch.leaps(new double[] {before}, new double[] {after})).isEqualTo(leaps);
  }

  /** What was straight, or is, is not turned over. */
  @ParameterizedTest
  @CsvSource({
    "0.5, -0.5, true",
    "0.0021, -0.0021, true",
    "0.002, -0.5, false",
    "0.5, -0.002, false",
    "-0.5, 0.0021, true",
    "0.5, 0.5, false"
  })
  void onlyWhatIsBentIsTurnedOver(double before, double after, boolean turned) {
    Problem problem = twoLinks();
    TurnWatch watch = TurnWatch.of(problem.ties().stream().map(t -> t.relations().get(0)).toList());
    double[] b = {before};
    double[] a = {after};
    assertThat(watch.turned(b, a)).isEqualTo(turned);
    assertThat(watch.turnedPins(b, a))
        .isEqualTo(turned ? List.of(problem.indexOf("knee.x")) : List.of());
  }

  private static Problem twoLinks() {
    Problem.Builder b = Problem.builder();
    Pt a = b.pin("a", 0, 0);
    Pt knee = b.pin("knee", 30, 0);
    Pt c = b.pin("c", 60, 0);
    b.tie("one", Relations.distance(a, knee, 30)).tie("other", Relations.distance(knee, c, 30));
    return b.build();
  }

  @Test
  void onlyLinksThatShareAPinAreAChain() {
    Problem.Builder b = Problem.builder();
    Pt[] p = new Pt[4];
    for (int i = 0; i < 4; i++) {
      p[i] = b.pin("p" + i, 10 * i, 5 * i * i);
    }
    b.tie("one", Relations.distance(p[0], p[1], 50));
    b.tie("other", Relations.distance(p[2], p[3], 50));
    b.tie("level", Relations.horizontal(p[1], p[2], Quantity.of(10)));
    Problem problem = b.build();
    assertThat(new GroupSystem(Group.split(problem).get(0), problem).watch.count()).isZero();
  }

  /** All pairs of up to five links at one pin, of more each with the next. */
  @ParameterizedTest
  @CsvSource({"2, 1", "3, 3", "5, 10", "6, 5", "9, 8"})
  void notEveryPairOfManyLinksIsWatched(int links, int chains) {
    Problem.Builder b = Problem.builder();
    Pt hub = b.pin("hub", 0, 0);
    for (int i = 0; i < links; i++) {
      double angle = i;
      Pt end = b.pin("end " + i, 50 * Math.cos(angle), 50 * Math.sin(angle));
      b.tie("spoke " + i, Relations.distance(hub, end, 50));
    }
    Problem problem = b.build();
    TurnWatch watch = new GroupSystem(Group.split(problem).get(0), problem).watch;
    assertThat(watch.count()).isEqualTo(chains);
    double[] bends = new double[chains];
    watch.bends(problem.start(), bends);
    if (links == 2) {
      assertThat(bends[0]).isCloseTo(Math.sin(1), within(1e-12));
    }
  }

  /** A pin that a formula moves is no end of a chain: how it bends is not up to a step. */
  @ParameterizedTest
  @CsvSource({"false, 1", "true, 0"})
  void aPinThatAFormulaMovesIsNoEndOfAChain(boolean formula, int chains) {
    Problem.Builder b = Problem.builder();
    Pt knee = b.pin("knee", 0, 0);
    Pt free = b.pin("free", 30, 0);
    int v = b.variable("v", 40);
    Quantity x =
        formula
            ? Quantity.formula(
                new int[] {v},
                (values, g) -> {
                  if (g != null) {
                    g[0] = 2;
                  }
                  return 2 * values[v];
                })
            : Quantity.variable(v);
    b.tie("one", Relations.distance(knee, free, 30));
    b.tie("other", Relations.distance(knee, new Pt(x, Quantity.of(20)), 50));
    Problem problem = b.build();
    assertThat(new GroupSystem(Group.split(problem).get(0), problem).watch.count())
        .isEqualTo(chains);
  }
}
