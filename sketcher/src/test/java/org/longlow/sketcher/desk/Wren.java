package org.longlow.sketcher.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;

/** The small machine that the tests of the session and the window work on. */
public final class Wren {

  private Wren() {}

  /** Returns the text of its layout file. */
  public static String text() {
    try (InputStream in = Wren.class.getResourceAsStream("wren.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns its layout. */
  public static Layout layout() {
    ReadResult result = LayoutReader.read(text(), null);
    if (result instanceof ReadResult.Read read) {
      return read.layout();
    }
    throw new AssertionError(
        ((ReadResult.Refused) result).faults().stream().map(Fault::line).toList().toString());
  }

  /** Writes it as {@code wren.json} into {@code folder}. */
  public static Path file(Path folder) throws IOException {
    return Files.writeString(folder.resolve("wren.json"), text());
  }
}
