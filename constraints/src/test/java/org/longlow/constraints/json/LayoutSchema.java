package org.longlow.constraints.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The published schema of layout files, {@code layout-1.schema.json} (JSON Schema, draft 2020-12).
 *
 * <p>{@link LayoutReader} enforces it with its own checks, because they can say in words what to do
 * and because starting a schema validator costs as long as reading the whole file. Tests run such a
 * validator beside the reader over thousands of spoilt files: both refuse the same ones.
 */
final class LayoutSchema {

  private static final String FILE = "layout-1.schema.json";

  private LayoutSchema() {}

  static String text() {
    try (InputStream in = LayoutSchema.class.getResourceAsStream(FILE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(FILE + " cannot be read from the program itself", e);
    }
  }
}
