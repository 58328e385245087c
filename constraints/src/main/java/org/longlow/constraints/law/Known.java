package org.longlow.constraints.law;

/** How well the text of a rule is known here, best first. */
public enum Known {
  /** A statute text itself was read. */
  CHECKED("checked in the text"),
  /** A copy, a state's repetition or an agency's letter that states the rule was read. */
  TRANSCRIBED("read in a transcription or an agency's letter, not in the law itself"),
  /** Nobody could read it; such a rule can fail a machine but never pass one. */
  FROM_MEMORY("from memory, check the text before relying on it");

  private final String words;

  Known(String words) {
    this.words = words;
  }

  /** Returns the status in words for reports. */
  public String words() {
    return words;
  }
}
