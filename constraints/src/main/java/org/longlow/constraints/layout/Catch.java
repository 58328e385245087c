package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * What holds a section to the frame, or to another section that the same drive moves.
 *
 * @param jaw the pin of the jaw, which moves with the section
 * @param striker the pin that the jaw grips; what it moves with says what the section is held to
 * @param depth how deep the jaw engages
 * @param play how far both may be out of place at worst: hinges, flexing, wear, all together
 * @param spring what keeps the jaw shut, N
 * @param pull with what its release can be pulled, N
 */
public record Catch(
    String jaw,
    String striker,
    Formula depth,
    Formula play,
    Optional<Formula> spring,
    Optional<Formula> pull) {}
