package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;

/** What of a fork is in its tyre, in which stance, and cures that work when they are applied. */
class ForkOnAxleTest {

  /** Returns what is said of fork and front wheel after replacing texts found exactly once. */
  private static List<Finding> said(String machine, String... replaced) {
    String text = Demos.text(machine);
    for (int i = 0; i < replaced.length; i += 2) {
      assertThat(text.split(Pattern.quote(replaced[i]), -1)).as(replaced[i]).hasSize(2);
      text = text.replace(replaced[i], replaced[i + 1]);
    }
    ReadResult result = LayoutReader.read(text, Path.of("src/main/resources/org/longlow/demo"));
    assertThat(result).as(String.valueOf(result)).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) result).layout()).findings().stream()
        .filter(f -> f.id().matches("joint\\.(fork|front)\\.frontWheel.*"))
        .toList();
  }

  private static int figure(String text, String pattern) {
    Matcher m = Pattern.compile(pattern).matcher(text);
    assertThat(m.find()).as(text).isTrue();
    return Integer.parseInt(m.group(1));
  }

  @ParameterizedTest
  @CsvSource({
    "curlew, '\"bump\": \"70 mm\", \"droop\": \"45 mm\", \"rate\": \"11 N/mm\"', 160, 690, 690",
    "dunlin, '\"bump\": \"50 mm\", \"droop\": \"40 mm\", \"rate\": \"12 N/mm\"', 90, 620, 540",
    "heron, '\"bump\": \"60 mm\", \"droop\": \"45 mm\", \"rate\": \"17 N/mm\"', 90, 640, 570"
  })
  void stemAtFullBumpIsCuredByLessBumpOrAHigherHead(
      String machine, String springs, int bump, int drawnHead, int head) {
    IntFunction<String> travel =
        mm -> "\"bump\": \"" + mm + " mm\"" + springs.substring(springs.indexOf(','));
    String height =
        machine.equals("heron") ? "\"headHeight\": {\"is\": \"%d mm" : "\"headHeight\": \"%d mm";
    BiFunction<Integer, Integer, List<Finding>> with =
        (b, h) ->
            said(
                machine,
                springs,
                travel.apply(b),
                String.format(height, drawnHead),
                String.format(height, h));
    List<Finding> all = with.apply(bump, head);
    assertThat(all).hasSize(1);
    Finding stem = all.get(0);
    assertThat(stem.id()).endsWith("frontWheel.stem");
    assertThat(stem.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(stem.stanceWords()).isEqualTo("full bump");
    assertThat(stem.text())
        .startsWith("The stem and lower crown of")
        .contains("at full bump")
        .doesNotContain("farther out");

    int allowed = figure(stem.text(), "at most (\\d+) mm of bump");
    assertThat(with.apply(allowed, head)).isEmpty();
    assertThat(with.apply(allowed + 1, head)).hasSize(1);

    int higher = figure(stem.text(), "(\\d+) mm higher along the steering axis");
    assertThat(with.apply(bump, head + higher)).isEmpty();
    assertThat(with.apply(bump, head + higher - 1)).hasSize(1);
  }

  private static final String LEGS = "\"tube\": \"36 mm\", \"y\": \"95 mm\"";

  @Test
  void legsAreSetFartherOut() {
    List<Finding> all = said("curlew", LEGS, LEGS.replace("95 mm", "70 mm"));
    assertThat(all).hasSize(1);
    Finding legs = all.get(0);
    assertThat(legs.id()).isEqualTo("joint.fork.frontWheel");
    assertThat(legs.text()).startsWith("The legs of fork").doesNotContain("bump");
    // half the tyre of 100 mm, half the leg of 36 mm, and what is asked between
    double needed = 50 + 18 + legs.limit();
    assertThat(figure(legs.text(), "y of (\\d+) mm")).isEqualTo((int) needed);
    assertThat(said("curlew", LEGS, LEGS.replace("95", String.valueOf((int) needed)))).isEmpty();
    assertThat(said("curlew", LEGS, LEGS.replace("95", String.valueOf((int) needed - 1))))
        .hasSize(1);
  }

  @Test
  void bothAreSaidWhereBothAreInTheTyre() {
    assertThat(
            said(
                "curlew",
                LEGS,
                LEGS.replace("95", "70"),
                "\"bump\": \"70 mm\", \"droop\": \"45 mm\", \"rate\": \"11 N/mm\"",
                "\"bump\": \"160 mm\", \"droop\": \"45 mm\", \"rate\": \"11 N/mm\""))
        .extracting(Finding::id)
        .containsExactly("joint.fork.frontWheel", "joint.fork.frontWheel.stem");
  }
}
