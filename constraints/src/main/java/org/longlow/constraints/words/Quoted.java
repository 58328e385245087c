package org.longlow.constraints.words;

/** Text in quotes as JSON writes it (RFC 8259). */
public final class Quoted {

  private static final int SHOWN = 60;

  private Quoted() {}

  /** Returns {@code text} in quotes. */
  public static String of(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c == '"' || c == '\\') {
        return escaped(text);
      }
    }
    return '"' + text + '"';
  }

  private static String escaped(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      int letter = "\b\t\n\f\r\"\\".indexOf(c);
      if (letter >= 0) {
        out.append('\\').append("btnfr\"\\".charAt(letter));
      } else if (c < ' ') {
        out.append(String.format("\\u%04X", (int) c));
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }

  /** Returns {@code text} in quotes, cut after {@value #SHOWN} characters. */
  public static String cut(String text) {
    if (text.length() <= SHOWN) {
      return of(text);
    }
    int end = Character.isHighSurrogate(text.charAt(SHOWN - 1)) ? SHOWN - 1 : SHOWN;
    return of(text.substring(0, end) + "...");
  }
}
