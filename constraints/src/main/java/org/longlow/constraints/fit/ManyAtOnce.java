package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;

/**
 * The same work for many numbers, on several threads; what comes out does not depend on how many.
 *
 * @param threads how many, from 1
 * @param stopped whether to give up, asked before each piece of work
 */
record ManyAtOnce(int threads, BooleanSupplier stopped) {

  /** Returns what comes out for 0 to n - 1, in their order; empty if it was given up. */
  <T> Optional<List<T>> map(int n, IntFunction<T> work) {
    AtomicReferenceArray<T> out = new AtomicReferenceArray<>(n);
    AtomicInteger next = new AtomicInteger();
    Runnable worker =
        () -> {
          for (int i = next.getAndIncrement(); i < n; i = next.getAndIncrement()) {
            if (stopped.getAsBoolean()) {
              return;
            }
            out.set(i, work.apply(i));
          }
        };
    if (threads == 1) {
      worker.run();
    } else {
      beside(worker, next, n);
    }
    List<T> all = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      if (out.get(i) == null) {
        return Optional.empty();
      }
      all.add(out.get(i));
    }
    return Optional.of(all);
  }

  private void beside(Runnable worker, AtomicInteger next, int n) {
    ExecutorService pool =
        Executors.newFixedThreadPool(
            threads,
            run -> {
              Thread thread = new Thread(run, "crowd");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<Future<?>> all = new ArrayList<>();
      for (int k = 0; k < threads; k++) {
        all.add(pool.submit(worker));
      }
      for (Future<?> one : all) {
        one.get();
      }
    } catch (ExecutionException e) {
      next.set(n); // the others need not go on
      if (e.getCause() instanceof RuntimeException run) {
        throw run;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      next.set(n);
      Thread.currentThread().interrupt();
    } finally {
      pool.shutdown();
    }
  }
}
