/**
 * Everything answered about a layout at once: placed, seated, standing, checked.
 *
 * <p>{@link org.longlow.constraints.study.Study#of} is the whole flow from a layout to its
 * findings, one pure function.
 */
package org.longlow.constraints.study;
