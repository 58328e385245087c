package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.longlow.constraints.machine.shop.SheetFold;

/**
 * The rim of a former of sheet metal, turned over until its outside lies on the skin: less than a
 * right angle where the skin leans outward. What the fold takes is another at each lean.
 */
final class FormerRim {

  /** Judgement: a rim is turned over no less and no more than this. */
  static final double LEAST_TURN_RAD = Math.toRadians(20);

  static final double MOST_TURN_RAD = SheetFold.MOST_RAD;

  /** Paces along an edge, mm. */
  private static final double PACE_MM = 3;

  /** Leans that change the flat sheet by less than this are one, mm. */
  private static final double ALIKE_MM = 0.002;

  /** Two edges that are nearer to straight than this have one lean. */
  private static final double STRAIGHT = 0.02;

  private static final int QUARTER = 32;

  private final Geometry line;
  private final FormerLean lean;
  private final double thicknessMm;
  private final List<LineSegment> edges = new ArrayList<>();

  FormerRim(Geometry line, FormerLean lean, double thicknessMm) {
    this.line = line;
    this.lean = lean;
    this.thicknessMm = thicknessMm;
    Geometry boundary = line.getBoundary();
    for (int i = 0; i < boundary.getNumGeometries(); i++) {
      Coordinate[] ring = boundary.getGeometryN(i).getCoordinates();
      for (int k = 0; k + 1 < ring.length; k++) {
        if (ring[k].distance(ring[k + 1]) > 0) {
          edges.add(new LineSegment(ring[k], ring[k + 1]));
        }
      }
    }
  }

  /** Returns the rim, so broad over its outside. */
  FormerCut.Flange of(double breadthMm) {
    double least = MOST_TURN_RAD;
    double most = LEAST_TURN_RAD;
    for (LineSegment s : edges) {
      int paces = (int) Math.max(1, Math.ceil(s.getLength() / PACE_MM));
      for (int k = 0; k < paces; k++) {
        double turn = turnRad(s, s.pointAlong((k + 0.5) / paces));
        least = Math.min(least, turn);
        most = Math.max(most, turn);
      }
    }
    double few = least;
    double many = most;
    boolean leg = breadthMm >= SheetFold.setBackMm(thicknessMm, most);
    return new FormerCut.Flange(
        breadthMm,
        least,
        most,
        deductionMm(least, leg),
        deductionMm(most, leg),
        SheetFold.setBackMm(thicknessMm, most),
        SheetFold.insideRadiusMm(thicknessMm),
        moved(turn -> breadthMm - deductionMm(turn, leg), few, many),
        moved(turn -> -deductionMm(turn, leg) / 2, few, many).getBoundary());
  }

  /** What a fold takes; nothing where its leg is too short to be folded so. */
  private double deductionMm(double turnRad, boolean leg) {
    return leg ? SheetFold.deductionMm(thicknessMm, turnRad) : 0;
  }

  /** How far the rim is turned over at a place of an edge. */
  private double turnRad(LineSegment s, Coordinate p) {
    double turn = Math.PI / 2 - lean.rad(p, lean.outward(s, p));
    return Math.max(LEAST_TURN_RAD, Math.min(MOST_TURN_RAD, turn));
  }

  /** Returns the section with its edge moved outward by as much as the turn there asks. */
  private Geometry moved(DoubleUnaryOperator byTurn, double leastRad, double mostRad) {
    double one = byTurn.applyAsDouble(leastRad);
    double other = byTurn.applyAsDouble(mostRad);
    Geometry even = widened(line, (one + other) / 2);
    if (Math.abs(one - other) < ALIKE_MM) {
      return even;
    }
    List<Geometry> moved = new ArrayList<>();
    for (int i = 0; i < even.getNumGeometries(); i++) {
      if (!(Densifier.densify(even.getGeometryN(i), PACE_MM) instanceof Polygon p)) {
        continue;
      }
      Geometry area = moved(p.getExteriorRing().getCoordinates(), byTurn);
      for (int k = 0; k < p.getNumInteriorRing(); k++) {
        area = area.difference(moved(p.getInteriorRingN(k).getCoordinates(), byTurn));
      }
      moved.add(area);
    }
    return Curves.FACTORY.buildGeometry(moved).union();
  }

  private Geometry moved(Coordinate[] ring, DoubleUnaryOperator byTurn) {
    List<Coordinate> out = new ArrayList<>();
    for (Coordinate c : ring) {
      Coordinate at = moved(c, byTurn);
      if (out.isEmpty() || !out.get(out.size() - 1).equals2D(at)) {
        out.add(at);
      }
    }
    out.set(out.size() - 1, out.get(0).copy());
    Polygon area = Curves.FACTORY.createPolygon(out.toArray(Coordinate[]::new));
    return area.isValid() ? area : area.buffer(0);
  }

  /** A place beside an edge as far from it as the turn there asks; by a corner, from both edges. */
  private Coordinate moved(Coordinate c, DoubleUnaryOperator byTurn) {
    LineSegment near = null;
    LineSegment next = null;
    double best = Double.POSITIVE_INFINITY;
    for (LineSegment s : edges) {
      double d = s.distance(c);
      if (d < best - 1e-9) {
        best = d;
        near = s;
        next = null;
      } else if (d < best + 1e-9) {
        next = s;
      }
    }
    Coordinate q = near.closestPoint(c);
    Coordinate u = lean.outward(near, near.midPoint());
    double by = byTurn.applyAsDouble(turnRad(near, q));
    if (next != null) {
      Coordinate v = lean.outward(next, next.midPoint());
      double other = byTurn.applyAsDouble(turnRad(next, q));
      double cross = u.x * v.y - u.y * v.x;
      if (Math.abs(cross) > STRAIGHT) {
        return new Coordinate(
            q.x + (by * v.y - other * u.y) / cross, q.y + (other * u.x - by * v.x) / cross);
      }
    }
    return new Coordinate(q.x + by * u.x, q.y + by * u.y);
  }

  /** Returns a section with its edge moved outward, corners kept sharp. */
  static Geometry widened(Geometry line, double byMm) {
    BufferParameters sharp =
        new BufferParameters(QUARTER, BufferParameters.CAP_ROUND, BufferParameters.JOIN_MITRE, 4);
    sharp.setSimplifyFactor(1e-4);
    return BufferOp.bufferOp(line, byMm, sharp);
  }
}
