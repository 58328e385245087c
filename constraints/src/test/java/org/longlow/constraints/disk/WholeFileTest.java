package org.longlow.constraints.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

  /** The reader reads without pause, so each write costs what many reads do. */
  private static final int TIMES = Boolean.getBoolean("longlow.long") ? 800 : 100;

  @TempDir Path folder;

  private static void write(Path file, String text) throws IOException {
    WholeFile.write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  private List<Path> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  @Test
  void aFailureLeavesTheOldFileAndNothingBesideIt() throws IOException {
    Path file = Files.writeString(folder.resolve("a.txt"), "old");
    WholeFile.Content fails =
        out -> {
          out.write(new byte[100_000]);
          throw new IOException("No space left on device");
        };
    assertThatThrownBy(() -> WholeFile.write(file, fails))
        .hasMessage(file.toRealPath() + ": No space left on device");
    assertThatThrownBy(() -> WholeFile.replace(file, fails, old -> true))
        .hasMessageContaining("No space left");
    assertThatThrownBy(() -> WholeFile.write(folder.resolve("b"), fails))
        .isInstanceOf(IOException.class);
    assertThat(file).hasContent("old");
    assertThat(left()).containsExactly(file);
  }

  @Test
  void whatIsReplacedIsKeptWhereItIsToBe() throws IOException {
    Path file = Files.writeString(folder.resolve("a.txt"), "old");
    Path kept = folder.resolve("a.replaced.txt");
    WholeFile.Content content = out -> out.write('n');
    assertThat(WholeFile.replace(file, content, old -> false)).isEmpty();
    Files.writeString(file, "old");
    assertThat(WholeFile.replace(file, content, old -> Files.size(old) == 3)).contains(kept);
    assertThat(kept).hasContent("old");
    assertThat(file).hasContent("n");
    assertThat(left()).containsExactly(kept, file);
  }

  @Test
  void filesAndLinksOfGuessableNamesAreLeftAlone() throws IOException {
    Path other = Files.writeString(folder.resolve("other"), "somebody else's");
    Path file = folder.resolve("a.json");
    Path part = Files.writeString(folder.resolve("a.json.part"), "mine");
    Path link = Files.createSymbolicLink(folder.resolve("a.json.tmp"), other);
    write(file, "new");
    assertThat(file).hasContent("new");
    assertThat(part).hasContent("mine");
    assertThat(other).hasContent("somebody else's");
    assertThat(left()).containsExactly(file, part, link, other);
  }

  @Test
  void aLinkStaysAndWhatItPointsToIsReplaced() throws IOException {
    Path deep = Files.createDirectory(folder.resolve("deep"));
    Path real = Files.writeString(deep.resolve("real"), "old");
    Path second = Files.createSymbolicLink(deep.resolve("second"), Path.of("real"));
    Path first = Files.createSymbolicLink(folder.resolve("first"), second);
    write(first, "new");
    assertThat(first).isSymbolicLink();
    assertThat(second).isSymbolicLink();
    assertThat(real).hasContent("new");
    Path round = Files.createSymbolicLink(folder.resolve("round"), folder.resolve("round"));
    assertThatThrownBy(() -> write(round, "new")).hasMessageContaining("circle");
  }

  @Test
  void aPrivateFileReplacesALinkAndNotWhatItPointsTo() throws IOException {
    Path other = Files.writeString(folder.resolve("other"), "somebody else's");
    Path file = Files.createSymbolicLink(folder.resolve("autosave"), other);
    WholeFile.writePrivate(file, out -> out.write('x'));
    assertThat(other).hasContent("somebody else's");
    assertThat(file).isRegularFile().hasContent("x");
    assertThat(Files.isSymbolicLink(file)).isFalse();
  }

  @Test
  void permissionsOfAReplacedFileStayAndPrivateOnesAreTheOwners() throws IOException {
    assumeThat(folder.getFileSystem().supportedFileAttributeViews()).contains("posix");
    Path file = Files.writeString(folder.resolve("a"), "old");
    for (String mode : List.of("rw-rw-r--", "rw-------", "rw-r--rw-")) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
      write(file, mode);
      assertThat(Files.getPosixFilePermissions(file))
          .isEqualTo(PosixFilePermissions.fromString(mode));
    }
    Path fresh = folder.resolve("b");
    write(fresh, "new");
    Path usual = Files.writeString(folder.resolve("c"), "usual");
    assertThat(Files.getPosixFilePermissions(fresh))
        .isEqualTo(Files.getPosixFilePermissions(usual));
    WholeFile.writePrivate(file, out -> out.write(1));
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
  }

  @Test
  void foldersAndDevicesAreRefused() {
    assertThatThrownBy(() -> write(folder, "x"))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("folder");
    assertThatThrownBy(() -> write(folder.resolve("no/a"), "x")).isInstanceOf(IOException.class);
    Path device = Path.of("/dev/null");
    assumeThat(Files.exists(device)).isTrue();
    assertThatThrownBy(() -> write(device, "x")).hasMessageContaining("device");
  }

  @Test
  void onlyWhatKilledWritersLeftIsTakenAway() throws IOException {
    String random = "-00000000-0000-4000-8000-000000000000.new";
    // above the largest process number of Linux, 4194304
    Path dead = Files.writeString(folder.resolve(".longlow-99999999" + random), "half");
    long parent = ProcessHandle.current().parent().map(ProcessHandle::pid).orElseThrow();
    Path alive = Files.writeString(folder.resolve(".longlow-" + parent + random), "half");
    Path others = Files.writeString(folder.resolve(".longlow-notes.new"), "a user's");
    try (Leftovers.Unfinished mine = Leftovers.begin(folder)) {
      Files.writeString(mine.path(), "half");
      assertThat(Leftovers.isUnfinished(mine.path())).isTrue();
      write(folder.resolve("a"), "new");
      assertThat(dead).doesNotExist();
      assertThat(alive).exists();
      assertThat(others).exists();
      assertThat(mine.path()).exists();
    }
    assertThat(left()).containsExactlyInAnyOrder(alive, others, folder.resolve("a"));
  }

  @Test
  void twoWritersAndAReaderNeverSeeHalf() throws Exception {
    Path file = folder.resolve("a");
    Set<String> whole = Set.of("1".repeat(30_000), "2".repeat(40_000));
    write(file, whole.iterator().next());
    AtomicBoolean writing = new AtomicBoolean(true);
    ExecutorService threads = Executors.newFixedThreadPool(3);
    try {
      List<Future<Integer>> writers = new ArrayList<>();
      for (String text : whole) {
        writers.add(
            threads.submit(
                () -> {
                  for (int i = 0; i < TIMES; i++) {
                    write(file, text);
                  }
                  return TIMES;
                }));
      }
      Callable<Integer> reading =
          () -> {
            int read = 0;
            for (; read < TIMES || writing.get(); read++) {
              assertThat(whole.contains(Files.readString(file))).as("a whole file").isTrue();
            }
            return read;
          };
      Future<Integer> reader = threads.submit(reading);
      for (Future<Integer> writer : writers) {
        assertThat(writer.get()).isEqualTo(TIMES);
      }
      writing.set(false);
      assertThat(reader.get()).isGreaterThanOrEqualTo(TIMES);
    } finally {
      threads.shutdownNow();
    }
    assertThat(left()).containsExactly(file);
  }
}
