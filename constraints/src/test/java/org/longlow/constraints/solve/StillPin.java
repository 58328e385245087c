package org.longlow.constraints.solve;

import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;

/** A pin with a name that does not move. */
public final class StillPin {

  private StillPin() {}

  public static Pt in(Problem.Builder builder, String name, double xMm, double zMm) {
    return Pt.variables(builder.fixed(name + ".x", xMm), builder.fixed(name + ".z", zMm));
  }
}
