package org.longlow.svg.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sheet size, mm.
 *
 * <p>A series: ISO 216. Letter, Legal and Tabloid: ANSI/ASME Y14.1 (8.5 x 11, 8.5 x 14 and 11 x 17
 * in). A0 and A4 were checked against published articles, the rest is from memory and consistent by
 * halving.
 *
 * @param widthMm width; of a roll, across it
 * @param heightMm height; of a roll, the longest piece that may be cut
 * @param roll whether it is cut from a roll, each piece as long as it needs to be
 */
public record Paper(String name, double widthMm, double heightMm, boolean roll) {

  public static final Paper A4 = new Paper("A4", 210, 297);
  public static final Paper A3 = new Paper("A3", 297, 420);
  public static final Paper A2 = new Paper("A2", 420, 594);
  public static final Paper A1 = new Paper("A1", 594, 841);
  public static final Paper A0 = new Paper("A0", 841, 1189);
  public static final Paper LETTER = new Paper("Letter", 215.9, 279.4);
  public static final Paper LEGAL = new Paper("Legal", 215.9, 355.6);
  public static final Paper TABLOID = new Paper("Tabloid", 279.4, 431.8);

  /** Sizes known by name, upright. */
  public static final List<Paper> NAMED = List.of(A4, A3, A2, A1, A0, LETTER, LEGAL, TABLOID);

  /** Shortest side accepted, mm. */
  public static final double SHORTEST_MM = 50;

  /** Longest side accepted, mm: 14400 points, the usual limit of PDF readers (from memory). */
  public static final double LONGEST_MM = 5080;

  private static final double MM_PER_INCH = 25.4;

  private static final Pattern CUSTOM =
      Pattern.compile(
          "(\\d{1,5}(?:\\.\\d{1,6})?)\\s*[x×*]\\s*(\\d{1,5}(?:\\.\\d{1,6})?)\\s*(mm|in)?");

  private static final Pattern ROLL =
      Pattern.compile("roll[\\s-]+(\\d{1,5}(?:\\.\\d{1,6})?)\\s*(mm|in)?");

  /** What {@link #read} takes, in words. */
  public static final String ALLOWED =
      "allowed: a4, a3, a2, a1, a0, letter, legal, tabloid, each also with 'portrait' or 'landscape',"
          + " WIDTHxHEIGHT in mm (420x297) or inches (11x17 in), or a roll by its width ('roll 610',"
          + " 'roll 24 in'), each side in "
          + SHORTEST_MM
          + " to "
          + LONGEST_MM
          + " mm";

  /** A sheet, not of a roll. */
  public Paper(String name, double widthMm, double heightMm) {
    this(name, widthMm, heightMm, false);
  }

  public Paper {
    for (double side : new double[] {widthMm, heightMm}) {
      if (!isSide(side)) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "paper '%s' measures %s x %s mm; each side must lie in %s to %s mm",
                name,
                widthMm,
                heightMm,
                SHORTEST_MM,
                LONGEST_MM));
      }
    }
  }

  /**
   * Reads a paper size such as {@code a4}, {@code letter landscape}, {@code 420x297} or {@code
   * 11x17 in}.
   *
   * @throws IllegalArgumentException if the text is none of these; the message lists what is
   *     allowed
   */
  public static Paper parse(String text) {
    return read(text)
        .orElseThrow(
            () -> new IllegalArgumentException("paper '" + text + "' is not known; " + ALLOWED));
  }

  /** Returns the paper of a text as {@link #parse} takes it; empty if it is none. */
  public static Optional<Paper> read(String text) {
    String t = text == null ? "" : text.strip().toLowerCase(Locale.ROOT);
    boolean landscape = t.endsWith("landscape");
    boolean portrait = t.endsWith("portrait");
    String size = t.replaceFirst("[\\s-]*(landscape|portrait)$", "");
    Paper found = null;
    for (Paper p : NAMED) {
      if (p.name.toLowerCase(Locale.ROOT).equals(size)) {
        found = p;
      }
    }
    Matcher m = CUSTOM.matcher(size);
    if (found == null && m.matches()) {
      double unit = "in".equals(m.group(3)) ? MM_PER_INCH : 1;
      double width = Double.parseDouble(m.group(1)) * unit;
      double height = Double.parseDouble(m.group(2)) * unit;
      if (isSide(width) && isSide(height)) {
        String name = m.group(1) + "x" + m.group(2) + (unit == 1 ? "" : " in");
        found = new Paper(name, width, height);
      }
    }
    Matcher r = ROLL.matcher(size);
    if (found == null && r.matches() && size.equals(t)) {
      double width = Double.parseDouble(r.group(1)) * ("in".equals(r.group(2)) ? MM_PER_INCH : 1);
      found = isSide(width) ? roll(width) : null;
    }
    return Optional.ofNullable(found)
        .map(p -> landscape ? p.landscape() : portrait ? p.portrait() : p);
  }

  /**
   * Returns a roll.
   *
   * @param widthMm across it, mm
   */
  public static Paper roll(double widthMm) {
    String width = String.format(Locale.ROOT, "%.1f", widthMm).replaceAll("\\.0$", "");
    return new Paper("roll-" + width, widthMm, LONGEST_MM, true);
  }

  /** Returns a piece of this roll, its length rounded up to whole millimetres. */
  Paper piece(double lengthMm) {
    double length = Math.max(SHORTEST_MM, Math.min(LONGEST_MM, Math.ceil(lengthMm)));
    return new Paper(
        String.format(Locale.ROOT, "%s cut to %.0f mm", name, length), widthMm, length);
  }

  private static boolean isSide(double mm) {
    return mm >= SHORTEST_MM && mm <= LONGEST_MM;
  }

  /** Returns the area of the sheet, mm². */
  double areaMm2() {
    return widthMm * heightMm;
  }

  /** Returns whether the sheet is wider than high. */
  public boolean isLandscape() {
    return widthMm > heightMm;
  }

  /** Returns the same size with the long side across. */
  public Paper landscape() {
    return isLandscape() ? this : turned();
  }

  /** Returns the same size with the long side up. */
  public Paper portrait() {
    return isLandscape() ? turned() : this;
  }

  /** Returns the same size turned by a quarter. */
  public Paper turned() {
    return new Paper(name, heightMm, widthMm, roll);
  }

  /** Returns the name with the direction, for people: {@code A4 landscape}. */
  public String label() {
    return name.startsWith("roll")
        ? name
        : name + (widthMm == heightMm ? "" : isLandscape() ? " landscape" : " portrait");
  }
}
