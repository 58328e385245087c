package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.disk.WholeFile;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.cli.Longlow;
import org.longlow.svg.write.Seal;

/**
 * Programs that write without pause are killed at moments nobody chose: each file is the old or the
 * new one whole, and the next write takes away what the killed one left. {@code -Dlonglow.kills=50}
 * kills more than the one of every build, which is not told; with the long sweeps every other one
 * is told to end, and tidies up.
 */
class KillTest {

  private static final int KILLS =
      Integer.getInteger("longlow.kills", Boolean.getBoolean("longlow.long") ? 8 : 1);

  @TempDir Path folder;

  /** Writes everything that is written, again and again, two layouts in turn. */
  static final class Writing {

    private Writing() {}

    public static void main(String[] args) throws IOException {
      Path folder = Path.of(args[0]);
      Path file = folder.resolve("wren.json");
      Layout[] layouts = {read(folder.resolve("a.json")), read(folder.resolve("b.json"))};
      PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
      for (int i = 0; ; i++) {
        LayoutWriter.save(layouts[i % 2], file);
        Autosave.write(layouts[i % 2], folder.resolve("copy.json"), Optional.empty());
        for (String[] command :
            new String[][] {
              {"draw", file.toString(), "--out", folder.resolve("wren.svg").toString()},
              {"draw", file.toString(), "--out", folder.resolve("wren.pdf").toString()},
              {"report", file.toString(), "--out", folder.resolve("wren.html").toString()},
              {
                "templates",
                file.toString(),
                "--out",
                folder.resolve("sheets").toString(),
                "--part",
                "pan"
              }
            }) {
          Longlow.run(nowhere, nowhere, command);
        }
        Files.writeString(folder.resolve("round"), Integer.toString(i));
      }
    }
  }

  private static Layout read(Path file) {
    return ((ReadResult.Read) LayoutReader.read(file)).layout();
  }

  @Test
  void everyFileIsWholeWheneverItsWriterIsKilled() throws Exception {
    Path wren = Wren.file(folder);
    String text = Files.readString(wren);
    Files.writeString(folder.resolve("a.json"), text);
    String other = text.replaceFirst("\"name\": \"wren\"", "\"name\": \"robin\"");
    assertThat(other).isNotEqualTo(text);
    Files.writeString(folder.resolve("b.json"), other);
    List<Layout> either = List.of(read(folder.resolve("a.json")), read(folder.resolve("b.json")));
    SplittableRandom random = new SplittableRandom(20261128);
    for (int kill = 0; kill < KILLS; kill++) {
      Files.deleteIfExists(folder.resolve("round"));
      Process child =
          new ProcessBuilder(
                  ProcessHandle.current().info().command().orElse("java"),
                  "-Xshare:auto",
                  "-XX:TieredStopAtLevel=1",
                  "-Djava.awt.headless=true",
                  "-cp",
                  System.getProperty(
                      "surefire.test.class.path", System.getProperty("java.class.path")),
                  Writing.class.getName(),
                  folder.toString())
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(new File(folder.toFile(), "trouble"))
              .start();
      try {
        for (int i = 0; i < 12_000 && !Files.exists(folder.resolve("round")); i++) {
          assertThat(child.isAlive()).as(trouble()).isTrue();
          TimeUnit.MILLISECONDS.sleep(50);
        }
        assertThat(folder.resolve("round")).as(trouble()).exists();
        TimeUnit.MILLISECONDS.sleep(random.nextInt(400));
        if (kill % 2 == 1) {
          child.destroy();
          assertThat(child.waitFor(20, TimeUnit.SECONDS)).isTrue();
          if (File.separatorChar == '/') {
            nothingUnfinished(); // whoever is told to end tidies up
          }
        }
      } finally {
        child.destroyForcibly().waitFor();
      }
      for (String name : List.of("wren.json", "copy.json")) {
        assertThat(read(folder.resolve(name))).as(name).isIn(either);
      }
      whole("wren.svg");
      whole("wren.html");
      whole("wren.pdf");
      try (Stream<Path> sheets = Files.list(folder.resolve("sheets"))) {
        for (Path sheet : sheets.filter(s -> s.toString().endsWith(".svg")).toList()) {
          whole("sheets/" + sheet.getFileName());
        }
      }
    }
    WholeFile.write(folder.resolve("last"), out -> out.write('x'));
    WholeFile.write(folder.resolve("sheets/last"), out -> out.write('x'));
    nothingUnfinished();
  }

  private void nothingUnfinished() throws IOException {
    try (Stream<Path> left = Files.walk(folder)) {
      assertThat(left.map(p -> p.getFileName().toString()))
          .noneMatch(name -> name.endsWith(".new"));
    }
  }

  private String trouble() throws IOException {
    Path file = folder.resolve("trouble");
    return Files.exists(file) ? Files.readString(file) : "";
  }

  /** Its seal holds only for all of its bytes. */
  private void whole(String name) throws IOException {
    assertThat(Seal.holds(folder.resolve(name))).as(name).isTrue();
  }
}
