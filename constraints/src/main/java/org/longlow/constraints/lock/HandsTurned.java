package org.longlow.constraints.lock;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.JointLimits;
import org.longlow.rider.pose.Posture;

/**
 * How far the bars may be turned with both hands on their grips: each arm from its own shoulder,
 * which stays where it is, straight at most and bent as far as an elbow bends.
 *
 * @param body who
 * @param posture how they sit
 * @param bars the axis that the bars turn about
 * @param grip middle of the grips, straight ahead
 * @param gripYMm middle plane to the middle of each grip, mm
 */
public record HandsTurned(
    Body body, Posture posture, SteeringAxis bars, PointMm grip, double gripYMm) {

  /** What is nearer than this is in the same place, mm. */
  private static final double LEAST_MM = 1e-6;

  /**
   * How far one hand keeps its grip.
   *
   * @param left whether it is the left hand
   * @param turnLeft whether the steering is turned to the left
   * @param rad how far it may be turned so; infinite if there is no end to it
   */
  public record Kept(boolean left, boolean turnLeft, double rad) {}

  /**
   * A joint of an arm.
   *
   * @param yMm middle plane to the joint, left positive, mm
   */
  public record Joint(PointMm at, double yMm) {}

  /**
   * An arm that follows its grip.
   *
   * @param hand on the grip, or as near to it as the arm lets it
   * @param holds whether that is on the grip
   */
  public record Arm(Joint shoulder, Joint elbow, Joint hand, boolean holds) {}

  /**
   * Returns an arm with the bars turned; its elbow goes out to the side it is on straight ahead.
   *
   * @param turnRad left positive, rad
   */
  public Arm turned(boolean left, double turnRad) {
    double side = left ? 1 : -1;
    double[] shoulder = point(posture.shoulder(), side * posture.across().shoulderMm());
    double[] elbow = point(posture.elbow(), side * posture.across().elbowMm());
    double[] straight = point(grip, side * gripYMm);
    double[] there = Turned.point(bars, straight, turnRad);
    double[] along = minus(there, shoulder);
    double far = length(along);
    double reach = Math.max(leastMm(), Math.min(mostMm(), far));
    along = times(along, 1 / far);
    double a = body.upperArmMm();
    double b = body.elbowToGripMm();
    double on = (a * a - b * b + reach * reach) / (2 * reach);
    double off = Math.sqrt(Math.max(0, a * a - on * on));
    double[] out = minus(elbow, shoulder);
    out = minus(out, times(along, dot(out, along)));
    double length = length(out);
    double[] bend = length < LEAST_MM ? new double[] {0, 0, -1} : times(out, 1 / length);
    return new Arm(
        joint(shoulder),
        joint(plus(shoulder, plus(times(along, on), times(bend, off)))),
        joint(plus(shoulder, times(along, reach))),
        arm(left).keptRad(turnRad > 0, leastMm(), mostMm()) >= Math.abs(turnRad));
  }

  private static double[] point(PointMm at, double y) {
    return new double[] {at.x(), y, at.z()};
  }

  private static Joint joint(double[] p) {
    return new Joint(new PointMm(p[0], p[2]), p[1]);
  }

  private static double[] plus(double[] a, double[] b) {
    return new double[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
  }

  private static double[] minus(double[] a, double[] b) {
    return plus(a, times(b, -1));
  }

  private static double[] times(double[] a, double by) {
    return new double[] {by * a[0], by * a[1], by * a[2]};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double length(double[] a) {
    return Math.sqrt(dot(a, a));
  }

  /** Returns the hand that loses its grip first, and to which side. */
  public Kept first() {
    Kept first = null;
    for (boolean left : new boolean[] {true, false}) {
      for (boolean turnLeft : new boolean[] {true, false}) {
        double rad = arm(left).keptRad(turnLeft, leastMm(), mostMm());
        if (first == null || rad < first.rad()) {
          first = new Kept(left, turnLeft, rad);
        }
      }
    }
    return first;
  }

  /** Returns how much too far a grip comes to be at most on the way to a lock, mm; 0 if none is. */
  public double farMm(double lockRad) {
    return Math.max(0, Math.max(arm(true).mostMm(lockRad), arm(false).mostMm(lockRad)) - mostMm());
  }

  /** Returns whether a grip comes too near to be held on the way to a lock. */
  public boolean near(double lockRad) {
    return Math.min(arm(true).leastMm(lockRad), arm(false).leastMm(lockRad)) < leastMm();
  }

  private ArmReach arm(boolean left) {
    double side = left ? 1 : -1;
    return ArmReach.of(
        bars, posture.shoulder(), side * posture.across().shoulderMm(), grip, side * gripYMm);
  }

  private double mostMm() {
    return body.upperArmMm() + body.elbowToGripMm();
  }

  private double leastMm() {
    double a = body.upperArmMm();
    double b = body.elbowToGripMm();
    return Math.sqrt(a * a + b * b - 2 * a * b * Math.cos(JointLimits.ELBOW_LOW));
  }
}
