/**
 * Seats the crew: from cushions, rests and people of the layout to people sitting on the machine.
 *
 * <p>In: the placed layout. Out: a {@link org.longlow.constraints.seat.Sitting} for each crew
 * member on each seat they must fit. What a person's body does is the rider model's; here parts
 * become the surfaces it sits on. Axes are those of the drawn machine.
 */
package org.longlow.constraints.seat;
