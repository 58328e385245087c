package org.longlow.constraints.solve;

/**
 * A demand that must hold on one side: the gap is zero or more.
 *
 * @param name what the user calls it
 * @param gap room left, mm; negative means broken by that much
 */
public record Limit(String name, Relation gap) {
  public Limit {
    if (name == null || name.isBlank()) {
      throw new IllegalArgumentException("a limit needs a name");
    }
    if (gap == null) {
      throw new IllegalArgumentException("limit '" + name + "' needs a gap");
    }
  }
}
