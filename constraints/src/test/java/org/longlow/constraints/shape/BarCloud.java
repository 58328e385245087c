package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.longlow.rider.geom.PointMm;

/** Points of the surface of a round bar in space: x, y, z. */
public final class BarCloud {

  private BarCloud() {}

  /**
   * Returns them.
   *
   * @param line its middle line
   * @param roundEnds whether it ends in half balls, else cut square
   * @param y where its middle line is across the machine
   * @param stepDeg from one to the next round it
   */
  public static List<double[]> of(
      List<PointMm> line, boolean roundEnds, double y, double radius, double stepDeg) {
    List<double[]> cloud = new ArrayList<>();
    double stepMm = radius * Math.toRadians(stepDeg);
    for (int i = 1; i < line.size(); i++) {
      PointMm from = line.get(i - 1);
      PointMm way = line.get(i).minus(from);
      if (way.length() == 0) {
        continue;
      }
      PointMm up = new PointMm(-way.z(), way.x()).times(1 / way.length());
      int steps = (int) Math.ceil(way.length() / stepMm);
      for (int k = 0; k <= steps; k++) {
        ring(cloud, from.plus(way.times((double) k / steps)), up, y, radius, stepDeg);
      }
      if (!roundEnds && (i == 1 || i + 1 == line.size())) {
        for (double r = 0; r < radius; r += stepMm) {
          for (PointMm end : i == 1 ? List.of(from) : List.of(line.get(i))) {
            ring(cloud, end, up, y, r, stepDeg);
          }
          if (line.size() == 2) {
            ring(cloud, line.get(1), up, y, r, stepDeg);
          }
        }
      }
    }
    for (int i = 0; i < line.size(); i++) {
      PointMm p = line.get(i);
      if (i > 0 && i + 1 < line.size()) {
        // between the ends of the two lengths that meet there
        PointMm before = p.minus(line.get(i - 1));
        PointMm after = line.get(i + 1).minus(p);
        List<double[]> ball = new ArrayList<>();
        ball(ball, p, y, radius, stepDeg);
        ball.removeIf(
            q -> {
              PointMm way = new PointMm(q[0], q[2]).minus(p);
              return way.dot(before) < 0 || way.dot(after) > 0;
            });
        cloud.addAll(ball);
      } else if (roundEnds) {
        ball(cloud, p, y, radius, stepDeg);
      }
    }
    return cloud;
  }

  private static void ring(
      List<double[]> cloud, PointMm at, PointMm up, double y, double radius, double stepDeg) {
    for (double deg = 0; deg < 360; deg += stepDeg) {
      double high = radius * Math.cos(Math.toRadians(deg));
      double aside = radius * Math.sin(Math.toRadians(deg));
      cloud.add(new double[] {at.x() + high * up.x(), y + aside, at.z() + high * up.z()});
    }
  }

  private static void ball(
      List<double[]> cloud, PointMm at, double y, double radius, double stepDeg) {
    for (double from = -90; from <= 90; from += stepDeg) {
      double aside = radius * Math.sin(Math.toRadians(from));
      double round = radius * Math.cos(Math.toRadians(from));
      for (double deg = 0; deg < 360; deg += stepDeg) {
        cloud.add(
            new double[] {
              at.x() + round * Math.cos(Math.toRadians(deg)),
              y + aside,
              at.z() + round * Math.sin(Math.toRadians(deg))
            });
      }
    }
  }
}
