package org.longlow.constraints.law;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A body of rules whose figures are listed here.
 *
 * @param id the short name used in files and in finding ids
 * @param words the name for reports
 */
public record RuleSet(String id, String words) {

  /** Returns the names of several for reports. */
  public static String words(List<RuleSet> sets) {
    return sets.stream().map(RuleSet::words).collect(Collectors.joining(", "));
  }
}
