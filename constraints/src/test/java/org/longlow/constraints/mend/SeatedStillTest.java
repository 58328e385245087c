package org.longlow.constraints.mend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** A finding is not mended by taking away the seat of whom it is about. */
class SeatedStillTest {

  private final Study high =
      TestMachine.runabout().field("measures", "seatHeight", "is", "'620 mm'").study();
  private final Finding gap = Outcome.among(high.findings(), "gap.seatRail.Nell").orElseThrow();
  private final Trying trying = new Trying(high, gap, 10);

  @Test
  void whatOnlyVanishesWithTheSeatIsNotMended() {
    Rewrite backless = Rewrite.without(new Entry("parts", "back"));
    Study after = Study.of(backless.on(high.layout()));
    assertThat(after.placed().holds()).isTrue();
    assertThat(after.sitting("Nell", "rider").orElseThrow().seated()).isEmpty();
    assertThat(Outcome.of(gap, after.findings()).met()).as("judged by findings alone").isTrue();
    assertThat(trying.after(backless)).isEqualTo(Outcome.CANNOT_BE);
    assertThat(trying.study(backless)).isEmpty();
  }

  @Test
  void aChangeThatKeepsEverybodySeatedIs() {
    Rewrite low = new Rewrite(Map.of(List.of("measures", "seatHeight", "is"), "545 mm"));
    assertThat(trying.after(low).met()).isTrue();
    assertThat(trying.study(low)).isPresent();
  }
}
