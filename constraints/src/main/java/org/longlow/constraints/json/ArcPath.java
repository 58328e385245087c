package org.longlow.constraints.json;

import org.apache.batik.parser.AWTPathProducer;

/**
 * Turns path data into a shape, elliptical arcs by the SVG 1.1 implementation notes (F.6.5, F.6.6).
 *
 * <p>The library's own arcs are not used: it widens an arc that spans exactly half an ellipse by a
 * hundred-thousandth, which moves the middle of a half circle of radius 1000 by 4.5 units.
 */
final class ArcPath extends AWTPathProducer {

  /** Widest arc drawn as one cubic curve, rad; it then misses the arc by 4e-6 of the radius. */
  private static final double STEP_RAD = Math.PI / 4;

  @Override
  public void arcRel(
      float rx, float ry, float xAxisRotation, boolean large, boolean sweep, float x, float y) {
    arcAbs(rx, ry, xAxisRotation, large, sweep, currentX + x, currentY + y);
  }

  @Override
  public void arcAbs(
      float rx, float ry, float xAxisRotation, boolean large, boolean sweep, float x, float y) {
    if (rx == 0 || ry == 0) {
      linetoAbs(x, y);
      return;
    }
    if (x != currentX || y != currentY) {
      arc(Math.abs(rx), Math.abs(ry), Math.toRadians(xAxisRotation), large, sweep, x, y);
    }
    // smooth commands after an arc reflect nothing
    xCenter = x;
    yCenter = y;
    currentX = x;
    currentY = y;
  }

  private void arc(
      double rx, double ry, double turn, boolean large, boolean sweep, double x, double y) {
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    double halfX = (currentX - x) / 2;
    double halfY = (currentY - y) / 2;
    // the half chord in the axes of the ellipse, where that is a unit circle
    double u = (c * halfX + s * halfY) / rx;
    double v = (-s * halfX + c * halfY) / ry;
    double square = u * u + v * v;
    double grow = Math.max(1, Math.sqrt(square));
    u /= grow;
    v /= grow;
    double side = Math.sqrt(Math.max(0, 1 / Math.min(1, square) - 1)) * (large == sweep ? -1 : 1);
    double centreU = side * v;
    double centreV = -side * u;
    double from = Math.atan2(v - centreV, u - centreU);
    double sweepRad = Math.atan2(-v - centreV, -u - centreU) - from;
    if (sweep && sweepRad < 0) {
      sweepRad += 2 * Math.PI;
    } else if (!sweep && sweepRad > 0) {
      sweepRad -= 2 * Math.PI;
    }
    Ellipse ellipse =
        new Ellipse(
            (currentX + x) / 2, (currentY + y) / 2, rx * grow, ry * grow, c, s, centreU, centreV);
    int steps = Math.max(1, (int) Math.ceil(Math.abs(sweepRad) / STEP_RAD - 1e-9));
    double step = sweepRad / steps;
    double handle = 4.0 / 3 * Math.tan(step / 4);
    for (int i = 0; i < steps; i++) {
      double a = from + i * step;
      double b = a + step;
      double[] one =
          ellipse.at(Math.cos(a) - handle * Math.sin(a), Math.sin(a) + handle * Math.cos(a));
      double[] two =
          ellipse.at(Math.cos(b) + handle * Math.sin(b), Math.sin(b) - handle * Math.cos(b));
      double[] end = i == steps - 1 ? new double[] {x, y} : ellipse.at(Math.cos(b), Math.sin(b));
      path.curveTo(
          (float) one[0],
          (float) one[1],
          (float) two[0],
          (float) two[1],
          (float) end[0],
          (float) end[1]);
    }
  }

  /** Maps points about the centre (centreU, centreV) of a unit circle to the drawing. */
  private record Ellipse(
      double midX,
      double midY,
      double rx,
      double ry,
      double c,
      double s,
      double centreU,
      double centreV) {
    double[] at(double u, double v) {
      double px = rx * (centreU + u);
      double py = ry * (centreV + v);
      return new double[] {midX + c * px - s * py, midY + s * px + c * py};
    }
  }
}
