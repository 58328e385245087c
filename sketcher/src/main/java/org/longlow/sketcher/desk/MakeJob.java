package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import org.longlow.sketcher.app.InTheWay;
import org.longlow.sketcher.app.Ready;

/**
 * Paper being written beside the window, on a thread of its own; one set at a time. Belongs to the
 * owner's thread, like the desk.
 */
public final class MakeJob {

  private final Executor owner;
  private final Runnable changed;
  private boolean running;
  private volatile boolean stop;
  private String words = "";
  private double share;
  private List<String> made = List.of();
  private String trouble = "";
  private Question question;

  /**
   * Something stands where it would be written; nothing is written yet.
   *
   * @param ready what is to be written
   * @param folder where
   * @param there what stands there
   */
  public record Question(Ready ready, Path folder, InTheWay there) {}

  /**
   * @param changed called on the owner's thread whenever there is news
   */
  public MakeJob(Executor owner, Runnable changed) {
    this.owner = owner;
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

  /** Returns what has to be agreed to before anything is written. */
  public Optional<Question> question() {
    return Optional.ofNullable(question);
  }

  /** Begins, unless something is being made; asks before it replaces anything. */
  public void start(Ready ready, Path folder) {
    start(ready, folder, Set.of());
  }

  /** Agrees to what is asked, and begins. */
  public void agree() {
    question().ifPresent(q -> start(q.ready(), q.folder(), new HashSet<>(q.there().all())));
  }

  /** Agrees to nothing; all stays as it is. */
  public void refuse() {
    question = null;
    changed.run();
  }

  private void start(Ready ready, Path folder, Set<Path> agreed) {
    if (running) {
      return;
    }
    running = true;
    stop = false;
    words = "begins";
    share = 0;
    made = List.of();
    trouble = "";
    question = null;
    changed.run();
    Thread thread = new Thread(() -> run(ready, folder, agreed), "longlow-make");
    thread.setDaemon(true);
    thread.start();
  }

  /**
   * Gives it up after the sheet it is at; nothing of it is left in the folder. Once the set is
   * being put in place it is too late, and {@link #trouble} says so.
   */
  public void cancel() {
    if (running) {
      stop = true;
      words = "gives up after this sheet, unless all is written by then";
      changed.run();
    }
  }

  private void run(Ready ready, Path folder, Set<Path> agreed) {
    InTheWay.Consent consent = there -> agreed.containsAll(there.all());
    List<String> done = List.of();
    String wrong = "";
    Question asks = null;
    try {
      // asked before the work, and again where it is put in place
      consent.ask(ready.places(folder));
      Optional<List<String>> written = ready.write(folder, consent, this::step);
      done = written.orElse(List.of());
      wrong =
          written.isEmpty()
              ? "Given up; nothing was written."
              : stop ? "It was too late to give up; all is written." : "";
    } catch (InTheWay.NotAgreed e) {
      asks = new Question(ready, folder, e.there());
    } catch (IOException | RuntimeException e) {
      wrong = "Not made: " + e.getMessage();
    }
    List<String> finished = done;
    String said = wrong;
    Question asked = asks;
    owner.execute(
        () -> {
          running = false;
          made = finished;
          trouble = said;
          question = asked;
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
          if (!stop) {
            words = of > 1 ? what + ", sheet " + (done + 1) + " of " + of : what;
          }
          share = of == 0 ? 0 : (double) done / of;
          changed.run();
        });
    return true;
  }
}
