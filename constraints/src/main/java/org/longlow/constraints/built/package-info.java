/**
 * The machine as it was built: what follows from what was measured, what of the plan that goes
 * against, and what is found of it then.
 */
package org.longlow.constraints.built;
