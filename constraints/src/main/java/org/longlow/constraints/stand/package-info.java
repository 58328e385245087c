/**
 * Stances: where the wheels, the ground and the sections are in each state of the machine.
 *
 * <p>In: the placed layout, its part shapes and the crew seated on it. Out: a list of {@link
 * org.longlow.constraints.stand.Standing}. The axes stay those of the drawn machine's frame; the
 * wheels and the ground line move. Lengths mm, angles rad, loads N, masses kg.
 */
package org.longlow.constraints.stand;
