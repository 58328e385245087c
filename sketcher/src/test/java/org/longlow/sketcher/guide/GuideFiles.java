package org.longlow.sketcher.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The guide as it stands in the sources. */
final class GuideFiles {

  static final Path FOLDER = Path.of("guide");

  private GuideFiles() {}

  /** Returns the names of its pages, in the order of the alphabet. */
  static List<String> pages() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(n -> n.endsWith(".md"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(String page) {
    try {
      return Files.readString(FOLDER.resolve(page));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
