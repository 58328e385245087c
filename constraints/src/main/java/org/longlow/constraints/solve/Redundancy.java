package org.longlow.constraints.solve;

import java.util.List;

/**
 * A tie that says nothing new.
 *
 * @param tie its name; of several that say the same, the one that comes last in the problem
 * @param impliedBy names of the other ties from which it follows, in the order of the problem
 * @param wholly false when only some of its relations follow from the others
 */
public record Redundancy(String tie, List<String> impliedBy, boolean wholly) {
  public Redundancy {
    impliedBy = List.copyOf(impliedBy);
  }
}
