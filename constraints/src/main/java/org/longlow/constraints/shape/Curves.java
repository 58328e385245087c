package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.longlow.rider.geom.PointMm;

/** Outlines from vertices: corners and smooth runs, bent tubes, discs and strips. */
public final class Curves {

  /** Farthest that a flattened curve may lie from the true one, mm. Half of 0.05 mm on paper. */
  public static final double FLATNESS_MM = 0.02;

  public static final GeometryFactory FACTORY = new GeometryFactory();

  /** Chords of half a disc. */
  private static final int HALF_DISC_STEPS = 96;

  /** Chords of a bar's round end. */
  private static final int HALF_END_STEPS = 32;

  /** Outlines kept from one edit to the next; an outline takes some 5 to 20 kB. */
  private static final int KEPT = 256;

  private static final Memo<List<PointMm>, Geometry> POLYGONS =
      new Memo<>(KEPT, Curves::makePolygon);
  private static final Memo<Bands, Geometry> STRIPS = new Memo<>(KEPT, Curves::makeStrip);
  private static final Memo<Bands, Geometry> ROUNDED = new Memo<>(KEPT, Curves::makeRounded);

  /** What turns by more than this goes back along itself, or nowhere, and has no bend. */
  private static final double BACK_RAD = Math.PI - 1e-9;

  private Curves() {}

  /**
   * Returns the points of an edge that passes through {@code vertices}, smooth where {@code smooth}
   * is true.
   *
   * <p>Smooth runs are made of {@link Span}s, which neither loop nor overshoot between close
   * points. A corner ends a run.
   *
   * @param closed true to join the last vertex to the first; the first is not repeated
   */
  public static List<PointMm> through(
      List<PointMm> vertices, List<Boolean> smooth, boolean closed) {
    List<PointMm> points = new ArrayList<>();
    walk(
        vertices,
        smooth,
        closed,
        (i, span, share) -> points.add(share == 0 ? span.from() : span.at(share)));
    if (!closed) {
      points.add(vertices.get(vertices.size() - 1));
    }
    return points;
  }

  /** Takes up the points of an edge in turn. */
  interface Steps {
    /**
     * @param i the vertex that the point lies on or after
     * @param span the edge from there
     * @param share of that edge, 0 on the vertex itself
     */
    void at(int i, Span span, double share);
  }

  /** Walks along an edge through vertices, flattened, all but the last point of an open one. */
  static void walk(List<PointMm> vertices, List<Boolean> smooth, boolean closed, Steps steps) {
    walk(vertices, smooth, closed, FLATNESS_MM, steps);
  }

  /** As {@link #walk(List, List, boolean, Steps)}, chords within {@code flatnessMm} of the edge. */
  static void walk(
      List<PointMm> vertices,
      List<Boolean> smooth,
      boolean closed,
      double flatnessMm,
      Steps steps) {
    int n = vertices.size();
    int spans = closed ? n : n - 1;
    for (int i = 0; i < spans; i++) {
      int before = before(smooth, closed, i);
      int after = after(smooth, closed, i);
      Span span =
          new Span(
              before < 0 ? null : vertices.get(before),
              vertices.get(i),
              vertices.get((i + 1) % n),
              after < 0 ? null : vertices.get(after));
      steps.at(i, span, 0);
      int pieces = before < 0 && after < 0 ? 1 : span.pieces(flatnessMm);
      for (int k = 1; k < pieces; k++) {
        steps.at(i, span, (double) k / pieces);
      }
    }
  }

  /** Returns the vertex before edge {@code i} that bends it, or -1. */
  public static int before(List<Boolean> smooth, boolean closed, int i) {
    int n = smooth.size();
    return smooth.get(i) && (closed || i > 0) ? (i + n - 1) % n : -1;
  }

  /** Returns the vertex after edge {@code i} that bends it, or -1. */
  public static int after(List<Boolean> smooth, boolean closed, int i) {
    int n = smooth.size();
    int j = (i + 1) % n;
    return smooth.get(j) && (closed || j < n - 1) ? (j + 1) % n : -1;
  }

  /**
   * Returns the centre line of a tube bent at the inner pins.
   *
   * <p>Where two bends would overlap, the radius there is reduced to what fits.
   */
  public static List<PointMm> bent(List<PointMm> pins, double radiusMm) {
    List<PointMm> points = new ArrayList<>();
    points.add(pins.get(0));
    for (int i = 1; i < pins.size() - 1; i++) {
      addBend(points, pins, i, radiusMm);
    }
    points.add(pins.get(pins.size() - 1));
    return points;
  }

  private static void addBend(List<PointMm> into, List<PointMm> pins, int i, double radiusMm) {
    PointMm p = pins.get(i);
    PointMm back = pins.get(i - 1).minus(p);
    PointMm ahead = pins.get(i + 1).minus(p);
    double turn = turnRad(back, ahead);
    double fits = fittingRadius(pins, i, radiusMm);
    if (turn < 1e-9 || fits < 1e-9 || turn > BACK_RAD) {
      into.add(p);
      return;
    }
    double tangent = fits * Math.tan(turn / 2);
    PointMm start = p.plus(back.times(tangent / back.length()));
    double side = back.cross(ahead) < 0 ? 1 : -1;
    PointMm along = back.times(-1 / back.length());
    PointMm centre = start.plus(along.left().times(side * fits));
    int pieces = chords(fits, turn);
    for (int k = 0; k <= pieces; k++) {
      into.add(start.turnedAbout(centre, side * turn * k / pieces));
    }
  }

  /** Returns how many chords stand for an arc. */
  static int chords(double radiusMm, double turnRad) {
    double each = 2 * Math.acos(Math.max(0, 1 - FLATNESS_MM / radiusMm)) + 1e-12;
    return (int) Math.max(2, Math.ceil(turnRad / each));
  }

  /** Returns by how much a line turns at inner pin {@code i}, rad: 0 straight on, pi back again. */
  public static double turnRad(List<PointMm> pins, int i) {
    PointMm p = pins.get(i);
    return turnRad(pins.get(i - 1).minus(p), pins.get(i + 1).minus(p));
  }

  private static double turnRad(PointMm back, PointMm ahead) {
    return Math.PI - Math.abs(Math.atan2(back.cross(ahead), back.dot(ahead)));
  }

  /**
   * Returns the bend radius that fits at inner pin {@code i}, at most {@code radiusMm}: as large as
   * it and the next bends can have alike, whose tangents share the way between them.
   */
  public static double fittingRadius(List<PointMm> pins, int i, double radiusMm) {
    double own = Math.tan(turnRad(pins, i) / 2);
    PointMm p = pins.get(i);
    double back = p.distance(pins.get(i - 1)) / Math.max(1e-12, own + tangent(pins, i - 1));
    double ahead = p.distance(pins.get(i + 1)) / Math.max(1e-12, own + tangent(pins, i + 1));
    return Math.min(radiusMm, Math.min(back, ahead));
  }

  /**
   * Returns how long the tangent of a bend is, in its radii; none at the ends, nor where a path
   * turns back along itself or stays in one place, for there no bend can be.
   */
  private static double tangent(List<PointMm> pins, int i) {
    double turn = i == 0 || i == pins.size() - 1 ? 0 : turnRad(pins, i);
    return turn < BACK_RAD ? Math.tan(turn / 2) : 0;
  }

  public static double length(List<PointMm> points) {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      sum += points.get(i - 1).distance(points.get(i));
    }
    return sum;
  }

  public static Coordinate coordinate(PointMm p) {
    return new Coordinate(p.x(), p.z());
  }

  public static LineString line(List<PointMm> points) {
    return FACTORY.createLineString(
        points.stream().map(Curves::coordinate).toArray(Coordinate[]::new));
  }

  /** Returns the polygon inside {@code points}, mended if it touches itself. */
  public static Geometry polygon(List<PointMm> points) {
    return POLYGONS.of(List.copyOf(points));
  }

  private static Geometry makePolygon(List<PointMm> points) {
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < points.size(); i++) {
      ring[i] = coordinate(points.get(i));
    }
    ring[points.size()] = ring[0].copy();
    Polygon polygon = FACTORY.createPolygon(ring);
    return polygon.isValid() ? polygon : polygon.buffer(0);
  }

  /** Lines and the width of the band along them. */
  private record Bands(List<List<PointMm>> lines, double widthMm) {}

  /** Returns the band of {@code widthMm} along {@code points} with square ends. */
  public static Geometry strip(List<PointMm> points, double widthMm) {
    return STRIPS.of(new Bands(List.of(List.copyOf(points)), widthMm));
  }

  private static Geometry makeStrip(Bands strip) {
    List<PointMm> points = strip.lines().get(0);
    if (points.size() == 2 && strip.widthMm() > 0 && !points.get(0).equals(points.get(1))) {
      return straightStrip(points.get(0), points.get(1), strip.widthMm() / 2);
    }
    BufferParameters flat =
        new BufferParameters(16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_ROUND, 5);
    return BufferOp.bufferOp(line(points), strip.widthMm() / 2, flat);
  }

  /** As the general way has it, corner by corner. */
  private static Geometry straightStrip(PointMm a, PointMm b, double halfMm) {
    PointMm side = b.minus(a).left().times(halfMm / b.distance(a));
    Coordinate first = coordinate(b.plus(side));
    return FACTORY.createPolygon(
        new Coordinate[] {
          first,
          coordinate(b.minus(side)),
          coordinate(a.minus(side)),
          coordinate(a.plus(side)),
          first.copy()
        });
  }

  /** Returns the band of {@code widthMm} along each of {@code paths}, all together, ends round. */
  public static Geometry rounded(List<List<PointMm>> paths, double widthMm) {
    return ROUNDED.of(new Bands(List.copyOf(paths), widthMm));
  }

  /** Returns the box round {@link #rounded}. */
  static Envelope boxMm(List<List<PointMm>> paths, double widthMm) {
    Envelope box = new Envelope();
    paths.forEach(path -> path.forEach(p -> box.expandToInclude(p.x(), p.z())));
    box.expandBy(widthMm / 2);
    return box;
  }

  private static Geometry makeRounded(Bands bands) {
    LineString[] lines = bands.lines().stream().map(Curves::line).toArray(LineString[]::new);
    return FACTORY.createMultiLineString(lines).buffer(bands.widthMm() / 2, HALF_END_STEPS / 2);
  }

  /** Returns the band of {@code widthMm} from a to b with round ends. */
  public static Geometry bar(PointMm a, PointMm b, double widthMm) {
    if (a.distance(b) < 1e-9) {
      return disc(a, widthMm / 2);
    }
    if (!(widthMm > 0)) {
      return FACTORY.createPolygon();
    }
    double along = b.minus(a).angleRad();
    Coordinate[] ring = new Coordinate[2 * (HALF_END_STEPS + 1) + 1];
    turn(ring, 0, b, widthMm / 2, along + Math.PI / 2, HALF_END_STEPS + 1, HALF_END_STEPS);
    turn(
        ring,
        HALF_END_STEPS + 1,
        a,
        widthMm / 2,
        along - Math.PI / 2,
        HALF_END_STEPS + 1,
        HALF_END_STEPS);
    ring[ring.length - 1] = ring[0].copy();
    return FACTORY.createPolygon(ring);
  }

  /** Returns the disc about {@code centre}; its polygon has the disc's own area to 0.02 %. */
  public static Geometry disc(PointMm centre, double radiusMm) {
    if (!(radiusMm > 0)) {
      return FACTORY.createPolygon();
    }
    Coordinate[] ring = new Coordinate[2 * HALF_DISC_STEPS + 1];
    turn(ring, 0, centre, radiusMm, 0, 2 * HALF_DISC_STEPS, HALF_DISC_STEPS);
    ring[ring.length - 1] = ring[0].copy();
    return FACTORY.createPolygon(ring);
  }

  /** Returns the ring about {@code centre} between two radii; all of the disc if one is 0. */
  public static Geometry ring(PointMm centre, double radiusMm, double insideMm) {
    Geometry outer = disc(centre, radiusMm);
    return insideMm > 0 && insideMm < radiusMm
        ? FACTORY.createPolygon(
            ((Polygon) outer).getExteriorRing(),
            new LinearRing[] {((Polygon) disc(centre, insideMm)).getExteriorRing()})
        : outer;
  }

  /** Puts {@code count} points of an arc into {@code ring}, clockwise from {@code startRad}. */
  private static void turn(
      Coordinate[] ring,
      int at,
      PointMm centre,
      double radiusMm,
      double startRad,
      int count,
      int halfTurnSteps) {
    for (int i = 0; i < count; i++) {
      double angle = startRad - Math.PI * i / halfTurnSteps;
      ring[at + i] =
          new Coordinate(
              centre.x() + radiusMm * Math.cos(angle), centre.z() + radiusMm * Math.sin(angle));
    }
  }
}
