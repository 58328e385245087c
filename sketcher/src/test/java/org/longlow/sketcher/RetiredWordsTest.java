package org.longlow.sketcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.cli.Ran;
import org.longlow.sketcher.picture.Shipped;

/** One word for one thing: words that were given up come back nowhere a user reads. */
class RetiredWordsTest {

  private static final Pattern RETIRED =
      Pattern.compile(
          "(?i)\\bsnags?\\b|\\bto mend\\b|\\bto watch\\b|\\bsound\\b|\\basks? for care\\b"
              + "|\\bnot applicable\\b|\\bwagtail\\b|\\bvirtual (pivot|centre)\\b"
              + "|\\bkeep mine\\b|\\btake the(irs| file)\\b");

  /** Words that scripts read, fixed by contract. */
  private static final Pattern CONTRACT = Pattern.compile("SOUND\\(\"sound\"\\)");

  private static final Pattern LITERAL =
      Pattern.compile("\"\"\"(?s:.*?)\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*\"");

  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//.*$");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"rider-model", "constraints", "svg-export", "demo-layouts", "sketcher"})
  void noTextOfTheProgramHasARetiredWord(String module) throws IOException {
    List<String> found = new ArrayList<>();
    int texts = 0;
    try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".java")) {
          String code = COMMENT.matcher(Files.readString(file)).replaceAll("");
          Matcher literals = LITERAL.matcher(CONTRACT.matcher(code).replaceAll(""));
          while (literals.find()) {
            texts++;
            look(name, literals.group(), found);
          }
        } else if (name.endsWith(".json") || name.endsWith(".css")) {
          look(name, Files.readString(file), found);
        }
      }
    }
    assertThat(texts).as("texts looked at").isPositive();
    assertThat(found).isEmpty();
  }

  private static void look(String where, String text, List<String> found) {
    Matcher m = RETIRED.matcher(text);
    while (m.find()) {
      found.add(where + ": " + m.group());
    }
  }

  @Test
  void commandsAndReportUseTheWordsOfTheWindow() throws IOException {
    Study study = Shipped.study("dunlin");
    Path file = Files.writeString(folder.resolve("m.json"), Demos.text("dunlin"));
    String table = Ran.of("check", file).out();
    String report = Shipped.report("dunlin");
    List<String> found = new ArrayList<>();
    look("check", table, found);
    look("report", report, found);
    look("summary", study.summary(), found);
    assertThat(found).isEmpty();
    for (Finding f : study.findings()) {
      assertThat(table).containsPattern("(?m)^" + f.verdict().says() + " +\\S");
    }
    for (Verdict v : List.of(Verdict.FAIL, Verdict.CAUTION, Verdict.PASS)) {
      assertThat(study.summary()).contains(v.says(study.count(v)));
    }
  }
}
