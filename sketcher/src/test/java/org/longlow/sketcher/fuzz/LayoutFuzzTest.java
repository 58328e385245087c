package org.longlow.sketcher.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.ViewSheets;
import org.longlow.sketcher.report.Report;
import org.longlow.sketcher.template.NamedDrawing;
import org.longlow.sketcher.template.Templates;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;

/**
 * Spoilt layouts from fixed seeds go through everything a command does. Whatever they hold, the
 * answer is faults or findings, never an exception, and no figure is Infinity or NaN. {@code
 * -Dlonglow.fuzz=20000} tries more than a build does; {@code -Dlonglow.fuzz.from=N} begins at
 * another seed.
 */
class LayoutFuzzTest {

  private static final int CASES = Integer.getInteger("longlow.fuzz", 2000);
  private static final long FROM = Long.getLong("longlow.fuzz.from", 0);

  /** A build tries one of so many: each of the eight kinds of damage, on all machines. */
  private static final int EACH =
      Boolean.getBoolean("longlow.long") || Integer.getInteger("longlow.fuzz") != null ? 1 : 181;

  /**
   * A report, dearer than all the rest together, is made of one of so many of those: of all with
   * the long sweeps. No multiple of how many machines there are, or all would be of one.
   */
  private static final int REPORTED = EACH == 1 ? 1 : 7;

  /**
   * What escaped once is tried again: 18012 in every build; 2818, which whirls a fine outline for
   * twenty seconds, with the long sweeps, for {@code SweepTest} holds its cause.
   */
  private static final List<Long> ESCAPED_ONCE =
      Boolean.getBoolean("longlow.long") ? List.of(2818L, 18012L) : List.of(18012L);

  private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity)\\b|∞");

  private static final JsonMapper MAPPER = new JsonMapper();

  @TempDir Path folder;

  @Test
  void everySpoiltLayoutIsAnswered() throws IOException {
    List<JsonNode> machines = new ArrayList<>();
    for (String name : Demos.names()) {
      Demos.copy(name, folder);
      machines.add(MAPPER.readTree(Demos.text(name)));
    }
    List<String> escaped = new ArrayList<>();
    int studied = 0;
    List<Long> seeds = seeds().boxed().toList();
    for (int i = 0; i < seeds.size(); i++) {
      long seed = seeds.get(i);
      boolean reported = i % REPORTED == 0 || ESCAPED_ONCE.contains(seed);
      JsonNode machine = machines.get((int) Math.floorMod(seed, (long) machines.size()));
      String text = new Mutations(seed).spoilt(machine).toString();
      try {
        studied += answered(text, seed, reported) ? 1 : 0;
      } catch (Throwable e) {
        escaped.add("seed " + seed + ": " + first(e));
      }
    }
    assertThat(escaped).isEmpty();
    // were nearly all refused by the reader, the rest would hardly be tried
    assertThat(studied).isGreaterThan(CASES / EACH / 4);
  }

  private static LongStream seeds() {
    LongStream range = LongStream.iterate(FROM, s -> s < FROM + CASES, s -> s + EACH);
    return FROM > 0
        ? range
        : LongStream.concat(range, ESCAPED_ONCE.stream().mapToLong(seed -> seed)).distinct();
  }

  private static String first(Throwable e) {
    StackTraceElement[] trace = e.getStackTrace();
    StringBuilder text = new StringBuilder(String.valueOf(e));
    for (int i = 0; i < Math.min(6, trace.length); i++) {
      text.append("\n    at ").append(trace[i]);
    }
    return text.toString();
  }

  /** Returns whether the layout was sound enough to be studied. */
  private boolean answered(String text, long seed, boolean reported) {
    ReadResult result = LayoutReader.read(text, folder);
    if (result instanceof ReadResult.Refused refused) {
      assertThat(refused.faults()).isNotEmpty();
      refused
          .faults()
          .forEach(
              f -> {
                assertThat(f.line().chars().filter(Character::isISOControl)).isEmpty();
                assertThat(f.line()).doesNotContain("Exception", "org.longlow");
              });
      return false;
    }
    Layout layout = ((ReadResult.Read) result).layout();
    assertThat(LayoutReader.read(LayoutWriter.toJson(layout), folder))
        .isInstanceOf(ReadResult.Read.class);
    Study study = Study.of(layout);
    findingsAreSound(study);
    ViewSheets.elevation(study, PictureOptions.PLAIN, Paper.A3, "2026-01-01");
    List<NamedDrawing> templates = Templates.of(study, Set.of());
    if (!templates.isEmpty()) {
      NamedDrawing one = templates.get(new SplittableRandom(seed).nextInt(templates.size()));
      Optional<String> tooMany = Optional.empty();
      try {
        one.sheets(TemplateSettings.on(Paper.A0));
      } catch (IllegalArgumentException e) {
        tooMany = Optional.of(e.getMessage());
      }
      tooMany.ifPresent(m -> assertThat(m).contains("sheets"));
    }
    if (reported) {
      assertThat(noNumber(Report.html(study))).as("a figure in the report").isFalse();
    }
    return true;
  }

  private static void findingsAreSound(Study study) {
    Set<String> ids = new HashSet<>();
    for (Finding f : study.findings()) {
      assertThat(ids.add(f.id() + "@" + f.stance())).as(f.id()).isTrue();
      assertThat(f.text()).as(f.id()).isNotBlank();
      assertThat(noNumber(f.text())).as(f.text()).isFalse();
      assertThat(Double.isInfinite(f.value())).as(f.id()).isFalse();
      assertThat(Double.isInfinite(f.limit())).as(f.id()).isFalse();
    }
    assertThat(noNumber(StudyJson.of(study))).isFalse();
  }

  /** A long report is searched as text first: the pattern looks at every letter of it. */
  private static boolean noNumber(String text) {
    return (text.contains("NaN") || text.contains("Infinity") || text.contains("∞"))
        && NO_NUMBER.matcher(text).find();
  }
}
