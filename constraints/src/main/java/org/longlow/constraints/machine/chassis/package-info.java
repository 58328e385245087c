/** Masses, axle loads, steering geometry, tyres and the chain line of a single-track machine. */
package org.longlow.constraints.machine.chassis;
