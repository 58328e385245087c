package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.layout.Layout;

class SaveTest {

  @TempDir Path folder;

  @Test
  void savedFileReadsBackAndNothingStaysBeside() throws IOException {
    Path file = Files.writeString(folder.resolve("plank.json"), "old");
    Layout plank = Plank.layout();
    LayoutWriter.save(plank, file);
    assertThat(LayoutReader.read(file))
        .isInstanceOfSatisfying(
            ReadResult.Read.class, read -> assertThat(read.layout()).isEqualTo(plank));
    assertThat(folder)
        .isDirectoryContaining(p -> p.equals(file))
        .satisfies(
            f -> {
              try (var files = Files.list(f)) {
                assertThat(files).hasSize(1);
              }
            });
  }

  @Test
  void oldFileStaysWholeWhereSavingFails() throws IOException {
    // a folder that is not empty cannot be replaced by a file, on any system and for any user
    Path taken = Files.createDirectory(folder.resolve("plank.json"));
    Path inside = Files.writeString(taken.resolve("inside.txt"), "old");
    assertThatThrownBy(() -> LayoutWriter.save(Plank.layout(), taken))
        .isInstanceOf(IOException.class);
    assertThat(inside).hasContent("old");
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(taken);
    }
  }

  @Test
  void linkIsWrittenThrough() throws IOException {
    Path real = Files.writeString(folder.resolve("real.json"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);
    LayoutWriter.save(Plank.layout(), link);
    assertThat(link).isSymbolicLink();
    assertThat(real).hasContent(LayoutWriter.toJson(Plank.layout()));
  }

  @Test
  void missingFolderIsAnError() {
    assertThatThrownBy(() -> LayoutWriter.save(Plank.layout(), folder.resolve("no/plank.json")))
        .isInstanceOf(IOException.class);
  }
}
