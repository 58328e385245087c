package org.longlow.constraints.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/**
 * A file that a layout names: an ordinary one in the folder of the layout file or below, and no
 * larger than it may be. Nothing is ever read from elsewhere.
 *
 * @param path where it is, or null
 * @param fault why there is none, or null
 * @param remedy what to do about it
 */
public record NamedFile(Path path, String fault, String remedy) {

  /**
   * What is looked for.
   *
   * @param one such as {@code SVG file}
   * @param article before it
   * @param mostBytes of it
   * @param smaller what to do about a larger one
   */
  public record Sort(String one, String article, long mostBytes, String smaller) {}

  private static NamedFile fault(String fault, String remedy) {
    return new NamedFile(null, fault, remedy);
  }

  /**
   * Looks for the file called {@code name}.
   *
   * @param folder of the layout file, or null
   * @param name relative to it
   */
  public static NamedFile in(Path folder, String name, Sort sort) {
    String write = "write the name of " + sort.article() + " " + sort.one();
    String put = "put the " + sort.one() + " beside the layout file";
    if (folder == null) {
      return fault("cannot be found: the layout has no folder yet", "save the layout first");
    }
    try {
      Path relative = Path.of(name);
      Path within = folder.resolve(relative).normalize();
      if (relative.isAbsolute()
          || name.contains("\\")
          || name.contains(":")
          || !within.startsWith(folder.normalize())) {
        return fault(
            "lies outside the folder of the layout file", put + " and write its name only");
      }
      if (Files.isDirectory(within)) {
        return fault("is a folder", write);
      }
      if (!Files.exists(within)) {
        return fault("does not exist", put);
      }
      if (!Files.isRegularFile(within)) {
        return fault("is no ordinary file", write);
      }
      if (!within.toRealPath().startsWith(folder.toRealPath())) {
        return fault("is a link to a file outside the folder", "copy the file itself there");
      }
      if (Files.size(within) > sort.mostBytes()) {
        return fault("is larger than " + sort.mostBytes() / 1_000_000 + " MB", sort.smaller());
      }
      return new NamedFile(within, null, "");
    } catch (InvalidPathException e) {
      return fault("is no file name", write);
    } catch (IOException e) {
      return fault("cannot be read", "look at its permissions");
    }
  }
}
