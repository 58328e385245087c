package org.longlow.rider.words;

import java.util.Locale;

/** Figures with few decimals, with a point, fast enough for hundreds of sentences an edit. */
public final class Decimals {

  /** From here on digits before the point are no longer counted by anybody. */
  private static final double HUGE = 1e15;

  private Decimals() {}

  /** Returns {@code value} in as few digits as tell it from others, such as 381 or 1e308. */
  public static String written(double value) {
    if (value == Math.rint(value) && Math.abs(value) < HUGE) {
      return Long.toString((long) value);
    }
    return Double.toString(value).replace(".0E", "e").replace('E', 'e');
  }

  /** Returns {@code value} with exactly one decimal, such as {@code 381.0}. */
  public static String tenths(double value) {
    double tenths = Math.abs(value) * 10;
    double whole = Math.floor(tenths + 0.5);
    if (Math.abs(value) >= HUGE) {
      return written(value);
    }
    if (!(tenths < 1e9) || Math.abs(whole - 0.5 - tenths) < 1e-6) {
      // not finite, huge, or half way between two tenths
      String text = String.format(Locale.ROOT, "%.1f", value);
      return text.equals("-0.0") ? "0.0" : text;
    }
    long n = (long) whole;
    String digits = n / 10 + "." + n % 10;
    return value < 0 && n > 0 ? "-" + digits : digits;
  }

  /** Returns {@code value} with one decimal, or none where that is enough, such as {@code 381}. */
  public static String brief(double value) {
    String text = tenths(value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** Returns {@code value} with so many decimals, fewer where that is enough. */
  public static String upTo(int decimals, double value) {
    if (decimals == 1 || Math.abs(value) >= HUGE) {
      return brief(value);
    }
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    if (text.contains(".")) {
      text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
    return text.equals("-0") ? "0" : text;
  }
}
