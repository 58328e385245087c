package org.longlow.constraints.mend;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;

/**
 * How a finding comes out on a changed machine.
 *
 * @param holds whether the machine can be put together at all
 * @param met whether the finding is mended
 * @param margin how far it is inside its limit, NaN where that is unknown
 */
record Outcome(boolean holds, boolean met, double margin) {

  /** The machine cannot be so. */
  static final Outcome CANNOT_BE = new Outcome(false, false, Double.NaN);

  /** Reads what has become of {@code before} among the findings of a machine that holds. */
  static Outcome of(Finding before, List<Finding> findings) {
    return among(findings, before.id())
        .map(f -> new Outcome(true, mends(before, f), f.margin()))
        // what came too close is no longer listed when it is far away
        .orElseGet(
            () ->
                new Outcome(
                    true,
                    before.group() == FindingGroup.GAPS || before.group() == FindingGroup.OPENING,
                    Double.NaN));
  }

  /** Returns the worst of the findings of one id. */
  static Optional<Finding> among(List<Finding> findings, String id) {
    return findings.stream().filter(f -> f.id().equals(id)).min(WorstFirst.ORDER);
  }

  /**
   * It passes; or it keeps to its limit, which it did not, and needs care for another reason, such
   * as a law text from memory.
   */
  private static boolean mends(Finding before, Finding after) {
    if (after.verdict() == Verdict.PASS) {
      return true;
    }
    boolean wasOutside = before.verdict() == Verdict.FAIL || before.margin() < 0;
    return after.verdict() == Verdict.CAUTION && wasOutside && after.figures().inside();
  }
}
