package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import org.longlow.constraints.document.Faults;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.layout.Layout;

/**
 * Reads layout files.
 *
 * <p>Whatever a file holds, the answer is a {@link ReadResult}; no content makes this throw. All
 * faults come at once. Traced outlines are read from SVG files within the folder of the layout
 * file; nothing is ever fetched from elsewhere.
 */
public final class LayoutReader {

  /** UTF-8 takes at most four bytes for a character. */
  private static final int MAX_BYTES = 4 * Json.MAX_CHARS;

  private LayoutReader() {}

  /** Reads the layout file {@code file}. */
  public static ReadResult read(Path file) {
    Faults faults = new Faults();
    Optional<String> text = text(file, faults);
    if (text.isEmpty()) {
      return new ReadResult.Refused(faults.list());
    }
    return read(text.get(), file.toAbsolutePath().getParent());
  }

  /**
   * Reads the text of a layout file.
   *
   * @param text JSON
   * @param baseFolder where traced outlines are looked for; null if there is nowhere
   */
  public static ReadResult read(String text, Path baseFolder) {
    Faults faults = new Faults();
    Optional<JsonNode> root = Json.parse(text, faults);
    if (root.isEmpty()) {
      return new ReadResult.Refused(faults.list());
    }
    return read(root.get(), baseFolder, faults);
  }

  static ReadResult read(JsonNode root, Path baseFolder, Faults faults) {
    DocumentReader reader = new DocumentReader(faults);
    Optional<Layout> raw = reader.layout(root);
    if (raw.isEmpty()) {
      return new ReadResult.Refused(faults.list());
    }
    return result(
        LayoutFaults.verdict(raw.get(), SvgTrace.in(baseFolder), faults, reader.written()));
  }

  private static ReadResult result(LayoutFaults.Verdict verdict) {
    return verdict.faults().isEmpty()
        ? new ReadResult.Read(verdict.layout(), verdict.notes())
        : new ReadResult.Refused(verdict.faults());
  }

  private static Optional<String> text(Path file, Faults faults) {
    String name = Json.quoted(String.valueOf(file.getFileName()));
    try {
      if (Files.isDirectory(file)) {
        faults.structure("$", name, "is a folder, not a file", "name the layout file in it");
        return Optional.empty();
      }
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        faults.structure(
            "$", name, "is no ordinary file but a pipe or a device", "name the layout file");
        return Optional.empty();
      }
      byte[] bytes;
      try (InputStream in = Files.newInputStream(file)) {
        // bounded whatever its size was a moment ago
        bytes = in.readNBytes(MAX_BYTES + 1);
      }
      if (bytes.length > MAX_BYTES) {
        faults.structure(
            "$",
            name,
            "is longer than " + MAX_BYTES + " bytes, far beyond any layout",
            "look whether it is the right file");
        return Optional.empty();
      }
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (NoSuchFileException e) {
      faults.structure("$", name, "does not exist", "look at the name and the folder");
    } catch (CharacterCodingException e) {
      faults.structure("$", name, "is not UTF-8 text", "save it as UTF-8");
    } catch (IOException e) {
      faults.structure("$", name, "cannot be read", "look at its permissions");
    }
    return Optional.empty();
  }

  /**
   * Judges a layout that was changed in memory as if it stood in a file: traced outlines are read
   * again, because what scales them may have changed.
   *
   * @param baseFolder where traced outlines are looked for, or null
   */
  public static ReadResult checked(Layout layout, Path baseFolder) {
    return result(LayoutFaults.verdict(layout, SvgTrace.in(baseFolder)));
  }
}
