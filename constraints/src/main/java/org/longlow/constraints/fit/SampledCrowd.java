package org.longlow.constraints.fit;

import java.util.List;
import java.util.Locale;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Population;

/**
 * People sampled from the survey's correlations.
 *
 * @param population of whom
 * @param from what is known of their stature and mass, in words
 * @param size how many, from 0 to {@link #MOST}
 */
public record SampledCrowd(Population population, From from, int size) implements Crowd {

  /** As many are taken at most. */
  public static final int MOST = 100_000;

  /** Whose stature and mass. */
  public enum From {
    /** The survey's own soldiers, fitter and lighter than others. */
    SOLDIERS("soldiers of the survey"),
    /** Adults of the United States: stature and mass from memory. */
    ADULTS("US adults (stature and mass from memory)");

    private final String words;

    From(String words) {
      this.words = words;
    }

    /**
     * Returns such people.
     *
     * @param women share of women, in [0, 1]
     */
    public Population of(long seed, double women) {
      return this == SOLDIERS ? Population.soldiers(seed, women) : Population.usAdults(seed, women);
    }
  }

  public SampledCrowd {
    if (size < 0 || size > MOST) {
      throw new IllegalArgumentException("a crowd has 0 to " + MOST + " people, got " + size);
    }
  }

  @Override
  public BodyMeasures person(int index) {
    return population.person(index);
  }

  @Override
  public String name(int index) {
    return String.valueOf(index + 1);
  }

  @Override
  public List<PercentilePerson> anchors() {
    return PercentilePerson.of(population);
  }

  @Override
  public String says() {
    return String.format(
        Locale.ROOT,
        "%s sampled as %s, %.0f %% women, seed %d",
        Counted.of(size, "person"),
        from.words,
        100 * population.femaleShare(),
        population.seed());
  }
}
