package org.longlow.svg.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Sizes of letters, without loading a font.
 *
 * <p>Letter height always means the height of capitals (nominal size h of ISO 3098). Widths are
 * those of the common sans-serif metric shared by Helvetica, Arial and Liberation Sans, so they
 * hold for the embedded PDF font exactly and for SVG wherever one of those is installed. Characters
 * outside ASCII are estimated.
 */
public final class Lettering {

  /** Capital height as a share of the font size: 1409 of 2048 units in Liberation Sans. */
  public static final double CAPITAL_SHARE = 1409.0 / 2048.0;

  /** Widths of the ASCII characters from space to tilde, in thousandths of the font size. */
  private static final int[] WIDTHS = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, // space to /
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, // 0 to ?
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, // @ to O
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, // P to _
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, // ` to o
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584 // p to ~
  };

  private static final int ESTIMATE = 600;
  private static final int WIDE_ESTIMATE = 1000;
  private static final int ELLIPSIS = 0x2026;

  /** Where the East Asian blocks begin, whose characters fill a square. */
  private static final int FIRST_WIDE_BLOCK = 0x2E80;

  private Lettering() {}

  /** Returns the font size that gives capitals of this height, in the same unit. */
  public static double fontSize(double capitalHeight) {
    return capitalHeight / CAPITAL_SHARE;
  }

  /** Returns the width of a line of words with capitals of the given height, mm. */
  public static double widthMm(String text, double heightMm) {
    int sum = text.codePoints().map(Lettering::width).sum();
    return sum / 1000.0 * fontSize(heightMm);
  }

  /**
   * Returns the text with everything that cannot be printed or stored in XML 1.0 made visible: line
   * breaks and tabs become a space, other control characters, marks that turn the direction of
   * writing, half surrogates and non-characters become U+FFFD.
   */
  public static String printable(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              if (c == '\n' || c == '\r' || c == '\t' || c == 0x2028 || c == 0x2029) {
                out.append(' ');
              } else if (Character.isISOControl(c)
                  || turnsDirection(c)
                  || c >= 0xD800 && c <= 0xDFFF
                  || c >= 0xFDD0 && c <= 0xFDEF
                  || (c & 0xFFFE) == 0xFFFE) {
                out.append('\uFFFD');
              } else {
                out.appendCodePoint(c);
              }
            });
    return out.toString();
  }

  /**
   * Returns whether a character turns the direction in which others are read, so that text would
   * not be shown in the order in which it is stored (Unicode 15, Bidi_Control).
   */
  public static boolean turnsDirection(int codePoint) {
    return codePoint == 0x061C
        || codePoint == 0x200E
        || codePoint == 0x200F
        || codePoint >= 0x202A && codePoint <= 0x202E
        || codePoint >= 0x2066 && codePoint <= 0x2069;
  }

  /** Returns the text, shortened with an ellipsis if it would be wider than allowed. */
  public static String fitted(String text, double heightMm, double widestMm) {
    if (widthMm(text, heightMm) <= widestMm) {
      return text;
    }
    int[] points = text.codePoints().toArray();
    for (int n = points.length - 1; n > 0; n--) {
      String shorter = new String(points, 0, n).stripTrailing() + "…";
      if (widthMm(shorter, heightMm) <= widestMm) {
        return shorter;
      }
    }
    return "…";
  }

  /**
   * Returns the text broken at spaces into lines no wider than allowed; a single longer word is
   * broken where it must be.
   */
  public static List<String> wrapped(String text, double heightMm, double widestMm) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (widthMm(longer, heightMm) <= widestMm) {
        line = longer;
      } else {
        if (!line.isEmpty()) {
          lines.add(line);
        }
        line = word;
        while (widthMm(line, heightMm) > widestMm && line.codePointCount(0, line.length()) > 1) {
          int end = fitting(line, heightMm, widestMm);
          lines.add(line.substring(0, end));
          line = line.substring(end);
        }
      }
    }
    lines.add(line);
    return List.copyOf(lines);
  }

  /** Returns where the longest part of a word that fits ends; the first letter always does. */
  private static int fitting(String word, double heightMm, double widestMm) {
    int end = word.length();
    int first = word.offsetByCodePoints(0, 1);
    while (end > first && widthMm(word.substring(0, end), heightMm) > widestMm) {
      end = word.offsetByCodePoints(end, -1);
    }
    return end;
  }

  private static int width(int codePoint) {
    if (codePoint >= ' ' && codePoint - ' ' < WIDTHS.length) {
      return WIDTHS[codePoint - ' '];
    }
    if (codePoint == ELLIPSIS || codePoint == 0xFFFD || codePoint >= FIRST_WIDE_BLOCK) {
      return WIDE_ESTIMATE;
    }
    return ESTIMATE;
  }
}
