package org.longlow.sketcher.edit;

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

  private final Errands errands;
  private final Keeper keeper;
  private final FileWork files;
  private final Studio studio = new Studio();
  private final List<Runnable> watchers = new ArrayList<>();
  private final Notices notices = new Notices();

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
  private PointMm target;
  private boolean settling;
  private PointMm nudges;

  /**
   * @param owner runs what it is given on the owner's thread, in order
   * @param autosave where unsaved work is kept
   */
  public Desk(Executor owner, Autosave autosave) {
    errands = new Errands(owner, this::failed);
    keeper = new Keeper(owner, autosave);
    files = new FileWork(this, keeper);
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
    return notices.all();
  }

  public Autosave autosave() {
    return keeper.autosave();
  }

  /** Returns whether every question asked so far is answered. */
  public boolean isIdle() {
    return errands.isIdle();
  }

  // --- opening, saving ---

  /** Opens a layout file; faults are shown, all of them. */
  public void open(Path path) {
    files.open(path);
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
    files.openFound(found);
  }

  /** Throws unsaved work away that never had a file; {@code after} runs when it is gone. */
  public void throwAway(Autosave.Found found, Runnable after) {
    keeper.remove(found.copy(), after);
  }

  /** Saves to the file of the session; returns false if it has none yet. */
  public boolean save() {
    return files.save();
  }

  /** Saves under a name. */
  public void saveAs(Path path) {
    files.saveAs(path);
  }

  /** Looks whether somebody else changed the file, and says so. */
  public void checkDisk() {
    files.checkDisk();
  }

  void refuse(Refusal why) {
    refusal = why;
  }

  /** Puts another session on the board. */
  void begin(Session next) {
    session = next;
    refusal = null;
    shown = null;
    preview = null;
    trouble = null;
    finding = "";
    hovered = "";
    freedom = null;
    drag = null;
    dragging = null;
    target = null;
    nudges = null;
    notices.clear();
    String first = next.layout().crew().keySet().stream().findFirst().orElse("");
    options =
        PictureOptions.PLAIN
            .withNames(true)
            .withPerson(first)
            .withDenominator(options.denominator());
    ask();
  }

  /** Goes back to the start page; unsaved work stays in its copy. */
  public void leave() {
    session = null;
    shown = null;
    refusal = null;
    drag = null;
    dragging = null;
    target = null;
    preview = null;
    notices.clear();
    tell();
  }

  // --- changing the layout ---

  /** Tries an edit; if it is refused, {@link #trouble} says why and nothing changes. */
  public void edit(Edit edit, Target target, String text) {
    if (session == null) {
      return;
    }
    Session mine = session;
    Layout base = session.layout();
    Path folder = session.folder().orElse(null);
    queue(
        () -> {
          Trial trial = Trial.of(studio.of(base), edit, folder);
          if (trial instanceof Trial.Accepted a) {
            studio.remember(a.layout(), a.study());
          }
          return () -> {
            if (session == mine) {
              tried(trial, base, edit, target, text);
            }
          };
        });
  }

  private void tried(Trial trial, Layout base, Edit edit, Target target, String text) {
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
    if (session != null && drag == null && !settling && session.undo()) {
      trouble = null;
      changed();
    }
  }

  public void redo() {
    if (session != null && drag == null && !settling && session.redo()) {
      trouble = null;
      changed();
    }
  }

  /** The layout was changed: keep a copy and show it. */
  void changed() {
    notices.dropSaid();
    keepSafe();
    ask();
  }

  void keepSafe() {
    keeper.keep(
        session,
        why ->
            say(
                Notice.Mood.CARE,
                "autosave",
                "Unsaved work cannot be kept beside the file: " + why));
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
    if (shown == null || session == null || drag != null || settling) {
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
    Session mine = session;
    settling = true;
    queue(
        () -> {
          held.moveTo(last);
          Edit edit = held.drag().edit();
          return () -> {
            settling = false;
            if (session == mine) {
              session.apply(edit);
              changed();
            }
          };
        });
  }

  /**
   * Moves a pin by a step, as one edit. Steps that come quicker than they can be answered add up.
   */
  public void nudge(String pin, PointMm step) {
    if (!isIdle()) {
      nudges = nudges == null ? step : nudges.plus(step);
      return;
    }
    if (shown != null && grab(pin)) {
      moveTo(shown.study().placed().places().pin(pin).plus(step));
      letGo();
    }
  }

  /** Goes on with steps that had to wait, once everything is answered. */
  private void nudgeOn() {
    if (nudges == null || !isIdle()) {
      return;
    }
    PointMm step = nudges;
    nudges = null;
    if (options.chosen().startsWith("pin:")) {
      nudge(options.chosen().substring("pin:".length()), step);
    }
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
    notices.put(notice);
    tell();
  }

  /** Takes a notice away. */
  public void dropNotice(String topic) {
    notices.drop(topic);
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
    Session mine = session;
    Layout layout = preview != null ? preview : session.layout();
    boolean live = preview != null || drag != null;
    PictureOptions wanted = options;
    String marked = finding;
    Studio.Dragging held = dragging;
    PointMm to = target;
    errands.ask(
        () -> {
          Study study = held != null && to != null ? held.moveTo(to) : studio.of(layout);
          Shown next = studio.draw(layout, study, wanted, marked, live);
          DragNow now = held != null && to != null ? words(held, layout, study) : null;
          return () -> {
            // what was asked about another machine is of no interest any more
            if (session == mine) {
              arrive(next, now);
            }
          };
        });
  }

  private static DragNow words(Studio.Dragging held, Layout layout, Study study) {
    PinDrag d = held.drag();
    return new DragNow(
        d.pin(), d.begin(), PinDrag.words(layout, d.pin(), d.begin(), study), d.stops());
  }

  private void arrive(Shown next, DragNow now) {
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
      notices.drop("contradiction");
    }
    tell();
    nudgeOn();
  }

  void queue(Supplier<Runnable> job) {
    errands.queue(
        () -> {
          Runnable after = job.get();
          return () -> {
            after.run();
            tell();
            nudgeOn();
          };
        });
    tell();
  }

  /** Whatever goes wrong in a job is said in the window; the last good layout stays. */
  private void failed(RuntimeException e) {
    settling = false;
    say(Notice.Mood.BAD, "internal", "That could not be worked out: " + e.getMessage());
  }

  private void tell() {
    watchers.forEach(Runnable::run);
  }

  /** Ends the worker. Unsaved work stays in its copy and is offered again. */
  @Override
  public void close() {
    errands.close();
    keeper.close();
  }
}
