package org.longlow.constraints.law;

import java.util.Optional;
import org.longlow.constraints.layout.Part.LampKind;

/**
 * A distance between lamps, or from a lamp to the end of the machine, that one body of rules asks.
 *
 * @param rules whose row
 * @param name the rule's name in ids
 * @param measure what is measured
 * @param kind the lamps it is about
 * @param other the lamps it is measured to, where there are such
 * @param limitMm the limit, mm
 * @param depends true if a breach may be allowed, on what a layout does not say (see the source)
 * @param source the rule
 */
public record SpacingRow(
    RuleSet rules,
    String name,
    Measure measure,
    LampKind kind,
    Optional<LampKind> other,
    double limitMm,
    boolean depends,
    LawSource source) {

  /** What is measured. */
  public enum Measure {
    /** At least so far between the centres of left and right. */
    CENTRES_APART,
    /** At least so far between the inner edges of left and right. */
    EDGES_APART,
    /** At most so far between the edges of two that stand side by side. */
    PAIR_GAP,
    /** At least so far between the lit areas, seen along the machine. */
    GAP,
    /** As {@link #GAP}, for a red lamp beside a single one on the centreline. */
    RED_GAP_TO_SINGLE,
    /** At least so far outside the other's outer edge. */
    OUTSIDE,
    /** At most so far ahead of the machine's rearmost point. */
    AHEAD_OF_REARMOST,
    /** Upper edge at most so far above the other's. */
    NOT_ABOVE;

    /** Returns whether the limit is a least one. */
    public boolean least() {
      return this != PAIR_GAP && this != AHEAD_OF_REARMOST && this != NOT_ABOVE;
    }
  }
}
