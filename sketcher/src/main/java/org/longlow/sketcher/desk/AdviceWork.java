package org.longlow.sketcher.desk;

import java.util.Optional;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.CushionAdvice;
import org.longlow.constraints.study.Study;

/**
 * The next layer of a cushion to change is looked for on the worker when it is asked for; what is
 * found is gone as soon as the layout is another one. Belongs to the desk's thread.
 */
public final class AdviceWork {

  /**
   * What was found.
   *
   * @param cushion of which one
   * @param done whether all has been tried
   * @param advice what is best; empty where nothing is better
   */
  public record Found(String cushion, boolean done, Optional<CushionAdvice> advice) {}

  private final Surface desk;
  private final Studio studio;
  private Layout of;
  private Found found;

  AdviceWork(Surface desk, Studio studio) {
    this.desk = desk;
    this.studio = studio;
  }

  /** Returns what was asked last of a cushion, if it is about the layout as it is. */
  public Optional<Found> found(String cushion) {
    return Optional.ofNullable(found)
        .filter(f -> f.cushion().equals(cushion))
        .filter(f -> desk.session().filter(s -> s.layout() == of).isPresent());
  }

  /** Looks for the next layer to change. */
  public void ask(String cushion) {
    desk.session()
        .map(Session::layout)
        .ifPresent(
            layout -> {
              of = layout;
              found = new Found(cushion, false, Optional.empty());
              Found begun = found;
              desk.queue(
                  () -> {
                    Optional<CushionAdvice> advice = best(studio.of(layout), cushion);
                    return () -> {
                      if (found == begun) {
                        found = new Found(cushion, true, advice);
                        desk.tell();
                      }
                    };
                  });
            });
  }

  private static Optional<CushionAdvice> best(Study study, String cushion) {
    return study.layout().parts().get(cushion) instanceof CushionPart part
        ? CushionAdvice.best(part, study.sittings(), study.placed().places())
        : Optional.empty();
  }
}
