package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;

/** An idler in the chain of a machine whose engine slides until the chain is as long as asked. */
class IdlerTest {

  private static Map<String, Finding> with(String more) {
    String text =
        Demos.text("curlew")
            .replace(
                "\"pins\": [\"sprocket\", \"rearAxle\"], \"radii\": [\"gearSprocket\","
                    + " \"wheelSprocket\"], \"across\": [\"74 mm\", \"74 mm\"],",
                "\"pins\": [\"sprocket\", \"rearAxle\", \"idl\"], \"radii\": [\"gearSprocket\","
                    + " \"wheelSprocket\", \"25 mm\"], \"idlers\": [\"idl\"], "
                    + more
                    + "\"across\": [\"74 mm\", \"74 mm\", \"74 mm\"],")
            .replace(
                "\"rearAxle\": {\"at\"",
                "\"idl\": {\"at\": [\"320 mm\", \"300 mm\"], \"nailed\": true}, \"rearAxle\":"
                    + " {\"at\"");
    ReadResult result = LayoutReader.read(text, Path.of("src/main/resources/org/longlow/demo"));
    assertThat(result).as(String.valueOf(result)).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) result).layout()).findings().stream()
        .collect(Collectors.toMap(Finding::id, Function.identity(), (a, b) -> a));
  }

  @Test
  void whereTheFileDrawsItUntouchedNothingOfItsRunPasses() {
    Map<String, Finding> found = with("");
    assertThat(found.get("wrap.chain").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(found.get("wrap.chain").text())
        .contains("does not touch its idler about idl", "\"back\"")
        .doesNotContain("larger wheel");
    assertThat(found.get("run.chain").verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    assertThat(found.get("squat.chain").verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    assertThat(found.get("slack.chain").verdict()).isEqualTo(Verdict.CAUTION);
  }

  @Test
  void aSprungOneGoesAsFarAsTheLengthOfTheChainAsks() {
    Finding slack = with("\"back\": [\"idl\"], \"sprung\": \"idl\", ").get("slack.chain");
    assertThat(slack.verdict()).isEqualTo(Verdict.PASS);
    // the chain laid in another program: straight up it goes some 57 mm, square to the run less
    assertThat(slack.value()).isBetween(54.0, 57.5);
  }
}
