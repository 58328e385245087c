package org.longlow.sketcher.app;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.disk.WholeFile;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.write.PdfInfo;
import org.longlow.svg.write.PdfWriter;
import org.longlow.svg.write.Seal;
import org.longlow.svg.write.SvgWriter;

/**
 * Writes drawings and pages under a seal. What stands there without an unbroken one was made by
 * somebody else, or changed by hand, and is kept beside, such as page.replaced.html; each method
 * returns it.
 */
final class Output {

  private static final Palette PALETTE = Palette.CARD;

  private Output() {}

  static Optional<Path> svg(Page page, Path file) throws IOException {
    return sealed(file, out -> SvgWriter.write(page, PALETTE, out));
  }

  static Optional<Path> pdf(List<Page> pages, String title, Path file) throws IOException {
    return sealed(file, out -> PdfWriter.write(pages, PALETTE, PdfInfo.titled(title), out));
  }

  static Optional<Path> html(String page, Path file) throws IOException {
    return sealed(file, out -> out.write(page.getBytes(StandardCharsets.UTF_8)));
  }

  private static Optional<Path> sealed(Path file, WholeFile.Content content) throws IOException {
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    content.writeTo(plain);
    byte[] bytes = Seal.on(plain.toByteArray());
    folder(file);
    return WholeFile.replace(
        file, out -> out.write(bytes), old -> Files.size(old) > 0 && !Seal.holds(old));
  }

  /** Makes the folder that {@code file} is to be in. */
  static void folder(Path file) throws IOException {
    Path parent = file.toAbsolutePath().getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
  }
}
