package org.longlow.constraints.check.finding;

import org.longlow.constraints.words.Names;

/** How a finding came out; the order is from worst to best. */
public enum Verdict {
  FAIL,
  CAUTION,
  PASS,
  NOT_APPLICABLE;

  /** What is said to people, everywhere alike, such as {@code needs care}. */
  public String says() {
    return switch (this) {
      case FAIL -> "fails";
      case CAUTION -> "needs care";
      case PASS -> "passes";
      case NOT_APPLICABLE -> "does not apply";
    };
  }

  /** What is said of so many findings, such as {@code 3 need care}. */
  public String says(long count) {
    return count + " " + does(count);
  }

  /** What so many findings do, such as {@code need care}. */
  public String does(long count) {
    return count == 1
        ? says()
        : switch (this) {
          case FAIL -> "fail";
          case CAUTION -> "need care";
          case PASS -> "pass";
          case NOT_APPLICABLE -> "do not apply";
        };
  }

  /** The word in JSON, such as {@code not-applicable}. */
  public String word() {
    return Names.word(this);
  }
}
