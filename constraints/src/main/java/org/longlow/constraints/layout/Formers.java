package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * Cross sections of a body that are asked for as templates.
 *
 * @param across square to its local x axis, in any order
 * @param along in planes beside the middle plane of the machine
 * @param every distance from one former across to the next, counted from its origin, besides those
 *     listed
 * @param thickness of a former's own sheet
 * @param flange breadth of a rim turned over along its edge, for formers of sheet metal
 * @param skin thickness of what is laid over them; absent takes the sheet of a cowl or screen, none
 *     of a solid
 * @param stringers let into those across
 */
public record Formers(
    List<Former> across,
    List<Former> along,
    Optional<Formula> every,
    Formula thickness,
    Optional<Formula> flange,
    Optional<Formula> skin,
    List<Stringer> stringers) {

  /** Most formers that are listed one way, or that a spacing may ask for, of one part. */
  public static final int MOST = 60;

  /** How thick a former is where nothing says so: plywood of common practice. */
  public static final Formula USUAL = Formula.parse("9 mm");

  /** None asked for. */
  public static final Formers NONE =
      new Formers(
          List.of(),
          List.of(),
          Optional.empty(),
          USUAL,
          Optional.empty(),
          Optional.empty(),
          List.of());

  public Formers {
    across = List.copyOf(across);
    along = List.copyOf(along);
    stringers = List.copyOf(stringers);
  }

  /** Returns whether none is asked for. */
  public boolean isEmpty() {
    return across.isEmpty() && along.isEmpty() && every.isEmpty();
  }
}
