package org.longlow.sketcher.desk;

import java.util.List;

/**
 * Something the builder should know, shown in the window itself.
 *
 * @param topic a later notice of the same topic takes its place
 * @param mood how it is shown
 * @param text a sentence or two, lines broken by {@code \n}
 * @param answers what can be done about it
 */
public record Notice(String topic, Mood mood, String text, List<Answer> answers) {

  /** How a notice is shown. */
  public enum Mood {
    SAID,
    CARE,
    BAD
  }

  /**
   * One thing that can be done.
   *
   * @param words on the button
   * @param action runs on the thread of the desk; the notice goes away first
   */
  public record Answer(String words, Runnable action) {}

  public Notice {
    answers = List.copyOf(answers);
  }
}
