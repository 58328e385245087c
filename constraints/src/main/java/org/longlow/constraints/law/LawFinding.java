package org.longlow.constraints.law;

import java.util.Objects;

/**
 * One answer of a rule.
 *
 * @param id stable id, such as {@code law.us.tail.height}
 * @param subject the lamps or parts it is about, in the user's names
 * @param verdict what came out
 * @param value what was measured; null if nothing was
 * @param limit the nearer limit it was held against; null if there is none
 * @param margin to the inside of the limit, negative when outside; null if there is none
 * @param unit of the three figures, empty if there are none
 * @param source the rule and how well it is backed
 * @param text one sentence for the user
 */
public record LawFinding(
    String id,
    String subject,
    Verdict verdict,
    Double value,
    Double limit,
    Double margin,
    String unit,
    String source,
    String text) {

  /** What came out. */
  public enum Verdict {
    PASS("pass"),
    FAIL("fail"),
    CAUTION("caution"),
    NOT_APPLICABLE("not-applicable");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    /** Returns the word used in files and reports. */
    public String word() {
      return word;
    }
  }

  public LawFinding {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(text, "text");
  }
}
