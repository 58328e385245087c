package org.longlow.sketcher.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.edit.Trouble;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * The view model of the window: one machine on the board, what is picked, who sits on it, and what
 * is being done to it.
 *
 * <p>Belongs to the owner's thread (the interface thread). Nothing is solved there: every question
 * goes to one worker on immutable values, the latest question wins while a pin is dragged, and
 * answers come back through the owner. Watchers are told after every change.
 */
public final class Desk extends Surface implements AutoCloseable {

  private final Keeper keeper;
  private final FileWork files;
  private final FirstWork first;
  private final Studio studio = new Studio();
  private final EditWork edits = new EditWork(this, studio);
  private final DragWork drags = new DragWork(this, studio, edits);
  private final MendWork mending = new MendWork(this, studio, edits);
  private final AdviceWork advice = new AdviceWork(this, studio);
  private final SeenBefore seenBefore = new SeenBefore();
  private final FindingRead reading = new FindingRead(seenBefore);
  private final ShowWork show;
  private final SlideWork slides = new SlideWork(this, seenBefore);
  private final List<Runnable> watchers = new ArrayList<>();
  private final Notices notices = new Notices();
  private final InTurn turn = new InTurn(this::isTrying);
  private final InTurn seen = new InTurn(this::isBehind);

  private Session session;
  private PictureOptions options = PictureOptions.PLAIN;
  private Selection selection = Selection.NONE;

  /**
   * @param owner runs what it is given on the owner's thread, in order
   * @param autosave where unsaved work is kept
   */
  public Desk(Executor owner, Autosave autosave) {
    show = new ShowWork(this, studio, owner, this::failed);
    keeper = new Keeper(owner, autosave);
    files = new FileWork(this, keeper);
    first = new FirstWork(this, files);
  }

  // --- what is there ---

  /** Tells {@code watcher} after every change, on the owner's thread. */
  public void watch(Runnable watcher) {
    watchers.add(watcher);
  }

  @Override
  public Optional<Session> session() {
    return Optional.ofNullable(session);
  }

  @Override
  boolean isAt(Session that) {
    return session == that;
  }

  @Override
  public Optional<BoardState> shown() {
    return show.shown();
  }

  @Override
  public PictureOptions options() {
    return options;
  }

  /** Returns what is picked; the last of it is what the options call chosen. */
  public Selection selection() {
    return session == null ? Selection.NONE : selection.in(session.layout());
  }

  /** Returns the id of the finding picked, or empty. */
  public String finding() {
    return reading.id();
  }

  public Optional<Trouble> trouble() {
    return edits.trouble();
  }

  /** Returns whether a machine was opened and is not seen yet for the first time. */
  public boolean isBeginning() {
    return show.isBeginning();
  }

  @Override
  public List<Notice> notices() {
    return notices.all();
  }

  public Autosave autosave() {
    return keeper.autosave();
  }

  /** Returns whether every question asked so far is answered, findings too. */
  @Override
  public boolean isIdle() {
    return show.isIdle();
  }

  // --- opening, saving ---

  /** Returns who opens, saves and keeps. */
  public FileWork files() {
    return files;
  }

  /** Returns who makes a first machine from answers. */
  public FirstWork first() {
    return first;
  }

  /** Puts another session on the board. */
  @Override
  void begin(Session next) {
    put(next);
    reading.forget();
    selection = Selection.NONE;
    edits.clearTrouble();
    drags.begin();
    options = Looks.first(next.layout(), options);
    ask();
  }

  /** Goes back to the start page; unsaved work stays in its copy. */
  public void leave() {
    put(null);
    drags.release();
    tell();
  }

  private void put(Session next) {
    files.leave();
    turn.forget();
    seen.forget();
    session = next;
    show.clear(next != null);
    slides.forget();
    seenBefore.forget();
    edits.clearPreview();
    notices.clear();
  }

  // --- changing the layout ---

  /** Tries an edit; if it is refused, {@link #trouble} says why and nothing changes. */
  public void edit(Edit edit, Target target, String text) {
    edits.edit(edit, target, text);
  }

  /** Types {@code text} over a quantity. */
  public void type(Target target, String text) {
    edits.type(target, text);
  }

  public void forgetTrouble() {
    edits.clearTrouble();
    tell();
  }

  /** Shows what an edit would give, without making it a step. */
  public void preview(Edit edit) {
    edits.preview(edit);
  }

  /** Shows again what is there, not what an edit would give. */
  public void dropPreview() {
    edits.clearPreview();
    ask();
  }

  /** Makes what was shown by {@link #preview} a step. */
  public void settle(Edit edit, Target target) {
    edits.settle(edit, target);
  }

  /** Returns the hand on a pin. */
  public DragWork drags() {
    return drags;
  }

  /** Returns the wheels moved and the machine leaned to look at it. */
  public SlideWork slides() {
    return slides;
  }

  /** Returns who looks for what mends a finding. */
  public MendWork mending() {
    return mending;
  }

  /** Returns who looks for the next layer of a cushion to change. */
  public AdviceWork advice() {
    return advice;
  }

  public void undo() {
    step(edits::undo);
  }

  public void redo() {
    step(edits::redo);
  }

  private void step(Runnable step) {
    if (!drags.isHolding()) {
      inTurn(step);
    }
  }

  /** Returns whether an edit is being tried, or a drag is not a step yet. */
  boolean isTrying() {
    return edits.isTrying() || drags.isSettling();
  }

  /** Returns whether something is being tried, or a machine at rest is not worked out yet. */
  public boolean isBehind() {
    return show.isBehind() || isTrying();
  }

  /** Does something now, or to what the edits asked for before it give. */
  @Override
  public void inTurn(Runnable next) {
    turn.once(next);
  }

  /** Does something now, or once the machine that it is meant for is worked out. */
  public void onceSeen(Runnable next) {
    seen.once(next);
  }

  /** The layout was changed: keep a copy and show it. */
  @Override
  void changed() {
    edits.clearPreview();
    notices.dropSaid();
    files.changed();
    ask();
  }

  // --- looking ---

  /** Picks a thing such as {@code part:tank}; empty for the whole machine. */
  public void choose(String subject) {
    select(Selection.of(subject));
  }

  /** Picks several things; the last of them lies on the bench. */
  public void select(Selection next) {
    selection = next;
    edits.clearTrouble();
    look(o -> o.withChosen(next.last()));
  }

  /** Picks a finding of the machine as it is, once that is worked out; empty for none, at once. */
  public void chooseFinding(String id) {
    Runnable pick = () -> look(o -> reading.pick(id, shown(), o));
    if (id.isEmpty()) {
      pick.run();
    } else {
      onceSeen(pick);
    }
  }

  /** Seats a person; the stance follows them. */
  public void seat(String person) {
    look(Looks.seated(person));
  }

  /** Shows or hides a person as a ghost. */
  public void ghost(String person, boolean shownToo) {
    look(Looks.ghost(person, shownToo));
  }

  /** Changes how the picture is asked for. */
  @Override
  public void look(UnaryOperator<PictureOptions> change) {
    options = change.apply(options);
    ask();
  }

  // --- notices ---

  /** Shows a notice; a later one of the same topic takes its place. */
  @Override
  public void say(Notice.Mood mood, String topic, String text) {
    tell(new Notice(topic, mood, text, List.of()));
  }

  /** Shows a notice with answers. */
  @Override
  public void tell(Notice notice) {
    notices.put(notice);
    tell();
  }

  /** Takes a notice away. */
  @Override
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

  /** Has what is there worked out and shown, and tells the watchers that it is asked. */
  @Override
  void ask() {
    if (session != null) {
      Layout layout = edits.preview().orElseGet(session::layout);
      boolean live = edits.preview().isPresent() || drags.isPulling();
      show.ask(
          new Request(
              layout, session.layout(), show.known(), options, reading.id(), live, drags.pull()),
          this::arrive);
    }
    tell();
  }

  private void arrive(Request.Answer answer) {
    BoardState next = answer.shown();
    options = isBeginning() ? Looks.onceSeen(next, options) : options;
    boolean other = show.put(next);
    drags.arrived(answer.dragged(), other);
    if (other && !next.live()) {
      edits.tellWhetherItHolds(next.study().placed());
    }
    slides.look();
    tell();
    drags.nudgeOn();
  }

  @Override
  void queue(Supplier<Runnable> job) {
    show.queue(
        () -> {
          Runnable after = job.get();
          return () -> {
            after.run();
            tell();
            drags.nudgeOn();
          };
        });
    tell();
  }

  /** What goes wrong is said in the window; the last good layout stays. */
  private void failed(Throwable e) {
    drags.failed();
    edits.failed();
    files.failed();
    first.failed();
    show.failed();
    say(Notice.Mood.BAD, "internal", "That could not be worked out: " + e.getMessage());
  }

  /** Tells the watchers that something has changed. */
  @Override
  void tell() {
    List.copyOf(watchers).forEach(Runnable::run); // who is told may bring in one more
    turn.goOn();
    seen.goOn();
  }

  /** Ends the worker. Unsaved work stays in its copy and is offered again. */
  @Override
  public void close() {
    show.close();
    keeper.close();
    files.release();
  }
}
