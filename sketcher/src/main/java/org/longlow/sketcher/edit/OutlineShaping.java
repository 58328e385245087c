package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Opening;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Local;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;

/** Edits of an outline as a whole: larger or smaller all round, and symmetrical. */
public final class OutlineShaping {

  /** Farthest that an outline offset point by point may lie from the true offset, mm. */
  static final double OFFSET_MM = 0.05;

  /** Longest spike of a sharp corner, in offsets; beyond it the corner is cut off. */
  private static final double MITRE = 5;

  /** How much of the distance its input may be simplified by: JTS takes a hundredth by itself. */
  private static final double SIMPLIFIED = 1e-4;

  /** A point nearer to the axis than this lies on it, mm. */
  private static final double ON_AXIS_MM = 1e-6;

  private OutlineShaping() {}

  /**
   * Returns the edit that moves the whole edge of a closed outline outwards, or inwards by a
   * negative distance. Each point stays one, smooth or not, where that keeps to the true offset
   * within {@value #OFFSET_MM} mm; else the true offset is written as straight pieces that keep to
   * it as near. Holes stay.
   *
   * @param replace true to write figures where pins and formulas stand
   */
  public static Edit offset(String part, Places places, double byMm, boolean replace) {
    return new Edit(
        "offset " + part,
        layout -> {
          Outline.Drawn drawn = PointEdits.drawn(layout, part);
          if (!drawn.closed()) {
            throw new OutOfRange("the outline of " + part + " is open, which has no outside");
          }
          kept(drawn, part, replace);
          Part.Outlined outlined = (Part.Outlined) layout.parts().get(part);
          Local local = Local.of(outlined.frame(), places);
          List<PointMm> ring =
              Outlines.vertices(outlined.frame(), drawn, places).stream()
                  .map(local::within)
                  .toList();
          return Change.set(
              layout, offset(layout, part, drawn, ring, byMm), "parts", part, "outline");
        });
  }

  private static void kept(Outline.Drawn drawn, String part, boolean replace) {
    long held =
        drawn.vertices().stream()
            .filter(v -> v.pin() != null || Handle.isFormula(v.x()) || Handle.isFormula(v.z()))
            .count();
    if (held > 0 && !replace) {
      throw new OutOfRange(
          held
              + (held == 1 ? " point of " : " points of ")
              + part
              + (held == 1 ? " is a pin or formula" : " are pins or formulas")
              + " that would be written over by figures");
    }
  }

  private static Outline.Drawn offset(
      Layout layout, String part, Outline.Drawn drawn, List<PointMm> ring, double byMm) {
    List<PointMm> flat = Curves.through(ring, drawn.smooth(), true);
    Polygon area = Opening.polygon(flat);
    if (!area.isValid()) {
      throw new OutOfRange("the outline of " + part + " crosses itself; mend that first");
    }
    BufferParameters mitred =
        new BufferParameters(16, BufferParameters.CAP_ROUND, BufferParameters.JOIN_MITRE, MITRE);
    mitred.setSimplifyFactor(SIMPLIFIED);
    Geometry wanted = BufferOp.bufferOp(area, byMm, mitred);
    if (!(wanted instanceof Polygon one) || one.isEmpty() || one.getNumInteriorRing() > 0) {
      throw new OutOfRange(
          (wanted.isEmpty() ? "nothing of " + part + " is left at " : part + " falls apart at ")
              + layout.units().says(byMm, FigureSort.LENGTH_IN_TENTHS)
              + "; take a smaller distance");
    }
    Optional<List<PointMm>> moved = pointByPoint(ring, drawn.smooth(), byMm);
    if (moved.isPresent() && isNear(moved.get(), drawn.smooth(), one)) {
      List<Vertex> vertices = new ArrayList<>();
      for (int i = 0; i < drawn.vertices().size(); i++) {
        vertices.add(PointEdits.written(moved.get().get(i), drawn.smooth().get(i)));
      }
      return new Outline.Drawn(vertices, true, drawn.half(), drawn.holes());
    }
    counted(layout, part);
    Geometry pieces = simplified(one);
    List<Vertex> vertices = new ArrayList<>();
    Coordinate[] corners = ((Polygon) pieces).getExteriorRing().getCoordinates();
    for (int i = 0; i + 1 < corners.length; i++) {
      vertices.add(PointEdits.written(new PointMm(corners[i].x, corners[i].y), false));
    }
    return new Outline.Drawn(vertices, true, false, drawn.holes());
  }

  /** Refuses where an edge or point is named by its number, which would be another afterwards. */
  static void counted(Layout layout, String part) {
    List<String> named = new ArrayList<>();
    layout
        .ties()
        .forEach(
            (name, tie) -> {
              if (tie.kind() == TieKind.ON_EDGE && tie.part().equals(part)) {
                named.add("tie " + name);
              }
            });
    layout
        .dimensions()
        .forEach(
            (name, d) -> {
              if (d.ends().stream().anyMatch(e -> e.part().equals(part) && e.point().isPresent())) {
                named.add("dimension " + name);
              }
            });
    if (!named.isEmpty()) {
      boolean one = named.size() == 1;
      throw new OutOfRange(
          "the points of "
              + part
              + " would be counted anew, and "
              + String.join(", ", named)
              + (one ? " names" : " name")
              + " one by its number; let go of "
              + (one ? "it" : "them")
              + " first");
    }
  }

  private static boolean isNear(List<PointMm> ring, List<Boolean> smooth, Polygon wanted) {
    Polygon made = Opening.polygon(Curves.through(ring, smooth, true));
    return made.isValid() && isNear(made, wanted);
  }

  /** Whether each lies within a band round the other. */
  private static boolean isNear(Geometry made, Geometry wanted) {
    return wanted.buffer(OFFSET_MM).covers(made) && made.buffer(OFFSET_MM).covers(wanted);
  }

  /** Leaves out points as long as what is left keeps near; a tip may need them closer. */
  private static Geometry simplified(Polygon wanted) {
    for (double tolerance = OFFSET_MM; tolerance > OFFSET_MM / 100; tolerance /= 2) {
      Geometry fewer = TopologyPreservingSimplifier.simplify(wanted, tolerance);
      if (isNear(fewer, wanted)) {
        return fewer;
      }
    }
    return wanted;
  }

  /** Moves each point along the middle of its corner; empty where a corner is too sharp. */
  private static Optional<List<PointMm>> pointByPoint(
      List<PointMm> ring, List<Boolean> smooth, double byMm) {
    int n = ring.size();
    boolean counterClockwise = twiceArea(ring) > 0;
    double out = counterClockwise ? byMm : -byMm;
    List<PointMm> moved = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      PointMm before = ring.get(i).minus(ring.get((i + n - 1) % n));
      PointMm after = ring.get((i + 1) % n).minus(ring.get(i));
      if (before.length() == 0 || after.length() == 0) {
        return Optional.empty();
      }
      // to the right of a counter-clockwise edge is outside
      PointMm a = before.left().times(-1 / before.length());
      PointMm b = after.left().times(-1 / after.length());
      double open = 1 + a.dot(b);
      if (open < 2 / (MITRE * MITRE)) {
        return Optional.empty();
      }
      // a corner goes to where its edges meet again, a smooth point straight out
      double share = smooth.get(i) ? 1 / Math.sqrt(2 * open) : 1 / open;
      moved.add(ring.get(i).plus(a.plus(b).times(out * share)));
    }
    return Optional.of(moved);
  }

  private static double twiceArea(List<PointMm> ring) {
    double sum = 0;
    for (int i = 0; i < ring.size(); i++) {
      sum += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return sum;
  }

  /**
   * Returns the edit that keeps what of a closed outline lies to the left of an axis, looking along
   * it, and mirrors that across it. Holes to the right of it go; the others are mirrored.
   *
   * @param from a point of the axis, in the axes of the machine
   * @param to another
   */
  public static Edit symmetrical(String part, Places places, PointMm from, PointMm to) {
    return new Edit(
        "make " + part + " symmetrical",
        layout -> {
          Outline.Drawn whole = (Outline.Drawn) drawnWhole(layout, part, places);
          Local local = Local.of(((Part.Outlined) layout.parts().get(part)).frame(), places);
          counted(layout, part);
          Side side = new Side(local.within(from), local.within(to));
          return Change.set(layout, half(part, whole, local, side), "parts", part, "outline");
        });
  }

  /** An axis; what lies to the left of it stays. */
  private record Side(PointMm from, PointMm to) {
    double of(PointMm p) {
      PointMm along = to.minus(from);
      double off = along.cross(p.minus(from)) / along.length();
      return Math.abs(off) < ON_AXIS_MM ? 0 : off;
    }
  }

  private static Outline.Drawn half(String part, Outline.Drawn whole, Local local, Side side) {
    List<PointMm> ring = local.places(whole.vertices()).stream().map(local::within).toList();
    List<List<PointMm>> edges = EdgeSpot.edges(ring, whole.smooth(), true);
    int n = ring.size();
    List<List<Vertex>> runs = new ArrayList<>();
    List<Vertex> run = null;
    int start = 0;
    while (start < n && !(side.of(ring.get(start)) < 0)) {
      start++;
    }
    if (start == n) {
      throw new OutOfRange("nothing of " + part + " lies to the right of that axis");
    }
    for (int k = 0; k < n; k++) {
      int i = (start + k) % n;
      int j = (i + 1) % n;
      double here = side.of(ring.get(i));
      double there = side.of(ring.get(j));
      boolean kept = run != null;
      if (kept && there > 0) {
        run.add(whole.vertices().get(j));
      } else if (kept) {
        run.add(
            there == 0
                ? whole.vertices().get(j)
                : crossing(edges.get(i), side, isCurved(whole, i)));
        runs.add(run);
        run = null;
      } else if (there > 0) {
        run = new ArrayList<>();
        run.add(
            here == 0 ? whole.vertices().get(i) : crossing(edges.get(i), side, isCurved(whole, i)));
        run.add(whole.vertices().get(j));
      }
    }
    if (runs.size() != 1) {
      throw new OutOfRange(
          runs.isEmpty()
              ? "nothing of " + part + " lies to the left of that axis"
              : "that axis cuts " + part + " into more than two pieces; a half is one piece");
    }
    return new Outline.Drawn(
        runs.get(0),
        true,
        true,
        whole.holes().stream()
            .filter(
                h ->
                    local.places(h.vertices()).stream()
                        .map(local::within)
                        .noneMatch(p -> side.of(p) < 0))
            .toList());
  }

  private static boolean isCurved(Outline outline, int edge) {
    List<Boolean> smooth = outline.smooth();
    return smooth.get(edge) || smooth.get((edge + 1) % smooth.size());
  }

  /** Where an edge that begins to one side of an axis and ends to the other crosses it first. */
  private static Vertex crossing(List<PointMm> edge, Side side, boolean smooth) {
    int i = 1;
    while (side.of(edge.get(i - 1)) * side.of(edge.get(i)) > 0) {
      i++;
    }
    double a = side.of(edge.get(i - 1));
    double b = side.of(edge.get(i));
    return PointEdits.written(edge.get(i - 1).towards(edge.get(i), a / (a - b)), smooth);
  }

  /** Returns the edit that writes out the image of a half, so that both can be changed apart. */
  public static Edit whole(String part, Places places) {
    return new Edit(
        "write out the other half of " + part,
        layout -> Change.set(layout, drawnWhole(layout, part, places), "parts", part, "outline"));
  }

  private static Outline drawnWhole(Layout layout, String part, Places places) {
    Outline.Drawn drawn = PointEdits.drawn(layout, part);
    if (!drawn.half()) {
      return drawn;
    }
    Part.Outlined outlined = (Part.Outlined) layout.parts().get(part);
    Local local = Local.of(outlined.frame(), places);
    List<PointMm> ring = Outlines.vertices(outlined.frame(), drawn, places);
    List<Vertex> vertices = new ArrayList<>(drawn.vertices());
    for (int i = vertices.size(); i < drawn.count(); i++) {
      vertices.add(PointEdits.written(local.within(ring.get(i)), drawn.smooth().get(i)));
    }
    return new Outline.Drawn(vertices, true, false, HoleEdits.withImages(outlined, drawn, places));
  }
}
