package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.Made;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.geom.PointMm;

/** Moments of inertia against closed forms (any handbook of mechanics). */
class InertiaTest {

  private static final Rider NOBODY = new Rider(List.of());

  private static Inertia of(PartShape... shapes) {
    List<MassPoint> masses = new ArrayList<>();
    for (PartShape s : shapes) {
      masses.add(new MassPoint(s.massKg(), s.centre(), s.centreYMm()));
    }
    return Inertia.of(List.of(shapes), NOBODY, MassPoint.total(masses));
  }

  private static void isClose(Inertia i, double roll, double pitch, double yaw, double share) {
    assertThat(i.rollKgM2()).isCloseTo(roll, within(share * roll));
    assertThat(i.pitchKgM2()).isCloseTo(pitch, within(share * pitch));
    assertThat(i.yawKgM2()).isCloseTo(yaw, within(share * yaw));
  }

  private static PartShape box(Breadth breadth) {
    return Made.solid(
        Made.outline(100, 200, 500, 200, 500, 300, 100, 300), Made.spread(60, 60, false), breadth);
  }

  @Test
  void aBoxWithAndWithoutStations() {
    PartShape plain = box(Breadth.EVEN);
    double m = plain.massKg() * 1e-6 / 12;
    double roll = m * (120 * 120 + 100 * 100);
    double pitch = m * (400 * 400 + 100 * 100);
    double yaw = m * (400 * 400 + 120 * 120);
    isClose(of(plain), roll, pitch, yaw, 1e-9);
    PartShape stations = box(new Breadth(Made.stations(false, 100, 60, 500, 60), Profile.FLAT));
    isClose(of(stations), roll, pitch, yaw, 1e-9);
    assertThat(of(stations).productKgM2()).isCloseTo(0, within(1e-9));
    // turned a quarter, roll and yaw change places
    RigidMotion quarter = new RigidMotion(Math.PI / 2, new PointMm(30, -40));
    isClose(of(stations.moved(quarter)), yaw, pitch, roll, 1e-9);
    isClose(of(plain.moved(quarter)), yaw, pitch, roll, 1e-9);
    // turned an eighth, half of the difference is in the product, and pitch stays
    Inertia eighth = of(stations.moved(new RigidMotion(Math.PI / 4, PointMm.ORIGIN)));
    assertThat(eighth.pitchKgM2()).isCloseTo(pitch, within(1e-9));
    assertThat(eighth.productKgM2()).isCloseTo((yaw - roll) / 2, within(1e-9));
  }

  @Test
  void aRoundRodAlongTheMachine() {
    PartShape rod =
        Made.solid(
            Made.outline(0, -60, 300, -60, 300, 60, 0, 60),
            Made.spread(60, 60, false),
            new Breadth(List.of(), Made.profile(Profile.Shape.OVAL)));
    double m = rod.massKg() * 1e-6;
    double across = m * (3 * 60 * 60 + 300 * 300) / 12;
    // a polygon of 160 corners for its circle
    isClose(of(rod), m * 60 * 60 / 2, across, across, 1e-3);
  }

  @Test
  void anEllipsoidByStations() {
    int n = 60;
    double[] edge = new double[4 * n];
    double[] stations = new double[2 * n + 2];
    for (int i = 0; i < 2 * n; i++) {
      edge[2 * i] = 250 * Math.cos(Math.PI * i / n);
      edge[2 * i + 1] = 120 * Math.sin(Math.PI * i / n);
    }
    for (int i = 0; i <= n; i++) {
      stations[2 * i] = -250 * Math.cos(Math.PI * i / n);
      stations[2 * i + 1] = 90 * Math.sin(Math.PI * i / n);
    }
    PartShape ball =
        Made.solid(
            Made.outline(edge),
            Made.spread(90, 90, false),
            new Breadth(Made.stations(false, stations), Made.profile(Profile.Shape.OVAL)));
    double m = ball.massKg() * 1e-6 / 5;
    isClose(
        of(ball),
        m * (90 * 90 + 120 * 120),
        m * (250 * 250 + 120 * 120),
        m * (250 * 250 + 90 * 90),
        3e-3);
  }

  @Test
  void pairsAndNeighboursAddUpAboutTheCommonCentre() {
    FurtherBody heads =
        new FurtherBody(
            "head",
            Made.outline(100, 200, 200, 200, 200, 300, 100, 300),
            Made.spread(260, -160, true),
            Breadth.EVEN);
    PartShape engine =
        Made.solid(
            Made.outline(100, 200, 200, 200, 200, 300, 100, 300),
            Made.spread(50, 50, false),
            Breadth.EVEN,
            heads);
    // three cubes of 100 side by side, 210 between their middles
    double m = engine.massKg() / 3 * 1e-6;
    double cube = m * (100 * 100 + 100 * 100) / 12;
    double roll = 3 * cube + 2 * m * 210 * 210;
    isClose(of(engine), roll, 3 * cube, roll, 1e-9);
  }

  @Test
  void aSheetTurnsAsItsSidesDo() {
    PartShape cowl =
        Made.shell(
            Made.outline(0, 0, 400, 0, 400, 400, 0, 400),
            Made.spread(200, 200, false),
            new Breadth(Made.stations(false, 0, 200, 400, 200), Profile.FLAT),
            2,
            false);
    // six square sheets of 400, thin: two square to each axis
    double m = cowl.massKg() / 6 * 1e-6;
    double about = 4 * (m * 400 * 400 / 12 + m * 200 * 200) + 2 * m * 400 * 400 / 6;
    isClose(of(cowl), about, about, about, 1e-9);
  }
}
