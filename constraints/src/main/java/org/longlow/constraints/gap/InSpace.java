package org.longlow.constraints.gap;

import java.util.List;
import org.longlow.constraints.space.Convex;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Separation;
import org.longlow.rider.geom.PointMm;

/**
 * How far apart two faces are of which one at least does not fill its outline over its breadth: the
 * distance of what they are made of.
 *
 * @param mm the distance; 0 where they touch or overlap
 * @param where the middle between them in the elevation; null at 0
 */
record InSpace(double mm, PointMm where) {

  /** Less in each other than this, as a share of their size, is a touch. */
  private static final double TOUCH = 1e-4;

  /** Returns that distance where it is less than a cut, else null. */
  static InSpace of(Face a, Face b, double cutMm) {
    Separation separation = Separation.fine();
    double least = cutMm;
    PointMm where = null;
    List<Piece> others = b.convex();
    for (Piece p : a.convex()) {
      for (Piece q : others) {
        if (p.box().apartMm(q.box()) >= least) {
          continue;
        }
        begin(separation, p, q);
        double mm = separation.mm(p, q, least);
        if (mm <= 0) {
          return new InSpace(0, null);
        }
        if (mm < least) {
          // what is as far as asked is not to fall short by that bound
          least = mm + Separation.FINE_MM;
          double[] middle = new double[3];
          separation.between(middle);
          where = new PointMm(middle[0], middle[2]);
        }
      }
    }
    return where == null ? null : new InSpace(least, where);
  }

  /** Returns whether two faces have more in common than a touch. */
  static boolean overlap(Face a, Face b) {
    Separation separation = new Separation();
    List<Piece> others = b.convex();
    for (Piece p : a.convex()) {
      for (Piece q : others) {
        if (p.box().apartMm(q.box()) > 0) {
          continue;
        }
        begin(separation, p, q);
        // what is left of both apart when they are a little smaller, only touches
        if (separation.mm(new Smaller(p), new Smaller(q), Nearest.TOUCH_MM) <= 0) {
          return true;
        }
      }
    }
    return false;
  }

  private static void begin(Separation separation, Piece p, Piece q) {
    Piece.Box a = p.box();
    Piece.Box b = q.box();
    separation.begin(
        a.middle(0) - b.middle(0), a.middle(1) - b.middle(1), a.middle(2) - b.middle(2));
  }

  /** A body drawn together about its middle by the share of a touch. */
  private record Smaller(Piece body) implements Convex {
    @Override
    public void farthest(double[] d, double[] out) {
      body.farthest(d, out);
      for (int k = 0; k < 3; k++) {
        out[k] += TOUCH * (body.box().middle(k) - out[k]);
      }
    }
  }
}
