package org.longlow.constraints.space;

import java.util.List;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/** A convex outline of the elevation over a breadth. */
public final class Block extends Piece {

  /** How many of its numbers are corners. */
  private final int corners;

  private Block(double[] numbers) {
    super(numbers);
    corners = numbers.length - 2;
  }

  /**
   * @param ring x and z of its corners in turn, mm
   * @param from its right end across the machine, mm
   * @param to its left end
   */
  public Block(double[] ring, double from, double to) {
    this(with(ring, from, to));
  }

  private static double[] with(double[] ring, double from, double to) {
    double[] all = new double[ring.length + 2];
    System.arraycopy(ring, 0, all, 0, ring.length);
    all[ring.length] = from;
    all[ring.length + 1] = to;
    return all;
  }

  @Override
  Piece of(double[] numbers) {
    return new Block(numbers);
  }

  @Override
  public List<double[][]> rings() {
    return List.of(ring(numbers[corners]), ring(numbers[corners + 1]));
  }

  private double[][] ring(double y) {
    double[][] ring = new double[corners / 2][];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = new double[] {numbers[2 * i], y, numbers[2 * i + 1]};
    }
    return ring;
  }

  @Override
  public Piece moved(RigidMotion motion) {
    double[] moved = numbers.clone();
    for (int i = 0; i < corners; i += 2) {
      PointMm p = motion.apply(new PointMm(moved[i], moved[i + 1]));
      moved[i] = p.x();
      moved[i + 1] = p.z();
    }
    return new Block(moved);
  }

  @Override
  public Piece across(double mm) {
    return between(numbers[corners] + mm, numbers[corners + 1] + mm);
  }

  @Override
  public Piece mirrored() {
    return between(-numbers[corners + 1], -numbers[corners]);
  }

  private Block between(double from, double to) {
    double[] changed = numbers.clone();
    changed[corners] = from;
    changed[corners + 1] = to;
    return new Block(changed);
  }

  @Override
  public void farthest(double[] d, double[] out) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < corners; i += 2) {
      double there = numbers[i] * d[0] + numbers[i + 1] * d[2];
      if (there > most) {
        most = there;
        best = i;
      }
    }
    out[0] = numbers[best];
    out[1] = numbers[d[1] > 0 ? corners + 1 : corners];
    out[2] = numbers[best + 1];
  }
}
