package org.longlow.rider.body;

import java.util.Locale;

/** Which half of the survey a person is compared with. */
public enum Sex {
  FEMALE,
  MALE;

  /** Returns the lower-case word used in files: {@code female} or {@code male}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Reads {@link #word()}.
   *
   * @throws IllegalArgumentException naming what is allowed
   */
  public static Sex of(String word) {
    for (Sex sex : values()) {
      if (sex.word().equals(word)) {
        return sex;
      }
    }
    throw new IllegalArgumentException("sex must be \"female\" or \"male\", got \"" + word + "\"");
  }
}
