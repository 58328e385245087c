package org.longlow.constraints.law;

import java.util.List;
import java.util.stream.Stream;

/** Every row of every body of rules. */
public final class LawTables {

  static final String ANGLES =
      "angles of visibility, light output and approval marks: none of them is judged here";

  private static final List<LampRow> LAMPS = join(UsRules.LAMPS, UnRules.LAMPS, UkRules.LAMPS);

  private static final List<SpacingRow> SPACING =
      join(UsRules.SPACING, UnRules.SPACING, UkRules.SPACING);

  private static final List<NotCovered> NOT_COVERED =
      join(UsRules.NOT_COVERED, UnRules.NOT_COVERED, UkRules.NOT_COVERED);

  private LawTables() {}

  /** Returns what is asked of each kind of lamp. */
  public static List<LampRow> lamps() {
    return LAMPS;
  }

  /** Returns the distances asked between lamps. */
  public static List<SpacingRow> spacing() {
    return SPACING;
  }

  /** Returns what is asked and cannot be answered. */
  public static List<NotCovered> notCovered() {
    return NOT_COVERED;
  }

  /** Returns limits of single states of the US that are tighter than the federal ones. */
  public static List<StateLimit> states() {
    return UsRules.STATES;
  }

  private static <T> List<T> join(List<T> a, List<T> b, List<T> c) {
    return Stream.of(a, b, c).flatMap(List::stream).toList();
  }
}
