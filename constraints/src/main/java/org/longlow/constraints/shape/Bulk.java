package org.longlow.constraints.shape;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.space.SpaceMm;

/**
 * Volume of a body and its moments about the origin of the axes it is told in.
 *
 * @param volume mm³
 * @param first ∫x, ∫y, ∫z, mm⁴
 * @param second ∫x², ∫y², ∫z², ∫xy, ∫yz, ∫zx, mm⁵
 */
public record Bulk(double volume, double[] first, double[] second) {

  /** Gauss-Legendre points and weights on 0 to 1, exact to the fifth power. */
  private static final double[] POINTS = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};

  private static final double[] WEIGHTS = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  private static final int[][] PAIRS = {{0, 0}, {1, 1}, {2, 2}, {0, 1}, {1, 2}, {2, 0}};

  public static final Bulk NONE = new Bulk(0, new double[3], new double[6]);

  /**
   * Returns that of bodies between cuts. Between two cuts the area of a section is of second power
   * in x and its second moments of fourth, so that three points are exact.
   */
  static Bulk of(List<Loft.Strip> strips) {
    double[] sum = new double[10];
    for (Loft.Strip s : strips) {
      double length = s.to().x() - s.from().x();
      for (int k = 0; k < 3; k++) {
        Cut cut = s.from().towards(s.to(), POINTS[k]);
        add(cut, WEIGHTS[k] * length, sum);
      }
    }
    return new Bulk(
        sum[0],
        new double[] {sum[1], sum[2], sum[3]},
        new double[] {sum[4], sum[5], sum[6], sum[7], sum[8], sum[9]});
  }

  /** Adds a section times a weight: area and moments of a polygon by its corners (Green). */
  private static void add(Cut cut, double weight, double[] sum) {
    List<double[]> ring = cut.ring();
    double area = 0;
    double mz = 0;
    double my = 0;
    double mzz = 0;
    double myy = 0;
    double mzy = 0;
    for (int i = 0; i < ring.size(); i++) {
      double[] p = ring.get(i);
      double[] q = ring.get((i + 1) % ring.size());
      // up the left side, down the right: turning to the right, so the sign is turned
      double cross = q[0] * p[1] - p[0] * q[1];
      area += cross / 2;
      mz += cross * (p[0] + q[0]) / 6;
      my += cross * (p[1] + q[1]) / 6;
      mzz += cross * (p[0] * p[0] + p[0] * q[0] + q[0] * q[0]) / 12;
      myy += cross * (p[1] * p[1] + p[1] * q[1] + q[1] * q[1]) / 12;
      mzy += cross * (p[0] * q[1] + 2 * p[0] * p[1] + 2 * q[0] * q[1] + q[0] * p[1]) / 24;
    }
    double x = cut.x();
    double[] here = {area, x * area, my, mz, x * x * area, myy, mzz, x * my, mzy, x * mz};
    for (int k = 0; k < here.length; k++) {
      sum[k] += weight * here[k];
    }
  }

  /**
   * Returns that of a thin rod along a line.
   *
   * @param sectionMm2 of what fills it
   */
  static Bulk along(List<SpaceMm> line, double sectionMm2) {
    double[] sum = new double[10];
    for (int i = 1; i < line.size(); i++) {
      SpaceMm from = line.get(i - 1);
      SpaceMm way = line.get(i).minus(from);
      for (int k = 0; k < 3; k++) {
        SpaceMm p = from.plus(way.times(POINTS[k]));
        double[] at = {p.x(), p.y(), p.z()};
        double weight = WEIGHTS[k] * way.length() * sectionMm2;
        sum[0] += weight;
        for (int j = 0; j < 3; j++) {
          sum[1 + j] += weight * at[j];
        }
        for (int j = 0; j < PAIRS.length; j++) {
          sum[4 + j] += weight * at[PAIRS[j][0]] * at[PAIRS[j][1]];
        }
      }
    }
    return new Bulk(sum[0], Arrays.copyOfRange(sum, 1, 4), Arrays.copyOfRange(sum, 4, 10));
  }

  /** Returns that of an outline over an interval. */
  static Bulk of(Geometry outline, Interval across) {
    double[] sum = new double[6];
    for (int i = 0; i < outline.getNumGeometries(); i++) {
      if (outline.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        add(polygon.getExteriorRing(), 1, sum);
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          add(polygon.getInteriorRingN(hole), -1, sum);
        }
      }
    }
    double l = across.length();
    double y = (Math.pow(across.to(), 2) - Math.pow(across.from(), 2)) / 2;
    double yy = (Math.pow(across.to(), 3) - Math.pow(across.from(), 3)) / 3;
    return new Bulk(
        sum[0] * l,
        new double[] {sum[1] * l, sum[0] * y, sum[2] * l},
        new double[] {sum[3] * l, sum[0] * yy, sum[4] * l, sum[1] * y, sum[2] * y, sum[5] * l});
  }

  /** Adds area, ∫x, ∫z, ∫x², ∫z² and ∫xz of a ring, whichever way it turns. */
  private static void add(LineString ring, int sign, double[] sum) {
    double[] own = new double[6];
    for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
      Coordinate p = ring.getCoordinateN(i);
      Coordinate q = ring.getCoordinateN(i + 1);
      double cross = p.x * q.y - q.x * p.y;
      own[0] += cross / 2;
      own[1] += cross * (p.x + q.x) / 6;
      own[2] += cross * (p.y + q.y) / 6;
      own[3] += cross * (p.x * p.x + p.x * q.x + q.x * q.x) / 12;
      own[4] += cross * (p.y * p.y + p.y * q.y + q.y * q.y) / 12;
      own[5] += cross * (p.x * q.y + 2 * p.x * p.y + 2 * q.x * q.y + q.x * p.y) / 24;
    }
    double way = own[0] < 0 ? -sign : sign;
    for (int k = 0; k < 6; k++) {
      sum[k] += way * own[k];
    }
  }

  /** Returns that of a sheet over a triangle, thin against its size. */
  static Bulk of(double[] a, double[] b, double[] c, double areaMm2, double thicknessMm) {
    double volume = areaMm2 * thicknessMm;
    double[] first = new double[3];
    double[] sums = new double[3];
    for (int k = 0; k < 3; k++) {
      sums[k] = a[k] + b[k] + c[k];
      first[k] = volume * sums[k] / 3;
    }
    double[] second = new double[6];
    for (int k = 0; k < 6; k++) {
      int i = PAIRS[k][0];
      int j = PAIRS[k][1];
      second[k] = volume / 12 * (a[i] * a[j] + b[i] * b[j] + c[i] * c[j] + sums[i] * sums[j]);
    }
    return new Bulk(volume, first, second);
  }

  Bulk plus(Bulk other) {
    double[] f = first.clone();
    double[] s = second.clone();
    for (int k = 0; k < 3; k++) {
      f[k] += other.first[k];
    }
    for (int k = 0; k < 6; k++) {
      s[k] += other.second[k];
    }
    return new Bulk(volume + other.volume, f, s);
  }

  /** Returns that of the image on the other side of the middle plane. */
  Bulk mirrored() {
    return new Bulk(
        volume,
        new double[] {first[0], -first[1], first[2]},
        new double[] {second[0], second[1], second[2], -second[3], -second[4], second[5]});
  }

  /** Returns that of the same body moved in the elevation. */
  Bulk moved(RigidMotion motion) {
    double c = Math.cos(motion.turnRad());
    double s = Math.sin(motion.turnRad());
    double tx = motion.shift().x();
    double tz = motion.shift().z();
    double x = c * first[0] - s * first[2];
    double z = s * first[0] + c * first[2];
    double xx = c * c * second[0] - 2 * c * s * second[5] + s * s * second[2];
    double zz = s * s * second[0] + 2 * c * s * second[5] + c * c * second[2];
    double xz = c * s * (second[0] - second[2]) + (c * c - s * s) * second[5];
    double xy = c * second[3] - s * second[4];
    double yz = s * second[3] + c * second[4];
    return new Bulk(
        volume,
        new double[] {x + tx * volume, first[1], z + tz * volume},
        new double[] {
          xx + 2 * tx * x + tx * tx * volume,
          second[1],
          zz + 2 * tz * z + tz * tz * volume,
          xy + tx * first[1],
          yz + tz * first[1],
          xz + tx * z + tz * x + tx * tz * volume
        });
  }

  /**
   * Returns the mean squares of its distances from its own centre: of x, y and z, and of the
   * products xy, yz and zx, mm².
   */
  public double[] meanSquares() {
    double[] mean = new double[6];
    for (int k = 0; volume > 0 && k < 6; k++) {
      int i = PAIRS[k][0];
      int j = PAIRS[k][1];
      mean[k] = second[k] / volume - first[i] / volume * (first[j] / volume);
    }
    return mean;
  }
}
