package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.InputStream;
import java.util.List;
import java.util.function.IntBinaryOperator;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.VBox;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.sketcher.guide.Guide;
import org.longlow.sketcher.guide.GuideBlock;
import org.longlow.sketcher.picture.BatikImage;
import org.testfx.api.FxToolkit;

/**
 * The window shows the pictures of the guide as a program that knows nothing of it renders them.
 */
@Windowed
class GuidePictureTest {

  private static final int WIDE = 720;

  /** Letters and hairs are smoothed otherwise; over squares of so many pixels it evens out. */
  private static final int SQUARE = 9;

  /** How far two squares are apart in grey, in [0, 1], that differ. */
  private static final double ALIKE = 0.1;

  /** Thin lines fall on the edge of a few; words shifted by half their length differ in 28. */
  private static final int MOST_OTHER = 15;

  @BeforeAll
  static void wake() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  static List<String> pictures() {
    return Guide.page(Guide.INDEX).stream()
        .flatMap(b -> b instanceof GuideBlock.Item i ? Stream.of(i.words()) : Stream.empty())
        .flatMap(words -> Stream.of(words.split("[()]")).filter(w -> w.endsWith(".md")))
        .flatMap(page -> Guide.page(page).stream())
        .flatMap(b -> b instanceof GuideBlock.Picture p ? Stream.of(p.file()) : Stream.empty())
        .filter(file -> file.endsWith(".svg"))
        .sorted()
        .limit(Boolean.getBoolean("longlow.long") ? Long.MAX_VALUE : 4)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void isShownAsItIs(String file) throws Exception {
    BufferedImage rendered = rendered(file);
    WritableImage shown = shown(file);
    int high = Math.min(rendered.getHeight(), (int) shown.getHeight());
    assertThat(shown.getWidth()).isEqualTo(WIDE);
    assertThat(Math.abs(rendered.getHeight() - shown.getHeight())).isLessThanOrEqualTo(1);
    PixelReader pixels = shown.getPixelReader();
    int other = 0;
    for (int y = 0; y + SQUARE <= high; y += SQUARE) {
      for (int x = 0; x + SQUARE <= WIDE; x += SQUARE) {
        if (Math.abs(grey(rendered::getRGB, x, y) - grey(pixels::getArgb, x, y)) > ALIKE) {
          other++;
        }
      }
    }
    assertThat(other).as(file).isLessThanOrEqualTo(MOST_OTHER);
  }

  /** The mean of a square in [0, 1]. */
  private static double grey(IntBinaryOperator argb, int left, int top) {
    double sum = 0;
    for (int y = top; y < top + SQUARE; y++) {
      for (int x = left; x < left + SQUARE; x++) {
        int c = argb.applyAsInt(x, y);
        sum += (c >> 16 & 0xff) + (c >> 8 & 0xff) + (c & 0xff);
      }
    }
    return sum / (3 * 255 * SQUARE * SQUARE);
  }

  private static WritableImage shown(String file) {
    return Hands.onFx(
        () -> {
          GuidePicture picture = new GuidePicture(file);
          VBox box = new VBox(picture);
          new Scene(box, WIDE, 2 * WIDE);
          box.applyCss();
          box.layout();
          return picture.snapshot(null, null);
        });
  }

  private static BufferedImage rendered(String file) throws Exception {
    try (InputStream in = Guide.open(file)) {
      return BatikImage.of(in, SVGAbstractTranscoder.KEY_WIDTH, WIDE);
    }
  }
}
