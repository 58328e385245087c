package org.longlow.constraints.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PartFileTest {

  @TempDir Path folder;

  private Path whole() {
    return folder.resolve("table.csv");
  }

  @Test
  void linesAreThereAgainForTheSameWorkOnly() throws IOException {
    try (PartFile part = PartFile.beside(whole(), "work 1")) {
      assertThat(part.before()).isEmpty();
      part.add(List.of("a", "bö"));
      part.add(List.of("c"));
    }
    Path path = folder.resolve("table.csv.part");
    // killed in the middle of a line
    Files.writeString(path, Files.readString(path) + "half");
    try (PartFile part = PartFile.beside(whole(), "work 1")) {
      assertThat(part.before()).containsExactly("a", "bö", "c");
      part.add(List.of("d"));
    }
    assertThat(Files.readString(path)).isEqualTo("work 1\na\nbö\nc\nd\n");
    try (PartFile part = PartFile.beside(whole(), "work 12")) {
      assertThat(part.before()).isEmpty();
      assertThat(part.aside()).contains(folder.resolve("table.csv.part.1"));
    }
    assertThat(Files.readString(path)).isEqualTo("work 12\n");
    assertThat(folder.resolve("table.csv.part.1")).hasContent("work 1\na\nbö\nc\nd\n");
    // begun, with nothing done: nothing is lost with it; what was put aside before stays
    try (PartFile part = PartFile.beside(whole(), "work 3")) {
      assertThat(part.aside()).isEmpty();
      part.add(List.of("e"));
    }
    try (PartFile part = PartFile.beside(whole(), "work 4")) {
      assertThat(part.aside()).contains(folder.resolve("table.csv.part.2"));
    }
    assertThat(folder.resolve("table.csv.part.2")).hasContent("work 3\ne\n");
    PartFile.drop(whole());
    assertThat(path).doesNotExist();
    PartFile.drop(whole());
  }

  @Test
  void twoRunsAndOddFilesAreRefused() throws IOException {
    try (PartFile part = PartFile.beside(whole(), "work")) {
      assertThatThrownBy(() -> PartFile.beside(whole(), "work"))
          .hasMessageContaining("another run is at it");
      part.add(List.of("still mine"));
    }
    Files.createDirectories(folder.resolve("other.csv.part"));
    assertThatThrownBy(() -> PartFile.beside(folder.resolve("other.csv"), "work"))
        .hasMessageContaining("no plain file");
  }
}
