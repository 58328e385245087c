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
    String words =
        switch (this) {
          case FAIL -> count == 1 ? "fails" : "fail";
          case CAUTION -> count == 1 ? "needs care" : "need care";
          case PASS -> count == 1 ? "passes" : "pass";
          case NOT_APPLICABLE -> count == 1 ? "does not apply" : "do not apply";
        };
    return count + " " + words;
  }

  /** The word in JSON, such as {@code not-applicable}. */
  public String word() {
    return Names.word(this);
  }
}
