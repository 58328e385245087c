package org.longlow.constraints.built;

import java.util.List;
import org.longlow.constraints.formula.Dim;

/**
 * A tie or limit of the plan that does not hold on the machine as built.
 *
 * @param group ties or limits
 * @param name the user's
 * @param what it speaks of, such as {@code ahead: rearAxle, frontAxle}
 * @param asked what it asks, in internal units; NaN where that is no one figure
 * @param built what it is instead; NaN where that is no one figure
 * @param dim of both
 * @param measured measures that were measured and that it says: then what was measured contradicts
 *     itself; empty where it is the plan that does not hold
 */
public record LetGo(
    String group,
    String name,
    String what,
    double asked,
    double built,
    Dim dim,
    List<String> measured) {

  public LetGo {
    measured = List.copyOf(measured);
  }

  /** Returns whether it is a limit, which the machine then does not keep. */
  public boolean isLimit() {
    return group.equals("limits");
  }

  /** Returns whether it can be told by how much it is missed. */
  public boolean isFigure() {
    return Double.isFinite(asked) && Double.isFinite(built);
  }
}
