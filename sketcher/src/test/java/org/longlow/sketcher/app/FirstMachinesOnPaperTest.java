package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.start.AnswerReader;
import org.longlow.constraints.start.FirstMachine;
import org.longlow.constraints.start.Question;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.template.NamedDrawing;
import org.longlow.sketcher.template.TemplateSizes;
import org.longlow.sketcher.template.Templates;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;

/** First machines of all kinds, drawn for the wall and cut up into full-size sheets. */
class FirstMachinesOnPaperTest {

  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  private static final List<List<String>> CREWS =
      List.of(
          List.of("1", "woman 5 %", ""),
          List.of("1", "woman 50 %", ""),
          List.of("1", "man 50 %", ""),
          List.of("1", "man 95 %", ""),
          List.of("1", "woman 1600 mm, 70 kg", "man 1850 mm, 95 kg"),
          List.of("1", "woman 5 %", "man 95 %"),
          List.of("2", "man 50 %", "woman 50 %"),
          List.of("2", "woman 25 %", "man 50 %"),
          List.of("2", "man 95 %", "woman 5 %"));

  private static final List<List<String>> DRIVES =
      List.of(
          List.of("engine", "before"),
          List.of("motor", "hub"),
          List.of("engine", "under"),
          List.of("motor", "under"),
          List.of("engine", "behind"),
          List.of("motor", "behind"),
          List.of("motor", "before"));

  private static final List<String> FRONTS = List.of("telescopic", "leading-link", "trailing-link");

  private static final TemplateSettings A4 = TemplateSettings.on(Paper.A4);

  @TempDir Path folder;

  private static List<Map<Question, String>> all() {
    List<Map<Question, String>> all = new ArrayList<>();
    for (List<String> crew : CREWS) {
      for (int back = 0; back < 5; back++) {
        for (List<String> drive : DRIVES) {
          Map<Question, String> said = new EnumMap<>(Question.class);
          said.put(Question.SEATS, crew.get(0));
          said.put(Question.RIDER, crew.get(1));
          if (!crew.get(2).isEmpty()) {
            said.put(Question.SECOND, crew.get(2));
          }
          int step = crew.get(0).equals("2") ? 2 : 8;
          said.put(Question.RECLINE, 25 + step * back + " deg");
          said.put(Question.DRIVE, drive.get(0));
          said.put(Question.PLACE, drive.get(1));
          said.put(Question.FRONT, FRONTS.get(all.size() % FRONTS.size()));
          all.add(said);
        }
      }
    }
    return all;
  }

  @Test
  void eachIsDrawnAndCutUp() throws IOException {
    List<Map<Question, String>> all = all();
    assertThat(all).hasSizeGreaterThan(300);
    // one for one person and one for two on one seat
    int nth = LONG ? 1 : 212;
    for (int k : IntStream.range(0, all.size()).filter(i -> i % nth == 0).toArray()) {
      String name = all.get(k).toString();
      FirstMachine.Outcome outcome = FirstMachine.of(AnswerReader.read(all.get(k)).answers());
      assertThat(outcome).as(name).isInstanceOf(FirstMachine.Made.class);
      FirstMachine.Made made = (FirstMachine.Made) outcome;
      Study study = made.study();
      assertThat(made.yours())
          .as("what fails at full lock is said, " + name)
          .containsAll(
              study.findings().stream()
                  .filter(f -> f.verdict() == Verdict.FAIL)
                  .map(Finding::text)
                  .toList());
      Path wall = folder.resolve("wall.svg");
      Making.drawing(study, wall, Paper.A3, "2024-01-01");
      assertThat(Files.size(wall)).as(name).isGreaterThan(20_000);
      TemplateSizes.check(study, Set.of(), A4);
      List<NamedDrawing> templates = Templates.of(study, Set.of());
      long cushions = study.layout().parts(CushionPart.class).count();
      // a board and three layers of each, and more than as many other parts
      assertThat(templates).as(name).hasSizeGreaterThan((int) cushions * 5);
      for (NamedDrawing template : templates) {
        assertThat(template.sheets(A4)).as(name + ", " + template.name()).isNotEmpty();
      }
    }
  }
}
