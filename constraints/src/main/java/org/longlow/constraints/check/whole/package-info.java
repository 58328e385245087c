/** Findings on the layout as a whole: what holds, what is missing, what is there twice. */
package org.longlow.constraints.check.whole;
