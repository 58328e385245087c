package org.longlow.constraints.space;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/** The hull of points in space. */
public final class Hull extends Piece {

  private Hull(double[] points) {
    super(inOrder(points));
  }

  /** The order of points says nothing, so there is one for all. */
  private static double[] inOrder(double[] points) {
    double[][] each = new double[points.length / 3][];
    for (int i = 0; i < each.length; i++) {
      // no -0
      each[i] =
          new double[] {points[3 * i] + 0.0, points[3 * i + 1] + 0.0, points[3 * i + 2] + 0.0};
    }
    Arrays.sort(each, Arrays::compare);
    double[] ordered = new double[points.length];
    for (int i = 0; i < each.length; i++) {
      System.arraycopy(each[i], 0, ordered, 3 * i, 3);
    }
    return ordered;
  }

  /**
   * Returns the hull of some points.
   *
   * @param points x, y and z of each, mm; at least one
   */
  public static Hull of(List<double[]> points) {
    double[] all = new double[3 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      System.arraycopy(points.get(i), 0, all, 3 * i, 3);
    }
    return new Hull(all);
  }

  @Override
  Piece of(double[] numbers) {
    return new Hull(numbers);
  }

  @Override
  public List<double[][]> rings() {
    List<double[][]> all = new ArrayList<>();
    for (int i = 0; i < numbers.length; i += 3) {
      all.add(new double[][] {Arrays.copyOfRange(numbers, i, i + 3)});
    }
    return all;
  }

  @Override
  public Piece moved(RigidMotion motion) {
    double[] moved = numbers.clone();
    for (int i = 0; i < moved.length; i += 3) {
      PointMm p = motion.apply(new PointMm(moved[i], moved[i + 2]));
      moved[i] = p.x();
      moved[i + 2] = p.z();
    }
    return new Hull(moved);
  }

  @Override
  public Piece across(double mm) {
    return withY(1, mm);
  }

  @Override
  public Piece mirrored() {
    return withY(-1, 0);
  }

  private Hull withY(double times, double plus) {
    double[] changed = numbers.clone();
    for (int i = 1; i < changed.length; i += 3) {
      changed[i] = times * changed[i] + plus;
    }
    return new Hull(changed);
  }

  @Override
  public void farthest(double[] d, double[] out) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < numbers.length; i += 3) {
      double there = numbers[i] * d[0] + numbers[i + 1] * d[1] + numbers[i + 2] * d[2];
      if (there > most) {
        most = there;
        best = i;
      }
    }
    System.arraycopy(numbers, best, out, 0, 3);
  }
}
