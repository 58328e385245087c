package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.List;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Population;
import org.longlow.rider.body.Sex;

/**
 * Somebody whom an adjustment is to take in: of each sex the 5th, 50th and 95th percentile of
 * stature, of the survey; of people who were measured whoever of them is nearest to that.
 *
 * @param words who that is
 * @param measures their measures
 */
public record PercentilePerson(String words, BodyMeasures measures) {

  static final int[] PERCENTILES = {5, 50, 95};

  /** Normal deviates of these percentiles. */
  private static final double[] DEVIATES = {-1.6448536269514722, 0, 1.6448536269514722};

  /** Returns those of a population, each with the mass that is likeliest at that stature. */
  static List<PercentilePerson> of(Population population) {
    List<PercentilePerson> all = new ArrayList<>();
    if (population.femaleShare() > 0) {
      add(all, Sex.FEMALE, population.women());
    }
    if (population.femaleShare() < 1) {
      add(all, Sex.MALE, population.men());
    }
    return all;
  }

  private static void add(List<PercentilePerson> all, Sex sex, Population.Norm norm) {
    for (int k = 0; k < DEVIATES.length; k++) {
      double z = DEVIATES[k];
      double mass = Math.exp(norm.lnMass() + norm.correlation() * z * norm.lnMassSd());
      double stature = norm.statureMm() + z * norm.statureSd();
      all.add(
          new PercentilePerson(
              words(sex, PERCENTILES[k]),
              BodyMeasures.of(
                  sex,
                  within(stature, BodyMeasures.MIN_STATURE_MM, BodyMeasures.MAX_STATURE_MM),
                  within(mass, BodyMeasures.MIN_MASS_KG, BodyMeasures.MAX_MASS_KG))));
    }
  }

  private static double within(double value, double least, double most) {
    return Math.max(least, Math.min(most, value));
  }

  /** Says who that is. */
  static String words(Sex sex, int percentile) {
    return percentile + " % " + (sex == Sex.FEMALE ? "woman" : "man");
  }
}
