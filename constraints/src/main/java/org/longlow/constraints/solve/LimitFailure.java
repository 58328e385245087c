package org.longlow.constraints.solve;

/**
 * A limit that does not hold.
 *
 * @param limit its name
 * @param shortfallMm by how much the gap is below zero, mm, &gt; 0
 */
public record LimitFailure(String limit, double shortfallMm) {}
