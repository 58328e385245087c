package org.longlow.constraints.layout;

import java.util.List;
import java.util.Map;
import org.longlow.constraints.formula.Formula;

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
    boolean clothes) {
  public Person {
    measured = Ordered.copy(measured);
    seats = List.copyOf(seats);
  }
}
