package org.longlow.constraints.suit;

import java.util.Locale;

/**
 * Bounds of a search.
 *
 * @param seeds places the search starts from, the present one first; 1 to 64
 * @param stepsPerSeed steps allowed from each start, in each of two passes; 1 to 200
 * @param spreadMm how far the starts lie around the present place; 1 to 2000 mm
 * @param alternatives most alternatives reported; 1 to 10
 * @param adjust whether to look for the least adjustment travel where one place does not do
 * @param measured about the most places measured in all, shared out evenly between searches that
 *     run side by side; 100 to 1,000,000. A count, so that the answer is the same on any machine
 */
public record SuitSettings(
    int seeds, int stepsPerSeed, double spreadMm, int alternatives, boolean adjust, int measured) {

  /** Six starts within 150 mm, 14 steps each, three alternatives, 6,000 places measured. */
  public static final SuitSettings DEFAULT = new SuitSettings(6, 14, 150, 3, true, 6000);

  public SuitSettings {
    check("seeds", seeds, 1, 64);
    check("stepsPerSeed", stepsPerSeed, 1, 200);
    check("spreadMm", spreadMm, 1, 2000);
    check("alternatives", alternatives, 1, 10);
    check("measured", measured, 100, 1_000_000);
  }

  private static void check(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "%s is %s; allowed are %s to %s", name, value, low, high));
    }
  }
}
