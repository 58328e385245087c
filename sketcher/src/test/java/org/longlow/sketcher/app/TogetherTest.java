package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.longlow.rider.geom.OutOfRange;

class TogetherTest {

  @Test
  void whatComesOfThemIsTakenInTheirOrder() {
    List<Supplier<Integer>> pieces =
        IntStream.range(0, 200).<Supplier<Integer>>mapToObj(i -> () -> i * i).toList();
    try (Together<Integer> together = new Together<>(pieces)) {
      for (int i = 0; i < 200; i++) {
        assertThat(together.take(i)).isEqualTo(i * i);
      }
    }
  }

  @Test
  void aFailureIsToldAsItWas() {
    OutOfRange far = new OutOfRange("far too many sheets");
    try (Together<Integer> together =
        new Together<>(
            List.of(
                () -> 1,
                () -> {
                  throw far;
                }))) {
      assertThat(together.take(0)).isEqualTo(1);
      assertThatThrownBy(() -> together.take(1)).isSameAs(far);
    }
  }

  /** Who gives up takes away what was written, so nothing may be written afterwards. */
  @Test
  void nothingIsWorkedOnOnceItIsGivenUp() throws Exception {
    AtomicInteger ended = new AtomicInteger();
    CountDownLatch begun = new CountDownLatch(1);
    Supplier<Integer> quick = ended::incrementAndGet;
    Supplier<Integer> slow =
        () -> {
          begun.countDown();
          for (long end = System.nanoTime() + 50_000_000; System.nanoTime() < end; ) {
            Thread.onSpinWait();
          }
          return ended.incrementAndGet();
        };
    Together<Integer> together = new Together<>(List.of(quick, quick, slow));
    begun.await();
    together.close();
    int then = ended.get();
    assertThat(then).as("what was begun is ended").isBetween(1, 3);
    Thread.sleep(20);
    assertThat(ended.get()).isEqualTo(then);
  }
}
