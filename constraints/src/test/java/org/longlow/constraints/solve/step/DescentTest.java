package org.longlow.constraints.solve.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.Work;
import org.longlow.constraints.solve.relation.Relations;

/** Ways along ties to what is nearest, on circles, where it can be told by hand, and few steps. */
class DescentTest {

  private static final double AIM = 1e-9;
  private static final SolverSettings SETTINGS = SolverSettings.DEFAULT;

  private final Problem.Builder builder = Problem.builder();
  private GroupSystem system;
  private Descent descent;
  private double[] x;

  private void begin() {
    begin(Work.unbounded());
  }

  private void begin(Work work) {
    Problem problem = builder.build();
    system = new GroupSystem(Group.split(problem).get(0), problem);
    system.charge(work);
    descent = new Descent(system, new Restoration(system, false));
    x = problem.start();
  }

  /** A pin on a circle of 100 mm, at so many degrees. */
  private Pt onCircle(double deg) {
    double a = Math.toRadians(deg);
    Pt p = builder.pin("p", 100 * Math.cos(a), 100 * Math.sin(a));
    builder.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    return p;
  }

  private static double[] polar(double radius, double deg) {
    double a = Math.toRadians(deg);
    return new double[] {radius * Math.cos(a), radius * Math.sin(a)};
  }

  /** The nearest of a circle lies on the ray to the anchor, outside it and inside. */
  @ParameterizedTest
  @CsvSource({
    "0, 300, 20",
    "0, 300, 80",
    "0, 101, 150",
    "170, 40, 60",
    "200, 60, 90",
    "10, 100, 10.1",
    "0, 5000, 130",
    "30, 20, -100"
  })
  void theNearestOfACircleIsReachedInFewSteps(double fromDeg, double radius, double toDeg) {
    onCircle(fromDeg);
    begin();
    assertThat(descent.run(x, polar(radius, toDeg), SETTINGS, AIM)).isTrue();
    assertThat(x).containsExactly(polar(100, toDeg), within(5e-6));
    assertThat(descent.steps()).isBetween(1, 14);
    // from there nothing is nearer
    assertThat(descent.run(x, polar(radius, toDeg), SETTINGS, AIM)).isTrue();
    assertThat(descent.steps()).isLessThanOrEqualTo(1);
  }

  /** A wall cuts the circle: left of 60 the nearest is where both meet. */
  @ParameterizedTest
  @CsvSource({"100, 20, 60", "80, 40, 60", "100, 70, 34.2020143"})
  void alongACircleToAWall(double fromDeg, double toDeg, double isX) {
    Pt p = onCircle(fromDeg);
    builder.limit("left", Relations.equal(Quantity.of(60), p.x()));
    begin();
    assertThat(descent.run(x, polar(250, toDeg), SETTINGS, AIM)).isTrue();
    assertThat(x[0]).isCloseTo(isX, within(1e-6));
    assertThat(x[1]).isCloseTo(Math.sqrt(1e4 - isX * isX), within(1e-6));
    assertThat(descent.steps()).isLessThanOrEqualTo(16);
  }

  /**
   * A wish comes first: of the circle, x = 60 is wished, and the anchor says which of both. Where
   * the wish is out of reach the pin comes as near as it can.
   */
  @ParameterizedTest
  @CsvSource({"20, 60, 60, 80", "-70, 60, 60, -80", "40, 140, 100, 0", "100, -140, -100, 0"})
  void aWishIsMetBeforeTheAnchorIsNeared(double fromDeg, double wished, double isX, double isZ) {
    Pt p = onCircle(fromDeg);
    builder.wish("x", 1, Relations.fix(p.x(), wished));
    begin();
    double[] anchor = {x[0], x[1]};
    assertThat(descent.run(x, anchor, SETTINGS, AIM)).isTrue();
    assertThat(x[0]).isCloseTo(isX, within(1e-5));
    assertThat(x[1]).isCloseTo(isZ, within(1e-3));
    assertThat(descent.steps()).isLessThanOrEqualTo(40);
  }

  /** Two wishes pull at a pin on a circle: it rests where their weighted sum points outwards. */
  @ParameterizedTest
  @CsvSource({"1, 1", "4, 1", "1, 9"})
  void wishesPullByTheirWeights(double wide, double high) {
    Pt p = onCircle(60);
    builder.wish("x", wide, Relations.fix(p.x(), 300));
    builder.wish("z", high, Relations.fix(p.z(), 200));
    begin();
    assertThat(descent.run(x, new double[] {x[0], x[1]}, SETTINGS, AIM)).isTrue();
    double best = Double.POSITIVE_INFINITY;
    double at = 0;
    for (double a = 0; a < Math.PI / 2; a += 1e-6) {
      double dx = 100 * Math.cos(a) - 300;
      double dz = 100 * Math.sin(a) - 200;
      double sum = wide * dx * dx + high * dz * dz;
      if (sum < best) {
        best = sum;
        at = a;
      }
    }
    assertThat(Math.atan2(x[1], x[0])).isCloseTo(at, within(3e-6));
    assertThat(descent.steps()).isLessThanOrEqualTo(20);
  }

  /**
   * A scale of 3 makes z three times as cheap to move: on the line x + z = 10 from 0 and 0, x gives
   * 1 where z gives 9.
   */
  @Test
  void cheapVariablesGoFarther() {
    int px = builder.variable("x", 10);
    int pz = builder.variable(new Problem.Variable("z", 0, 0, 3, false));
    builder.tie(
        "sum",
        Relations.equal(
            Quantity.formula(
                new int[] {px, pz},
                (v, g) -> {
                  if (g != null) {
                    Arrays.fill(g, 0, 2, 1);
                  }
                  return v[px] + v[pz];
                }),
            Quantity.of(10)));
    begin();
    assertThat(descent.run(x, new double[] {0, 0}, SETTINGS, AIM)).isTrue();
    assertThat(x).containsExactly(new double[] {1, 9}, within(1e-6));
  }

  /**
   * A stop at 95 keeps the knee from being straight, at 15.6 at least; on the other side it would
   * be nearer to home. Under guard it stays where no way but a leap leads over.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aKneeIsTurnedOverOnlyWhereThatIsAllowed(boolean keeps) {
    Pt knee = builder.pin("knee", 40, 30);
    Pt foot = builder.pin("foot", 80, 0);
    builder.tie("thigh", Relations.distance(Pt.at(0, 0), knee, 50));
    builder.tie("shank", Relations.distance(knee, foot, 50));
    builder.tie("level", Relations.fix(foot.z(), 0));
    builder.limit("stop", Relations.equal(Quantity.of(95), foot.x()));
    begin();
    descent.run(x, new double[] {40, -300, 80, 0}, SETTINGS.withKeepTurns(keeps), AIM);
    assertThat(Math.hypot(x[0], x[1])).isCloseTo(50, within(1e-7));
    assertThat(Math.hypot(x[2] - x[0], x[3] - x[1])).isCloseTo(50, within(1e-7));
    assertThat(x[1] > 15.6).isEqualTo(keeps);
  }

  /** With work spent, or steps, the way is left where it is, and that holds. */
  @Test
  void whatIsNotReachedIsNotCalledReached() {
    onCircle(0);
    begin(new Work(1));
    system.work().add(2);
    assertThat(descent.run(x, polar(300, 80), SETTINGS, AIM)).isFalse();
    assertThat(x).containsExactly(polar(100, 0), within(1e-12));
    begin();
    assertThat(descent.run(x, polar(300, 80), SETTINGS.withMaxIterations(1), AIM)).isFalse();
    assertThat(descent.steps()).isEqualTo(1);
    assertThat(Math.hypot(x[0], x[1])).isCloseTo(100, within(1e-7));
    // that step went the right way and not past
    assertThat(x[1]).isBetween(1.0, 99.9);
    begin(new Work(120));
    assertThat(descent.run(x, polar(5, 170), SETTINGS, AIM)).isFalse();
    assertThat(Math.hypot(x[0], x[1])).isCloseTo(100, within(1e-7));
  }
}
