/**
 * What a finding is: its kind, what it is about, its figures, verdict and basis, and the words and
 * order in which findings are said.
 */
package org.longlow.constraints.check.finding;
