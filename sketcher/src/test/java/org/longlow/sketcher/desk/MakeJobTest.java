package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.study.Study;
import org.longlow.svg.page.Paper;

class MakeJobTest {

  private final LinkedBlockingQueue<Runnable> owner = new LinkedBlockingQueue<>();
  private final List<String> heard = new ArrayList<>();
  private final Study study = Study.of(Wren.layout());
  private final Maker.Order order =
      new Maker.Order(EnumSet.of(Maker.Kind.DRAWING), Paper.A4, Path.of("there"));
  private MakeJob job;

  private MakeJob job(Maker maker) {
    job = new MakeJob(owner::add, maker, () -> heard.add(job == null ? "" : job.words()));
    return job;
  }

  private void untilDone() throws InterruptedException {
    while (job.isRunning()) {
      Runnable next = owner.poll(20, TimeUnit.SECONDS);
      assertThat(next).as("news from the job").isNotNull();
      next.run();
    }
  }

  @Test
  void progressIsHeardInOrderAndWhatWasMadeIsTold() throws InterruptedException {
    job(
        (s, o, progress) -> {
          assertThat(progress.step("one", 0, 2)).isTrue();
          assertThat(progress.step("two", 1, 2)).isTrue();
          return List.of("a thing");
        });
    job.start(study, order);
    untilDone();
    assertThat(heard).containsSubsequence("begins", "one", "two", "");
    assertThat(job.made()).containsExactly("a thing");
    assertThat(job.trouble()).isEmpty();
  }

  @Test
  void aStopIsHeardAtTheNextStep() throws InterruptedException {
    CountDownLatch stopped = new CountDownLatch(1);
    job(
        (s, o, progress) -> {
          progress.step("one", 0, 2);
          try {
            stopped.await();
          } catch (InterruptedException e) {
            throw new IllegalStateException(e);
          }
          return progress.step("two", 1, 2) ? List.of("one", "two") : List.of("one");
        });
    job.start(study, order);
    job.cancel();
    stopped.countDown();
    untilDone();
    assertThat(job.made()).containsExactly("one");
    assertThat(job.trouble()).contains("Stopped");
  }

  @Test
  void whatCannotBeWrittenIsSaid() throws InterruptedException {
    job(
        (s, o, progress) -> {
          throw new IOException("no room on the disk");
        });
    job.start(study, order);
    untilDone();
    assertThat(job.trouble()).isEqualTo("Not made: no room on the disk");
  }
}
