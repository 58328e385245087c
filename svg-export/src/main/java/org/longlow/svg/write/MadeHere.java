package org.longlow.svg.write;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The mark by which this program knows again what it wrote, so that it replaces nothing else in
 * silence.
 */
public final class MadeHere {

  /** In an HTML page's head. */
  public static final String HTML = "<meta name=\"generator\" content=\"Longlow\"/>";

  /** After the first line of an SVG file. */
  static final String SVG = "<!-- Made with Longlow -->";

  /** Producer of a PDF. */
  static final String PRODUCER = "Longlow";

  private static final List<String> MARKS = List.of(SVG, HTML, "/Producer (" + PRODUCER + ")");

  /** Far more than any drawing has; a larger file is somebody else's. */
  private static final int MOST_BYTES = 100_000_000;

  private MadeHere() {}

  /**
   * Returns whether {@code file} was written by this program.
   *
   * @throws IOException if it cannot be read
   */
  public static boolean isMarked(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      String text = new String(in.readNBytes(MOST_BYTES), StandardCharsets.ISO_8859_1);
      return MARKS.stream().anyMatch(text::contains);
    }
  }
}
