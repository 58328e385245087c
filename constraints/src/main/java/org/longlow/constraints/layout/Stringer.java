package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * A batten let into all formers across a body, flush with their edges, one on each side.
 *
 * @param name for people, may be empty
 * @param girth its place as a share of the way round a side, from the lowest middle to the highest
 * @param height its place as a height over the ground, machine as drawn; one of the two is given
 * @param width of the batten along the edge
 * @param depth of the batten, square to the edge
 */
public record Stringer(
    String name, Optional<Formula> girth, Optional<Formula> height, Formula width, Formula depth) {}
