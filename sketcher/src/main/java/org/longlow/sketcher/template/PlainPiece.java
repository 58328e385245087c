package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.geom.PointMm;

/**
 * A piece whose line to cut is a plain rectangle or disc, so that figures say all that a saw needs.
 *
 * @param title which piece it is
 * @param round whether it is a disc, of diameter {@code longMm}
 * @param longMm its longer side, mm
 * @param wideMm its shorter side, mm
 * @param pins where holes are drilled or other parts meet it
 * @param lines what else its template says
 */
public record PlainPiece(
    String title,
    boolean round,
    double longMm,
    double wideMm,
    List<Station> pins,
    List<String> lines) {

  /** Corners off a true rectangle, and points off a true circle, by less are on it, mm. */
  private static final double TRUE_MM = 0.02;

  /** A circle is drawn by at least this many sides. */
  private static final int LEAST_SIDES = 24;

  public PlainPiece {
    pins = List.copyOf(pins);
    lines = List.copyOf(lines);
  }

  /** Returns what its template says of it alone. */
  public List<String> ownLines() {
    return lines.stream().filter(l -> !TemplateWords.isGeneral(l)).map(String::strip).toList();
  }

  /** A pin in the axes of the machine. */
  record Pin(String name, PointMm at) {}

  /**
   * Where a pin is on the piece.
   *
   * @param alongMm from the first end of a tube, else from the edge that lies away from {@code
   *     alongWord}, mm
   * @param acrossMm off the middle of a tube or disc, else from the edge that lies away from {@code
   *     acrossWord}, mm
   * @param alongWord where {@code alongMm} leads
   * @param acrossWord where {@code acrossMm} leads
   */
  public record Station(
      String pin, double alongMm, double acrossMm, String alongWord, String acrossWord) {}

  /**
   * Returns a piece in figures; empty if its line is none that figures say.
   *
   * @param outline the line to cut
   * @param axis middle line of a tube from its first end on, else empty
   */
  static Optional<PlainPiece> of(
      Geometry outline, List<PointMm> axis, List<Pin> pins, TemplateText text) {
    if (!(outline instanceof Polygon p) || p.getNumInteriorRing() > 0 || p.isEmpty()) {
      return Optional.empty();
    }
    List<PointMm> corners = corners(p);
    if (corners.size() == 4) {
      return rectangle(corners, axis, pins, text);
    }
    return corners.size() >= LEAST_SIDES ? disc(corners, pins, text) : Optional.empty();
  }

  /** Corners of the ring, without points on straight sides. */
  private static List<PointMm> corners(Polygon p) {
    Coordinate[] c = p.getExteriorRing().getCoordinates();
    List<PointMm> all = new ArrayList<>();
    for (int i = 0; i + 1 < c.length; i++) {
      all.add(new PointMm(c[i].x, c[i].y));
    }
    List<PointMm> out = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      PointMm before = out.isEmpty() ? all.get(all.size() - 1) : out.get(out.size() - 1);
      PointMm next = all.get((i + 1) % all.size());
      PointMm side = next.minus(before);
      double off = Math.abs(all.get(i).minus(before).cross(side)) / Math.max(1e-9, side.length());
      if (off > 1e-6) {
        out.add(all.get(i));
      }
    }
    return out;
  }

  private static Optional<PlainPiece> rectangle(
      List<PointMm> c, List<PointMm> axis, List<Pin> pins, TemplateText text) {
    PointMm side = c.get(1).minus(c.get(0));
    PointMm other = c.get(3).minus(c.get(0));
    double a = side.length();
    double b = other.length();
    boolean square =
        Math.abs(side.dot(other)) / Math.max(a, b) < TRUE_MM
            && c.get(2).distance(c.get(1).plus(other)) < TRUE_MM;
    if (!square || a < TRUE_MM || b < TRUE_MM) {
      return Optional.empty();
    }
    List<Station> stations =
        axis.isEmpty()
            ? fromCorner(c, side.times(1 / a), other.times(1 / b), pins, text)
            : onAxis(axis, pins, text);
    return Optional.of(
        new PlainPiece(
            text.title(), false, Math.max(a, b), Math.min(a, b), stations, text.lines()));
  }

  /** Along the side that runs rather to the right, and along the one that runs rather up. */
  private static List<Station> fromCorner(
      List<PointMm> corners, PointMm u, PointMm v, List<Pin> pins, TemplateText text) {
    PointMm right = Math.abs(u.x()) >= Math.abs(v.x()) ? u : v;
    PointMm up = right == u ? v : u;
    PointMm ahead = right.x() < 0 ? right.times(-1) : right;
    PointMm above = up.z() < 0 ? up.times(-1) : up;
    double x0 = corners.stream().mapToDouble(ahead::dot).min().orElseThrow();
    double z0 = corners.stream().mapToDouble(above::dot).min().orElseThrow();
    return pins.stream()
        .map(
            p ->
                new Station(
                    p.name(),
                    ahead.dot(p.at()) - x0,
                    above.dot(p.at()) - z0,
                    text.rightWord(),
                    text.upWord()))
        .toList();
  }

  private static List<Station> onAxis(List<PointMm> axis, List<Pin> pins, TemplateText text) {
    PointMm from = axis.get(0);
    PointMm way = axis.get(axis.size() - 1).minus(from);
    PointMm along = way.times(1 / way.length());
    return pins.stream()
        .map(
            p ->
                new Station(
                    p.name(),
                    along.dot(p.at().minus(from)),
                    along.cross(p.at().minus(from)),
                    "along",
                    "off the middle"))
        .toList();
  }

  private static Optional<PlainPiece> disc(
      List<PointMm> corners, List<Pin> pins, TemplateText text) {
    double x = corners.stream().mapToDouble(PointMm::x).average().orElseThrow();
    double z = corners.stream().mapToDouble(PointMm::z).average().orElseThrow();
    PointMm middle = new PointMm(x, z);
    double r = corners.stream().mapToDouble(middle::distance).average().orElseThrow();
    if (corners.stream().anyMatch(c -> Math.abs(middle.distance(c) - r) > TRUE_MM)) {
      return Optional.empty();
    }
    List<Station> stations =
        pins.stream()
            .map(
                p ->
                    new Station(
                        p.name(), p.at().x() - x, p.at().z() - z, text.rightWord(), text.upWord()))
            .toList();
    return Optional.of(new PlainPiece(text.title(), true, 2 * r, 2 * r, stations, text.lines()));
  }
}
