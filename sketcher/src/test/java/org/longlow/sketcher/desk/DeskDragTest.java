package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TieKind;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.PinFreedom;
import org.longlow.sketcher.edit.Target;

/** A hand on the pins of a desk without a window: hover, grab, move, let go, and steps by keys. */
class DeskDragTest {

  private static final PointMm FOOT = new PointMm(300, 480);

  @TempDir private Path folder;
  private DeskHands hands;
  private Desk desk;
  private int told;

  @BeforeEach
  void open() throws Exception {
    hands = new DeskHands(folder.resolve("state"));
    desk = hands.desk();
    hands.open(Wren.file(folder));
    hands.until(() -> desk.shown().isPresent());
    desk.watch(() -> told++);
  }

  @AfterEach
  void end() {
    desk.close();
  }

  private PointMm written(String pin) {
    Pin p = hands.session().layout().pins().get(pin);
    return new PointMm(p.x().evaluate(n -> Double.NaN), p.z().evaluate(n -> Double.NaN));
  }

  @Test
  void hoveringTellsHowAPinCanMove() throws Exception {
    assertThat(desk.drags().freedom()).isEmpty();
    desk.drags().hover("backTop");
    hands.until(() -> desk.drags().freedom().isPresent());
    assertThat(desk.drags().freedom().get().kind()).isEqualTo(PinFreedom.Kind.LINE);
    assertThat(desk.drags().freedom().get().pin()).isEqualTo("backTop");
    int before = told;
    desk.drags().hover("backTop");
    assertThat(told).as("nothing new").isEqualTo(before);
    assertThat(desk.drags().freedom()).isPresent();
    desk.drags().hover("gripPin");
    assertThat(desk.drags().freedom()).as("not of the pin before").isEmpty();
    hands.until(() -> desk.drags().freedom().isPresent());
    assertThat(desk.drags().freedom().get().kind()).isEqualTo(PinFreedom.Kind.NAILED);
    desk.drags().hover("");
    assertThat(desk.drags().freedom()).isEmpty();
    hands.until(() -> true);
    assertThat(desk.drags().freedom()).isEmpty();
  }

  /** An answer about a pin that the pointer has left is not shown. */
  @Test
  void aLateAnswerIsDropped() throws Exception {
    desk.drags().hover("backTop");
    desk.drags().hover("");
    hands.until(() -> true);
    assertThat(desk.drags().freedom()).isEmpty();
  }

  @Test
  void aDragIsOneStepAtTheNearestPlace() throws Exception {
    assertThat(desk.drags().drag()).isEmpty();
    assertThat(desk.drags().grab("backTop")).isTrue();
    assertThat(desk.drags().drag()).isPresent();
    assertThat(desk.drags().drag().get().words()).isEmpty();
    PointMm target = new PointMm(20, 1100);
    for (int k = 1; k <= 5; k++) {
      desk.drags().moveTo(new PointMm(60 - 8 * k, 940 + 32 * k));
    }
    hands.until(() -> !desk.drags().drag().get().words().isEmpty());
    PointMm out = target.minus(FOOT);
    PointMm nearest = FOOT.plus(out.times(520 / out.length()));
    assertThat(desk.shown().get().places().pin("backTop").distance(nearest)).isLessThan(0.01);
    assertThat(desk.shown().get().live()).isTrue();
    assertThat(hands.session().undoName()).as("no step yet").isEmpty();
    // keys of history wait while a pin is held
    desk.undo();
    desk.drags().letGo();
    assertThat(desk.drags().drag()).isEmpty();
    assertThat(desk.drags().grab("backTop")).as("the step is not there yet").isFalse();
    assertThat(hands.notice("not-yet").get().text()).contains("The last move");
    hands.until(() -> hands.session().undoName().isPresent());
    assertThat(hands.session().undoName()).contains("move backTop");
    assertThat(written("backTop").distance(nearest)).isLessThan(0.01);
    assertThat(desk.shown().get().live()).isFalse();
    desk.undo();
    hands.until(() -> hands.session().undoName().isEmpty());
    assertThat(hands.session().layout()).isEqualTo(Wren.layout());
    desk.redo();
    hands.until(() -> hands.session().redoName().isEmpty());
    assertThat(written("backTop").distance(nearest)).isLessThan(0.01);
  }

  @Test
  void whatCannotMoveIsNotTakenButExplained() throws Exception {
    assertThat(desk.drags().grab("gripPin")).isFalse();
    hands.until(() -> desk.drags().freedom().isPresent());
    assertThat(desk.drags().freedom().get().pin()).isEqualTo("gripPin");
    assertThat(desk.drags().drag()).isEmpty();
    assertThat(hands.notice("not-yet")).isEmpty();
  }

  @Test
  void grabbedAndLetGoWithoutAMoveIsNoStep() throws Exception {
    assertThat(desk.drags().grab("backTop")).isTrue();
    assertThat(desk.drags().grab("pegPin")).as("one hand, one pin").isFalse();
    desk.drags().letGo();
    hands.until(() -> true);
    assertThat(hands.session().undoName()).isEmpty();
    assertThat(desk.drags().drag()).isEmpty();
    // nothing is held: nothing to move or let go of
    desk.drags().moveTo(new PointMm(0, 0));
    desk.drags().letGo();
    hands.until(() -> true);
    assertThat(hands.session().layout()).isEqualTo(Wren.layout());
  }

  /** Wren's back rest is written 1.2 mm shorter than its tie: that is no move of the pan. */
  @Test
  void draggingWhatTiesHoldIsNoStep() throws Exception {
    assertThat(desk.drags().grab("panRear")).isTrue();
    desk.drags().moveTo(new PointMm(400, 500));
    hands.until(() -> !desk.drags().drag().get().words().isEmpty());
    desk.drags().letGo();
    hands.until(() -> desk.isIdle());
    assertThat(desk.drags().drag()).isEmpty();
    assertThat(hands.session().undoName()).isEmpty();
    assertThat(hands.session().isChanged()).isFalse();
    // the smallest step by keys is one, though
    desk.drags().nudge("pegPin", new PointMm(0.1, 0));
    hands.until(() -> hands.session().undoName().isPresent());
    assertThat(hands.session().undoName()).contains("move pegPin");
  }

  @Test
  void aDroppedDragLeavesNothing() throws Exception {
    assertThat(desk.drags().grab("backTop")).isTrue();
    desk.drags().moveTo(new PointMm(20, 1100));
    hands.until(() -> !desk.drags().drag().get().words().isEmpty());
    desk.drags().drop();
    hands.until(() -> !desk.shown().get().live());
    assertThat(desk.shown().get().places().pin("backTop").distance(written("backTop")))
        .as("as drawn, but for the 1.2 mm that its length is put right by")
        .isLessThan(1.3);
    assertThat(hands.session().undoName()).isEmpty();
  }

  /** Three steps of 2 mm, asked for faster than they are answered, are 6 mm. */
  @Test
  void stepsByKeysAddUp() throws Exception {
    desk.choose("pin:pegPin");
    hands.until(() -> true);
    double before = desk.shown().get().places().pin("pegPin").x();
    desk.drags().nudge("pegPin", new PointMm(2, 0));
    desk.drags().nudge("pegPin", new PointMm(2, 0));
    desk.drags().nudge("pegPin", new PointMm(2, 0));
    hands.until(() -> Math.abs(written("pegPin").x() - before - 6) < 0.01);
    assertThat(written("pegPin").z()).isCloseTo(430, within(1e-6));
  }

  /** Steps that wait are for the pin they were asked for, whatever is picked meanwhile. */
  @Test
  void stepsThatWaitGoToTheirOwnPin() throws Exception {
    double peg = desk.shown().get().places().pin("pegPin").x();
    PointMm top = desk.shown().get().places().pin("backTop");
    desk.choose("part:pegs");
    desk.drags().nudge("pegPin", new PointMm(2, 0));
    desk.choose("pin:backTop");
    desk.drags().nudge("pegPin", new PointMm(3, 0));
    desk.drags().nudge("backTop", new PointMm(0, 4));
    hands.until(() -> written("pegPin").x() > peg + 4.9 && written("backTop").z() > top.z() + 0.5);
    assertThat(written("pegPin").x()).isCloseTo(peg + 5, within(0.01));
    // along its circle about the foot, as near as it comes to 4 mm above where it was
    PointMm out = top.plus(new PointMm(0, 4)).minus(FOOT);
    assertThat(written("backTop").distance(FOOT.plus(out.times(520 / out.length()))))
        .isLessThan(0.01);
    assertThat(hands.session().undoName()).contains("move backTop");
  }

  @Test
  void beforeAnythingIsDrawnNothingIsHeld() throws Exception {
    desk.files().openCopy(Wren.layout(), Optional.empty());
    assertThat(desk.isBeginning()).isTrue();
    assertThat(desk.drags().grab("backTop")).isFalse();
    assertThat(hands.notice("not-yet").get().text()).contains("still being worked out");
    desk.drags().hover("backTop");
    assertThat(desk.drags().freedom()).isEmpty();
    hands.until(() -> desk.shown().isPresent());
    assertThat(desk.isBeginning()).isFalse();
    assertThat(desk.drags().freedom()).isEmpty();
    desk.leave();
    assertThat(desk.session()).isEmpty();
    assertThat(desk.shown()).isEmpty();
    assertThat(desk.drags().grab("backTop")).isFalse();
    assertThat(desk.files().save()).isFalse();
    assertThat(desk.files().parting("close")).isEmpty();
  }

  /** What the machine is drawn as anew is told of the pin under the pointer too. */
  @Test
  void afterAChangeThePinUnderThePointerIsAskedAgain() throws Exception {
    desk.drags().hover("pegPin");
    hands.until(() -> desk.drags().freedom().isPresent());
    desk.edit(Edits.nail("pegPin", true), new Target.OfPin("pegPin", true), "");
    hands.until(
        () -> desk.drags().freedom().map(f -> f.kind() == PinFreedom.Kind.NAILED).orElse(false));
    assertThat(hands.session().undoName()).contains("nail pegPin");
  }

  @Test
  void aPreviewIsShownButNoStepUntilItIsSettled() throws Exception {
    Edit edit = Edits.set(new Target.OfMeasure("backLength"), "515 mm");
    desk.preview(edit);
    hands.until(() -> desk.shown().get().live());
    PointMm at = desk.shown().get().places().pin("backTop");
    assertThat(at.distance(FOOT)).isCloseTo(515, within(1e-3));
    assertThat(hands.session().undoName()).isEmpty();
    desk.settle(edit, new Target.OfMeasure("backLength"));
    hands.until(() -> hands.session().undoName().isPresent());
    assertThat(desk.shown().get().live()).isFalse();
    assertThat(written("backTop").distance(FOOT)).isCloseTo(515, within(1e-3));
  }

  @Test
  void aRefusedEditSaysWhyAndTheNextOneForgetsIt() throws Exception {
    desk.type(new Target.OfMeasure("backLength"), "5 kg");
    hands.until(() -> desk.trouble().isPresent());
    assertThat(desk.trouble().get().text()).isEqualTo("5 kg");
    assertThat(desk.trouble().get().target()).isEqualTo(new Target.OfMeasure("backLength"));
    assertThat(hands.session().undoName()).isEmpty();
    desk.type(new Target.OfMeasure("backLength"), "515 mm");
    hands.until(() -> hands.session().undoName().isPresent());
    assertThat(desk.trouble()).isEmpty();
    desk.type(new Target.OfMeasure("backLength"), "515 mm +");
    hands.until(() -> desk.trouble().isPresent());
    assertThat(desk.trouble().get().refused().words()).startsWith("It ");
    int before = told;
    desk.forgetTrouble();
    assertThat(desk.trouble()).isEmpty();
    assertThat(told).isGreaterThan(before);
    desk.type(new Target.OfMeasure("backLength"), "515 mm +");
    hands.until(() -> desk.trouble().isPresent());
    desk.choose("part:pan");
    assertThat(desk.trouble()).isEmpty();
    assertThat(desk.options().chosen()).isEqualTo("part:pan");
    desk.undo();
    hands.until(() -> hands.session().undoName().isEmpty());
  }

  @Test
  void aContradictionOnTheBoardIsSaidAndForgottenOnceItIsMended() throws Exception {
    hands.session().apply(Edits.tie(TieKind.AHEAD, List.of("rearAxle", "panRear"), "350 mm"));
    desk.changed();
    hands.until(() -> hands.notice("contradiction").isPresent());
    assertThat(hands.notice("contradiction").get().mood()).isEqualTo(Notice.Mood.BAD);
    assertThat(hands.notice("contradiction").get().text()).contains("panPlace");
    desk.undo();
    hands.until(() -> hands.notice("contradiction").isEmpty());
  }
}
