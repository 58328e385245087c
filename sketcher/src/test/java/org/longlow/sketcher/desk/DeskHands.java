package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.LongUnaryOperator;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/** A desk without a window, and the thread that owns it: the one of the test. */
final class DeskHands {

  private final BlockingQueue<Runnable> owner = new LinkedBlockingQueue<>();
  private final Desk desk;

  DeskHands(Path state) {
    desk = new Desk(owner::add, new Autosave(state));
  }

  Desk desk() {
    return desk;
  }

  Session session() {
    return desk.session().get();
  }

  /** Returns who works out findings for this thread. */
  FindingWork findingWork() {
    return findingWork(FindingWork::restNs);
  }

  /** As {@link #findingWork()}, with rests that follow from how long it worked, ns. */
  FindingWork findingWork(LongUnaryOperator rests) {
    return new FindingWork(
        owner::add,
        e -> {
          throw new AssertionError(e);
        },
        rests);
  }

  /** Goes on until that is so and all that was asked is answered. */
  void until(BooleanSupplier done) throws InterruptedException {
    step(() -> done.getAsBoolean() && desk.isIdle());
  }

  /** Goes on until that is so, whatever is still under way. */
  void step(BooleanSupplier done) throws InterruptedException {
    for (int i = 0; i < 200 && !done.getAsBoolean(); i++) {
      Runnable next = owner.poll(100, TimeUnit.MILLISECONDS);
      if (next != null) {
        next.run();
      }
    }
    assertThat(done.getAsBoolean()).isTrue();
  }

  Layout open(Path file) throws InterruptedException {
    desk.files().open(file);
    until(() -> desk.session().flatMap(Session::file).isPresent());
    return session().layout();
  }

  void set(String measure, String text) throws InterruptedException {
    session().apply(Edits.set(new Target.OfMeasure(measure), text));
    desk.changed();
    until(() -> true);
  }

  Optional<Notice> notice(String topic) {
    return desk.notices().stream().filter(n -> n.topic().equals(topic)).findFirst();
  }

  void answer(String topic, String words) {
    Notice notice = notice(topic).get();
    desk.answer(
        notice,
        notice.answers().stream().filter(a -> a.words().startsWith(words)).findFirst().get());
  }
}
