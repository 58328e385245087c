package org.longlow.sketcher.desk;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * What is asked goes from the owner's thread to one worker and comes back as something to do there.
 * Counts what is under way. All methods belong to the owner's thread.
 */
final class Errands {

  private final LatestWins worker = new LatestWins("longlow-worker");
  private final Executor owner;
  private final Consumer<Throwable> wrong;
  private long asked;
  private long arrived;
  private int queued;

  /**
   * @param wrong told on the owner's thread when a job fails
   */
  Errands(Executor owner, Consumer<Throwable> wrong) {
    this.owner = owner;
    this.wrong = wrong;
  }

  /** Returns whether everything asked so far has come back. */
  boolean isIdle() {
    return arrived == asked && queued == 0;
  }

  /** Asks a question that replaces the last one, if that has not begun. */
  void ask(Supplier<Runnable> job) {
    long number = ++asked;
    worker.ask(() -> bring(job, () -> arrived = Math.max(arrived, number)));
  }

  /** Asks a question that is not replaced. */
  void queue(Supplier<Runnable> job) {
    queued++;
    worker.queue(() -> bring(job, () -> queued--));
  }

  private void bring(Supplier<Runnable> job, Runnable count) {
    Runnable after;
    try {
      after = job.get();
    } catch (RuntimeException | Error e) {
      // the worker goes on, or nothing that is asked would ever come back
      after = () -> wrong.accept(e);
    }
    Runnable back = after;
    owner.execute(
        () -> {
          count.run();
          back.run();
        });
  }

  void close() {
    worker.close();
  }
}
