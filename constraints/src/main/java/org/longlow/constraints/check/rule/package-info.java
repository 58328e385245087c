/** Findings on the tables of {@link org.longlow.constraints.law}. */
package org.longlow.constraints.check.rule;
