package org.longlow.sketcher.desk;

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
import org.longlow.rider.words.Units;

/**
 * Opening, saving, keeping what is unsaved, and what others do to the file, for the desk. Belongs
 * to the desk's thread.
 */
public final class FileWork {

  private static final String DISK = "disk";
  private static final String SAVED = "saved";
  private static final String AUTOSAVE = "autosave";
  private static final String TOOK_BACK = "took-back";

  private static final String NOT_SAVED = "Not saved yet. ";
  private static final String CHANGED =
      "was changed by somebody else. If you carry on with this one, saving keeps the other beside"
          + " it.";
  private static final String GONE = "is no longer there.";

  private final Surface desk;
  private final Keeper keeper;
  private final FoundWork found;

  private Path reading;
  private UnopenedFile refusal;
  private FileClaim claim = FileClaim.NONE;

  FileWork(Surface desk, Keeper keeper) {
    this.desk = desk;
    this.keeper = keeper;
    this.found = new FoundWork(desk, keeper);
  }

  /** Returns the file that could not be opened, if that was the last thing tried. */
  public Optional<UnopenedFile> refusal() {
    return Optional.ofNullable(refusal);
  }

  /** A job failed: nothing is being opened any more. */
  void failed() {
    reading = null;
  }

  /** Forgets the file that was on the board; what is kept of it stays on the disk. */
  void leave() {
    keeper.letGo();
    release();
    refusal = null;
    found.clear();
  }

  /** Returns where unsaved work is kept that was found and not answered yet. */
  public List<Path> found() {
    return found.copies();
  }

  /** Returns the file that is being read, if one is. */
  public Optional<Path> opening() {
    return Optional.ofNullable(reading);
  }

  /** Opens a layout file; faults are shown, all of them. */
  public void open(Path path) {
    reading = path;
    desk.queue(
        () -> {
          Path folder = path.toAbsolutePath().getParent();
          if (folder != null) {
            Leftovers.clear(folder);
          }
          LayoutFile.Opening opening = LayoutFile.open(path);
          return () -> opened(opening);
        });
  }

  private void opened(LayoutFile.Opening opening) {
    reading = null;
    if (opening instanceof LayoutFile.Opening.Opened o) {
      desk.begin(Session.of(o.layout(), o.file()));
      if (!o.notes().isEmpty()) {
        desk.say(Notice.Mood.SAID, "notes", String.join("\n", o.notes()));
      }
      claim(o.file().path());
      found.look(o.file().path(), o.layout());
    } else {
      LayoutFile.Opening.Refused r = (LayoutFile.Opening.Refused) opening;
      refusal = new UnopenedFile(r.path(), r.faults());
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

  /**
   * Puts a layout that has no file on the board.
   *
   * @param drawings the folder with the traced outlines that it names, if it names any
   */
  public void openCopy(Layout layout, Optional<Path> drawings) {
    desk.begin(
        drawings
            .map(d -> Session.withoutFile(layout, d))
            .orElseGet(() -> Session.withoutFile(layout)));
  }

  /**
   * Puts a machine on the board that was just made and has no file: unsaved work from the start.
   */
  void openMade(Layout layout) {
    desk.begin(Session.withoutFile(layout));
    session().carryOn();
    keepSafe();
  }

  /** Puts unsaved work that never had a file back on the board. */
  public void openFound(Autosave.Found work) {
    desk.begin(
        TracedFiles.of(work.layout()).isEmpty()
            ? Session.withoutFile(work.layout())
            : Session.withoutFile(work.layout(), work.copy().toAbsolutePath().getParent()));
    session().carryOn();
    keepSafe();
    // from now on the work is kept in the copy of this session
    found.removeOnceKept(work);
    desk.say(Notice.Mood.SAID, "found", "Unsaved work is back. Save it under a name to keep it.");
  }

  /** Returns the units shown last, in which a new machine begins. */
  Units unitsShownLast() {
    return Habits.at(keeper.autosave().home()).inches() ? Units.IN : Units.MM;
  }

  /** Throws unsaved work away that never had a file; {@code after} runs when it is gone. */
  public void throwAway(Autosave.Found work, Runnable after) {
    keeper.remove(work.copy(), after);
  }

  /** Saves to the file of the session; returns false if it has none yet. */
  public boolean save() {
    if (desk.session().isEmpty() || session().file().isEmpty()) {
      return false;
    }
    saveAs(session().file().get().path());
    return true;
  }

  /**
   * Saves under a name, which gets the ending of layout files where it has none; one that another
   * file has is asked about first.
   */
  public void saveAs(Path asked) {
    desk.inTurn(() -> saveNow(asked));
  }

  private void saveNow(Path asked) {
    Path path = isOwn(asked) || Files.isDirectory(asked) ? asked : LayoutFile.named(asked);
    if (isOwn(path)) {
      saveOwn(path);
    } else if (Files.isDirectory(path)) {
      desk.say(
          Notice.Mood.BAD, SAVED, "Not saved: " + path + " is a folder. Add the name of a file.");
    } else if (Files.exists(path)) {
      askAbout(path);
    } else {
      write(path, "");
    }
  }

  /** Saves to the file of the session; an edit of somebody else in it is never simply replaced. */
  private void saveOwn(Path path) {
    if (session().changedOnDisk()) {
      sayChanged(session().file().get().exists(), NOT_SAVED);
    } else if (session().tookBack()) {
      sayTookBack(NOT_SAVED);
    } else if (session().isApart()) {
      replace(path);
    } else {
      write(path, "");
    }
  }

  private boolean isOwn(Path path) {
    if (session().file().isEmpty()) {
      return false;
    }
    Path own = session().file().get().path();
    try {
      return own.equals(path.toAbsolutePath().normalize())
          || Files.exists(own) && Files.exists(path) && Files.isSameFile(own, path);
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
      if (!write(path, " The file that was there is kept as " + kept.getFileName() + ".")) {
        Files.deleteIfExists(kept);
      }
    } catch (IOException e) {
      desk.say(
          Notice.Mood.BAD,
          SAVED,
          "Not saved, because the file that is there cannot be kept: "
              + Refusals.words(e)
              + ". Choose another name.");
    }
  }

  /** Returns whether it was written. */
  private boolean write(Path path, String more) {
    Autosave autosave = keeper.autosave();
    List<Path> copies = new ArrayList<>(List.of(autosave.copyOf(session())));
    autosave.awayFrom(session()).ifPresent(copies::add);
    boolean moves = session().file().isEmpty() || !isOwn(path);
    try {
      session().saveAs(path);
      desk.dropNotice(DISK);
      desk.dropNotice(TOOK_BACK);
      desk.say(Notice.Mood.SAID, SAVED, "Saved as " + session().file().get().path() + "." + more);
      keeper.removeMine(copies);
      keepSafe();
      if (moves) {
        claim(path);
      }
      return true;
    } catch (IOException e) {
      desk.say(
          Notice.Mood.BAD, SAVED, "Not saved: " + Refusals.words(e) + ". Choose another place.");
      return false;
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
  public Optional<Parting> parting(String doing) {
    boolean unsaved = desk.session().isPresent() && session().isChanged();
    if (!unsaved && found.copies().isEmpty()) {
      return Optional.empty();
    }
    List<String> words = new ArrayList<>();
    boolean safe = true;
    if (unsaved) {
      Keeper.Kept kept = keeper.keepNow(session());
      safe = kept.copy().isPresent();
      words.add(Parting.unsaved(doing, kept));
    }
    if (!found.copies().isEmpty()) {
      words.add(
          "Unsaved work that was found beside this file is not answered yet; it stays as "
              + found.places()
              + " and is offered the next time.");
    }
    return Optional.of(new Parting(unsaved, safe, String.join(" ", words)));
  }

  /** Looks whether somebody else changed the file, and says so. */
  public void checkDisk() {
    boolean said = desk.notices().stream().anyMatch(n -> n.topic().equals(DISK));
    if (desk.session().isPresent() && session().file().isPresent() && !said) {
      LayoutFile file = session().file().get();
      keeper.look(
          file,
          there -> {
            if (desk.session().flatMap(Session::file).filter(f -> f == file).isPresent()) {
              sayChanged(there, "");
            }
          });
    }
  }

  /** Says that the file was changed, more loudly where something was refused because of it. */
  private void sayChanged(boolean there, String refused) {
    ask(DISK, refused + "The file on disk " + (there ? CHANGED : GONE), refused, there);
  }

  private void sayTookBack(String refused) {
    ask(
        TOOK_BACK,
        refused + "The file on disk holds the edit of somebody else that you took back.",
        refused,
        true);
  }

  private void ask(String topic, String text, String refused, boolean there) {
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
    Notice.Mood mood = refused.isEmpty() ? Notice.Mood.CARE : Notice.Mood.BAD;
    desk.tell(new Notice(topic, mood, text, answers));
  }

  /** The layout was changed: keeps a copy, and says what the file holds that it lacks now. */
  void changed() {
    keepSafe();
    boolean said = desk.notices().stream().anyMatch(n -> n.topic().equals(TOOK_BACK));
    if (!session().tookBack()) {
      desk.dropNotice(TOOK_BACK);
    } else if (!said) {
      sayTookBack("");
    }
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
