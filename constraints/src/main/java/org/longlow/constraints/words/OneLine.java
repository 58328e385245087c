package org.longlow.constraints.words;

/**
 * Text that stays what it is on a terminal: nothing that it quotes from a file moves the cursor,
 * colours, ends a line or turns the direction of writing.
 */
public final class OneLine {

  private OneLine() {}

  /**
   * Returns {@code text} on one line: controls, line ends, and marks that turn the direction of
   * writing are written as JSON escapes such as {@code \}{@code u001b}.
   */
  public static String of(String text) {
    return escaped(text, false);
  }

  /** As {@link #of}, but lines stay lines and tabs stay tabs. */
  public static String lines(String text) {
    return escaped(text, true);
  }

  private static String escaped(String text, boolean keepLines) {
    StringBuilder out = null;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = keepLines && (c == '\n' || c == '\t') || !isControl(text, i);
      if (!plain && out == null) {
        out = new StringBuilder(text.substring(0, i));
      }
      if (out != null) {
        if (plain) {
          out.append(c);
        } else {
          out.append(String.format("\\u%04x", (int) c));
        }
      }
    }
    return out == null ? text : out.toString();
  }

  /** Unicode 15, 23.2: layout controls, among them those of the bidirectional algorithm. */
  private static boolean isControl(String text, int i) {
    char c = text.charAt(i);
    if (Character.isSurrogate(c)) {
      // half of a pair is no character
      return Character.isHighSurrogate(c)
          ? i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1))
          : i == 0 || !Character.isHighSurrogate(text.charAt(i - 1));
    }
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }
}
