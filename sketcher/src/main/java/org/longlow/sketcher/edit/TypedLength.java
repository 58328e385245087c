package org.longlow.sketcher.edit;

import java.util.Optional;

/**
 * A length as it is typed key by key, mm.
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

  /** Returns what it is worth; empty while it is no number yet. */
  public Optional<Double> mm() {
    return text.matches(".*\\d.*") ? Optional.of(Double.valueOf(text)) : Optional.empty();
  }
}
