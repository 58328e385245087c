/** Statics of what opens: weight, gas springs and counterweights against a hand. */
package org.longlow.constraints.machine.section;
