package org.longlow.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The icon's files, read as their descriptions say, each image by a reader of PNG. */
class IconFilesTest {

  @Test
  void eachEntryOfAnIcoPointsAtAnImageOfItsSize() throws IOException {
    byte[] bytes = IconFiles.ico();
    ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    assertThat(in.getInt()).isEqualTo(0x10000); // two noughts, type 1
    int count = in.getShort();
    int end = 6 + 16 * count;
    for (int i = 0; i < count; i++) {
      int entry = 6 + 16 * i;
      int said = Byte.toUnsignedInt(bytes[entry]);
      int at = in.getInt(entry + 12);
      assertThat(at).isEqualTo(end);
      end = at + in.getInt(entry + 8);
      assertThat(width(Arrays.copyOfRange(bytes, at, end))).isEqualTo(said == 0 ? 256 : said);
    }
    assertThat(end).isEqualTo(bytes.length);
  }

  @Test
  void anIcnsHoldsPicturesOfDoublingSize() throws IOException {
    byte[] bytes = IconFiles.icns();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    assertThat(new String(bytes, 0, 4)).isEqualTo("icns");
    assertThat(in.getInt(4)).isEqualTo(bytes.length);
    List<Integer> widths = new ArrayList<>();
    for (int at = 8; at < bytes.length; at += in.getInt(at + 4)) {
      widths.add(width(Arrays.copyOfRange(bytes, at + 8, at + in.getInt(at + 4))));
    }
    assertThat(widths).containsExactly(32, 64, 128, 256, 512);
  }

  @Test
  void theCornersAreClearAndTheWheelsAreSeen() {
    BufferedImage icon = IconArt.of(64);
    assertThat(icon.getRGB(0, 0) >>> 24).isZero();
    // the tops of both wheels, above their axles
    assertThat(icon.getRGB(15, 30) & 0xff).isGreaterThan(0xa0);
    assertThat(icon.getRGB(48, 30) & 0xff).isGreaterThan(0xa0);
    assertThat(icon.getRGB(32, 10) & 0xff).isLessThan(0x40);
  }

  private static int width(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png)).getWidth();
  }
}
