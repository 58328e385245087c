package org.longlow.sketcher.cli;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.words.Counted;

/** Options that were given and would change nothing, so that whoever gave them meant otherwise. */
final class Unused {

  private final List<String> given = new ArrayList<>();

  /** Notes an option if it was given. */
  Unused see(boolean isGiven, String option) {
    if (isGiven) {
      given.add(option);
    }
    return this;
  }

  /**
   * Lets pass where none was given.
   *
   * @param why none can be used, as a sentence without its end
   * @throws Refusal otherwise
   */
  void refuse(String why) {
    if (!given.isEmpty()) {
      throw new Refusal(why + "; leave out " + Counted.listed(given));
    }
  }
}
