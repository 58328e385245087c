/** Findings on the machine in motion: over ramps, braking, in side wind, balancing. */
package org.longlow.constraints.check.ride;
