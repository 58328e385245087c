package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.space.Piece;
import org.longlow.rider.geom.PointMm;

/**
 * What stands in the way of sight: a plane that is level across the machine goes through an eye and
 * along a direction of the elevation, and a body hides of it what its section with the plane hides.
 *
 * @param eye the eye in the elevation, mm
 * @param eyeYMm how far it is to the left of the middle, mm
 * @param way the direction, a unit vector
 */
public record Bearings(PointMm eye, double eyeYMm, PointMm way) {

  /** What is nearer along the direction is left off, mm. */
  private static final double NEAREST_MM = 1;

  /**
   * What is hidden, by angles from the direction to the machine's left, rad, within a right angle
   * to each side.
   */
  public record Sector(double fromRad, double toRad) {

    boolean meets(Sector other) {
      return fromRad <= other.toRad && other.fromRad <= toRad;
    }

    /** Returns the least sector that holds both. */
    public Sector with(Sector other) {
      return new Sector(Math.min(fromRad, other.fromRad), Math.max(toRad, other.toRad));
    }
  }

  /** Returns what a body hides; empty where it stands wholly over, under or behind. */
  public Optional<Sector> of(Prism prism) {
    if (!meets(prism.outline().getEnvelopeInternal())) {
      return Optional.empty();
    }
    if (prism.isFull()) {
      return edges(prism.outline(), prism.across());
    }
    return prism.pieces().stream().flatMap(piece -> of(piece).stream()).reduce(Sector::with);
  }

  /** Returns whether anything within a box of the elevation can hide something. */
  public boolean meets(Envelope box) {
    return meets(box.getMinX(), box.getMaxX(), box.getMinY(), box.getMaxY());
  }

  private boolean meets(double fromX, double toX, double fromZ, double toZ) {
    double farX = way.x() < 0 ? fromX : toX;
    double farZ = way.z() < 0 ? fromZ : toZ;
    if (along(farX, farZ) < NEAREST_MM) {
      return false;
    }
    double highX = way.z() > 0 ? fromX : toX;
    double highZ = way.x() > 0 ? toZ : fromZ;
    double lowX = way.z() > 0 ? toX : fromX;
    double lowZ = way.x() > 0 ? fromZ : toZ;
    return over(lowX, lowZ) <= 0 && over(highX, highZ) >= 0;
  }

  /** Returns all that is hidden round a direction, bodies that overlap taken together. */
  public static Optional<Sector> round(double rad, List<Sector> sectors) {
    Sector whole = new Sector(rad, rad);
    boolean any = false;
    for (boolean grew = true; grew; ) {
      grew = false;
      for (Sector s : sectors) {
        if (s.meets(whole) && (s.fromRad < whole.fromRad || s.toRad > whole.toRad || !any)) {
          whole = whole.with(s);
          grew = true;
          any = true;
        }
      }
    }
    return any ? Optional.of(whole) : Optional.empty();
  }

  /** The corners of a convex section; what lies behind is cut off. */
  private final class Hidden {
    private final List<double[]> corners = new ArrayList<>();
    private double from = Double.POSITIVE_INFINITY;
    private double to = Double.NEGATIVE_INFINITY;

    void add(double along, double y) {
      corners.add(new double[] {along, y - eyeYMm});
    }

    Optional<Sector> sector() {
      for (double[] c : corners) {
        if (c[0] >= NEAREST_MM) {
          hides(c[0], c[1]);
          for (double[] d : corners) {
            if (d[0] < NEAREST_MM) {
              double share = (c[0] - NEAREST_MM) / (c[0] - d[0]);
              hides(NEAREST_MM, c[1] + share * (d[1] - c[1]));
            }
          }
        }
      }
      return to > from ? Optional.of(new Sector(from, to)) : Optional.empty();
    }

    private void hides(double along, double y) {
      double rad = Math.atan2(y, along);
      from = Math.min(from, rad);
      to = Math.max(to, rad);
    }
  }

  private double along(double x, double z) {
    return way.x() * (x - eye.x()) + way.z() * (z - eye.z());
  }

  private double over(double x, double z) {
    return way.x() * (z - eye.z()) - way.z() * (x - eye.x());
  }

  /** A body as broad everywhere: its section is a strip across for each stretch of the line. */
  private Optional<Sector> edges(Geometry outline, Interval across) {
    Hidden into = new Hidden();
    Coordinate[] c = outline.getCoordinates();
    double near = Double.POSITIVE_INFINITY;
    double far = Double.NEGATIVE_INFINITY;
    for (int i = 0; i + 1 < c.length; i++) {
      double a = over(c[i].x, c[i].y);
      double b = over(c[i + 1].x, c[i + 1].y);
      if (a < 0 == b < 0) {
        continue;
      }
      double share = a / (a - b);
      double at =
          along(c[i].x, c[i].y) + share * (along(c[i + 1].x, c[i + 1].y) - along(c[i].x, c[i].y));
      near = Math.min(near, at);
      far = Math.max(far, at);
    }
    if (far >= NEAREST_MM) {
      for (double at : new double[] {near, far}) {
        into.add(at, across.from());
        into.add(at, across.to());
      }
    }
    return into.sector();
  }

  private Optional<Sector> of(Piece piece) {
    Piece.Box box = piece.box();
    if (!meets(box.from()[0], box.to()[0], box.from()[2], box.to()[2])) {
      return Optional.empty();
    }
    Hidden into = new Hidden();
    List<double[][]> rings = piece.rings();
    for (int k = 0; k < rings.size(); k++) {
      double[][] ring = rings.get(k);
      for (int i = 0; i < ring.length; i++) {
        if (ring.length == 1) {
          for (int m = k + 1; m < rings.size(); m++) {
            edge(ring[i], rings.get(m)[0], into);
          }
        } else {
          edge(ring[i], ring[(i + 1) % ring.length], into);
          if (k + 1 < rings.size()) {
            edge(ring[i], rings.get(k + 1)[i], into);
          }
        }
      }
    }
    return into.sector();
  }

  /** Adds where an edge goes through the plane, cut off where that is too near or behind. */
  private void edge(double[] p, double[] q, Hidden into) {
    double a = over(p[0], p[2]);
    double b = over(q[0], q[2]);
    if (a < 0 == b < 0) {
      return;
    }
    double share = a / (a - b);
    double at = along(p[0], p[2]) + share * (along(q[0], q[2]) - along(p[0], p[2]));
    into.add(at, p[1] + share * (q[1] - p[1]));
  }
}
