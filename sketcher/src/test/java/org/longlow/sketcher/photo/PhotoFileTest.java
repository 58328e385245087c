package org.longlow.sketcher.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoFileTest {

  @TempDir Path folder;

  /** Red in the upper left quarter, blue in the lower right one, white else. */
  private static BufferedImage flag(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.RED);
    g.fillRect(0, 0, width / 2, height / 2);
    g.setColor(Color.BLUE);
    g.fillRect(width / 2, height / 2, width, height);
    g.dispose();
    return image;
  }

  private static byte[] bytes(BufferedImage image, String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image, format, out)).isTrue();
    return out.toByteArray();
  }

  private static char colour(Raster raster, double x, double y) {
    int argb = raster.at((int) (x * raster.width()), (int) (y * raster.height()));
    int r = argb >> 16 & 0xff;
    int g = argb >> 8 & 0xff;
    int b = argb & 0xff;
    return r > 200 && g > 200 && b > 200 ? 'w' : r > 200 ? 'r' : b > 200 ? 'b' : '?';
  }

  /** The colours of the quarters: upper left, upper right, lower left, lower right. */
  private static String quarters(Raster raster) {
    return ""
        + colour(raster, 0.25, 0.25)
        + colour(raster, 0.75, 0.25)
        + colour(raster, 0.25, 0.75)
        + colour(raster, 0.75, 0.75);
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg"})
  void aPhotoIsReadAsItIs(String format) throws Exception {
    Files.write(folder.resolve("a." + format), bytes(flag(120, 80), format));
    PhotoFile photo = PhotoFile.read(folder, "a." + format);
    assertThat(photo.widthPx()).isEqualTo(120);
    assertThat(photo.heightPx()).isEqualTo(80);
    assertThat(photo.step()).isEqualTo(1);
    assertThat(photo.amiss()).isEmpty();
    assertThat(quarters(photo.raster())).isEqualTo("rwwb");
  }

  @Test
  void whatAFileIsItsContentSays() throws Exception {
    Files.write(folder.resolve("a.jpg"), bytes(flag(20, 10), "png"));
    assertThat(PhotoFile.read(folder, "a.jpg").widthPx()).isEqualTo(20);
    Files.write(folder.resolve("b.png"), bytes(flag(20, 10), "gif"));
    refused("b.png", "is no PNG or JPEG file");
    Files.writeString(folder.resolve("c.png"), "{\"longlow\": 1}");
    refused("c.png", "is no PNG or JPEG file");
  }

  private void refused(String name, String words) {
    assertThatThrownBy(() -> PhotoFile.read(folder, name))
        .isInstanceOf(UnreadPhoto.class)
        .hasMessageContaining(words);
  }

  @Test
  void whatIsNotThereOrElsewhereIsNotRead() throws Exception {
    refused("none.png", "does not exist");
    refused("../a.png", "outside the folder");
    refused("", "is a folder");
    Files.write(folder.resolve("empty.png"), new byte[0]);
    refused("empty.png", "is no PNG or JPEG file");
    assertThatThrownBy(() -> PhotoFile.read(null, "a.png")).hasMessageContaining("save the layout");
    Path outside = Files.createTempFile("photo", ".png");
    try {
      Files.createSymbolicLink(folder.resolve("link.png"), outside);
      refused("link.png", "link to a file outside");
    } finally {
      Files.delete(outside);
    }
  }

  @Test
  void aTruncatedPngIsRefusedAndATruncatedJpegShownAsFarAsItGoes() throws Exception {
    BufferedImage large = flag(800, 600);
    byte[] png = bytes(large, "png");
    for (int length : new int[] {9, 20, 40, png.length / 2}) {
      Files.write(folder.resolve("a.png"), Arrays.copyOf(png, length));
      assertThatThrownBy(() -> PhotoFile.read(folder, "a.png")).isInstanceOf(UnreadPhoto.class);
    }
    byte[] jpeg = bytes(large, "jpeg");
    Files.write(folder.resolve("a.jpg"), Arrays.copyOf(jpeg, jpeg.length / 2));
    PhotoFile half = PhotoFile.read(folder, "a.jpg");
    assertThat(half.amiss()).contains("cut short");
    assertThat(quarters(half.raster())).startsWith("rw");
    Files.write(folder.resolve("b.jpg"), Arrays.copyOf(jpeg, 30));
    assertThatThrownBy(() -> PhotoFile.read(folder, "b.jpg")).isInstanceOf(UnreadPhoto.class);
  }

  /** A PNG whose header says what it likes and whose data is next to nothing. */
  private static byte[] boast(int width, int height) {
    ByteBuffer png = ByteBuffer.allocate(100);
    png.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
    ByteBuffer header = ByteBuffer.allocate(17);
    header.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height);
    header.put(new byte[] {8, 2, 0, 0, 0});
    CRC32 crc = new CRC32();
    crc.update(header.array());
    png.putInt(13).put(header.array()).putInt((int) crc.getValue());
    png.putInt(0).put("IDAT".getBytes(StandardCharsets.US_ASCII)).putInt(0x35af061e);
    return Arrays.copyOf(png.array(), png.position());
  }

  @ParameterizedTest
  @CsvSource({"60000, 60000", "20001, 10", "10, 20001", "8001, 8000", "2147483647, 2147483647"})
  void hugePicturesAreRefusedByTheirHeader(int width, int height) throws Exception {
    Files.write(folder.resolve("a.png"), boast(width, height));
    refused("a.png", "has " + width + " x " + height + " pixels");
  }

  @Test
  void whatAHeaderPromisesAndDoesNotHoldIsRefused() throws Exception {
    Files.write(folder.resolve("a.png"), boast(8000, 8000));
    assertThatThrownBy(() -> PhotoFile.read(folder, "a.png")).isInstanceOf(UnreadPhoto.class);
  }

  @Test
  void aLargePhotoIsKeptInSteps() throws Exception {
    Files.write(folder.resolve("a.png"), bytes(flag(6000, 4000), "png"));
    PhotoFile photo = PhotoFile.read(folder, "a.png");
    assertThat(photo.widthPx()).isEqualTo(6000);
    assertThat(photo.step()).isEqualTo(3);
    assertThat(photo.raster().width()).isEqualTo(2000);
    assertThat(photo.raster().width() * photo.raster().height())
        .isLessThanOrEqualTo(PhotoFile.KEPT_PX);
    // the edge between red and white is at pixel 3000 of the file, 1000 of the raster
    assertThat(colour(photo.raster(), 999.5 / 2000, 0.1)).isEqualTo('r');
    assertThat(colour(photo.raster(), 1000.5 / 2000, 0.1)).isEqualTo('w');
  }

  private static byte[] held(byte[] jpeg, int orientation, boolean little) {
    ByteBuffer tiff = ByteBuffer.allocate(26);
    tiff.order(little ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    tiff.put((little ? "II" : "MM").getBytes(StandardCharsets.US_ASCII)).putShort((short) 42);
    tiff.putInt(8).putShort((short) 1);
    tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation);
    ByteBuffer out = ByteBuffer.allocate(jpeg.length + 36);
    out.put(jpeg, 0, 2).put((byte) 0xff).put((byte) 0xe1).putShort((short) (2 + 6 + 26));
    out.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array());
    out.put(jpeg, 2, jpeg.length - 2);
    return out.array();
  }

  // Quarters are named upper left, upper right, lower left, lower right. Exif 2.32: 1 upright,
  // 2 mirrored, 3 upside down, 4 upside down and mirrored, 5 to 8 lying on a side.
  @ParameterizedTest
  @CsvSource({
    "1, rwwb", "2, wrbw", "3, bwwr", "4, wbrw", "5, rwwb", "6, wrbw", "7, bwwr", "8, wbrw"
  })
  void aPhotoStandsUprightHoweverTheCameraWasHeld(int orientation, String seen) throws Exception {
    byte[] jpeg = bytes(flag(160, 80), "jpeg");
    for (boolean little : new boolean[] {true, false}) {
      Files.write(folder.resolve("a.jpg"), held(jpeg, orientation, little));
      PhotoFile photo = PhotoFile.read(folder, "a.jpg");
      assertThat(quarters(photo.raster())).isEqualTo(seen);
      assertThat(photo.widthPx()).isEqualTo(orientation < 5 ? 160 : 80);
      assertThat(photo.heightPx()).isEqualTo(orientation < 5 ? 80 : 160);
    }
  }

  @Test
  void anyBytesAfterTheMarkOfAJpegAreBorne() throws Exception {
    java.util.SplittableRandom random = new java.util.SplittableRandom(3);
    byte[] jpeg = held(bytes(flag(40, 30), "jpeg"), 6, true);
    for (int i = 0; i < 300; i++) {
      byte[] spoilt = jpeg.clone();
      for (int k = 0; k < 4; k++) {
        spoilt[random.nextInt(2, 120)] = (byte) random.nextInt();
      }
      Files.write(folder.resolve("a.jpg"), spoilt);
      try {
        PhotoFile photo = PhotoFile.read(folder, "a.jpg");
        assertThat((long) photo.raster().width() * photo.raster().height()).isPositive();
      } catch (UnreadPhoto e) {
        assertThat(e.getMessage()).isNotBlank();
      }
    }
  }
}
