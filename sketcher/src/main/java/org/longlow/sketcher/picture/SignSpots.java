package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.locationtech.jts.algorithm.RectangleLineIntersector;
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

  /** The places of all rings about the origin, in the order they are tried, in steps. */
  private static final List<PointMm> PLACES = places();

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

  /** What no sign may cover: words, the points that signs are about, signs already placed. */
  private final List<Envelope> taken = new ArrayList<>();

  private final List<Envelope> placed = new ArrayList<>();
  private final List<LineSegment> lines = new ArrayList<>();
  private final Map<Sign, Integer> triedClear = new HashMap<>();
  private final Map<Sign, Integer> triedBare = new HashMap<>();

  private SignSpots(List<Sign> signs, List<Envelope> words) {
    taken.addAll(words);
    signs.forEach(s -> taken.add(new Envelope(new Coordinate(s.at().x(), s.at().z()))));
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

  private static List<PointMm> places() {
    List<PointMm> out = new ArrayList<>();
    for (int ring = 1; ring <= RINGS; ring++) {
      int spots = SPOTS_A_RING * ring;
      for (int k = 0; k < spots; k++) {
        out.add(PointMm.unit(Math.PI / 4 + 2 * Math.PI * k / spots).times(ring));
      }
    }
    return List.copyOf(out);
  }

  private PointMm place(Sign sign, double step) {
    List<Envelope> within = within(sign, step * RINGS);
    Predicate<PointMm> bare = middle -> Labels.free(sign.boxAt(middle), within);
    return next(sign, step, triedClear, bare.and(middle -> linesAreFree(sign, middle)))
        .or(() -> next(sign, step, triedBare, bare))
        .map(middle -> put(sign, middle))
        .orElseGet(() -> put(sign, middle(sign, step, 0)));
  }

  /** A place that was taken stays taken, so a sign alike goes on where the last one ended. */
  private static Optional<PointMm> next(
      Sign sign, double step, Map<Sign, Integer> tried, Predicate<PointMm> free) {
    for (int i = tried.getOrDefault(sign, 0); i < PLACES.size(); i++) {
      PointMm middle = middle(sign, step, i);
      if (free.test(middle)) {
        tried.put(sign, i);
        return Optional.of(middle);
      }
    }
    tried.put(sign, PLACES.size());
    return Optional.empty();
  }

  private static PointMm middle(Sign sign, double step, int place) {
    return sign.at().plus(PLACES.get(place).times(step));
  }

  /** Returns what a sign can come to lie on. */
  private List<Envelope> within(Sign sign, double far) {
    Envelope reach = sign.boxAt(sign.at());
    reach.expandBy(far);
    return taken.stream().filter(reach::intersects).toList();
  }

  private PointMm put(Sign sign, PointMm middle) {
    taken.add(sign.boxAt(middle));
    placed.add(sign.boxAt(middle));
    lines.add(line(sign, middle));
    return middle;
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
    return box.intersects(line.p0, line.p1)
        && new RectangleLineIntersector(box).intersects(line.p0, line.p1);
  }
}
