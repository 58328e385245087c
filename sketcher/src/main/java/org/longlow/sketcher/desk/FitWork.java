package org.longlow.sketcher.desk;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import org.longlow.constraints.fit.AdjustReport;
import org.longlow.constraints.fit.AdjustRun;
import org.longlow.constraints.fit.BodyJudge;
import org.longlow.constraints.fit.Crowd;
import org.longlow.constraints.fit.CrowdRun;
import org.longlow.constraints.fit.FitMachine;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.rider.body.Gear;

/**
 * A crowd being judged beside the window, on threads of its own; one at a time. Belongs to the
 * owner's thread, like the desk.
 */
public final class FitWork {

  /** What is worked out; told apart from others by their identity. */
  private static final class Run {
    private volatile boolean stopped;
  }

  /**
   * How a crowd fits.
   *
   * @param layout on which layout
   * @param report how they fit
   * @param adjusted what adjustment would take in, once that is known
   */
  public record Outcome(Layout layout, FitReport report, Optional<AdjustReport> adjusted) {}

  private final Executor owner;
  private final Runnable changed;
  private Run running;
  private String words = "";
  private double share;
  private String trouble = "";
  private Outcome outcome;

  /**
   * @param changed called on the owner's thread whenever there is news
   */
  public FitWork(Executor owner, Runnable changed) {
    this.owner = owner;
    this.changed = changed;
  }

  public boolean isRunning() {
    return running != null;
  }

  /** Returns what is being done now. */
  public String words() {
    return words;
  }

  /** Returns how much of that is done, 0 to 1. */
  public double share() {
    return share;
  }

  /** Returns why there is no answer, or nothing. */
  public String trouble() {
    return trouble;
  }

  /** Returns what came out last. */
  public Optional<Outcome> outcome() {
    return Optional.ofNullable(outcome);
  }

  /** Begins, in place of what was running. */
  public void start(Placed placed, Crowd crowd) {
    stop();
    Run run = new Run();
    running = run;
    words = "people judged";
    share = 0;
    trouble = "";
    outcome = null;
    changed.run();
    Thread thread = new Thread(() -> work(run, placed, crowd), "longlow-fit");
    thread.setDaemon(true);
    thread.start();
  }

  /** Gives it up; what came out so far stays. */
  public void cancel() {
    if (running != null) {
      stop();
      trouble = "Given up.";
      changed.run();
    }
  }

  private void stop() {
    if (running != null) {
      running.stopped = true;
      running = null;
    }
  }

  private void work(Run run, Placed placed, Crowd crowd) {
    try {
      FitMachine machine = FitMachine.of(placed).orElse(null);
      if (machine == null || !placed.holds()) {
        end(
            run,
            machine == null
                ? "Nobody can sit on it: the rider's seat needs a pan, a back and foot rests."
                : "The layout contradicts itself: mend that first.");
        return;
      }
      int threads = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
      BodyJudge judge = new BodyJudge(machine.checks(), Gear.riding(true, true, false), Set.of());
      Optional<FitReport> report =
          new CrowdRun(judge, crowd, threads, (w, d, of) -> at(run, w, d, of), () -> run.stopped)
              .run();
      report.ifPresent(
          r -> bring(run, () -> outcome = new Outcome(placed.layout(), r, Optional.empty())));
      Optional<AdjustReport> adjusted =
          report.isEmpty() || crowd.size() == 0
              ? Optional.empty()
              : new AdjustRun(
                      machine,
                      judge,
                      crowd,
                      threads,
                      (w, d, of) -> at(run, w, d, of),
                      () -> run.stopped)
                  .run();
      adjusted.ifPresent(
          a ->
              bring(run, () -> outcome = new Outcome(placed.layout(), outcome.report(), adjusted)));
      end(run, "");
    } catch (RuntimeException e) {
      end(run, "That could not be worked out: " + e.getMessage());
    }
  }

  private void at(Run run, String what, int done, int of) {
    bring(
        run,
        () -> {
          words = what + ": " + done + " of " + of;
          share = of == 0 ? 0 : (double) done / of;
        });
  }

  private void end(Run run, String why) {
    bring(
        run,
        () -> {
          running = null;
          words = "";
          trouble = why;
        });
  }

  /** Does something on the owner's thread, unless nobody wants to know any more. */
  private void bring(Run run, Runnable news) {
    owner.execute(
        () -> {
          if (running == run) {
            news.run();
            changed.run();
          }
        });
  }
}
