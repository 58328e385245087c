package org.longlow.sketcher.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.longlow.constraints.check.finding.Finding;

/**
 * What is on the board, for the desk, and the questions under way about it. The picture comes
 * first, with what was found of the machine before, said to be so; the findings follow, and with
 * them the picture once more. Belongs to the desk's thread.
 */
final class ShowWork implements AutoCloseable {

  private final Surface desk;
  private final Studio studio;
  private final Errands errands;
  private final FindingWork checks;
  private BoardState shown;
  private List<Finding> known = List.of();
  private boolean beginning;

  /**
   * @param wrong told on the owner's thread when a job fails
   */
  ShowWork(Surface desk, Studio studio, Executor owner, Consumer<Throwable> wrong) {
    this.desk = desk;
    this.studio = studio;
    errands = new Errands(owner, wrong);
    checks = new FindingWork(owner, wrong);
  }

  Optional<BoardState> shown() {
    return Optional.ofNullable(shown);
  }

  /** Returns what was found last of the machine on the board, worst first. */
  List<Finding> known() {
    return known;
  }

  /** Returns whether a machine was opened that is not seen yet. */
  boolean isBeginning() {
    return beginning;
  }

  /** Returns whether every question asked so far is answered, findings too. */
  boolean isIdle() {
    return errands.isIdle() && !checks.isBusy();
  }

  /** Returns whether a machine at rest is not worked out yet. */
  boolean isBehind() {
    return beginning || checks.isBusy() && !shown.live();
  }

  /** Nothing is shown any more; what was asked about it is of no interest. */
  void clear(boolean begins) {
    shown = null;
    known = List.of();
    checks.forget();
    beginning = begins;
  }

  /** Asks a question that takes the place of the last one, if that has not begun. */
  void ask(Request request, Consumer<Request.Answer> arrived) {
    Session mine = desk.session().orElseThrow();
    errands.ask(
        () -> {
          Request.Answer answer = request.answered(studio);
          return () -> {
            // what was asked about another machine is of no interest any more
            if (desk.isAt(mine)) {
              arrived.accept(answer);
            }
          };
        });
  }

  /** Does a job on the worker, and what it returns on the owner's thread. */
  void queue(Supplier<Runnable> job) {
    errands.queue(job);
  }

  /** Puts something on the board; returns whether it is another machine than before. */
  boolean put(BoardState next) {
    boolean other = shown == null || shown.study() != next.study();
    shown = next;
    beginning = false;
    if (next.working()) {
      Session mine = desk.session().orElseThrow();
      checks.ask(next.study(), next.live(), findings -> found(mine, next, findings));
    } else {
      known = next.findings();
    }
    return other;
  }

  private void found(Session mine, BoardState of, List<Finding> findings) {
    if (desk.isAt(mine) && shown != null) {
      known = findings;
      if (shown.study() == of.study()) {
        desk.ask();
      }
    }
  }

  /** Whatever was opened will not come. */
  void failed() {
    beginning = false;
  }

  @Override
  public void close() {
    errands.close();
    checks.close();
  }
}
