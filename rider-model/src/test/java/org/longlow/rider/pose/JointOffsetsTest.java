package org.longlow.rider.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

/** Limbs span the true distance to what lies farther out, and bend by it. */
class JointOffsetsTest {

  private static final Body WOMAN = Body.of(Sex.FEMALE, 1590, 57, Gear.RIDING);
  private static final PointMm HIP = new PointMm(400, 600);
  private static final PointMm GRIP = new PointMm(720, 950);
  private static final PointMm PEG = new PointMm(1000, 350);

  private static PoseResult pose(FootContact foot, PointMm grip, RiderWidth width) {
    return PoseSolver.solve(
        WOMAN, HIP, 0.35, new HeadTarget.Gaze(), foot, new HandContact.Grip(grip), width);
  }

  private static PoseResult pose(double feet, double grips) {
    return pose(
        new FootContact.BallOnPeg(PEG), GRIP, new RiderWidth(Math.min(600, feet), feet, grips));
  }

  private static double missing(PoseResult result, PoseResult.Limb limb) {
    return result.shortfalls().stream()
        .filter(s -> s.limb() == limb)
        .mapToDouble(s -> s.side() == PoseResult.Side.TOO_FAR ? s.mm() : -s.mm())
        .sum();
  }

  /** By the law of cosines, Euclid II.12-13, on the sides alone. */
  private static double opposite(double a, double b, double c) {
    return Math.acos((a * a + b * b - c * c) / (2 * a * b));
  }

  @Test
  void theElbowOpensAsGripsMoveOut() {
    double upper = WOMAN.measures().get("acromionradialelength");
    double fore = WOMAN.measures().get("d_elbowtogrip");
    double shoulder = WOMAN.measures().get("biacromialbreadth") / 2;
    for (double y : new double[] {shoulder, 250, 310, 400, 450}) {
      Posture p = pose(230, y).posture();
      double seen = p.shoulder().distance(GRIP);
      double span = Math.sqrt(seen * seen + (y - shoulder) * (y - shoulder));
      assertThat(p.angles().elbow()).isCloseTo(opposite(upper, fore, span), within(1e-9));
    }
    assertThat(pose(230, 450).posture().angles().elbow())
        .isGreaterThan(pose(230, 310).posture().angles().elbow() + 0.1);
  }

  @Test
  void gripsTooFarOutAreOutOfReachByTheRest() {
    double links =
        WOMAN.measures().get("acromionradialelength") + WOMAN.measures().get("d_elbowtogrip");
    double shoulder = WOMAN.measures().get("biacromialbreadth") / 2;
    double seen = pose(230, 300).posture().shoulder().distance(GRIP);
    double last = shoulder + Math.sqrt(links * links - seen * seen);
    assertThat(last).isBetween(300.0, 790.0);
    assertThat(missing(pose(230, last - 0.01), PoseResult.Limb.ARM)).isZero();
    assertThat(missing(pose(230, last + 1), PoseResult.Limb.ARM))
        .isCloseTo(Math.hypot(seen, last + 1 - shoulder) - links, within(1e-9))
        .isPositive();
  }

  @Test
  void boardsTooFarOutAreOutOfReachByTheRest() {
    double links = WOMAN.thighMm() + WOMAN.shankMm();
    PointMm heel = new PointMm(960, 260);
    PointMm ankle = heel.plus(WOMAN.foot().ankle());
    double seen = HIP.distance(ankle);
    double last = 85 + Math.sqrt(links * links - seen * seen);
    for (double y : new double[] {85, 230, last - 0.01, last + 1, 700}) {
      PoseResult result =
          pose(
              new FootContact.Footboard(heel, heel),
              GRIP,
              new RiderWidth(Math.min(600, y), y, 310));
      double span = Math.hypot(seen, y - 85);
      assertThat(missing(result, PoseResult.Limb.LEG))
          .isCloseTo(Math.max(0, span - links), within(1e-9));
      double knee = span < links ? opposite(WOMAN.thighMm(), WOMAN.shankMm(), span) : Math.PI;
      assertThat(result.posture().angles().knee()).isCloseTo(knee, within(1e-6));
    }
    assertThat(last).isBetween(230.0, 700.0);
  }

  /** The farthest a ball reaches is thigh, and knee to ball with the ankle at its stop. */
  @Test
  void pegsTooFarOutAreOutOfReachByTheRest() {
    PointMm ankle = WOMAN.foot().ankle();
    double stop = Math.toRadians(135);
    double kneeToBall =
        Math.hypot(
            ankle.x() + WOMAN.shankMm() * Math.cos(stop) - WOMAN.foot().ballMm(),
            ankle.z() + WOMAN.shankMm() * Math.sin(stop));
    double links = WOMAN.thighMm() + kneeToBall;
    double last = 85 + Math.sqrt(links * links - Math.pow(HIP.distance(PEG), 2));
    assertThat(missing(pose(last - 0.01, 310), PoseResult.Limb.LEG)).isZero();
    assertThat(missing(pose(last + 1, 310), PoseResult.Limb.LEG))
        .isCloseTo(Math.hypot(HIP.distance(PEG), last + 1 - 85) - links, within(1e-9))
        .isPositive();
  }

  /** A hair short of full stretch the angles move as the root of the slack, but never jump. */
  @Test
  void aNearlyStraightLegCreepsWithItsTarget() {
    Posture last = null;
    double before = Double.NaN;
    for (int i = 0; i <= 4000; i++) {
      double far = 860 + i * 0.01;
      PoseResult result =
          pose(
              new FootContact.BallOnPeg(HIP.plus(new PointMm(far, -100))),
              GRIP,
              new RiderWidth(190, 230, 310));
      Posture now = result.posture();
      double knee = now.angles().knee();
      if (last != null) {
        assertThat(now.heel().distance(last.heel())).as("at " + far).isLessThan(1);
        assertThat(knee).as("at " + far).isBetween(before - 1e-9, before + 0.03);
      }
      before = knee;
      last = now;
    }
    assertThat(Math.toDegrees(before)).isGreaterThan(170);
  }

  @Test
  void limbsInTheElevationBendAsPlainChainsDo() {
    double shoulder = WOMAN.shoulderHalfMm();
    PointMm heel = new PointMm(960, 260);
    Posture p =
        pose(new FootContact.Footboard(heel, heel), GRIP, new RiderWidth(85, 85, shoulder))
            .posture();
    TwoLink leg =
        TwoLink.solve(
            HIP,
            WOMAN.thighMm(),
            WOMAN.shankMm(),
            heel.plus(WOMAN.foot().ankle().turned(0)),
            1,
            PointMm.ORIGIN);
    TwoLink arm =
        TwoLink.solve(
            p.shoulder(), WOMAN.upperArmMm(), WOMAN.elbowToGripMm(), GRIP, -1, PointMm.ORIGIN);
    assertThat(p.knee().distance(leg.joint())).isLessThan(1e-9);
    assertThat(p.elbow().distance(arm.joint())).isLessThan(1e-9);
    assertThat(p.across().kneeMm()).isCloseTo(85, within(1e-9));
    assertThat(p.across().elbowMm()).isCloseTo(shoulder, within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void anglesAreThoseOfThePointsInSpace(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int asWished = 0;
    for (int i = 0; i < 300; i++) {
      RiderWidth width =
          new RiderWidth(
              random.nextDouble(0, 500), random.nextDouble(0, 500), random.nextDouble(0, 500));
      PointMm at = new PointMm(random.nextDouble(750, 1150), random.nextDouble(150, 600));
      PointMm grip = new PointMm(random.nextDouble(450, 900), random.nextDouble(700, 1100));
      FootContact foot =
          i % 2 == 0
              ? new FootContact.BallOnPeg(at)
              : new FootContact.Footboard(at, at.plus(PointMm.unit(0.4)));
      Posture p = pose(foot, grip, width).posture();
      JointOffsets y = p.across();
      double[] hip = {p.hip().x(), y.hipMm(), p.hip().z()};
      double[] knee = {p.knee().x(), y.kneeMm(), p.knee().z()};
      double[] ankle = {p.ankle().x(), y.ankleMm(), p.ankle().z()};
      double[] shoulder = {p.shoulder().x(), y.shoulderMm(), p.shoulder().z()};
      double[] elbow = {p.elbow().x(), y.elbowMm(), p.elbow().z()};
      double[] hand = {p.grip().x(), y.gripMm(), p.grip().z()};
      assertThat(Math.cos(p.angles().knee())).isCloseTo(cosine(knee, hip, ankle), within(1e-9));
      assertThat(Math.cos(p.angles().elbow()))
          .isCloseTo(cosine(elbow, shoulder, hand), within(1e-9));
      asWished += Math.abs(y.kneeMm() - width.kneeHalfMm()) < 1e-9 ? 1 : 0;
    }
    assertThat(asWished).isBetween(60, 299);
  }

  private static double cosine(double[] joint, double[] a, double[] b) {
    double dot = 0;
    double aa = 0;
    double bb = 0;
    for (int i = 0; i < 3; i++) {
      dot += (a[i] - joint[i]) * (b[i] - joint[i]);
      aa += (a[i] - joint[i]) * (a[i] - joint[i]);
      bb += (b[i] - joint[i]) * (b[i] - joint[i]);
    }
    return dot / Math.sqrt(aa * bb);
  }

  @Test
  void aStraightLegSplaysNoFartherThanItsLine() {
    PoseResult far =
        pose(
            new FootContact.BallOnPeg(new PointMm(3000, 300)), GRIP, new RiderWidth(600, 230, 310));
    JointOffsets y = far.posture().across();
    assertThat(y.kneeMm()).isBetween(85.0, 230.0);
    assertThat(far.posture().knee().x()).isFinite();
  }
}
