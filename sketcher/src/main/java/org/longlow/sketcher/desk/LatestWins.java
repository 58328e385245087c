package org.longlow.sketcher.desk;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

/**
 * One thread that does the latest thing asked for. What was asked for meanwhile and not begun is
 * dropped, so a pointer can ask at every move and the answer is never old by more than one job.
 */
public final class LatestWins implements AutoCloseable {

  private final ExecutorService thread;
  private final AtomicReference<Runnable> next = new AtomicReference<>();

  /**
   * @param name of the thread
   */
  public LatestWins(String name) {
    // what is asked after the end is dropped: late answers may still ask
    thread =
        new ThreadPoolExecutor(
            1,
            1,
            0,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(),
            job -> {
              Thread t = new Thread(job, name);
              t.setDaemon(true);
              return t;
            },
            new ThreadPoolExecutor.DiscardPolicy());
  }

  /** Asks for {@code job} in place of whatever is waiting. */
  public void ask(Runnable job) {
    if (next.getAndSet(job) == null) {
      thread.execute(
          () -> {
            Runnable latest = next.getAndSet(null);
            if (latest != null) {
              latest.run();
            }
          });
    }
  }

  /** Does {@code job} after what is being done; it is not dropped. */
  public void queue(Runnable job) {
    thread.execute(job);
  }

  /** Ends after the job that runs. */
  @Override
  public void close() {
    next.set(null);
    thread.shutdown();
  }

  /** Waits for the end after {@link #close}; returns whether it came in time. */
  public boolean awaitEnd(long seconds) throws InterruptedException {
    return thread.awaitTermination(seconds, TimeUnit.SECONDS);
  }
}
