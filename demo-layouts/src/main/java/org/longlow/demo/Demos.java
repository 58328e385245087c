package org.longlow.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.disk.WholeFile;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;

/** The index of the shipped machines. */
public final class Demos {

  private static final List<String> NAMES = List.of("heron", "dunlin", "curlew");

  /** Traced drawings that a machine's file refers to. */
  private static final Map<String, List<String>> DRAWINGS =
      Map.of("curlew", List.of("curlew-single.svg"));

  private Demos() {}

  /** Returns the names of the shipped machines, the fullest first. */
  public static List<String> names() {
    return NAMES;
  }

  /** Returns the layout file of a shipped machine as text. */
  public static String text(String name) {
    return resource(checked(name) + ".json");
  }

  /** Returns the files that the machine's file refers to, by name. */
  public static List<String> drawings(String name) {
    return DRAWINGS.getOrDefault(checked(name), List.of());
  }

  /** Returns the text of a drawing that a machine's file refers to. */
  public static String drawing(String file) {
    return resource(file);
  }

  /** Returns a shipped machine. */
  public static Layout layout(String name) {
    if (drawings(name).isEmpty()) {
      return read(name, null);
    }
    try {
      Path folder = Files.createTempDirectory("longlow");
      try {
        copyDrawings(name, folder);
        return read(name, folder);
      } finally {
        for (String file : drawings(name)) {
          Files.deleteIfExists(folder.resolve(file));
        }
        Files.deleteIfExists(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("no place for the drawings of " + name, e);
    }
  }

  /**
   * Writes a shipped machine's layout file, and the drawings it refers to, into a folder.
   *
   * @param folder made if it is not there; other files of the same names are kept beside, such as
   *     heron.replaced.json
   * @return the layout file
   * @throws IOException if the folder cannot be written
   */
  public static Path copy(String name, Path folder) throws IOException {
    String text = text(name);
    Files.createDirectories(folder);
    copyDrawings(name, folder);
    Path file = folder.resolve(name + ".json");
    write(text, file);
    return file;
  }

  private static void copyDrawings(String name, Path folder) throws IOException {
    for (String file : drawings(name)) {
      write(drawing(file), folder.resolve(file));
    }
  }

  /** A file of that name that says something else is somebody's work: it is kept beside. */
  private static void write(String text, Path file) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (Files.isRegularFile(file)
        && Files.size(file) == bytes.length
        && Arrays.equals(Files.readAllBytes(file), bytes)) {
      return;
    }
    WholeFile.replace(file, out -> out.write(bytes), old -> true);
  }

  private static Layout read(String name, Path folder) {
    ReadResult result = LayoutReader.read(text(name), folder);
    if (result instanceof ReadResult.Refused refused) {
      throw new IllegalStateException(
          "shipped machine "
              + name
              + ": "
              + String.join("; ", refused.faults().stream().map(Fault::line).toList()));
    }
    return ((ReadResult.Read) result).layout();
  }

  private static String checked(String name) {
    if (!NAMES.contains(name)) {
      throw new IllegalArgumentException(
          "there is no shipped machine " + name + "; there are " + String.join(", ", NAMES));
    }
    return name;
  }

  private static String resource(String file) {
    try (InputStream in = Demos.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException("nothing called " + file + " is shipped");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("reading the shipped " + file, e);
    }
  }
}
