package org.longlow.sketcher.report;

import java.util.Locale;

/** Figures as words, always with a point and without useless zeros. */
final class Say {

  private Say() {}

  /** Returns a figure with its unit; a dash where there is none. */
  static String value(double value, String unit) {
    if (Double.isNaN(value)) {
      return "–";
    }
    if (Double.isInfinite(value)) {
      return value > 0 ? "no end" : "−no end";
    }
    return switch (unit) {
      case "share" -> fixed(100 * value, 1) + " %";
      case "deg" -> fixed(value, 1) + "°";
      case "" -> fixed(value, Math.abs(value) < 10 ? 2 : 0);
      case "count" -> fixed(value, 0);
      case "N" -> fixed(value, 0) + " N";
      case "g" -> fixed(value, 2) + " g";
      default -> fixed(value, 1) + " " + unit;
    };
  }

  static String mm(double value) {
    return value(value, "mm");
  }

  static String deg(double rad) {
    return value(Math.toDegrees(rad), "deg");
  }

  static String number(double value) {
    return fixed(value, 1);
  }

  /** Returns a figure with at most so many decimals and a true minus sign. */
  static String fixed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
    if (text.contains(".")) {
      text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
    return value < 0 && !text.equals("0") ? "−" + text : text;
  }

  /** Splits a name such as {@code trunkThigh} into words. */
  static String words(String camel) {
    return camel.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
  }
}
