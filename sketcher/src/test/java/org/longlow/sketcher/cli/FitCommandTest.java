package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.demo.Demos;
import org.longlow.sketcher.desk.TracedFiles;

/** A crowd on a shipped machine, as a command. */
class FitCommandTest {

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void machine() throws IOException {
    Demos.copy("dunlin", folder);
    file = folder.resolve("dunlin.json");
  }

  private Ran fit(Object... more) {
    Object[] all = new Object[more.length + 3];
    all[0] = "fit";
    all[1] = file;
    all[2] = "--no-adjust";
    System.arraycopy(more, 0, all, 3, more.length);
    return Ran.of(all);
  }

  @Test
  void aRunThatWasStoppedGoesOnToTheSameTables() throws IOException {
    Path whole = folder.resolve("whole");
    Ran first = fit("--people", 12, "--out", whole, "--threads", 1);
    assertThat(first.code()).isZero();
    assertThat(first.err()).isEmpty();
    assertThat(first.out())
        .contains("12 people sampled as soldiers of the survey, 50 % women, seed 1.")
        .contains("nothing fails: ", "written: ");
    List<String> people = Files.readAllLines(whole.resolve("people.csv"));
    assertThat(people).hasSize(13).allMatch(l -> l.split(",").length >= 12);
    assertThat(whole.resolve("people.csv.part")).doesNotExist();
    assertThat(whole.resolve("stature.svg")).exists();

    // as a killed run leaves it: some whole lines, one cut short, none of the tables
    Path killed = folder.resolve("killed");
    Files.createDirectories(killed);
    String part = partOf(killed, 12);
    int cut = part.indexOf('\n', part.indexOf('\n', part.indexOf('\n') + 1) + 1) + 9;
    Files.writeString(killed.resolve("people.csv.part"), part.substring(0, cut));
    Ran second = fit("--people", 12, "--out", killed);
    assertThat(second.err()).contains("gone on with 2 people judged before");
    assertThat(Files.readAllLines(killed.resolve("people.csv"))).isEqualTo(people);
    assertThat(killed.resolve("people.csv.part")).doesNotExist();

    // another question does not go on with it
    Files.writeString(killed.resolve("people.csv.part"), part);
    Ran other = fit("--people", 11, "--out", killed);
    assertThat(other.err()).doesNotContain("gone on");
    assertThat(Files.readAllLines(killed.resolve("people.csv"))).hasSize(12);
  }

  /** Outlines may be traced from drawings beside the layout, which are part of the machine. */
  @Test
  void aDrawingThatWasChangedIsAnotherMachine() throws IOException {
    Path curlew = Demos.copy("curlew", folder);
    Path out = folder.resolve("traced");
    Files.createDirectories(out.resolve("stature.svg").resolve("x"));
    assertThat(asked(curlew, out).code()).isNotZero();
    assertThat(asked(curlew, out).err()).contains("gone on with 1 person judged before");
    Path drawing = folder.resolve(TracedFiles.of(Demos.layout("curlew")).iterator().next());
    Files.writeString(drawing, Files.readString(drawing) + "\n");
    assertThat(asked(curlew, out).err()).contains("another state of the machine");
  }

  private static Ran asked(Path machine, Path out) {
    return Ran.of("fit", machine, "--people", 1, "--no-adjust", "--out", out);
  }

  /** What a run has in its part when all are judged and no table is written. */
  private String partOf(Path out, int people) throws IOException {
    // a folder where a table should be stops the run once all are judged
    Path blocked = folder.resolve("blocked");
    Files.createDirectories(blocked.resolve("stature.svg").resolve("x"));
    Ran ran = fit("--people", people, "--out", blocked);
    assertThat(ran.code()).isNotZero();
    assertThat(out).exists();
    return Files.readString(blocked.resolve("people.csv.part"));
  }

  @Test
  void measuredPeopleInInchesAndJson() throws IOException {
    Path table = folder.resolve("club.csv");
    Files.writeString(table, "name,sex,stature in,mass lb\n=Ida,female,64,150\nOlaf,male,80,330\n");
    Path out = folder.resolve("out");
    Ran ran = fit("--measured", table, "--units", "in", "--out", out);
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("2 people measured.", "1 person outside the survey");
    String people = Files.readString(out.resolve("people.csv"));
    assertThat(people).contains("stature (in)", "'=Ida,female,64.000", "Olaf,male,80.000");
    JsonNode json = new ObjectMapper().readTree(fit("--measured", table, "--json").out());
    assertThat(json.get("fit").get("of").asInt()).isEqualTo(2);
    assertThat(json.get("fitWomen").get("of").asInt()).isEqualTo(1);
    assertThat(json.get("outsideSurvey").get("people").asInt()).isEqualTo(1);
    assertThat(json.has("adjusters")).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--people -1|--people is -1; give 1 to 100000",
        "--people many|many",
        "--women 101|--women is 101.0; give 0 to 100",
        "--from ducks|--from is 'ducks'; use soldiers or adults",
        "--wearing hat|--wearing says 'hat'; use helmet, boots, clothes or nothing alone",
        "--without lean|--without says 'lean', which is not judged here; kinds are board, body",
        "--threads 0|--threads is 0; give 1 to 256",
        "--measured nowhere.csv|which is no file",
      })
  void whatCannotBeAskedIsRefusedAtOnce(String words, String told) {
    Ran ran = fit((Object[]) words.split(" "));
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err()).contains(told);
    assertThat(ran.out()).isEmpty();
  }

  @Test
  void nonsenseInATableIsToldByLine() throws IOException {
    Path table = folder.resolve("bad.csv");
    Files.writeString(table, "sex,stature,mass\nduck,1,2\n");
    Ran ran = fit("--measured", table);
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err()).contains("bad.csv: line 2: sex is \"duck\"");
    Files.write(table, new byte[] {(byte) 0xff, 0, 1, 2, (byte) 0x80});
    assertThat(fit("--measured", table).code()).isEqualTo(2);
    Files.writeString(table, "sex,stature,mass\n");
    Ran nobody = fit("--measured", table);
    assertThat(nobody.code()).isEqualTo(2);
    assertThat(nobody.err()).contains("headings and nobody under them");
    assertThat(fit("--people", 0).code()).isEqualTo(2);
    assertThat(fit("--measured", table, "--people", 3).err()).contains("--measured says who");
  }

  @Test
  void whatDoesNotCountIsNotTold() {
    String all = fit("--people", 8, "--from", "adults").out();
    String some = fit("--people", 8, "--from", "adults", "--without", "hands,gap").out();
    assertThat(all).contains("too close to ");
    assertThat(Arrays.asList(some.split("\n"))).noneMatch(l -> l.contains("too close to "));
  }

  @Test
  void aMachineNobodySitsOnIsRefused() throws IOException {
    Path bare = folder.resolve("bare.json");
    Ran made = Ran.of("new", "--wheels-only", "--out", bare);
    assertThat(made.code()).as(made.said()).isIn(0, 3);
    Ran ran = Ran.of("fit", bare);
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err()).contains("nobody can sit on it");
  }
}
