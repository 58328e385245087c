package org.longlow.svg.drawing;

/**
 * Line types after ISO 128-2:2020. Pattern elements in line widths: dot 0.5, gap 3, dash 12, long
 * dash 24 (those four from memory of the standard, its text not seen).
 */
public enum LineType {
  /** Type 01: outlines, dimension lines, hatching. */
  CONTINUOUS(),
  /** Type 02: hidden edges. */
  DASHED(12, 3),
  /** Type 04, long-dashed dotted: centre lines, axes, wheels. */
  CHAIN(24, 3, 0.5, 3),
  /** Type 05, long-dashed double-dotted: the person, moved parts, adjacent parts. */
  DOUBLE_CHAIN(24, 3, 0.5, 3, 0.5, 3);

  private final double[] pattern;

  LineType(double... pattern) {
    this.pattern = pattern;
  }

  /**
   * Returns the lengths of dash, gap, dash, gap ... for a line of the given width, in the unit of
   * the width.
   *
   * @return a new array of even length, empty for a continuous line
   */
  public double[] dashes(double width) {
    double[] out = new double[pattern.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = pattern[i] * width;
    }
    return out;
  }
}
