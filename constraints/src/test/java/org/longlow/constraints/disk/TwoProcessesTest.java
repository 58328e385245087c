package org.longlow.constraints.disk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs that write one file without pause while a third reads it. */
class TwoProcessesTest {

  private static final int WRITES = Boolean.getBoolean("longlow.long") ? 800 : 100;

  @TempDir Path folder;

  /** Writes one of two texts again and again. */
  static final class Writing {

    private Writing() {}

    public static void main(String[] args) throws IOException {
      Path file = Path.of(args[0]);
      byte[] bytes = text(args[1].charAt(0)).getBytes(StandardCharsets.UTF_8);
      int times = Integer.parseInt(args[2]);
      for (int i = 0; i < times; i++) {
        WholeFile.write(file, out -> out.write(bytes));
      }
    }
  }

  /** Longer than any buffer, and told from its half by its end. */
  private static String text(char letter) {
    return String.valueOf(letter).repeat(100_000) + "end";
  }

  @Test
  void everyReaderSeesOneWholeTextAndNoWriterFails() throws Exception {
    Path file = folder.resolve("shared.json");
    Files.writeString(file, text('a'));
    List<Process> writers = new ArrayList<>();
    for (String letter : List.of("a", "b")) {
      writers.add(
          new ProcessBuilder(
                  ProcessHandle.current().info().command().orElse("java"),
                  "-Xshare:auto",
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty(
                      "surefire.test.class.path", System.getProperty("java.class.path")),
                  Writing.class.getName(),
                  file.toString(),
                  letter,
                  String.valueOf(WRITES))
              .redirectErrorStream(true)
              .redirectOutput(folder.resolve("said-" + letter).toFile())
              .start());
    }
    byte[] a = text('a').getBytes(StandardCharsets.UTF_8);
    byte[] b = text('b').getBytes(StandardCharsets.UTF_8);
    int reads = 0;
    while (reads < WRITES || writers.stream().anyMatch(Process::isAlive)) {
      byte[] read = Files.readAllBytes(file);
      assertThat(Arrays.equals(read, a) || Arrays.equals(read, b)).as("one whole text").isTrue();
      reads++;
    }
    for (Process writer : writers) {
      assertThat(writer.waitFor()).as(Files.readString(folder.resolve("said-a"))).isZero();
    }
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left.map(p -> p.getFileName().toString()))
          .containsExactlyInAnyOrder("shared.json", "said-a", "said-b");
    }
  }
}
