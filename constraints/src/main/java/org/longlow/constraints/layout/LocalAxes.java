package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * The local axes in which an outline is written.
 *
 * @param origin the pin at the local origin
 * @param along the pin that the local x axis points at; absent keeps the axes of the elevation
 * @param angle turn of the local axes, counter-clockwise, on top of that
 */
public record LocalAxes(String origin, Optional<String> along, Optional<Formula> angle) {}
