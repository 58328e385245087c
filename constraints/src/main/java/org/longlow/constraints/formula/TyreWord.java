package org.longlow.constraints.formula;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Names that formulas have for what the tyres of a layout measure, such as {@code
 * frontTyre.radius}. No measure can be called so, since names of measures have no dot.
 */
public enum TyreWord {
  FRONT_RADIUS("frontTyre.radius"),
  FRONT_WIDTH("frontTyre.width"),
  REAR_RADIUS("rearTyre.radius"),
  REAR_WIDTH("rearTyre.width");

  /** A letter of no alphabet that names are written in: the parser takes no dot within a word. */
  private static final String DOT = "\u01c0";

  private static final Pattern SAID = Pattern.compile("\\b(front|rear)Tyre\\.(radius|width)\\b");

  private final String word;

  TyreWord(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** Returns all of them as formulas have them. */
  public static List<String> words() {
    return List.of(values()).stream().map(TyreWord::word).toList();
  }

  /** Returns a formula with each of them as one word for the parser. */
  static String joined(String formula) {
    return SAID.matcher(formula).replaceAll("$1Tyre" + DOT + "$2");
  }

  /** Returns a word of the parser as formulas have it. */
  static String parted(String word) {
    return word.replace(DOT, ".");
  }

  /** Returns whether a text is one of these names. */
  public static boolean isOne(String text) {
    return SAID.matcher(text).matches();
  }
}
