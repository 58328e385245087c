package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What is asked comes back on the owner's thread, and is counted until it has. */
class ErrandsTest {

  private final BlockingQueue<Runnable> owner = new LinkedBlockingQueue<>();
  private final List<Throwable> wrong = new ArrayList<>();
  private final Errands errands = new Errands(owner::add, wrong::add);
  private final List<String> came = new ArrayList<>();

  @AfterEach
  void close() {
    errands.close();
  }

  private void bring() throws InterruptedException {
    Runnable next = owner.poll(20, TimeUnit.SECONDS);
    assertThat(next).isNotNull();
    next.run();
  }

  @Test
  void nothingIsIdleUntilAllHasComeBack() throws InterruptedException {
    assertThat(errands.isIdle()).isTrue();
    errands.ask(() -> () -> came.add("asked"));
    assertThat(errands.isIdle()).isFalse();
    bring();
    assertThat(errands.isIdle()).isTrue();
    errands.queue(() -> () -> came.add("one"));
    errands.queue(() -> () -> came.add("two"));
    assertThat(errands.isIdle()).isFalse();
    bring();
    assertThat(errands.isIdle()).isFalse();
    bring();
    assertThat(errands.isIdle()).isTrue();
    assertThat(came).containsExactly("asked", "one", "two");
    assertThat(wrong).isEmpty();
  }

  /** The first question holds the worker; of those asked meanwhile only the last is answered. */
  @Test
  void aLaterQuestionTakesThePlaceOfOneThatHasNotBegun() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    errands.ask(
        () -> {
          begun.countDown();
          try {
            go.await();
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
          return () -> came.add("first");
        });
    begun.await();
    errands.ask(() -> () -> came.add("dropped"));
    errands.ask(() -> () -> came.add("last"));
    go.countDown();
    bring();
    assertThat(came).containsExactly("first");
    assertThat(errands.isIdle()).isFalse();
    bring();
    assertThat(came).containsExactly("first", "last");
    assertThat(errands.isIdle()).isTrue();
  }

  @Test
  void whatFailsIsToldOnTheOwnersThreadAndCountsAsBack() throws InterruptedException {
    RuntimeException fault = new IllegalStateException("no");
    Error deep = new StackOverflowError();
    errands.ask(
        () -> {
          throw deep;
        });
    errands.queue(
        () -> {
          throw fault;
        });
    assertThat(wrong).isEmpty();
    bring();
    bring();
    assertThat(wrong).containsExactly(deep, fault);
    assertThat(errands.isIdle()).isTrue();
  }
}
