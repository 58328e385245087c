package org.longlow.constraints.solve;

import java.util.List;

/**
 * Ties and limits that cannot all hold, while without any one of them the rest can: each was left
 * out and the rest solved.
 *
 * @param names what the user calls them, limits after ties; at least one
 * @param missed the one of them that gives way in {@code missMm}: a limit where there is one
 * @param missMm by how much that one is missed where the others hold, as little as was found, mm
 *     (for angles the arc at a stated radius), &gt; 0
 */
public record Conflict(List<String> names, String missed, double missMm) {
  public Conflict {
    names = List.copyOf(names);
    if (names.isEmpty() || !names.contains(missed) || !(missMm > 0)) {
      throw new IllegalArgumentException(
          "a conflict has members, and one of them is missed by more than 0 mm");
    }
  }
}
