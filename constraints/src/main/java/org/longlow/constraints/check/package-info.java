/**
 * Findings: one answer each, with verdict, figure, limit, margin, unit, stance and source.
 *
 * <p>In: the placed, seated and standing machine. Out: an ordered list of {@link
 * org.longlow.constraints.check.finding.Finding}. A finding is data; exceptions are for broken
 * calls.
 */
package org.longlow.constraints.check;
