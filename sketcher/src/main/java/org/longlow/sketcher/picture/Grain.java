package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Hatch;
import org.longlow.svg.drawing.Planar;

/** Places inside an outline by its own long way: lines across it, and its roomiest disc. */
final class Grain {

  /** Places a side that are tried for the roomiest disc. */
  private static final int TRIES = 5;

  /** Corners of an outline that are looked at for it. */
  private static final int CORNERS = 24;

  private final Geometry outline;
  private final double angleRad;
  private final PointMm along;
  private double from = Double.POSITIVE_INFINITY;
  private double to = Double.NEGATIVE_INFINITY;

  private Grain(Geometry outline, double angleRad) {
    this.outline = outline;
    this.angleRad = angleRad;
    along = PointMm.unit(angleRad);
    for (Coordinate c : outline.getCoordinates()) {
      double at = c.x * along.x() + c.y * along.z();
      from = Math.min(from, at);
      to = Math.max(to, at);
    }
  }

  /** Returns the grain along the longest side of the outline. */
  static Grain of(Geometry outline) {
    return new Grain(outline, angleRad(outline));
  }

  /** Returns the grain upwards. */
  static Grain up(Geometry outline) {
    return new Grain(outline, Math.PI / 2);
  }

  /** Returns the direction of the longest side, rad, at most a quarter turn from level. */
  static double angleRad(Geometry outline) {
    Coordinate[] c = outline.getCoordinates();
    double longest = 0;
    double angle = 0;
    for (int i = 1; i < c.length; i++) {
      double length = c[i - 1].distance(c[i]);
      if (length > longest + 1e-9) {
        longest = length;
        angle = Math.atan((c[i].y - c[i - 1].y) / (c[i].x - c[i - 1].x));
      }
    }
    return angle;
  }

  double angleRad() {
    return angleRad;
  }

  private PointMm at(double share) {
    return along.times(from + share * (to - from));
  }

  /** Returns the line across the outline at a share of its length. */
  Geometry across(double share) {
    PointMm on = at(share);
    return Hatch.line(outline, on.x(), on.z(), angleRad + Math.PI / 2);
  }

  /** Returns those lines of a hatching whose middles lie between two shares of the length. */
  Geometry between(Geometry lines, double low, double high) {
    double least = from + low * (to - from);
    double most = from + high * (to - from);
    return kept(
        lines,
        line -> {
          Coordinate a = line.getCoordinateN(0);
          Coordinate b = line.getCoordinateN(1);
          double mid = 0.5 * ((a.x + b.x) * along.x() + (a.y + b.y) * along.z());
          return mid > least && mid < most;
        });
  }

  /** Returns the lines of a hatching that pass the test. */
  static Geometry kept(Geometry lines, Predicate<LineString> test) {
    List<LineString> out = new ArrayList<>();
    for (int i = 0; i < lines.getNumGeometries(); i++) {
      LineString line = (LineString) lines.getGeometryN(i);
      if (test.test(line)) {
        out.add(line);
      }
    }
    return Planar.FACTORY.createMultiLineString(out.toArray(LineString[]::new));
  }

  /**
   * A disc inside an outline.
   *
   * @param radiusMm 0 where there is none
   */
  record Disc(PointMm centre, double radiusMm) {}

  /** Returns a large disc inside an outline, sought step by step: fit for a cover on it. */
  static Disc roomiest(Geometry outline) {
    Envelope box = outline.getEnvelopeInternal();
    Coordinate[] ring = thinned(outline.getCoordinates());
    Disc best = new Disc(new PointMm(box.centre().x, box.centre().y), 0);
    for (int i = 1; i < TRIES; i++) {
      for (int k = 1; k < TRIES; k++) {
        PointMm at =
            new PointMm(
                box.getMinX() + box.getWidth() * i / TRIES,
                box.getMinY() + box.getHeight() * k / TRIES);
        best = larger(best, ring, at);
      }
    }
    double step = 0.5 * Math.max(box.getWidth(), box.getHeight()) / TRIES;
    while (step > 2) {
      Disc before = best;
      for (int way = 0; way < 4; way++) {
        best =
            larger(best, ring, before.centre().plus(PointMm.unit(way * Math.PI / 2).times(step)));
      }
      if (best == before) {
        step /= 2;
      }
    }
    return new Disc(best.centre(), roomMm(outline, best.centre()));
  }

  private static Disc larger(Disc best, Coordinate[] ring, PointMm at) {
    double room = roomMm(ring, at);
    return room > best.radiusMm() + 1e-9 ? new Disc(at, room) : best;
  }

  /** Returns at most {@link #CORNERS} and a few of the points of a ring, the first and last too. */
  private static Coordinate[] thinned(Coordinate[] ring) {
    int every = Math.max(1, ring.length / CORNERS);
    List<Coordinate> out = new ArrayList<>();
    for (int i = 0; i < ring.length - 1; i += every) {
      out.add(ring[i]);
    }
    out.add(ring[0]);
    return out.toArray(Coordinate[]::new);
  }

  /** Returns the distance of a place inside an outline to its nearest edge, 0 outside. */
  static double roomMm(Geometry outline, PointMm p) {
    return roomMm(outline.getCoordinates(), p);
  }

  private static double roomMm(Coordinate[] ring, PointMm p) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 1; i < ring.length; i++) {
      double ax = ring[i - 1].x - p.x();
      double az = ring[i - 1].y - p.z();
      double dx = ring[i].x - ring[i - 1].x;
      double dz = ring[i].y - ring[i - 1].y;
      double square = dx * dx + dz * dz;
      double t = square == 0 ? 0 : Math.max(0, Math.min(1, -(ax * dx + az * dz) / square));
      double x = ax + t * dx;
      double z = az + t * dz;
      nearest = Math.min(nearest, x * x + z * z);
    }
    return holds(ring, p.x(), p.z()) ? Math.sqrt(nearest) : 0;
  }

  /** Returns whether a ring goes round a place. */
  static boolean holds(Coordinate[] ring, double x, double z) {
    boolean inside = false;
    for (int i = 1; i < ring.length; i++) {
      Coordinate a = ring[i - 1];
      Coordinate b = ring[i];
      if (a.y > z != b.y > z && a.x + (z - a.y) / (b.y - a.y) * (b.x - a.x) > x) {
        inside = !inside;
      }
    }
    return inside;
  }
}
