package org.longlow.constraints.layout;

import java.util.List;

/**
 * How the breadth of an outlined body varies.
 *
 * @param stations in the order of their x; none where it is as broad all along, or where the
 *     vertices of the outline say it
 * @param profile what it looks like cut across
 */
public record Breadth(List<Station> stations, Profile profile) {

  /** As broad everywhere. */
  public static final Breadth EVEN = new Breadth(List.of(), Profile.FLAT);

  public Breadth {
    stations = List.copyOf(stations);
  }

  /** Returns whether a body with this outline is as broad everywhere. */
  public boolean isEven(Outline outline) {
    return stations.isEmpty()
        && profile.equals(Profile.FLAT)
        && outline.vertices().stream().allMatch(v -> v.reach().isEmpty());
  }
}
