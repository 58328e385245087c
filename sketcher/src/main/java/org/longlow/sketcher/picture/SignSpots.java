package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.longlow.rider.geom.PointMm;

/**
 * Finds places for signs, each beside the point it is about and joined to it by a straight line, so
 * that no sign lies on another, on words, or on a point that a sign is about, and no line runs
 * through another sign.
 */
final class SignSpots {

  /** Rings of places tried round a point, from the inside out. */
  private static final int RINGS = 24;

  private static final int SPOTS_A_RING = 8;

  /**
   * A sign to be placed.
   *
   * @param at the point it is about
   * @param box what it covers when its middle is at the origin
   */
  record Sign(PointMm at, Envelope box) {

    private Envelope boxAt(PointMm middle) {
      return new Envelope(
          box.getMinX() + middle.x(),
          box.getMaxX() + middle.x(),
          box.getMinY() + middle.z(),
          box.getMaxY() + middle.z());
    }
  }

  private final List<Envelope> words;
  private final List<Sign> signs;
  private final List<Envelope> placed = new ArrayList<>();
  private final List<LineSegment> lines = new ArrayList<>();

  private SignSpots(List<Sign> signs, List<Envelope> words) {
    this.signs = signs;
    this.words = words;
  }

  /**
   * Returns the middle of each sign, in their order. Where there is no room within 24 steps a sign
   * lies where it covers nothing but lines, or at worst on the nearest place.
   *
   * @param words boxes that no sign may cover
   * @param step from a point to the first ring of places, and from ring to ring
   */
  static List<PointMm> places(List<Sign> signs, List<Envelope> words, double step) {
    SignSpots spread = new SignSpots(signs, words);
    return signs.stream().map(sign -> spread.place(sign, step)).toList();
  }

  private PointMm place(Sign sign, double step) {
    PointMm nearest = null;
    PointMm uncovering = null;
    for (int ring = 1; ring <= RINGS; ring++) {
      int spots = SPOTS_A_RING * ring;
      for (int k = 0; k < spots; k++) {
        double angle = Math.PI / 4 + 2 * Math.PI * k / spots;
        PointMm middle = sign.at().plus(PointMm.unit(angle).times(step * ring));
        nearest = nearest == null ? middle : nearest;
        if (!coversNothing(sign.boxAt(middle))) {
          continue;
        }
        if (linesAreFree(sign, middle)) {
          return put(sign, middle);
        }
        uncovering = uncovering == null ? middle : uncovering;
      }
    }
    return put(sign, uncovering == null ? nearest : uncovering);
  }

  private PointMm put(Sign sign, PointMm middle) {
    placed.add(sign.boxAt(middle));
    lines.add(line(sign, middle));
    return middle;
  }

  private boolean coversNothing(Envelope box) {
    return Labels.free(box, placed)
        && Labels.free(box, words)
        && signs.stream().noneMatch(s -> box.intersects(s.at().x(), s.at().z()));
  }

  private boolean linesAreFree(Sign sign, PointMm middle) {
    LineSegment own = line(sign, middle);
    Envelope box = sign.boxAt(middle);
    return placed.stream().noneMatch(p -> crosses(own, p))
        && lines.stream().noneMatch(l -> crosses(l, box));
  }

  private static LineSegment line(Sign sign, PointMm middle) {
    return new LineSegment(sign.at().x(), sign.at().z(), middle.x(), middle.z());
  }

  /** Returns whether a line runs through a box. */
  static boolean crosses(LineSegment line, Envelope box) {
    if (!box.intersects(line.p0, line.p1)) {
      return false;
    }
    Coordinate c00 = new Coordinate(box.getMinX(), box.getMinY());
    Coordinate c11 = new Coordinate(box.getMaxX(), box.getMaxY());
    Coordinate c01 = new Coordinate(box.getMinX(), box.getMaxY());
    Coordinate c10 = new Coordinate(box.getMaxX(), box.getMinY());
    return box.intersects(line.p0)
        || box.intersects(line.p1)
        || line.intersection(new LineSegment(c00, c11)) != null
        || line.intersection(new LineSegment(c01, c10)) != null;
  }
}
