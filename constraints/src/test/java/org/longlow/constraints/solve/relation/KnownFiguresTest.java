package org.longlow.constraints.solve.relation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolveStatus;

/** Lengths, angles and tangencies whose figures are known from outside. */
class KnownFiguresTest {
  /** Arithmetic on lengths around a metre: a few thousand ulps. */
  private static final double ARITHMETIC_MM = 1e-9;

  /** What the solver promises for a tie. */
  private static final double SOLVER_MM = 1e-6;

  private static double value(org.longlow.constraints.solve.problem.Relation relation) {
    return relation.evaluate(new double[0], null);
  }

  // Pitch-polygon length in links and centre distance for even links: worked with 30 digits from
  // the formulas of
  // machine-element texts (ISO 606 form) for three motorcycle drives. The links have 12 decimals,
  // the centres 9.
  @ParameterizedTest
  @CsvSource({
    "600, 15.875, 15, 42, 104.579650054207, 106, 611.346231417",
    "560, 15.875, 16, 39, 98.431378705351, 100, 572.517025725",
    "520, 12.70, 14, 44, 111.447172629551, 112, 523.534403416"
  })
  void chainLengthAndCentreMatchWorkedFigures(
      double centre, double pitch, int z1, int z2, double links, double even, double evenCentre) {
    double miss =
        value(Paths.chain(Pt.at(0, 0), z1, Pt.at(centre, 0), z2, pitch, Quantity.of(links)));
    assertThat(miss).isCloseTo(0, offset(1e-10 * pitch * links));

    Problem.Builder b = Problem.builder();
    Pt axle = b.pin("axle", -centre, 0);
    b.tie("level", Relations.fix(axle.z(), 0));
    b.tie("chain", Paths.chain(Pt.at(0, 0), z1, axle, z2, pitch, Quantity.of(even)));
    SolveReport report = Solver.solve(b.build());
    assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(-report.x()[0]).isCloseTo(evenCentre, offset(SOLVER_MM));
  }

  @Test
  void beltsMatchClosedForms() {
    // Equal wheels: two straights and one full circle.
    assertThat(
            value(
                Paths.openBelt(
                    Pt.at(0, 0),
                    Quantity.of(50),
                    Pt.at(300, 400),
                    Quantity.of(50),
                    Quantity.of(0))))
        .isCloseTo(2 * 500 + 2 * Math.PI * 50, offset(ARITHMETIC_MM));
    // Wheels whose common tangent rises at 30 degrees: r2 - r1 = C / 2.
    double open =
        2 * 200 * Math.cos(Math.PI / 6) + 20 * (Math.PI * 2 / 3) + 120 * (Math.PI * 4 / 3);
    assertThat(
            value(
                Paths.openBelt(
                    Pt.at(0, 0), Quantity.of(20), Pt.at(0, 200), Quantity.of(120), Quantity.of(0))))
        .isCloseTo(open, offset(ARITHMETIC_MM));
  }

  @Test
  void generalBeltAgreesWithTheTwoWheelForms() {
    Pt a = Pt.at(-31, 12);
    Pt b = Pt.at(210, 77);
    Quantity ra = Quantity.of(24);
    Quantity rb = Quantity.of(61);
    Quantity none = Quantity.of(0);
    assertThat(
            value(
                Paths.belt(
                    List.of(
                        new Paths.Wheel(a, ra, Circles.Side.LEFT),
                        new Paths.Wheel(b, rb, Circles.Side.LEFT)),
                    none)))
        .isCloseTo(value(Paths.openBelt(a, ra, b, rb, none)), offset(ARITHMETIC_MM));
    // 2 C cos b + (r1 + r2)(pi + 2 b), sin b = (r1 + r2) / C, of any machine-element text.
    double apart = Math.hypot(241, 65);
    double lean = Math.asin((24 + 61) / apart);
    double crossed = 2 * apart * Math.cos(lean) + (24 + 61) * (Math.PI + 2 * lean);
    assertThat(
            value(
                Paths.belt(
                    List.of(
                        new Paths.Wheel(a, ra, Circles.Side.LEFT),
                        new Paths.Wheel(b, rb, Circles.Side.RIGHT)),
                    none)))
        .isCloseTo(crossed, offset(ARITHMETIC_MM));
  }

  @Test
  void beltRoundThreeEqualWheelsIsTriangleAndCircle() {
    // Wheels at the corners of a 3-4-5 triangle, anticlockwise.
    double length =
        value(
            Paths.belt(
                List.of(
                    new Paths.Wheel(Pt.at(0, 0), Quantity.of(10), Circles.Side.LEFT),
                    new Paths.Wheel(Pt.at(300, 0), Quantity.of(10), Circles.Side.LEFT),
                    new Paths.Wheel(Pt.at(0, 400), Quantity.of(10), Circles.Side.LEFT)),
                Quantity.of(0)));
    assertThat(length).isCloseTo(1200 + 2 * Math.PI * 10, offset(ARITHMETIC_MM));
  }

  @Test
  void tubeWithOneSquareBendLosesTheCorner() {
    // Legs 300 and 200, bend radius 50: 500 - 2 * 50 + 50 * pi / 2.
    double length =
        value(
            Paths.tubeLength(
                List.of(Pt.at(0, 0), Pt.at(300, 0), Pt.at(300, 200)),
                Quantity.of(50),
                Quantity.of(0)));
    assertThat(length).isCloseTo(500 - 100 + 25 * Math.PI, offset(ARITHMETIC_MM));
  }

  @Test
  void circleTouchingThreeCirclesHasDescartesRadius() {
    // Descartes 1643: mutually tangent circles of radius 1, 2, 3 leave room for one of radius 6 /
    // 23.
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("centre", 1.0, 0.9);
    int r = b.variable("radius", 0.5);
    Quantity radius = Quantity.variable(r);
    b.tie("one", Circles.tangentOutside(Pt.at(0, 0), Quantity.of(1), p, radius));
    b.tie("two", Circles.tangentOutside(Pt.at(3, 0), Quantity.of(2), p, radius));
    b.tie("three", Circles.tangentOutside(Pt.at(0, 4), Quantity.of(3), p, radius));
    SolveReport report = Solver.solve(b.build());
    assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(report.x()[r]).isCloseTo(6.0 / 23, offset(1e-8));
  }

  @Test
  void circleAroundThreeCirclesHasDescartesRadius() {
    // The other root of Descartes: the circle of radius 6 round circles of radius 1, 2, 3.
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("centre", 1.2, 1.5);
    int r = b.variable("radius", 7);
    Quantity radius = Quantity.variable(r);
    b.tie("one", Circles.tangentInside(p, radius, Pt.at(0, 0), Quantity.of(1)));
    b.tie("two", Circles.tangentInside(p, radius, Pt.at(3, 0), Quantity.of(2)));
    b.tie("three", Circles.tangentInside(p, radius, Pt.at(0, 4), Quantity.of(3)));
    SolveReport report = Solver.solve(b.build());
    assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(report.x()[r]).isCloseTo(6, offset(SOLVER_MM));
  }

  @Test
  void inscribedCircleOfThreeFourFiveTriangleHasRadiusOne() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("centre", 1.5, 1.2);
    int r = b.variable("radius", 0.3);
    Quantity radius = Quantity.variable(r);
    Pt o = Pt.at(0, 0);
    Pt e = Pt.at(3, 0);
    Pt n = Pt.at(0, 4);
    b.tie("bottom", Circles.tangentLine(p, radius, o, e, Circles.Side.LEFT));
    b.tie("slope", Circles.tangentLine(p, radius, e, n, Circles.Side.LEFT));
    b.tie("back", Circles.tangentLine(p, radius, n, o, Circles.Side.LEFT));
    SolveReport report = Solver.solve(b.build());
    assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(report.x()).containsExactly(new double[] {1, 1, 1}, offset(SOLVER_MM));
  }

  @Test
  void anglesHaveTheStatedSigns() {
    Pt o = Pt.at(0, 0);
    double arc = Relations.ARC_RADIUS_MM;
    assertThat(value(Relations.angleToHorizontal(o, Pt.at(1, 1), Quantity.of(0))))
        .isCloseTo(arc * Math.PI / 4, offset(ARITHMETIC_MM));
    // Leaning back as it rises, like a steering axis with rake 30 degrees.
    assertThat(
            value(
                Relations.angleToVertical(
                    o,
                    Pt.at(-Math.sin(Math.PI / 6), Math.cos(Math.PI / 6)),
                    Quantity.of(Math.PI / 6))))
        .isCloseTo(0, offset(ARITHMETIC_MM));
    assertThat(
            value(Relations.angleBetween(o, Pt.at(1, 0), o, Pt.at(0, 5), Quantity.of(Math.PI / 2))))
        .isCloseTo(0, offset(ARITHMETIC_MM));
    // One turn more is the same angle.
    assertThat(value(Relations.angleToHorizontal(o, Pt.at(1, 0), Quantity.of(2 * Math.PI))))
        .isCloseTo(0, offset(ARITHMETIC_MM));
    assertThat(value(Relations.pointToLine(Pt.at(5, 3), o, Pt.at(10, 0), Quantity.of(0))))
        .isCloseTo(3, offset(ARITHMETIC_MM));
  }

  @Test
  void outlineRoomIsSignedDistanceForHollowShapes() {
    // An L: 10 wide, 10 high, arms 4 thick, clockwise on purpose.
    List<Pt> ring =
        List.of(Pt.at(0, 0), Pt.at(0, 10), Pt.at(4, 10), Pt.at(4, 4), Pt.at(10, 4), Pt.at(10, 0));
    assertThat(value(OutlineRelations.inside(Pt.at(2, 8), ring)))
        .isCloseTo(2, offset(ARITHMETIC_MM));
    assertThat(value(OutlineRelations.inside(Pt.at(7, 7), ring)))
        .isCloseTo(-3, offset(ARITHMETIC_MM));
    assertThat(value(OutlineRelations.inside(Pt.at(13, -4), ring)))
        .isCloseTo(-5, offset(ARITHMETIC_MM));
    assertThat(value(OutlineRelations.inside(Pt.at(3, 3), ring)))
        .isCloseTo(Math.sqrt(2), offset(ARITHMETIC_MM));
  }

  @Test
  void arcEndsGiveRoomAlongTheArc() {
    Pt c = Pt.at(0, 0);
    // Quarter arc from 0 to 90 degrees, radius 100.
    Quantity start = Quantity.of(0);
    Quantity sweep = Quantity.of(Math.PI / 2);
    double a = Math.toRadians(30);
    assertThat(
            value(
                Circles.withinArc(
                    Pt.at(100 * Math.cos(a), 100 * Math.sin(a)), c, start, sweep, 100)))
        .isCloseTo(100 * a, offset(ARITHMETIC_MM));
    assertThat(value(Circles.withinArc(Pt.at(0, -100), c, start, sweep, 100)))
        .isCloseTo(-50 * Math.PI, offset(ARITHMETIC_MM));
  }

  /** As a length of nothing two pins are one, which is two rows; else a length is one row. */
  @Test
  void aLengthOfNothingIsTwoRows() {
    Pt a = Pt.variables(0, 1);
    Pt b = Pt.variables(2, 3);
    Pt still = Pt.at(12, -7);
    for (Pt other : List.of(b, still)) {
      Relation nothing = Relations.distance(a, other, 0);
      assertThat(nothing.parts()).hasSize(2);
      double[] x = {3, 4, 12, -7};
      List<Double> off = nothing.parts().stream().map(r -> Math.abs(r.evaluate(x, null))).toList();
      assertThat(off).containsExactly(9.0, 11.0);
      Relation some = Relations.distance(a, other, 5);
      assertThat(some.parts()).containsExactly(some);
      assertThat(some.evaluate(x, null)).isCloseTo(Math.hypot(9, 11) - 5, offset(1e-12));
    }
  }
}
