package org.longlow.constraints.law;

import java.util.Set;

/**
 * One row of a lamp table.
 *
 * @param rules whose row
 * @param kind which lamp
 * @param least fewest of them, 0 if optional
 * @param most most of them
 * @param colours allowed colours
 * @param placement where across the machine
 * @param height height range; null if none is set
 * @param source the rule, with how well count, colour and placement are backed
 */
record LampRow(
    RuleSet rules,
    LampKind kind,
    int least,
    int most,
    Set<LampColour> colours,
    Placement placement,
    Height height,
    String source) {

  /** Where across the machine a kind of lamp must be. */
  enum Placement {
    ANYWHERE,
    /** On the centreline, or in pairs symmetric about it. */
    CENTRELINE_OR_PAIR,
    /** The same number on each side, at the same height. */
    EACH_SIDE
  }

  /** What of a lamp its height counts to. */
  enum Datum {
    CENTRE,
    /** Lower edge of the lit area for a least height, upper edge for a greatest. */
    EDGE
  }

  /**
   * A height range.
   *
   * @param leastMm mm above the road, 0 if none
   * @param mostMm mm above the road, infinite if none
   */
  record Height(double leastMm, double mostMm, Datum datum, String source) {}

  String id(String aspect) {
    return "law." + rules.id() + "." + kind.id() + "." + aspect;
  }
}
