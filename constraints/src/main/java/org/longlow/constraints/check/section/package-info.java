/** Findings on how sections are opened, held open and held shut, and on lines led past them. */
package org.longlow.constraints.check.section;
