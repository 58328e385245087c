package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Gathered;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.picture.PictureLayer;

/** The picture comes first and says that its findings are those of before; they always follow. */
class PictureFirstTest {

  @TempDir private Path folder;
  private DeskHands hands;
  private Desk desk;

  /** What was on the board, one after the other. */
  private final List<BoardState> seen = new ArrayList<>();

  @BeforeEach
  void open() throws Exception {
    hands = new DeskHands(folder.resolve("state"));
    desk = hands.desk();
    desk.watch(
        () ->
            desk.shown()
                .filter(s -> seen.isEmpty() || seen.get(seen.size() - 1) != s)
                .ifPresent(seen::add));
    hands.open(Wren.file(folder));
    hands.until(() -> desk.shown().isPresent());
  }

  @AfterEach
  void end() {
    desk.close();
  }

  private BoardState shown() {
    return desk.shown().orElseThrow();
  }

  private static List<String> texts(List<Finding> findings) {
    return findings.stream().map(f -> f.id() + " " + f.text()).toList();
  }

  private static List<String> texts(Study study) {
    return texts(Gathered.order(study.findings()));
  }

  private static boolean hasMarks(BoardState state) {
    return state.drawing().layers().stream()
        .anyMatch(l -> l.id().equals(PictureLayer.FINDINGS.id()) && !l.marks().isEmpty());
  }

  @Test
  void aMachineIsSeenBeforeItIsChecked() {
    BoardState first = seen.get(0);
    assertThat(first.working()).isTrue();
    assertThat(first.findings()).isEmpty();
    assertThat(first.heads()).as("people sit").hasSize(1);
    assertThat(first.standing()).as("it stands").isPresent();
    assertThat(hasMarks(first)).isFalse();
    assertThat(shown().working()).isFalse();
    assertThat(shown().study()).isSameAs(first.study());
    assertThat(texts(shown().findings())).isEqualTo(texts(Study.of(Wren.layout()))).isNotEmpty();
    assertThat(hasMarks(shown())).isTrue();
  }

  /** In between its findings are those of before, and said to be so. */
  @Test
  void anEditIsSeenBeforeItIsChecked() throws Exception {
    List<String> before = texts(shown().findings());
    seen.clear();
    desk.edit(
        Edits.set(new Target.OfMeasure("wheelbase"), "1700 mm"),
        new Target.OfMeasure("wheelbase"),
        "");
    hands.until(() -> seen.stream().anyMatch(s -> !s.live()));
    BoardState first = seen.stream().filter(BoardState::working).findFirst().orElseThrow();
    assertThat(texts(first.findings())).isEqualTo(before);
    assertThat(first.layout()).isSameAs(hands.session().layout());
    assertThat(hasMarks(first)).as("marks keep their places").isTrue();
    assertThat(shown().working()).isFalse();
    assertThat(texts(shown().findings()))
        .isEqualTo(texts(Study.of(hands.session().layout())))
        .isNotEqualTo(before);
  }

  /** A hand that never rests is followed; once it rests, what is told is of where it rests. */
  @Test
  void aDragIsFollowedAndCheckedWhereItRests() throws Exception {
    Predicate<BoardState> live = BoardState::live;
    PointMm from = shown().study().placed().places().pin("backTop");
    seen.clear();
    assertThat(desk.drags().grab("backTop")).isTrue();
    for (int i = 1; i <= 12; i++) {
      int pictures = seen.size();
      desk.drags().moveTo(from.plus(new PointMm(3 * i, 2 * i)));
      hands.step(() -> seen.size() > pictures);
    }
    assertThat(seen.stream().filter(live.and(BoardState::working)).count()).isPositive();
    hands.until(() -> true);
    assertThat(shown().live()).isTrue();
    assertThat(shown().working()).isFalse();
    assertThat(texts(shown().findings())).isEqualTo(texts(Study.of(shown().study().placed())));
    desk.drags().letGo();
    hands.until(() -> !shown().live());
    assertThat(shown().working()).isFalse();
    assertThat(texts(shown().findings())).isEqualTo(texts(Study.of(hands.session().layout())));
  }

  /** A finding of the machine before is not read on the one after. */
  @Test
  void whatIsPickedWaitsForTheFindings() throws Exception {
    seen.clear();
    desk.edit(
        Edits.set(new Target.OfMeasure("wheelbase"), "1700 mm"),
        new Target.OfMeasure("wheelbase"),
        "");
    hands.step(() -> desk.shown().filter(BoardState::working).isPresent());
    assertThat(desk.isBehind()).isTrue();
    String id = shown().findings().get(0).id();
    desk.chooseFinding(id);
    assertThat(desk.finding()).isEmpty();
    hands.until(() -> desk.finding().equals(id));
    assertThat(shown().working()).isFalse();
  }

  /** What nobody waits for any more is left out, what was asked last always comes. */
  @Test
  void aNewerMachineTakesThePlaceOfOneThatWaits() throws Exception {
    List<Study> found = new ArrayList<>();
    DeskHands owner = new DeskHands(folder.resolve("other"));
    try (FindingWork work = owner.findingWork()) {
      Study last = null;
      for (int i = 0; i < 6; i++) {
        Study study = Study.unchecked(shown().study().placed());
        last = study;
        work.ask(study, false, f -> found.add(study));
      }
      assertThat(work.isBusy()).isTrue();
      owner.step(() -> !work.isBusy());
      assertThat(found).doesNotHaveDuplicates().hasSizeLessThan(6).endsWith(last);
      assertThat(last.isChecked()).isTrue();
    } finally {
      owner.desk().close();
    }
  }

  /** While it is dragged, findings leave the processor to pictures; let go of, none waits. */
  @Test
  void findingsRestBetweenMovesAndNotAfterThem() throws Exception {
    List<Study> found = new ArrayList<>();
    Study first = Study.unchecked(shown().study().placed());
    Study second = Study.unchecked(shown().study().placed());
    DeskHands owner = new DeskHands(folder.resolve("third"));
    try (FindingWork work = owner.findingWork(worked -> Long.MAX_VALUE / 2)) {
      work.ask(first, true, f -> found.add(first));
      owner.step(() -> !work.isBusy());
      work.ask(second, true, f -> found.add(second));
      Thread.sleep(100); // begun by mistake it may be found in this time
      assertThat(second.isChecked()).isFalse();
      work.ask(second, false, f -> found.add(second));
      owner.step(() -> !work.isBusy());
      assertThat(found).containsExactly(first, second);
    } finally {
      owner.desk().close();
    }
  }

  @Test
  void findingsRestTwiceAsLongAsTheyTookButNotForLong() {
    assertThat(FindingWork.restNs(20_000_000)).isEqualTo(40_000_000);
    assertThat(FindingWork.restNs(2_000_000_000)).isEqualTo(300_000_000);
  }
}
