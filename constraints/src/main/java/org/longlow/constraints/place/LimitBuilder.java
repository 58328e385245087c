package org.longlow.constraints.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.gap.SideBySide;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.layout.Wish;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.relation.Circles;
import org.longlow.constraints.solve.relation.CurvedOutlines;
import org.longlow.constraints.solve.relation.OutlineRelations;
import org.longlow.constraints.solve.relation.Relations;
import org.longlow.rider.geom.PointMm;

/** Turns limits, ranges and wishes of a layout into those of the solver. */
final class LimitBuilder {

  /** The name in reports of a limit's lower and upper side. */
  private static final String LEAST = " (at least)";

  private static final String MOST = " (at most)";

  private final Layout layout;
  private final Unknowns unknowns;
  private final Set<String> ofAngles = new HashSet<>();
  private final double[] drawn;
  private final Map<String, SideBySide.Pair> across = new LinkedHashMap<>();
  private List<SeatedBody> crew;

  /**
   * @param drawn values of all variables where bodies are looked at that may lie side by side
   */
  LimitBuilder(Layout layout, Unknowns unknowns, double[] drawn) {
    this.layout = layout;
    this.unknowns = unknowns;
    this.drawn = drawn;
  }

  void add(String name, Limit limit, Problem.Builder builder) {
    if (limit.kind() == Limit.Kind.INSIDE) {
      addInside(name, limit, builder);
      return;
    }
    if (limit.kind() == Limit.Kind.GAP) {
      addGap(name, limit, builder);
      return;
    }
    if (limit.kind() == Limit.Kind.MEASURE) {
      range(
          name,
          unknowns.measure(limit.measure()),
          Measures.dim(layout, limit.measure()),
          limit.from(),
          limit.to(),
          builder);
      return;
    }
    List<Pt> p = limit.pins().stream().map(unknowns::point).toList();
    boolean both = limit.from().isPresent() && limit.to().isPresent();
    if (limit.kind().dim().filter(Dim.ANGLE::equals).isPresent()) {
      ofAngles.addAll(List.of(name, name + LEAST, name + MOST));
    }
    limit
        .from()
        .map(unknowns::quantity)
        .ifPresent(q -> builder.limit(name + (both ? LEAST : ""), over(limit.kind(), p, q)));
    limit
        .to()
        .map(unknowns::quantity)
        .ifPresent(
            q ->
                builder.limit(
                    name + (both ? MOST : ""), Relations.negative(over(limit.kind(), p, q))));
  }

  /** Between two parts, or a part and whoever sits on the machine. */
  private void addGap(String name, Limit limit, Problem.Builder builder) {
    List<MovingBody> parts = new ArrayList<>();
    for (String part : limit.parts()) {
      if (layout.parts().containsKey(part)) {
        parts.add(PartBody.of(unknowns, layout.parts().get(part)));
      }
    }
    if (parts.size() == 2) {
      addGap(name, parts.get(0), parts.get(1), limit, builder);
    } else if (parts.size() == 1) {
      for (SeatedBody person : crew()) {
        addGap(name + " (" + person.who() + ")", parts.get(0), person, limit, builder);
      }
    }
  }

  private void addGap(
      String name, MovingBody first, MovingBody second, Limit limit, Problem.Builder builder) {
    boolean both = limit.from().isPresent() && limit.to().isPresent();
    limit
        .from()
        .map(unknowns::quantity)
        .ifPresent(q -> atLeast(name + (both ? LEAST : ""), first, second, q, builder));
    limit
        .to()
        .map(unknowns::quantity)
        .map(q -> GapRows.atMost(first, second, q, drawn))
        .ifPresent(rows -> builder.limit(name + (both ? MOST : ""), rows));
  }

  private void atLeast(
      String name, MovingBody first, MovingBody second, Quantity gap, Problem.Builder builder) {
    List<SideBySide.Pair> aside = GapRows.aside(first, second, gap, drawn);
    aside.stream()
        .max(Comparator.comparingDouble(SideBySide.Pair::shortMm))
        .ifPresent(pair -> across.put(name, pair));
    builder.limit(name, GapRows.atLeast(first, second, gap, aside, drawn));
  }

  /** Returns what is short across the machine, by the name of the limit in reports. */
  Map<String, SideBySide.Pair> across() {
    return across;
  }

  /** One body each, however many limits speak of them. */
  private List<SeatedBody> crew() {
    if (crew == null) {
      crew = SeatedBody.all(layout, unknowns);
    }
    return crew;
  }

  /** Quantity less target, in mm. */
  private static Relation over(Limit.Kind kind, List<Pt> p, Quantity target) {
    return switch (kind) {
      case DISTANCE -> Relations.distance(p.get(0), p.get(1), target);
      case AHEAD -> Relations.horizontal(p.get(0), p.get(1), target);
      case ABOVE -> Relations.vertical(p.get(0), p.get(1), target);
      case HEIGHT -> Relations.equal(p.get(0).z(), target);
      case ANGLE -> Relations.angleToHorizontal(p.get(0), p.get(1), target);
      case RAKE -> Relations.angleToVertical(p.get(0), p.get(1), target);
      case ANGLE_BETWEEN -> Relations.angleBetween(p.get(0), p.get(1), p.get(2), p.get(3), target);
      case BESIDE -> Relations.pointToLine(p.get(0), p.get(1), p.get(2), target);
      default -> throw new IllegalArgumentException("no such limit on pins: " + kind.word());
    };
  }

  void addRange(String name, Measure measure, Problem.Builder builder) {
    if (measure.free()) {
      range(name, unknowns.measure(name), measure.dim(), measure.from(), measure.to(), builder);
    }
  }

  private void range(
      String name,
      Quantity measure,
      Dim dim,
      Optional<Formula> from,
      Optional<Formula> to,
      Problem.Builder builder) {
    if (dim.equals(Dim.ANGLE)) {
      ofAngles.addAll(List.of(name + LEAST, name + MOST));
    }
    from.map(unknowns::quantity)
        .ifPresent(q -> builder.limit(name + LEAST, difference(measure, q, dim)));
    to.map(unknowns::quantity)
        .ifPresent(
            q -> builder.limit(name + MOST, Relations.negative(difference(measure, q, dim))));
  }

  /** Returns the limits, by their names in reports, whose millimetres are those of an arc. */
  Set<String> ofAngles() {
    return ofAngles;
  }

  private static Relation difference(Quantity measure, Quantity target, Dim dim) {
    Relation plain = Relations.equal(measure, target);
    return dim.equals(Dim.ANGLE) ? Relations.times(Relations.ARC_RADIUS_MM, plain) : plain;
  }

  /** The arc runs counter-clockwise from R to S about Q, as drawn; the point stays between them. */
  void addArcEnds(String name, Tie tie, Problem.Builder builder) {
    if (tie.kind() != TieKind.ON_ARC) {
      return;
    }
    PointMm centre = unknowns.drawn(tie.pins().get(1));
    double start = unknowns.drawn(tie.pins().get(2)).minus(centre).angleRad();
    double end = unknowns.drawn(tie.pins().get(3)).minus(centre).angleRad();
    double sweep = end > start ? end - start : end - start + 2 * Math.PI;
    builder.limit(
        name + " (ends)",
        Circles.withinArc(
            unknowns.point(tie.pins().get(0)),
            unknowns.point(tie.pins().get(1)),
            Quantity.of(start),
            Quantity.of(sweep),
            unknowns.startValue(tie.radii().get(0))));
  }

  private void addInside(String name, Limit limit, Problem.Builder builder) {
    Pt p = unknowns.point(limit.pins().get(0));
    String part = limit.parts().get(0);
    List<Pt> ring = EdgePoints.vertices(layout, unknowns, part);
    Outline outline = EdgePoints.outlined(layout.parts().get(part)).outline();
    boolean curved = outline.vertices().stream().anyMatch(Vertex::smooth);
    // an open outline is closed by its chord
    Relation room =
        curved
            ? CurvedOutlines.inside(p, ring, EdgePoints.ring(layout.parts().get(part)))
            : OutlineRelations.inside(p, ring);
    double least = limit.from().map(unknowns::startValue).orElse(0.0);
    builder.limit(name, new Less(room, least));
  }

  /** A relation less a constant. */
  private record Less(Relation relation, double by) implements Relation {
    @Override
    public int[] variables() {
      return relation.variables();
    }

    @Override
    public double evaluate(double[] x, double[] gradient) {
      return relation.evaluate(x, gradient) - by;
    }

    @Override
    public double scale() {
      return relation.scale();
    }
  }

  void addWish(String name, Wish wish, Problem.Builder builder) {
    if (wish.is().isEmpty()) {
      return;
    }
    Quantity is = unknowns.quantity(wish.is().get());
    List<Pt> p = wish.pins().stream().map(unknowns::point).toList();
    Relation residual =
        switch (wish.kind()) {
          case DISTANCE -> Relations.distance(p.get(0), p.get(1), is);
          case AHEAD -> Relations.horizontal(p.get(0), p.get(1), is);
          case ABOVE -> Relations.vertical(p.get(0), p.get(1), is);
          case HEIGHT -> Relations.equal(p.get(0).z(), is);
          case ANGLE -> Relations.angleToHorizontal(p.get(0), p.get(1), is);
          case RAKE -> Relations.angleToVertical(p.get(0), p.get(1), is);
          case MEASURE ->
              difference(
                  unknowns.measure(wish.measure()), is, Measures.dim(layout, wish.measure()));
          default -> null;
        };
    if (residual != null) {
      builder.wish(name, wish.weight(), residual);
    }
  }
}
