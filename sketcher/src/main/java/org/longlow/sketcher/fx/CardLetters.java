package org.longlow.sketcher.fx;

/**
 * How large letters on the drawing are. They follow those of the window only as far as the card is
 * high: names, figures and rules take room from the machine that they tell of, slips and tags only
 * lie over it.
 */
final class CardLetters {

  /** A card so high bears letters of the usual size, px; one twice as high those of 200 %. */
  private static final double ROOM_PX = 375;

  private CardLetters() {}

  /**
   * Returns how much larger than usual they are, as a factor.
   *
   * @param window how much larger than usual letters of the window are
   * @param highPx how high the card is, px; 0 if that is not known yet
   */
  static double of(double window, double highPx) {
    return highPx > 0 ? Math.min(window, Math.max(1, highPx / ROOM_PX)) : window;
  }
}
