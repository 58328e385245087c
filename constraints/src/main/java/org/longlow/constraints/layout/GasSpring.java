package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * A gas spring that helps a section open.
 *
 * @param frame the pin of its end that stays
 * @param section the pin of its end that moves with the section
 * @param force what one pushes with at its full length, N
 * @param length between its end eyes at its full length, mm
 * @param stroke by how much it can be pressed together, mm
 * @param progression how many times as much it pushes pressed together; absent for the usual
 * @param count how many there are alike, side by side
 */
public record GasSpring(
    String frame,
    String section,
    Formula force,
    Formula length,
    Formula stroke,
    Optional<Formula> progression,
    int count) {}
