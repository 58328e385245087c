package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * What every part has.
 *
 * @param name the user's name
 * @param spread its reach to each side; absent where the kind gives it (tubes, wheels, lamps)
 * @param mass given mass of all of it, both sides together; absent takes it from volume and
 *     material of a part {@linkplain Traits#filled() filled} by it, and is unknown else
 * @param material a name known to the material table; decides colour, and mass as above
 * @param steered true if it turns with the handlebars
 * @param hot true if it must be kept away from people and soft parts; exhausts and silencers are
 *     unless it is said that they are not
 * @param touches names of parts (or {@code rider}) that it may touch or overlap
 * @param note for people, may be empty
 * @param purchase what is paid for it and bought with it
 * @param allowance how far outside its net outline a template's line to cut lies, less than 0
 *     inside it
 */
public record PartBase(
    String name,
    Optional<Spread> spread,
    Optional<Formula> mass,
    String material,
    boolean steered,
    boolean hot,
    List<String> touches,
    String note,
    Purchase purchase,
    Optional<Formula> allowance) {
  public PartBase {
    touches = List.copyOf(touches);
  }

  /** A part of which nothing is said about buying. */
  public PartBase(
      String name,
      Optional<Spread> spread,
      Optional<Formula> mass,
      String material,
      boolean steered,
      boolean hot,
      List<String> touches,
      String note) {
    this(
        name, spread, mass, material, steered, hot, touches, note, Purchase.NONE, Optional.empty());
  }
}
