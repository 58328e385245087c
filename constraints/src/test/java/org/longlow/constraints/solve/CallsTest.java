package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverLimit;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.SolverTie;
import org.longlow.constraints.solve.relation.Relations;

/** What callers hand to the solver: refused with its reason, or kept as it is. */
class CallsTest {

  private static void refused(Runnable call, String... words) {
    assertThatThrownBy(call::run)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll(words);
  }

  @Test
  void settingsHaveLeastValues() {
    SolverSettings s = SolverSettings.DEFAULT;
    refused(() -> new SolverSettings(0, 1, 1, 1, 1, 0, true, 1), "> 0");
    refused(() -> new SolverSettings(1, 0, 1, 1, 1, 0, true, 1), "> 0");
    refused(() -> new SolverSettings(1, 1, 1, 0, 1, 0, true, 1), "> 0");
    refused(() -> new SolverSettings(1, 1, 1, 1, 0, 0, true, 1), "> 0");
    refused(() -> new SolverSettings(1, Double.NaN, 1, 1, 1, 0, true, 1), "> 0");
    refused(() -> s.withMaxIterations(0), "1 iteration");
    refused(() -> s.withRestarts(-1), "0 or more restarts");
    refused(() -> new SolverSettings(1, 1, 1, 1, 1, 0, true, 0), "some work");
    assertThat(s.withMaxIterations(1).maxIterations()).isEqualTo(1);
    assertThat(s.withRestarts(0).restarts()).isZero();
    assertThat(s.withKeepTurns(false).keepTurns()).isFalse();
    assertThat(s.withNearnessMm(0.5).nearnessMm()).isEqualTo(0.5);
    // the rest stays
    assertThat(s.withMaxIterations(7).withMaxIterations(s.maxIterations())).isEqualTo(s);
    assertThat(s.withRestarts(7).withRestarts(s.restarts())).isEqualTo(s);
    assertThat(s.withNearnessMm(7).withNearnessMm(s.nearnessMm())).isEqualTo(s);
    assertThat(s.withKeepTurns(false).withKeepTurns(true)).isEqualTo(s);
  }

  @Test
  void demandsNeedNamesAndRelations() {
    Relation zero = Relations.equal(Quantity.of(0), Quantity.of(0));
    refused(() -> SolverTie.of(" ", zero), "a tie needs a name");
    refused(() -> SolverTie.of("t"), "tie 't'", "at least one relation");
    refused(() -> SolverLimit.of("", zero), "a limit needs a name");
    refused(() -> SolverLimit.of("l"), "limit 'l'", "a gap");
    refused(() -> Quantity.of(Double.NaN), "finite");
    refused(() -> Quantity.of(Double.POSITIVE_INFINITY), "finite");
    refused(() -> Quantity.variable(-1), ">= 0, got -1");
    assertThat(Quantity.variable(0).variables()).containsExactly(0);
  }

  @Test
  void problemsAreRefusedWhereTheyNameWhatIsNotThere() {
    Problem.Builder twice = Problem.builder();
    twice.variable("a", 1);
    twice.variable("a", 2);
    refused(twice::build, "two variables are called 'a'");
    Problem.Builder beyond = Problem.builder();
    beyond.variable("a", 1);
    beyond.tie("t", Relations.equal(Quantity.variable(1), Quantity.of(0)));
    refused(beyond::build, "tie 't' uses variable 1", "0 to 0");
    Problem.Builder limit = Problem.builder();
    limit.limit("l", Relations.equal(Quantity.variable(3), Quantity.of(0)));
    refused(limit::build, "limit 'l' uses variable 3");
    Problem.Builder wish = Problem.builder();
    wish.wish("w", 1, Relations.equal(Quantity.variable(3), Quantity.of(0)));
    refused(wish::build, "wish 'w' uses variable 3");
    Problem.Builder doubled = Problem.builder();
    doubled.variable("a", 1);
    Relation same =
        new Relation() {
          @Override
          public int[] variables() {
            return new int[] {0, 0};
          }

          @Override
          public double evaluate(double[] x, double[] gradient) {
            return 0;
          }
        };
    doubled.tie("t", same);
    refused(doubled::build, "tie 't' lists variable 0 twice");
  }

  @Test
  void copiesOfAProblemDifferInOneThing() {
    Problem.Builder builder = Problem.builder();
    Pt p = builder.pin("p", 3, 4);
    Pt q = StillPin.in(builder, "q", 5, 6);
    builder.tie("t", Relations.horizontal(p, q, Quantity.of(1)));
    builder.limit("l", List.of(Relations.equal(p.z(), Quantity.of(1))));
    builder.wish("w", 2, Relations.equal(p.x(), Quantity.of(9)));
    Problem problem = builder.build();
    assertThat(problem.size()).isEqualTo(4);
    assertThat(problem.start()).containsExactly(3, 4, 5, 6);
    assertThat(problem.anchor()).containsExactly(3, 4, 5, 6);
    assertThat(problem.indexOf("q.z")).isEqualTo(3);
    assertThat(problem.indexOf("r.z")).isEqualTo(-1);
    assertThat(problem.variables().get(2).fixed()).isTrue();
    assertThat(problem.variables().get(0).fixed()).isFalse();
    Problem moved = problem.with(new double[] {1, 2, 5, 6}, new double[] {7, 8, 5, 6});
    assertThat(moved.start()).containsExactly(1, 2, 5, 6);
    assertThat(moved.anchor()).containsExactly(7, 8, 5, 6);
    assertThat(moved.ties()).isEqualTo(problem.ties());
    assertThat(problem.withStart(new double[] {1, 2, 5, 6}).anchor()).containsExactly(1, 2, 5, 6);
    assertThat(problem.withTies(List.of()).ties()).isEmpty();
    assertThat(problem.withTies(List.of()).limits()).isEqualTo(problem.limits());
    assertThat(problem.withLimits(List.of()).limits()).isEmpty();
    assertThat(problem.withLimits(List.of()).wishes()).isEqualTo(problem.wishes());
    assertThat(problem.withWishes(List.of()).wishes()).isEmpty();
    assertThat(problem.withWishes(List.of()).ties()).isEqualTo(problem.ties());
    assertThat(problem.limits().get(0).roomMm(problem.start())).isEqualTo(3);
  }
}
