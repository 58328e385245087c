package org.longlow.constraints.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.layout.Layout;

/** The small complete layout that the tests start from. */
final class Plank {

  private static final String TEXT = read();

  /** Set where code changes while the tests run: a layout read before would hide the change. */
  private static final boolean ANEW = Boolean.getBoolean("longlow.studiesAnew");

  private Plank() {}

  static String text() {
    return TEXT;
  }

  private static String read() {
    try (InputStream in = Plank.class.getResourceAsStream("plank.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Layout layout() {
    return ANEW ? layout(TEXT) : AsFiled.LAYOUT;
  }

  /** Read once, when it is first asked for. */
  private static final class AsFiled {
    private static final Layout LAYOUT = layout(TEXT);
  }

  static Layout layout(String text) {
    return layout(text, null);
  }

  static Layout layout(String text, Path folder) {
    ReadResult result = LayoutReader.read(text, folder);
    if (result instanceof ReadResult.Read read) {
      return read.layout();
    }
    throw new AssertionError("refused: " + lines(result));
  }

  /** Returns plank with one piece of its text replaced, which must be there exactly once. */
  static String with(String piece, String replacement) {
    String text = text();
    int at = text.indexOf(piece);
    if (at < 0 || text.indexOf(piece, at + 1) >= 0) {
      throw new IllegalArgumentException("not exactly once in plank: " + piece);
    }
    return text.replace(piece, replacement);
  }

  static List<Fault> faults(String text) {
    return faults(LayoutReader.read(text, null));
  }

  static List<Fault> faults(ReadResult result) {
    return result instanceof ReadResult.Refused refused ? refused.faults() : List.of();
  }

  static String lines(ReadResult result) {
    return faults(result).stream().map(Fault::line).collect(Collectors.joining("\n"));
  }
}
