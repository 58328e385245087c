/**
 * The steering turned: what turns about which axis, its bodies in space, how near they come to what
 * stays on the way to full lock. Here, lengths in arrays are x forward, y left, z up, mm.
 */
package org.longlow.constraints.lock;
