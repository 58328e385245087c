package org.longlow.sketcher.app;

/** Hears how far a longer piece of work is, and may stop it. */
@FunctionalInterface
public interface StepWatch {

  /** Never stops. */
  StepWatch NONE = (what, done, of) -> true;

  /**
   * Tells that a step begins.
   *
   * @param what in a few words
   * @param done steps done before it
   * @param of steps in all
   * @return false to stop; what is finished by then stays
   */
  boolean step(String what, int done, int of);
}
