package org.longlow.constraints.document;

/** What a name may refer to. */
public enum Referent {
  PIN("pin"),
  PART("part"),
  /** A part, or whoever sits on the machine. */
  PART_OR_RIDER("part"),
  SECTION("section"),
  SEAT("seat"),
  MEASURE("measure"),
  /** The frame, a wheel or a section. */
  CARRIER("carrier of pins");

  private final String word;

  Referent(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
