package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;

/** Brake and clutch levers turn with the bars, past tank and knees. */
class HandLeversTest {

  private static final Path FOLDER = Path.of("src/main/resources/org/longlow/demo");

  /** Returns the findings on the levers where their blades reach so far down, mm. */
  private static List<Finding> reachingDown(int mm) {
    String text = Demos.text("curlew");
    String low = "[[\"46 mm\", \"-7 mm\"], [\"60 mm\", \"-7 mm\"]";
    assertThat(text).contains(low);
    ReadResult result =
        LayoutReader.read(text.replace(low, low.replace("-7 mm", -mm + " mm")), FOLDER);
    assertThat(result).as(String.valueOf(result)).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) result).layout()).findings().stream()
        .filter(f -> f.about().parts().contains("handLevers"))
        .toList();
  }

  private static List<Finding> atLock(List<Finding> findings) {
    return findings.stream().filter(f -> f.id().startsWith("lock.handLevers")).toList();
  }

  private static OptionalDouble reached(List<Finding> findings) {
    return findings.stream()
        .filter(f -> f.id().equals("lock.left") || f.id().equals("lock.right"))
        .mapToDouble(Finding::value)
        .min();
  }

  @Test
  void asShippedTheyMeetNothing() {
    assertThat(reachingDown(7)).noneMatch(f -> f.verdict() == Verdict.FAIL);
  }

  /** Straight ahead the longer ones are clear of everything; turned they are not. */
  @Test
  void madeLongerTheyMeetTankAndThighOnTheWayToLock() {
    List<Finding> longer = reachingDown(220);
    assertThat(longer)
        .filteredOn(f -> f.verdict() == Verdict.FAIL)
        .isNotEmpty()
        .allMatch(f -> f.id().startsWith("lock."));
    assertThat(atLock(longer)).anyMatch(f -> f.about().parts().contains("tank"));
    assertThat(atLock(longer)).anyMatch(f -> f.text().contains("thigh of Tam"));
    double first = reached(longer).orElseThrow();
    assertThat(first).isStrictlyBetween(0.0, 30.0);
    assertThat(reached(reachingDown(240)).orElseThrow()).as("longer still").isLessThan(first);
  }
}
