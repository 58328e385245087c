/** Findings on loads, springs, lean, steering, stand and ground: the machine on the road. */
package org.longlow.constraints.check.road;
