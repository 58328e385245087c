package org.longlow.constraints.law;

/** How well a legal figure is backed, best first. */
public enum Mark {
  CHECKED("checked in the text"),
  CHECKED_SECOND_HAND("checked in a transcription, not the law itself"),
  FROM_MEMORY("from memory, check the text before relying on it");

  private final String words;

  Mark(String words) {
    this.words = words;
  }

  /** Returns the mark in words for reports. */
  public String words() {
    return words;
  }
}
