package org.longlow.constraints.start;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Person;
import org.longlow.rider.body.Anthropometry;
import org.longlow.rider.body.MeasureStats;
import org.longlow.rider.body.Sex;

/**
 * Somebody the machine is for.
 *
 * @param sex whose survey they are compared with
 * @param statureMm standing height without shoes, mm
 * @param massKg without gear, kg
 * @param measuredMm own measurements by their survey names, mm
 * @param years age, if known
 * @param rucksackKg what they wear on the back, if anything, kg
 */
public record Who(
    Sex sex,
    double statureMm,
    double massKg,
    Map<String, Double> measuredMm,
    OptionalDouble years,
    OptionalDouble rucksackKg) {

  /** Survey percentiles reach from here to 100 less this. */
  public static final double LEAST_PERCENTILE = 1;

  public Who {
    measuredMm = Map.copyOf(measuredMm);
  }

  /** Makes somebody of unknown age without a rucksack. */
  public Who(Sex sex, double statureMm, double massKg, Map<String, Double> measuredMm) {
    this(sex, statureMm, massKg, measuredMm, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** Returns the same of such an age with such a rucksack. */
  Who with(OptionalDouble age, OptionalDouble rucksack) {
    return new Who(sex, statureMm, massKg, measuredMm, age, rucksack);
  }

  /** Returns somebody of whom stature and mass are known. */
  public static Who of(Sex sex, double statureMm, double massKg) {
    return new Who(sex, statureMm, massKg, Map.of());
  }

  /**
   * Returns somebody as tall and as heavy as this percentile of the survey ({@link Anthropometry}),
   * in a straight line between the percentiles that are published.
   *
   * @param percent {@value #LEAST_PERCENTILE} to 99
   */
  public static Who percentile(Sex sex, double percent) {
    Map<String, MeasureStats> survey = Anthropometry.survey().measures(sex);
    return of(
        sex,
        Math.rint(at(survey.get("stature").percentiles(), percent)),
        Math.rint(at(survey.get("weightkg").percentiles(), percent)));
  }

  private static double at(MeasureStats.Percentiles p, double percent) {
    double[] percents = {1, 5, 25, 50, 75, 95, 99};
    double[] values = {p.p1(), p.p5(), p.p25(), p.p50(), p.p75(), p.p95(), p.p99()};
    int k = 1;
    while (k < percents.length - 1 && percent > percents[k]) {
      k++;
    }
    double share = (percent - percents[k - 1]) / (percents[k] - percents[k - 1]);
    return values[k - 1] + share * (values[k] - values[k - 1]);
  }

  /** Returns them as crew, in helmet, boots and riding clothes. */
  Person on(String name, String seat) {
    Map<String, Formula> own = new LinkedHashMap<>();
    measuredMm.forEach((measure, mm) -> own.put(measure, Draft.mm(mm)));
    return new Person(
        name,
        sex.word(),
        Draft.mm(statureMm),
        Draft.kg(massKg),
        own,
        List.of(seat),
        true,
        true,
        true,
        years.stream().mapToObj(y -> Formula.of(y, Unit.NONE)).findFirst(),
        rucksackKg.stream().mapToObj(Draft::kg).findFirst(),
        Person.USUAL_RUCKSACK,
        Person.USUAL_JACKET,
        Person.USUAL_GLOVE);
  }
}
