package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverTie;
import org.longlow.constraints.solve.relation.Relations;
import org.longlow.rider.geom.PointMm;

/** How pins of small linkages can move, by plane geometry. */
class FreedomsTest {

  private static final double NEAR = 1e-7;

  private final Problem.Builder builder = Problem.builder();
  private final Pt o = still("o", 0, 0);

  private Pt still(String name, double xMm, double zMm) {
    return still(builder, name, xMm, zMm);
  }

  private static Pt still(Problem.Builder into, String name, double xMm, double zMm) {
    return Pt.variables(into.fixed(name + ".x", xMm), into.fixed(name + ".z", zMm));
  }

  private PinFreedom of(String pin) {
    Problem problem = builder.build();
    return new Freedoms(problem, problem.start()).of(pin);
  }

  private static void sameWays(PinFreedom freedom, PointMm... ways) {
    assertThat(freedom.ways()).hasSameSizeAs(ways);
    for (PointMm way : ways) {
      assertThat(freedom.ways()).anyMatch(w -> w.distance(way) < NEAR);
    }
  }

  @Test
  void whatIsFixedIsNailed() {
    assertThat(of("o").kind()).isEqualTo(PinFreedom.Kind.NAILED);
    assertThat(of("nobody").kind()).isEqualTo(PinFreedom.Kind.NAILED);
    assertThat(of("o").words()).isEqualTo("o is nailed in place");
  }

  @Test
  void aLoosePinGoesFourWays() {
    builder.pin("a", 10, 20);
    PinFreedom freedom = of("a");
    assertThat(freedom.kind()).isEqualTo(PinFreedom.Kind.PLANE);
    sameWays(freedom, new PointMm(1, 0), new PointMm(-1, 0), new PointMm(0, 1), new PointMm(0, -1));
    assertThat(freedom.followers()).isEmpty();
    assertThat(freedom.holders()).isEmpty();
    assertThat(freedom.words()).isEqualTo("a can move");
  }

  /** An arm of 500 mm at (300, 400) turns square to itself. */
  @Test
  void anArmRunsSquareToItself() {
    Pt a = builder.pin("a", 300, 400);
    builder.tie("arm", Relations.distance(o, a, 500));
    PinFreedom freedom = of("a");
    assertThat(freedom.kind()).isEqualTo(PinFreedom.Kind.LINE);
    sameWays(freedom, new PointMm(-0.8, 0.6), new PointMm(0.8, -0.6));
    assertThat(freedom.holders()).containsExactly("arm");
    assertThat(freedom.words()).isEqualTo("a runs along a line; tie arm keeps it there");
  }

  /** Two arms hold it; a third tie says the same as one of them and is not needed. */
  @Test
  void twoArmsHoldAndWhatCanBeSparedIsNotNamed() {
    Pt a = builder.pin("a", 300, 400);
    Pt b = builder.pin("b", 900, 0);
    builder.tie("far", Relations.fix(b, 900, 0));
    builder.tie("level", Relations.horizontal(a, b, Quantity.of(600)));
    builder.tie("arm", Relations.distance(o, a, 500));
    builder.tie("across", Relations.fix(a.x(), 300));
    PinFreedom freedom = of("a");
    assertThat(freedom.kind()).isEqualTo(PinFreedom.Kind.HELD);
    assertThat(freedom.ways()).isEmpty();
    assertThat(freedom.followers()).isEmpty();
    // of what is tied to the pin itself, "level" with "far" or "across" alone
    assertThat(freedom.holders()).containsExactlyInAnyOrder("arm", "across");
    assertThat(freedom.words()).matches("a is held by ties (arm, across|across, arm)");
  }

  /** Through a chain: each tie of it is needed, one beside it is not. */
  @Test
  void aChainHoldsAllAlong() {
    Pt a = builder.pin("a", 0, 100);
    Pt b = builder.pin("b", 100, 100);
    Pt c = builder.pin("c", 700, 700);
    builder.tie("aside", Relations.distance(b, c, Math.hypot(600, 600)));
    builder.tie("first", Relations.fix(a, 0, 100));
    builder.tie("second", Relations.horizontal(a, b, Quantity.of(100)));
    builder.tie("third", Relations.vertical(a, b, Quantity.of(0)));
    assertThat(of("b").kind()).isEqualTo(PinFreedom.Kind.HELD);
    assertThat(of("b").holders()).containsExactlyInAnyOrder("first", "second", "third");
    assertThat(of("c").holders()).contains("aside");
    assertThat(of("c").kind()).isEqualTo(PinFreedom.Kind.LINE);
    sameWays(
        of("c"),
        new PointMm(Math.sqrt(0.5), -Math.sqrt(0.5)),
        new PointMm(-Math.sqrt(0.5), Math.sqrt(0.5)));
  }

  /** The middle of an arm goes half as fast, a pin carried along the same way and as fast. */
  @Test
  void followersGoAsFastAsTheyAreTied() {
    Pt a = builder.pin("a", 300, 400);
    Pt m = builder.pin("m", 150, 200);
    Pt b = builder.pin("b", 400, 400);
    builder.pin("loose", 0, 900);
    builder.tie("arm", Relations.distance(o, a, 500));
    builder.tie("middle", Relations.midpoint(m, o, a));
    builder.tie("beside", Relations.horizontal(a, b, Quantity.of(100)));
    builder.tie("level", Relations.vertical(a, b, Quantity.of(0)));
    PinFreedom freedom = of("a");
    PointMm way = freedom.ways().get(0);
    assertThat(freedom.followers()).containsOnlyKeys("m", "b");
    assertThat(freedom.followers().get("m").distance(way.times(0.5))).isLessThan(NEAR);
    assertThat(freedom.followers().get("b").distance(way)).isLessThan(NEAR);
    // the other way round the arm is twice as fast
    PinFreedom half = of("m");
    assertThat(half.followers().get("a").distance(half.ways().get(0).times(2))).isLessThan(NEAR);
  }

  /** 1 mm for 100 is not worth an arrow, 3 are. */
  @Test
  void slowFollowersAreLeftOut() {
    Pt a = builder.pin("a", 1000, 0);
    Pt slow = builder.pin("slow", 10, 0);
    Pt quick = builder.pin("quick", 30, 0);
    builder.tie("arm", Relations.distance(o, a, 1000));
    builder.tie("s", Relations.alongLine(slow, o, a, Quantity.of(0.01)));
    builder.tie("q", Relations.alongLine(quick, o, a, Quantity.of(0.03)));
    PinFreedom freedom = of("a");
    assertThat(freedom.followers()).containsOnlyKeys("quick");
    assertThat(freedom.followers().get("quick").length()).isCloseTo(0.03, within(NEAR));
  }

  /** A limit that is at its end stops the way past it, and only that. */
  @Test
  void limitsStopOneWay() {
    Pt a = builder.pin("a", 300, 400);
    builder.tie("arm", Relations.distance(o, a, 500));
    builder.limit("low (at most)", Relations.negative(Relations.equal(a.z(), Quantity.of(400))));
    builder.limit("far (at least)", Relations.equal(a.z(), Quantity.of(399.9)));
    PinFreedom freedom = of("a");
    sameWays(freedom, new PointMm(0.8, -0.6));
    assertThat(freedom.stops()).containsExactly("low");
    assertThat(freedom.words())
        .isEqualTo("a runs along a line; tie arm keeps it there; stopped by limit low");
    assertThat(freedom.holders()).containsExactly("arm");
  }

  @Test
  void aLoosePinInACornerKeepsTwoWays() {
    Pt a = builder.pin("a", 300, 400);
    builder.limit("roof", Relations.negative(Relations.equal(a.z(), Quantity.of(400))));
    builder.limit("wall", Relations.equal(a.x(), Quantity.of(300)));
    builder.limit("open", Relations.equal(a.x(), Quantity.of(299)));
    PinFreedom freedom = of("a");
    sameWays(freedom, new PointMm(1, 0), new PointMm(0, -1));
    assertThat(freedom.stops()).containsExactlyInAnyOrder("roof", "wall");
    assertThat(freedom.words()).startsWith("a can move; stopped by limit ");
  }

  /** A bar of 500 mm at (0.6, 0.8): pulled along itself it takes its other end along. */
  @Test
  void aBarPulledAlongItselfTakesItsOtherEndAlong() {
    Pt a = builder.pin("a", 300, 400);
    Pt b = builder.pin("b", 600, 800);
    Pt far = still("far", 900, 1200);
    builder.tie("bar", Relations.distance(a, b, 500));
    Relation aside = Relations.pointToLine(a, o, far, Quantity.of(0));
    builder.limit("left", aside);
    builder.limit("right", Relations.negative(aside));
    PinFreedom freedom = of("a");
    assertThat(freedom.kind()).isEqualTo(PinFreedom.Kind.PLANE);
    assertThat(freedom.holders()).as("it goes anywhere").isEmpty();
    sameWays(freedom, new PointMm(0.6, 0.8), new PointMm(-0.6, -0.8));
    assertThat(freedom.stops()).containsExactlyInAnyOrder("left", "right");
    assertThat(freedom.followers()).containsOnlyKeys("b");
    assertThat(freedom.followers().get("b").distance(freedom.ways().get(0))).isLessThan(NEAR);
  }

  /** Where a free measure lets a bar grow, a push is shared by what the measure counts for. */
  @Test
  void whatAMeasureTakesIsCountedByItsScale() {
    Pt a = builder.pin("a", 300, 400);
    Pt b = builder.pin("b", 300, 900);
    int length = builder.variable(new Problem.Variable("length", 500, 500, 1e-3, false));
    builder.tie(
        "bar",
        Relations.vertical(
            a,
            b,
            Quantity.formula(
                new int[] {length},
                (x, g) -> {
                  if (g != null) {
                    g[0] = 1000;
                  }
                  return 1000 * x[length] - 499_500;
                })));
    builder.tie("level", Relations.fix(a.x(), 300));
    PinFreedom freedom = of("a");
    sameWays(freedom, new PointMm(0, 1), new PointMm(0, -1));
    // 1 mm between the other end and the measure in the least squares: half each
    assertThat(freedom.followers().get("b").distance(freedom.ways().get(0).times(0.5)))
        .isLessThan(NEAR);
  }

  @Test
  void wordsForOneAndForSeveral() {
    PinFreedom two =
        new PinFreedom(
            "p", PinFreedom.Kind.LINE, List.of(), Map.of(), List.of("a", "b"), List.of("x", "y"));
    assertThat(two.words())
        .isEqualTo("p runs along a line; ties a, b keep it there; stopped by limit x, y");
    PinFreedom none =
        new PinFreedom("p", PinFreedom.Kind.HELD, List.of(), Map.of(), List.of(), List.of());
    assertThat(none.words()).isEqualTo("p is held by its ties");
  }

  /**
   * Bars in a random chain: a pin that goes a thousandth of a millimetre along its first way, and
   * all others as said, leaves every bar as long as it was but for the square of that.
   */
  @Test
  void theMotionKeepsEveryTie() {
    SplittableRandom random = new SplittableRandom(9);
    for (int i = 0; i < 50; i++) {
      Problem.Builder chain = Problem.builder();
      int n = 4;
      Pt[] p = new Pt[n];
      double[] at = new double[2 * n];
      for (int k = 0; k < n; k++) {
        at[2 * k] = random.nextDouble(1000);
        at[2 * k + 1] = random.nextDouble(1000);
        p[k] =
            k == 0
                ? still(chain, "p0", at[0], at[1])
                : chain.pin("p" + k, at[2 * k], at[2 * k + 1]);
      }
      for (int k = 1; k < n; k++) {
        double length = Math.hypot(at[2 * k] - at[2 * k - 2], at[2 * k + 1] - at[2 * k - 1]);
        chain.tie("bar" + k, Relations.distance(p[k - 1], p[k], length));
      }
      // all but one way of three is taken
      chain.tie("third", Relations.fix(p[3].z(), at[7]));
      chain.tie("second", Relations.fix(p[2].x(), at[4]));
      Problem problem = chain.build();
      Freedoms freedoms = new Freedoms(problem, problem.start());
      for (int k = 1; k < n; k++) {
        PinFreedom freedom = freedoms.of("p" + k);
        if (freedom.kind() != PinFreedom.Kind.LINE) {
          continue;
        }
        double step = 1e-3;
        double[] x = problem.start();
        PointMm way = freedom.ways().get(0);
        x[2 * k] += step * way.x();
        x[2 * k + 1] += step * way.z();
        freedom
            .followers()
            .forEach(
                (name, speed) -> {
                  int v = problem.indexOf(name + ".x");
                  x[v] += step * speed.x();
                  x[v + 1] += step * speed.z();
                });
        double most =
            freedom.followers().values().stream().mapToDouble(PointMm::length).max().orElse(1);
        for (SolverTie tie : problem.ties()) {
          // what is slower than 0.02 is not said
          assertThat(Math.abs(tie.relations().get(0).evaluate(x, null)))
              .as("pin %d, %s", k, tie.name())
              .isLessThan(0.0203 * step * 2 + 1e-4 * step * Math.max(1, most * most));
        }
      }
    }
  }
}
