package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.sketcher.app.InTheWay;
import org.longlow.sketcher.app.Ready;
import org.longlow.sketcher.app.StepWatch;
import org.longlow.svg.page.Page;

class MakeJobTest {

  @TempDir Path folder;

  private final LinkedBlockingQueue<Runnable> owner = new LinkedBlockingQueue<>();
  private final List<String> heard = new ArrayList<>();
  private final MakeJob job = new MakeJob(owner::add, this::hear);

  private void hear() {
    heard.add(job.words());
  }

  /** Writes a letter into one file, in two steps. */
  private static class Letter implements Ready {
    @Override
    public List<Page> pages() {
      return List.of();
    }

    @Override
    public String words() {
      return "a letter";
    }

    @Override
    public List<Path> places(Path into) {
      return List.of(into.resolve("letter.txt"));
    }

    @Override
    public Optional<List<String>> write(Path into, InTheWay.Consent consent, StepWatch progress)
        throws IOException {
      if (!progress.step("one", 0, 2) || !progress.step("two", 1, 2)) {
        return Optional.empty();
      }
      consent.ask(places(into));
      Files.writeString(into.resolve("letter.txt"), "new");
      return Optional.of(List.of("letter.txt"));
    }
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
    job.start(new Letter(), folder);
    untilDone();
    assertThat(heard).containsSubsequence("begins", "one, sheet 1 of 2", "two, sheet 2 of 2", "");
    assertThat(job.made()).containsExactly("letter.txt");
    assertThat(job.trouble()).isEmpty();
    assertThat(folder.resolve("letter.txt")).hasContent("new");
  }

  @Test
  void whatIsGivenUpIsNotThere() throws InterruptedException {
    CountDownLatch stopped = new CountDownLatch(1);
    job.start(
        new Letter() {
          @Override
          public Optional<List<String>> write(
              Path into, InTheWay.Consent consent, StepWatch progress) throws IOException {
            try {
              stopped.await();
            } catch (InterruptedException e) {
              throw new IllegalStateException(e);
            }
            return super.write(into, consent, progress);
          }
        },
        folder);
    job.cancel();
    stopped.countDown();
    untilDone();
    assertThat(job.made()).isEmpty();
    assertThat(job.trouble()).isEqualTo("Given up; nothing was written.");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void whatIsGivenUpTooLateIsSaidToBeWritten() throws InterruptedException {
    job.start(
        new Letter() {
          @Override
          public Optional<List<String>> write(
              Path into, InTheWay.Consent consent, StepWatch progress) throws IOException {
            Optional<List<String>> written = super.write(into, consent, progress);
            job.cancel();
            return written;
          }
        },
        folder);
    untilDone();
    assertThat(job.made()).containsExactly("letter.txt");
    assertThat(job.trouble()).isEqualTo("It was too late to give up; all is written.");
    assertThat(folder.resolve("letter.txt")).hasContent("new");
  }

  @Test
  void nothingIsReplacedBeforeItIsAgreedTo() throws Exception {
    Path file = Files.writeString(folder.resolve("letter.txt"), "old");
    job.start(new Letter(), folder);
    untilDone();
    assertThat(file).hasContent("old");
    assertThat(job.question().orElseThrow().there().others()).containsExactly(file);
    assertThat(heard).as("asked before any work").doesNotContain("one, sheet 1 of 2");
    job.refuse();
    assertThat(job.question()).isEmpty();
    assertThat(file).hasContent("old");
    job.start(new Letter(), folder);
    untilDone();
    job.agree();
    untilDone();
    assertThat(job.question()).isEmpty();
    assertThat(file).hasContent("new");
  }

  /** What comes to be there during the work was not agreed to. */
  @Test
  void whatCameMeanwhileIsAskedAboutToo() throws Exception {
    Path file = folder.resolve("letter.txt");
    job.start(
        new Letter() {
          @Override
          public Optional<List<String>> write(
              Path into, InTheWay.Consent consent, StepWatch progress) throws IOException {
            Files.writeString(file, "somebody else's");
            return super.write(into, consent, progress);
          }
        },
        folder);
    untilDone();
    assertThat(job.question()).isPresent();
    assertThat(file).hasContent("somebody else's");
  }

  @Test
  void whatCannotBeWrittenIsSaid() throws InterruptedException {
    job.start(
        new Letter() {
          @Override
          public Optional<List<String>> write(
              Path into, InTheWay.Consent consent, StepWatch progress) throws IOException {
            throw new IOException("no room on the disk");
          }
        },
        folder);
    untilDone();
    assertThat(job.trouble()).isEqualTo("Not made: no room on the disk");
  }
}
