package org.longlow.sketcher.fx;

import org.longlow.svg.drawing.Colour;

/** The contrast ratio of WCAG 2, in [1, 21]; the order of the colours does not matter. */
final class Contrast {

  private Contrast() {}

  static double of(Colour first, Colour second) {
    double a = luminance(first);
    double b = luminance(second);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Colour c) {
    return 0.2126 * linear(c.red()) + 0.7152 * linear(c.green()) + 0.0722 * linear(c.blue());
  }

  private static double linear(int part) {
    double c = part / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
