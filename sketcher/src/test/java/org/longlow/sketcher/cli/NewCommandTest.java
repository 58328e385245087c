package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.start.AnswerReader;
import org.longlow.constraints.start.FirstMachine;
import org.longlow.constraints.start.Question;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;

/** A first machine from the command line: what is made, what is said, what is refused. */
class NewCommandTest {

  @TempDir Path folder;

  private Ran ran;

  private int run(Object... words) {
    ran = Ran.of(words);
    return ran.code();
  }

  private static Layout read(Path file) {
    return ((ReadResult.Read) LayoutReader.read(file)).layout();
  }

  /** An answer to each question that differs from what is chosen without. */
  private static final Map<Question, String> SAID = new EnumMap<>(Question.class);

  static {
    SAID.put(Question.RIDER, "woman 5 ft 6 in, 145 lb");
    SAID.put(Question.SECOND, "man 75 %");
    SAID.put(Question.SEATS, "1");
    SAID.put(Question.WHEELBASE, "72 in");
    SAID.put(Question.FRONT_TYRE, "100/90-18");
    SAID.put(Question.REAR_TYRE, "120/80-18");
    SAID.put(Question.RECLINE, "38 deg");
    SAID.put(Question.DRIVE, "motor");
    SAID.put(Question.PLACE, "before");
    SAID.put(Question.BOX, "240 x 200 x 230 mm, 21 kg");
    SAID.put(Question.FRONT, "leading-link");
    SAID.put(Question.LAW, "us");
  }

  @Test
  void withoutAnswersItMakesAMachineAndSaysHowToGoOn() {
    Path file = folder.resolve("mine.json");
    assertThat(run("new", "--out", file.toString())).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .contains("0 fail", "saved: " + file, "Yours to decide:", "longlow open " + file)
        .contains("not a certificate");
    String made = ran.out();
    assertThat(run("check", file.toString())).isZero();
    Layout layout = read(file);
    assertThat(made).startsWith(layout.title());
    assertThat(layout)
        .isEqualTo(
            ((FirstMachine.Made) FirstMachine.of(AnswerReader.read(Map.of()).answers())).layout());
  }

  @Test
  void everyQuestionIsAnOptionAndReachesTheMachine() throws IOException {
    Map<Question, String> said = new EnumMap<>(SAID);
    Path motor =
        Files.writeString(
            folder.resolve("motor.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0H24V15L20 20H0Z'/></svg>");
    said.put(Question.TRACING, motor.toString());
    assertThat(said).containsOnlyKeys(Question.values());
    Path file = folder.resolve("stork.json");
    List<String> args =
        Stream.concat(
                Stream.of("new", "stork", "--out", file.toString()),
                said.entrySet().stream()
                    .flatMap(e -> Stream.of("--" + e.getKey().word(), e.getValue())))
            .toList();
    int code = run(args.toArray());
    Layout layout = read(file);
    assertThat(code).as(ran.err()).isEqualTo(ExitCodes.of(Study.of(layout)));
    assertThat(layout.name()).isEqualTo("stork");
    assertThat(layout.title()).startsWith("Stork");
    FirstMachine.Outcome same =
        FirstMachine.of(
            AnswerReader.read(said).answers(), java.util.Optional.of("stork"), Units.MM);
    assertThat(layout).isEqualTo(((FirstMachine.Made) same).layout());
    assertThat(run("new", "--help")).isZero();
    for (Question question : Question.values()) {
      assertThat(ran.out()).contains("--" + question.word() + "=");
    }
    assertThat(ran.out()).contains("woman 5 %").doesNotContain("%%");
  }

  @Test
  void whatIsThereStays() throws IOException {
    Path file = Files.writeString(folder.resolve("kept.json"), "weeks of work");
    assertThat(run("new", "--out", file.toString())).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("is there already").hasLineCount(1);
    assertThat(ran.out()).isEmpty();
    assertThat(file).hasContent("weeks of work");
    assertThat(run("new", "--out", folder.toString())).isEqualTo(ExitCodes.BAD_INPUT);
  }

  @Test
  void allFaultsAreNamedAndNothingIsWritten() throws IOException {
    Path file = folder.resolve("no.json");
    int code =
        run(
            "new",
            "--out",
            file.toString(),
            "--rider",
            "bloke",
            "--recline",
            "80",
            "--front",
            "girder",
            "--seats",
            "5");
    assertThat(code).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err().lines())
        .hasSize(4)
        .anyMatch(l -> l.startsWith("longlow: --rider = \"bloke\": "))
        .anyMatch(l -> l.contains("18 to 60 deg"))
        .anyMatch(l -> l.contains("leading-link, telescopic, trailing-link"));
    assertThat(run("new", "--out", file.toString(), "--wheelbase", "1400"))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("--wheelbase = 1400 mm").contains("are needed");
    assertThat(run("new", "a/b", "--out", file.toString())).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("NAME is \"a/b\"");
    for (String name : List.of("a ", " a", "a\nb", "_a")) {
      assertThat(run("new", name, "--out", file.toString())).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(ran.err()).contains("a letter or digit first and no space last");
    }
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).isEmpty();
    }
  }

  @Test
  void withWheelsOnlyNothingElseIsThere() {
    Path file = folder.resolve("card.json");
    assertThat(run("new", "--wheels-only", "--wheelbase", "1.7 m", "--out", file.toString()))
        .as("it lacks its lamps")
        .isEqualTo(3);
    assertThat(ran.err()).isEmpty();
    assertThat(read(file).parts()).containsOnlyKeys("frontWheel", "rearWheel");
    assertThat(run("check", file.toString())).isEqualTo(3);
  }
}
