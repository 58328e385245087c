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

  private Output() {}

  static Optional<Path> svg(Page page, Path file) throws IOException {
    return place(svg(page), file);
  }

  static Optional<Path> svg(Page page, Palette palette, Path file) throws IOException {
    return place(svg(page, palette), file);
  }

  static Optional<Path> pdf(List<Page> pages, String title, Path file) throws IOException {
    return pdf(pages, Palette.CARD, title, file);
  }

  static Optional<Path> pdf(List<Page> pages, Palette palette, String title, Path file)
      throws IOException {
    return place(pdf(pages, palette, title), file);
  }

  static Optional<Path> html(String page, Path file) throws IOException {
    return place(sealed(out -> out.write(page.getBytes(StandardCharsets.UTF_8))), file);
  }

  /** Returns what fills a stream, under a seal. */
  private static byte[] sealed(WholeFile.Content content) throws IOException {
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    content.writeTo(plain);
    return Seal.on(plain.toByteArray());
  }

  /** Returns a page as an SVG file. */
  static byte[] svg(Page page) throws IOException {
    return svg(page, Palette.CARD);
  }

  private static byte[] svg(Page page, Palette palette) throws IOException {
    return sealed(out -> SvgWriter.write(page, palette, out));
  }

  /** Returns pages as a PDF file. */
  static byte[] pdf(List<Page> pages, String title) throws IOException {
    return pdf(pages, Palette.CARD, title);
  }

  private static byte[] pdf(List<Page> pages, Palette palette, String title) throws IOException {
    return sealed(out -> PdfWriter.write(pages, palette, PdfInfo.titled(title), out));
  }

  /** Puts the bytes of a whole file in its place. */
  static Optional<Path> place(byte[] bytes, Path file) throws IOException {
    folder(file);
    return WholeFile.replace(file, out -> out.write(bytes), Output::isSomebodysWork);
  }

  /** Whether a file holds something that has no unbroken seal, nor a line among the sums. */
  static boolean isSomebodysWork(Path file) throws IOException {
    return Files.exists(file)
        && (!Files.isRegularFile(file)
            || Files.size(file) > 0 && !Seal.holds(file) && !ListSums.vouch(file));
  }

  /** Makes the folder that {@code file} is to be in. */
  static void folder(Path file) throws IOException {
    Path parent = file.toAbsolutePath().getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
  }
}
