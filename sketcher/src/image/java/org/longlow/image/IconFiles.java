package org.longlow.image;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/** The icon in the forms that systems ask for; each holds PNG images of several sizes. */
final class IconFiles {

  private IconFiles() {}

  static byte[] png(int px) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(IconArt.of(px), "png", out);
    return out.toByteArray();
  }

  /** An icon for Windows: a head, an entry of 16 bytes an image, the images. */
  static byte[] ico() throws IOException {
    List<Integer> sides = List.of(16, 24, 32, 48, 64, 256);
    Map<Integer, byte[]> images = new LinkedHashMap<>();
    int length = 6 + 16 * sides.size();
    for (int side : sides) {
      images.put(side, png(side));
      length += images.get(side).length;
    }
    ByteBuffer out = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    out.putShort((short) 0).putShort((short) 1).putShort((short) sides.size());
    int at = 6 + 16 * sides.size();
    for (Map.Entry<Integer, byte[]> image : images.entrySet()) {
      byte side = (byte) (image.getKey() % 256); // 256 is said as 0
      out.put(side).put(side).put((byte) 0).put((byte) 0).putShort((short) 1).putShort((short) 32);
      out.putInt(image.getValue().length).putInt(at);
      at += image.getValue().length;
    }
    images.values().forEach(out::put);
    return out.array();
  }

  /** An icon for macOS: a head, and before each image a word that tells its size. */
  static byte[] icns() throws IOException {
    Map<String, Integer> words = new LinkedHashMap<>();
    words.put("ic11", 32);
    words.put("ic12", 64);
    words.put("ic07", 128);
    words.put("ic08", 256);
    words.put("ic09", 512);
    Map<String, byte[]> images = new LinkedHashMap<>();
    int length = 8;
    for (Map.Entry<String, Integer> word : words.entrySet()) {
      images.put(word.getKey(), png(word.getValue()));
      length += 8 + images.get(word.getKey()).length;
    }
    ByteBuffer out = ByteBuffer.allocate(length);
    out.put("icns".getBytes(StandardCharsets.US_ASCII)).putInt(length);
    images.forEach(
        (word, png) ->
            out.put(word.getBytes(StandardCharsets.US_ASCII)).putInt(8 + png.length).put(png));
    return out.array();
  }
}
