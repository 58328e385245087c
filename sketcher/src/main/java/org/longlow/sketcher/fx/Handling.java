package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.desk.Selection;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Mirror;
import org.longlow.sketcher.edit.Several;
import org.longlow.sketcher.edit.Target;

/** What can be done with all that is picked, each as one step. */
final class Handling {

  /** How far beside its original a copy is laid. */
  private static final PointMm BESIDE = new PointMm(60, 60);

  private static final String TOPIC = "take out";

  private final Desk desk;

  Handling(Desk desk) {
    this.desk = desk;
  }

  /** Returns what can be done, for the list of keys. */
  List<Deed> deeds() {
    return List.of(
        new Deed("one more of what is picked", "C", this::copy),
        new Deed("turn what is picked round, front to rear", "T", this::turnRound),
        new Deed("bring what is picked to the other side", "O", this::otherSide),
        new Deed("nail what is picked, or loosen it", "K", this::nail),
        new Deed("take out what is picked", "Delete", this::takeOut));
  }

  void copy() {
    parts()
        .ifPresent(
            parts -> {
              edit(Several.duplicate(parts, BESIDE), parts);
              desk.select(
                  new Selection(
                      Several.copies(layout(), parts).values().stream()
                          .map(p -> "part:" + p)
                          .toList()));
            });
  }

  void turnRound() {
    parts()
        .ifPresent(parts -> edit(Mirror.turnedRound(parts, Mirror.line(layout(), parts)), parts));
  }

  void otherSide() {
    parts().ifPresent(parts -> edit(Mirror.otherSide(parts), parts));
  }

  /** Nails every pin of what is picked, or loosens them if all are nailed. */
  void nail() {
    Set<String> pins = desk.selection().allPins(layout());
    if (pins.isEmpty()) {
      say();
    } else {
      edit(Several.nail(pins, !isNailed()), List.copyOf(pins));
    }
  }

  /** Returns whether every pin of what is picked is nailed. */
  boolean isNailed() {
    Set<String> pins = desk.selection().allPins(layout());
    return !pins.isEmpty() && pins.stream().allMatch(p -> layout().pins().get(p).nailed());
  }

  /** Takes out what is picked, once it was said what goes with it. */
  void takeOut() {
    List<Entry> entries = desk.selection().entries();
    if (entries.isEmpty()) {
      say();
      return;
    }
    String follows = Several.follows(layout(), entries);
    Edit edit = Several.takeOut(entries);
    Runnable doIt = () -> desk.edit(edit, new Target.OfEntry(entries.get(0)), "");
    if (follows.isEmpty()) {
      doIt.run();
    } else {
      String words =
          edit.name().substring(0, 1).toUpperCase(Locale.ROOT) + edit.name().substring(1);
      desk.tell(
          new Notice(TOPIC, Notice.Mood.CARE, follows, List.of(new Notice.Answer(words, doIt))));
    }
  }

  /** Moves all that is picked by a step; returns false if it is not for it to move that. */
  boolean move(PointMm step) {
    Selection picked = desk.selection();
    boolean onePin = picked.parts().isEmpty() && picked.pins().size() < 2;
    if (onePin || desk.shown().isEmpty()) {
      return false;
    }
    Set<String> pins = picked.allPins(layout());
    edit(Several.move(pins, step), List.copyOf(pins));
    return true;
  }

  private void edit(Edit edit, List<String> about) {
    String group = layout().parts().containsKey(about.get(0)) ? "parts" : "pins";
    desk.edit(edit, new Target.OfEntry(new Entry(group, about.get(0))), "");
  }

  private Optional<List<String>> parts() {
    List<String> parts = desk.session().isEmpty() ? List.of() : desk.selection().parts();
    if (parts.isEmpty()) {
      say();
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(parts);
  }

  private void say() {
    desk.say(Notice.Mood.SAID, "nothing-picked", "Pick what is meant first; more with Shift.");
  }

  private Layout layout() {
    return desk.session().orElseThrow().layout();
  }
}
