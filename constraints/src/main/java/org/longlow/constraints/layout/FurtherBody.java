package org.longlow.constraints.layout;

/**
 * A body of a part besides its first, such as a cylinder head beside a crankcase.
 *
 * @param name for people, may be empty
 * @param outline in the axes of the part
 * @param spread how far it reaches to each side
 * @param breadth how that varies
 */
public record FurtherBody(String name, Outline outline, Spread spread, Breadth breadth) {}
