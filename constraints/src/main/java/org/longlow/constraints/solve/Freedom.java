package org.longlow.constraints.solve;

import java.util.Map;
import java.util.TreeMap;

/**
 * One direction in which the layout can still move.
 *
 * @param lead the variable that the others follow; its move is 1
 * @param moves each variable that moves, by name, with its speed relative to {@code lead} (scaled
 *     variables turned back to their own units)
 * @param lasting false when the motion exists to first order only, as at a dead point, and a finite
 *     motion was not found
 */
public record Freedom(String lead, Map<String, Double> moves, boolean lasting) {
  public Freedom {
    moves = java.util.Collections.unmodifiableMap(new TreeMap<>(moves));
  }
}
