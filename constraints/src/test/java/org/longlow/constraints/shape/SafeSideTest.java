package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.space.Hull;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Separation;
import org.longlow.rider.geom.PointMm;

/**
 * Pieces of curved bodies hold all of the body and hardly more, by points of it from closed forms.
 */
class SafeSideTest {

  /** A wedge 400 long and 100 high, 120 to 20 to each side. */
  private static final double LONG = 400;

  private static final double HIGH = 100;

  private static double out(double x) {
    return 120 - 100 * x / LONG;
  }

  private static Breadth wedge(Profile profile) {
    return new Breadth(Made.stations(false, 0, 120, LONG, 20), profile);
  }

  private static Outline box() {
    return Made.outline(0, 0, LONG, 0, LONG, HIGH, 0, HIGH);
  }

  /** Points of the side of a cut: where corners of a radius are round, height and out. */
  private static List<double[]> rounded(double half, double radius) {
    List<double[]> points = new ArrayList<>();
    for (int deg = 0; deg <= 90; deg += 3) {
      double a = Math.toRadians(deg);
      double up = radius * (1 - Math.cos(a));
      points.add(new double[] {up, half - radius * (1 - Math.sin(a))});
      points.add(new double[] {HIGH - up, half - radius * (1 - Math.sin(a))});
    }
    return points;
  }

  private static double offMm(List<Piece> pieces, double x, double y, double z) {
    Hull point = Hull.of(List.of(new double[] {x, y, z}));
    Separation separation = Separation.fine();
    double least = 1e3;
    for (Piece piece : pieces) {
      separation.begin(1, 1, 1);
      least = Math.min(least, separation.mm(piece, point, 1e3));
    }
    return least;
  }

  private static List<Piece> pieces(PartShape shape) {
    return shape.prisms().stream().flatMap(p -> p.convex().stream()).toList();
  }

  private interface Side {
    List<double[]> at(double half);
  }

  private static void holdsAll(Profile profile, Side side) {
    List<Piece> pieces = pieces(Made.solid(box(), Made.spread(120, 120, false), wedge(profile)));
    for (double x = 5; x < LONG; x += 13) {
      for (double[] p : side.at(out(x))) {
        for (int way = -1; way <= 1; way += 2) {
          assertThat(offMm(pieces, x, way * p[1], p[0]))
              .as("x %s, %s up, %s out", x, p[0], p[1])
              .isLessThan(1e-4);
          // as far out again as curves are kept within, and the hull of a twisted side
          assertThat(offMm(pieces, x, way * (p[1] + 1.2), HIGH / 2 + 1.03 * (p[0] - HIGH / 2)))
              .as("beyond x %s, %s up, %s out", x, p[0], p[1])
              .isGreaterThan(0.05);
        }
      }
    }
  }

  @Test
  void roundAsFarAsHeightOrBreadthAllow() {
    holdsAll(Made.profile(Profile.Shape.ROUND), half -> rounded(half, Math.min(HIGH / 2, half)));
  }

  @Test
  void flatWithCorners() {
    holdsAll(Made.corner(30), half -> rounded(half, Math.min(30, half)));
  }

  @Test
  void oval() {
    holdsAll(
        Made.profile(Profile.Shape.OVAL),
        half -> {
          List<double[]> points = new ArrayList<>();
          for (int deg = -88; deg <= 88; deg += 4) {
            double a = Math.toRadians(deg);
            points.add(new double[] {HIGH / 2 * (1 + Math.sin(a)), half * Math.cos(a)});
          }
          return points;
        });
  }

  /** Corners are as round at each place as height and breadth allow there, not as at the cuts. */
  @Test
  void cornersOfAWedgeTakeAwayWhatTheyTakeAtEachPlace() {
    PartShape wedge =
        Made.solid(box(), Made.spread(120, 120, false), wedge(Made.profile(Profile.Shape.ROUND)));
    double volume = 0;
    int n = 4000;
    for (int i = 0; i < n; i++) {
      double half = out(LONG * (i + 0.5) / n);
      double r = Math.min(HIGH / 2, half);
      volume += LONG / n * (2 * half * HIGH - (4 - Math.PI) * r * r);
    }
    assertThat(wedge.bulk().volume()).isCloseTo(volume, within(4e-4 * volume));
  }

  /** Of sheet the inner face counts as well: what lies inside is not farther off than is true. */
  @Test
  void sheetOverARoundBodyHoldsItsThickness() {
    double radius = 60;
    double t = 3;
    List<Piece> pieces =
        pieces(
            Made.shell(
                Made.outline(0, -radius, 300, -radius, 300, radius, 0, radius),
                Made.spread(radius, radius, false),
                new Breadth(List.of(), Made.profile(Profile.Shape.OVAL)),
                t,
                false));
    for (int deg = 0; deg < 360; deg += 3) {
      double y = Math.cos(Math.toRadians(deg));
      double z = Math.sin(Math.toRadians(deg));
      for (double r : new double[] {radius, radius - t / 2, radius - t}) {
        assertThat(offMm(pieces, 150, r * y, r * z)).as("%s at %s°", r, deg).isLessThan(1e-4);
      }
      for (double r : new double[] {radius + 0.5, radius - t - 0.8}) {
        assertThat(offMm(pieces, 150, r * y, r * z)).as("%s at %s°", r, deg).isPositive();
      }
    }
  }

  /** The area of a sheet is that of the curve, not of what goes round it. */
  @Test
  void sheetOverARoundBodyWeighsWhatItsAreaDoes() {
    PartShape tube =
        Made.shell(
            Made.outline(0, -60, 300, -60, 300, 60, 0, 60),
            Made.spread(60, 60, false),
            new Breadth(List.of(), Made.profile(Profile.Shape.OVAL)),
            2,
            false);
    double area = 2 * Math.PI * 60 * 300 + 2 * Math.PI * 60 * 60;
    assertThat(tube.bulk().volume()).isCloseTo(2 * area, within(2 * area * 1e-3));
  }

  private static Vertex vertex(double x, double z, boolean smooth, double half) {
    return new Vertex(
        Made.mm(x),
        Made.mm(z),
        null,
        smooth,
        Optional.of(new HalfBreadths(Optional.of(Made.mm(half)), Optional.<Formula>empty())));
  }

  /** Breadth at smooth points stays between that of its neighbours, as on an apron 290 broad. */
  @Test
  void smoothPointsDoNotOvershootInBreadth() {
    Outline apron =
        new Outline.Drawn(
            List.of(
                vertex(0, 0, false, 290),
                vertex(0, 235, true, 290),
                vertex(-30, 370, true, 290),
                vertex(-58, 500, false, 235)),
            false);
    PartShape strip = Made.shell(apron, Made.spread(290, 290, false), Breadth.EVEN, 3, true);
    assertThat(strip.leftMm()).isEqualTo(290);
    assertThat(strip.rightMm()).isEqualTo(290);
  }

  /** Through 100, 150, 160 and 100 with slopes by the harmonic mean, each by hand. */
  @Test
  void breadthBetweenSmoothPointsIsTheCubicOfItsSlopes() {
    Span span =
        new Span(new PointMm(0, 0), new PointMm(100, 0), new PointMm(200, 0), new PointMm(300, 0));
    // equal steps of the parameter: slopes 50, 10 and -60 a step
    double slope = 2 * 50 * 10 / 60.0;
    double half = (150 + 160) / 2.0 + (slope - 0) / 8;
    assertThat(span.along(0.5, 100, 150, 160, 100)).isCloseTo(half, within(1e-9));
    assertThat(span.along(0, 100, 150, 160, 100)).isEqualTo(150);
    assertThat(span.along(1, 100, 150, 160, 100)).isCloseTo(160, within(1e-9));
    Span corner = new Span(null, new PointMm(100, 0), new PointMm(200, 0), null);
    assertThat(corner.along(0.25, Double.NaN, 150, 160, Double.NaN)).isCloseTo(152.5, within(1e-9));
  }
}
