package org.longlow.sketcher.guide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The guide as it is packed beside the program. */
public final class Guide {

  /** The page that leads to all others. */
  public static final String INDEX = "README.md";

  private Guide() {}

  /**
   * Returns the blocks of a page.
   *
   * @param file its name, such as {@code seat.md}
   */
  public static List<GuideBlock> page(String file) {
    try (InputStream in = open(file)) {
      return GuidePage.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Returns a file of the guide, to be closed by whoever asks.
   *
   * @param file a page, or a picture as a page names it
   */
  public static InputStream open(String file) {
    return Guide.class.getResourceAsStream(file);
  }
}
