package org.longlow.sketcher.edit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.json.Fault;
import org.longlow.constraints.layout.Layout;

/**
 * Opening, saving, keeping what is unsaved, and what others do to the file, for the desk. Belongs
 * to the desk's thread.
 */
final class FileWork {

  private static final String DISK = "disk";

  private final Desk desk;
  private final Keeper keeper;

  private Desk.Refusal refusal;

  FileWork(Desk desk, Keeper keeper) {
    this.desk = desk;
    this.keeper = keeper;
  }

  /** Returns the file that could not be opened, if that was the last thing tried. */
  Optional<Desk.Refusal> refusal() {
    return Optional.ofNullable(refusal);
  }

  void clearRefusal() {
    refusal = null;
  }

  void open(Path path) {
    desk.queue(
        () -> {
          LayoutFile.Opening opening = LayoutFile.open(path);
          Optional<Autosave.Found> found =
              opening instanceof LayoutFile.Opening.Opened o
                  ? keeper.autosave().beside(path, o.layout())
                  : Optional.empty();
          return () -> opened(opening, found);
        });
  }

  private void opened(LayoutFile.Opening opening, Optional<Autosave.Found> found) {
    if (opening instanceof LayoutFile.Opening.Opened o) {
      desk.begin(Session.of(o.layout(), o.file()));
      if (!o.notes().isEmpty()) {
        desk.say(Notice.Mood.SAID, "notes", String.join("\n", o.notes()));
      }
      found.ifPresent(this::offer);
    } else {
      LayoutFile.Opening.Refused r = (LayoutFile.Opening.Refused) opening;
      refusal = new Desk.Refusal(r.path(), r.faults());
    }
  }

  private void offer(Autosave.Found found) {
    desk.tell(
        new Notice(
            "found",
            Notice.Mood.CARE,
            "Work that was not saved was found beside this file.",
            List.of(
                new Notice.Answer(
                    "Take it up again",
                    () -> {
                      session().apply(Edit.to("take up unsaved work", found.layout()));
                      desk.changed();
                    }),
                new Notice.Answer("Throw it away", this::keepSafe))));
  }

  void openCopy(Layout layout, Optional<Path> drawings) {
    desk.begin(
        drawings
            .map(d -> Session.withoutFile(layout, d))
            .orElseGet(() -> Session.withoutFile(layout)));
  }

  void openFound(Autosave.Found found) {
    desk.begin(Session.withoutFile(found.layout(), found.copy().toAbsolutePath().getParent()));
    session().carryOn();
    keepSafe();
    // from now on the work is kept in the copy of this session
    keeper.remove(found.copy(), () -> {});
    desk.say(Notice.Mood.SAID, "found", "Unsaved work is back. Save it under a name to keep it.");
  }

  boolean save() {
    if (desk.session().isEmpty() || session().file().isEmpty()) {
      return false;
    }
    if (session().changedOnDisk()) {
      checkDisk();
    } else {
      saveAs(session().file().get().path());
    }
    return true;
  }

  void saveAs(Path path) {
    Path oldCopy = keeper.autosave().copyOf(session());
    try {
      session().saveAs(path);
      desk.dropNotice(DISK);
      desk.say(Notice.Mood.SAID, "saved", "Saved as " + path.getFileName() + ".");
      keeper.remove(oldCopy, () -> {});
      keepSafe();
    } catch (IOException e) {
      desk.say(
          Notice.Mood.BAD, "saved", "Not saved: " + e.getMessage() + ". Choose another place.");
    }
  }

  /** Keeps what is unsaved in a copy, and says so if that cannot be done. */
  void keepSafe() {
    keeper.keep(
        session(),
        why ->
            desk.say(
                Notice.Mood.CARE,
                "autosave",
                "Unsaved work cannot be kept beside the file: " + why));
  }

  void checkDisk() {
    boolean said = desk.notices().stream().anyMatch(n -> n.topic().equals(DISK));
    if (desk.session().isPresent() && session().file().isPresent() && !said) {
      LayoutFile file = session().file().get();
      keeper.look(file, there -> sayChanged(file, there));
    }
  }

  private void sayChanged(LayoutFile file, boolean there) {
    if (desk.session().flatMap(Session::file).filter(f -> f == file).isEmpty()) {
      return;
    }
    List<Notice.Answer> answers = new ArrayList<>();
    if (there) {
      answers.add(new Notice.Answer("Bring in the other file", this::bringIn));
    }
    answers.add(
        new Notice.Answer(
            "Carry on with this one",
            () -> {
              session().carryOn();
              desk.changed();
            }));
    String what = there ? "was changed by somebody else" : "is no longer there";
    desk.tell(new Notice(DISK, Notice.Mood.CARE, "The file on disk " + what + ".", answers));
  }

  private void bringIn() {
    if (session().bringIn() instanceof LayoutFile.Opening.Refused r) {
      desk.say(
          Notice.Mood.BAD,
          DISK,
          "The other file has faults, so this one stays:\n"
              + String.join("\n", r.faults().stream().map(Fault::line).toList()));
    }
    desk.changed();
  }

  private Session session() {
    return desk.session().orElseThrow();
  }
}
