/**
 * How the machine stands, sinks on its springs, leans, turns and answers a side wind.
 *
 * <p>Side clearance takes y &gt;= 0 towards the side leaned to. {@link
 * org.longlow.constraints.machine.ride.WhippleModel} keeps the published axes (z down) and SI units
 * of its source so that its matrices can be compared entry by entry.
 */
package org.longlow.constraints.machine.ride;
