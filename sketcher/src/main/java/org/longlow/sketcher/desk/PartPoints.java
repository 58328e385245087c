package org.longlow.sketcher.desk;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.EdgeSpot;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Handle;
import org.longlow.sketcher.edit.HoleEdits;
import org.longlow.sketcher.edit.OutlineShaping;
import org.longlow.sketcher.edit.PointEdits;
import org.longlow.sketcher.edit.PointSnap;
import org.longlow.sketcher.edit.PointWords;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.edit.TubeEdits;

/**
 * The points of one part while they are worked on: which is picked, and what is done to it. On the
 * owner's thread of the desk; each edit is a step.
 */
public final class PartPoints {

  /** Size of a new hole until it is typed over, mm; others are three times as long. */
  private static final double HOLE_MM = 8;

  private final Desk desk;
  private final String part;
  private Layout handled;
  private List<Handle> handles = List.of();
  private boolean ahead;
  private int picked = -1;

  /** Which point is picked once what is asked for is there; -1 for the same as now. */
  private int next = -1;

  private boolean wholeHoles;
  private Edit instead;
  private String asks = "";

  public PartPoints(Desk desk, String part) {
    this.desk = desk;
    this.part = part;
  }

  public String part() {
    return part;
  }

  /** Returns whether the part is on the board. */
  public boolean isThere() {
    return desk.shown().filter(s -> s.layout().parts().containsKey(part)).isPresent();
  }

  private Layout layout() {
    return desk.shown().orElseThrow().layout();
  }

  public Places places() {
    return desk.shown().orElseThrow().study().placed().places();
  }

  /** Returns its outline; a tube has none. */
  public Optional<Outline> outline() {
    Part now = layout().parts().get(part);
    return now.edge();
  }

  /** Returns whether the last point as drawn is followed by the first, where one is picked. */
  public boolean isClosed() {
    Handle handle = picked < 0 || picked >= handles.size() ? null : handles.get(picked);
    return isClosed(handle == null ? -1 : handle.body());
  }

  private boolean isClosed(int body) {
    return Handle.outline(layout(), part, body).map(o -> o.closed() && !o.half()).orElse(false);
  }

  /**
   * Returns its points. One that was just moved is where it will be: what is asked for next starts
   * from there, not from where it is still shown.
   */
  public List<Handle> handles() {
    Layout now = layout();
    boolean answered = !ahead || desk.isIdle();
    if ((ahead || now != handled) && answered && isThere()) {
      ahead = false;
      handled = now;
      handles = Handle.of(now, places(), part);
      picked = Math.min(next >= 0 ? next : picked, handles.size() - 1);
      next = -1;
    }
    return handles;
  }

  /** Returns the point picked, or null. */
  public Handle picked() {
    List<Handle> all = handles();
    return picked < 0 ? null : all.get(picked);
  }

  /** Returns the point picked; says that one is to be picked first where none is. */
  private Handle asked() {
    Handle handle = picked();
    if (handle == null) {
      desk.say(Notice.Mood.SAID, "point", "Pick a point first: click it, or N for the next.");
    }
    return handle;
  }

  /** Returns which point is picked, or -1. */
  public int index() {
    handles();
    return picked;
  }

  /** Picks a point; -1 for none. What was asked is dropped. */
  public void pick(int index) {
    picked = index;
    next = -1;
    drop();
  }

  /** Picks the next point, or the one before. */
  public void step(int by) {
    int n = handles().size();
    if (n > 0) {
      pick(picked < 0 ? (by > 0 ? 0 : n - 1) : Math.floorMod(picked + by, n));
    }
  }

  /** Returns the point before the one picked along its edge, or null. */
  public Handle before() {
    return PointWords.before(handles(), picked(), isClosed());
  }

  /** Returns the points of the edge or path that the picked one is of, in order. */
  public List<Handle> ring() {
    Handle handle = picked();
    return handles().stream().filter(h -> h.besides(handle)).toList();
  }

  /** Says what the last move would write over, and is asked by {@link #replace}; else empty. */
  public String asks() {
    return asks;
  }

  /** Forgets what was asked and refused. */
  public void drop() {
    instead = null;
    asks = "";
    desk.forgetTrouble();
  }

  private void edit(Edit edit) {
    desk.edit(edit, new Target.OfPart(part, List.of("outline"), "outline"), "");
  }

  /** Has the points of holes move alone again, or with the whole hole they are of. */
  public void turnWholeHoles() {
    wholeHoles = !wholeHoles;
  }

  /** Whether a point goes along when the one picked moves: itself, or all of its hole. */
  public boolean goesAlong(Handle point) {
    Handle handle = picked();
    return point == handle || takesHole() && point.hole() == handle.hole();
  }

  /** Whether moving the point picked takes the whole hole along. */
  public boolean takesHole() {
    Handle handle = picked();
    return wholeHoles && handle != null && handle.hole() >= 0;
  }

  /**
   * Moves the point picked, and where it {@linkplain #takesHole() takes} it the whole hole; asks
   * first where a pin or a formula would be written over.
   *
   * @param pin to put it on, or empty
   */
  public void move(PointMm to, String pin) {
    Handle handle = picked();
    if (takesHole()) {
      PointMm by = to.minus(handle.at());
      edit(HoleEdits.shift(part, handle.hole(), places(), by));
      ahead(handles.stream().map(h -> goesAlong(h) ? h.at(h.at().plus(by)) : h).toList());
      return;
    }
    String held = PointEdits.heldBy(handle, layout(), places(), to);
    Edit edit =
        pin.isEmpty()
            ? PointEdits.move(handle, places(), to, !held.isEmpty())
            : PointEdits.hang(handle, pin);
    if (held.isEmpty()) {
      edit(edit);
      ahead(handles.stream().map(h -> h == handle ? h.at(to) : h).toList());
    } else {
      instead = edit;
      asks = held.substring(0, 1).toUpperCase(Locale.ROOT) + held.substring(1) + ".";
    }
  }

  private void ahead(List<Handle> soon) {
    handles = soon;
    ahead = true;
  }

  /** Sets the edge before the point picked to a length, or the size of the hole picked. */
  public void setTo(double mm) {
    Handle handle = picked();
    if (handle != null && handle.of() == Handle.Of.CENTRE) {
      edit(HoleEdits.size(part, handle.hole(), Formula.of(mm, Unit.MM).text()));
    } else if (handle != null && handle.of() != Handle.Of.TUBE && before() != null) {
      move(PointSnap.exactly(before().at(), handle.at(), mm), "");
    }
  }

  /** Adds a point on the edge nearest to a place, or a bend on the straight. */
  public void add(PointMm near, double withinMm) {
    int nearest = -1;
    EdgeSpot best = null;
    for (int body = -1; body < bodies(); body++) {
      EdgeSpot spot = EdgeSpot.nearest(layout(), places(), part, body, near).orElse(null);
      if (spot != null && (best == null || spot.offMm() < best.offMm())) {
        best = spot;
        nearest = body;
      }
    }
    if (best != null && best.offMm() <= withinMm) {
      add(nearest, best);
      pick(-1);
    }
  }

  private int bodies() {
    return layout().parts().get(part) instanceof Part.Outlined p ? p.bodies().size() : 0;
  }

  private void add(int body, EdgeSpot spot) {
    edit(
        outline().isEmpty()
            ? TubeEdits.addBend(part, spot.edge(), spot.at())
            : body < 0
                ? PointEdits.add(part, places(), spot.edge(), spot.at())
                : PointEdits.addToBody(part, body, places(), spot.edge(), spot.at()));
  }

  /**
   * Adds a point half way to the next one after that picked, or after the first, and picks it; on
   * the last straight of a tube where its end is picked. Holes have their points from the start.
   */
  public void addAfter() {
    Handle handle = picked();
    if (handle != null && handle.of() != Handle.Of.TUBE && !isEdge(handle)) {
      return;
    }
    if (next >= 0 && !desk.isIdle()) {
      return; // the one before is not there yet
    }
    Handle any = handle == null && !handles().isEmpty() ? handles().get(0) : handle;
    List<Handle> ring = handles().stream().filter(h -> any != null && h.besides(any)).toList();
    int body = any == null ? -1 : any.body();
    int last = ring.size() - (isClosed(body) ? 1 : 2);
    int edge = Math.min(handle == null ? 0 : handle.index(), last);
    int first = ring.isEmpty() ? 0 : handles().indexOf(ring.get(0));
    EdgeSpot.halfWay(layout(), places(), part, body, edge)
        .ifPresent(
            spot -> {
              add(body, spot);
              pick(-1);
              next = first + spot.edge() + 1;
            });
  }

  /** Whether it is of the outline of a body, where the breadth can be said. */
  private static boolean isEdge(Handle handle) {
    return handle.of() == Handle.Of.EDGE || handle.of() == Handle.Of.BODY;
  }

  /** Takes the point picked out; a hole goes whole where it cannot be without it. */
  public void takeOut() {
    Handle handle = asked();
    if (handle == null) {
      return;
    }
    edit(
        switch (handle.of()) {
          case TUBE -> TubeEdits.takeOut(part, handle.index());
          case EDGE, BODY -> PointEdits.takeOut(handle);
          case CENTRE -> HoleEdits.takeOut(part, handle.hole());
          case CUT ->
              ring().size() > 3
                  ? PointEdits.takeOut(handle)
                  : HoleEdits.takeOut(part, handle.hole());
        });
    pick(-1);
  }

  /** Makes a smooth point a corner and the other way round. */
  public void smooth() {
    Handle handle = asked();
    if (handle != null && (isEdge(handle) || handle.of() == Handle.Of.CUT)) {
      edit(PointEdits.smooth(handle, !handle.smooth()));
    }
  }

  /**
   * Says how far the body reaches at the point picked: to both sides, or to those meant; as far as
   * the part does where nothing was typed.
   */
  public void reach(Optional<Double> mm, boolean left, boolean right) {
    Handle handle = asked();
    if (handle != null && isEdge(handle)) {
      edit(
          mm.isEmpty()
              ? PointEdits.even(handle)
              : PointEdits.reach(handle, left ? mm.get() : null, right ? mm.get() : null));
    }
  }

  /** Says how far the body reaches at the point picked where that is said; else empty. */
  public String reaches() {
    Handle handle = picked();
    return handle == null || !isEdge(handle) ? "" : PointWords.reach(handle, layout(), places());
  }

  /**
   * Adds a hole; a round one near a pin is centred on it.
   *
   * @param sizeMm as typed, where that was
   */
  public void hole(HoleEdits.Sort sort, PointMm near, double reachMm, Optional<Double> sizeMm) {
    if (outline().isEmpty()) {
      return;
    }
    boolean round = sort == HoleEdits.Sort.ROUND;
    double size = sizeMm.filter(mm -> mm > 0).orElse(round ? HOLE_MM : 3 * HOLE_MM);
    Map<String, PointMm> pins = round ? places().pins() : Map.of();
    PointSnap at = PointSnap.of(near, near, PointSnap.Along.ANY, pins, List.of(), reachMm, 1);
    edit(
        at.pin().isEmpty()
            ? HoleEdits.add(part, places(), sort, at.at(), size)
            : HoleEdits.addOnPin(part, at.pin(), size));
  }

  /**
   * Mirrors what is above the point picked, or with {@code plumb} what is ahead of it, to the other
   * side of it; a half is written out.
   */
  public void symmetrical(boolean plumb) {
    boolean half = outline().map(Outline::half).orElse(false);
    Handle handle = half ? null : asked();
    if (half) {
      edit(OutlineShaping.whole(part, places()));
    } else if (handle != null && handle.of() == Handle.Of.EDGE) {
      PointMm way = plumb ? new PointMm(0, -1) : new PointMm(1, 0);
      edit(OutlineShaping.symmetrical(part, places(), handle.at(), handle.at().plus(way)));
      pick(-1);
    }
  }

  /** Moves the whole edge outwards. */
  public void offset(double mm, boolean replace) {
    edit(OutlineShaping.offset(part, places(), mm, replace));
  }

  /** Writes figures where a pin, a formula or a file stands. */
  public void replace() {
    Handle handle = picked();
    Edit meant = instead;
    drop();
    if (meant != null) {
      edit(meant);
    } else if (outline().orElse(null) instanceof Outline.Traced) {
      edit(PointEdits.writeOut(part));
    } else if (handle != null && handle.of() != Handle.Of.TUBE) {
      edit(PointEdits.write(handle, places()));
    }
  }
}
