/**
 * A first machine from a handful of answers: everything solved, seated and checked, to be changed.
 *
 * <p>{@link org.longlow.constraints.start.FirstMachine} is the front door. {@link
 * org.longlow.constraints.start.Answers} are what the user said, {@link
 * org.longlow.constraints.start.Brief} is that with everything else filled in.
 */
package org.longlow.constraints.start;
