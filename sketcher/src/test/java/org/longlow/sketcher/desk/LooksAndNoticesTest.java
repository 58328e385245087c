package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.History;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.picture.PictureOptions;

/** How the picture is asked for, what is marked on it, and what is said beside it. */
class LooksAndNoticesTest {

  private static final Study WREN = Study.of(Wren.layout());
  private static final List<Finding> WORST_FIRST = WorstFirst.of(WREN.findings());

  @Test
  void theFirstLookSeatsTheFirstOfTheCrewAndKeepsTheScale() {
    PictureOptions before = PictureOptions.PLAIN.withDenominator(7).withPerson("nobody");
    PictureOptions first = Looks.first(WREN.layout(), before);
    assertThat(first.person()).isEqualTo("Mara");
    assertThat(first.names()).isTrue();
    assertThat(first.denominator()).isEqualTo(7);
  }

  /** The machine stays as it was seen when its first seat is put down. */
  @Test
  void aMachineWithoutASeatIsLookedAtAsDrawn() {
    Layout bare = Entries.without(WREN.layout(), new Entries.Entry("parts", "pan")).layout();
    PictureOptions first = Looks.first(bare, PictureOptions.PLAIN);
    BoardState empty = new Studio().draw(bare, Study.of(bare), List.of(), first, "", false);
    assertThat(empty.standing()).isEmpty();
    PictureOptions next = Looks.onceSeen(empty, first);
    BoardState seated = new Studio().draw(WREN.layout(), WREN, List.of(), next, "", false);
    assertThat(seated.standing()).as("as drawn").isEmpty();
    assertThat(seated.heads()).hasSize(1);
    BoardState whole = new Studio().draw(WREN.layout(), WREN, List.of(), first, "", false);
    assertThat(whole.standing()).isPresent();
    assertThat(Looks.onceSeen(whole, first)).isEqualTo(first);
  }

  @Test
  void ghostsComeAndGo() {
    PictureOptions two =
        Looks.ghost("Tor", true).apply(Looks.ghost("Mara", true).apply(PictureOptions.PLAIN));
    assertThat(two.ghosts()).isEqualTo(Set.of("Mara", "Tor"));
    assertThat(Looks.ghost("Mara", false).apply(two).ghosts()).isEqualTo(Set.of("Tor"));
  }

  @Test
  void seatingKeepsAStanceThatHasNobodyAboard() {
    Standing laden = standing(Stance.Kind.LADEN);
    Standing parked =
        WREN.standings().stream()
            .filter(s -> s.condition().kind() != Stance.Kind.LADEN)
            .findFirst()
            .orElseThrow();
    PictureOptions on = PictureOptions.PLAIN.withStance(Optional.of(laden.condition()));
    assertThat(Looks.seated("Tor").apply(on).stance()).isEmpty();
    assertThat(Looks.seated("Tor").apply(on).person()).isEqualTo("Tor");
    PictureOptions off = PictureOptions.PLAIN.withStance(Optional.of(parked.condition()));
    assertThat(Looks.seated("Tor").apply(off).stance()).contains(parked.condition());
  }

  private static Standing standing(Stance.Kind kind) {
    return WREN.standings().stream()
        .filter(s -> s.condition().kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  /** Failing ones first, and one that does not fail only while it is picked. */
  @Test
  void whatFailsIsMarkedAndWhatIsPicked() {
    List<String> failing =
        WREN.findings().stream().filter(f -> f.verdict() == Verdict.FAIL).map(Finding::id).toList();
    Finding other =
        WREN.findings().stream().filter(f -> f.verdict() != Verdict.FAIL).findFirst().orElseThrow();
    assertThat(failing).isNotEmpty();
    assertThat(BoardState.marked(WORST_FIRST, "")).containsExactlyInAnyOrderElementsOf(failing);
    assertThat(BoardState.marked(WORST_FIRST, failing.get(0)))
        .containsExactlyInAnyOrderElementsOf(failing);
    List<String> picked = BoardState.marked(WORST_FIRST, other.id());
    assertThat(picked).hasSize(failing.size() + 1);
    assertThat(picked.get(failing.size())).isEqualTo(other.id());
  }

  /** Stances with nobody aboard, and those of the one who is shown. */
  @Test
  void stepsAreThoseOfThePersonShown() {
    Studio studio = new Studio();
    BoardState shown =
        studio.draw(
            WREN.layout(), WREN, List.of(), PictureOptions.PLAIN.withPerson("Tor"), "", false);
    assertThat(shown.steps()).isNotEmpty();
    for (Standing s : WREN.standings()) {
      boolean concerns =
          s.condition().aboard().isEmpty() || s.condition().aboard().get(0).person().equals("Tor");
      assertThat(shown.steps().contains(s)).isEqualTo(concerns);
    }
    assertThat(shown.movable()).contains("backTop").doesNotContain("gripPin");
    assertThat(shown.findings()).hasSameSizeAs(WREN.findings());
    assertThat(
            shown
                .onDrawing("gripPin")
                .distance(shown.ground().toRoad(shown.places().pin("gripPin"))))
        .isLessThan(1e-9);
  }

  /** A stance that the machine does not have is not asked for. */
  @Test
  void aStanceOfAnotherMachineIsLetGo() {
    Layout other = Edits.set(new Target.OfMeasure("rake"), "28 deg").applied(Wren.layout());
    Studio studio = new Studio();
    PictureOptions on =
        PictureOptions.PLAIN
            .withPerson("Tor")
            .withStance(Optional.of(standing(Stance.Kind.LADEN).condition()));
    BoardState shown = studio.draw(WREN.layout(), WREN, List.of(), on, "", false);
    assertThat(shown.standing()).contains(standing(Stance.Kind.LADEN));
    Study alone =
        new Study(other, WREN.placed(), WREN.shapes(), WREN.sittings(), List.of(), List.of());
    assertThat(studio.draw(other, alone, List.of(), on, "", true).options().stance()).isEmpty();
    assertThat(studio.draw(other, alone, List.of(), on, "", true).live()).isTrue();
  }

  @Test
  void aStudyIsMadeOnceForALayout() {
    Studio studio = new Studio();
    Layout layout = Wren.layout();
    Study made = studio.of(layout);
    assertThat(studio.of(layout)).isSameAs(made);
    Layout other = Wren.layout();
    studio.remember(other, WREN);
    assertThat(studio.of(other)).isSameAs(WREN);
    assertThat(studio.of(layout)).isNotSameAs(made);
  }

  @Test
  void aLaterNoticeOfATopicTakesThePlaceOfTheFirst() {
    Notices notices = new Notices();
    Notice first = new Notice("a", Notice.Mood.BAD, "1", List.of());
    Notice other = new Notice("b", Notice.Mood.SAID, "2", List.of());
    Notice later = new Notice("a", Notice.Mood.CARE, "3", List.of());
    notices.put(first);
    notices.put(other);
    assertThat(notices.all()).containsExactly(first, other);
    notices.put(later);
    assertThat(notices.all()).containsExactly(other, later);
    notices.dropSaid();
    assertThat(notices.all()).containsExactly(later);
    notices.drop("b");
    assertThat(notices.all()).containsExactly(later);
    notices.drop("a");
    assertThat(notices.all()).isEmpty();
    notices.put(first);
    notices.clear();
    assertThat(notices.all()).isEmpty();
  }

  @Test
  void stepsThatAreDroppedAreNotRedone() {
    Layout a = Wren.layout();
    Layout b = Edits.nail("backTop", true).applied(a);
    Layout c = Edits.nail("pegPin", true).applied(a);
    History history = new History(a);
    assertThat(history.back()).isFalse();
    assertThat(history.forward()).isFalse();
    assertThat(history.backName()).isEmpty();
    history.add("one", b);
    assertThat(history.isBehind(a)).isTrue();
    assertThat(history.isBehind(b)).isTrue();
    assertThat(history.isBehind(c)).isFalse();
    assertThat(history.backName()).contains("one");
    assertThat(history.back()).isTrue();
    assertThat(history.isBehind(b)).as("taken back").isFalse();
    assertThat(history.forwardName()).contains("one");
    history.add("two", c);
    assertThat(history.forward()).isFalse();
    assertThat(history.forwardName()).isEmpty();
    assertThat(history.layout()).isSameAs(c);
    assertThat(history.back()).isTrue();
    assertThat(history.layout()).isSameAs(a);
  }

  /** While one job runs only the last of what is asked waits; what is queued is done always. */
  @Test
  void theLatestWinsAndWhatIsQueuedIsDone() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    List<String> done = Collections.synchronizedList(new ArrayList<>());
    LatestWins worker = new LatestWins("test");
    worker.ask(
        () -> {
          begun.countDown();
          try {
            go.await(10, TimeUnit.SECONDS);
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
          done.add("first " + Thread.currentThread().getName());
        });
    assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
    worker.ask(() -> done.add("second"));
    worker.ask(() -> done.add("third"));
    worker.queue(() -> done.add("queued"));
    go.countDown();
    CountDownLatch end = new CountDownLatch(1);
    worker.queue(end::countDown);
    assertThat(end.await(10, TimeUnit.SECONDS)).isTrue();
    assertThat(done).containsExactly("first test", "third", "queued");
    worker.close();
    worker.ask(() -> done.add("late"));
    assertThat(worker.awaitEnd(10)).isTrue();
    assertThat(done).hasSize(3);
  }

  /** What waits at the end is dropped, and the thread keeps no program alive. */
  @Test
  void atTheEndOnlyTheJobThatRunsIsDone() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    List<String> done = Collections.synchronizedList(new ArrayList<>());
    LatestWins worker = new LatestWins("test");
    worker.queue(
        () -> {
          done.add(Thread.currentThread().isDaemon() ? "daemon" : "none");
          begun.countDown();
          try {
            go.await(10, TimeUnit.SECONDS);
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
        });
    assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
    worker.ask(() -> done.add("waits"));
    worker.close();
    assertThat(worker.awaitEnd(0)).as("it runs still").isFalse();
    go.countDown();
    assertThat(worker.awaitEnd(10)).isTrue();
    assertThat(done).containsExactly("daemon");
  }
}
