package org.longlow.sketcher.app;

import java.util.Optional;
import org.longlow.rider.words.Units;

/** A length read off a rule, mm: 99.6, 99.6 mm or, off an inch rule, 7.86 in. */
public final class RuleLength {

  private RuleLength() {}

  /** Returns it in mm; empty where it is no length. */
  public static Optional<Double> mm(String text) {
    String number = text.strip();
    boolean inches = number.endsWith("in");
    if (inches || number.endsWith("mm")) {
      number = number.substring(0, number.length() - 2).strip();
    }
    try {
      return Optional.of(Double.parseDouble(number) * (inches ? Units.INCH_MM : 1));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
