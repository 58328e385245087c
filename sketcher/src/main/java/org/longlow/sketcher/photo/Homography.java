package org.longlow.sketcher.photo;

import java.util.List;
import java.util.Optional;
import org.longlow.rider.geom.PointMm;

/**
 * How a camera that looks at a plane maps its pixels to places of the plane: a projective map. What
 * the camera has before it has a positive third coordinate; the rest has no place on the plane.
 */
public final class Homography {

  private final double[] toPlane;
  private final double[] toPhoto;

  /**
   * @param toPlane row by row; positive third coordinate before the camera
   */
  private Homography(double[] toPlane, double[] toPhoto) {
    this.toPlane = toPlane;
    this.toPhoto = toPhoto;
  }

  /** Returns the map of a camera that looked straight on: each pixel is {@code scaleMm} long. */
  public static Homography straight(double scaleMm) {
    return new Homography(
        new double[] {scaleMm, 0, 0, 0, -scaleMm, 0, 0, 0, 1},
        new double[] {1 / scaleMm, 0, 0, 0, -1 / scaleMm, 0, 0, 0, 1});
  }

  /**
   * Returns the map that lays a rectangle flat, its lower left corner at the origin.
   *
   * <p>The map of the unit square to four points is Heckbert's (Fundamentals of texture mapping and
   * image warping, 1989, section 2.2.3); it is turned round by its adjugate.
   *
   * @param corners lower left, lower right, upper right, upper left; convex in that order
   * @param widthMm of the rectangle, &gt; 0
   * @param heightMm of the rectangle, &gt; 0
   */
  public static Homography of(List<Pixel> corners, double widthMm, double heightMm) {
    Pixel p = corners.get(0);
    Pixel q = corners.get(1);
    Pixel r = corners.get(2);
    Pixel s = corners.get(3);
    double ax = q.right() - r.right();
    double bx = s.right() - r.right();
    double cx = p.right() - q.right() + r.right() - s.right();
    double ay = q.down() - r.down();
    double by = s.down() - r.down();
    double cy = p.down() - q.down() + r.down() - s.down();
    double det = ax * by - bx * ay;
    double g = (cx * by - bx * cy) / det;
    double h = (ax * cy - cx * ay) / det;
    double[] square = {
      q.right() * (1 + g) - p.right(),
      s.right() * (1 + h) - p.right(),
      p.right(),
      q.down() * (1 + g) - p.down(),
      s.down() * (1 + h) - p.down(),
      p.down(),
      g,
      h,
      1
    };
    double[] toPhoto = new double[9];
    for (int row = 0; row < 9; row += 3) {
      toPhoto[row] = square[row] / widthMm;
      toPhoto[row + 1] = square[row + 1] / heightMm;
      toPhoto[row + 2] = square[row + 2];
    }
    double[] toPlane = adjugate(toPhoto);
    if (third(toPlane, p.right(), p.down()) < 0) {
      for (int i = 0; i < 9; i++) {
        toPlane[i] = -toPlane[i];
      }
    }
    return new Homography(toPlane, toPhoto);
  }

  private static double[] adjugate(double[] m) {
    return new double[] {
      m[4] * m[8] - m[5] * m[7], m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
      m[5] * m[6] - m[3] * m[8], m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
      m[3] * m[7] - m[4] * m[6], m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3]
    };
  }

  private static double third(double[] m, double x, double y) {
    return m[6] * x + m[7] * y + m[8];
  }

  /**
   * Returns how near the horizon a pixel is: 1 at one as far off as {@code beside}, less beyond, 0
   * on the horizon, negative above it.
   */
  double nearness(Pixel pixel, Pixel beside) {
    return third(toPlane, pixel.right(), pixel.down())
        / third(toPlane, beside.right(), beside.down());
  }

  /** Returns where on the plane a pixel is; empty at the horizon and above it. */
  public Optional<PointMm> onPlane(Pixel pixel) {
    double third = third(toPlane, pixel.right(), pixel.down());
    if (!(third > 0)) {
      return Optional.empty();
    }
    double x = toPlane[0] * pixel.right() + toPlane[1] * pixel.down() + toPlane[2];
    double z = toPlane[3] * pixel.right() + toPlane[4] * pixel.down() + toPlane[5];
    return Double.isFinite(x / third) && Double.isFinite(z / third)
        ? Optional.of(new PointMm(x / third, z / third))
        : Optional.empty();
  }

  /** Returns where on the photo a place of the plane is; empty if it lies behind the camera. */
  public Optional<Pixel> onPhoto(PointMm place) {
    double third = third(toPhoto, place.x(), place.z());
    if (!(third > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new Pixel(
            (toPhoto[0] * place.x() + toPhoto[1] * place.z() + toPhoto[2]) / third,
            (toPhoto[3] * place.x() + toPhoto[4] * place.z() + toPhoto[5]) / third));
  }
}
