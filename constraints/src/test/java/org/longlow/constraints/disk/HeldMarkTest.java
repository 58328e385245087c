package org.longlow.constraints.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One holder at a time; a mark goes only with finished work. */
class HeldMarkTest {

  private static final Duration LONG = Duration.ofSeconds(30);

  @TempDir Path folder;

  /** Another program that holds the mark until it is killed. */
  static final class Holder {
    public static void main(String[] args) throws IOException {
      HeldMark.put(Path.of(args[0]), "theirs", LONG);
      System.out.println("held");
      // until whoever started it kills it or is gone
      System.in.read();
    }
  }

  @Test
  void itStaysWhereNobodyFinishedAndGoesWithTheNextWhoDoes() throws IOException {
    Path file = folder.resolve("mark");
    try (HeldMark stopped = HeldMark.put(file, "a longer first one", LONG)) {
      assertThat(stopped).isNotNull();
    }
    assertThat(file).hasContent("a longer first one");
    try (HeldMark done = HeldMark.put(file, "second", LONG)) {
      done.remove();
    }
    assertThat(file).doesNotExist();
  }

  @Test
  void manyAtOnceTakeTurns() throws Exception {
    Path file = folder.resolve("mark");
    AtomicInteger inside = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    Callable<Void> work =
        () -> {
          for (int i = 0; i < 20; i++) {
            try (HeldMark mark = HeldMark.put(file, "at work", LONG)) {
              most.accumulateAndGet(inside.incrementAndGet(), Math::max);
              assertThat(file).exists();
              inside.decrementAndGet();
              mark.remove();
            }
          }
          return null;
        };
    ExecutorService several = Executors.newFixedThreadPool(4);
    try {
      List<Future<Void>> all = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        all.add(several.submit(work));
      }
      for (Future<Void> one : all) {
        one.get(60, TimeUnit.SECONDS);
      }
    } finally {
      several.shutdownNow();
    }
    assertThat(most).hasValue(1);
    assertThat(file).doesNotExist();
  }

  @Test
  void anotherProgramIsWaitedForUntilItIsGone() throws Exception {
    Path file = folder.resolve("mark");
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                Holder.class.getName(),
                file.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try {
      assertThat(other.inputReader().readLine()).isEqualTo("held");
      assertThatThrownBy(() -> HeldMark.put(file, "mine", Duration.ofMillis(100)))
          .hasMessageContaining("mark")
          .hasMessageContaining("somebody else is at work in that folder");
      assertThat(Files.readString(file)).isEqualTo("theirs");
    } finally {
      other.destroyForcibly().waitFor();
    }
    try (HeldMark mark = HeldMark.put(file, "mine", LONG)) {
      mark.remove();
    }
    assertThat(file).doesNotExist();
  }
}
