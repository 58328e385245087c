package org.longlow.constraints.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Contradicting;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** Findings made a few at a time are those of the whole. */
class LikeChecksTest {

  private static List<Object> figures(Finding f) {
    return List.of(f.id(), f.verdict(), f.figures());
  }

  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout", "sprung"})
  void fewAreThoseOfTheWhole(String name) {
    Study study = TestMachine.asFiled(name);
    LikeChecks checks =
        new LikeChecks(
            study.placed(),
            study.shapes(),
            study.sittings(),
            Wheels.of(study.layout(), study.placed().places()),
            study.standings());
    List<Finding> all = checks.all();
    // what contradicts each other is told of all of them only
    assertThat(Contradicting.told(all)).isEqualTo(study.findings());
    Map<FindingKind, List<Finding>> seen = new HashMap<>();
    List<Finding> missed = new ArrayList<>();
    for (Finding f : all) {
      List<Finding> like =
          f.who().isPresent() && !f.group().equals(FindingGroup.GAPS)
              ? checks.like(f)
              : seen.computeIfAbsent(f.kind(), k -> checks.like(f));
      assertThat(all).containsAll(like);
      if (f.group() == FindingGroup.OPENING) {
        List<Finding> bare = checks.figures(f);
        assertThat(bare.stream().map(LikeChecksTest::figures))
            .containsExactlyElementsOf(like.stream().map(LikeChecksTest::figures).toList());
        // what would clear the way is not sought
        assertThat(bare.equals(like)).isEqualTo(f.verdict() == Verdict.PASS);
      }
      if (!like.contains(f)) {
        missed.add(f);
      }
    }
    // of the layout as a whole, of twins and of bodies only all of them tell
    assertThat(missed)
        .allMatch(
            f ->
                f.group() == FindingGroup.LAYOUT
                    || f.group() == FindingGroup.PLACES
                    || List.of("mass", "body", "crew", "twin").contains(f.kind().word()));
  }
}
