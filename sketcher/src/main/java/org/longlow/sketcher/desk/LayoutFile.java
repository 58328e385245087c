package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;

/**
 * A layout file as it was last read or written here.
 *
 * @param path absolute
 * @param digest SHA-256 of its bytes then, hex; empty if there was no file
 */
public record LayoutFile(Path path, String digest) {

  private static final String UNREADABLE = "unreadable";

  public LayoutFile {
    path = path.toAbsolutePath().normalize();
  }

  /** What opening a file gives. */
  public sealed interface Opening {

    /** A sound file. */
    record Opened(Layout layout, List<String> notes, LayoutFile file) implements Opening {}

    /** A file with faults, all of them. */
    record Refused(Path path, List<Fault> faults) implements Opening {}
  }

  /** Reads a layout file; no content makes this throw. */
  public static Opening open(Path path) {
    // The digest comes first: if the file changes in between, it counts as changed on disk.
    String digest = digestOf(path);
    ReadResult result = LayoutReader.read(path);
    if (result instanceof ReadResult.Read read) {
      return new Opening.Opened(read.layout(), read.notes(), new LayoutFile(path, digest));
    }
    return new Opening.Refused(path, ((ReadResult.Refused) result).faults());
  }

  /**
   * Writes the layout and returns the file as it is then.
   *
   * @throws IOException if it cannot be written; an older file is then as it was
   */
  public static LayoutFile save(Layout layout, Path path) throws IOException {
    LayoutWriter.save(layout, path);
    return new LayoutFile(path, digestOf(path));
  }

  /** The ending that the desktop knows layout files by; what is inside is JSON. */
  public static final String ENDING = ".longlow";

  /** The endings that layout files have; any other name of a file is read all the same. */
  public static final List<String> ENDINGS = List.of(ENDING, ".json");

  /** Returns {@code path} with an ending of layout files, which is added where it is missing. */
  static Path named(Path path) {
    String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
    return path.getFileName() == null || ENDINGS.stream().anyMatch(name::endsWith)
        ? path
        : path.resolveSibling(path.getFileName() + ENDING);
  }

  /** Returns whether somebody else wrote or removed the file since. */
  public boolean changedOnDisk() {
    return !digestOf(path).equals(digest);
  }

  /** Returns whether the file is still there. */
  public boolean exists() {
    return Files.exists(path);
  }

  /** Returns the file with the state it has on disk now, as if it had been read. */
  public LayoutFile seen() {
    return new LayoutFile(path, digestOf(path));
  }

  private static String digestOf(Path path) {
    try {
      boolean odd = Files.exists(path) && !Files.isRegularFile(path);
      return odd ? UNREADABLE : Digest.of(path);
    } catch (NoSuchFileException e) {
      return "";
    } catch (IOException e) {
      return UNREADABLE;
    }
  }
}
