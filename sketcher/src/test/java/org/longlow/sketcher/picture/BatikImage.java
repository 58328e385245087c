package org.longlow.sketcher.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.TranscodingHints;
import org.apache.batik.transcoder.image.ImageTranscoder;

/** SVG as a program renders it that knows nothing of this project, on white. */
public final class BatikImage extends ImageTranscoder {

  private BufferedImage made;

  private BatikImage() {}

  /** The typeface that the pictures name first, so that what is installed changes nothing. */
  private static void install() {
    try (InputStream in =
        BatikImage.class.getResourceAsStream(
            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
      GraphicsEnvironment.getLocalGraphicsEnvironment()
          .registerFont(Font.createFont(Font.TRUETYPE_FONT, in));
    } catch (IOException | FontFormatException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Returns the picture.
   *
   * @param key what says how large it is
   * @param value how large
   */
  public static BufferedImage of(InputStream svg, TranscodingHints.Key key, float value)
      throws TranscoderException {
    install();
    BatikImage transcoder = new BatikImage();
    transcoder.addTranscodingHint(KEY_BACKGROUND_COLOR, Color.WHITE);
    transcoder.addTranscodingHint(key, value);
    transcoder.transcode(new TranscoderInput(svg), null);
    return transcoder.made;
  }

  @Override
  public BufferedImage createImage(int width, int height) {
    return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
  }

  @Override
  public void writeImage(BufferedImage image, TranscoderOutput to) {
    made = image;
  }
}
