package org.longlow.constraints.place;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Span;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.relation.CurvedOutlines;
import org.longlow.rider.geom.PointMm;

/** A part's outline for the solver: its vertices follow the part's pins, its edges follow them. */
final class EdgePoints {

  private EdgePoints() {}

  /**
   * Returns an edge of a part, straight or smooth; edge i runs from vertex i to the next.
   *
   * @throws IllegalArgumentException if the part has no outline or no such edge
   */
  static CurvedOutlines.Edge edge(Part part, int edge) {
    List<CurvedOutlines.Edge> edges = edges(part);
    if (edge < 0 || edge >= edges.size()) {
      throw new IllegalArgumentException(
          "part " + part.name() + " has edges 0 to " + (edges.size() - 1) + ", not " + edge);
    }
    return edges.get(edge);
  }

  /** Returns every edge of the outline of a part, in order. */
  static List<CurvedOutlines.Edge> edges(Part part) {
    Outline outline = outlined(part).outline();
    List<Boolean> smooth = outline.smooth();
    int n = smooth.size();
    List<CurvedOutlines.Edge> edges = new ArrayList<>();
    for (int i = 0; i < (outline.closed() ? n : n - 1); i++) {
      int before = Curves.before(smooth, outline.closed(), i);
      int after = Curves.after(smooth, outline.closed(), i);
      int[] used = IntStream.of(before, i, (i + 1) % n, after).filter(v -> v >= 0).toArray();
      edges.add(new CurvedOutlines.Edge(used, curve(before >= 0, after >= 0)));
    }
    return edges;
  }

  /** As {@link #edges}, with the chord of an open outline. */
  static List<CurvedOutlines.Edge> ring(Part part) {
    List<CurvedOutlines.Edge> edges = new ArrayList<>(edges(part));
    Outline outline = outlined(part).outline();
    if (!outline.closed()) {
      int last = outline.count() - 1;
      edges.add(new CurvedOutlines.Edge(new int[] {last, 0}, curve(false, false)));
    }
    return edges;
  }

  private static CurvedOutlines.Curve curve(boolean before, boolean after) {
    int from = before ? 2 : 0;
    return (c, share, out) -> {
      PointMm a = new PointMm(c[from], c[from + 1]);
      PointMm b = new PointMm(c[from + 2], c[from + 3]);
      PointMm at =
          before || after
              ? new Span(
                      before ? new PointMm(c[0], c[1]) : null,
                      a,
                      b,
                      after ? new PointMm(c[from + 4], c[from + 5]) : null)
                  .at(share)
              : a.towards(b, share);
      out[0] = at.x();
      out[1] = at.z();
    };
  }

  /** Returns every vertex of the outline of {@code part}, in order; a half with its image. */
  static List<Pt> vertices(Layout layout, Unknowns unknowns, String part) {
    Part.Outlined p = outlined(layout.parts().get(part));
    List<Pt> points = new ArrayList<>();
    for (Vertex v : p.outline().vertices()) {
      points.add(v.pin() != null ? unknowns.point(v.pin()) : inFrame(p.frame(), v, unknowns));
    }
    int last = points.size() - 1;
    for (int i = last + 1; i < p.outline().count(); i++) {
      points.add(
          MirroredPoint.of(points.get(p.outline().written(i)), points.get(0), points.get(last)));
    }
    return points;
  }

  static Part.Outlined outlined(Part part) {
    if (part instanceof Part.Outlined outlined) {
      return outlined;
    }
    throw new IllegalArgumentException(
        "part " + (part == null ? "" : part.name()) + " has no outline");
  }

  private static Pt inFrame(LocalAxes frame, Vertex v, Unknowns unknowns) {
    Pt origin = unknowns.point(frame.origin());
    Pt along = frame.along().map(unknowns::point).orElse(Pt.at(0, 0));
    boolean turns = frame.along().isPresent();
    List<Quantity> inputs = new ArrayList<>(List.of(origin.x(), origin.z()));
    inputs.addAll(
        List.of(along.x(), along.z(), unknowns.quantity(v.x()), unknowns.quantity(v.z())));
    inputs.add(frame.angle().map(unknowns::quantity).orElse(Quantity.of(0)));
    return new Pt(
        Composed.of(inputs, coordinate(turns, true)),
        Composed.of(inputs, coordinate(turns, false)));
  }

  private static Composed coordinate(boolean turns, boolean wantX) {
    return new Composed() {
      @Override
      public double value(double[] u) {
        return EdgePoints.value(u, turns, wantX);
      }

      @Override
      public double[] slopes(double[] u) {
        return EdgePoints.slopes(u, turns, wantX);
      }
    };
  }

  /** u = origin x, z, along x, z, local x, z, angle. */
  private static double value(double[] u, boolean turns, boolean wantX) {
    double turn = u[6] + (turns ? Math.atan2(u[3] - u[1], u[2] - u[0]) : 0);
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    return wantX ? u[0] + c * u[4] - s * u[5] : u[1] + s * u[4] + c * u[5];
  }

  private static double[] slopes(double[] u, boolean turns, boolean wantX) {
    double dx = u[2] - u[0];
    double dz = u[3] - u[1];
    double square = dx * dx + dz * dz;
    double turn = u[6] + (turns ? Math.atan2(dz, dx) : 0);
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    double byTurn = wantX ? -s * u[4] - c * u[5] : c * u[4] - s * u[5];
    double[] du = new double[7];
    du[wantX ? 0 : 1] = 1;
    du[4] = wantX ? c : s;
    du[5] = wantX ? -s : c;
    du[6] = byTurn;
    if (turns && square > 0) {
      du[0] += byTurn * dz / square;
      du[1] -= byTurn * dx / square;
      du[2] = -byTurn * dz / square;
      du[3] = byTurn * dx / square;
    }
    return du;
  }
}
