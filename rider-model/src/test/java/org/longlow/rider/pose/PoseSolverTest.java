package org.longlow.rider.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

class PoseSolverTest {

  private static final Body MAN = Body.of(Sex.MALE, 1756, 80, Gear.RIDING);
  private static final PointMm HIP = new PointMm(400, 480);

  private static PoseResult pose(PointMm peg, PointMm grip, double reclineDeg) {
    return PoseSolver.solve(
        MAN,
        HIP,
        Math.toRadians(reclineDeg),
        new HeadTarget.Gaze(),
        new FootContact.BallOnPeg(peg),
        new HandContact.Grip(grip),
        RiderWidth.DEFAULT);
  }

  /** The true distance of two points of a posture. */
  private static double apart(PointMm a, double aY, PointMm b, double bY) {
    return Math.hypot(a.distance(b), aY - bY);
  }

  // Right (Euclid I.48), equilateral (I.5 with I.32) and straight triangles.
  @ParameterizedTest
  @CsvSource({"300, 400, 500, 90", "420, 420, 420, 60", "420, 430, 849.9999999999, 180"})
  void twoLinksMakeKnownTriangles(double a, double b, double d, double deg) {
    TwoLink chain = TwoLink.solve(PointMm.ORIGIN, a, b, new PointMm(d, 0), 1, new PointMm(1, 0));
    PointMm toRoot = PointMm.ORIGIN.minus(chain.joint());
    PointMm toEnd = chain.end().minus(chain.joint());
    double angle = Math.atan2(toRoot.cross(toEnd), toRoot.dot(toEnd));
    // Near full stretch the angle moves as the root of the slack, hence 1e-3 deg.
    assertThat(Math.toDegrees(angle)).isCloseTo(deg, within(1e-3));
    assertThat(chain.joint().z()).isGreaterThanOrEqualTo(0);
    TwoLink mirror = TwoLink.solve(PointMm.ORIGIN, a, b, new PointMm(d, 0), -1, new PointMm(1, 0));
    assertThat(mirror.joint().z()).isEqualTo(-chain.joint().z());
    assertThat(mirror.joint().x()).isEqualTo(chain.joint().x());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void linksKeepTheirLengthAndTargetsAreMet(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 400; n++) {
      PointMm peg = new PointMm(random.nextDouble(300, 1700), random.nextDouble(-100, 900));
      PointMm grip = new PointMm(random.nextDouble(200, 1300), random.nextDouble(300, 1300));
      PoseResult result = pose(peg, grip, random.nextDouble(-10, 70));
      Posture p = result.posture();
      JointOffsets y = p.across();
      assertThat(apart(p.hip(), y.hipMm(), p.knee(), y.kneeMm()))
          .isCloseTo(MAN.thighMm(), within(1e-9));
      assertThat(apart(p.knee(), y.kneeMm(), p.ankle(), y.ankleMm()))
          .isCloseTo(MAN.shankMm(), within(1e-9));
      PointMm ankle = MAN.foot().ankle();
      assertThat(apart(p.ankle(), y.ankleMm(), p.ball(), y.ballMm()))
          .isCloseTo(Math.hypot(MAN.foot().ballMm() - ankle.x(), ankle.z()), within(1e-9));
      assertThat(apart(p.shoulder(), y.shoulderMm(), p.elbow(), y.elbowMm()))
          .isCloseTo(MAN.upperArmMm(), within(1e-9));
      assertThat(apart(p.elbow(), y.elbowMm(), p.grip(), y.gripMm()))
          .isCloseTo(MAN.elbowToGripMm(), within(1e-9));
      double legMiss = 0;
      double armMiss = 0;
      for (PoseResult.Shortfall s : result.shortfalls()) {
        assertThat(s.mm()).isPositive();
        legMiss = s.limb() == PoseResult.Limb.LEG ? s.mm() : legMiss;
        armMiss = s.limb() == PoseResult.Limb.ARM ? s.mm() : armMiss;
      }
      assertThat(apart(p.ball(), y.ballMm(), peg, RiderWidth.DEFAULT.footHalfMm()))
          .isCloseTo(legMiss, within(1e-8));
      assertThat(apart(p.grip(), y.gripMm(), grip, RiderWidth.DEFAULT.gripHalfMm()))
          .isCloseTo(armMiss, within(1e-8));
      assertThat(p.angles().shankSole())
          .isBetween(JointLimits.ANKLE_LOW - 1e-9, JointLimits.ANKLE_HIGH + 1e-9);
    }
  }

  @Test
  void jointsNeverFlipWhenATargetCreeps() {
    Posture before = null;
    for (int i = 0; i <= 1400; i++) {
      double t = 2 * Math.PI * i / 1400;
      PointMm peg = new PointMm(1000 + 220 * Math.cos(t), 350 + 220 * Math.sin(t));
      PointMm grip = new PointMm(800 + 150 * Math.cos(t), 800 + 150 * Math.sin(t));
      Posture now = pose(peg, grip, 30).posture();
      PointMm leg = peg.minus(HIP);
      assertThat(leg.cross(now.knee().minus(HIP))).isGreaterThan(-1e-6);
      PointMm arm = grip.minus(now.shoulder());
      assertThat(arm.cross(now.elbow().minus(now.shoulder()))).isLessThan(1e-6);
      if (before != null) {
        // Targets move about 1 mm a step; away from full stretch joints follow within some 5 mm,
        // at full stretch as the square root of the step (30 mm for 1 mm of slack).
        assertThat(now.knee().distance(before.knee())).isLessThan(35);
        assertThat(now.elbow().distance(before.elbow())).isLessThan(35);
      }
      before = now;
    }
  }

  @Test
  void anglesHaveTheirStatedZeros() {
    // Upright on a chair: thigh level, shank upright, sole flat, arms hanging and forearms level.
    PointMm hip = PointMm.ORIGIN;
    PointMm knee = new PointMm(420, 0);
    PointMm ankle = new PointMm(420, -420);
    PointMm shoulder = new PointMm(0, 500);
    PointMm elbow = new PointMm(0, 165);
    PointMm grip = new PointMm(330, 165);
    PointMm heel = new PointMm(360, -490);
    PointMm ball = new PointMm(560, -490);
    JointAngles a =
        JointAngles.of(
            hip,
            shoulder,
            new LegSolver.Leg(
                knee,
                ankle,
                heel,
                ball,
                ball,
                85,
                85,
                85,
                Turns.at(knee, hip, ankle),
                Turns.ccw(ball.minus(heel), knee.minus(ankle)),
                0),
            new ArmSolver.Arm(elbow, grip, grip, 180, 180, Turns.at(elbow, grip, shoulder), 0),
            0);
    assertThat(Math.toDegrees(a.recline())).isCloseTo(0, within(1e-12));
    assertThat(Math.toDegrees(a.trunkThigh())).isCloseTo(90, within(1e-9));
    assertThat(Math.toDegrees(a.knee())).isCloseTo(90, within(1e-9));
    assertThat(Math.toDegrees(a.shankSole())).isCloseTo(90, within(1e-9));
    assertThat(Math.toDegrees(a.arm())).isCloseTo(0, within(1e-9));
    assertThat(Math.toDegrees(a.elbow())).isCloseTo(90, within(1e-9));
    assertThat(a.neckFlexion()).isZero();
  }

  @Test
  void unreachableTargetsSayByHowMuch() {
    PoseResult far = pose(new PointMm(3000, 480), new PointMm(3000, 900), 20);
    assertThat(far).isInstanceOf(PoseResult.Short.class);
    assertThat(far.shortfalls())
        .extracting(PoseResult.Shortfall::side)
        .containsOnly(PoseResult.Side.TOO_FAR);
    double arm =
        apart(
            new PointMm(3000, 900),
            RiderWidth.DEFAULT.gripHalfMm(),
            far.posture().shoulder(),
            MAN.shoulderHalfMm());
    assertThat(far.shortfalls().get(1).mm())
        .isCloseTo(arm - MAN.upperArmMm() - MAN.elbowToGripMm(), within(1e-9));
    PoseResult near =
        PoseSolver.solve(
            MAN,
            HIP,
            0.35,
            new HeadTarget.Gaze(),
            new FootContact.BallOnPeg(HIP),
            new HandContact.OnThighs(),
            new RiderWidth(85, 85, 330));
    assertThat(near.shortfalls())
        .anyMatch(s -> s.limb() == PoseResult.Limb.LEG && s.side() == PoseResult.Side.TOO_NEAR);
    assertThat(Double.isFinite(near.posture().knee().x())).isTrue();
  }

  @Test
  void aComfortablePegKeepsKneeAndAnkleInTheirBands() {
    JointAngles a = pose(new PointMm(1290, 440), new PointMm(700, 780), 30).posture().angles();
    assertThat(a.knee()).isBetween(ComfortBands.KNEE_LOW, ComfortBands.KNEE_HIGH);
    assertThat(a.shankSole()).isBetween(ComfortBands.ANKLE_LOW, ComfortBands.ANKLE_HIGH);
  }

  @Test
  void soleLiesOnTheFootboard() {
    PointMm rear = new PointMm(1000, 200);
    PointMm front = new PointMm(1400, 320);
    PoseResult result =
        PoseSolver.solve(
            MAN,
            HIP,
            0.4,
            new HeadTarget.Gaze(),
            new FootContact.Footboard(rear, front),
            new HandContact.OnThighs(),
            RiderWidth.DEFAULT);
    Posture p = result.posture();
    assertThat(result).isInstanceOf(PoseResult.Reached.class);
    PointMm u = front.minus(rear);
    assertThat(u.cross(p.heel().minus(rear)) / u.length()).isCloseTo(0, within(1e-9));
    assertThat(u.cross(p.ball().minus(rear)) / u.length()).isCloseTo(0, within(1e-9));
    double mid = 0.5 * (ComfortBands.KNEE_LOW + ComfortBands.KNEE_HIGH);
    assertThat(p.angles().knee()).isCloseTo(mid, within(1e-9));
  }

  @Test
  void theFreeHeadLooksLevelThenGivesWay() {
    assertThat(HeadSolver.gazePitch(Math.toRadians(25))).isCloseTo(0, within(1e-12));
    assertThat(Math.toDegrees(HeadSolver.gazePitch(Math.toRadians(35)))).isCloseTo(5, within(1e-9));
    assertThat(Math.toDegrees(HeadSolver.gazePitch(Math.toRadians(50))))
        .isCloseTo(10, within(1e-9));
    assertThat(Math.toDegrees(HeadSolver.gazePitch(Math.toRadians(70))))
        .isCloseTo(25, within(1e-9));
  }

  @Test
  void theHeadTouchesItsRest() {
    PointMm shoulder = new PointMm(0, 1000);
    Neck neck = new Neck(MAN, shoulder, Math.toRadians(30));
    PointMm normal = PointMm.unit(Math.toRadians(-20));
    PointMm surface = shoulder.minus(normal.times(190));
    double pitch = neck.pitchTouching(surface, normal);
    assertThat(neck.gapMm(pitch, surface, normal)).isCloseTo(0, within(1e-9));
    PointMm tooClose = shoulder.plus(normal.times(250));
    assertThat(neck.pitchTouching(tooClose, normal)).isNaN();
  }

  @Test
  void massesAddUpAndTheirCentreIsInside() {
    Posture p = pose(new PointMm(1290, 440), new PointMm(700, 780), 30).posture();
    var lumps = SegmentMass.of(MAN, p);
    assertThat(lumps.stream().mapToDouble(SegmentMass::massKg).sum()).isCloseTo(87.8, within(1e-9));
    PointMm moment = PointMm.ORIGIN;
    for (SegmentMass lump : lumps) {
      moment = moment.plus(lump.centre().times(lump.massKg()));
    }
    PointMm centre = moment.times(1 / 87.8);
    // A sitter's centre of mass lies a little above and ahead of the hip.
    assertThat(centre.x() - HIP.x()).isBetween(0.0, 250.0);
    assertThat(centre.z() - HIP.z()).isBetween(50.0, 300.0);
  }
}
