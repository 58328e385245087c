package org.longlow.sketcher.photo;

import java.awt.image.BufferedImage;

/**
 * Colours in rows from above, 0xAARRGGBB, premultiplied by alpha. Must not be modified.
 *
 * @param argb {@code width * height} of them
 */
@SuppressWarnings("ArrayRecordComponent")
public record Raster(int width, int height, int[] argb) {
  public Raster {
    if (width < 1 || height < 1 || argb.length != width * height) {
      throw new IllegalArgumentException(
          width + " x " + height + " is no size of " + argb.length + " colours");
    }
  }

  static Raster of(BufferedImage image) {
    int w = image.getWidth();
    int h = image.getHeight();
    int[] argb = image.getRGB(0, 0, w, h, null, 0, w);
    for (int i = 0; i < argb.length; i++) {
      int alpha = argb[i] >>> 24;
      if (alpha < 255) {
        argb[i] = premultiplied(argb[i], alpha);
      }
    }
    return new Raster(w, h, argb);
  }

  private static int premultiplied(int argb, int alpha) {
    int r = (argb >> 16 & 0xff) * alpha / 255;
    int g = (argb >> 8 & 0xff) * alpha / 255;
    int b = (argb & 0xff) * alpha / 255;
    return alpha << 24 | r << 16 | g << 8 | b;
  }

  public int at(int x, int y) {
    return argb[y * width + x];
  }

  /**
   * Returns the colour between pixels; nothing outside.
   *
   * @param x from the left edge; centres of pixels are at halves
   * @param y from the upper edge
   */
  int between(double x, double y) {
    if (x < 0 || y < 0 || x > width || y > height) {
      return 0;
    }
    double left = Math.floor(x - 0.5);
    double top = Math.floor(y - 0.5);
    double fx = x - 0.5 - left;
    double fy = y - 0.5 - top;
    int x0 = Math.max(0, (int) left);
    int y0 = Math.max(0, (int) top);
    int x1 = Math.min(width - 1, (int) left + 1);
    int y1 = Math.min(height - 1, (int) top + 1);
    int mixed = 0;
    for (int shift = 0; shift < 32; shift += 8) {
      double upper = mix(at(x0, y0), at(x1, y0), shift, fx);
      double lower = mix(at(x0, y1), at(x1, y1), shift, fx);
      mixed |= (int) Math.round(upper + (lower - upper) * fy) << shift;
    }
    return mixed;
  }

  private static double mix(int a, int b, int shift, double share) {
    double first = a >>> shift & 0xff;
    return first + ((b >>> shift & 0xff) - first) * share;
  }
}
