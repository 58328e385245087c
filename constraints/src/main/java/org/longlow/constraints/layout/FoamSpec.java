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
 */
public record FoamSpec(
    String name,
    Formula thickness,
    Formula density,
    Optional<Formula> ifd25,
    Optional<Formula> supportFactor,
    boolean closedCell,
    Optional<Formula> wallStress,
    Optional<Formula> polymerDensity) {}
