/**
 * Foam cushions on boards, and a person settling into them.
 *
 * <p>What goes in: {@link org.longlow.rider.seat.SeatGeometry} (boards with foam stacks, foot and
 * hand contacts) and a {@link org.longlow.rider.body.Body}. What comes out: {@link
 * org.longlow.rider.seat.SeatOutcome}: posture, sink, pressure and verdict per cushion, the shares
 * of the weight, and whether friction holds the rider. {@link org.longlow.rider.seat.Foam} is the
 * material, {@link org.longlow.rider.seat.FoamStack} layers in series, {@link
 * org.longlow.rider.seat.FoamContact} a body outline pressed into a stack, {@link
 * org.longlow.rider.seat.SeatLoad} the static load model.
 *
 * <p>What is left out: cover tension, shear between columns of foam, vibration, temperature, creep.
 * Every sink is ±20 %. This is a layout aid, not a certificate: brackets of back and head rest need
 * 2 to 3 times the static loads (common practice), and foam burns.
 */
package org.longlow.rider.seat;
