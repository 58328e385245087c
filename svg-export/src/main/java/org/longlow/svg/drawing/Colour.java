package org.longlow.svg.drawing;

import java.util.Locale;

/** An sRGB colour, each part in [0, 255]. */
public record Colour(int red, int green, int blue) {

  public Colour {
    for (int part : new int[] {red, green, blue}) {
      if (part < 0 || part > 255) {
        throw new IllegalArgumentException(
            "colour parts lie in 0..255, got " + red + ", " + green + ", " + blue);
      }
    }
  }

  /** Reads {@code #rrggbb}. */
  public static Colour hex(String text) {
    if (!text.matches("#[0-9a-fA-F]{6}")) {
      throw new IllegalArgumentException("colour '" + text + "' is not of the form #rrggbb");
    }
    int rgb = Integer.parseInt(text.substring(1), 16);
    return new Colour(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff);
  }

  /** Returns {@code #rrggbb} in lower case. */
  public String toHex() {
    return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
  }
}
