package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.mend.Mending;
import org.longlow.constraints.mend.Offer;
import org.longlow.constraints.study.Study;

/** What mends a finding, asked of the desk. */
class MendWorkTest {

  private static final String FORK = "gap.fork.headlamp";

  @TempDir Path folder;
  private DeskHands hands;
  private Layout layout;

  @BeforeEach
  void open() throws Exception {
    hands = new DeskHands(folder.resolve("state"));
    layout = hands.open(Wren.file(folder));
    hands.until(() -> hands.desk().shown().isPresent());
  }

  @AfterEach
  void close() {
    hands.desk().close();
  }

  private MendWork work() {
    return hands.desk().mending();
  }

  private List<Offer> offers() throws InterruptedException {
    hands.until(() -> work().mends().filter(m -> !m.looking()).isPresent());
    return work().mends().orElseThrow().offers();
  }

  @Test
  @Tag("long")
  void theDeskFindsWhatMendingFinds() throws Exception {
    work().ask(FORK);
    assertThat(work().mends().orElseThrow().looking()).isTrue();
    Study study = Study.of(layout);
    assertThat(offers())
        .isNotEmpty()
        .isEqualTo(
            Mending.of(
                study,
                study.findings().stream().filter(f -> f.id().equals(FORK)).findFirst().get()));
    work().ask("gap.nobody.nothing");
    assertThat(offers()).isEmpty();
  }

  @Test
  void otherQuestionsAreAnsweredBetweenTwoPieces() throws Exception {
    work().ask(FORK);
    hands.desk().look(o -> o.withDimensions(true));
    hands.until(() -> hands.desk().shown().get().options().dimensions());
    work().ask(FORK);
    hands.set("wheelbase", "1641 mm");
    assertThat(work().mends()).as("of another layout").isEmpty();
    assertThat(hands.desk().isIdle()).isTrue();
  }

  @Test
  void anOfferTakenIsOneStepAndASecondQuestionReplacesTheFirst() throws Exception {
    work().ask("reach.Mara.hands");
    work().ask(FORK);
    Offer first = offers().get(0);
    assertThat(work().mends().orElseThrow().finding()).isEqualTo(FORK);
    work().show(Optional.of(first));
    hands.until(() -> hands.desk().shown().get().live());
    assertThat(hands.session().layout()).isSameAs(layout);
    work().take(first);
    hands.until(() -> hands.session().layout() != layout);
    assertThat(hands.session().undoName()).contains(first.change());
    assertThat(work().mends()).isEmpty();
    hands.desk().undo();
    hands.until(() -> !hands.desk().shown().get().live());
    assertThat(hands.session().layout()).isSameAs(layout);
    assertThat(work().mends()).isEmpty();
  }

  @Test
  void whatContradictsIsLetGoOfAsOneStepThatIsSeenBeforehand() throws Exception {
    Path file = folder.resolve("torn.json");
    Files.writeString(file, Wren.text().replace("panLength - 2 mm", "panLength + 50 mm"));
    Layout torn = hands.open(file);
    hands.until(() -> hands.desk().shown().filter(s -> !s.study().placed().holds()).isPresent());
    Finding finding =
        hands.desk().shown().orElseThrow().study().findings().stream()
            .filter(f -> f.group() == FindingGroup.LAYOUT && f.verdict() == Verdict.FAIL)
            .findFirst()
            .orElseThrow();
    assertThat(work().isMendable(finding)).isTrue();
    work().ask(finding.id());
    List<Offer> offers = offers();
    assertThat(offers.stream().map(Offer::says))
        .contains("let go of tie panLong", "let go of tie panLevel");
    Offer offer = offers.get(0);
    work().show(Optional.of(offer));
    hands.until(() -> hands.desk().shown().get().live());
    assertThat(hands.desk().shown().get().study().placed().holds()).isTrue();
    assertThat(hands.session().layout()).as("not a step yet").isSameAs(torn);
    work().take(offer);
    hands.until(() -> hands.session().layout() != torn);
    assertThat(hands.session().undoName()).contains(offer.change());
    assertThat(hands.session().layout().ties()).hasSize(torn.ties().size() - 1);
    hands.desk().undo();
    assertThat(hands.session().layout()).isSameAs(torn);
  }
}
