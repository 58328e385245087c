package org.longlow.rider.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Segment;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

class FigureTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private static Posture posture(Body body, double recline, PointMm peg, PointMm grip) {
    return posture(body, recline, peg, grip, RiderWidth.DEFAULT);
  }

  private static Posture posture(
      Body body, double recline, PointMm peg, PointMm grip, RiderWidth width) {
    return PoseSolver.solve(
            body,
            new PointMm(400, 480),
            recline,
            new HeadTarget.Gaze(),
            new FootContact.BallOnPeg(peg),
            new HandContact.Grip(grip),
            width)
        .posture();
  }

  private static Geometry point(PointMm p) {
    return FACTORY.createPoint(new Coordinate(p.x(), p.z()));
  }

  private static Flesh part(List<Flesh> parts, String name) {
    return parts.stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void fleshCoversItsJointsAndTheSilhouetteIsOnePiece(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 40; n++) {
      Body body =
          Body.of(
              random.nextBoolean() ? Sex.MALE : Sex.FEMALE,
              random.nextDouble(1450, 2000),
              random.nextDouble(45, 150),
              random.nextBoolean() ? Gear.NONE : Gear.RIDING);
      Posture p =
          posture(
              body,
              random.nextDouble(0, 1),
              new PointMm(random.nextDouble(700, 1500), random.nextDouble(100, 700)),
              new PointMm(random.nextDouble(500, 1000), random.nextDouble(500, 1000)));
      List<Flesh> parts = Figure.parts(body, p);
      assertThat(parts).hasSize(9);
      for (Flesh part : parts) {
        assertThat(part.outline().isValid()).as(part.name()).isTrue();
        assertThat(part.innerMm()).isGreaterThanOrEqualTo(0);
        assertThat(part.outerMm()).as(part.name()).isGreaterThan(part.innerMm());
      }
      assertThat(part(parts, "thigh").outline().covers(point(p.hip()))).isTrue();
      assertThat(part(parts, "thigh").outline().covers(point(p.knee()))).isTrue();
      assertThat(part(parts, "shank").outline().covers(point(p.ankle()))).isTrue();
      // The bare vertex lies on the skull circle, of which 32 corners are drawn.
      assertThat(part(parts, "head").outline().distance(point(p.vertex()))).isLessThan(1);
      assertThat(part(parts, "forearm").outline().covers(point(p.grip()))).isTrue();
      assertThat(part(parts, "chest").outline().covers(point(p.shoulder()))).isTrue();
      Geometry silhouette = Figure.silhouette(parts);
      assertThat(silhouette.isValid()).isTrue();
      assertThat(silhouette.getGeometryType()).isEqualTo("Polygon");
    }
  }

  @Test
  void trunkTouchesTheBackPlaneAndTheLoadedSeat() {
    Body body = Body.of(Sex.MALE, 1756, 80, Gear.NONE);
    Posture p = posture(body, 0, new PointMm(1290, 440), new PointMm(700, 780));
    List<Flesh> parts = Figure.parts(body, p);
    var pelvis = part(parts, "pelvis").outline().getEnvelopeInternal();
    // Circles are drawn with 32 corners, some of which lie on the axes.
    assertThat(p.hip().x() - pelvis.getMinX()).isCloseTo(137, within(1e-9));
    assertThat(p.hip().z() - pelvis.getMinY()).isCloseTo(95, within(1e-9));
    var chest = part(parts, "chest").outline().getEnvelopeInternal();
    assertThat(p.hip().x() - chest.getMinX()).isCloseTo(137, within(1e-9));
  }

  /** 120 mm of rucksack behind the back of a man, which itself stays 137 mm behind the hip. */
  @Test
  void aRucksackLiesBehindTheBackAndWeighs() {
    Gear worn = Gear.NONE.withRucksack(6, 120);
    Body body = Body.of(Sex.MALE, 1756, 80, worn);
    assertThat(body.hipToBackMm()).isEqualTo(137 + 120);
    assertThat(body.massInGearKg()).isEqualTo(86);
    assertThat(body.massInGearKg(Segment.TRUNK)).isCloseTo(80 * 0.4346 + 6, within(1e-9));
    Posture p = posture(body, 0, new PointMm(1290, 440), new PointMm(700, 780));
    var chest = part(Figure.parts(body, p), "chest").outline().getEnvelopeInternal();
    assertThat(p.hip().x() - chest.getMinX()).isCloseTo(137, within(1e-9));
    var worn120 = part(Figure.parts(body, p), "rucksack").outline().getEnvelopeInternal();
    assertThat(p.hip().x() - worn120.getMinX()).isCloseTo(257, within(1e-9));
    var pelvis = part(Figure.parts(body, p), "pelvis").outline().getEnvelopeInternal();
    assertThat(p.hip().x() - pelvis.getMinX()).isCloseTo(137, within(1e-9));
    var pack = new Figure(body, p).rucksack().orElseThrow().outline().getEnvelopeInternal();
    assertThat(pack.getWidth()).isCloseTo(120, within(1e-9));
    assertThat(new Figure(Body.of(Sex.MALE, 1756, 80, Gear.NONE), p).rucksack()).isEmpty();
  }

  /** From the top of the pack to the neck there is air, however far back they lie. */
  @ParameterizedTest
  @ValueSource(doubles = {10, 50, 65})
  void nothingFillsTheNotchOverARucksack(double backDeg) {
    Body body = Body.of(Sex.MALE, 1756, 80, Gear.RIDING.withRucksack(6, 120));
    double back = Math.toRadians(backDeg);
    Posture p = posture(body, back, new PointMm(1290, 440), new PointMm(700, 780));
    PointMm up = PointMm.unit(Math.PI / 2 + back);
    PointMm top =
        p.hip()
            .plus(up.times(0.85 * body.hipToShoulderMm() + 50))
            .plus(up.left().times(body.hipToJacketMm() + 60));
    List<Flesh> parts = Figure.parts(body, p);
    assertThat(part(parts, "rucksack").outline().covers(point(top))).isTrue();
    Geometry trunk = part(parts, "rucksack").outline().union(part(parts, "chest").outline());
    Geometry between = point(top.plus(up.times(15)).towards(p.neckBase(), 0.4));
    assertThat(trunk.convexHull().covers(between)).isTrue();
    assertThat(parts).noneMatch(part -> part.outline().covers(between));
  }

  /** On tiptoe the heel is off the ground and toes lie on it, on the level and on a slope. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 4, -4})
  void toesLieOnTheGroundOnTiptoe(double groundDeg) {
    Body body = Body.of(Sex.FEMALE, 1550, 60, Gear.RIDING);
    double ground = Math.toRadians(groundDeg);
    PointMm ball = new PointMm(700, -250);
    Posture p =
        PoseSolver.solve(
                body,
                new PointMm(400, 480),
                0.6,
                new HeadTarget.Gaze(),
                new FootContact.Tiptoe(ball, ground - Math.toRadians(45), ground),
                new HandContact.OnThighs(),
                RiderWidth.DEFAULT)
            .posture();
    double toes = body.foot().toeMm() - body.foot().ballMm();
    assertThat(p.ball().distance(ball)).isLessThan(1e-9);
    assertThat(p.toe().distance(ball.plus(PointMm.unit(ground).times(toes)))).isLessThan(1e-9);
    // ball to heel at 45°
    double heel = body.foot().ballMm() * Math.sqrt(0.5);
    PointMm normal = PointMm.unit(ground + Math.PI / 2);
    assertThat(p.heel().minus(ball).dot(normal)).isCloseTo(heel, within(1e-9));
    double lowest = Double.POSITIVE_INFINITY;
    for (Coordinate c : part(Figure.parts(body, p), "foot").outline().getCoordinates()) {
      lowest = Math.min(lowest, new PointMm(c.x, c.y).minus(ball).dot(normal));
    }
    assertThat(lowest).isCloseTo(0, within(0.25)); // circles drawn with 32 corners
  }

  @Test
  void theSoleTouchesItsPeg() {
    Body body = Body.of(Sex.FEMALE, 1650, 65, Gear.RIDING);
    PointMm peg = new PointMm(1200, 440);
    Posture p = posture(body, 0.6, peg, new PointMm(700, 780));
    Polygon foot = part(Figure.parts(body, p), "foot").outline();
    // The sole is a tangent of circles drawn with 32 corners: 0.5 % of a 41 mm radius.
    assertThat(foot.getBoundary().distance(point(peg))).isLessThan(0.25);
  }

  @Test
  void splayedKneesLeaveRoomBetween() {
    Body body = Body.of(Sex.MALE, 1756, 80, Gear.RIDING);
    RiderWidth wide = new RiderWidth(300, 300, 350);
    Posture p = posture(body, 0.6, new PointMm(1190, 440), new PointMm(700, 780), wide);
    Flesh shank = part(Figure.parts(body, p), "shank");
    assertThat(shank.innerMm()).isBetween(150.0, 260.0);
    assertThatThrownBy(() -> new RiderWidth(-1, 0, 0)).hasMessageContaining("kneeHalfMm");
  }

  /** By hand: a jacket of 20 mm lies on front and arms, on the back it is pressed to nothing. */
  @Test
  void jacketAndGlovesTakeRoom() {
    Gear thin = Gear.RIDING.withClothes(0, 0);
    Body bare = Body.of(Sex.MALE, 1760, 80, thin);
    Body thick = Body.of(Sex.MALE, 1760, 80, thin.withClothes(20, 5));
    PointMm peg = new PointMm(1290, 440);
    PointMm grip = new PointMm(800, 800);
    List<Flesh> in = Figure.parts(thick, posture(thick, 0, peg, grip));
    List<Flesh> without = Figure.parts(bare, posture(bare, 0, peg, grip));
    var chest = part(in, "chest").outline().getEnvelopeInternal();
    var skin = part(without, "chest").outline().getEnvelopeInternal();
    // polygons stand in for circles: 0.2 mm at these radii
    assertThat(chest.getMaxX() - skin.getMaxX()).isCloseTo(20, within(0.3));
    assertThat(chest.getMinX()).isCloseTo(skin.getMinX(), within(0.3));
    assertThat(part(in, "chest").outerMm() - part(without, "chest").outerMm())
        .isCloseTo(20, within(1e-9));
    Arms.Thick a = new Figure(thick, posture(thick, 0, peg, grip)).arms().thick();
    Arms.Thick b = new Figure(bare, posture(bare, 0, peg, grip)).arms().thick();
    assertThat(a.shoulderMm() - b.shoulderMm()).isCloseTo(20, within(1e-9));
    assertThat(a.forearmMm() - b.forearmMm()).isCloseTo(20, within(1e-9));
    assertThat(a.handMm() - b.handMm()).isCloseTo(5, within(1e-9));
    // armour of 12 mm fills the sleeve at the elbow
    assertThat(a.elbowMm() - b.elbowMm()).isCloseTo(8, within(1e-9));
    assertThat(part(in, "forearm").outerMm()).isGreaterThan(part(without, "forearm").outerMm());
  }
}
