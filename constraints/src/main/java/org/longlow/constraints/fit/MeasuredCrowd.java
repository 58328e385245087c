package org.longlow.constraints.fit;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Sex;

/**
 * People who were measured.
 *
 * @param people each of them
 */
public record MeasuredCrowd(List<Someone> people) implements Crowd {

  /**
   * One of them.
   *
   * @param name what they are called
   * @param statureMm stature, mm
   * @param massKg mass, kg
   * @param measured what else was measured, by its survey name, mm
   */
  public record Someone(
      String name, Sex sex, double statureMm, double massKg, Map<String, Double> measured) {
    public Someone {
      measured = Map.copyOf(measured);
    }

    /** Returns their measures; what was not measured is the likeliest that goes with them. */
    BodyMeasures measures() {
      return BodyMeasures.of(sex, statureMm, massKg, measured);
    }
  }

  public MeasuredCrowd {
    people = List.copyOf(people);
  }

  @Override
  public int size() {
    return people.size();
  }

  @Override
  public BodyMeasures person(int index) {
    return people.get(index).measures();
  }

  @Override
  public String name(int index) {
    return people.get(index).name();
  }

  /** The nearest to these ranks by stature; they are called by name, for they are no survey's. */
  @Override
  public List<PercentilePerson> anchors() {
    Set<Someone> chosen = new LinkedHashSet<>();
    for (Sex sex : List.of(Sex.FEMALE, Sex.MALE)) {
      List<Someone> own =
          people.stream()
              .filter(p -> p.sex() == sex)
              .sorted(Comparator.comparingDouble(Someone::statureMm))
              .toList();
      for (int percentile : PercentilePerson.PERCENTILES) {
        if (!own.isEmpty()) {
          chosen.add(own.get((int) Math.ceil(percentile / 100.0 * own.size()) - 1));
        }
      }
    }
    return chosen.stream().map(p -> new PercentilePerson(p.name(), p.measures())).toList();
  }

  @Override
  public String says() {
    return Counted.of(size(), "person") + " measured";
  }
}
