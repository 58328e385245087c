package org.longlow.sketcher.desk;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.mend.Mending;
import org.longlow.constraints.mend.Offer;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/**
 * What mends a finding is looked for on the worker, in short pieces between which other questions
 * are answered. As soon as the layout is another one the search ends and its offers are gone.
 * Belongs to the desk's thread.
 */
public final class MendWork {

  /** Ways looked at before others have their turn on the worker. */
  private static final int PIECE = 3;

  private final Surface desk;
  private final Studio studio;
  private final EditWork edits;
  private Mends mends;
  private int asked;

  MendWork(Surface desk, Studio studio, EditWork edits) {
    this.desk = desk;
    this.studio = studio;
    this.edits = edits;
  }

  /** Returns what was asked last, if it is about the layout as it is. */
  public Optional<Mends> mends() {
    return Optional.ofNullable(mends).filter(m -> isNow(m.layout()));
  }

  private boolean isNow(Layout layout) {
    return desk.session().filter(s -> s.layout() == layout).isPresent();
  }

  /** Returns the offer that is shown on the board without being a step. */
  public Optional<Offer> tried() {
    return mends().flatMap(Mends::tried);
  }

  /** Looks for what mends a finding; {@link #mends} fills from now on. */
  public void ask(String finding) {
    desk.session()
        .map(Session::layout)
        .ifPresent(
            layout -> {
              int mine = ++asked;
              mends = new Mends(finding, layout, List.of(), true, Optional.empty());
              desk.queue(
                  () -> {
                    Optional<Mending> mending = begin(studio.of(layout), finding);
                    return () -> goOn(mine, mending);
                  });
            });
  }

  private static Optional<Mending> begin(Study study, String finding) {
    return study.findings().stream()
        .filter(f -> f.id().equals(finding))
        .min(WorstFirst.ORDER)
        .map(f -> new Mending(study, f));
  }

  private void goOn(int mine, Optional<Mending> mending) {
    if (mine != asked || !isNow(mends.layout())) {
      return; // nobody wants to know any more
    }
    if (mending.isEmpty()) {
      mends = mends.found(List.of(), false);
      return;
    }
    desk.queue(
        () -> {
          boolean more = true;
          for (int i = 0; i < PIECE && more; i++) {
            more = mending.get().goOn();
          }
          boolean goesOn = more;
          List<Offer> offers = mending.get().offers();
          return () -> found(mine, mending, offers, goesOn);
        });
  }

  private void found(int mine, Optional<Mending> mending, List<Offer> offers, boolean more) {
    if (mine == asked) {
      mends = mends.found(offers, more);
      if (more) {
        goOn(mine, mending);
      }
    }
  }

  /** Shows what an offer would give, or with none the machine as it is. */
  public void show(Optional<Offer> offer) {
    if (mends().isEmpty() || tried().equals(offer)) {
      return;
    }
    mends = mends.trying(offer);
    if (offer.isPresent()) {
      edits.preview(Edits.mend(offer.get()));
    } else {
      edits.clearPreview();
      desk.ask();
    }
  }

  /** Makes an offer a step; the others are gone, also when the step is taken back. */
  public void take(Offer offer) {
    if (mends().isPresent()) {
      asked++;
      mends = null;
      edits.settle(Edits.mend(offer), new Target.OfEntry(offer.rewrite().about()));
    }
  }

  /** Whether changes of the layout may mend a finding of what is shown. */
  public boolean isMendable(Finding finding) {
    return desk.shown().filter(s -> Mending.isMendable(s.study(), finding)).isPresent();
  }
}
