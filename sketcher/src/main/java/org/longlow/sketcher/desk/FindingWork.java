package org.longlow.sketcher.desk;

import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.LongUnaryOperator;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Gathered;
import org.longlow.constraints.study.Study;

/**
 * Works out the findings of what is shown, on a thread of its own, so that no picture waits for
 * them. A newer machine takes the place of one that waits. While a machine is moved, the thread
 * rests after each: most of the processor and of the memory is for pictures then. All methods
 * belong to the owner's thread.
 */
final class FindingWork implements AutoCloseable {

  /** It rests so many times as long as it worked, so that it has a third of a processor. */
  private static final int RESTS = 2;

  private static final long LONGEST_REST_NS = 300_000_000;

  private final LatestWins worker = new LatestWins("longlow-findings");
  private final LongUnaryOperator rests;
  private final Object moves = new Object();
  private boolean moving;
  private final Executor owner;
  private final Consumer<Throwable> wrong;

  /** Whose findings were asked for last and have not come; null for nobody's. */
  private Study asked;

  /**
   * @param wrong told on the owner's thread when findings cannot be worked out
   */
  FindingWork(Executor owner, Consumer<Throwable> wrong) {
    this(owner, wrong, FindingWork::restNs);
  }

  /**
   * @param rests how long it rests after so long a work, ns
   */
  FindingWork(Executor owner, Consumer<Throwable> wrong, LongUnaryOperator rests) {
    this.owner = owner;
    this.wrong = wrong;
    this.rests = rests;
  }

  static long restNs(long workedNs) {
    return Math.min(RESTS * workedNs, LONGEST_REST_NS);
  }

  /** Returns whether findings are waited for. */
  boolean isBusy() {
    return asked != null;
  }

  /**
   * Asks for the findings of a study.
   *
   * @param live whether more of the same machine are to follow at once, as while it is dragged
   * @param found told of them, worst first, on the owner's thread; never, if another study is asked
   *     about before these are begun
   */
  void ask(Study study, boolean live, Consumer<List<Finding>> found) {
    moving(live);
    if (study == asked) {
      return;
    }
    asked = study;
    worker.ask(
        () -> {
          long begun = System.nanoTime();
          Runnable back;
          try {
            List<Finding> findings = Gathered.order(study.findings());
            back = () -> found.accept(findings);
          } catch (RuntimeException | Error e) {
            back = () -> wrong.accept(e);
          }
          Runnable after = back;
          owner.execute(
              () -> {
                if (asked == study) {
                  asked = null;
                }
                after.run();
              });
          rest(rests.applyAsLong(System.nanoTime() - begun));
        });
  }

  private void moving(boolean is) {
    synchronized (moves) {
      moving = is;
      moves.notifyAll();
    }
  }

  /** Rests while the machine is moved, so long at most. */
  private void rest(long ns) {
    long end = System.nanoTime() + ns;
    synchronized (moves) {
      try {
        for (long left = ns; moving && left > 0; left = end - System.nanoTime()) {
          TimeUnit.NANOSECONDS.timedWait(moves, left);
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }

  /** Nobody waits any more for what was asked. */
  void forget() {
    asked = null;
    moving(false);
  }

  @Override
  public void close() {
    moving(false);
    worker.close();
  }
}
