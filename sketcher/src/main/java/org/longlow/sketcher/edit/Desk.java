package org.longlow.sketcher.edit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.longlow.constraints.json.Fault;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * The view model of the window: one machine on the board, what is picked, who sits on it, and what
 * is being done to it.
 *
 * <p>Belongs to the owner's thread (the interface thread). Nothing is solved there: every question
 * goes to one worker on immutable values, the latest question wins while a pin is dragged, and
 * answers come back through the owner. Watchers are told after every change.
 */
public final class Desk implements AutoCloseable {

  private final Executor owner;
  private final Autosave autosave;
  private final LatestWins worker = new LatestWins("longlow-worker");
  private final LatestWins saver = new LatestWins("longlow-autosave");
  private final Studio studio = new Studio();
  private final List<Runnable> watchers = new ArrayList<>();
  private final List<Notice> notices = new ArrayList<>();

  private Session session;
  private Shown shown;
  private PictureOptions options = PictureOptions.PLAIN;
  private String finding = "";
  private Layout preview;
  private Trouble trouble;
  private Refusal refusal;
  private String hovered = "";
  private PinFreedom freedom;
  private DragNow drag;
  private Studio.Dragging dragging;
  private long asked;
  private long arrived;
  private int queued;

  /**
   * @param owner runs what it is given on the owner's thread, in order
   * @param autosave where unsaved work is kept
   */
  public Desk(Executor owner, Autosave autosave) {
    this.owner = owner;
    this.autosave = autosave;
  }

  /** Why the last typed edit was refused. */
  public record Trouble(Target target, String text, Trial.Refused refused) {}

  /** A file that could not be opened. */
  public record Refusal(Path path, List<Fault> faults) {}

  /** A drag under way, as it was at the last answer. */
  public record DragNow(String pin, PointMm begin, List<String> words, List<String> stops) {}

  // --- what is there ---

  /** Tells {@code watcher} after every change, on the owner's thread. */
  public void watch(Runnable watcher) {
    watchers.add(watcher);
  }

  public Optional<Session> session() {
    return Optional.ofNullable(session);
  }

  public Optional<Shown> shown() {
    return Optional.ofNullable(shown);
  }

  public PictureOptions options() {
    return options;
  }

  /** Returns the id of the finding picked, or empty. */
  public String finding() {
    return finding;
  }

  public Optional<Trouble> trouble() {
    return Optional.ofNullable(trouble);
  }

  public Optional<Refusal> refusal() {
    return Optional.ofNullable(refusal);
  }

  /** Returns how the pin under the pointer can move, once that is known. */
  public Optional<PinFreedom> freedom() {
    return Optional.ofNullable(freedom);
  }

  public Optional<DragNow> drag() {
    return Optional.ofNullable(drag);
  }

  public List<Notice> notices() {
    return List.copyOf(notices);
  }

  public Autosave autosave() {
    return autosave;
  }

  /** Returns whether every question asked so far is answered. */
  public boolean isIdle() {
    return arrived == asked && queued == 0;
  }

  // --- opening, saving ---

  /** Opens a layout file; faults are shown, all of them. */
  public void open(Path path) {
    queue(
        () -> {
          LayoutFile.Opening opening = LayoutFile.open(path);
          Optional<Autosave.Found> found =
              opening instanceof LayoutFile.Opening.Opened o
                  ? autosave.beside(path, o.layout())
                  : Optional.empty();
          return () -> opened(opening, found);
        });
  }

  private void opened(LayoutFile.Opening opening, Optional<Autosave.Found> found) {
    if (opening instanceof LayoutFile.Opening.Opened o) {
      begin(Session.of(o.layout(), o.file()));
      if (!o.notes().isEmpty()) {
        say(Notice.Mood.SAID, "notes", String.join("\n", o.notes()));
      }
      found.ifPresent(this::offer);
    } else {
      LayoutFile.Opening.Refused r = (LayoutFile.Opening.Refused) opening;
      refusal = new Refusal(r.path(), r.faults());
    }
  }

  /**
   * Puts a layout that has no file on the board.
   *
   * @param drawings the folder with the traced outlines that it names, if it names any
   */
  public void openCopy(Layout layout, Optional<Path> drawings) {
    begin(
        drawings
            .map(d -> Session.withoutFile(layout, d))
            .orElseGet(() -> Session.withoutFile(layout)));
  }

  /** Puts unsaved work that never had a file back on the board. */
  public void openFound(Autosave.Found found) {
    begin(Session.withoutFile(found.layout(), found.copy().toAbsolutePath().getParent()));
    session.keepMine();
    say(Notice.Mood.SAID, "found", "Unsaved work is back. Save it under a name to keep it.");
  }

  private void begin(Session next) {
    session = next;
    refusal = null;
    shown = null;
    preview = null;
    trouble = null;
    finding = "";
    hovered = "";
    freedom = null;
    notices.clear();
    String first = next.layout().crew().keySet().stream().findFirst().orElse("");
    options =
        PictureOptions.PLAIN
            .withNames(true)
            .withPerson(first)
            .withDenominator(options.denominator());
    ask();
  }

  private void offer(Autosave.Found found) {
    notices.add(
        new Notice(
            "found",
            Notice.Mood.CARE,
            "Work that was not saved was found beside this file.",
            List.of(
                new Notice.Answer(
                    "Take it up again",
                    () -> {
                      session.apply(Edit.to("take up unsaved work", found.layout()));
                      changed();
                    }),
                new Notice.Answer("Throw it away", () -> keepSafe()))));
  }

  /** Goes back to the start page; unsaved work stays in its copy. */
  public void leave() {
    session = null;
    shown = null;
    refusal = null;
    notices.clear();
    tell();
  }

  /** Saves to the file of the session; returns false if it has none yet. */
  public boolean save() {
    if (session == null || session.file().isEmpty()) {
      return false;
    }
    if (session.changedOnDisk()) {
      checkDisk();
      return true;
    }
    saveAs(session.file().get().path());
    return true;
  }

  /** Saves under a name. */
  public void saveAs(Path path) {
    Path oldCopy = autosave.copyOf(session);
    try {
      session.saveAs(path);
      dropNotice("disk");
      say(Notice.Mood.SAID, "saved", "Saved as " + path.getFileName() + ".");
      saver.queue(() -> removeCopy(oldCopy));
      keepSafe();
    } catch (IOException e) {
      say(Notice.Mood.BAD, "saved", "Not saved: " + e.getMessage() + ". Choose another place.");
    }
  }

  /** Looks whether somebody else changed the file, and says so. */
  public void checkDisk() {
    if (session == null
        || session.file().isEmpty()
        || notices.stream().anyMatch(n -> n.topic().equals("disk"))) {
      return;
    }
    LayoutFile file = session.file().get();
    saver.queue(
        () -> {
          if (file.changedOnDisk()) {
            boolean there = file.exists();
            post(() -> sayChanged(file, there));
          }
        });
  }

  private void sayChanged(LayoutFile file, boolean there) {
    if (session == null || session.file().filter(f -> f == file).isEmpty()) {
      return;
    }
    List<Notice.Answer> answers = new ArrayList<>();
    if (there) {
      answers.add(new Notice.Answer("Take the file", this::takeTheirs));
    }
    answers.add(
        new Notice.Answer(
            "Keep mine",
            () -> {
              session.keepMine();
              changed();
            }));
    String what = there ? "was changed by somebody else" : "is no longer there";
    notices.add(new Notice("disk", Notice.Mood.CARE, "The file on disk " + what + ".", answers));
    tell();
  }

  private void takeTheirs() {
    if (session.takeTheirs() instanceof LayoutFile.Opening.Refused r) {
      say(
          Notice.Mood.BAD,
          "disk",
          "The file on disk has faults, so yours stays:\n"
              + String.join("\n", r.faults().stream().map(Fault::line).toList()));
    }
    changed();
  }

  // --- changing the layout ---

  /** Tries an edit; if it is refused, {@link #trouble} says why and nothing changes. */
  public void edit(Edit edit, Target target, String text) {
    if (session == null) {
      return;
    }
    Layout base = session.layout();
    Path folder = session.folder().orElse(null);
    queue(
        () -> {
          Trial trial = Trial.of(studio.of(base), edit, folder);
          if (trial instanceof Trial.Accepted a) {
            studio.remember(a.layout(), a.study());
          }
          return () -> tried(trial, base, edit, target, text);
        });
  }

  private void tried(Trial trial, Layout base, Edit edit, Target target, String text) {
    if (session == null) {
      return;
    }
    if (session.layout() != base) {
      edit(edit, target, text);
    } else if (trial instanceof Trial.Accepted a) {
      trouble = null;
      session.apply(Edit.to(edit.name(), a.layout()));
      changed();
    } else {
      trouble = new Trouble(target, text, (Trial.Refused) trial);
      preview = null;
      ask();
    }
  }

  /** Types {@code text} over a quantity. */
  public void type(Target target, String text) {
    Edit edit;
    try {
      edit = Edits.set(target, text);
    } catch (IllegalArgumentException e) {
      trouble = new Trouble(target, text, new Trial.Refused("It " + e.getMessage(), List.of()));
      tell();
      return;
    }
    edit(edit, target, text);
  }

  /** Forgets the last refusal. */
  public void forgetTrouble() {
    trouble = null;
    tell();
  }

  /** Shows what an edit would give, without making it a step. */
  public void preview(Edit edit) {
    if (session != null) {
      preview = edit.applied(session.layout());
      ask();
    }
  }

  /** Makes what was shown by {@link #preview} a step. */
  public void settle(Edit edit, Target target) {
    preview = null;
    edit(edit, target, "");
  }

  public void undo() {
    if (session != null && drag == null && session.undo()) {
      trouble = null;
      changed();
    }
  }

  public void redo() {
    if (session != null && drag == null && session.redo()) {
      trouble = null;
      changed();
    }
  }

  private void changed() {
    notices.removeIf(n -> n.mood() == Notice.Mood.SAID);
    keepSafe();
    ask();
  }

  private void keepSafe() {
    Layout now = session.layout();
    boolean unsaved = session.isChanged();
    Path copy = autosave.copyOf(session);
    Optional<Path> drawings = session.folder();
    saver.ask(
        () -> {
          try {
            if (unsaved) {
              Autosave.write(now, copy, drawings);
            } else {
              Autosave.remove(copy);
            }
          } catch (IOException e) {
            post(
                () ->
                    say(
                        Notice.Mood.CARE,
                        "autosave",
                        "Unsaved work cannot be kept beside the file: " + e.getMessage()));
          }
        });
  }

  private static void removeCopy(Path copy) {
    try {
      Autosave.remove(copy);
    } catch (IOException e) {
      // it is offered once more at the next opening, and can be thrown away there
    }
  }

  // --- dragging ---

  /** Shows how a pin can move; empty for none. */
  public void hover(String pin) {
    if (pin.equals(hovered) || drag != null || shown == null) {
      return;
    }
    hovered = pin;
    freedom = null;
    tell();
    if (!pin.isEmpty()) {
      askFreedom();
    }
  }

  private void askFreedom() {
    Study study = shown.study();
    String pin = hovered;
    queue(
        () -> {
          PinFreedom found = studio.freedom(study, pin);
          return () -> {
            if (pin.equals(hovered)) {
              freedom = found;
              tell();
            }
          };
        });
  }

  /** Takes hold of a pin; returns false and says why if it cannot move. */
  public boolean grab(String pin) {
    if (shown == null || session == null || drag != null) {
      return false;
    }
    Optional<Studio.Dragging> begun = Studio.begin(shown.study(), pin);
    if (begun.isEmpty()) {
      hover(pin);
      return false;
    }
    dragging = begun.get();
    trouble = null;
    drag = new DragNow(pin, dragging.drag().begin(), List.of(), List.of());
    tell();
    return true;
  }

  private PointMm target;

  /** Moves the pin that is held towards a place in the axes of the drawn machine. */
  public void moveTo(PointMm place) {
    if (drag != null) {
      target = place;
      ask();
    }
  }

  /** Lets go of the pin; what it did becomes a step. */
  public void letGo() {
    if (drag == null) {
      return;
    }
    Studio.Dragging held = dragging;
    PointMm last = target;
    drag = null;
    dragging = null;
    target = null;
    if (last == null) {
      tell();
      return;
    }
    queue(
        () -> {
          held.moveTo(last);
          Edit edit = held.drag().edit();
          return () -> {
            if (session != null) {
              session.apply(edit);
              changed();
            }
          };
        });
  }

  /** Puts the pin that is held back where it was. */
  public void dropDrag() {
    drag = null;
    dragging = null;
    target = null;
    ask();
  }

  // --- looking ---

  /** Picks a thing such as {@code part:tank}; empty for the whole machine. */
  public void choose(String subject) {
    trouble = null;
    look(o -> o.withChosen(subject));
  }

  /** Picks a finding; empty for none. It is shown in the stance in which it is worst. */
  public void chooseFinding(String id) {
    finding = id;
    if (shown != null) {
      options = shown.optionsFor(id, options);
    }
    ask();
  }

  /** Seats a person; the stance follows them. */
  public void seat(String person) {
    look(
        o -> {
          boolean laden = o.stance().startsWith("laden");
          return o.withPerson(person).withStance(laden ? "" : o.stance());
        });
  }

  /** Shows or hides a person as a ghost. */
  public void ghost(String person, boolean shownToo) {
    look(
        o -> {
          Set<String> ghosts = new LinkedHashSet<>(o.ghosts());
          if (shownToo) {
            ghosts.add(person);
          } else {
            ghosts.remove(person);
          }
          return o.withGhosts(ghosts);
        });
  }

  /** Changes how the picture is asked for. */
  public void look(UnaryOperator<PictureOptions> change) {
    options = change.apply(options);
    ask();
  }

  // --- notices ---

  /** Shows a notice; a later one of the same topic takes its place. */
  public void say(Notice.Mood mood, String topic, String text) {
    tell(new Notice(topic, mood, text, List.of()));
  }

  /** Shows a notice with answers. */
  public void tell(Notice notice) {
    notices.removeIf(n -> n.topic().equals(notice.topic()));
    notices.add(notice);
    tell();
  }

  /** Takes a notice away. */
  public void dropNotice(String topic) {
    notices.removeIf(n -> n.topic().equals(topic));
    tell();
  }

  /** Gives one of the answers of a notice. */
  public void answer(Notice notice, Notice.Answer answer) {
    dropNotice(notice.topic());
    answer.action().run();
    tell();
  }

  // --- the worker ---

  private void ask() {
    tell();
    if (session == null) {
      return;
    }
    long number = ++asked;
    Layout layout = preview != null ? preview : session.layout();
    boolean live = preview != null || drag != null;
    PictureOptions wanted = options;
    String marked = finding;
    Studio.Dragging held = dragging;
    PointMm to = target;
    worker.ask(
        guarded(
            () -> {
              Study study = held != null && to != null ? held.moveTo(to) : studio.of(layout);
              Shown next = studio.draw(layout, study, wanted, marked, live);
              DragNow now = held != null && to != null ? words(held, layout, study) : null;
              return () -> arrive(number, next, now);
            },
            number));
  }

  private static DragNow words(Studio.Dragging held, Layout layout, Study study) {
    PinDrag d = held.drag();
    return new DragNow(
        d.pin(), d.begin(), PinDrag.words(layout, d.pin(), d.begin(), study), d.stops());
  }

  private void arrive(long number, Shown next, DragNow now) {
    arrived = Math.max(arrived, number);
    boolean other = shown == null || shown.study() != next.study();
    shown = next;
    if (drag != null && now != null) {
      drag = now;
    }
    if (other && !hovered.isEmpty() && drag == null) {
      askFreedom();
    }
    if (other && !next.live() && !next.study().placed().holds()) {
      Trial.Refused why = Trial.refusal(next.study().placed());
      say(Notice.Mood.BAD, "contradiction", why.words());
    } else if (other && !next.live()) {
      notices.removeIf(n -> n.topic().equals("contradiction"));
    }
    tell();
  }

  private void queue(Supplier<Runnable> job) {
    queued++;
    tell();
    worker.queue(
        guarded(
            () -> {
              Runnable after = job.get();
              return () -> {
                queued--;
                after.run();
                tell();
              };
            },
            -1));
  }

  /** Whatever goes wrong in a job is said in the window; the last good layout stays. */
  private Runnable guarded(Supplier<Runnable> job, long number) {
    return () -> {
      Runnable after;
      try {
        after = job.get();
      } catch (RuntimeException e) {
        after =
            () -> {
              if (number < 0) {
                queued--;
              }
              arrived = Math.max(arrived, number);
              say(Notice.Mood.BAD, "internal", "That could not be worked out: " + e.getMessage());
            };
      }
      post(after);
    };
  }

  private void post(Runnable job) {
    owner.execute(job);
  }

  private void tell() {
    watchers.forEach(Runnable::run);
  }

  /** Ends the worker. Unsaved work stays in its copy and is offered again. */
  @Override
  public void close() {
    worker.close();
    saver.close();
  }
}
