package org.longlow.constraints.space;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.longlow.constraints.machine.linkage.RigidMotion;

/**
 * A convex body that lies still: a few numbers say all of it, and two that have the same are equal.
 * Immutable.
 */
public abstract class Piece implements Convex {

  /** What it is, mm; in what order is its own matter. */
  final double[] numbers;

  private volatile Box box;

  /**
   * The box round a piece.
   *
   * @param from least x, y and z, mm
   * @param to greatest
   */
  public record Box(double[] from, double[] to) {

    /** Returns the distance to another, mm. */
    public double apartMm(Box other) {
      double square = 0;
      for (int k = 0; k < 3; k++) {
        double gap = Math.max(from[k] - other.to[k], other.from[k] - to[k]);
        square += gap > 0 ? gap * gap : 0;
      }
      return Math.sqrt(square);
    }

    public double middle(int k) {
      return (from[k] + to[k]) / 2;
    }
  }

  Piece(double... numbers) {
    this.numbers = numbers;
  }

  abstract Piece of(double[] numbers);

  /** Returns the box round it, worked out once. */
  public Box box() {
    Box known = box;
    if (known == null) {
      double[][] ends = new double[2][3];
      double[] way = new double[3];
      double[] at = new double[3];
      for (int k = 0; k < 3; k++) {
        for (int side = 0; side < 2; side++) {
          way[k] = 2 * side - 1;
          farthest(way, at);
          ends[side][k] = at[k];
        }
        way[k] = 0;
      }
      known = new Box(ends[0], ends[1]);
      box = known;
    }
    return known;
  }

  /**
   * Returns rings of corners whose hull holds it: its own corners, or, of what is round, corners
   * about it that stand out by no more than 8 % of its radius. Its edges go round each ring and
   * from each corner to that of the next ring; where rings are single points they may go between
   * any two.
   */
  public abstract List<double[][]> rings();

  /** A ring of a round bar: at which end, how far beyond it along the bar, and its radius, mm. */
  interface BarRing {
    double[][] at(boolean atTo, double on, double radiusMm);
  }

  /** Returns the rings of a round bar; a round end is held by the eight-sided outline about it. */
  static List<double[][]> ofBar(double radiusMm, boolean roundFrom, boolean roundTo, BarRing ring) {
    double narrow = radiusMm * (Math.sqrt(2) - 1);
    List<double[][]> all = new ArrayList<>();
    if (roundFrom) {
      all.add(ring.at(false, -radiusMm, narrow));
    }
    all.add(ring.at(false, roundFrom ? -narrow : 0, radiusMm));
    all.add(ring.at(true, roundTo ? narrow : 0, radiusMm));
    if (roundTo) {
      all.add(ring.at(true, radiusMm, narrow));
    }
    return all;
  }

  /** Corners about a circle: this many, half a percent of the radius outside of it. */
  private static final int ROUND = 32;

  /**
   * Returns corners about a circle.
   *
   * @param a a direction in its plane, a unit vector
   * @param b the direction square to that
   */
  static double[][] ring(double[] centre, double[] a, double[] b, double radiusMm) {
    double out = radiusMm / Math.cos(Math.PI / ROUND);
    double[][] ring = new double[ROUND][3];
    for (int i = 0; i < ROUND; i++) {
      double c = out * Math.cos(2 * Math.PI * i / ROUND);
      double s = out * Math.sin(2 * Math.PI * i / ROUND);
      for (int k = 0; k < 3; k++) {
        ring[i][k] = centre[k] + c * a[k] + s * b[k];
      }
    }
    return ring;
  }

  /** Returns it moved in the elevation. */
  public abstract Piece moved(RigidMotion motion);

  /** Returns it shifted across the machine, left positive. */
  public abstract Piece across(double mm);

  /** Returns its image on the other side of the middle plane. */
  public abstract Piece mirrored();

  /** Returns it with all its numbers to a grain, so that what is nearly equal is equal. */
  public Piece grained(double grainMm) {
    return of(Arrays.stream(numbers).map(v -> Math.rint(v / grainMm) * grainMm).toArray());
  }

  @Override
  public boolean equals(Object other) {
    return other != null
        && other.getClass() == getClass()
        && Arrays.equals(((Piece) other).numbers, numbers);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(numbers);
  }
}
