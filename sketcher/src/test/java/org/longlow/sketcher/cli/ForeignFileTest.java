package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.demo.Demos;

/** A file that somebody else made is kept where a drawing or report is put in its place. */
class ForeignFileTest {

  /** What is written matters, not what of: two wheels and a lug are soon drawn. */
  private static final String SMALL =
      """
      {"longlow": 1, "name": "small",
       "pins": {"r": [0, 300], "f": [1600, 300], "a": [500, 500]}, "parts": {
        "rear": {"kind": "wheel", "end": "rear", "axle": "r", "tyre": "140/70-16"},
        "front": {"kind": "wheel", "end": "front", "axle": "f", "tyre": "110/80-16"},
        "lug": {"kind": "bracket", "frame": "a", "left": 5, "right": 7,
          "outline": {"points": [[0, 0], [60, 0], [60, 30], [0, 30]]}}}}
      """;

  @TempDir Path folder;
  private Path machine;

  @BeforeEach
  void aMachine() throws IOException {
    machine = Files.writeString(folder.resolve("m.json"), SMALL);
  }

  private String make(String command, Path out, String... more) {
    List<Object> words = new ArrayList<>(List.of(command, machine, "--out", out));
    words.addAll(List.of(more));
    Ran ran = Ran.of(words.toArray());
    assertThat(ran.code()).as(ran.err()).isIn(ExitCodes.PASS, ExitCodes.FINDING_FAILS);
    return ran.out();
  }

  @ParameterizedTest
  @CsvSource({"draw,x.svg", "draw,x.pdf", "report,x.html"})
  void itIsKeptOnceAndOurOwnIsReplaced(String command, String name) throws IOException {
    Path out = Files.writeString(folder.resolve(name), "a letter");
    Path kept = folder.resolve(name.replace(".", ".replaced."));
    assertThat(make(command, out))
        .contains("the file that was there is kept as")
        .contains("" + kept.getFileName());
    assertThat(kept).hasContent("a letter");
    long written = Files.size(out);
    assertThat(make(command, out)).doesNotContain("kept as");
    assertThat(Files.size(out)).isEqualTo(written).isGreaterThan(1000);
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactlyInAnyOrder(machine, out, kept);
    }
  }

  /** What Longlow wrote and somebody then changed is somebody's work too. */
  @ParameterizedTest
  @CsvSource({"draw,x.svg", "draw,x.pdf", "report,x.html"})
  void oursChangedByHandIsKept(String command, String name) throws IOException {
    Path out = folder.resolve(name);
    make(command, out);
    String ours = Files.readString(out, StandardCharsets.ISO_8859_1);
    String changed = ours.replaceFirst("Longlow", "Longbow");
    Files.writeString(out, changed, StandardCharsets.ISO_8859_1);
    assertThat(make(command, out)).contains("the file that was there is kept as");
    assertThat(Files.readString(out, StandardCharsets.ISO_8859_1)).isEqualTo(ours);
    Path kept = folder.resolve(name.replace(".", ".replaced."));
    assertThat(Files.readString(kept, StandardCharsets.ISO_8859_1)).isEqualTo(changed);
  }

  @Test
  void aSheetChangedByHandIsKept() throws IOException {
    Files.writeString(machine, Demos.text("dunlin"));
    Path out = folder.resolve("sheets");
    make("templates", out, "--part", "pan");
    Path sheet;
    try (Stream<Path> files = Files.list(out)) {
      sheet =
          files.filter(f -> f.toString().endsWith("-01.svg")).sorted().findFirst().orElseThrow();
    }
    Files.writeString(sheet, Files.readString(sheet) + "<!-- drill here -->");
    assertThat(make("templates", out, "--part", "pan")).contains("01.replaced.svg");
    assertThat(Path.of(sheet.toString().replace(".svg", ".replaced.svg")))
        .content()
        .contains("drill here");
    assertThat(make("templates", out, "--part", "pan"))
        .doesNotContain("kept as")
        .contains("not of this set, so do not cut from them: ");
  }

  @Test
  void whatALinkPointsToIsKeptToo() throws IOException {
    Path letter = Files.writeString(folder.resolve("letter.txt"), "a letter");
    Path link = Files.createSymbolicLink(folder.resolve("x.svg"), letter);
    assertThat(make("draw", link)).contains("letter.replaced.txt");
    assertThat(folder.resolve("letter.replaced.txt")).hasContent("a letter");
  }

  @Test
  void nothingIsKeptTwiceWhereNothingIsReplaced() throws IOException {
    Path out = Files.writeString(folder.resolve("x.svg"), "a letter");
    Ran ran = Ran.of("draw", machine, "--out", out, "--paper", "a4", "--scale", "1:1");
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(out).hasContent("a letter");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactlyInAnyOrder(machine, out);
    }
  }

  @Test
  void anEmptyFileHoldsNothingToKeep() throws IOException {
    Path out = Files.createFile(folder.resolve("x.svg"));
    assertThat(make("draw", out)).doesNotContain("kept as");
  }
}
