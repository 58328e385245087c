package org.longlow.constraints.law;

import java.util.List;
import java.util.stream.Collectors;

/** A body of rules whose figures are listed here. */
public enum RuleSet {
  US_FEDERAL("us", "US federal"),
  UN_R53("un-r53", "UN R53"),
  UK("uk", "UK");

  private final String id;
  private final String words;

  RuleSet(String id, String words) {
    this.id = id;
    this.words = words;
  }

  /** Returns the short name used in files and in finding ids. */
  public String id() {
    return id;
  }

  /** Returns the name for reports. */
  public String words() {
    return words;
  }

  /** Returns the names of several for reports. */
  public static String words(List<RuleSet> sets) {
    return sets.stream().map(RuleSet::words).collect(Collectors.joining(", "));
  }
}
