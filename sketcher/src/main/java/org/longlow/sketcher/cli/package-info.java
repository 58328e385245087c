/**
 * Commands: arguments in, text and exit codes out. Scripts depend on names, options and codes.
 *
 * <p>0 no finding fails, 1 internal error, 2 bad arguments or file, 3 a finding fails, 4 the layout
 * contradicts itself.
 */
package org.longlow.sketcher.cli;
