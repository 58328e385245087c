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

  /**
   * How far one hand keeps its grip.
   *
   * @param left whether it is the left hand
   * @param turnLeft whether the steering is turned to the left
   * @param rad how far it may be turned so; infinite if there is no end to it
   */
  public record Kept(boolean left, boolean turnLeft, double rad) {}

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

  /** Returns how far a hand is off its grip at a turn, mm: too far positive, too near negative. */
  public double missMm(boolean left, double turnRad) {
    double mm = arm(left).mm(turnRad);
    return mm > mostMm() ? mm - mostMm() : Math.min(0, mm - leastMm());
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
