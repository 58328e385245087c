package org.longlow.constraints.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.AbstractList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All files or none, on a full disk, where a move fails, and where it is killed. */
class WholeSetTest {

  /** What starts with "mine" is somebody's work. */
  private static final WholeFile.Keeping KEEPING = old -> Files.readString(old).startsWith("mine");

  @TempDir Path folder;

  private Map<String, String> all() throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> !f.equals(folder)).toList()) {
        all.put(
            folder.relativize(file).toString(),
            Files.isDirectory(file) ? "a folder" : Files.readString(file));
      }
    }
    return all;
  }

  private void old() throws IOException {
    Files.writeString(folder.resolve("a"), "old a");
    Files.writeString(folder.resolve("b"), "mine b");
    Files.writeString(folder.resolve("d"), "old d");
    Files.writeString(folder.resolve("other"), "other");
  }

  private static WholeFile.Content text(String text) {
    return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  private WholeSet set() throws IOException {
    WholeSet set = new WholeSet(folder);
    for (String name : List.of("a", "b", "c")) {
      set.add(name, text("new " + name));
    }
    return set;
  }

  @Test
  void allIsPutAndWhatIsSomebodysIsKept() throws IOException {
    old();
    try (WholeSet set = set()) {
      assertThat(set.put(List.of(folder.resolve("d")), KEEPING))
          .containsExactly(folder.toRealPath().resolve("b.replaced"));
    }
    assertThat(all())
        .isEqualTo(
            Map.of(
                "a",
                "new a",
                "b",
                "new b",
                "c",
                "new c",
                "b.replaced",
                "mine b",
                "other",
                "other"));
  }

  @Test
  void aFullDiskChangesNothing() throws IOException {
    old();
    Map<String, String> before = all();
    try (WholeSet set = set()) {
      assertThatThrownBy(
              () ->
                  set.add(
                      "e",
                      out -> {
                        out.write(1);
                        throw new IOException("No space left on device");
                      }))
          .hasMessage(folder.resolve("e") + ": No space left on device");
    }
    assertThat(all()).isEqualTo(before);
  }

  /** Every move in turn fails, for its file is gone. */
  @Test
  void aMoveThatFailsPutsAllBack() throws IOException {
    old();
    Map<String, String> before = all();
    for (String lost : List.of("new a", "new b", "new c")) {
      try (WholeSet set = set()) {
        try (Stream<Path> files = Files.list(folder)) {
          for (Path file : files.filter(Leftovers::isUnfinished).toList()) {
            if (Files.readString(file).equals(lost)) {
              Files.delete(file);
            }
          }
        }
        assertThatThrownBy(() -> set.put(List.of(folder.resolve("d")), KEEPING))
            .isInstanceOf(IOException.class);
      }
      assertThat(all()).as(lost).isEqualTo(before);
    }
  }

  /** Stops as a kill would, with all new files in place and some old ones not yet gone. */
  private void killed() throws IOException {
    List<Path> gone =
        new AbstractList<>() {
          @Override
          public Path get(int i) {
            if (i == 1) {
              throw new AssertionError("killed");
            }
            return folder.resolve("d");
          }

          @Override
          public int size() {
            return 2;
          }
        };
    try (WholeSet set = set()) {
      assertThatThrownBy(() -> set.put(gone, KEEPING)).hasMessage("killed");
    }
    assertThat(WholeSet.isHalf(folder)).isTrue();
    assertThat(folder.resolve("a")).hasContent("new a");
    assertThat(folder.resolve("d")).doesNotExist();
  }

  @Test
  void whatWasKilledIsPutBack() throws IOException {
    old();
    killed();
    assertThat(WholeSet.mend(folder, KEEPING)).isTrue();
    assertThat(all())
        .isEqualTo(
            Map.of(
                "a",
                "old a",
                "b",
                "mine b",
                "b.replaced",
                "mine b",
                "d",
                "old d",
                "other",
                "other"));
    assertThat(WholeSet.mend(folder, KEEPING)).isFalse();
  }

  @Test
  void whatSomebodyMadeSinceIsKept() throws IOException {
    old();
    killed();
    Files.writeString(folder.resolve("a"), "mine a");
    Files.writeString(folder.resolve("c"), "mine c");
    assertThat(WholeSet.mend(folder, KEEPING)).isTrue();
    assertThat(all())
        .containsEntry("a", "old a")
        .containsEntry("a.replaced", "mine a")
        .containsEntry("c", "mine c")
        .doesNotContainKey(WholeSet.BEFORE);
  }

  @Test
  void aFolderOfThatNameIsNotOurs() throws IOException {
    old();
    Path theirs = Files.createDirectory(folder.resolve(WholeSet.BEFORE));
    Files.writeString(theirs.resolve("x"), "theirs");
    Map<String, String> before = all();
    assertThat(WholeSet.mend(folder, KEEPING)).isFalse();
    try (WholeSet set = set()) {
      assertThatThrownBy(() -> set.put(List.of(), old -> false))
          .hasMessageContaining("move it elsewhere");
      assertThatThrownBy(() -> set.put(List.of(), KEEPING)).hasMessageContaining("move it");
    }
    assertThat(all()).isEqualTo(before);
  }

  /** Killed with the folder for old files just made, then while its list was being written. */
  @Test
  void aSetStoppedBeforeItsListIsTakenOut() throws IOException {
    old();
    Map<String, String> whole = all();
    Path made = folder.resolve(WholeSet.BEFORE);
    for (boolean writing : List.of(false, true)) {
      Files.createDirectory(made);
      if (writing) {
        // of this process, which is alive: who calls has seen to it that nobody else puts a set
        Files.writeString(Leftovers.begin(made).path(), "half a li");
      }
      assertThat(WholeSet.mend(folder, KEEPING)).isTrue();
      assertThat(all()).isEqualTo(whole);
    }
  }

  /** Done, and killed while the old files were being taken away: none of them is put back. */
  @Test
  void whatMayGoGoesInTheEnd() throws IOException {
    Path made = Files.createDirectory(folder.resolve(WholeSet.BEFORE));
    Files.writeString(made.resolve("may-be-deleted.txt"), "");
    Files.createDirectories(made.resolve("stuck").resolve("in it"));
    assertThatThrownBy(() -> WholeSet.mend(folder, KEEPING)).isInstanceOf(IOException.class);
    assertThat(made.resolve("may-be-deleted.txt")).exists();
  }

  /** A second run after a kill finds the copy that the first one kept. */
  @Test
  void oneCopyIsKeptOfOneFile() throws IOException {
    old();
    Path copy = Beside.keep(folder.resolve("b"), "replaced");
    try (WholeSet set = set()) {
      assertThat(set.put(List.of(), KEEPING)).containsExactly(copy);
    }
    assertThat(all()).containsEntry("b.replaced", "mine b").doesNotContainKey("b.replaced-2");
  }

  @Test
  void aListThatWasChangedReachesNowhereElse() throws IOException {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    Files.writeString(folder.resolve("a"), "outside");
    Path before = Files.createDirectory(inner.resolve(WholeSet.BEFORE));
    Files.writeString(before.resolve("put-where-nothing-was.txt"), "../a");
    assertThatThrownBy(() -> WholeSet.mend(inner, old -> false)).isInstanceOf(IOException.class);
    assertThat(folder.resolve("a")).hasContent("outside");
  }
}
