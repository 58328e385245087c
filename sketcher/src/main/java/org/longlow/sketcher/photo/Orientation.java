package org.longlow.sketcher.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * How a camera was held: the number of the tag Orientation (0x0112) that JPEG files carry, 1 to 8
 * (Exif 2.32, JEITA CP-3451, 4.6.4 A).
 */
final class Orientation {

  static final int UPRIGHT = 1;

  private static final int TAG = 0x0112;
  private static final int SHORT = 3;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

  private Orientation() {}

  /**
   * Returns the orientation told in the first bytes of a file; upright where they tell none.
   *
   * @param head of the file; the segment in question is among the first 64 kB of a JPEG file
   */
  static int of(byte[] head) {
    int at = 2;
    boolean jpeg = head.length > 3 && (head[0] & 0xff) == 0xff && (head[1] & 0xff) == 0xd8;
    while (jpeg && at + 4 <= head.length && (head[at] & 0xff) == 0xff) {
      int marker = head[at + 1] & 0xff;
      int length = (head[at + 2] & 0xff) << 8 | head[at + 3] & 0xff;
      if (marker == 0xda || length < 2) {
        break;
      }
      int from = at + 4;
      int to = Math.min(head.length, at + 2 + length);
      if (marker == 0xe1
          && to - from > EXIF.length
          && Arrays.equals(head, from, from + EXIF.length, EXIF, 0, EXIF.length)) {
        return ofTiff(ByteBuffer.wrap(head, from + EXIF.length, to - from - EXIF.length).slice());
      }
      at += 2 + length;
    }
    return UPRIGHT;
  }

  private static int ofTiff(ByteBuffer tiff) {
    if (tiff.limit() < 8) {
      return UPRIGHT;
    }
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    long directory = Integer.toUnsignedLong(tiff.getInt(4));
    if (directory + 2 > tiff.limit()) {
      return UPRIGHT;
    }
    int entries = Short.toUnsignedInt(tiff.getShort((int) directory));
    for (int i = 0; i < entries; i++) {
      int at = (int) directory + 2 + 12 * i;
      if (at + 12 > tiff.limit()) {
        break;
      }
      if (Short.toUnsignedInt(tiff.getShort(at)) == TAG && tiff.getShort(at + 2) == SHORT) {
        int value = Short.toUnsignedInt(tiff.getShort(at + 8));
        return value >= 1 && value <= 8 ? value : UPRIGHT;
      }
    }
    return UPRIGHT;
  }

  /** Returns whether width and height change places. */
  static boolean lies(int orientation) {
    return orientation > 4;
  }

  /** Returns a picture as it is seen. */
  static Raster upright(Raster raw, int orientation) {
    if (orientation == UPRIGHT) {
      return raw;
    }
    int w = raw.width();
    int h = raw.height();
    int width = lies(orientation) ? h : w;
    int height = lies(orientation) ? w : h;
    int[] seen = new int[w * h];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int right = width - 1 - x;
        int down = height - 1 - y;
        seen[y * width + x] =
            switch (orientation) {
              case 2 -> raw.at(right, y);
              case 3 -> raw.at(right, down);
              case 4 -> raw.at(x, down);
              case 5 -> raw.at(y, x);
              case 6 -> raw.at(y, right);
              case 7 -> raw.at(down, right);
              default -> raw.at(down, x);
            };
      }
    }
    return new Raster(width, height, seen);
  }
}
