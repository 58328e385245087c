package org.longlow.sketcher.fx;

/** How large tickets are, px where letters have their usual size. */
final class TicketSize {

  /** One field. */
  static final double TILE_PX = 116;

  /** Between fields. */
  static final double GAP_PX = 10;

  /** Its head and two rows of fields, which are always seen. */
  static final double LEAST_HIGH_PX = 136;

  /** Its edges, and the bar that scrolls it. */
  private static final double EDGES_PX = 36;

  /** Left free between a ticket and what it lies beside. */
  private static final double APART_PX = 10;

  private TicketSize() {}

  /** Returns how wide one is with so many columns, with letters so much larger than usual. */
  static double width(int columns, double letters) {
    return columns * TILE_PX * letters + (columns - 1) * GAP_PX + EDGES_PX * letters;
  }

  /** Returns how wide a place one needs at least, px. */
  static double leastWidePx(double letters) {
    return width(2, letters) + 2 * APART_PX;
  }

  /** Returns how high a place one needs at least, px. */
  static double leastHighPx(double letters) {
    return LEAST_HIGH_PX * letters + APART_PX;
  }
}
