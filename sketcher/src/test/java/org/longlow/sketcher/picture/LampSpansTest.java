package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.words.Units;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;

/** Lamps on the front view, against the findings and limits of the tables by hand. */
class LampSpansTest {

  private static final Study HERON = Shipped.study("heron");

  private static PictureOptions unladen(Study study) {
    return PictureOptions.PLAIN.withStance(
        study.standings().stream()
            .filter(s -> s.kind() == Stance.Kind.UNLADEN)
            .map(Standing::condition)
            .findFirst());
  }

  private static List<String> words(Study study) {
    Page page =
        ViewSheets.sheet(
                study,
                unladen(study),
                new Views(Views.Kind.FRONT, Views.Projection.FIRST_ANGLE),
                Optional.of(Scale.oneTo(10)),
                Paper.A2,
                "")
            .page();
    return page.layers().stream()
        .flatMap(l -> l.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(m -> ((Mark.Words) m).text())
        .toList();
  }

  private static Stream<Finding> law(String rest) {
    return HERON.findings().stream().filter(f -> f.id().equals("law.us." + rest));
  }

  private static String figure(double mm) {
    return String.valueOf(Math.round(mm * 10) / 10.0).replaceFirst("\\.0$", "");
  }

  @Test
  void heightsAndDistancesAreThoseOfTheFindings() {
    List<String> words = words(HERON);
    for (String lamp : List.of("headlamp.height.headlamp", "front-signal.height.frontSignals")) {
      Finding found = law(lamp).findFirst().orElseThrow();
      assertThat(words)
          .anyMatch(w -> w.startsWith(found.subject() + " " + figure(found.value()) + ", asked "));
    }
    Finding apart = law("rear-signal.apart.rearSignals").findFirst().orElseThrow();
    assertThat(words)
        .anyMatch(w -> w.startsWith("rearSignals apart " + figure(apart.value()) + ", asked"));
    Finding gap = law("front-signal.headlamp-gap.frontSignals+headlamp").findFirst().orElseThrow();
    assertThat(words)
        .contains("frontSignals from headlamp " + figure(gap.value()) + ", asked at least 101.6");
  }

  /** The US ask 22 in to the centre, UN R53 1200 to the upper edge of a lamp 100 mm high. */
  @Test
  void theStrictestOfAllRulesIsTold() {
    assertThat(words(HERON))
        .anyMatch(w -> w.startsWith("headlamp ") && w.endsWith(", asked 558.8 to 1150"))
        // 180 between edges and twice 30 are more than 9 in between centres
        .anyMatch(w -> w.startsWith("rearSignals apart ") && w.endsWith(", asked at least 240"));
  }

  @Test
  void withOneRuleItsOwnFigureIsTold() {
    Layout us = Change.set(Demos.layout("heron"), List.of("us"), "demands", "rules");
    assertThat(words(Study.of(us)))
        .anyMatch(w -> w.startsWith("headlamp ") && w.endsWith(", asked 558.8 to 1371.6"))
        .anyMatch(w -> w.startsWith("rearSignals apart ") && w.endsWith(", asked at least 228.6"));
  }

  @Test
  void inInchesTheyAreInches() {
    assertThat(words(Study.of(Demos.layout("heron").withUnits(Units.IN))))
        .anyMatch(w -> w.startsWith("headlamp ") && w.contains(", asked 22 to 45 "));
  }
}
