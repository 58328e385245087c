package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * A place at which a body is cut for a former.
 *
 * @param name for people, may be empty
 * @param at along the local x axis of the body, or across the machine, left positive
 * @param thickness of its own sheet; absent takes that of all formers of the body
 * @param flange breadth of a rim turned over along its edge; absent takes that of all formers
 */
public record Former(
    String name, Formula at, Optional<Formula> thickness, Optional<Formula> flange) {}
