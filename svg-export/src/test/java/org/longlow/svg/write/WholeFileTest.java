package org.longlow.svg.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Samples;

class WholeFileTest {

  @TempDir Path folder;

  @Test
  void aFailureLeavesTheOldFileAndNothingBesideIt() throws IOException {
    Path file = folder.resolve("a.txt");
    Files.writeString(file, "old");
    assertThatThrownBy(
            () ->
                WholeFile.write(
                    file,
                    out -> {
                      out.write("half".getBytes(StandardCharsets.UTF_8));
                      throw new IOException("disk full");
                    }))
        .hasMessage("disk full");
    assertThat(file).hasContent("old");
    try (var all = Files.list(folder)) {
      assertThat(all).containsExactly(file);
    }
  }

  @Test
  void filesAreReplacedAndFoldersMade() throws IOException {
    Path file = folder.resolve("deep/er/a.svg");
    Page page = Page.of("p", Paper.A4, Samples.bracket());
    SvgWriter.write(page, Palette.CARD, file);
    String first = Files.readString(file);
    SvgWriter.write(page, Palette.CARD, file);
    assertThat(file).hasContent(first);
    Path pdf = folder.resolve("a.pdf");
    PdfWriter.write(List.of(page), Palette.CARD, PdfInfo.titled("p"), pdf);
    assertThat(pdf).isNotEmptyFile();
    try (var all = Files.list(file.getParent())) {
      assertThat(all).containsExactly(file);
    }
  }

  @Test
  void aFolderIsNotOverwritten() {
    assertThatThrownBy(() -> WholeFile.write(folder, out -> out.write(1)))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("folder");
  }
}
