package org.longlow.constraints.law;

/** Where a rule stands and how well it is known; made once for each row and compared as itself. */
public final class LawSource {

  private final String section;
  private final String edition;
  private final Known status;
  private final String cite;

  /**
   * @param section law and section, table or schedule
   * @param edition which edition of it, or that it is not known
   * @param rule what it asks, in our own words
   * @param status how well the text is known
   */
  public LawSource(String section, String edition, String rule, Known status) {
    if (section.isBlank() || edition.isBlank() || rule.isBlank() || status == null) {
      throw new IllegalArgumentException("a rule needs section, edition, its words and a status");
    }
    this.section = section;
    this.edition = edition;
    this.status = status;
    this.cite = section + " (" + edition + "): " + rule + "; " + status.words();
  }

  public String section() {
    return section;
  }

  public String edition() {
    return edition;
  }

  public Known status() {
    return status;
  }

  /** Returns all of it in one line for reports. */
  public String cite() {
    return cite;
  }
}
