package org.longlow.constraints.place;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.machine.chassis.BeltRun;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.relation.Circles;
import org.longlow.constraints.solve.relation.CurvedOutlines;
import org.longlow.constraints.solve.relation.Paths;
import org.longlow.constraints.solve.relation.Relations;
import org.longlow.rider.geom.PointMm;

/** Turns the ties of a layout into relations of the solver. */
final class TieBuilder {

  private static final Quantity ZERO = Quantity.of(0);

  private final Layout layout;
  private final Unknowns unknowns;

  TieBuilder(Layout layout, Unknowns unknowns) {
    this.layout = layout;
    this.unknowns = unknowns;
  }

  List<Relation> relations(Tie tie) {
    List<Pt> p = tie.pins().stream().map(unknowns::point).toList();
    Quantity is = tie.is().map(unknowns::quantity).orElse(ZERO);
    List<Quantity> radii = tie.radii().stream().map(unknowns::quantity).toList();
    return switch (tie.kind()) {
      case TOGETHER, SAME_CENTRE -> List.of(Relations.coincide(p.get(0), p.get(1)));
      case NAILED -> {
        PointMm at = unknowns.drawn(tie.pins().get(0));
        yield List.of(Relations.fix(p.get(0), at.x(), at.z()));
      }
      case DISTANCE -> List.of(Relations.distance(p.get(0), p.get(1), is));
      case AHEAD -> List.of(Relations.horizontal(p.get(0), p.get(1), is));
      case ABOVE -> List.of(Relations.vertical(p.get(0), p.get(1), is));
      case HEIGHT -> List.of(Relations.equal(p.get(0).z(), is));
      case ANGLE -> List.of(Relations.angleToHorizontal(p.get(0), p.get(1), is));
      case RAKE -> List.of(Relations.angleToVertical(p.get(0), p.get(1), is));
      case ANGLE_BETWEEN ->
          List.of(Relations.angleBetween(p.get(0), p.get(1), p.get(2), p.get(3), is));
      case PARALLEL -> List.of(Relations.parallel(p.get(0), p.get(1), p.get(2), p.get(3)));
      case SQUARE_TO -> List.of(Relations.perpendicular(p.get(0), p.get(1), p.get(2), p.get(3)));
      case IN_LINE -> List.of(Relations.pointOnLine(p.get(0), p.get(1), p.get(2)));
      case BESIDE -> List.of(Relations.pointToLine(p.get(0), p.get(1), p.get(2), is));
      case ON_CIRCLE, ON_ARC -> List.of(Circles.pointOnCircle(p.get(0), p.get(1), radii.get(0)));
      case ON_EDGE -> onEdge(tie, p.get(0));
      case TANGENT_LINE -> List.of(tangentLine(tie, p, radii.get(0)));
      case TANGENT_CIRCLES -> List.of(tangentCircles(tie, p, radii));
      case AS_LONG_AS, AS_ROUND_AS ->
          List.of(Relations.equalLength(p.get(0), p.get(1), p.get(2), p.get(3)));
      case PART_WAY -> List.of(Relations.alongLine(p.get(0), p.get(1), p.get(2), is));
      case HALFWAY -> List.of(Relations.midpoint(p.get(0), p.get(1), p.get(2)));
      case MIRRORED -> List.of(Relations.mirror(p.get(0), p.get(1), p.get(2), p.get(3)));
      case PATH_LENGTH -> List.of(Paths.tubeLength(p, radii.get(0), is));
      case BELT_LENGTH -> List.of(belt(tie, p, radii, is));
      case ONE_PIECE -> rigid(tie, p);
      case FORMULA -> List.of(Relations.equal(is, ZERO));
    };
  }

  /** The line keeps the side of the circle on which it is drawn. */
  private Relation tangentLine(Tie tie, List<Pt> p, Quantity radius) {
    PointMm a = unknowns.drawn(tie.pins().get(0));
    PointMm b = unknowns.drawn(tie.pins().get(1));
    PointMm c = unknowns.drawn(tie.pins().get(2));
    boolean left = b.minus(a).cross(c.minus(a)) >= 0;
    return Circles.tangentLine(
        p.get(2), radius, p.get(0), p.get(1), left ? Circles.Side.LEFT : Circles.Side.RIGHT);
  }

  /** For an inside tangency the larger circle, as drawn, is the outer one. */
  private Relation tangentCircles(Tie tie, List<Pt> p, List<Quantity> radii) {
    if (!tie.inside()) {
      return Circles.tangentOutside(p.get(0), radii.get(0), p.get(1), radii.get(1));
    }
    boolean firstOuter =
        unknowns.startValue(tie.radii().get(0)) >= unknowns.startValue(tie.radii().get(1));
    int outer = firstOuter ? 0 : 1;
    return Circles.tangentInside(
        p.get(outer), radii.get(outer), p.get(1 - outer), radii.get(1 - outer));
  }

  /** A belt runs round the outside of its wheels as they are drawn, but of those on its back. */
  private Relation belt(Tie tie, List<Pt> p, List<Quantity> radii, Quantity length) {
    if (p.size() == 2) {
      return Paths.openBelt(p.get(0), radii.get(0), p.get(1), radii.get(1), length);
    }
    boolean left = BeltRun.turnsLeft(tie.pins().stream().map(unknowns::drawn).toList());
    List<Paths.Wheel> wheels = new ArrayList<>();
    for (int i = 0; i < p.size(); i++) {
      boolean back = tie.run().back().contains(tie.pins().get(i));
      wheels.add(
          new Paths.Wheel(
              p.get(i), radii.get(i), left != back ? Circles.Side.LEFT : Circles.Side.RIGHT));
    }
    return Paths.belt(wheels, length);
  }

  private List<Relation> rigid(Tie tie, List<Pt> p) {
    PointMm a = unknowns.drawn(tie.pins().get(0));
    PointMm b = unknowns.drawn(tie.pins().get(1));
    List<Relation> relations = new ArrayList<>();
    double length = a.distance(b);
    relations.add(Relations.distance(p.get(0), p.get(1), length));
    PointMm along = b.minus(a);
    double square = Math.max(along.dot(along), 1e-12);
    for (int i = 2; i < p.size(); i++) {
      PointMm local = unknowns.drawn(tie.pins().get(i)).minus(a);
      relations.addAll(
          List.of(
              Relations.attached(
                  p.get(i),
                  p.get(0),
                  p.get(1),
                  Quantity.of(along.dot(local) / square),
                  Quantity.of(along.cross(local) / square))));
    }
    return relations;
  }

  /** Between the ends of the edge, straight or smooth. */
  private List<Relation> onEdge(Tie tie, Pt p) {
    List<Pt> vertices = EdgePoints.vertices(layout, unknowns, tie.part());
    Part part = layout.parts().get(tie.part());
    return List.of(CurvedOutlines.on(p, vertices, EdgePoints.edge(part, tie.edge())));
  }
}
