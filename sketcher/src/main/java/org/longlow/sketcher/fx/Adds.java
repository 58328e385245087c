package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Selection;
import org.longlow.sketcher.edit.Addable;
import org.longlow.sketcher.edit.Adding;
import org.longlow.sketcher.edit.Additions;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Gallery;
import org.longlow.sketcher.edit.LampSet;
import org.longlow.sketcher.edit.Putting;
import org.longlow.sketcher.edit.PuttingOne;
import org.longlow.sketcher.edit.Subjects;
import org.longlow.sketcher.edit.Target;

/** Adds to the machine on the board: at once, or by a hand that puts it on the card. */
final class Adds {

  private final Desk desk;
  private final Board board;
  private final Supplier<BoardHands> hands;
  private final Runnable taken;
  private final Consumer<Boolean> aside;

  /**
   * @param taken is run when something was taken from the drawer
   * @param aside takes off the card what lies in the way of a hand, or lays it back
   */
  Adds(
      Desk desk, Board board, Supplier<BoardHands> hands, Runnable taken, Consumer<Boolean> aside) {
    this.desk = desk;
    this.board = board;
    this.hands = hands;
    this.taken = taken;
    this.aside = aside;
  }

  /** Takes something into the hand; what has its one place on a machine goes there at once. */
  void put(Putting putting) {
    if (desk.shown().isEmpty()) {
      return;
    }
    taken.run();
    Layout layout = desk.session().orElseThrow().layout();
    if (putting instanceof Adding adding && adding.replaced(layout).isPresent()) {
      String subject = adding.subjectIn(layout);
      desk.edit(adding.edit(), new Target.OfEntry(Subjects.entry(subject).orElseThrow()), "");
      desk.choose(subject);
      return;
    }
    hands.get().take(new Placing(board, desk, putting, hands.get()::takeNothing, aside));
    aside.accept(true);
  }

  /** Adds all lamps that the rules ask for and the machine lacks, as one step. */
  static void addLamps(Desk desk) {
    desk.edit(LampSet.edit(), new Target.OfEntry(new Entry("parts", LampSet.TITLE)), "");
  }

  void addLamps() {
    taken.run();
    addLamps(desk);
  }

  /** Adds what is no part, about what is picked. */
  void add(Addable addable) {
    if (desk.shown().isEmpty()) {
      return;
    }
    taken.run();
    Layout layout = desk.session().orElseThrow().layout();
    Selection picked = desk.selection().in(desk.shown().get().layout());
    Edit edit =
        addable
            .edit()
            .apply(
                new Additions.Picked(
                    picked.pins(), picked.parts(), desk.shown().get().study().placed().places()));
    Optional<String> subject = addable.subject(layout, edit);
    desk.edit(edit, new Target.OfEntry(new Entry(addable.group(), "new " + addable.title())), "");
    subject.ifPresent(desk::choose);
  }

  /** Returns everything that can be added, for who looks for words. */
  List<Deed> deeds() {
    List<Deed> deeds = new ArrayList<>();
    deeds.add(new Deed("add seat: pan, back, pegs at once", "", () -> put(PuttingOne.SEAT)));
    Gallery.specimens()
        .forEach(s -> deeds.add(new Deed("add " + s.title(), "", () -> put(Adding.of(s.name())))));
    deeds.add(new Deed("add pin", "", () -> put(PuttingOne.PIN)));
    deeds.add(new Deed("add " + LampSet.TITLE, "", this::addLamps));
    desk.session()
        .ifPresent(
            s ->
                Addable.of(s.layout())
                    .forEach(a -> deeds.add(new Deed("add " + a.title(), "", () -> add(a)))));
    return deeds;
  }
}
