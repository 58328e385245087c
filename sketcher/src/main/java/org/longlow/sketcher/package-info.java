/** Starts Longlow: the window without arguments, else a command. */
package org.longlow.sketcher;
