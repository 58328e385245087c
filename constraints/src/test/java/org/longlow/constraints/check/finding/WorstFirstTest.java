package org.longlow.constraints.check.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.check.whole.CompletenessFindings;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.words.Words;

/** One order for all, and the state said where the sentence does not. */
class WorstFirstTest {

  private static Finding finding(String name, Verdict verdict, Figures figures) {
    return new Finding(
        GapFindings.GAP,
        About.thing(name, name),
        Optional.empty(),
        verdict,
        figures,
        List.of(),
        Words.of("Text."));
  }

  private static Figures gap(double mm, double asked) {
    return Figures.atLeast(mm, asked, FigureUnit.MM);
  }

  @Test
  void worstVerdictThenFarthestOutside() {
    List<Finding> inOrder =
        List.of(
            finding("cannot-sit", Verdict.FAIL, Figures.NONE),
            finding("tyre", Verdict.FAIL, gap(-99, 15)),
            // asked little, so a share of the limit would put it first
            finding("lamp", Verdict.FAIL, gap(-20, 3)),
            finding("share", Verdict.FAIL, Figures.atLeast(0.36, 0.4, FigureUnit.SHARE)),
            finding("graze", Verdict.FAIL, gap(2.5, 3)),
            finding("tight", Verdict.CAUTION, gap(1, 3)),
            finding("said", Verdict.CAUTION, Figures.NONE),
            finding("near", Verdict.PASS, gap(3.5, 3)),
            finding("far", Verdict.PASS, gap(60, 3)),
            finding("not", Verdict.NOT_APPLICABLE, Figures.NONE));
    Random random = new Random(7);
    for (int i = 0; i < 20; i++) {
      List<Finding> mixed = new ArrayList<>(inOrder);
      Collections.shuffle(mixed, random);
      assertThat(WorstFirst.of(mixed)).containsExactlyElementsOf(inOrder);
    }
  }

  /** It says what to do next; once that is done there is nothing to say. */
  @Test
  void whatIsLackingToRideComesBeforeAllThatFails() {
    Finding fails = finding("cannot-sit", Verdict.FAIL, Figures.NONE);
    for (Verdict verdict : Verdict.values()) {
      Finding lacks =
          Finding.note(
              CompletenessFindings.COMPLETENESS,
              About.thing("machine", "machine"),
              verdict,
              Basis.judgement("judgement: test"),
              Words.of("Text."));
      boolean leads = verdict == Verdict.CAUTION || verdict == Verdict.FAIL;
      assertThat(WorstFirst.leads(lacks)).as(verdict.word()).isEqualTo(leads);
      assertThat(WorstFirst.of(List.of(fails, lacks)).indexOf(lacks))
          .as(verdict.word())
          .isEqualTo(leads ? 0 : 1);
    }
    assertThat(WorstFirst.leads(fails)).isFalse();
  }

  @Test
  void stateIsSaidWhereTheSentenceDoesNot() {
    Condition bump = Condition.empty(Stance.Kind.FULL_BUMP);
    Finding gap = finding("gap", Verdict.FAIL, gap(1, 3));
    assertThat(gap.when()).isEmpty();
    assertThat(gap.in(bump).when()).isEqualTo(", at full bump");
    assertThat(gap.in(bump).withText(Words.of("In it at full bump.")).when()).isEmpty();
    assertThat(gap.in(Condition.open("lid")).when()).isEqualTo(", with lid open");
  }
}
