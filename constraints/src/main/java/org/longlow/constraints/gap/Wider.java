package org.longlow.constraints.gap;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.locationtech.jts.operation.buffer.BufferOp;

/** Outlines wider by a distance all round, each made once. */
final class Wider {

  /** Chords of a quarter circle. */
  private static final int QUADRANT = 16;

  /** Radius of the polygon round a circle, as a share of the circle's: 1/cos(π/64). */
  static final double ROUND_SHARE = 1.0012060;

  private final Map<Edges, Map<Double, Edges>> known = new IdentityHashMap<>();

  /** Returns an outline wider by at least a distance, by {@link #ROUND_SHARE} of it at most. */
  Edges of(Edges edges, double byMm) {
    return known
        .computeIfAbsent(edges, e -> new HashMap<>())
        .computeIfAbsent(byMm, mm -> wider(edges, mm));
  }

  private static Edges wider(Edges edges, double byMm) {
    return byMm <= 0
        ? edges
        : Edges.of(BufferOp.bufferOp(edges.outline(), byMm * ROUND_SHARE, QUADRANT));
  }
}
