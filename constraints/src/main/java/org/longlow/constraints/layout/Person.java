package org.longlow.constraints.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.rider.body.Gear;

/**
 * A crew member.
 *
 * @param name the user's name for them
 * @param sex {@code female} or {@code male}; chooses the survey
 * @param stature standing height without shoes
 * @param mass without gear; what gear adds is the rider model's
 * @param measured own measurements by their survey names, mm
 * @param seats the seats they must fit, {@code rider} first
 * @param helmet whether they wear one
 * @param boots whether they wear them
 * @param clothes whether they wear jacket, trousers and gloves with armour
 * @param age years, if known
 * @param rucksack mass of what they wear on the back, if anything
 * @param rucksackThickness how thick that is between back and back rest
 * @param jacketThickness how thick the jacket is where nothing presses it
 * @param gloveThickness how thick the gloves are
 */
public record Person(
    String name,
    String sex,
    Formula stature,
    Formula mass,
    Map<String, Formula> measured,
    List<String> seats,
    boolean helmet,
    boolean boots,
    boolean clothes,
    Optional<Formula> age,
    Optional<Formula> rucksack,
    Formula rucksackThickness,
    Formula jacketThickness,
    Formula gloveThickness) {

  /** Youngest and oldest who may be crew, years; judgement. */
  public static final double LEAST_YEARS = 10;

  public static final double MOST_YEARS = 100;

  /** Thickness of a rucksack that is leant on; common practice. */
  public static final Formula USUAL_RUCKSACK = Formula.of(120, Unit.MM);

  /** Thickness of jacket and gloves: the rider model's. */
  public static final Formula USUAL_JACKET = Formula.of(Gear.JACKET_MM, Unit.MM);

  public static final Formula USUAL_GLOVE = Formula.of(Gear.GLOVE_MM, Unit.MM);

  public Person {
    measured = Ordered.copy(measured);
    seats = List.copyOf(seats);
  }

  /** Makes somebody of unknown age without a rucksack. */
  public Person(
      String name,
      String sex,
      Formula stature,
      Formula mass,
      Map<String, Formula> measured,
      List<String> seats,
      boolean helmet,
      boolean boots,
      boolean clothes) {
    this(
        name,
        sex,
        stature,
        mass,
        measured,
        seats,
        helmet,
        boots,
        clothes,
        Optional.empty(),
        Optional.empty(),
        USUAL_RUCKSACK,
        USUAL_JACKET,
        USUAL_GLOVE);
  }
}
