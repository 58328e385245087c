package org.longlow.svg.write;

/** Millimetres as text with at most three decimals, free of any locale. */
final class Millimetres {

  /** Largest length written, mm; keeps the arithmetic exact. */
  static final double LARGEST_MM = 1e9;

  private Millimetres() {}

  static String of(double mm) {
    return append(new StringBuilder(12), mm).toString();
  }

  /** Appends the number rounded to 0.001, without useless zeros; there is no negative zero. */
  static StringBuilder append(StringBuilder out, double mm) {
    if (!(Math.abs(mm) <= LARGEST_MM)) {
      throw new IllegalArgumentException(
          "length " + mm + " mm cannot be written; allowed: -1e9 to 1e9");
    }
    long thousandths = Math.round(mm * 1000);
    if (thousandths < 0) {
      out.append('-');
      thousandths = -thousandths;
    }
    out.append(thousandths / 1000);
    int rest = (int) (thousandths % 1000);
    if (rest != 0) {
      out.append('.').append((char) ('0' + rest / 100));
      if (rest % 100 != 0) {
        out.append((char) ('0' + rest / 10 % 10));
        if (rest % 10 != 0) {
          out.append((char) ('0' + rest % 10));
        }
      }
    }
    return out;
  }
}
