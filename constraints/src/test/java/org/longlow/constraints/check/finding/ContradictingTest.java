package org.longlow.constraints.check.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Tug.Thing;
import org.longlow.constraints.check.finding.Tug.Way;
import org.longlow.constraints.layout.Occupant;
import org.longlow.rider.words.Words;

/** Two rules that pull one thing of one person opposite ways name each other and a way out. */
class ContradictingTest {

  private static Finding pulling(String kind, String who, Tug pull) {
    FindingKind of = new FindingKind(kind, FindingGroup.POSTURE, Rests.ON_DRAWING);
    Occupant occupant = new Occupant(who, Occupant.RIDER);
    Basis basis = Basis.model("test");
    return Finding.note(
            of, About.person(occupant, kind), Verdict.CAUTION, basis, Words.of("Do it."))
        .pulling(Optional.ofNullable(pull));
  }

  private static List<String> told(Finding... findings) {
    return Contradicting.told(List.of(findings)).stream().map(Finding::text).toList();
  }

  @Test
  void eachNamesTheOtherAndWhatServesBoth() {
    Finding near = pulling("reach", "Ann", Tug.of(Thing.GRIPS, Way.NEARER, Way.DOWN, "rest"));
    Finding far = pulling("bend", "Ann", Tug.of(Thing.GRIPS, Way.FARTHER, Way.UP, "sit back"));
    assertThat(told(near, far))
        .containsExactly(
            "Do it. But Ann, bend (bend.Ann) wants the grips farther from the seat or up: do that, and for"
                + " this rest; or do this, and for that sit back.",
            "Do it. But Ann, reach (reach.Ann) wants the grips nearer to the seat or down: do that, and for"
                + " this sit back; or do this, and for that rest.");
    Finding none = pulling("bend", "Ann", Tug.of(Thing.GRIPS, Way.UP, ""));
    Finding down = pulling("reach", "Ann", Tug.of(Thing.GRIPS, Way.DOWN, ""));
    assertThat(told(none, down).get(0)).endsWith("so weigh them against each other.");
  }

  @Test
  void whatCanBothBeFollowedIsLeftAlone() {
    Finding near = pulling("reach", "Ann", Tug.of(Thing.GRIPS, Way.NEARER, "rest"));
    for (Finding other :
        List.of(
            pulling("bend", "Bob", Tug.of(Thing.GRIPS, Way.FARTHER, "")),
            pulling("bend", "Ann", Tug.of(Thing.FOOT_RESTS, Way.FARTHER, "")),
            pulling("bend", "Ann", Tug.of(Thing.GRIPS, Way.UP, "")),
            pulling("bend", "Ann", Tug.of(Thing.GRIPS, Way.FARTHER, Way.NEARER, "")),
            pulling("bend", "Ann", null))) {
      assertThat(told(near, other)).containsExactly("Do it.", "Do it.");
    }
  }
}
