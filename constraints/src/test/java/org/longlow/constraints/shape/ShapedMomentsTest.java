package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Profile;

/** Volume, centre and second moments of bodies by stations, against closed forms. */
class ShapedMomentsTest {

  private static Bulk oval(double[] edge, double[] stations) {
    return Made.solid(
            Made.outline(edge),
            Made.spread(10, 10, false),
            new Breadth(Made.stations(false, stations), Made.profile(Profile.Shape.OVAL)))
        .bulk();
  }

  private static void isNear(double is, double expected, double share) {
    assertThat(is).isCloseTo(expected, within(Math.abs(expected) * share));
  }

  /** A cone's frustum along x from radius 80 to 30 over 240, its axis 100 up. */
  @Test
  void aFrustum() {
    double a = 80;
    double b = 30;
    double h = 240;
    Bulk bulk =
        oval(
            new double[] {0, 100 - a, h, 100 - b, h, 100 + b, 0, 100 + a},
            new double[] {0, a, h, b});
    double v = Math.PI * h / 3 * (a * a + a * b + b * b);
    // 160 chords round: 0.03 % less area, 0.05 % less of its second moments
    isNear(bulk.volume(), v, 4e-4);
    isNear(bulk.first()[0], Math.PI * h * h / 12 * (a * a + 2 * a * b + 3 * b * b), 4e-4);
    isNear(bulk.first()[2], 100 * v, 4e-4);
    assertThat(bulk.first()[1]).isCloseTo(0, within(v * 1e-9));
    // of a disc ∫y² is π r⁴ / 4, and r runs straight
    double y2 = Math.PI / 20 * h * (Math.pow(a, 5) - Math.pow(b, 5)) / (a - b);
    isNear(bulk.second()[1], y2, 8e-4);
    isNear(bulk.second()[2], y2 + 100 * 100 * v, 5e-4);
    // ∫x² π (a + (b - a) x / h)² over 0 to h
    double c = b - a;
    double x2 = Math.PI * h * h * h * (a * a / 3 + a * c / 2 + c * c / 5);
    isNear(bulk.second()[0], x2, 4e-4);
    assertThat(bulk.second()[3]).isCloseTo(0, within(x2 * 1e-9));
    assertThat(bulk.second()[4]).isCloseTo(0, within(x2 * 1e-9));
    isNear(bulk.second()[5], 100 * bulk.first()[0], 1e-9);
  }

  /** An ellipsoid of half axes 250, 90 and 120 about a place off the origin. */
  @Test
  void anEllipsoid() {
    double a = 250;
    double b = 90;
    double c = 120;
    List<Double> edge = new ArrayList<>();
    List<Double> stations = new ArrayList<>();
    int n = 90;
    for (int i = 0; i < 2 * n; i++) {
      edge.add(300 + a * Math.cos(Math.PI * i / n));
      edge.add(200 + c * Math.sin(Math.PI * i / n));
    }
    for (int i = 0; i <= n; i++) {
      stations.add(300 - a * Math.cos(Math.PI * i / n));
      stations.add(b * Math.sin(Math.PI * i / n));
    }
    Bulk bulk =
        oval(
            edge.stream().mapToDouble(Double::doubleValue).toArray(),
            stations.stream().mapToDouble(Double::doubleValue).toArray());
    double v = 4.0 / 3 * Math.PI * a * b * c;
    // 180 chords round and 90 stations: 0.1 % of volume, 0.2 % of second moments
    isNear(bulk.volume(), v, 1.5e-3);
    isNear(bulk.first()[0], 300 * v, 1.5e-3);
    isNear(bulk.first()[2], 200 * v, 1.5e-3);
    isNear(bulk.second()[0], v * (a * a / 5 + 300 * 300), 2e-3);
    isNear(bulk.second()[1], v * b * b / 5, 2.5e-3);
    isNear(bulk.second()[2], v * (c * c / 5 + 200 * 200), 2e-3);
    isNear(bulk.second()[5], v * 300 * 200, 2e-3);
  }

  /** One that leans to the left: mean of y and products with it. */
  @Test
  void aWedgeBesideTheMiddle() {
    // from 20 to 80 at the back, 20 to 50 at the front, 300 long, 100 high
    Bulk bulk =
        Made.solid(
                Made.reaching(0, 0, 80, -20, 300, 0, 50, -20, 300, 100, 50, -20, 0, 100, 80, -20),
                Made.spread(80, -20, false),
                Breadth.EVEN)
            .bulk();
    double v = 0;
    double y = 0;
    double xy = 0;
    double y2 = 0;
    int n = 3000;
    for (int i = 0; i < n; i++) {
      double x = 300.0 * (i + 0.5) / n;
      double out = 80 - x / 10;
      double slice = 100 * 300.0 / n;
      v += slice * (out - 20);
      y += slice * (out * out - 400) / 2;
      xy += x * slice * (out * out - 400) / 2;
      y2 += slice * (Math.pow(out, 3) - 8000) / 3;
    }
    isNear(bulk.volume(), v, 1e-6);
    isNear(bulk.first()[1], y, 1e-6);
    isNear(bulk.second()[3], xy, 1e-6);
    isNear(bulk.second()[1], y2, 1e-6);
    isNear(bulk.second()[4], 50 * y, 1e-6);
  }
}
