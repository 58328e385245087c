package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Expr;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.shape.Local;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/**
 * A point of a part's drawing that can be taken hold of: a vertex of its outline, a place of one of
 * its holes, a pin of its path.
 *
 * @param of what it belongs to
 * @param path of the vertex or name in the document
 * @param at where it is, in the axes of the machine
 * @param pin that it lies on, or empty
 * @param smooth whether the edge runs through it without a corner
 * @param hole which hole it is of, counted from 0; -1 for none
 * @param index which point of its outline, hole or path it is, counted from 0
 */
public record Handle(
    Of of, List<String> path, PointMm at, String pin, boolean smooth, int hole, int index) {

  /** What a handle belongs to. */
  public enum Of {
    EDGE,
    /** The edge of a further body. */
    BODY,
    /** The centre of a round hole, or of an end of a slot. */
    CENTRE,
    CUT,
    TUBE
  }

  public Handle {
    path = List.copyOf(path);
  }

  public Handle at(PointMm there) {
    return new Handle(of, path, there, pin, smooth, hole, index);
  }

  /** Returns the handles of a part, those of its edge first; none for what has no points. */
  public static List<Handle> of(Layout layout, Places places, String name) {
    Part part = layout.parts().get(name);
    List<Handle> handles = new ArrayList<>();
    if (part instanceof TubePart tube) {
      for (int i = 0; i < tube.path().size(); i++) {
        String pin = tube.path().get(i);
        List<String> path = List.of("parts", name, "path", Integer.toString(i));
        handles.add(new Handle(Of.TUBE, path, places.pin(pin), pin, false, -1, i));
      }
    } else if (part instanceof Part.Outlined outlined) {
      Local local = Local.of(outlined.frame(), places);
      if (outlined.outline() instanceof Outline.Drawn drawn) {
        add(
            handles,
            Of.EDGE,
            List.of("parts", name, "outline", "points"),
            drawn.vertices(),
            local,
            -1);
      }
      for (int k = 0; k < outlined.outline().holes().size(); k++) {
        hole(handles, outlined.outline().holes().get(k), k, name, local);
      }
      for (int k = 0; k < outlined.bodies().size(); k++) {
        if (outlined.bodies().get(k).outline() instanceof Outline.Drawn drawn) {
          List<String> outline = inside(body(name, k), "outline");
          add(handles, Of.BODY, inside(outline, "points"), drawn.vertices(), local, -1);
        }
      }
    }
    return handles;
  }

  private static void hole(List<Handle> into, Hole hole, int k, String part, Local local) {
    List<String> path = List.of("parts", part, "outline", "holes", Integer.toString(k));
    if (hole instanceof Hole.Cut cut) {
      add(into, Of.CUT, inside(path, "points"), cut.vertices(), local, k);
      return;
    }
    List<PointMm> places = local.places(hole.vertices());
    for (int i = 0; i < places.size(); i++) {
      String key = hole instanceof Hole.Round ? "at" : i == 0 ? "from" : "to";
      into.add(handle(Of.CENTRE, inside(path, key), hole.vertices().get(i), places.get(i), k, i));
    }
  }

  private static void add(
      List<Handle> into, Of of, List<String> list, List<Vertex> vertices, Local local, int hole) {
    List<PointMm> places = local.places(vertices);
    for (int i = 0; i < vertices.size(); i++) {
      List<String> path = inside(list, Integer.toString(i));
      into.add(handle(of, path, vertices.get(i), places.get(i), hole, i));
    }
  }

  private static Handle handle(
      Of of, List<String> path, Vertex v, PointMm at, int hole, int index) {
    return new Handle(of, path, at, v.pin() == null ? "" : v.pin(), v.smooth(), hole, index);
  }

  private static List<String> inside(List<String> path, String key) {
    List<String> longer = new ArrayList<>(path);
    longer.add(key);
    return longer;
  }

  /** Returns where a further body of a part stands in the document. */
  static List<String> body(String part, int body) {
    return List.of("parts", part, "bodies", Integer.toString(body));
  }

  /** Returns which of the further bodies it is of, counted from 0; -1 for none. */
  public int body() {
    return of == Of.BODY ? Integer.parseInt(path.get(3)) : -1;
  }

  /** Returns whether another belongs to the same edge, hole or path. */
  public boolean besides(Handle other) {
    return of == other.of && hole == other.hole && body() == other.body();
  }

  /** Returns the outline that it is of; empty for a pin of a path. */
  Optional<Outline> outline(Layout layout) {
    return outline(layout, path.get(1), body());
  }

  /** Returns the outline of a part, or of one of its further bodies; empty where it has none. */
  public static Optional<Outline> outline(Layout layout, String name, int body) {
    return layout.parts().get(name) instanceof Part.Outlined part
        ? Optional.of(body < 0 ? part.outline() : part.bodies().get(body).outline())
        : Optional.empty();
  }

  /** Returns the vertex as the layout has it; empty for a pin of a path. */
  Optional<Vertex> vertex(Layout layout) {
    return of == Of.TUBE
        ? Optional.empty()
        : outline(layout)
            .map(o -> hole < 0 ? o.vertices() : o.holes().get(hole).vertices())
            .map(all -> all.get(index));
  }

  /** Returns whether a coordinate is worked out and not just a figure. */
  static boolean isFormula(Formula formula) {
    return !(formula.expr() instanceof Expr.Num);
  }
}
