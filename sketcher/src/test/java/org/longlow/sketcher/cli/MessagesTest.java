package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.demo.Demos;

/** What is refused is told with its place, in words of the trade, and with a remedy that helps. */
class MessagesTest {

  @TempDir Path folder;

  private static String refused(Object... args) {
    Ran ran = Ran.of(args);
    assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCodes.BAD_INPUT);
    return ran.err();
  }

  private String figure(String kind, String json) throws IOException {
    return refused(
        "figure", kind, "--input", Files.writeString(folder.resolve("figure.json"), json));
  }

  private Path machine(Consumer<ObjectNode> spoil) throws IOException {
    ObjectNode root = (ObjectNode) new ObjectMapper().readTree(Demos.text("heron"));
    spoil.accept(root);
    return Files.writeString(folder.resolve("m.json"), root.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"{\"M\": [[1,2", "{\"M\": \"", "{\"M\": [1}"})
  void jsonThatIsCutOffIsToldWithoutTheReadersSettings(String json) throws IOException {
    assertThat(figure("stability", json))
        .contains("is not JSON at line 1")
        .doesNotContain("REDACTED")
        .doesNotContain("StreamRead");
  }

  @Test
  void anEmptyInputOfAFigureIsNoLayout() throws IOException {
    assertThat(figure("trail", "\n"))
        .contains("is empty; write a JSON object with what the figure takes")
        .doesNotContain("longlow\"");
    assertThat(figure("trail", ""))
        .contains("where there is nothing to read; figure trail takes ")
        .doesNotContain("$:");
  }

  @Test
  void eachMeasuredFaultHasALineOfItsOwn() throws IOException {
    String said =
        figure(
            "body",
            "{\"sex\":\"female\",\"statureMm\":1640,\"massKg\":62,"
                + "\"measured\":{\"foo\":1,\"bar\":2}}");
    assertThat(said).doesNotContain("u000a").hasLineCount(2);
    assertThat(said.lines())
        .anyMatch(l -> l.startsWith("longlow: measured.foo is not a known measurement"))
        .anyMatch(l -> l.startsWith("longlow: measured.bar is not a known measurement"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"radiusMm\":300,\"rakeDeg\":\"27,5\",\"offsetMm\":35}|27.5",
        "{\"radiusMm\":300,5,\"rakeDeg\":27,\"offsetMm\":35}|300.5"
      })
  void aDecimalCommaIsExplained(String json, String written) throws IOException {
    assertThat(figure("trail", json)).contains("write a point, not a comma: " + written);
  }

  @Test
  void aDecimalCommaIsExplainedInLayoutsAndOptionsToo() throws IOException {
    Path file = machine(root -> ((ObjectNode) root.at("/crew/Runa")).put("stature", "1640,5 mm"));
    assertThat(refused("check", file))
        .contains("$.crew.Runa.stature = \"1640,5 mm\"")
        .contains("write a point, not a comma: 1640.5");
    assertThat(refused("templates", file, "--out", folder, "--measured-across", "99,6"))
        .contains("write a point, not a comma: 99.6");
    assertThat(refused("templates", file, "--out", folder, "--paper", "210,5x297"))
        .contains("write a point, not a comma: 210.5");
  }

  @Test
  void aRemedyCanBeFollowed() throws IOException {
    assertThat(refused("check", machine(root -> root.put("name", ""))))
        .contains("$.name = \"\": is empty; write a name")
        .doesNotContain("leave the key out");
    Path boots = machine(root -> ((ObjectNode) root.at("/crew/Runa")).put("boots", 1));
    assertThat(refused("check", boots))
        .contains("$.crew.Runa.boots = 1: must be true or false; write true")
        .doesNotContain("quotes");
    assertThat(refused("templates", machine(r -> {}), "--out", folder, "--paper", "50x50"))
        .contains("each side must be at least 180.0 mm")
        .doesNotContain("margin");
  }

  @Test
  void axlesInTheWrongOrderHaveAPlace() throws IOException {
    Path file =
        machine(
            root -> {
              for (JsonNode part : root.get("parts")) {
                if (part.get("kind").asText().equals("wheel")) {
                  boolean front = part.get("end").asText().equals("front");
                  ((ObjectNode) part).put("end", front ? "rear" : "front");
                }
              }
            });
    assertThat(refused("check", file)).startsWith("longlow: " + file + ": $.parts: the front axle");
  }

  @Test
  void namesOfFilesAreLookedAtFirst() throws IOException {
    Path file = machine(root -> {});
    assertThat(refused("check", "")).contains("FILE").contains("it is empty");
    assertThat(refused("report", file, "--out", "")).contains("--out").contains("it is empty");
    String longest = "a".repeat(300);
    assertThat(refused("draw", file, "--out", folder.resolve(longest + ".svg")))
        .contains("--out has a name of 304 bytes in it")
        .contains("give a shorter one");
    assertThat(refused("templates", file, "--out", folder.resolve(longest)))
        .contains("--out has a name of 300 bytes in it");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--date|+999999999-01-01|is no date; write it like 2026-01-31",
        "--who|,|--who names nobody",
        "--stance|''|--stance is ''; there are laden"
      })
  void whatSaysNothingIsNotTakenSilently(String option, String value, String says)
      throws IOException {
    Path out = folder.resolve("x.svg");
    assertThat(refused("draw", machine(root -> {}), "--out", out, option, value.replace("'", "")))
        .contains(says);
    assertThat(out).doesNotExist();
  }

  @Test
  void noZeroHasASign() throws IOException {
    Path input =
        Files.writeString(
            folder.resolve("figure.json"), "{\"radiusMm\":300,\"rakeDeg\":0,\"offsetMm\":-0.0}");
    assertThat(Ran.of("figure", "trail", "--input", input).said())
        .contains("0.0")
        .doesNotContain("-0.0");
  }

  @ParameterizedTest
  @CsvSource({
    "draw, .svg, which is only an ending",
    "draw, .PDF, which is only an ending",
    "report, .html, which is only an ending",
    "draw, con.svg, a name that Windows has",
    "draw, Nul.pdf, a name that Windows has",
    "report, COM1.html, a name that Windows has",
    "report, lpt9.x.html, a name that Windows has"
  })
  void namesOfNoUseAreRefused(String command, String name, String says) throws IOException {
    Path out = folder.resolve(name);
    assertThat(refused(command, machine(root -> {}), "--out", out)).contains(says);
    assertThat(out).doesNotExist();
  }

  /** As many digits as a double has, and more. */
  @Test
  void hugeFiguresAreSaidShort() throws IOException {
    assertThat(refused("new", "--wheelbase", "1e308", "--recline", "-1e300", "--box", "1e99x2x3"))
        .contains("--wheelbase = 1e308 mm", "--recline = -1e300 deg", "look at its sides")
        .doesNotContain("0000000");
    assertThat(figure("trail", "{\"radiusMm\":1e308,\"rakeDeg\":1e300,\"offsetMm\":1e30}"))
        .contains("radiusMm is 1e308;", "rakeDeg is 1e300;", "allowed is -85 to 85")
        .contains("offsetMm is 1e30;");
    assertThat(
            refused(
                "check", machine(root -> ((ObjectNode) root.get("measures")).put("odd", 1e308))))
        .contains("\"1e308\": is beyond");
    assertThat(figure("trail", "{\"radiusMm\":1" + "0".repeat(350) + "}"))
        .contains("is beyond the range of numbers")
        .doesNotContain("0".repeat(30));
  }

  @Test
  void helpIsAskedForInEitherWay() {
    assertThat(Ran.of("help", "check").out()).isEqualTo(Ran.of("check", "--help").out());
    assertThat(Ran.of("help").out()).isEqualTo(Ran.of("--help").out()).contains("Commands:");
  }

  @Test
  void mendsWithoutWhatWasBuiltIsNotTakenSilently() throws IOException {
    Path file = Files.writeString(folder.resolve("c.json"), Demos.text("dunlin"));
    Ran ran = Ran.of("check", file, "--mends", 5);
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err()).contains("give --as-built with it");
    assertThat(Ran.of("check", file, "--mends", -1).err()).contains("0 or more");
  }

  /** The solver keeps what is written where it can; where it cannot it says so. */
  @Test
  void aMeasureBeyondItsRangeIsSaidToComeToItsEnd() throws IOException {
    Path file = folder.resolve("first.json");
    assertThat(Ran.of("new", "--out", file).code()).isZero();
    String text = Files.readString(file);
    Files.writeString(
        file, text.replace("\"recline\": {\"is\": \"30 deg\"", "\"recline\": {\"is\": \"32 deg\""));
    Ran kept = Ran.of("check", file, "--all");
    assertThat(kept.err()).isEmpty();
    assertThat(kept.out()).containsPattern("posture.Wren.recline +Wren +32° ");
    Files.writeString(
        file, text.replace("\"recline\": {\"is\": \"30 deg\"", "\"recline\": {\"is\": \"36 deg\""));
    assertThat(Ran.of("check", file).err())
        .contains("note: measure recline is 36 deg in the file and comes to 34°");
  }
}
