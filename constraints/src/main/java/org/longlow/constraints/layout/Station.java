package org.longlow.constraints.layout;

import org.longlow.constraints.formula.Formula;

/**
 * A place along the local x axis of a body at which it is said how broad it is.
 *
 * @param name for people, may be empty
 * @param x along the local x axis
 * @param reach how far it reaches there
 * @param smooth true if its breadth runs through here without a kink
 */
public record Station(String name, Formula x, HalfBreadths reach, boolean smooth) {}
