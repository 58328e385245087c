package org.longlow.sketcher.edit;

import java.util.Optional;
import org.longlow.rider.words.Units;

/**
 * A length as it is typed key by key, in the units shown.
 *
 * @param text typed so far; a comma counts as the point
 */
public record TypedLength(String text) {

  /** Longest number that can be typed. */
  private static final int MOST = 9;

  public static final TypedLength NOTHING = new TypedLength("");

  public boolean isEmpty() {
    return text.isEmpty();
  }

  /** Returns the number with one more sign, or the same if that makes no number. */
  public TypedLength with(String sign) {
    String more = text + (sign.equals(",") ? "." : sign);
    return more.matches("-?\\d*\\.?\\d*") && more.length() <= MOST ? new TypedLength(more) : this;
  }

  public TypedLength back() {
    return isEmpty() ? this : new TypedLength(text.substring(0, text.length() - 1));
  }

  /** Returns what it is worth, mm; empty while it is no number yet. */
  public Optional<Double> mm(Units units) {
    return text.matches(".*\\d.*")
        ? Optional.of(Double.parseDouble(text) * (units == Units.IN ? Units.INCH_MM : 1))
        : Optional.empty();
  }
}
