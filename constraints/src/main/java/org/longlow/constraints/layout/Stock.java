package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * What a shop buys to cut parts from. What is not said of its size fits every part of its form and
 * material, and takes what is usual.
 *
 * @param form what it is
 * @param material of tube and sheet; empty for any
 * @param diameter outside diameter of a tube; absent for any
 * @param wall of a tube; absent for any
 * @param thickness of a sheet or foam; absent for any
 * @param grade of foam, as its layers are named; empty for any
 * @param length of a bar, or of a sheet along its grain
 * @param width of a sheet, across its grain
 * @param kerf what one cut takes away
 * @param extra added to the length of each piece of tube, or all round each piece of sheet
 * @param grain which way it may be cut; absent as the material has it
 * @param price in the currency of the layout, for one unit of {@code per}
 * @param per what the price is for
 * @param note for people, may be empty
 */
public record Stock(
    Form form,
    String material,
    Optional<Formula> diameter,
    Optional<Formula> wall,
    Optional<Formula> thickness,
    String grade,
    Optional<Formula> length,
    Optional<Formula> width,
    Optional<Formula> kerf,
    Optional<Formula> extra,
    Optional<Grain> grain,
    Optional<Formula> price,
    Per per,
    String note) {

  /** What stock is. */
  public enum Form {
    TUBE,
    SHEET,
    FOAM
  }

  /** Whether a piece that has a grain must lie along that of the sheet. */
  public enum Grain {
    ALONG,
    NONE
  }

  /** What a price is for. */
  public enum Per {
    /** A bar or sheet. */
    PIECE,
    METRE,
    FOOT,
    SQUARE_METRE,
    SQUARE_FOOT,
    KILOGRAM,
    POUND
  }
}
