package org.longlow.constraints.space;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/** What is round about a line across the machine: the hull of circles about it. */
public final class Rings extends Piece {

  /** Corners of a crown from its top to the flank. */
  private static final int CROWN = 6;

  private final PointMm centre;
  private final double[] radius;
  private final double[] y;

  private Rings(PointMm centre, double[] radius, double[] y) {
    super(all(centre, radius, y));
    this.centre = centre;
    this.radius = radius;
    this.y = y;
  }

  /** Returns a cylinder. */
  public static Rings cylinder(PointMm centre, double radiusMm, double fromMm, double toMm) {
    return new Rings(centre, new double[] {radiusMm, radiusMm}, new double[] {fromMm, toMm});
  }

  /**
   * Returns a wheel with its tyre: the crown is an arc of the section radius as far as the tyre is
   * wide, and what is wider than that lies below it. The body is nowhere inside of that, and
   * outside of it by less than 1 % of the section radius.
   */
  public static Rings wheel(PointMm axle, Tyre tyre) {
    double half = tyre.widthMm() / 2;
    double crown = tyre.sectionRadiusMm();
    double low = tyre.freeRadiusMm() - crown;
    double end = crown > half ? Math.asin(half / crown) : Math.PI / 2;
    double step = end / CROWN;
    double round = crown / Math.cos(step / 2);
    double[] radius = new double[2 * (CROWN + 1)];
    double[] y = new double[radius.length];
    int n = 0;
    for (int side = -1; side <= 1; side += 2) {
      // tangents of the arc at its ends and at every step meet in these
      for (int k = 0; k < CROWN; k++) {
        y[n] = side * round * Math.sin((k + 0.5) * step);
        radius[n++] = low + round * Math.cos((k + 0.5) * step);
      }
      y[n] = side * half;
      radius[n++] = low + crown * Math.cos(end);
    }
    return new Rings(axle, radius, y);
  }

  private static double[] all(PointMm centre, double[] radius, double[] y) {
    double[] all = new double[2 + 2 * radius.length];
    all[0] = centre.x();
    all[1] = centre.z();
    System.arraycopy(radius, 0, all, 2, radius.length);
    System.arraycopy(y, 0, all, 2 + radius.length, radius.length);
    return all;
  }

  @Override
  Piece of(double[] n) {
    int count = (n.length - 2) / 2;
    return new Rings(
        new PointMm(n[0], n[1]),
        Arrays.copyOfRange(n, 2, 2 + count),
        Arrays.copyOfRange(n, 2 + count, n.length));
  }

  @Override
  public List<double[][]> rings() {
    List<double[][]> all = new ArrayList<>();
    for (int k = 0; k < y.length; k++) {
      double[] middle = {centre.x(), y[k], centre.z()};
      all.add(ring(middle, new double[] {1, 0, 0}, new double[] {0, 0, 1}, radius[k]));
    }
    return all;
  }

  @Override
  public Piece moved(RigidMotion motion) {
    return new Rings(motion.apply(centre), radius, y);
  }

  @Override
  public Piece across(double mm) {
    return new Rings(centre, radius, Arrays.stream(y).map(v -> v + mm).toArray());
  }

  @Override
  public Piece mirrored() {
    return new Rings(centre, radius, Arrays.stream(y).map(v -> -v).toArray());
  }

  @Override
  public void farthest(double[] d, double[] out) {
    double length = Math.hypot(d[0], d[2]);
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < y.length; k++) {
      double there = radius[k] * length + y[k] * d[1];
      if (there > most) {
        most = there;
        best = k;
      }
    }
    double share = length > 0 ? radius[best] / length : 0;
    out[0] = centre.x() + d[0] * share;
    out[1] = y[best];
    out[2] = centre.z() + d[2] * share;
  }
}
