package org.longlow.rider.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Segment;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

/** What holds a foot, by the slope of the energy of a loose leg as its foot is moved. */
class FootHoldTest {

  private static final Body BODY = Body.of(Sex.MALE, 1750, 80, Gear.NONE);

  /** Hip at the origin; the sole slopes by the angle under an ankle at a place. */
  private static Posture posture(double ankleX, double ankleZ, double soleDeg) {
    PointMm ankle = new PointMm(ankleX, ankleZ);
    PointMm knee =
        TwoLink.solve(PointMm.ORIGIN, BODY.thighMm(), BODY.shankMm(), ankle, 1, new PointMm(1, 0))
            .joint();
    double sole = Math.toRadians(soleDeg);
    Body.Foot foot = BODY.foot();
    PointMm heel = ankle.minus(foot.ankle().turned(sole));
    PointMm along = PointMm.unit(sole);
    PointMm zero = PointMm.ORIGIN;
    return new Posture(
        zero,
        zero,
        zero,
        zero,
        zero,
        zero,
        zero,
        knee,
        ankle,
        heel,
        heel.plus(along.times(foot.ballMm())),
        heel.plus(along.times(foot.toeMm())),
        zero,
        zero,
        zero,
        new JointOffsets(85, 150, 150, 150, 200, 300, 300),
        new SpineJoints(zero, zero, zero),
        new JointAngles(0, 2, 2, 2, 0, 2, 0, 0));
  }

  /** Height energy of thigh and of shank with foot, kg mm, with what touches moved by a way. */
  private static double energy(Posture p, PointMm at, PointMm way, double thigh) {
    double lower = at.minus(p.knee()).length();
    PointMm to = at.plus(way);
    PointMm knee =
        TwoLink.solve(PointMm.ORIGIN, BODY.thighMm(), lower, to, 1, new PointMm(1, 0)).joint();
    double turn = to.minus(knee).angleRad() - at.minus(p.knee()).angleRad();
    return thigh
            * moved(
                Segment.THIGH,
                PointMm.ORIGIN,
                p.knee(),
                PointMm.ORIGIN,
                PointMm.ORIGIN,
                knee.angleRad() - p.knee().angleRad())
        + moved(Segment.SHANK, p.knee(), p.ankle(), p.knee(), knee, turn)
        + moved(Segment.FOOT, p.heel(), p.toe(), p.knee(), knee, turn);
  }

  private static double moved(
      Segment s, PointMm near, PointMm far, PointMm about, PointMm to, double turn) {
    PointMm centre = near.towards(far, s.centreShare(BODY.sex()));
    return BODY.massInGearKg(s) * to.plus(centre.minus(about).turned(turn)).z();
  }

  @ParameterizedTest
  @CsvSource({
    "700, -150, 60, true",
    "700, -150, 20, true",
    "600, -300, 5, true",
    "650, -100, 45, false",
    "500, -500, -5, true"
  })
  void frictionIsTheSlopeOfEnergyAlongTheSoleOverThatSquareToIt(
      double x, double z, double slope, boolean board) {
    Posture p = posture(x, z, slope);
    PointMm along = PointMm.unit(Math.toRadians(slope));
    PointMm at =
        board ? p.heel().plus(along.times(p.ankle().minus(p.heel()).dot(along))) : p.ball();
    double worst = -1;
    boolean toHeel = false;
    for (double thigh : new double[] {0, 1}) {
      // the rest's force does the work that lifts the leg
      double h = 1e-3;
      double up =
          (energy(p, at, along.times(h), thigh) - energy(p, at, along.times(-h), thigh)) / (2 * h);
      PointMm n = along.left();
      double normal =
          (energy(p, at, n.times(h), thigh) - energy(p, at, n.times(-h), thigh)) / (2 * h);
      double friction = normal > 0 ? Math.abs(up) / normal : Double.POSITIVE_INFINITY;
      if (friction > worst) {
        worst = friction;
        toHeel = up > 0;
      }
    }
    FootHold hold = FootHold.of(BODY, p, board);
    assertThat(hold.toHeel()).isEqualTo(toHeel);
    if (Double.isInfinite(worst)) {
      assertThat(hold.friction()).isInfinite();
    } else {
      // central differences of 1e-3 mm on energies of 1e4 kg mm
      assertThat(hold.friction()).isCloseTo(worst, within(1e-4 * Math.max(1, worst)));
    }
  }
}
