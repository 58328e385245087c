package org.longlow.constraints.machine.chassis;

import java.util.Optional;
import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.Bracket;

/**
 * The circle on which a machine turns at a walk, its frame upright and its springs held, with
 * wheels that roll without slipping.
 *
 * <p>The front wheel, a torus of ring a and crown ρ, is turned by the lock δ about an axis of rake
 * ε. Its axle is then along (-sin δ cos ε, cos δ, -sin δ sin ε), so that it leans by γ with cos γ =
 * √(1 - sin² δ sin² ε), heads tan Δ = tan δ cos ε to the side, and touches the road a sin² δ sin ε
 * cos ε / cos γ ahead of its centre and a sin δ cos δ sin ε / cos γ to the other side. What the
 * front sinks by turns the frame about the rear axle, and the rake with it. Both wheels roll about
 * the place where the lines through their contacts, square to where they head, meet. Own
 * derivation, checked against a torus turned in space.
 *
 * @param onGroundRad by how much the front wheel turns on the ground, rad
 * @param frontRadiusMm radius of the circle of the front contact, the outermost, mm
 * @param rearRadiusMm radius of the circle of the rear contact, mm
 */
public record TurningCircle(double onGroundRad, double frontRadiusMm, double rearRadiusMm) {

  /** How far the frame may pitch while the front sinks, rad; the axis stays off the level. */
  private static final double MOST_PITCH_RAD = 0.5;

  private static final double WITHIN_RAD = 1e-13;

  /**
   * The machine as it stands with the bars straight.
   *
   * @param steering of the front wheel, on the road
   * @param frontCrownMm crown radius of its tyre, mm, at most its radius
   * @param rearRadiusMm radius of the rear tyre, mm, &gt; 0
   * @param wheelbaseMm from contact to contact, mm, &gt; 0
   */
  public record Straight(
      Steering steering, double frontCrownMm, double rearRadiusMm, double wheelbaseMm) {
    public Straight {
      Values.within("front section radius mm", frontCrownMm, 0, steering.radiusMm());
      Values.positive("rear radius mm", rearRadiusMm);
      Values.positive("wheelbase mm", wheelbaseMm);
    }
  }

  /**
   * Returns it.
   *
   * @param lockRad turn about the steering axis, rad
   * @return empty where the lock is none, or turns the wheel square to the machine, or no road lies
   *     under both wheels then
   */
  public static Optional<TurningCircle> of(Straight machine, double lockRad) {
    if (!(lockRad > 0 && lockRad < Math.PI / 2)) {
      return Optional.empty();
    }
    double low = turned(machine, lockRad, -MOST_PITCH_RAD).heightMm();
    double high = turned(machine, lockRad, MOST_PITCH_RAD).heightMm();
    if (low > 0 || high < 0) {
      return Optional.empty();
    }
    double pitch =
        Bracket.root(
            p -> turned(machine, lockRad, p).heightMm(),
            -MOST_PITCH_RAD,
            MOST_PITCH_RAD,
            WITHIN_RAD);
    Touch touch = turned(machine, lockRad, pitch);
    double front = touch.xMm() / Math.sin(touch.headingRad());
    double rear = touch.yMm() + touch.xMm() / Math.tan(touch.headingRad());
    return touch.headingRad() > 0 && touch.xMm() > 0 && rear > 0
        ? Optional.of(new TurningCircle(touch.headingRad(), front, rear))
        : Optional.empty();
  }

  /** The lowest point of the front tyre, from the rear contact: ahead, to the inside, up. */
  private record Touch(double headingRad, double xMm, double yMm, double heightMm) {}

  /** With the bars turned and the frame turned about the rear axle, nose up positive. */
  private static Touch turned(Straight machine, double lockRad, double pitchRad) {
    Steering steering = machine.steering();
    double rise = steering.radiusMm() - machine.rearRadiusMm();
    double offset = steering.offsetMm();
    double rake = steering.rakeRad() + pitchRad;
    double sinLock = Math.sin(lockRad);
    double cosLock = Math.cos(lockRad);
    double sinRake = Math.sin(rake);
    double cosRake = Math.cos(rake);
    // the axle goes from so far ahead of the axis, square to it, to so far aside of that
    double back = offset * (1 - cosLock);
    double centreX =
        machine.wheelbaseMm() * Math.cos(pitchRad) - rise * Math.sin(pitchRad) - back * cosRake;
    double centreZ =
        machine.rearRadiusMm()
            + machine.wheelbaseMm() * Math.sin(pitchRad)
            + rise * Math.cos(pitchRad)
            - back * sinRake;
    double ring = steering.radiusMm() - machine.frontCrownMm();
    double cosLean = Math.sqrt(1 - sinLock * sinLock * sinRake * sinRake);
    double out = ring * sinLock * sinRake / cosLean;
    return new Touch(
        Math.atan2(sinLock * cosRake, cosLock),
        centreX + out * sinLock * cosRake,
        offset * sinLock - out * cosLock,
        centreZ - ring * cosLean - machine.frontCrownMm());
  }
}
