package org.longlow.sketcher.desk;

import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.study.Study;

/**
 * Works out the findings of what is shown, on a thread of its own, so that no picture waits for
 * them. A newer machine takes the place of one that waits. All methods belong to the owner's
 * thread.
 */
final class FindingWork implements AutoCloseable {

  private final LatestWins worker = new LatestWins("longlow-findings");
  private final Executor owner;
  private final Consumer<RuntimeException> wrong;

  /** Whose findings were asked for last and have not come; null for nobody's. */
  private Study asked;

  /**
   * @param wrong told on the owner's thread when findings cannot be worked out
   */
  FindingWork(Executor owner, Consumer<RuntimeException> wrong) {
    this.owner = owner;
    this.wrong = wrong;
  }

  /** Returns whether findings are waited for. */
  boolean isBusy() {
    return asked != null;
  }

  /**
   * Asks for the findings of a study.
   *
   * @param found told of them, worst first, on the owner's thread; never, if another study is asked
   *     about before these are begun
   */
  void ask(Study study, Consumer<List<Finding>> found) {
    if (study == asked) {
      return;
    }
    asked = study;
    worker.ask(
        () -> {
          Runnable back;
          try {
            List<Finding> findings = WorstFirst.of(study.findings());
            back = () -> found.accept(findings);
          } catch (RuntimeException e) {
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
        });
  }

  /** Nobody waits any more for what was asked. */
  void forget() {
    asked = null;
  }

  @Override
  public void close() {
    worker.close();
  }
}
