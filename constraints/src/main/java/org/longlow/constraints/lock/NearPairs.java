package org.longlow.constraints.lock;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The pairs of pieces of two bodies that may come near each other while one turns about an axis, or
 * each about its own by as much. Rooms are held against each other first, of whole bodies, then of
 * their lumps; what is far off is not cut into pieces at all. For one thread.
 */
final class NearPairs {

  /** Outlines of round things lie inside of them by less than this, mm. */
  static final double ROUND_MM = 1;

  private final SteeringAxis axis;
  private final SteeringAxis other;
  private final Screen screen;

  /**
   * @param other the axis that the other body turns about, or null where it stays
   * @param screen where it stays, tells what is surely not near
   */
  NearPairs(SteeringAxis axis, SteeringAxis other, Screen screen) {
    this.axis = axis;
    this.other = other;
    this.screen = screen;
  }

  /** Returns the pairs of pieces that may come nearer than a distance between two turns. */
  List<NearPair> of(SpaceBody body, SpaceBody past, double from, double to, double mm) {
    Around whole = body.around(axis);
    Around wholePast = past.around(other == null ? axis : other);
    if (whole == null || wholePast == null) {
      return List.of();
    }
    return other == null
        ? pastStill(body, whole, past, wholePast, from, to, mm)
        : pastTurning(body, whole, past, wholePast, from, to, mm);
  }

  private List<NearPair> pastTurning(
      SpaceBody body,
      Around whole,
      SpaceBody past,
      Around wholePast,
      double from,
      double to,
      double mm) {
    List<NearPair> pairs = new ArrayList<>();
    if (whole.swept(axis, from, to).apartMm(wholePast.swept(other, from, to)) >= mm + ROUND_MM) {
      return pairs;
    }
    List<Lump.Roomed> others = pieces(past.lumps(), Set.copyOf(past.lumps()), other);
    List<Turned> turned = others.stream().map(p -> new Turned(p.body(), other)).toList();
    List<Around.Swept> boxes = others.stream().map(p -> p.room().swept(other, from, to)).toList();
    for (Lump.Roomed a : pieces(body.lumps(), Set.copyOf(body.lumps()), axis)) {
      Turned one = new Turned(a.body(), axis);
      Around.Swept box = a.room().swept(axis, from, to);
      for (int j = 0; j < others.size(); j++) {
        Lump.Roomed b = others.get(j);
        if (box.apartMm(boxes.get(j)) < mm) {
          double reach = a.room().farMm() + b.room().farMm();
          pairs.add(new NearPair(one, a.middle(), turned.get(j), b.middle(), from, to, reach));
        }
      }
    }
    return pairs;
  }

  private List<NearPair> pastStill(
      SpaceBody body,
      Around whole,
      SpaceBody past,
      Around wholePast,
      double from,
      double to,
      double mm) {
    double round = mm + ROUND_MM;
    if (window(whole, wholePast, from, to, round) == null) {
      return List.of();
    }
    Set<Lump> near = new HashSet<>();
    for (Lump a : body.lumps()) {
      for (Lump b : past.lumps()) {
        if (mayBeNear(a, b, from, to, mm)) {
          near.add(a);
          near.add(b);
        }
      }
    }
    if (near.isEmpty()) {
      return List.of();
    }
    // what of one body no place of the other comes near is near to no piece of it
    List<Lump.Roomed> ones = pieces(body.lumps(), near, axis);
    ones.removeIf(a -> window(a.room(), wholePast, from, to, round) == null);
    List<Lump.Roomed> others = pieces(past.lumps(), near, axis);
    others.removeIf(b -> window(whole, b.room(), from, to, round) == null);
    return pairs(ones, others, from, to, mm);
  }

  /** Returns whether a lump may come near another, by their rooms and by hulls that hold them. */
  private boolean mayBeNear(Lump a, Lump b, double from, double to, double mm) {
    if (window(a.around(axis), b.around(axis), from, to, mm + ROUND_MM) == null) {
      return false;
    }
    return a.isCut() && b.isCut() // then its pieces are looked at one by one
        || pairs(a.hulls(axis), b.hulls(axis), from, to, mm).stream()
            .anyMatch(pair -> !screen.keepsMore(pair, mm, pair.from(), pair.to()));
  }

  private List<NearPair> pairs(
      List<Lump.Roomed> ones, List<Lump.Roomed> others, double from, double to, double mm) {
    List<NearPair> pairs = new ArrayList<>();
    for (Lump.Roomed a : ones) {
      Turned one = new Turned(a.body(), axis);
      for (Lump.Roomed b : others) {
        double[] turns = window(a.room(), b.room(), from, to, mm);
        if (turns != null) {
          // only what is as near to the axis as the other, and the distance, can be that near
          double reach = Math.min(a.room().farMm(), b.room().farMm() + mm);
          pairs.add(new NearPair(one, a.middle(), b.body(), b.middle(), turns[0], turns[1], reach));
        }
      }
    }
    return pairs;
  }

  private static List<Lump.Roomed> pieces(List<Lump> lumps, Set<Lump> near, SteeringAxis about) {
    List<Lump.Roomed> pieces = new ArrayList<>();
    for (Lump lump : lumps) {
      if (near.contains(lump)) {
        pieces.addAll(lump.pieces(about));
      }
    }
    return pieces;
  }

  /** Returns the turns at which two rooms are nearer than a distance, or null if there are none. */
  private static double[] window(Around a, Around b, double from, double to, double mm) {
    double within = a == null || b == null ? Double.NaN : a.withinRad(b, mm);
    if (Double.isNaN(within)) {
      return null;
    }
    if (within >= Math.PI) {
      return new double[] {from, to};
    }
    double off = a.offRad(b);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int round = -1; round <= 1; round++) {
      double low = Math.max(from, off + 2 * Math.PI * round - within);
      double high = Math.min(to, off + 2 * Math.PI * round + within);
      if (low <= high) {
        least = Math.min(least, low);
        most = Math.max(most, high);
      }
    }
    return least <= most ? new double[] {least, most} : null;
  }
}
