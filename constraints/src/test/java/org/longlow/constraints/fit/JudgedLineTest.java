package org.longlow.constraints.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.rider.body.Population;

class JudgedLineTest {

  private static final SampledCrowd CROWD =
      new SampledCrowd(Population.soldiers(4, 0.5), SampledCrowd.From.SOLDIERS, 5);

  @Test
  void whatIsWrittenIsReadToTheLastDigit() {
    Judged person =
        Judged.of(
            3,
            "4",
            CROWD.person(3),
            Verdict.FAIL,
            List.of(new Reason("gap.a\tb\nc\u001fd", "too close to a,b"), new Reason("load", "x")),
            List.of());
    String line = JudgedLine.of(person);
    assertThat(line).doesNotContain("\n");
    Judged read = JudgedLine.read(line, CROWD).orElseThrow();
    assertThat(read.index()).isEqualTo(3);
    assertThat(read.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(read.traits()).isEqualTo(person.traits());
    assertThat(read.sex()).isEqualTo(person.sex());
    assertThat(read.fails())
        .containsExactly(new Reason("gap.a b c d", "too close to a,b"), new Reason("load", "x"));
    assertThat(read.cares()).isEmpty();
  }

  @Test
  void linesThatMakeNoSenseAreNobody() {
    String line =
        JudgedLine.of(Judged.of(4, "5", CROWD.person(4), Verdict.PASS, List.of(), List.of()));
    assertThat(JudgedLine.read(line, CROWD)).isPresent();
    for (String bad :
        List.of(
            "",
            "x",
            line.substring(0, line.length() - 1),
            "5" + line.substring(1),
            "-1" + line.substring(1),
            line.replace("PASS", "GOOD"),
            line + "\t.")) {
      assertThat(JudgedLine.read(bad, CROWD)).as(bad).isEmpty();
    }
  }
}
