/** Cables, hoses and looms as smooth ways through the points that hold them. */
package org.longlow.constraints.machine.line;
