package org.longlow.constraints.law;

/** A body of rules whose figures are listed here. */
public enum RuleSet {
  US_FEDERAL("us", "United States, 49 CFR 571.108"),
  UN_R53("un-r53", "UN Regulation No 53, category L3"),
  UK("uk", "United Kingdom, front lamps only: the rest was not read");

  private final String id;
  private final String title;

  RuleSet(String id, String title) {
    this.id = id;
    this.title = title;
  }

  /** Returns the short name used in files and in finding ids. */
  public String id() {
    return id;
  }

  /** Returns the name for reports. */
  public String title() {
    return title;
  }
}
