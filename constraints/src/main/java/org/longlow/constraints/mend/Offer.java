package org.longlow.constraints.mend;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;

/**
 * A single change that mends a finding, tried on the whole machine.
 *
 * @param change in words, such as {@code raise seatHeight by 12 mm to 640 mm}
 * @param rewrite what is typed for it
 * @param size how large a change it is; 1 is much, as 10 mm or 5 degrees are
 * @param care what is said of the finding where it still needs care for another reason, or empty
 * @param costs what comes out worse
 * @param thing what is changed; two offers of one thing are two ways to change it
 */
public record Offer(
    String change, Rewrite rewrite, double size, String care, List<Cost> costs, String thing) {

  /**
   * Without new failures first, asking less of the machine last of those, then without new care,
   * then the smallest.
   */
  static final Comparator<Offer> ORDER =
      Comparator.comparingLong(Offer::failing)
          .thenComparing(Offer::asksLess)
          .thenComparing(o -> !o.costs.isEmpty())
          .thenComparingDouble(Offer::size);

  public Offer {
    costs = List.copyOf(costs);
  }

  /** Returns the care that a mended finding still needs, in words. */
  static String care(Finding after) {
    return after.verdict() == Verdict.CAUTION ? "it still needs care" : "";
  }

  /** Returns whether it changes not the machine but what is asked of it. */
  boolean asksLess() {
    return rewrite.about().group().equals(Dials.DEMANDS);
  }

  /** Returns how many findings fail by it that did not, or miss by more. */
  long failing() {
    return costs.stream().filter(Cost::fails).count();
  }

  /** Returns what it costs and what is left, in words; empty for nothing. */
  public String but() {
    String all = costs.stream().map(Cost::says).collect(Collectors.joining("; "));
    return all.isEmpty() || care.isEmpty() ? all + care : care + "; " + all;
  }

  /** Returns all of it in words. */
  public String says() {
    return but().isEmpty() ? change : change + ", but " + but();
  }
}
