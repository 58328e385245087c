package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/** What is written beside a point while it is placed: where it is, and its edges. */
public final class PointWords {

  private PointWords() {}

  /** Returns the place in the axes of the machine. */
  public static String place(PointMm at, Units units) {
    return "x "
        + units.bare(at.x(), FigureSort.LENGTH_IN_TENTHS)
        + "  z "
        + units.says(at.z(), FigureSort.LENGTH_IN_TENTHS);
  }

  /** Returns length and direction of the edge from the point before. */
  public static String edge(PointMm before, PointMm at, Units units) {
    return edge(before, at, units, "from the point before");
  }

  private static String edge(PointMm from, PointMm to, Units units, String what) {
    PointMm way = to.minus(from);
    return String.format(
        Locale.ROOT,
        "%s %s, %.1f\u00b0 from level",
        units.says(way.length(), FigureSort.LENGTH_IN_TENTHS),
        what,
        Math.toDegrees(way.angleRad()) + 0.0);
  }

  /** Returns the handle of the same edge or path before a handle; null where there is none. */
  public static Handle before(List<Handle> all, Handle handle, boolean closed) {
    return beside(all, handle, closed, -1);
  }

  /** Returns the handle of the same edge or path after a handle; null where there is none. */
  public static Handle after(List<Handle> all, Handle handle, boolean closed) {
    return beside(all, handle, closed, 1);
  }

  private static Handle beside(List<Handle> all, Handle handle, boolean closed, int by) {
    List<Handle> same = all.stream().filter(h -> h.besides(handle)).toList();
    int i = handle.index() + by;
    boolean edge = handle.of() == Handle.Of.EDGE || handle.of() == Handle.Of.BODY;
    boolean round = handle.of() == Handle.Of.CUT || edge && closed;
    if (i >= 0 && i < same.size()) {
      return same.get(i);
    }
    return round && same.size() > 1 ? same.get(Math.floorMod(i, same.size())) : null;
  }

  /** Returns how far the body reaches at a point of its outline where that is said, or empty. */
  public static String reach(Handle handle, Layout layout, Places places) {
    Units units = layout.units();
    return handle
        .vertex(layout)
        .flatMap(Vertex::reach)
        .map(
            r ->
                "reaches "
                    + units.bare(places.value(r.leftOrRight()), FigureSort.LENGTH_IN_TENTHS)
                    + " left, "
                    + units.says(places.value(r.rightOrLeft()), FigureSort.LENGTH_IN_TENTHS)
                    + " right")
        .orElse("");
  }

  /** Returns all that is written beside a handle that is at a place. */
  public static List<String> of(
      List<Handle> all, Handle handle, boolean closed, PointMm at, Units units) {
    List<String> words = new ArrayList<>(List.of(place(at, units)));
    Handle before = before(all, handle, closed);
    Handle after = after(all, handle, closed);
    if (before != null) {
      words.add(edge(before.at(), at, units));
    }
    if (after != null) {
      words.add(edge(at, after.at(), units, "to the point after"));
    }
    return words;
  }
}
