package org.longlow.sketcher.cli;

import org.longlow.constraints.study.Study;

/** The exit codes; scripts depend on them. */
public final class ExitCodes {

  public static final int PASS = 0;
  static final int INTERNAL = 1;
  static final int BAD_INPUT = 2;
  public static final int FINDING_FAILS = 3;
  static final int CONTRADICTION = 4;

  /** Returned by the command that opens the window: the program goes on. */
  public static final int STAY_OPEN = -1;

  private ExitCodes() {}

  /** Returns the code that a study ends a command with. */
  static int of(Study study) {
    if (study.contradicts()) {
      return CONTRADICTION;
    }
    return study.failing() > 0 ? FINDING_FAILS : PASS;
  }
}
