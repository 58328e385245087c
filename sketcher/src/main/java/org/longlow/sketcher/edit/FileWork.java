package org.longlow.sketcher.edit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.disk.Beside;
import org.longlow.constraints.disk.Leftovers;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.layout.Layout;

/**
 * Opening, saving, keeping what is unsaved, and what others do to the file, for the desk. Belongs
 * to the desk's thread.
 */
final class FileWork {

  private static final String DISK = "disk";
  private static final String SAVED = "saved";
  private static final String AUTOSAVE = "autosave";

  private final Desk desk;
  private final Keeper keeper;

  private Desk.Refusal refusal;
  private FileClaim claim = FileClaim.NONE;

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
          Path folder = path.toAbsolutePath().getParent();
          if (folder != null) {
            Leftovers.clear(folder);
          }
          LayoutFile.Opening opening = LayoutFile.open(path);
          Left left =
              opening instanceof LayoutFile.Opening.Opened o
                  ? new Left(
                      keeper.autosave().beside(path, o.layout()),
                      keeper.autosave().brokenBeside(path).stream().map(FileWork::aside).toList())
                  : new Left(Optional.empty(), List.of());
          return () -> opened(opening, left);
        });
  }

  /** What earlier sessions left of their work on a file. */
  private record Left(Optional<Autosave.Found> sound, List<String> broken) {}

  /** Puts a copy that cannot be read where nothing writes over it, and says so. */
  private static String aside(Autosave.Broken broken) {
    Path kept = broken.copy();
    try {
      kept = Autosave.setAside(kept);
    } catch (IOException e) {
      // where nothing can be moved nothing can be written over either
    }
    return "Unsaved work of this file was found and cannot be read: "
        + broken.trouble()
        + ". It is kept as "
        + kept
        + ".";
  }

  private void opened(LayoutFile.Opening opening, Left left) {
    if (opening instanceof LayoutFile.Opening.Opened o) {
      desk.begin(Session.of(o.layout(), o.file()));
      if (!o.notes().isEmpty()) {
        desk.say(Notice.Mood.SAID, "notes", String.join("\n", o.notes()));
      }
      left.sound().ifPresent(this::offer);
      if (!left.broken().isEmpty()) {
        desk.say(Notice.Mood.CARE, "broken", String.join("\n", left.broken()));
      }
      claim(o.file().path());
    } else {
      LayoutFile.Opening.Refused r = (LayoutFile.Opening.Refused) opening;
      refusal = new Desk.Refusal(r.path(), r.faults());
    }
  }

  /** Marks a file as open here, and says if another window has it. */
  private void claim(Path path) {
    release();
    claim = FileClaim.of(keeper.autosave().claims(), path);
    if (!claim.isAlone()) {
      desk.say(
          Notice.Mood.CARE,
          "window",
          "Another window has "
              + path.getFileName()
              + " open. Save under another name in one of the two, so that neither undoes the"
              + " other's work.");
    }
  }

  /** Lets go of the file that was open. */
  void release() {
    claim.close();
    claim = FileClaim.NONE;
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
                      keeper.adopt(found.copy());
                      session().apply(Edit.to("take up unsaved work", found.layout()));
                      desk.changed();
                    }),
                new Notice.Answer("Throw it away", () -> keeper.remove(found.copy(), () -> {})))));
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

  /** Saves under a name; one that another file has is asked about first. */
  void saveAs(Path path) {
    if (Files.exists(path) && !isOwn(path)) {
      askAbout(path);
    } else {
      write(path, "");
    }
  }

  private boolean isOwn(Path path) {
    try {
      return session().file().isPresent()
          && Files.exists(session().file().get().path())
          && Files.isSameFile(session().file().get().path(), path);
    } catch (IOException e) {
      return false;
    }
  }

  private void askAbout(Path path) {
    Path free = Beside.free(path);
    desk.tell(
        new Notice(
            SAVED,
            Notice.Mood.CARE,
            "Not saved yet: there is another file called " + path.getFileName() + " already.",
            List.of(
                new Notice.Answer("Save as " + free.getFileName(), () -> saveAs(free)),
                new Notice.Answer("Replace it and keep the old one", () -> replace(path)))));
  }

  private void replace(Path path) {
    try {
      Path kept = Beside.keep(path, "replaced");
      write(path, " The file that was there is kept as " + kept.getFileName() + ".");
    } catch (IOException e) {
      desk.say(
          Notice.Mood.BAD,
          SAVED,
          "Not saved, because the file that is there cannot be kept: "
              + Refusals.words(e)
              + ". Choose another name.");
    }
  }

  private void write(Path path, String more) {
    Autosave autosave = keeper.autosave();
    List<Path> copies = new ArrayList<>(List.of(autosave.copyOf(session())));
    session().file().map(f -> autosave.awayFrom(f.path())).ifPresent(copies::add);
    boolean moves = session().file().isEmpty() || !isOwn(path);
    try {
      session().saveAs(path);
      desk.dropNotice(DISK);
      desk.say(Notice.Mood.SAID, SAVED, "Saved as " + path.getFileName() + "." + more);
      keeper.removeMine(copies);
      keepSafe();
      if (moves) {
        claim(path);
      }
    } catch (IOException e) {
      desk.say(
          Notice.Mood.BAD, SAVED, "Not saved: " + Refusals.words(e) + ". Choose another place.");
    }
  }

  /** Keeps what is unsaved in a copy, and says so if that cannot be done beside the file. */
  void keepSafe() {
    keeper.keep(session(), this::sayKept);
  }

  private void sayKept(Keeper.Kept kept) {
    if (kept.trouble().isEmpty()) {
      desk.dropNotice(AUTOSAVE);
    } else {
      desk.say(
          Notice.Mood.CARE,
          AUTOSAVE,
          kept.copy()
              .map(
                  c ->
                      "Unsaved work cannot be kept beside the file ("
                          + kept.trouble()
                          + "), so it is kept as "
                          + c
                          + ".")
              .orElse(
                  "Unsaved work cannot be kept: " + kept.trouble() + ". Save it somewhere else."));
    }
  }

  /**
   * Returns what to say before the work on the board is left; empty if nothing is unsaved. What it
   * promises was done before it is said.
   *
   * @param doing what is about to happen, such as {@code close}
   */
  Optional<Desk.Parting> parting(String doing) {
    if (desk.session().isEmpty() || !session().isChanged()) {
      return Optional.empty();
    }
    Keeper.Kept kept = keeper.keepNow(session());
    return Optional.of(
        new Desk.Parting(
            kept.copy().isPresent(),
            kept.copy()
                .map(
                    c ->
                        "There is unsaved work. If you "
                            + doing
                            + ", it is kept as "
                            + c
                            + " and offered the next time.")
                .orElse(
                    "There is unsaved work and it cannot be kept: "
                        + kept.trouble()
                        + ". If you "
                        + doing
                        + " now it is lost; save it somewhere else first.")));
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
