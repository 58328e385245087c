package org.longlow.constraints.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/** How far convex pieces reach each way, against points of their surface; moved and mirrored. */
class PiecesTest {

  private static final PointMm A = new PointMm(20, -10);
  private static final PointMm B = new PointMm(140, 80);

  /** A piece and points of its surface, dense enough to reach within a thousandth of its size. */
  private record Known(Piece piece, List<double[]> points) {}

  private static List<Known> all() {
    return List.of(
        block(),
        hull(),
        rod(true, true),
        rod(false, false),
        rod(true, false),
        strut(true, false),
        strut(false, true),
        ball(),
        cylinder());
  }

  private static Known block() {
    double[] ring = {0, 0, 90, -10, 110, 60, 20, 80};
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < ring.length; i += 2) {
      points.add(new double[] {ring[i], -30, ring[i + 1]});
      points.add(new double[] {ring[i], 55, ring[i + 1]});
    }
    return new Known(new Block(ring, -30, 55), points);
  }

  private static Known hull() {
    List<double[]> points =
        List.of(
            new double[] {0, 0, 0},
            new double[] {100, 20, -5},
            new double[] {40, -70, 30},
            new double[] {30, 40, 90},
            new double[] {35, 5, 20});
    return new Known(Hull.of(points), points);
  }

  private static Known rod(boolean roundFrom, boolean roundTo) {
    List<double[]> points = new ArrayList<>();
    PointMm along = B.minus(A).times(1 / B.distance(A));
    disc(points, A, along, 25);
    disc(points, B, along, 25);
    if (roundFrom) {
      ball(points, A);
    }
    if (roundTo) {
      ball(points, B);
    }
    return new Known(new Rod(A, B, 15, 25, roundFrom, roundTo), points);
  }

  /** A bar along (2, 3, 6), 7 long times 20; square to that are (3, -2, 0) and (12, 18, -13). */
  private static Known strut(boolean roundFrom, boolean roundTo) {
    List<double[]> points = new ArrayList<>();
    for (double end : new double[] {0, 20}) {
      boolean round = end == 0 ? roundFrom : roundTo;
      for (int i = round ? -90 : 0; i <= (round ? 90 : 0); i++) {
        double up = Math.PI * i / 180.0;
        for (int k = 0; k < 360; k++) {
          double a = 25 * Math.cos(up) * Math.cos(Math.PI * k / 180) / Math.sqrt(13);
          double b = 25 * Math.cos(up) * Math.sin(Math.PI * k / 180) / Math.sqrt(637);
          double c = end + 25 * Math.sin(up) / 7;
          points.add(
              new double[] {
                20 + 2 * c + 3 * a + 12 * b, 5 + 3 * c - 2 * a + 18 * b, 7 + 6 * c - 13 * b
              });
        }
      }
    }
    return new Known(
        new Strut(new SpaceMm(20, 5, 7), new SpaceMm(60, 65, 127), 25, roundFrom, roundTo), points);
  }

  private static Known ball() {
    List<double[]> points = new ArrayList<>();
    ball(points, A);
    return new Known(new Rod(A, A, 15, 25, false, false), points);
  }

  private static Known cylinder() {
    List<double[]> points = new ArrayList<>();
    for (int k = 0; k < 720; k++) {
      double a = Math.PI * k / 360;
      points.add(new double[] {A.x() + 40 * Math.cos(a), -12, A.z() + 40 * Math.sin(a)});
      points.add(new double[] {A.x() + 40 * Math.cos(a), 33, A.z() + 40 * Math.sin(a)});
    }
    return new Known(Rings.cylinder(A, 40, -12, 33), points);
  }

  /** A circle square to a line in the elevation, about a point of the plane y = 15. */
  private static void disc(List<double[]> into, PointMm at, PointMm along, double r) {
    for (int k = 0; k < 720; k++) {
      double a = Math.PI * k / 360;
      PointMm out = along.left().times(r * Math.cos(a));
      into.add(new double[] {at.x() + out.x(), 15 + r * Math.sin(a), at.z() + out.z()});
    }
  }

  private static void ball(List<double[]> into, PointMm at) {
    for (int i = 0; i <= 90; i++) {
      double up = Math.PI * (i / 90.0 - 0.5);
      for (int k = 0; k < 180; k++) {
        double a = Math.PI * k / 90;
        into.add(
            new double[] {
              at.x() + 25 * Math.cos(up) * Math.cos(a),
              15 + 25 * Math.cos(up) * Math.sin(a),
              at.z() + 25 * Math.sin(up)
            });
      }
    }
  }

  private static double dot(double[] d, double[] p) {
    return d[0] * p[0] + d[1] * p[1] + d[2] * p[2];
  }

  private static double reach(Convex body, double[] d) {
    double[] at = new double[3];
    body.farthest(d, at);
    return dot(d, at);
  }

  private static double reach(List<double[]> points, double[] d) {
    return points.stream().mapToDouble(p -> dot(d, p)).max().orElseThrow();
  }

  private interface Move {
    double[] of(double[] p);
  }

  private static void same(String what, Piece piece, List<double[]> points, Move move) {
    Random random = new Random(7);
    List<double[]> moved = points.stream().map(move::of).toList();
    for (int i = 0; i < 60; i++) {
      double[] d = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
      if (i < 6) {
        d = new double[3];
        d[i / 2] = i % 2 == 0 ? 1 : -1;
      }
      double size = Math.sqrt(dot(d, d));
      assertThat(reach(piece, d) / size)
          .as(what + " " + piece.getClass().getSimpleName() + " " + i)
          .isCloseTo(reach(moved, d) / size, within(0.02));
    }
  }

  @Test
  void eachReachesAsFarAsItsPoints() {
    for (Known known : all()) {
      same("", known.piece(), known.points(), p -> p);
    }
  }

  @Test
  void movedShiftedAndMirroredItDoesSoThere() {
    RigidMotion motion = new RigidMotion(0.7, new PointMm(12, -30));
    for (Known known : all()) {
      same(
          "moved",
          known.piece().moved(motion),
          known.points(),
          p -> {
            PointMm q = motion.apply(new PointMm(p[0], p[2]));
            return new double[] {q.x(), p[1], q.z()};
          });
      same(
          "across",
          known.piece().across(17),
          known.points(),
          p -> new double[] {p[0], p[1] + 17, p[2]});
      same(
          "mirrored",
          known.piece().mirrored(),
          known.points(),
          p -> new double[] {p[0], -p[1], p[2]});
    }
  }

  @Test
  void boxesAreThoseOfTheirPointsAndApartByTheirNearestCorners() {
    for (Known known : all()) {
      Piece.Box box = known.piece().box();
      for (int k = 0; k < 3; k++) {
        int axis = k;
        double low = known.points().stream().mapToDouble(p -> p[axis]).min().orElseThrow();
        double high = known.points().stream().mapToDouble(p -> p[axis]).max().orElseThrow();
        assertThat(box.from()[k]).isCloseTo(low, within(0.02));
        assertThat(box.to()[k]).isCloseTo(high, within(0.02));
        assertThat(box.middle(k)).isCloseTo((low + high) / 2, within(0.02));
      }
      assertThat(known.piece().box()).isSameAs(box);
    }
    Piece.Box one = new Block(new double[] {0, 0, 10, 0, 10, 10, 0, 10}, 0, 10).box();
    Piece.Box other = new Block(new double[] {13, 14, 20, 14, 20, 20, 13, 20}, 22, 30).box();
    assertThat(one.apartMm(other)).isCloseTo(13, within(1e-12)); // 3, 4 and 12
    assertThat(other.apartMm(one)).isCloseTo(13, within(1e-12));
    assertThat(one.apartMm(one)).isZero();
  }

  @Test
  void whatHasTheSameNumbersIsEqual() {
    for (Known known : all()) {
      Piece piece = known.piece();
      Piece copy = piece.across(17).across(-17);
      assertThat(copy).isEqualTo(piece).hasSameHashCodeAs(piece);
      assertThat(piece.across(1)).isNotEqualTo(piece);
      assertThat(piece.equals(null)).isFalse();
      assertThat(piece.across(1e-7).grained(1e-3)).isEqualTo(piece.grained(1e-3));
      same("grained", piece.grained(1e-3), known.points(), p -> p);
    }
    assertThat((Object) block().piece()).isNotEqualTo(hull().piece());
    // corners of a hull in another order, and a nought with a sign, are the same hull
    List<double[]> points = new ArrayList<>(hull().points());
    Collections.reverse(points);
    points.set(4, new double[] {-0.0, 0.0, -0.0});
    assertThat(Hull.of(points)).isEqualTo(hull().piece()).hasSameHashCodeAs(hull().piece());
  }

  @Test
  void aRodTellsItsLine() {
    Rod rod = new Rod(A, B, 15, 25, true, false);
    assertThat(rod.from()).isEqualTo(A);
    assertThat(rod.to()).isEqualTo(B);
    assertThat(rod.yMm()).isEqualTo(15);
    assertThat(rod.radiusMm()).isEqualTo(25);
    // square along itself an end is flat
    double[] at = new double[3];
    PointMm along = B.minus(A).times(1 / B.distance(A));
    rod.farthest(new double[] {along.x(), 0, along.z()}, at);
    assertThat(at).containsExactly(new double[] {B.x(), 15, B.z()}, within(1e-9));
    rod.farthest(new double[] {-along.x(), 0, -along.z()}, at);
    assertThat(new PointMm(at[0], at[2]).distance(A.minus(along.times(25)))).isLessThan(1e-9);
  }

  @Test
  void aCylinderSquareOnReachesToItsMiddleLine() {
    double[] at = new double[3];
    Rings.cylinder(A, 40, -12, 33).farthest(new double[] {0, 1, 0}, at);
    assertThat(at).containsExactly(new double[] {A.x(), 33, A.z()}, within(1e-9));
  }
}
