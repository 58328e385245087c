package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.space.Hull;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Separation;
import org.longlow.rider.geom.PointMm;

/** Bodies whose breadth varies, against closed forms. */
class ShapedTest {

  private static final double DENSITY = Material.ALUMINIUM.densityKgMm3();

  private static double volume(PartShape shape) {
    return shape.massKg() / DENSITY;
  }

  /** The farthest that a body reaches a way, by its pieces. */
  private static double reach(PartShape shape, double x, double y, double z) {
    double most = Double.NEGATIVE_INFINITY;
    double[] at = new double[3];
    for (Prism prism : shape.prisms()) {
      for (Piece piece : prism.convex()) {
        piece.farthest(new double[] {x, y, z}, at);
        most = Math.max(most, x * at[0] + y * at[1] + z * at[2]);
      }
    }
    return most;
  }

  private static Breadth stations(Profile profile, double... xb) {
    return new Breadth(Made.stations(false, xb), profile);
  }

  @Test
  void aBoxByStationsIsTheBox() {
    PartShape box =
        Made.solid(
            Made.outline(0, 0, 400, 0, 400, 100, 0, 100),
            Made.spread(50, 50, false),
            stations(Profile.FLAT, 0, 50, 400, 50));
    assertThat(volume(box)).isCloseTo(400 * 100 * 100, within(1e-3));
    assertThat(box.centre().x()).isCloseTo(200, within(1e-9));
    assertThat(box.centre().z()).isCloseTo(50, within(1e-9));
    assertThat(box.leftMm()).isEqualTo(50);
  }

  @Test
  void aWedgeHasItsVolumeAndCentre() {
    // breadth 200 behind to 0 ahead, 300 long, 90 high: half a box, its centre at a third
    PartShape wedge =
        Made.solid(
            Made.outline(0, 0, 300, 0, 300, 90, 0, 90),
            Made.spread(100, 100, false),
            stations(Profile.FLAT, 0, 100, 300, 0));
    assertThat(volume(wedge)).isCloseTo(300 * 90 * 200 / 2.0, within(1e-3));
    assertThat(wedge.centre().x()).isCloseTo(100, within(1e-9));
    assertThat(wedge.centreYMm()).isCloseTo(0, within(1e-9));
    // its side as a plane: 100 at x 0, 0 at x 300
    double slope = Math.hypot(300, 100);
    assertThat(reach(wedge, 100 / slope, 300 / slope, 0)).isCloseTo(30000 / slope, within(1e-6));
  }

  @Test
  void stationsBetweenPointsOfTheOutlineCount() {
    // 50, 150, 60 to a side: two trapezia seen from above, none of whose ends is a vertex
    PartShape body =
        Made.solid(
            Made.outline(0, 0, 300, 0, 300, 60, 0, 60),
            Made.spread(10, 10, false),
            stations(Profile.FLAT, 0, 50, 200, 150, 300, 60));
    assertThat(volume(body)).isCloseTo(60 * (200 * 200 + 100 * 210.0), within(1e-3));
    assertThat(body.leftMm()).isEqualTo(150);
    assertThat(reach(body, 0, 1, 0)).isCloseTo(150, within(1e-9));
    assertThat(holds(body, 199, 148, 59)).isTrue();
    assertThat(holds(body, 100, 99, 30)).isTrue();
    assertThat(holds(body, 100, 101, 30)).isFalse();
    // constant before the first station and behind the last
    PartShape beyond =
        Made.solid(
            Made.outline(0, 0, 300, 0, 300, 60, 0, 60),
            Made.spread(10, 10, false),
            stations(Profile.FLAT, 100, 50, 200, 150));
    assertThat(volume(beyond)).isCloseTo(60 * (100 * 100 + 100 * 200 + 100 * 300.0), within(1e-3));
  }

  @Test
  void aStripThatIsOpenFollowsItsStations() {
    PartShape strip =
        Made.shell(
            new Outline.Drawn(Made.outline(0, 0, 300, 0).vertices(), false),
            Made.spread(10, 10, false),
            stations(Profile.FLAT, 0, 50, 200, 150, 300, 60),
            2,
            true);
    assertThat(strip.leftMm()).isEqualTo(150);
    assertThat(volume(strip)).isCloseTo(2 * (200 * 200 + 100 * 210.0), within(1e-3));
  }

  /**
   * Smooth stations bulge: from 50 to 80 and back with no slope at the middle, the half-breadth is
   * 50 + 30 t + 30 t² (1 - t) on the way there, 67.5 in the mean, where straight lines have 65.
   */
  @Test
  void smoothStationsBulgeOverTheirChords() {
    PartShape barrel =
        Made.solid(
            Made.outline(0, 0, 200, 0, 200, 100, 0, 100),
            Made.spread(50, 50, false),
            new Breadth(Made.stations(true, 0, 50, 100, 80, 200, 50), Profile.FLAT));
    double volume = 200 * 100 * 2 * 67.5;
    // 24 chords from station to station
    assertThat(volume(barrel)).isBetween(0.999 * volume, volume + 1e-3);
    assertThat(barrel.leftMm()).isCloseTo(80, within(1e-9));
  }

  @Test
  void leftAndRightAreTold() {
    PartShape one =
        Made.solid(
            Made.reaching(0, 0, 80, 20, 200, 0, 80, 20, 200, 60, 80, 20, 0, 60, 80, 20),
            Made.spread(10, 10, false),
            Breadth.EVEN);
    assertThat(one.leftMm()).isEqualTo(80);
    assertThat(one.rightMm()).isEqualTo(20);
    assertThat(one.centreYMm()).isCloseTo(30, within(1e-9));
    assertThat(volume(one)).isCloseTo(200 * 60 * 100, within(1e-3));
  }

  @Test
  void pointsSayTheBreadthAndStraightUpBetweenThem() {
    // 100 to each side below, 40 above: a trapezium across
    PartShape body =
        Made.solid(
            Made.reaching(0, 0, 100, 100, 500, 0, 100, 100, 500, 120, 40, 40, 0, 120, 40, 40),
            Made.spread(10, 10, false),
            Breadth.EVEN);
    assertThat(volume(body)).isCloseTo(500 * 120 * (200 + 80) / 2.0, within(1e-3));
    // centre of a trapezium: h (a + 2b) / 3 (a + b) from its side a
    assertThat(body.centre().z()).isCloseTo(120 * (200 + 160) / (3.0 * 280), within(1e-9));
    double slope = Math.hypot(120, 60);
    assertThat(reach(body, 0, 120 / slope, 60 / slope)).isCloseTo(12000 / slope, within(1e-6));
  }

  @Test
  void aCylinderLyingAlongTheMachineIsRound() {
    PartShape rod =
        Made.solid(
            Made.outline(0, -60, 300, -60, 300, 60, 0, 60),
            Made.spread(60, 60, false),
            new Breadth(List.of(), Made.profile(Profile.Shape.OVAL)));
    // a polygon of 160 corners in a circle has 0.03 % less
    assertThat(volume(rod)).isCloseTo(Math.PI * 3600 * 300, within(0.0004 * Math.PI * 3600 * 300));
    for (int deg = 0; deg < 360; deg += 7) {
      double a = Math.toRadians(deg);
      // its straight pieces go round the circle, and by no more than curves are kept within
      assertThat(reach(rod, 0, Math.cos(a), Math.sin(a))).isBetween(60 - 1e-9, 60.21);
    }
    PartShape same =
        Made.solid(
            Made.outline(0, -60, 300, -60, 300, 60, 0, 60),
            Made.spread(60, 60, false),
            new Breadth(List.of(), Made.profile(Profile.Shape.ROUND)));
    assertThat(volume(same)).isCloseTo(volume(rod), within(0.0005 * volume(rod)));
  }

  @Test
  void aConeFrustumByStations() {
    PartShape frustum =
        Made.solid(
            Made.outline(0, -80, 240, -30, 240, 30, 0, 80),
            Made.spread(80, 80, false),
            stations(Made.profile(Profile.Shape.OVAL), 0, 80, 240, 30));
    double sum = 80 * 80 + 80 * 30 + 30 * 30;
    double volume = Math.PI * 240 / 3 * sum;
    assertThat(volume(frustum)).isCloseTo(volume, within(0.0004 * volume));
    double centre = 240.0 / 4 * (80 * 80 + 2 * 80 * 30 + 3 * 30 * 30) / sum;
    assertThat(frustum.centre().x()).isCloseTo(centre, within(1e-6));
  }

  @Test
  void anEllipsoidByStations() {
    double a = 250;
    double b = 90;
    double c = 120;
    List<Double> edge = new ArrayList<>();
    List<Double> stations = new ArrayList<>();
    int n = 60;
    for (int i = 0; i < 2 * n; i++) {
      double turn = Math.PI * i / n;
      edge.add(a * Math.cos(turn));
      edge.add(c * Math.sin(turn));
    }
    for (int i = 0; i <= n; i++) {
      double turn = Math.PI * (n - i) / n;
      stations.add(a * Math.cos(turn));
      stations.add(b * Math.sin(turn));
    }
    PartShape ball =
        Made.solid(
            Made.outline(edge.stream().mapToDouble(Double::doubleValue).toArray()),
            Made.spread(b, b, false),
            stations(
                Made.profile(Profile.Shape.OVAL),
                stations.stream().mapToDouble(Double::doubleValue).toArray()));
    double volume = 4.0 / 3 * Math.PI * a * b * c;
    // 120 chords round and 60 stations lie within 0.2 % of it
    assertThat(volume(ball)).isBetween(0.998 * volume, volume);
    assertThat(ball.centre().length()).isLessThan(1e-6);
  }

  @Test
  void cornersTakeAwayWhatSquaresHaveMoreThanCircles() {
    PartShape box =
        Made.solid(
            Made.outline(0, 0, 500, 0, 500, 100, 0, 100),
            Made.spread(70, 70, false),
            new Breadth(List.of(), Made.corner(30)));
    double section = 140 * 100 - (4 - Math.PI) * 30 * 30;
    assertThat(volume(box)).isCloseTo(500 * section, within(0.0002 * 500 * section));
    assertThat(reach(box, 0, 1, 0)).isCloseTo(70, within(1e-9));
    assertThat(reach(box, 0, 0, 1)).isCloseTo(100, within(1e-9));
    double corner = Math.sqrt(0.5);
    double true45 = corner * (40 + 70) + 30;
    assertThat(reach(box, 0, corner, corner)).isBetween(true45 - 1e-9, true45 + 0.21);
  }

  @Test
  void drawnSidesGoThroughTheirPoints() {
    Profile waist =
        new Profile(
            Profile.Shape.FLAT,
            Optional.empty(),
            List.of(share(0, 1), share(0.5, 0.4), share(1, 0.8)));
    PartShape body =
        Made.solid(
            Made.outline(0, 0, 100, 0, 100, 200, 0, 200),
            Made.spread(50, 50, false),
            new Breadth(List.of(), waist));
    // two trapezia: 100 to 40 over 100, 40 to 80 over 100
    assertThat(volume(body)).isCloseTo(100 * (7000 + 6000), within(1e-3));
    assertThat(body.prisms()).allSatisfy(p -> assertThat(p.pieces()).hasSize(1));
    // the waist is free: no piece comes nearer than half way between
    assertThat(reach(body, 0, 1, 0)).isCloseTo(50, within(1e-9));
    assertThat(holds(body, 50, 19.9, 100)).isTrue();
    assertThat(holds(body, 50, 20.5, 100)).isFalse();
    assertThat(holds(body, 50, 34.0, 50)).isTrue();
    assertThat(holds(body, 50, 36.0, 50)).isFalse();
  }

  private static Profile.Share share(double up, double out) {
    return new Profile.Share(
        Formula.parse(Double.toString(up)), Formula.parse(Double.toString(out)));
  }

  /** Whether a point is in a body. */
  private static boolean holds(PartShape shape, double x, double y, double z) {
    Hull point = Hull.of(List.of(new double[] {x, y, z}));
    Separation separation = new Separation();
    return shape.prisms().stream()
        .flatMap(p -> p.convex().stream())
        .anyMatch(
            piece -> {
              separation.begin(1, 1, 1);
              return separation.mm(piece, point, 10) <= 0;
            });
  }

  @Test
  void holesGoThroughAndLeaveTheBreadthBesideThem() {
    PartShape body =
        Made.solid(
            new Outline.Drawn(
                Made.outline(0, 0, 300, 0, 300, 100, 0, 100).vertices(),
                true,
                false,
                List.of(new Hole.Cut(Made.outline(100, 30, 200, 30, 200, 70, 100, 70).vertices()))),
            Made.spread(60, 60, false),
            stations(Profile.FLAT, 0, 60, 300, 0));
    // the wedge less its breadth at the middle of the hole, 30 to each side, over the hole
    assertThat(volume(body)).isCloseTo(300 * 100 * 60 - 100 * 40 * 60, within(1e-3));
    assertThat(holds(body, 150, 0, 50)).isFalse();
    assertThat(holds(body, 150, 25, 20)).isTrue();
    assertThat(holds(body, 150, 35, 20)).isFalse();
  }

  @Test
  void furtherBodiesAndPairsCountWhole() {
    FurtherBody head =
        new FurtherBody(
            "head",
            Made.outline(20, 100, 80, 100, 80, 160, 20, 160),
            Made.spread(200, -60, true),
            Breadth.EVEN);
    PartShape engine =
        Made.solid(
            Made.outline(0, 0, 100, 0, 100, 100, 0, 100),
            Made.spread(60, 60, false),
            Breadth.EVEN,
            head);
    double heads = 2 * 60 * 60 * 140.0;
    assertThat(volume(engine)).isCloseTo(100 * 100 * 120 + heads, within(1e-3));
    assertThat(engine.leftMm()).isEqualTo(200);
    assertThat(engine.rightMm()).isEqualTo(200);
    assertThat(engine.centreYMm()).isCloseTo(0, within(1e-9));
    assertThat(engine.centre().z())
        .isCloseTo((1200000 * 50 + heads * 130) / (1200000 + heads), within(1e-9));
    assertThat(engine.outline().getArea()).isCloseTo(13600, within(1e-6));
  }

  @Test
  void aSheetIsHollow() {
    PartShape cowl =
        Made.shell(
            Made.outline(0, 0, 600, 0, 600, 200, 0, 200),
            Made.spread(150, 150, false),
            stations(Profile.FLAT, 0, 150, 600, 50),
            2,
            false);
    assertThat(holds(cowl, 300, 0, 100)).isFalse();
    assertThat(holds(cowl, 300, 99, 100)).isTrue();
    assertThat(holds(cowl, 300, 97, 100)).isFalse();
    assertThat(holds(cowl, 300, 0, 199)).isTrue();
    assertThat(holds(cowl, 1, 0, 100)).isTrue();
    assertThat(holds(cowl, 599, 40, 100)).isTrue();
    assertThat(holds(cowl, 599, 60, 100)).isFalse();
    double side = Math.hypot(600, 100) * 200;
    double area = 2 * side + 2 * 600 * 200.0 + 300 * 200 + 100 * 200;
    assertThat(volume(cowl)).isCloseTo(2 * area, within(1e-3));
  }

  @Test
  void aRoundBodyEndsInAPointWhicheverWayItLies() {
    // rounding may bring the lower edge above the upper at a point
    for (int deg = 0; deg < 360; deg++) {
      double c = Math.cos(Math.toRadians(deg));
      double s = Math.sin(Math.toRadians(deg));
      PartShape tip =
          Made.solid(
              Made.outline(0, 0, 300 * c, 300 * s, 300 * c - 50 * s, 300 * s + 50 * c),
              Made.spread(70, 70, false),
              new Breadth(List.of(), Made.profile(Profile.Shape.ROUND)));
      assertThat(volume(tip)).as("turned by " + deg).isBetween(0.7 * 7500 * 140, 7500 * 140.0);
    }
  }

  @Test
  void stationsThatChangePlacesAreTheSameStations() {
    Outline outline = Made.outline(0, 0, 400, 0, 400, 100, 0, 100);
    PartShape inOrder =
        Made.solid(outline, Made.spread(10, 10, false), stations(Profile.FLAT, 100, 200, 300, 50));
    PartShape past =
        Made.solid(outline, Made.spread(10, 10, false), stations(Profile.FLAT, 300, 50, 100, 200));
    assertThat(past.leftMm()).isEqualTo(200);
    assertThat(volume(past)).isCloseTo(volume(inOrder), within(1e-6));
    PartShape one =
        Made.solid(outline, Made.spread(10, 10, false), stations(Profile.FLAT, 100, 50, 100, 200));
    assertThat(volume(one)).isCloseTo(400 * 100 * 400, within(1e-6));
  }

  @Test
  void turnedOnItsPinItIsTheSameBody() {
    PartShape wedge =
        Made.solid(
            Made.outline(0, 0, 300, 0, 300, 90, 0, 90),
            Made.spread(100, 100, false),
            stations(Profile.FLAT, 0, 100, 300, 0));
    RigidMotion motion = new RigidMotion(Math.PI / 2, new PointMm(10, 20));
    PartShape moved = wedge.moved(motion);
    // x forward has become up
    assertThat(reach(moved, 0, 0, 1)).isCloseTo(320, within(1e-9));
    assertThat(reach(moved, -1, 0, 0)).isCloseTo(80, within(1e-9));
    assertThat(moved.centre().z()).isCloseTo(120, within(1e-9));
  }
}
