package org.longlow.constraints.words;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as they are written where the decimal sign is a comma. */
public final class DecimalComma {

  private static final Pattern COMMA = Pattern.compile("(?<![\\d.,])(\\d+),(\\d+)(?![\\d.,])");

  private DecimalComma() {}

  /** Returns what to do about the first decimal comma in {@code text}; empty without one. */
  public static Optional<String> advice(String text) {
    Matcher m = COMMA.matcher(text);
    return m.find()
        ? Optional.of("write a point, not a comma: " + m.group(1) + "." + m.group(2))
        : Optional.empty();
  }
}
