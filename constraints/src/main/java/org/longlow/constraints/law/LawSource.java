package org.longlow.constraints.law;

/**
 * Where a rule stands and how well it is known.
 *
 * @param section law and section, table or schedule
 * @param edition which edition of it, or that it is not known
 * @param rule what it asks, in our own words
 * @param status how well the text is known
 */
public record LawSource(String section, String edition, String rule, Known status) {

  public LawSource {
    if (section.isBlank() || edition.isBlank() || rule.isBlank() || status == null) {
      throw new IllegalArgumentException("a rule needs section, edition, its words and a status");
    }
  }

  /** Returns all of it in one line for reports. */
  public String cite() {
    return section + " (" + edition + "): " + rule + "; " + status.words();
  }
}
