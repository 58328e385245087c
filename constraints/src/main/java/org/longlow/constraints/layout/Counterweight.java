package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * A weight that helps a section open.
 *
 * @param section the pin of the section where it is fixed, or where its cord is
 * @param pulley the pin of the frame over which its cord hangs down; absent for a fixed weight
 * @param mass of the weight
 */
public record Counterweight(String section, Optional<String> pulley, Formula mass) {}
