package org.longlow.sketcher.edit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;

/**
 * Copies of unsaved work, beside the file it belongs to, or in a folder of their own for work that
 * has no file yet. They are there only while there is something unsaved, so one that is found on
 * opening was left by a session that ended without its say.
 */
public final class Autosave {

  private static final String ENDING = ".longlow-autosave.json";

  /** Folder under the user's home for work without a file. */
  public static final String HOME_FOLDER = ".longlow";

  private final Path homeless;

  /**
   * @param homeless folder for work that has no file yet; made when needed
   */
  public Autosave(Path homeless) {
    this.homeless = homeless.toAbsolutePath();
  }

  /** Returns the autosave that keeps work without a file under the user's home. */
  public static Autosave atHome() {
    return new Autosave(Path.of(System.getProperty("user.home", "."), HOME_FOLDER));
  }

  /**
   * Unsaved work that was found.
   *
   * @param copy where it is kept
   * @param layout the work
   * @param at when it was last written
   */
  public record Found(Path copy, Layout layout, Instant at) {}

  /** Returns where unsaved work on a file is kept. */
  public static Path copyOf(Path file) {
    return file.toAbsolutePath().resolveSibling("." + file.getFileName() + ENDING);
  }

  /** Returns where unsaved work of a session is kept; no two sessions without a file share it. */
  public Path copyOf(Session session) {
    return session
        .file()
        .map(f -> copyOf(f.path()))
        .orElseGet(
            () -> homeless.resolve(safe(session.layout().name()) + "-" + session.stamp() + ENDING));
  }

  /**
   * Writes a copy, and the traced outlines it needs beside it.
   *
   * @param drawings where those are now
   * @throws IOException if it cannot be written
   */
  public static void write(Layout layout, Path copy, Optional<Path> drawings) throws IOException {
    Path folder = copy.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    if (drawings.isPresent()) {
      TracedFiles.copy(layout, drawings.get(), folder);
    }
    LayoutWriter.save(layout, copy);
  }

  /** Removes a copy if there is one. */
  public static void remove(Path copy) throws IOException {
    Files.deleteIfExists(copy);
  }

  /** Returns the unsaved work that belongs to {@code file} and differs from {@code layout}. */
  public Optional<Found> beside(Path file, Layout layout) {
    return read(copyOf(file)).filter(f -> !f.layout().equals(layout));
  }

  /** Returns unsaved work that never had a file, the latest first. */
  public List<Found> homeless() {
    List<Found> found = new ArrayList<>();
    if (Files.isDirectory(homeless)) {
      try (Stream<Path> files = Files.list(homeless)) {
        files
            .filter(f -> f.getFileName().toString().endsWith(ENDING))
            .sorted()
            .forEach(f -> read(f).ifPresent(found::add));
      } catch (IOException | UncheckedIOException e) {
        // An unreadable folder holds nothing that could be offered.
        return List.of();
      }
    }
    found.sort(Comparator.comparing(Found::at).reversed());
    return found;
  }

  private static Optional<Found> read(Path copy) {
    if (!Files.isRegularFile(copy) || !(LayoutReader.read(copy) instanceof ReadResult.Read sound)) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Found(copy, sound.layout(), Files.getLastModifiedTime(copy).toInstant()));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static String safe(String name) {
    String safe = name.replaceAll("[^A-Za-z0-9_-]", "_");
    return safe.isEmpty() ? "layout" : safe;
  }
}
