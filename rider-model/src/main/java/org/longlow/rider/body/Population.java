package org.longlow.rider.body;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * People to fit a machine to, sampled one by one.
 *
 * <p>Person i depends only on the seed and i, so the same people come whatever the thread count.
 * Stature is normal and mass log-normal with the survey's correlation; each other measurement is
 * its regression on stature and mass plus a residual with the survey's covariance. Draws beyond
 * ±3.5 standard deviations are drawn again. Columns outside the correlation block stay on their
 * regression.
 *
 * @param seed any number
 * @param femaleShare share of women, in [0, 1]
 * @param men stature and mass of the men
 * @param women stature and mass of the women
 */
public record Population(long seed, double femaleShare, Norm men, Norm women) {

  private static final double REJECT = 3.5;

  /**
   * Stature and mass of a group.
   *
   * @param statureMm mean, mm
   * @param statureSd standard deviation, mm
   * @param lnMass mean of ln(kg)
   * @param lnMassSd its standard deviation
   * @param correlation of stature with ln(mass), in (−1, 1)
   */
  public record Norm(
      double statureMm, double statureSd, double lnMass, double lnMassSd, double correlation) {
    public Norm {
      boolean fits =
          statureMm >= BodyMeasures.MIN_STATURE_MM
              && statureMm <= BodyMeasures.MAX_STATURE_MM
              && statureSd >= 0
              && statureSd <= 150
              && lnMass >= Math.log(BodyMeasures.MIN_MASS_KG)
              && lnMass <= Math.log(BodyMeasures.MAX_MASS_KG)
              && lnMassSd >= 0
              && lnMassSd <= 0.5
              && Math.abs(correlation) < 1;
      if (!fits) {
        throw new IllegalArgumentException(
            "population needs stature 1200 to 2200 mm (sd 0 to 150), ln mass ln 30 to ln 200 (sd 0"
                + " to 0.5) and a correlation in (-1, 1); got "
                + statureMm
                + ", "
                + statureSd
                + ", "
                + lnMass
                + ", "
                + lnMassSd
                + ", "
                + correlation);
      }
    }
  }

  public Population {
    if (!(femaleShare >= 0 && femaleShare <= 1)) {
      throw new IllegalArgumentException("femaleShare must be 0 to 1, got " + femaleShare);
    }
  }

  /** Returns the survey's own population: soldiers, fitter and lighter than civilians. */
  public static Population soldiers(long seed, double femaleShare) {
    return new Population(seed, femaleShare, survey(Sex.MALE), survey(Sex.FEMALE));
  }

  /**
   * Returns US adults: men 1753 mm, 90.6 kg, women 1613 mm, 77.5 kg (NHANES 2015-2018, Fryar et al.
   * 2021, from memory); stature SD 71 and 64 (Pheasant); spread of mass 0.22 in ln(kg) is a
   * judgement.
   */
  public static Population usAdults(long seed, double femaleShare) {
    double spread = 0.22;
    double shift = 0.5 * spread * spread;
    return new Population(
        seed,
        femaleShare,
        new Norm(1753, 71, Math.log(90.6) - shift, spread, survey(Sex.MALE).correlation()),
        new Norm(1613, 64, Math.log(77.5) - shift, spread, survey(Sex.FEMALE).correlation()));
  }

  private static Norm survey(Sex sex) {
    Anthropometry.Correlation block = Anthropometry.survey().correlation(sex);
    return new Norm(
        block.mean()[0],
        block.sd()[0],
        block.lnMassMean(),
        block.lnMassSd(),
        block.lnMassStature());
  }

  /** Returns person {@code index}, ≥ 0. */
  public BodyMeasures person(long index) {
    if (index < 0) {
      throw new IllegalArgumentException("person index must be 0 or more, got " + index);
    }
    SplittableRandom random = new SplittableRandom(mix(seed ^ mix(index + 0x9E3779B97F4A7C15L)));
    Sex sex = random.nextDouble() < femaleShare ? Sex.FEMALE : Sex.MALE;
    Norm norm = sex == Sex.FEMALE ? women : men;
    double stature;
    double mass;
    do {
      double a = normal(random);
      double r = norm.correlation();
      double b = r * a + Math.sqrt(1 - r * r) * normal(random);
      stature = norm.statureMm() + norm.statureSd() * a;
      mass = StrictMath.exp(norm.lnMass() + norm.lnMassSd() * b);
    } while (!(stature >= BodyMeasures.MIN_STATURE_MM
        && stature <= BodyMeasures.MAX_STATURE_MM
        && mass >= BodyMeasures.MIN_MASS_KG
        && mass <= BodyMeasures.MAX_MASS_KG));
    Residuals residuals = Residuals.of(sex);
    List<String> names = residuals.names();
    double[] z = new double[names.size()];
    double[] shaped;
    do {
      for (int i = 0; i < z.length; i++) {
        z[i] = normal(random);
      }
      shaped = residuals.shape(z);
    } while (tooFar(residuals, shaped));
    Map<String, Double> byName = new HashMap<>();
    for (int i = 0; i < shaped.length; i++) {
      byName.put(names.get(i), shaped[i]);
    }
    double gripSd =
        Anthropometry.survey().measures(sex).get("d_wristtogrip").onStatureAndMass().residualSd();
    return BodyMeasures.sampled(sex, stature, mass, byName, gripSd * normal(random));
  }

  private static boolean tooFar(Residuals residuals, double[] shaped) {
    for (int i = 0; i < shaped.length; i++) {
      if (Math.abs(shaped[i]) > REJECT * residuals.sd(i)) {
        return true;
      }
    }
    return false;
  }

  /** A unit normal within ±3.5 by Marsaglia's polar method; StrictMath, so the same everywhere. */
  private static double normal(SplittableRandom random) {
    while (true) {
      double u = 2 * random.nextDouble() - 1;
      double v = 2 * random.nextDouble() - 1;
      double s = u * u + v * v;
      if (s > 0 && s < 1) {
        double value = u * StrictMath.sqrt(-2 * StrictMath.log(s) / s);
        if (Math.abs(value) <= REJECT) {
          return value;
        }
      }
    }
  }

  /** The finaliser of SplitMix64 (Steele, Lea, Flood 2014): spreads neighbouring indices. */
  private static long mix(long value) {
    long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
