/**
 * Ways of limbs in and out between bodies: fields of free room over the elevation, and the widest
 * ways through them.
 */
package org.longlow.constraints.passage;
