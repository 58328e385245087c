package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Target;

/** A window is asked to close while something is still being tried: none of it is lost. */
class AskedToPartTest {

  @TempDir Path folder;
  private DeskHands hands;
  private Desk desk;
  private AskedToPart parts;
  private int closed;

  @BeforeEach
  void open() throws Exception {
    hands = new DeskHands(folder.resolve("state"));
    desk = hands.desk();
    hands.open(Wren.file(folder));
    hands.until(() -> desk.shown().isPresent());
    parts = new AskedToPart(desk, () -> {});
  }

  @AfterEach
  void end() {
    desk.close();
  }

  private boolean mayClose() {
    return parts.may("close", "Close", () -> closed++);
  }

  @Test
  void withNothingUnderWayItGoesAtOnce() {
    assertThat(mayClose()).isTrue();
  }

  @Test
  void anEditIsWaitedForAndThenAskedAbout() throws Exception {
    desk.type(new Target.OfMeasure("rake"), "28 deg");
    assertThat(mayClose()).isFalse();
    assertThat(hands.notice("close")).as("nothing is known yet").isEmpty();
    hands.until(() -> hands.notice("close").isPresent());
    assertThat(closed).isZero();
    assertThat(hands.notice("close").get().text()).contains("unsaved work");
    assertThat(mayClose()).as("asked again, and kept").isTrue();
  }

  @Test
  void aDragIsWaitedForToo() throws Exception {
    PointMm at = desk.shown().get().places().pin("pegPin");
    desk.drags().grab("pegPin");
    desk.drags().moveTo(at.plus(new PointMm(5, 0)));
    desk.drags().letGo();
    assertThat(mayClose()).isFalse();
    hands.until(() -> hands.notice("close").isPresent());
    assertThat(hands.session().undoName()).contains("move pegPin");
  }

  @Test
  void anEditThatChangesNothingLetsItGo() throws Exception {
    desk.type(new Target.OfMeasure("rake"), "27 deg");
    assertThat(mayClose()).isFalse();
    hands.until(() -> closed == 1);
  }

  @Test
  void whatIsRefusedIsSeenBeforeItIsLost() throws Exception {
    desk.type(new Target.OfMeasure("rake"), "28 kg");
    assertThat(mayClose()).isFalse();
    hands.until(() -> desk.trouble().isPresent());
    assertThat(closed).isZero();
    assertThat(mayClose()).as("asked again").isTrue();
  }

  @Test
  void whoDoesNotWantToWaitCanGo() throws Exception {
    desk.type(new Target.OfMeasure("rake"), "28 deg");
    assertThat(mayClose()).isFalse();
    assertThat(mayClose()).as("twice in a row is no answer").isFalse();
    hands.answer("wait", "Close without it");
    assertThat(closed).isEqualTo(1);
    hands.until(() -> hands.notice("close").isPresent());
    assertThat(hands.notice("wait")).isEmpty();
  }
}
