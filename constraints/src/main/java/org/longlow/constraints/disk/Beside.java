package org.longlow.constraints.disk;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Names beside a file that nobody uses yet. */
public final class Beside {

  private Beside() {}

  /** Returns {@code file}, or if there is such a file the first of name-2, name-3 ... free. */
  public static Path free(Path file) {
    return numbered(file, "")
        .filter(p -> !Files.exists(p, LinkOption.NOFOLLOW_LINKS))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Keeps what {@code file} holds under another name beside it, such as heron.replaced.json; older
   * ones kept so stay as they are.
   *
   * @return the file kept
   * @throws IOException if it cannot be kept
   */
  public static Path keep(Path file, String word) throws IOException {
    Path real = file.toRealPath();
    for (Path kept : (Iterable<Path>) numbered(real, "." + word)::iterator) {
      try {
        return another(real, kept);
      } catch (FileAlreadyExistsException e) {
        if (Files.isSameFile(kept, real)) {
          return kept; // a run that was stopped kept it
        }
      }
    }
    throw new IOException("no name is left to keep " + file + " under");
  }

  private static Path another(Path real, Path kept) throws IOException {
    try {
      return Files.createLink(kept, real);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (IOException | UnsupportedOperationException e) {
      // not every file system has second names for a file
      return Files.copy(real, kept);
    }
  }

  private static Stream<Path> numbered(Path file, String word) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    String ending = dot > 0 ? name.substring(dot) : "";
    return IntStream.iterate(1, i -> i > 0, i -> i + 1)
        .mapToObj(i -> file.resolveSibling(stem + word + (i == 1 ? "" : "-" + i) + ending));
  }
}
