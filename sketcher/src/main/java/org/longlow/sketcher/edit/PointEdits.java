package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.shape.Local;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * Edits of the points of an outline. Places are in the axes of the machine and written in those of
 * the outline. What is a pin or a formula is not written over unless that is asked for.
 */
public final class PointEdits {

  /** A coordinate that moves by less than this stays as it is written, mm. */
  private static final double STAYS_MM = 5e-4;

  private PointEdits() {}

  /**
   * Returns the edit that moves a point.
   *
   * @param replace true to write figures where a pin or a formula stands
   */
  public static Edit move(Handle handle, Places places, PointMm to, boolean replace) {
    return new Edit(
        "move " + name(handle),
        layout -> {
          String held = replace ? "" : heldBy(handle, layout, places, to);
          if (!held.isEmpty()) {
            throw new OutOfRange(held);
          }
          return Change.set(layout, moved(handle, layout, places, to), array(handle.path()));
        });
  }

  /** Says what the point is given by that moving it would write over; empty for nothing. */
  public static String heldBy(Handle handle, Layout layout, Places places, PointMm to) {
    if (!handle.pin().isEmpty()) {
      return "this point lies on pin " + handle.pin() + ", which stays where it is";
    }
    Vertex v = handle.vertex(layout).orElseThrow();
    PointMm now = local(layout, handle, places).within(handle.at());
    PointMm then = local(layout, handle, places).within(to);
    List<String> formulas = new ArrayList<>();
    if (Handle.isFormula(v.x()) && Math.abs(then.x() - now.x()) > STAYS_MM) {
      formulas.add("x = " + v.x().text());
    }
    if (Handle.isFormula(v.z()) && Math.abs(then.z() - now.z()) > STAYS_MM) {
      formulas.add("z = " + v.z().text());
    }
    return formulas.isEmpty()
        ? ""
        : "this point is worked out by " + String.join(" and ", formulas);
  }

  private static Vertex moved(Handle handle, Layout layout, Places places, PointMm to) {
    Vertex v = handle.vertex(layout).orElseThrow();
    Local local = local(layout, handle, places);
    PointMm now = local.within(handle.at());
    PointMm then = local.within(to);
    return v.pin() != null
        ? v.at(mm(then.x()), mm(then.z()))
        : v.at(
            Math.abs(then.x() - now.x()) > STAYS_MM ? mm(then.x()) : v.x(),
            Math.abs(then.z() - now.z()) > STAYS_MM ? mm(then.z()) : v.z());
  }

  /** Returns the edit that gives a point figures of its own instead of a pin or a formula. */
  public static Edit write(Handle handle, Places places) {
    return new Edit(
        "write out " + name(handle),
        layout -> {
          Vertex v = handle.vertex(layout).orElseThrow();
          PointMm at = local(layout, handle, places).within(handle.at());
          return Change.set(layout, v.at(mm(at.x()), mm(at.z())), array(handle.path()));
        });
  }

  /** Returns the edit that puts a point on a pin. */
  public static Edit hang(Handle handle, String pin) {
    return new Edit(
        "put " + name(handle) + " on " + pin,
        layout -> {
          Vertex v = handle.vertex(layout).orElseThrow();
          return Change.set(layout, v.on(pin), array(handle.path()));
        });
  }

  /** Returns the edit that makes the edge run smoothly through a point, or turn there. */
  public static Edit smooth(Handle handle, boolean smooth) {
    return new Edit(
        (smooth ? "smooth " : "corner at ") + name(handle),
        layout -> {
          Vertex v = handle.vertex(layout).orElseThrow();
          return Change.set(layout, v.smooth(smooth), array(handle.path()));
        });
  }

  /**
   * Returns the edit that says how far the body reaches at a point; a side that was not said stays
   * as it was meant.
   *
   * @param left mm; null leaves it
   * @param right mm; null leaves it
   */
  public static Edit reach(Handle handle, Double left, Double right) {
    return new Edit(
        "breadth at " + name(handle),
        layout -> {
          Vertex v = handle.vertex(layout).orElseThrow();
          Spread spread = spread(layout, handle);
          Optional<HalfBreadths> was = v.reach();
          Formula toLeft =
              left != null ? mm(left) : was.map(HalfBreadths::leftOrRight).orElse(spread.left());
          Formula toRight =
              right != null ? mm(right) : was.map(HalfBreadths::rightOrLeft).orElse(spread.right());
          HalfBreadths now = new HalfBreadths(Optional.of(toLeft), Optional.of(toRight));
          return Change.set(layout, v.reaching(Optional.of(now)), array(handle.path()));
        });
  }

  private static Spread spread(Layout layout, Handle handle) {
    Part part = layout.parts().get(handle.path().get(1));
    return handle.body() < 0
        ? part.base().spread().orElseThrow()
        : ((Part.Outlined) part).bodies().get(handle.body()).spread();
  }

  /** Returns the edit that has the body reach at a point as far as the part does. */
  public static Edit even(Handle handle) {
    return new Edit(
        "usual breadth at " + name(handle),
        layout ->
            Change.set(
                layout,
                handle.vertex(layout).orElseThrow().reaching(Optional.empty()),
                array(handle.path())));
  }

  /**
   * Returns the edit that adds a corner on an edge of an outline. Ties that name a later edge go on
   * meaning it; one to this edge means the first of the two.
   *
   * @param edge of the whole outline, counted from 0 as ties count them
   */
  public static Edit add(String part, Places places, int edge, PointMm at) {
    return new Edit(
        "add point to " + part,
        layout -> {
          Outline.Drawn drawn = drawn(layout, part);
          int drawnEdge = drawnEdge(drawn, edge);
          Part.Outlined outlined = (Part.Outlined) layout.parts().get(part);
          Local local = Local.of(outlined.frame(), places);
          PointMm place = at;
          if (drawnEdge != edge) {
            List<PointMm> axis = local.places(drawn.axis());
            place = at.mirrored(axis.get(0), axis.get(1));
          }
          List<Vertex> more = new ArrayList<>(drawn.vertices());
          more.add(drawnEdge + 1, written(local.within(place), false));
          Layout edged = edged(layout, part, more, k -> k > drawnEdge ? k + 1 : k);
          return KeptPoints.counted(edged, part, drawn, k -> k > drawnEdge ? k + 1 : k);
        });
  }

  /** As {@link #add(String, Places, int, PointMm)}, to the outline of a further body. */
  public static Edit addToBody(String part, int body, Places places, int edge, PointMm at) {
    return new Edit(
        "add point to " + part,
        layout -> {
          Part.Outlined outlined = (Part.Outlined) layout.parts().get(part);
          Outline drawn = outlined.bodies().get(body).outline();
          Local local = Local.of(outlined.frame(), places);
          int drawnEdge = drawnEdge(drawn, edge);
          PointMm place = at;
          if (drawnEdge != edge) {
            List<PointMm> axis = local.places(drawn.axis());
            place = at.mirrored(axis.get(0), axis.get(1));
          }
          List<Vertex> more = new ArrayList<>(drawn.vertices());
          more.add(drawnEdge + 1, written(local.within(place), false));
          List<String> path = new ArrayList<>(Handle.body(part, body));
          path.addAll(List.of("outline", "points"));
          return Change.set(layout, more, array(path));
        });
  }

  /** Returns the edit that takes a point out of an outline or a cut-out. */
  public static Edit takeOut(Handle handle) {
    return new Edit(
        "take out " + name(handle),
        layout -> {
          if (handle.of() != Handle.Of.EDGE) {
            return Typing.dropped(layout, handle.path());
          }
          Outline.Drawn drawn = drawn(layout, handle.path().get(1));
          List<Vertex> fewer = new ArrayList<>(drawn.vertices());
          int i = handle.index();
          fewer.remove(i);
          boolean round = drawn.closed() && !drawn.half();
          int last = fewer.size() - (round ? 1 : 2);
          String part = handle.path().get(1);
          Layout edged =
              edged(
                  layout,
                  part,
                  fewer,
                  k ->
                      i == 0 && k == 0 && round
                          ? last
                          : Math.min(last, Math.max(0, k >= i ? k - 1 : k)));
          return KeptPoints.counted(
              edged, part, drawn, k -> Math.min(fewer.size() - 1, k > i ? k - 1 : k));
        });
  }

  /** Puts other vertices into an outline and counts the edges in ties anew. */
  private static Layout edged(
      Layout layout, String part, List<Vertex> vertices, IntUnaryOperator drawnEdge) {
    Outline.Drawn before = drawn(layout, part);
    Outline.Drawn after =
        new Outline.Drawn(vertices, before.closed(), before.half(), before.holes());
    Layout edged = Change.set(layout, after, "parts", part, "outline");
    for (String name : layout.ties().keySet()) {
      Tie tie = layout.ties().get(name);
      if (tie.kind() == TieKind.ON_EDGE && tie.part().equals(part)) {
        int was = drawnEdge(before, tie.edge());
        int is = drawnEdge.applyAsInt(was);
        int edge = was == tie.edge() ? is : imageEdge(after, is);
        edged = Change.set(edged, edge, "ties", name, "edge");
      }
    }
    return edged;
  }

  /** Returns the edge as drawn that an edge of the whole outline is or is the image of. */
  static int drawnEdge(Outline outline, int edge) {
    int drawn = outline.vertices().size() - 1;
    return outline.half() && edge >= drawn ? imageEdge(outline, edge) : edge;
  }

  /** Of a half, the edge that is the image of another. */
  private static int imageEdge(Outline outline, int edge) {
    return outline.count() - 1 - edge;
  }

  static Outline.Drawn drawn(Layout layout, String part) {
    Outline outline =
        layout.parts().get(part) == null ? null : layout.parts().get(part).edge().orElse(null);
    if (outline instanceof Outline.Drawn drawn) {
      return drawn;
    }
    throw new OutOfRange(
        outline instanceof Outline.Traced traced
            ? "the outline of " + part + " comes from " + traced.file() + "; write it out first"
            : part + " has no outline of its own");
  }

  /** Returns the edit that writes out the points of an outline that comes from a file. */
  public static Edit writeOut(String part) {
    return new Edit(
        "write out the outline of " + part,
        layout ->
            layout.parts().get(part).edge().orElse(null) instanceof Outline.Traced traced
                ? Change.set(
                    layout,
                    new Outline.Drawn(traced.vertices(), traced.closed(), false, traced.holes()),
                    "parts",
                    part,
                    "outline")
                : layout);
  }

  private static Local local(Layout layout, Handle handle, Places places) {
    return Local.of(((Part.Outlined) layout.parts().get(handle.path().get(1))).frame(), places);
  }

  static Vertex written(PointMm local, boolean smooth) {
    return new Vertex(mm(local.x()), mm(local.z()), null, smooth);
  }

  /** A length as people would write it: to a thousandth of a millimetre. */
  static Formula mm(double mm) {
    return Formula.of(Math.rint(mm * 1000) / 1000 + 0.0, Unit.MM);
  }

  private static String[] array(List<String> path) {
    return path.toArray(new String[0]);
  }

  /** What the history calls a point, counted from 1. */
  public static String name(Handle handle) {
    String point = "point " + (handle.index() + 1);
    return Stream.of(
            handle.path().get(1),
            handle.hole() < 0 ? "" : "hole " + (handle.hole() + 1),
            handle.body() < 0 ? "" : "body " + (handle.body() + 1),
            handle.of() == Handle.Of.CENTRE ? "" : point)
        .filter(w -> !w.isEmpty())
        .reduce((a, b) -> a + " " + b)
        .orElseThrow();
  }
}
