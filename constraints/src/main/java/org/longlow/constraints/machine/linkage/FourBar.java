package org.longlow.constraints.machine.linkage;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * A section carried by two links of different centres: a four-bar linkage whose coupler is the
 * section.
 *
 * <p>The output link is found by circle intersection on the branch of the shut position; the branch
 * is kept up to the dead points, where coupler and output link lie in line ({@link #range}). Loop
 * closure is that of Freudenstein's equation.
 *
 * @param inputPivot body end of the link whose angle drives
 * @param outputPivot body end of the other link
 * @param inputPin section end of the driving link, shut
 * @param outputPin section end of the other link, shut
 * @param openRad turn of the driving link when fully open, counter-clockwise positive, rad
 */
public record FourBar(
    PointMm inputPivot, PointMm outputPivot, PointMm inputPin, PointMm outputPin, double openRad)
    implements SectionMotion {

  /** Shortest link taken, mm. */
  private static final double LEAST_LINK_MM = 1e-6;

  /**
   * Lengths that differ by less are equal: arms of one length, as drawn by ties, lie in line with
   * body and section twice a turn, and which way the section goes on from there is left to chance.
   */
  private static final double IN_LINE_MM = 1e-6;

  /**
   * How far the driving link can turn from shut.
   *
   * @param leastRad most clockwise turn, &lt;= 0; −infinite if it goes all round
   * @param mostRad most counter-clockwise turn, &gt;= 0; infinite if it goes all round
   */
  public record Range(double leastRad, double mostRad) {}

  /**
   * A position.
   *
   * @param inputPin section end of the driving link
   * @param outputPin section end of the other link
   * @param motion of the section from shut
   * @param transmissionRad angle between coupler and output link, rad in [0, π]; near 0 or π it
   *     jams
   */
  public record Pose(
      PointMm inputPin, PointMm outputPin, RigidMotion motion, double transmissionRad) {}

  public FourBar {
    if (inputPivot == null || outputPivot == null || inputPin == null || outputPin == null) {
      throw new IllegalArgumentException("a four-bar linkage needs two pivots and two pins");
    }
    Values.finite("opening turn", openRad);
    Values.within(
        "driving link mm", inputPin.distance(inputPivot), LEAST_LINK_MM, Double.MAX_VALUE);
    Values.within("section link mm", outputPin.distance(inputPin), LEAST_LINK_MM, Double.MAX_VALUE);
    Values.within(
        "output link mm", outputPin.distance(outputPivot), LEAST_LINK_MM, Double.MAX_VALUE);
    Values.within(
        "pivot distance mm", outputPivot.distance(inputPivot), LEAST_LINK_MM, Double.MAX_VALUE);
    double side = outputPivot.minus(inputPin).cross(outputPin.minus(inputPin));
    if (Math.abs(side) < 1e-9 * outputPin.distance(inputPin) * outputPin.distance(outputPivot)) {
      throw new OutOfRange(
          "the linkage is shut on a dead point: section and output link lie in line; move a pin");
    }
  }

  private double side() {
    return Math.signum(outputPivot.minus(inputPin).cross(outputPin.minus(inputPin)));
  }

  /** Returns how far the driving link can turn either way before a dead point. */
  public Range range() {
    double a = inputPin.distance(inputPivot);
    double b = outputPin.distance(inputPin);
    double c = outputPin.distance(outputPivot);
    double g = outputPivot.distance(inputPivot);
    double base = outputPivot.minus(inputPivot).angleRad();
    double shut = Math.IEEEremainder(inputPin.minus(inputPivot).angleRad() - base, 2 * Math.PI);
    double most = (a * a + g * g - (b - c) * (b - c)) / (2 * a * g);
    double least = (a * a + g * g - (b + c) * (b + c)) / (2 * a * g);
    boolean passesNear = Math.abs(g - a) > Math.abs(b - c) + IN_LINE_MM;
    boolean passesFar = a + g < b + c - IN_LINE_MM;
    double near = passesNear ? 0 : Math.acos(Math.min(1, most));
    double far = passesFar ? Math.PI : Math.acos(Math.max(-1, least));
    if (passesNear && passesFar) {
      return new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    if (passesNear) {
      return new Range(Math.min(0, -far - shut), Math.max(0, far - shut));
    }
    double sign = shut < 0 ? -1 : 1;
    double from = near;
    double to = passesFar ? 2 * Math.PI - near : far;
    double at = sign * shut;
    double back = Math.min(0, from - at);
    double on = Math.max(0, to - at);
    return sign > 0 ? new Range(back, on) : new Range(-on, -back);
  }

  /** Returns true if the linkage reaches fully open without a dead point. */
  public boolean opens() {
    Range range = range();
    return openRad >= range.leastRad() && openRad <= range.mostRad();
  }

  /**
   * Returns the position with the driving link turned from shut.
   *
   * @param turnRad within {@link #range}
   * @throws IllegalArgumentException beyond a dead point
   */
  public Pose pose(double turnRad) {
    Range range = range();
    if (!(turnRad >= range.leastRad() - 1e-9 && turnRad <= range.mostRad() + 1e-9)) {
      throw Values.refused(
          "turn of the driving link",
          Math.toDegrees(turnRad),
          Math.toDegrees(range.leastRad())
              + " to "
              + Math.toDegrees(range.mostRad())
              + " deg, the dead points");
    }
    PointMm b = inputPin.turnedAbout(inputPivot, turnRad);
    PointMm across = outputPivot.minus(b);
    double d = across.length();
    double coupler = outputPin.distance(inputPin);
    double output = outputPin.distance(outputPivot);
    double along = (coupler * coupler - output * output + d * d) / (2 * d);
    double off = Math.sqrt(Math.max(0, coupler * coupler - along * along));
    PointMm u = across.times(1 / d);
    PointMm c = b.plus(u.times(along)).plus(u.left().times(side() * off));
    double turn =
        Math.IEEEremainder(
            c.minus(b).angleRad() - outputPin.minus(inputPin).angleRad(), 2 * Math.PI);
    double cos = b.minus(c).dot(outputPivot.minus(c)) / (coupler * output);
    return new Pose(
        b, c, RigidMotion.taking(inputPin, b, turn), Math.acos(Math.max(-1, Math.min(1, cos))));
  }

  @Override
  public RigidMotion at(double opening) {
    Values.within("opening", opening, 0, 1);
    return pose(opening * openRad).motion();
  }

  /**
   * {@inheritDoc}
   *
   * <p>The output pin goes square to its link, which tells how fast the section turns.
   */
  @Override
  public MotionRate rate(double opening) {
    Pose now = pose(opening * openRad);
    PointMm driven = now.inputPin().minus(inputPivot).left().times(openRad);
    PointMm output = now.outputPin().minus(outputPivot);
    PointMm across = now.outputPin().minus(now.inputPin()).left();
    // on a dead point it turns as fast as can be said
    double square = across.dot(output);
    double turn =
        -driven.dot(output) / Math.copySign(Math.max(Math.abs(square), IN_LINE_MM), square);
    return MotionRate.of(turn, now.inputPin(), driven);
  }

  /**
   * {@inheritDoc}
   *
   * <p>The driving pin goes along its arc. The section's direction is that from the pin to the
   * output pivot, plus or minus the angle there in the triangle of section and output link; both
   * are bounded over the distances of pin and pivot that occur.
   */
  @Override
  public Swing swing(double from, double to) {
    double a = inputPin.distance(inputPivot);
    double b = outputPin.distance(inputPin);
    double c = outputPin.distance(outputPivot);
    double g = outputPivot.distance(inputPivot);
    double arc = a * Math.abs(openRad) * (to - from);
    double start = inputPin.minus(inputPivot).angleRad() - outputPivot.minus(inputPivot).angleRad();
    double one = start + openRad * from;
    double two = start + openRad * to;
    double low = Math.min(one, two);
    double high = Math.max(one, two);
    double mostCos = holds(low, high, 0) ? 1 : Math.max(Math.cos(low), Math.cos(high));
    double leastCos = holds(low, high, Math.PI) ? -1 : Math.min(Math.cos(low), Math.cos(high));
    double near = Math.sqrt(Math.max(0, a * a + g * g - 2 * a * g * mostCos));
    double far = Math.sqrt(a * a + g * g - 2 * a * g * leastCos);
    double turn = near > 0 ? arc / near : Math.PI;
    double still = Math.sqrt(Math.max(0, b * b - c * c));
    double first = angle(near, b, c);
    double second = angle(far, b, c);
    double widest = Math.max(first, second);
    if (near < still && still < far) {
      widest = Math.max(widest, angle(still, b, c));
    }
    turn += widest - Math.min(first, second);
    return new Swing(inputPin, arc, Math.min(turn, 2 * Math.PI));
  }

  @Override
  public FourBar seenFrom(PointMm origin, double gridMm) {
    return new FourBar(
        SectionMotion.onGrid(inputPivot, origin, gridMm),
        SectionMotion.onGrid(outputPivot, origin, gridMm),
        SectionMotion.onGrid(inputPin, origin, gridMm),
        SectionMotion.onGrid(outputPin, origin, gridMm),
        openRad);
  }

  /** Whether a range of angles holds one, or one that differs by whole turns. */
  private static boolean holds(double low, double high, double angle) {
    return Math.floor((high - angle) / (2 * Math.PI)) > Math.floor((low - angle) / (2 * Math.PI));
  }

  /** Angle between a side of a triangle and the side b that meets it, where c lies opposite. */
  private static double angle(double side, double b, double c) {
    double cos = side > 0 ? (b * b + side * side - c * c) / (2 * b * side) : b >= c ? 1 : -1;
    return Math.acos(Math.max(-1, Math.min(1, cos)));
  }
}
