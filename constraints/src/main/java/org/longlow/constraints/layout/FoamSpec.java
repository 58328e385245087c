package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * One layer of foam as bought.
 *
 * @param name for people, such as {@code medium HR}
 * @param thickness free thickness
 * @param density of the foam
 * @param ifd25 indentation force at 25 %, open-cell foam
 * @param supportFactor IFD65/IFD25, open-cell foam
 * @param closedCell true for closed-cell foam
 * @param wallStress cell-wall stress, closed-cell foam
 * @param polymerDensity density of the solid polymer, closed-cell foam
 * @param cv40 compression stress at 40 %, open-cell foam, in place of ifd25
 * @param stress25 stress at 25 % deflection, closed-cell foam, in place of wallStress
 * @param test the builder's own test, open-cell foam, in place of all of its data sheet
 */
public record FoamSpec(
    String name,
    Formula thickness,
    Formula density,
    Optional<Formula> ifd25,
    Optional<Formula> supportFactor,
    boolean closedCell,
    Optional<Formula> wallStress,
    Optional<Formula> polymerDensity,
    Optional<Formula> cv40,
    Optional<Formula> stress25,
    FoamTrial test) {

  /** Foam by IFD or by the stress of its cell walls. */
  public FoamSpec(
      String name,
      Formula thickness,
      Formula density,
      Optional<Formula> ifd25,
      Optional<Formula> supportFactor,
      boolean closedCell,
      Optional<Formula> wallStress,
      Optional<Formula> polymerDensity) {
    this(
        name,
        thickness,
        density,
        ifd25,
        supportFactor,
        closedCell,
        wallStress,
        polymerDensity,
        Optional.empty(),
        Optional.empty(),
        FoamTrial.NONE);
  }

  /** Returns the same foam in another thickness. */
  public FoamSpec thick(Formula other) {
    return new FoamSpec(
        name,
        other,
        density,
        ifd25,
        supportFactor,
        closedCell,
        wallStress,
        polymerDensity,
        cv40,
        stress25,
        test);
  }
}
