package org.longlow.sketcher.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.PinDrag;
import org.longlow.sketcher.edit.PinFreedom;
import org.longlow.sketcher.edit.Target;

/**
 * The hand on a pin, for the desk: how the pin under it can move, taking hold, moving, letting go,
 * and steps by keys. Belongs to the desk's thread.
 */
public final class DragWork {

  private static final PointMm STILL = new PointMm(0, 0);

  private final Surface desk;
  private final Studio studio;
  private final EditWork edits;

  private String hovered = "";
  private PinFreedom freedom;
  private DragNow drag;

  /** Null while no pin is held, or the machine to hold it on is not worked out yet. */
  private Studio.Dragging dragging;

  /** What it was taken hold of on. */
  private Layout base;

  private PointMm target;

  /** How far the pin was moved by what was waited for; what it is pulled to moves along. */
  private PointMm moved = STILL;

  /** Whether the hand let go before there was anything to hold. */
  private boolean ended;

  private boolean settling;

  /** Steps that could not be answered yet, by pin, as they were asked for. */
  private final Map<String, PointMm> waiting = new LinkedHashMap<>();

  DragWork(Surface desk, Studio studio, EditWork edits) {
    this.desk = desk;
    this.studio = studio;
    this.edits = edits;
  }

  /** A pin that is held and where it is to go, for the worker to solve. */
  record Pull(Studio.Dragging held, PointMm to) {

    Study study() {
      return held.moveTo(to);
    }

    /** Returns what the pull did to a layout. */
    DragNow words(Layout layout, Study study) {
      PinDrag d = held.drag();
      return new DragNow(
          d.pin(), d.begin(), PinDrag.words(layout, d.pin(), d.begin(), study), d.stops());
    }
  }

  /** Returns how the pin under the pointer can move, once that is known. */
  public Optional<PinFreedom> freedom() {
    return Optional.ofNullable(freedom);
  }

  /** Returns what is dragged, if a pin is held. */
  public Optional<DragNow> drag() {
    return Optional.ofNullable(drag);
  }

  /** Returns the pull to be answered next; empty if no pin is held or it was not moved yet. */
  Optional<Pull> pull() {
    return dragging == null || target == null
        ? Optional.empty()
        : Optional.of(new Pull(dragging, target));
  }

  /** Returns whether what is shown is a pin being pulled. */
  boolean isPulling() {
    return dragging != null;
  }

  /** Returns whether the hand is on a pin. */
  boolean isHolding() {
    return drag != null && !ended;
  }

  /** Returns whether a drag has ended that is not a step yet. */
  boolean isSettling() {
    return settling || ended;
  }

  /** Shows how a pin can move; empty for none. */
  public void hover(String pin) {
    if (pin.equals(hovered) || drag != null || desk.shown().isEmpty()) {
      return;
    }
    hovered = pin;
    freedom = null;
    desk.tell();
    if (!pin.isEmpty()) {
      askFreedom();
    }
  }

  private void askFreedom() {
    Study study = study();
    String pin = hovered;
    desk.queue(
        () -> {
          PinFreedom found = studio.freedom(study, pin);
          return () -> {
            if (pin.equals(hovered)) {
              freedom = found;
              desk.tell();
            }
          };
        });
  }

  /**
   * Takes hold of a pin of the machine as it is, once what was asked for before is shown; returns
   * false and says why if it cannot move, or not yet.
   */
  public boolean grab(String pin) {
    if (desk.shown().isEmpty() || desk.session().isEmpty() || drag != null || settling) {
      refuse();
      return false;
    }
    PointMm at = study().placed().places().pins().get(pin);
    if (at == null) {
      return false; // it is not drawn yet, or any more
    }
    drag = new DragNow(pin, at, List.of(), List.of());
    if (isAtRest()) {
      takeHold();
    } else {
      edits.clearPreview();
      desk.ask();
    }
    return drag != null;
  }

  /** Returns whether what is shown is the machine as it is, and nothing is being done to it. */
  private boolean isAtRest() {
    BoardState shown = desk.shown().orElseThrow();
    return !edits.isTrying()
        && !shown.live()
        && shown.layout() == desk.session().orElseThrow().layout();
  }

  private void takeHold() {
    String pin = drag.pin();
    Optional<Studio.Dragging> begun = Studio.begin(study(), pin);
    if (begun.isEmpty()) {
      release();
      hover(pin);
      return;
    }
    dragging = begun.get();
    base = desk.session().orElseThrow().layout();
    moved = dragging.drag().begin().minus(drag.begin());
    target = target == null ? null : target.plus(moved);
    edits.clearTrouble();
    drag = new DragNow(pin, dragging.drag().begin(), List.of(), List.of());
    if (ended) {
      letGo();
    } else if (target != null) {
      desk.ask();
    }
    desk.tell();
  }

  /** Says that a pin cannot be taken hold of yet, so that no move is dropped in silence. */
  void refuse() {
    desk.say(
        Notice.Mood.SAID,
        "not-yet",
        desk.shown().isEmpty()
            ? "The machine was still being worked out. Take hold of it once it is drawn."
            : "The last move was still being worked out. Take hold of the pin once more.");
  }

  /** Moves the pin that is held towards a place in the axes of the drawn machine. */
  public void moveTo(PointMm place) {
    if (drag != null) {
      target = place.plus(moved);
      desk.ask();
    }
  }

  /** Lets go of the pin; what it did becomes a step. */
  public void letGo() {
    if (drag == null) {
      return;
    }
    ended = dragging == null;
    if (ended) {
      return; // it goes on when there is something to hold
    }
    Optional<Pull> last = pull();
    Layout from = base;
    release();
    if (last.isEmpty()) {
      desk.tell();
      return;
    }
    Pull pull = last.get();
    Session mine = desk.session().orElseThrow();
    settling = true;
    desk.queue(
        () -> {
          pull.study();
          Edit edit = pull.held().drag().edit();
          Edit ofPin = pull.held().drag().editOfPin();
          return () -> {
            settling = false;
            if (!desk.isAt(mine)) {
              return;
            }
            if (mine.layout() == from) {
              mine.apply(edit);
              desk.changed();
            } else {
              edits.edit(ofPin, new Target.OfPin(pull.held().drag().pin(), true), "");
            }
          };
        });
  }

  /**
   * Moves a pin by a step, as one edit. Steps that come quicker than they can be answered add up.
   */
  public void nudge(String pin, PointMm step) {
    if (!desk.isIdle()) {
      waiting.merge(pin, step, PointMm::plus);
      return;
    }
    if (desk.shown().isPresent() && grab(pin)) {
      moveTo(drag.begin().plus(step));
      letGo();
    }
  }

  /** Goes on with steps that had to wait, once everything is answered. */
  void nudgeOn() {
    if (!waiting.isEmpty() && desk.isIdle()) {
      String pin = waiting.keySet().iterator().next();
      nudge(pin, waiting.remove(pin));
    }
  }

  /** Puts the pin that is held back where it was. */
  public void drop() {
    release();
    desk.ask();
  }

  /** Forgets the pin that is held, as if it had never been touched. */
  void release() {
    drag = null;
    dragging = null;
    base = null;
    target = null;
    moved = STILL;
    ended = false;
  }

  /** Forgets everything about the pins of the machine that was on the board. */
  void begin() {
    release();
    hovered = "";
    freedom = null;
    waiting.clear();
  }

  /**
   * Takes note of what has just been shown.
   *
   * @param now what the pull did, if there was one
   * @param other whether it is another study than the one before
   */
  void arrived(Optional<DragNow> now, boolean other) {
    if (dragging != null) {
      drag = now.orElse(drag);
    } else if (drag != null && isAtRest()) {
      takeHold();
    }
    if (other && !hovered.isEmpty() && drag == null) {
      askFreedom();
    }
  }

  /** A job failed: nothing is waited for any more. */
  void failed() {
    settling = false;
    if (dragging == null) {
      release();
    }
  }

  private Study study() {
    return desk.shown().orElseThrow().study();
  }
}
