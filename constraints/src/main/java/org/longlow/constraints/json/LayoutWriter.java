package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.disk.WholeFile;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.layout.Layout;

/**
 * Writes layout files.
 *
 * <p>The order is that of the layout, formulas stay as the user wrote them, and what has its usual
 * value is left out. Reading the text again gives an equal layout (of a traced outline, file, path
 * and scale are written, and its vertices are read from there).
 */
public final class LayoutWriter {

  private static final Json.Style STYLE = new Json.Style(110, 2, Set.of("measures", "pins"));

  /** The key for the version of the file format. */
  static final String VERSION = "longlow";

  private LayoutWriter() {}

  /** Returns the text of the layout file, indented, one pin or measure a line. */
  public static String toJson(Layout layout) {
    return Json.pretty(tree(layout), STYLE);
  }

  /**
   * Saves {@code layout} as {@code file}, see {@link WholeFile#write}.
   *
   * @throws IOException if it cannot be written; the older file is then as it was
   */
  public static void save(Layout layout, Path file) throws IOException {
    byte[] text = toJson(layout).getBytes(StandardCharsets.UTF_8);
    WholeFile.write(file, out -> out.write(text));
  }

  /**
   * As {@link #save}; a file that was there is kept beside, see {@link WholeFile#replace}.
   *
   * @return the file kept
   * @throws IOException if it cannot be written; the older file is then as it was
   */
  public static Optional<Path> saveAndKeep(Layout layout, Path file) throws IOException {
    byte[] text = toJson(layout).getBytes(StandardCharsets.UTF_8);
    return WholeFile.replace(file, out -> out.write(text), old -> true);
  }

  /**
   * Saves {@code layout} so that only its owner reads it, see {@link WholeFile#writePrivate}.
   *
   * @throws IOException if it cannot be written; the older file is then as it was
   */
  public static void savePrivate(Layout layout, Path file) throws IOException {
    byte[] text = toJson(layout).getBytes(StandardCharsets.UTF_8);
    WholeFile.writePrivate(file, out -> out.write(text));
  }

  static ObjectNode tree(Layout layout) {
    ObjectNode top = Json.NODES.objectNode().put(VERSION, Layout.FILE_VERSION);
    top.setAll(DocumentWriter.tree(Document.LAYOUT, layout));
    return top;
  }
}
