package org.longlow.rider.geom;

/**
 * A calculation refuses what it was given: a value no machine or person has, or a figure that has
 * no answer. Whoever asks for a user's figures may catch it and say its message; any other {@link
 * IllegalArgumentException} is a mistake in the program.
 */
public class OutOfRange extends IllegalArgumentException {

  private static final long serialVersionUID = 1;

  /**
   * @param message what was refused and what is allowed, without a full stop
   */
  public OutOfRange(String message) {
    super(message);
  }
}
