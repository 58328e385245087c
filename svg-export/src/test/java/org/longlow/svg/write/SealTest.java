package org.longlow.svg.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Samples;

/** A seal holds for the bytes it was set on and for no others. */
class SealTest {

  @TempDir Path folder;

  private static Page page() {
    return Page.of("page", Paper.A4, Samples.bracket());
  }

  private static byte[] svg() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(page(), Palette.CARD, out);
    return out.toByteArray();
  }

  private static byte[] pdf() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfWriter.write(List.of(page()), Palette.CARD, PdfInfo.titled("a"), out);
    return out.toByteArray();
  }

  private boolean holds(byte[] bytes) throws IOException {
    return Seal.holds(Files.write(folder.resolve("x"), bytes));
  }

  @Test
  void eachChangedByteBreaksIt() throws IOException {
    Random random = new Random(7);
    for (byte[] plain : List.of(svg(), pdf())) {
      byte[] sealed = Seal.on(plain);
      assertThat(holds(plain)).isFalse();
      assertThat(holds(sealed)).isTrue();
      for (int i = 0; i < 50; i++) {
        byte[] changed = sealed.clone();
        changed[random.nextInt(changed.length)] ^= 1;
        assertThat(holds(changed)).isFalse();
      }
      byte[] longer = Arrays.copyOf(sealed, sealed.length + 1);
      assertThat(holds(longer)).isFalse();
      assertThat(holds(Arrays.copyOf(sealed, sealed.length - 1))).isFalse();
    }
  }

  @Test
  void nothingElseHasOne() throws IOException {
    assertThat(holds(new byte[0])).isFalse();
    assertThat(holds("a letter".getBytes(StandardCharsets.UTF_8))).isFalse();
  }

  /** The bytes of the document stay, its end is where a reader looks for it. */
  @Test
  void aSealedPdfIsASoundOne() throws IOException {
    byte[] plain = pdf();
    byte[] sealed = Seal.on(plain);
    String text = new String(sealed, StandardCharsets.ISO_8859_1);
    assertThat(text).matches("(?s).*\nstartxref\n\\d+\n%%EOF\n");
    assertThat(text.replaceFirst("(?m)^% Unchanged .*\n", ""))
        .isEqualTo(new String(plain, StandardCharsets.ISO_8859_1));
    try (PDDocument document = Loader.loadPDF(sealed)) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
    }
  }
}
