package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.demo.Demos;

/** Whoever looks for a word of the trade finds what is called otherwise here. */
class AlsoCalledTest {

  private static final List<Things.Thing> HERON = Things.of(Demos.layout("heron"), List.of());
  private static final List<Things.Thing> GALLERY = Things.of(Gallery.layout(), List.of());

  /** The table, read otherwise than the code does. */
  static Map<String, List<String>> table() throws IOException {
    Map<String, List<String>> table = new HashMap<>();
    Pattern row = Pattern.compile("^([^#:]+): (.+)$", Pattern.MULTILINE);
    try (InputStream in = AlsoCalled.class.getResourceAsStream("also-called.txt")) {
      Matcher m = row.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      while (m.find()) {
        assertThat(table.put(m.group(1), List.of(m.group(2).split(", ")))).as("once").isNull();
      }
    }
    assertThat(table).hasSizeGreaterThan(50);
    return table;
  }

  private static List<String> found(List<Things.Thing> all, String typed) {
    return Things.matching(all, typed).stream().map(Things.Thing::subject).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "seat, pan", "saddle, pan", "headlamp, headlamp", "headlight, headlamp", "frame, rail",
    "fork, telescopicFork", "arm, swingarm", "foot peg, pegs", "Foot  Pegs, pegs", "foot, pegs",
    "swing arm, swingarm", "fairing, cowl", "motor, engine", "kickstand, stand"
  })
  void aThingIsFoundByWhatElseItIsCalled(String typed, String specimen) {
    assertThat(found(GALLERY, typed)).contains("part:" + specimen);
    assertThat(found(GALLERY, typed)).doesNotContain("part:frontWheel");
  }

  @ParameterizedTest
  @CsvSource({
    "undo, take back",
    "redo, do again",
    "print, paper",
    "delete, take out",
    "del, take out",
    "mirror, other side",
    "photo, trace",
    "picture, trace",
    "measure, dimensions",
    "dimension, measure a length",
    "delete picked, take out"
  })
  void soIsWhatCanBeDone(String typed, String deed) {
    assertThat(AlsoCalled.matches(deed + " what is picked", typed)).isTrue();
    assertThat(AlsoCalled.matches("fit the machine into the drawing", typed)).isFalse();
  }

  @Test
  void whatIsCalledSoComesBeforeWhatIsAlsoCalledSo() {
    List<String> rails = found(HERON, "rail");
    List<String> frames = found(HERON, "frame");
    assertThat(frames).containsAll(rails);
    int first = frames.indexOf(rails.get(0));
    long bySaying =
        HERON.stream().filter(t -> t.words().contains("frame")).map(Things.Thing::subject).count();
    assertThat(first).isGreaterThanOrEqualTo((int) bySaying);
  }

  @Test
  void twoWordsMustBothBeMeant() {
    assertThat(AlsoCalled.matches("pan cushion rider", "seat rider")).isTrue();
    assertThat(AlsoCalled.matches("pan cushion", "seat rider")).isFalse();
    assertThat(AlsoCalled.matches("take out", "un")).as("two letters tell nothing").isFalse();
    assertThat(AlsoCalled.matches("anything", " ")).isTrue();
  }

  @Test
  void theTableIsInLowerCaseAndSaysSomethingElse() throws IOException {
    table()
        .forEach(
            (word, others) -> {
              assertThat(word).isEqualTo(word.toLowerCase(Locale.ROOT).strip()).isNotEmpty();
              assertThat(others).as(word).isNotEmpty().doesNotHaveDuplicates();
              assertThat(others).as(word).allMatch(o -> o.equals(o.toLowerCase(Locale.ROOT)));
              assertThat(others).as(word).anyMatch(o -> !o.equals(word));
            });
  }
}
