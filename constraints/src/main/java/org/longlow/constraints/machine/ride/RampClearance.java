package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * What ramps and kerbs a machine of two wheels rolls over before something else touches; plane
 * geometry of rigid wheels and a machine whose springs do not give. On the road's axes: x forward
 * from the rear contact, z up.
 *
 * @param wheelbaseMm mm, &gt; 0
 * @param rearRadiusMm rear tyre, mm, &gt; 0
 * @param frontRadiusMm front tyre, mm, &gt; 0
 */
public record RampClearance(double wheelbaseMm, double rearRadiusMm, double frontRadiusMm) {

  /**
   * How much is cleared, and where it would touch.
   *
   * @param value an angle, rad, or a height, mm; infinite if nothing can touch
   * @param point where it is least; null if nothing can touch
   */
  public record Least(double value, PointMm point) {

    /** Where nothing can touch. */
    public static final Least NONE = new Least(Double.POSITIVE_INFINITY, null);

    /** Returns the lesser of two. */
    public Least or(Least other) {
      return other.value < value ? other : this;
    }
  }

  /** A search along an edge ends when it is known where to so much, mm. */
  private static final double FOUND_MM = 1e-3;

  /** The golden section, which halves a search in the fewest steps. */
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  public RampClearance {
    Values.positive("wheelbase mm", wheelbaseMm);
    Values.positive("rear wheel radius mm", rearRadiusMm);
    Values.positive("front wheel radius mm", frontRadiusMm);
  }

  /** Returns the crest that a point between the wheels just clears, rad; infinite in a tyre. */
  public double crestRad(PointMm p) {
    boolean between = p.x() > 0 && p.x() < wheelbaseMm;
    return between && clear(p)
        ? SideClearance.breakover(wheelbaseMm, rearRadiusMm, frontRadiusMm, p).angleRad()
        : Double.POSITIVE_INFINITY;
  }

  /**
   * Returns the least crest over an edge. Points that clear less than some crest lie under an arc
   * from tyre to tyre, so along an edge the crest falls and then rises: what lies between two
   * corners may touch where neither does.
   */
  public Least crest(PointMm a, PointMm b) {
    PointMm along = b.minus(a);
    double from = Math.max(0, least(a.x(), b.x(), along.x()));
    double to = Math.min(1, most(a.x(), b.x(), along.x()));
    if (!(from <= to)) {
      return Least.NONE;
    }
    double length = along.length();
    Least ends = crestAt(a.plus(along.times(from))).or(crestAt(a.plus(along.times(to))));
    while ((to - from) * length > FOUND_MM) {
      double low = to - GOLDEN * (to - from);
      double high = from + GOLDEN * (to - from);
      double atLow = crestRad(a.plus(along.times(low)));
      double atHigh = crestRad(a.plus(along.times(high)));
      if (Double.isInfinite(atLow) && Double.isInfinite(atHigh)) {
        break; // through a tyre: its ends tell
      }
      if (atLow < atHigh) {
        to = high;
      } else {
        from = low;
      }
    }
    return ends.or(crestAt(a.plus(along.times((from + to) / 2))));
  }

  /**
   * Returns a height from which on nothing clears less than a crest, mm: a line from a point to
   * where a tyre stands is no steeper than the one that touches the tyre from below, and both lines
   * together are flattest half way.
   */
  public double heightMm(double crestRad) {
    return crestRad < Math.PI ? wheelbaseMm / 2 * Math.tan(crestRad / 2) : Double.POSITIVE_INFINITY;
  }

  /** Returns where along an edge x comes to lie over the rear contact. */
  private double least(double ax, double bx, double dx) {
    return dx == 0
        ? ax > 0 && ax < wheelbaseMm ? 0 : Double.POSITIVE_INFINITY
        : Math.min(-ax / dx, (wheelbaseMm - ax) / dx);
  }

  private double most(double ax, double bx, double dx) {
    return dx == 0 ? 1 : Math.max(-ax / dx, (wheelbaseMm - ax) / dx);
  }

  private Least crestAt(PointMm p) {
    return new Least(crestRad(p), p);
  }

  private boolean clear(PointMm p) {
    return p.distance(rear()) >= rearRadiusMm && p.distance(front()) >= frontRadiusMm;
  }

  private PointMm rear() {
    return new PointMm(0, rearRadiusMm);
  }

  private PointMm front() {
    return new PointMm(wheelbaseMm, frontRadiusMm);
  }

  /** Returns the ramp up which a corner ahead of the front tyre just clears, rad. */
  public Least approach(PointMm corner) {
    return corner.x() > wheelbaseMm && clear(corner)
        ? new Least(SideClearance.approachRad(front(), frontRadiusMm, corner), corner)
        : Least.NONE;
  }

  /** Returns the ramp up which a corner behind the rear tyre just clears backwards, rad. */
  public Least departure(PointMm corner) {
    return corner.x() < 0 && clear(corner)
        ? new Least(SideClearance.departureRad(rear(), rearRadiusMm, corner), corner)
        : Least.NONE;
  }

  /**
   * Returns the highest kerb, mm, that a corner clears while the machine rolls over it square:
   * ahead of the front tyre before that climbs; between the wheels while the front one is up, or
   * the rear one still is; behind the rear tyre while that climbs.
   */
  public Least kerb(PointMm corner) {
    if (!clear(corner)) {
      return Least.NONE;
    }
    if (corner.x() >= wheelbaseMm || corner.x() <= 0) {
      double overhang = corner.z();
      return new Least(overhang, corner);
    }
    double up =
        rise(
            pitchRad(wheelbaseMm - corner.x(), corner.z(), frontRadiusMm),
            frontRadiusMm - rearRadiusMm);
    double down =
        rise(pitchRad(corner.x(), corner.z(), rearRadiusMm), rearRadiusMm - frontRadiusMm);
    return new Least(Math.min(up, down), corner);
  }

  /**
   * Returns how far the machine pitches until the level on which one wheel stands, which goes under
   * it to the edge of the kerb, meets a point; infinite if it never does.
   *
   * @param behind how far the point is from that wheel towards the other, mm
   */
  private static double pitchRad(double behind, double z, double radius) {
    double a = -behind;
    double b = z - radius;
    double away = PointMm.norm(a, b);
    double pitch = Math.atan2(a, b) + Math.acos(-radius / away);
    return pitch < Math.PI / 4 ? Math.max(pitch, 0) : Double.POSITIVE_INFINITY;
  }

  /**
   * Returns how much higher that wheel then stands than the other.
   *
   * @param larger by how much its radius is the larger, mm
   */
  private double rise(double pitchRad, double larger) {
    return Double.isInfinite(pitchRad)
        ? Double.POSITIVE_INFINITY
        : wheelbaseMm * Math.sin(pitchRad) + larger * (Math.cos(pitchRad) - 1);
  }
}
