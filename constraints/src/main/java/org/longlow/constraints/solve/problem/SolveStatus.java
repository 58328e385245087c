package org.longlow.constraints.solve.problem;

/** How a solve ended. */
public enum SolveStatus {
  /**
   * Every tie and every limit holds, and the position is the nearest (or most wished) one to first
   * order.
   */
  SOLVED,
  /**
   * Ties and limits hold, but the nearest position was not reached within the iterations allowed.
   */
  SOLVED_ROUGHLY,
  /** The ties cannot all hold near the start; positions leave the smallest sum of squares found. */
  CONTRADICTS,
  /**
   * The ties hold, but not all limits can; positions break the limits by the smallest sum of
   * squares found.
   */
  LIMIT_FAILS,
  /** The work allowed was used up before it was clear whether ties and limits can hold. */
  NOT_DECIDED;

  /** Whether ties and limits hold at the positions given. */
  public boolean holds() {
    return this == SOLVED || this == SOLVED_ROUGHLY;
  }
}
