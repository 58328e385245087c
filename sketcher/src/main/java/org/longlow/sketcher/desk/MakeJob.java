package org.longlow.sketcher.desk;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Executor;
import org.longlow.constraints.study.Study;

/**
 * Something being made beside the window, on a thread of its own; one at a time. Belongs to the
 * owner's thread, like the desk.
 */
public final class MakeJob {

  private final Executor owner;
  private final Maker maker;
  private final Runnable changed;
  private boolean running;
  private volatile boolean stop;
  private String words = "";
  private double share;
  private List<String> made = List.of();
  private String trouble = "";

  /**
   * @param changed called on the owner's thread whenever there is news
   */
  public MakeJob(Executor owner, Maker maker, Runnable changed) {
    this.owner = owner;
    this.maker = maker;
    this.changed = changed;
  }

  public boolean isRunning() {
    return running;
  }

  /** Returns what is being done now. */
  public String words() {
    return words;
  }

  /** Returns how much is done, 0 to 1. */
  public double share() {
    return share;
  }

  /** Returns what was made, one line for each thing. */
  public List<String> made() {
    return made;
  }

  /** Returns why it ended early, or nothing. */
  public String trouble() {
    return trouble;
  }

  /** Begins; does nothing while something is being made. */
  public void start(Study study, Maker.Order order) {
    if (running) {
      return;
    }
    running = true;
    stop = false;
    words = "begins";
    share = 0;
    made = List.of();
    trouble = "";
    changed.run();
    Thread thread = new Thread(() -> run(study, order), "longlow-make");
    thread.setDaemon(true);
    thread.start();
  }

  /** Asks it to stop after the step it is at; what is finished stays. */
  public void cancel() {
    stop = true;
    words = "stops after this step";
    changed.run();
  }

  private void run(Study study, Maker.Order order) {
    List<String> done;
    String wrong;
    try {
      done = maker.make(study, order, this::step);
      wrong = stop ? "Stopped; what was finished is there." : "";
    } catch (IOException | RuntimeException e) {
      done = List.of();
      wrong = "Not made: " + e.getMessage();
    }
    List<String> finished = done;
    String said = wrong;
    owner.execute(
        () -> {
          running = false;
          made = finished;
          trouble = said;
          share = 1;
          words = "";
          changed.run();
        });
  }

  private boolean step(String what, int done, int of) {
    if (stop) {
      return false;
    }
    owner.execute(
        () -> {
          words = what;
          share = of == 0 ? 0 : (double) done / of;
          changed.run();
        });
    return true;
  }
}
