package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * The path of a wheel's axle in body axes as its suspension works.
 *
 * <p>Travel is measured along the path from the drawn position, bump positive: for a fork it is
 * what the sliders move, for a link or swingarm the arc of the axle.
 */
public sealed interface WheelPath permits WheelPath.Straight, WheelPath.Arc, LinkedPath {

  /** Returns the axle at a travel within {@link #leastTravelMm} and {@link #mostTravelMm}. */
  PointMm axle(double travelMm);

  /** Returns the travel at which the axle has risen by {@code riseMm} in body axes. */
  double travelForRiseMm(double riseMm);

  /** Returns the unit direction of bump at a travel. */
  default PointMm direction(double travelMm) {
    return directionAt(axle(travelMm));
  }

  /** Returns the unit direction of bump where the axle is. */
  PointMm directionAt(PointMm axle);

  /**
   * Returns how far what holds the axle turns for each mm of bump, rad, from ahead upwards: nothing
   * on a slide. A brake held by it turns the wheel as far.
   *
   * @param axle where the axle is
   */
  double turnPerMm(PointMm axle);

  /**
   * Returns where a point that is fixed to what holds the axle goes: with a slider it shifts, with
   * a link or arm it turns.
   *
   * @param point as drawn
   */
  PointMm carried(PointMm point, double travelMm);

  /** Returns the lowest travel at which bump still raises the axle, mm; may be infinite. */
  double leastTravelMm();

  /** Returns the highest travel at which bump still raises the axle, mm; may be infinite. */
  double mostTravelMm();

  /**
   * Returns a telescopic fork.
   *
   * @param axle drawn axle
   * @param legRakeRad legs from vertical, rad; the rake, plus the rake of the yokes if any
   */
  static WheelPath telescopic(PointMm axle, double legRakeRad) {
    Values.withinRad("leg rake", legRakeRad, -Math.toRadians(85), Math.toRadians(85));
    return new Straight(axle, PointMm.unit(Math.PI / 2 + legRakeRad));
  }

  /** Returns a wheel that does not move in the body, such as a rigid rear end. */
  static WheelPath rigid(PointMm axle) {
    return new Straight(axle, PointMm.unit(Math.PI / 2));
  }

  /** Returns a leading link: the axle ahead of its pivot. */
  static WheelPath leadingLink(PointMm pivot, PointMm axle) {
    if (axle.x() <= pivot.x()) {
      throw Values.refused("leading link axle x mm", axle.x(), "ahead of its pivot");
    }
    return new Arc(pivot, axle);
  }

  /** Returns a trailing link: the axle behind its pivot. */
  static WheelPath trailingLink(PointMm pivot, PointMm axle) {
    if (axle.x() >= pivot.x()) {
      throw Values.refused("trailing link axle x mm", axle.x(), "behind its pivot");
    }
    return new Arc(pivot, axle);
  }

  /** Returns a swingarm: the axle behind its pivot. */
  static WheelPath swingarm(PointMm pivot, PointMm axle) {
    if (axle.x() >= pivot.x()) {
      throw Values.refused("swingarm axle x mm", axle.x(), "behind its pivot");
    }
    return new Arc(pivot, axle);
  }

  /**
   * A straight slide.
   *
   * @param drawn axle as drawn
   * @param up unit direction of bump, rising
   */
  record Straight(PointMm drawn, PointMm up) implements WheelPath {
    public Straight {
      Values.within("length of the slide's direction", up.length(), 1 - 1e-9, 1 + 1e-9);
      Values.positive("rise of the slide's direction", up.z());
    }

    @Override
    public PointMm axle(double travelMm) {
      return drawn.plus(up.times(travelMm));
    }

    @Override
    public double travelForRiseMm(double riseMm) {
      return riseMm / up.z();
    }

    @Override
    public PointMm directionAt(PointMm axle) {
      return up;
    }

    @Override
    public double turnPerMm(PointMm axle) {
      return 0;
    }

    @Override
    public PointMm carried(PointMm point, double travelMm) {
      // exactly as drawn at no travel, where rounding would leave the drawn place
      return travelMm == 0 ? point : point.plus(axle(travelMm).minus(axle(0)));
    }

    @Override
    public double leastTravelMm() {
      return Double.NEGATIVE_INFINITY;
    }

    @Override
    public double mostTravelMm() {
      return Double.POSITIVE_INFINITY;
    }
  }

  /**
   * A circle about a pivot of the body.
   *
   * @param pivot link or swingarm pivot
   * @param drawn axle as drawn, not straight above or below the pivot
   * @param lengthMm from one to the other, mm: worked out once, asked thousands of times
   */
  record Arc(PointMm pivot, PointMm drawn, double lengthMm) implements WheelPath {
    public Arc {
      if (pivot.x() == drawn.x()) {
        throw Values.refused("axle x mm", drawn.x(), "ahead of or behind its pivot");
      }
      double apart = drawn.distance(pivot);
      if (lengthMm != apart) {
        throw Values.refused(
            "length of the link mm", lengthMm, "the distance of its ends, " + apart);
      }
    }

    Arc(PointMm pivot, PointMm drawn) {
      this(pivot, drawn, drawn.distance(pivot));
    }

    /** +1 if a counter-clockwise turn raises the axle (axle ahead of the pivot). */
    private double sense() {
      return Math.signum(drawn.x() - pivot.x());
    }

    @Override
    public PointMm axle(double travelMm) {
      return drawn.turnedAbout(pivot, sense() * travelMm / lengthMm);
    }

    @Override
    public double travelForRiseMm(double riseMm) {
      if (riseMm == 0) {
        return 0; // exactly, where rounding would leave the drawn place
      }
      double sine = (drawn.z() - pivot.z() + riseMm) / lengthMm;
      if (!(Math.abs(sine) <= 1)) {
        throw Values.refused("rise mm", riseMm, "within the reach of the link");
      }
      return (Math.asin(sine) - elevationRad()) * lengthMm;
    }

    /** Angle of the link above level, whichever way it points, rad in (−π/2, π/2). */
    private double elevationRad() {
      return Math.atan2(drawn.z() - pivot.z(), Math.abs(drawn.x() - pivot.x()));
    }

    @Override
    public PointMm directionAt(PointMm axle) {
      return axle.minus(pivot).left().times(sense() / lengthMm);
    }

    @Override
    public double turnPerMm(PointMm axle) {
      return sense() / lengthMm;
    }

    @Override
    public PointMm carried(PointMm point, double travelMm) {
      if (travelMm == 0) {
        return point; // exactly, where rounding would leave the drawn place
      }
      double turn = axle(travelMm).minus(pivot).angleRad() - drawn.minus(pivot).angleRad();
      return point.turnedAbout(pivot, turn);
    }

    @Override
    public double leastTravelMm() {
      return (-Math.PI / 2 - elevationRad()) * lengthMm;
    }

    @Override
    public double mostTravelMm() {
      return (Math.PI / 2 - elevationRad()) * lengthMm;
    }
  }
}
