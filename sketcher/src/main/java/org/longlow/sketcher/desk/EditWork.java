package org.longlow.sketcher.desk;

import java.nio.file.Path;
import java.util.Optional;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.edit.Trial;
import org.longlow.sketcher.edit.Trouble;

/**
 * Edits tried, refused and shown beforehand, for the desk. An edit is tried on the worker and
 * becomes a step only if the layout can take it. Belongs to the desk's thread.
 */
final class EditWork {

  private static final String CONTRADICTION = "contradiction";

  private final Surface desk;
  private final Studio studio;

  private Layout preview;
  private Trouble trouble;
  private int tried;

  EditWork(Surface desk, Studio studio) {
    this.desk = desk;
    this.studio = studio;
  }

  /** Returns the layout that is shown without being a step. */
  Optional<Layout> preview() {
    return Optional.ofNullable(preview);
  }

  Optional<Trouble> trouble() {
    return Optional.ofNullable(trouble);
  }

  void clearPreview() {
    preview = null;
  }

  void clearTrouble() {
    trouble = null;
  }

  /** Returns whether an edit is being tried. */
  boolean isTrying() {
    return tried > 0;
  }

  /** A job failed: whatever was tried will not come. */
  void failed() {
    tried = 0;
  }

  void edit(Edit edit, Target target, String text) {
    if (desk.session().isEmpty()) {
      return;
    }
    tried++;
    Session mine = desk.session().get();
    Layout base = mine.layout();
    Path folder = mine.folder().orElse(null);
    desk.queue(
        () -> {
          Trial trial = Trial.of(base, studio.of(base), edit, folder);
          if (trial instanceof Trial.Accepted a) {
            studio.remember(a.layout(), a.study());
          }
          return () -> {
            tried = Math.max(0, tried - 1);
            if (!desk.isAt(mine)) {
              return;
            }
            if (mine.layout() == base) {
              tried(trial, mine, edit, target, text);
            } else {
              edit(edit, target, text);
            }
          };
        });
  }

  private void tried(Trial trial, Session mine, Edit edit, Target target, String text) {
    if (trial instanceof Trial.Accepted a) {
      trouble = null;
      mine.put(edit.name(), a.layout());
      desk.changed();
    } else {
      trouble = new Trouble(target, text, (Trial.Refused) trial);
      preview = null;
      desk.ask();
    }
  }

  /** Says so if what is shown contradicts itself. */
  void tellWhetherItHolds(Placed placed) {
    if (!placed.holds()) {
      desk.say(Notice.Mood.BAD, CONTRADICTION, Trial.refusal(placed).words());
    } else if (desk.notices().stream().anyMatch(n -> n.topic().equals(CONTRADICTION))) {
      desk.dropNotice(CONTRADICTION);
    }
  }

  void type(Target target, String text) {
    edit(Edits.set(target, text), target, text);
  }

  void preview(Edit edit) {
    desk.session()
        .ifPresent(
            session -> {
              preview = edit.applied(session.layout());
              desk.ask();
            });
  }

  void settle(Edit edit, Target target) {
    preview = null;
    edit(edit, target, "");
  }

  void undo() {
    changedIf(desk.session().map(Session::undo).orElse(false));
  }

  void redo() {
    changedIf(desk.session().map(Session::redo).orElse(false));
  }

  private void changedIf(boolean stepped) {
    if (stepped) {
      trouble = null;
      desk.changed();
    }
  }
}
