package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.PartPoints;
import org.longlow.sketcher.edit.Handle;
import org.longlow.sketcher.edit.HoleEdits;
import org.longlow.sketcher.edit.PointSnap;
import org.longlow.sketcher.edit.Snapping;
import org.longlow.sketcher.edit.TypedLength;

/**
 * The hand that takes the points of one part: of its outline, its holes, or the bends of a tube.
 */
final class OutlineHand implements Hand {

  private static final double HANDLE_PX = 11;
  private static final double EDGE_PX = 9;

  private final Board board;
  private final Desk desk;
  private final PartPoints points;
  private final Runnable done;
  private final Runnable away;
  private PointMm begin;
  private PointMm grip;
  private PointSnap dragged;
  private PointMm pointer;
  private PointMm panned;
  private TypedLength typed = TypedLength.NOTHING;

  /** What the next click cuts; null for nothing. */
  private HoleEdits.Sort cuts;

  /**
   * @param part whose points are taken
   * @param done ends it
   * @param away is run once it is put down
   */
  OutlineHand(Board board, Desk desk, String part, Runnable done, Runnable away) {
    this.board = board;
    this.desk = desk;
    this.points = new PartPoints(desk, part);
    this.done = done;
    this.away = away;
    desk.drags().hover("");
    board.setHint("");
  }

  /** Returns the points that it works on. */
  PartPoints points() {
    return points;
  }

  private Snapping scale() {
    BoardState shown = desk.shown().orElseThrow();
    return Snapping.at(board.frame().pxPerMm(), shown.layout(), points.places(), Map.of());
  }

  // --- pointer

  @Override
  public void moved(MouseEvent e) {
    if (!points.isThere()) {
      return;
    }
    pointer = board.inMachine(e.getX(), e.getY());
    board.setCursor(at(e) >= 0 ? Cursor.HAND : Cursor.DEFAULT);
    board.paintGlass();
  }

  /** The handle within reach of the pointer, or -1. */
  private int at(MouseEvent e) {
    int best = -1;
    double nearest = HANDLE_PX;
    List<Handle> all = points.handles();
    for (int i = 0; i < all.size(); i++) {
      double d = board.onScreen(all.get(i).at()).distance(Hand.px(e));
      if (d < nearest) {
        nearest = d;
        best = i;
      }
    }
    return best;
  }

  @Override
  public void pressed(MouseEvent e) {
    if (!points.isThere()) {
      return;
    }
    points.pick(-1);
    typed = TypedLength.NOTHING;
    pointer = board.inMachine(e.getX(), e.getY());
    int taken = at(e);
    if (cuts != null) {
      hole(cuts);
    } else if (taken >= 0) {
      points.pick(taken);
      begin = points.picked().at();
      grip = begin.minus(pointer);
      if (points.picked().of() == Handle.Of.TUBE) {
        desk.drags().grab(points.picked().pin());
      }
    } else if (e.getClickCount() == 2) {
      points.add(pointer, EDGE_PX / board.frame().pxPerMm());
    } else {
      panned = Hand.px(e);
    }
    board.paintGlass();
  }

  @Override
  public void dragged(MouseEvent e) {
    PointMm px = Hand.px(e);
    if (panned != null) {
      board.setFrame(board.frame().panned(px.x() - panned.x(), px.z() - panned.z()));
      panned = px;
    } else if (begin != null && points.isThere()) {
      pointer = board.inMachine(e.getX(), e.getY());
      if (points.picked().of() == Handle.Of.TUBE) {
        desk.drags().moveTo(pointer.plus(grip));
      } else {
        dragged = snapped(pointer.plus(grip), e.isShiftDown(), e.isAltDown());
      }
      board.setPointer(px);
    }
  }

  private PointSnap snapped(PointMm to, boolean straight, boolean freely) {
    PointMm gone = to.minus(begin);
    PointSnap.Along along =
        !straight
            ? PointSnap.Along.ANY
            : Math.abs(gone.x()) > Math.abs(gone.z()) ? PointSnap.Along.X : PointSnap.Along.Z;
    Handle handle = points.picked();
    List<PointMm> own =
        points.handles().stream()
            .filter(h -> h.of() != Handle.Of.TUBE && h != handle)
            .map(Handle::at)
            .toList();
    Snapping scale = scale();
    double reach = freely ? 0 : scale.reachMm();
    return PointSnap.of(
        to, begin, along, points.places().pins(), own, reach, freely ? 0 : scale.gridMm());
  }

  @Override
  public void released(MouseEvent e, boolean click) {
    if (begin != null && points.picked().of() == Handle.Of.TUBE) {
      desk.drags().letGo();
    } else if (begin != null && dragged != null && !click) {
      String pin = typed.isEmpty() ? dragged.pin() : "";
      points.move(to(), pin);
    } else if (panned != null && click) {
      points.pick(-1);
    }
    release();
    board.paintGlass();
  }

  /** Where the point goes: as far as was typed, towards the pointer. */
  private PointMm to() {
    Handle before = points.before();
    return before == null || typed.mm(ShownUnits.of(desk)).isEmpty()
        ? dragged.at()
        : PointSnap.exactly(before.at(), dragged.at(), typed.mm(ShownUnits.of(desk)).get());
  }

  private void release() {
    begin = null;
    dragged = null;
    panned = null;
    typed = TypedLength.NOTHING;
  }

  @Override
  public void left() {
    pointer = null;
    board.setPointer(null);
  }

  @Override
  public void cancel() {
    if (desk.drags().drag().isPresent()) {
      desk.drags().drop();
    }
    release();
    board.paintGlass();
  }

  @Override
  public void putDown() {
    board.setPointer(null);
    away.run();
  }

  // --- buttons

  @Override
  public List<Deed> deeds() {
    return OutlineDeeds.of(points, sort -> cuts = sort).stream()
        .map(d -> new Deed(d.words(), d.keys(), () -> does(d.run())))
        .toList();
  }

  private void does(Runnable run) {
    cuts = null;
    if (points.isThere()) {
      run.run();
    }
    board.paintGlass();
  }

  // --- keys

  @Override
  public boolean wants(KeyEvent e) {
    return switch (e.getCode()) {
      case B, S, H, M, O, R, N, W, DELETE, BACK_SPACE -> true;
      case PERIOD, COMMA -> !typed.isEmpty();
      default -> false;
    };
  }

  @Override
  public boolean key(KeyEvent e) {
    if (!points.isThere()) {
      return false;
    }
    String sign = Keys.sign(e);
    if (!sign.isEmpty() && !(typed.isEmpty() && sign.equals("."))) {
      typed = typed.with(sign);
      board.paintGlass();
      return true;
    }
    switch (e.getCode()) {
      case N -> step(e.isShiftDown() ? -1 : 1);
      case LEFT -> push(e, -1, 0);
      case RIGHT -> push(e, 1, 0);
      case UP -> push(e, 0, 1);
      case DOWN -> push(e, 0, -1);
      case B -> reach(e.isShiftDown(), e.isAltDown());
      case S -> points.smooth();
      case H ->
          hole(
              e.isShiftDown()
                  ? HoleEdits.Sort.SLOT
                  : e.isAltDown() ? HoleEdits.Sort.CUT : HoleEdits.Sort.ROUND);
      case M -> points.symmetrical(e.isShiftDown());
      case O -> offset(e.isShiftDown());
      case R -> points.replace();
      case W -> points.turnWholeHoles();
      case INSERT -> points.addAfter();
      case BACK_SPACE, DELETE -> {
        if (typed.isEmpty()) {
          points.takeOut();
        } else {
          typed = typed.back();
        }
      }
      case ENTER -> {
        if (typed.isEmpty()) {
          done.run();
        } else {
          typedIn();
        }
      }
      default -> {
        return false;
      }
    }
    board.paintGlass();
    return true;
  }

  private void step(int by) {
    points.step(by);
    if (points.picked() != null) {
      pointer = points.picked().at();
      board.setPointer(board.onScreen(pointer));
    }
  }

  private void hole(HoleEdits.Sort sort) {
    if (pointer != null) {
      points.hole(sort, pointer, scale().reachMm(), typed.mm(ShownUnits.of(desk)));
      typed = TypedLength.NOTHING;
    }
    cuts = null;
  }

  /** How broad it is at the point picked: as typed, or as the part is. */
  private void reach(boolean leftAlone, boolean rightAlone) {
    points.reach(typed.mm(ShownUnits.of(desk)), !rightAlone, !leftAlone);
    typed = TypedLength.NOTHING;
  }

  private void offset(boolean replace) {
    typed.mm(ShownUnits.of(desk)).ifPresent(mm -> points.offset(mm, replace));
    typed = TypedLength.NOTHING;
  }

  /** What was typed while a point is dragged is for where it is let go. */
  private void typedIn() {
    if (dragged == null) {
      typed.mm(ShownUnits.of(desk)).ifPresent(points::setTo);
      typed = TypedLength.NOTHING;
    }
  }

  private void push(KeyEvent e, int right, int up) {
    Handle handle = points.picked();
    double mm = ShownUnits.stepMm(e, ShownUnits.of(desk));
    PointMm by = new PointMm(right * mm, up * mm);
    if (handle == null) {
      board.setFrame(board.frame().panned(-right * ViewFrame.PAN_PX, up * ViewFrame.PAN_PX));
    } else if (handle.of() == Handle.Of.TUBE) {
      desk.drags().nudge(handle.pin(), by);
    } else {
      points.move(handle.at().plus(by), "");
    }
  }

  // --- what is seen

  @Override
  public void paint(Overlay glass) {
    if (!points.isThere()) {
      return;
    }
    HandlesInk ink = new HandlesInk(glass, board);
    List<Handle> all = new ArrayList<>(points.handles());
    PointMm at = points.picked() == null ? null : dragged == null ? points.picked().at() : to();
    if (dragged != null) {
      PointMm by = at.minus(points.picked().at());
      all.replaceAll(h -> points.goesAlong(h) ? h.at(h.at().plus(by)) : h);
      ghost(ink, by);
    }
    for (int i = 0; i < all.size(); i++) {
      ink.handle(all.get(i), i == points.index());
    }
    if (at != null && desk.drags().drag().isEmpty()) {
      String snapped = dragged == null ? "" : dragged.words();
      glass.label(
          OutlineWords.beside(points, at, snapped, typed, ShownUnits.of(desk)),
          board.onScreen(at),
          dragged != null);
    }
    String refused = desk.trouble().map(t -> t.refused().words() + "\n").orElse("");
    ink.says(refused + says());
  }

  /** The edge that the point dragged belongs to, as it would be. */
  private void ghost(HandlesInk ink, PointMm by) {
    List<Handle> ring = points.ring();
    if (ring.size() > 1) {
      Handle moved = points.picked();
      boolean closed = moved.of() == Handle.Of.CUT || points.isClosed();
      List<Boolean> smooth = ring.stream().map(Handle::smooth).toList();
      List<PointMm> places =
          ring.stream().map(h -> points.goesAlong(h) ? h.at().plus(by) : h.at()).toList();
      ink.line(Curves.through(places, smooth, closed), closed);
    }
  }

  @Override
  public String says() {
    return cuts == null
        ? OutlineWords.says(points)
        : "Click within " + points.part() + " where the " + cuts.words() + " goes.";
  }
}
