package org.longlow.constraints.machine;

/** How a section of the bodywork moves between shut and open. */
public interface SectionMotion {

  /**
   * Returns the motion from shut to an opening.
   *
   * @param opening 0 shut to 1 open
   * @throws IllegalArgumentException outside that range, or where the mechanism cannot go
   */
  RigidMotion at(double opening);
}
