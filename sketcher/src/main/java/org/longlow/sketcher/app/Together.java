package org.longlow.sketcher.app;

import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;

/**
 * Pieces of work that do not wait for each other, begun together on all cores and taken in their
 * order; what comes out does not depend on how many cores there are.
 */
final class Together<T> implements AutoCloseable {

  /** What came of a piece: its failure is kept, since a core's own would be told as another. */
  private record Done<T>(T value, RuntimeException failed) {}

  private final List<ForkJoinTask<Done<T>>> begun;
  private volatile boolean givenUp;

  /** Begins all pieces. */
  Together(List<Supplier<T>> pieces) {
    begun = pieces.stream().map(piece -> ForkJoinTask.adapt(() -> done(piece))).toList();
    // last first: whoever takes them finds the next one on top, and other cores begin at the end
    for (int i = begun.size() - 1; i >= 0; i--) {
      begun.get(i).fork();
    }
  }

  private Done<T> done(Supplier<T> piece) {
    try {
      return new Done<>(givenUp ? null : piece.get(), null);
    } catch (RuntimeException e) {
      return new Done<>(null, e);
    }
  }

  /** Returns what came of piece {@code i}, or ends as it did; in their order, each once. */
  T take(int i) {
    Done<T> done = begun.get(i).join();
    if (done.failed() != null) {
      throw done.failed();
    }
    return done.value();
  }

  /** Gives up what was not begun, and waits for what was. */
  @Override
  public void close() {
    givenUp = true;
    begun.forEach(ForkJoinTask::quietlyJoin);
  }
}
