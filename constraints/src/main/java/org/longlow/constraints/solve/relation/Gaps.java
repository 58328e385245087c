package org.longlow.constraints.solve.relation;

import org.longlow.constraints.solve.Pt;
import org.longlow.constraints.solve.Quantity;
import org.longlow.constraints.solve.Relation;

/** Gaps for limits, mm: zero or more means that the limit holds. */
public final class Gaps {
  private Gaps() {}

  /** A measure is at least a value. */
  public static Relation atLeast(Quantity measure, Quantity least) {
    return Relations.equal(measure, least);
  }

  /** A measure is at most a value. */
  public static Relation atMost(Quantity measure, Quantity most) {
    return Relations.equal(most, measure);
  }

  /** Two points are at least so far apart. */
  public static Relation distanceAtLeast(Pt a, Pt b, Quantity least) {
    return Relations.distance(a, b, least);
  }

  /** Two points are at most so far apart. */
  public static Relation distanceAtMost(Pt a, Pt b, Quantity most) {
    return Relations.negative(Relations.distance(a, b, most));
  }

  /**
   * The line a-b is at least so far anticlockwise from the horizontal, rad; within half a turn of
   * the bound.
   */
  public static Relation angleAtLeast(Pt a, Pt b, Quantity least) {
    return Relations.angleToHorizontal(a, b, least);
  }

  /**
   * The line a-b is at most so far anticlockwise from the horizontal, rad; within half a turn of
   * the bound.
   */
  public static Relation angleAtMost(Pt a, Pt b, Quantity most) {
    return Relations.negative(Relations.angleToHorizontal(a, b, most));
  }

  /** A point is on or above the ground. */
  public static Relation aboveGround(Pt p) {
    return Relations.fix(p.z(), 0);
  }

  /** A circle is on or above the ground. */
  public static Relation aboveGround(Pt centre, Quantity radius) {
    return Relations.equal(centre.z(), radius);
  }

  /** Two circles are at least so far apart (0 mm: they may touch). */
  public static Relation circlesApart(Pt a, Quantity radiusA, Pt b, Quantity radiusB) {
    return Circles.tangentOutside(a, radiusA, b, radiusB);
  }

  /** The second circle lies within the first. */
  public static Relation circleWithin(
      Pt outer, Quantity radiusOuter, Pt inner, Quantity radiusInner) {
    return Relations.negative(Circles.tangentInside(outer, radiusOuter, inner, radiusInner));
  }
}
