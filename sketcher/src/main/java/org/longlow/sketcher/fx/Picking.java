package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.desk.Selection;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.SectionPull;
import org.longlow.sketcher.edit.Several;
import org.longlow.sketcher.edit.Target;
import org.longlow.svg.drawing.Tone;

/** The empty hand: picks what lies on the card, drags pins, pans the card itself. */
final class Picking implements Hand {

  private final Board board;
  private final Desk desk;
  private final Handling handling;
  private PointMm lastPx;
  private boolean panning;
  private boolean down;
  private Ground ground;
  private PointMm offset;
  private SectionPull pull;
  private double opening;
  private PointMm cornerPx;
  private PointMm heldAt;
  private Edit moving;
  private Under under = Under.NOTHING;
  private String before = "";

  Picking(Board board, Desk desk) {
    this.board = board;
    this.desk = desk;
    handling = new Handling(desk);
  }

  @Override
  public void moved(MouseEvent e) {
    if (!under.isAt(Hand.px(e))) {
      under = Under.NOTHING;
    }
    Optional<String> pin = board.pinAt(e.getX(), e.getY());
    desk.drags().hover(pin.orElse(""));
    board.setHint(pin.isPresent() ? "" : board.subjectAt(e.getX(), e.getY()).orElse(""));
    board.setPointer(Hand.px(e));
    boolean moves =
        pin.isPresent() && desk.shown().map(s -> s.movable().contains(pin.get())).orElse(false);
    board.setCursor(moves ? Cursor.OPEN_HAND : pin.isPresent() ? Cursor.HAND : Cursor.DEFAULT);
  }

  @Override
  public void left() {
    if (!down) {
      desk.drags().hover("");
      board.setHint("");
      board.setPointer(null);
    }
  }

  @Override
  public void pressed(MouseEvent e) {
    board.setHint("");
    down = true;
    lastPx = Hand.px(e);
    before = desk.options().chosen();
    // what was picked below a pin is what is dragged from there
    boolean below = isPickedAgain(lastPx) && !before.startsWith("pin:");
    Optional<String> pin = below ? Optional.empty() : board.pinAt(e.getX(), e.getY());
    if (e.isShiftDown() && desk.shown().isPresent()) {
      cornerPx = lastPx;
    } else if (fromSide()
        && pin.isEmpty()
        && (isPickedPart(e) || below && before.startsWith("part:"))) {
      heldAt = board.inMachine(e.getX(), e.getY());
    } else if (pin.isPresent() && desk.shown().isPresent()) {
      BoardState shown = desk.shown().get();
      desk.choose("pin:" + pin.get());
      ground = shown.ground();
      // the pin keeps its distance from the pointer, and its suspension travel
      offset =
          shown
              .study()
              .placed()
              .places()
              .pin(pin.get())
              .minus(ground.toFrame(board.frame().point(e.getX(), e.getY())));
      desk.drags().grab(pin.get());
      board.setCursor(Cursor.CLOSED_HAND);
    } else {
      Optional<String> subject = board.subjectAt(e.getX(), e.getY());
      panning = subject.isEmpty();
      opening = desk.options().opening();
      pull = subject.flatMap(s -> hold(s, board.inMachine(e.getX(), e.getY()))).orElse(null);
    }
    board.setPointer(lastPx);
  }

  /** Things are moved where the machine is seen from its side. */
  private boolean fromSide() {
    return desk.shown().map(BoardState::fromSide).orElse(false);
  }

  /** Takes hold of a section that is open, at a part of it. */
  private Optional<SectionPull> hold(String subject, PointMm at) {
    return desk.shown()
        .filter(s -> subject.startsWith("part:") && s.fromSide())
        .flatMap(
            s ->
                SectionPull.sectionOf(s.layout(), subject.substring("part:".length()))
                    .filter(name -> s.options().stance().equals(Optional.of(Condition.open(name))))
                    .flatMap(
                        name ->
                            SectionPull.of(
                                s.layout(),
                                s.study().placed().places(),
                                name,
                                s.options().opening(),
                                at)));
  }

  @Override
  public void dragged(MouseEvent e) {
    PointMm now = Hand.px(e);
    board.setPointer(now);
    if (cornerPx != null) {
      board.paintGlass();
    } else if (heldAt != null) {
      carry(e);
    } else if (desk.drags().drag().isPresent()) {
      pull(e);
    } else if (pull != null) {
      double share = pull.towards(board.inMachine(e.getX(), e.getY()));
      board.setCursor(Cursor.CLOSED_HAND);
      desk.look(o -> o.withOpening(share));
    } else if (panning) {
      board.setCursor(Cursor.MOVE);
      board.setFrame(board.frame().panned(now.x() - lastPx.x(), now.z() - lastPx.z()));
    }
    lastPx = now;
  }

  /** Pulls the pin that is held to where the pointer is. */
  private void pull(MouseEvent e) {
    desk.drags().moveTo(ground.toFrame(board.frame().point(e.getX(), e.getY())).plus(offset));
  }

  @Override
  public void released(MouseEvent e, boolean click) {
    if (cornerPx != null) {
      pickMore(e, click);
    } else if (moving != null && !click) {
      desk.settle(moving, new Target.OfEntry(desk.selection().entries().get(0)));
    } else {
      if (desk.drags().drag().isPresent()) {
        if (!click) {
          // a hand quicker than the drawing lets go where no drag was told any more
          pull(e);
        }
        desk.drags().letGo();
      }
      if (click) {
        pick(e);
      }
    }
    release();
  }

  @Override
  public void cancel() {
    if (desk.drags().drag().isPresent()) {
      desk.drags().drop();
    }
    if (moving != null) {
      desk.dropPreview();
    }
    if (pull != null) {
      desk.look(o -> o.withOpening(opening));
    }
    release();
  }

  private void release() {
    down = false;
    panning = false;
    pull = null;
    cornerPx = null;
    heldAt = null;
    moving = null;
    board.setCursor(Cursor.DEFAULT);
    board.paintGlass();
  }

  /** Picks what lies on top, and with each click more on the same spot what lies below. */
  private void pick(MouseEvent e) {
    boolean again = isPickedAgain(Hand.px(e));
    under = under.clicked(Hand.px(e), before, board.allAt(e.getX(), e.getY()));
    if (again) {
      desk.drags().hover("");
    }
    desk.choose(under.subject());
  }

  private boolean isPickedAgain(PointMm px) {
    return under.isAt(px) && !before.isEmpty() && before.equals(under.subject());
  }

  private boolean isPickedPart(MouseEvent e) {
    return board
        .subjectAt(e.getX(), e.getY())
        .filter(s -> s.startsWith("part:") && desk.selection().subjects().contains(s))
        .isPresent();
  }

  /** Shows all that is picked as it would be if it went with the pointer, by whole mm. */
  private void carry(MouseEvent e) {
    PointMm gone = board.inMachine(e.getX(), e.getY()).minus(heldAt);
    PointMm step = new PointMm(Math.rint(gone.x()), Math.rint(gone.z()));
    Layout layout = desk.session().orElseThrow().layout();
    Edit next = Several.move(desk.selection().allPins(layout), step);
    try {
      desk.preview(next);
      moving = next;
      board.setCursor(Cursor.CLOSED_HAND);
    } catch (OutOfRange held) {
      desk.say(Notice.Mood.SAID, "held", "What is picked " + held.getMessage() + ".");
    }
  }

  /** With Shift: a click picks one thing more, or lets go of it; a rectangle all that is in it. */
  private void pickMore(MouseEvent e, boolean click) {
    if (click) {
      board
          .pinAt(e.getX(), e.getY())
          .map(p -> "pin:" + p)
          .or(() -> board.subjectAt(e.getX(), e.getY()))
          .ifPresent(s -> desk.select(desk.selection().toggled(s)));
      return;
    }
    Spots.Box box = rectangle(Hand.px(e));
    BoardState shown = desk.shown().orElseThrow();
    List<String> parts = within(shown, box, "part:", shown.layout().parts().keySet());
    List<String> found =
        parts.isEmpty() ? within(shown, box, "pin:", shown.layout().pins().keySet()) : parts;
    desk.select(desk.selection().with(found));
  }

  private Spots.Box rectangle(PointMm to) {
    return new Spots.Box(
        Math.min(cornerPx.x(), to.x()),
        Math.min(cornerPx.z(), to.z()),
        Math.abs(to.x() - cornerPx.x()),
        Math.abs(to.z() - cornerPx.z()));
  }

  private List<String> within(BoardState shown, Spots.Box box, String kind, Set<String> names) {
    return names.stream()
        .map(name -> kind + name)
        .filter(
            subject -> {
              Spots.Box at = board.boxOf(shown, subject);
              if (at == null) {
                return false;
              }
              boolean pin = kind.equals("pin:");
              double left = pin ? at.centreX() : at.x();
              double right = pin ? at.centreX() : at.right();
              double top = pin ? at.centreY() : at.y();
              double low = pin ? at.centreY() : at.bottom();
              return left >= box.x()
                  && right <= box.right()
                  && top >= box.y()
                  && low <= box.bottom();
            })
        .toList();
  }

  @Override
  public void paint(Overlay glass) {
    BoardState shown = desk.shown().orElseThrow();
    // what was just added may be picked before it is drawn
    Selection picked = desk.selection().in(shown.layout());
    if (picked.subjects().size() > 1 && shown.fromSide()) {
      for (String part : picked.parts()) {
        Optional.ofNullable(shown.shapes().get(part))
            .ifPresent(shape -> glass.pickedToo(onRoad(shown.ground(), shape.outline())));
      }
    }
    if (!down && under.now() > 0 && picked.last().equals(under.subject())) {
      glass.label(under.words(), under.px(), true);
    }
    if (cornerPx != null && lastPx != null) {
      Pen gc = glass.pen();
      gc.setStroke(glass.colour(Tone.CHOSEN));
      gc.setLineWidth(1.5);
      Spots.Box box = rectangle(lastPx);
      gc.strokeRect(box.x(), box.y(), box.width(), box.height());
    }
  }

  /** The outline where the machine stands on the road that is drawn level. */
  static Geometry onRoad(Ground road, Geometry outline) {
    Geometry moved = outline.copy();
    moved.apply(
        (CoordinateFilter)
            c -> {
              PointMm at = road.toRoad(new PointMm(c.x, c.y));
              c.setCoordinate(new Coordinate(at.x(), at.z()));
            });
    // a copy keeps the box of what it was copied from
    moved.geometryChanged();
    return moved;
  }

  @Override
  public void putDown() {
    desk.drags().hover("");
  }

  @Override
  public boolean key(KeyEvent e) {
    switch (e.getCode()) {
      case N -> step(e.isShiftDown() ? -1 : 1, true);
      case Q -> step(e.isShiftDown() ? -1 : 1, false);
      case LEFT -> push(e, -1, 0);
      case RIGHT -> push(e, 1, 0);
      case UP -> push(e, 0, 1);
      case DOWN -> push(e, 0, -1);
      case C -> handling.copy();
      case T -> handling.turnRound();
      case O -> handling.otherSide();
      case K -> handling.nail();
      case DELETE, BACK_SPACE -> handling.takeOut();
      default -> {
        return false;
      }
    }
    return true;
  }

  /** Picks the next pin or part, and shows how a pin can move. */
  private void step(int by, boolean pins) {
    if (desk.shown().isEmpty()) {
      return;
    }
    BoardState shown = desk.shown().get();
    String kind = pins ? "pin:" : "part:";
    List<String> all =
        List.copyOf(pins ? shown.layout().pins().keySet() : shown.layout().parts().keySet());
    if (all.isEmpty()) {
      return;
    }
    String chosen = desk.options().chosen();
    int now = chosen.startsWith(kind) ? all.indexOf(chosen.substring(kind.length())) : -1;
    int next = now < 0 ? (by > 0 ? 0 : all.size() - 1) : Math.floorMod(now + by, all.size());
    desk.choose(kind + all.get(next));
    if (pins && shown.fromSide()) {
      PointMm at = shown.onDrawing(all.get(next));
      board.setPointer(new PointMm(board.frame().screenX(at.x()), board.frame().screenY(at.z())));
      desk.drags().hover(all.get(next));
    } else {
      desk.drags().hover("");
    }
  }

  /**
   * Moves what is picked by a step (with Shift a large one, with Alt a fine one), or else the view.
   */
  private void push(KeyEvent e, int right, int up) {
    String chosen = desk.options().chosen();
    double step = ShownUnits.stepMm(e, ShownUnits.of(desk));
    if (desk.session().isPresent()
        && fromSide()
        && handling.move(new PointMm(right * step, up * step))) {
      return;
    }
    if (!chosen.startsWith("pin:") || !fromSide()) {
      board.setFrame(board.frame().panned(-right * ViewFrame.PAN_PX, up * ViewFrame.PAN_PX));
      return;
    }
    String pin = chosen.substring("pin:".length());
    desk.drags().nudge(pin, new PointMm(right * step, up * step));
  }
}
