package org.longlow.svg.page;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * A placement: x' = m00 x + m01 y + m02, y' = m10 x + m11 y + m12. All finite, and the plane is not
 * mirrored (determinant greater than 0): a mirrored template would be cut for the wrong side.
 */
public record Affine(double m00, double m01, double m02, double m10, double m11, double m12) {

  /** Leaves everything where it is. */
  public static final Affine IDENTITY = new Affine(1, 0, 0, 0, 1, 0);

  public Affine {
    double determinant = m00 * m11 - m01 * m10;
    if (!(determinant > 0)
        || !Double.isFinite(determinant)
        || !Double.isFinite(m02)
        || !Double.isFinite(m12)) {
      throw new IllegalArgumentException(
          "placement must be finite and must not mirror or flatten, got ["
              + m00
              + " "
              + m01
              + " "
              + m02
              + "; "
              + m10
              + " "
              + m11
              + " "
              + m12
              + "]");
    }
  }

  /** Returns a move by (dx, dy) mm. */
  public static Affine move(double dx, double dy) {
    return new Affine(1, 0, dx, 0, 1, dy);
  }

  /** Returns a scaling about the origin. */
  public static Affine scale(double sx, double sy) {
    return new Affine(sx, 0, 0, 0, sy, 0);
  }

  /** Returns this placement followed by another. */
  public Affine then(Affine o) {
    return new Affine(
        o.m00 * m00 + o.m01 * m10,
        o.m00 * m01 + o.m01 * m11,
        o.m00 * m02 + o.m01 * m12 + o.m02,
        o.m10 * m00 + o.m11 * m10,
        o.m10 * m01 + o.m11 * m11,
        o.m10 * m02 + o.m11 * m12 + o.m12);
  }

  /** Returns the box round a transformed box. */
  public Envelope of(Envelope e) {
    Envelope out = new Envelope();
    for (double x : new double[] {e.getMinX(), e.getMaxX()}) {
      for (double y : new double[] {e.getMinY(), e.getMaxY()}) {
        out.expandToInclude(m00 * x + m01 * y + m02, m10 * x + m11 * y + m12);
      }
    }
    return out;
  }

  /** Returns the same as a JTS transformation. */
  public AffineTransformation toJts() {
    return new AffineTransformation(m00, m01, m02, m10, m11, m12);
  }
}
