/**
 * Findings mended: the few smallest single changes of what a layout can change that make a finding
 * pass, each tried on the whole machine. Front door: {@link org.longlow.constraints.mend.Mending}.
 */
package org.longlow.constraints.mend;
