package org.longlow.constraints.space;

import java.util.List;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/** A round bar along a line of one plane beside the middle, its ends round or cut square. */
public final class Rod extends Piece {

  private final PointMm from;
  private final PointMm to;
  private final PointMm along;
  private final double y;
  private final double radius;
  private final boolean roundFrom;
  private final boolean roundTo;

  public Rod(
      PointMm from, PointMm to, double yMm, double radiusMm, boolean roundFrom, boolean roundTo) {
    super(
        from.x(),
        from.z(),
        to.x(),
        to.z(),
        yMm,
        radiusMm,
        roundFrom || isBall(from, to) ? 1 : 0,
        roundTo || isBall(from, to) ? 1 : 0);
    this.from = from;
    this.to = to;
    double length = from.distance(to);
    boolean ball = isBall(from, to);
    this.along = ball ? new PointMm(1, 0) : to.minus(from).times(1 / length);
    this.y = yMm;
    this.radius = radiusMm;
    this.roundFrom = roundFrom || ball;
    this.roundTo = roundTo || ball;
  }

  private static boolean isBall(PointMm from, PointMm to) {
    return from.distance(to) < 1e-9;
  }

  /** Returns one end of its middle line in the elevation. */
  public PointMm from() {
    return from;
  }

  /** Returns the other end. */
  public PointMm to() {
    return to;
  }

  /** Returns where its middle line is across the machine, mm. */
  public double yMm() {
    return y;
  }

  public double radiusMm() {
    return radius;
  }

  @Override
  Piece of(double[] n) {
    return new Rod(
        new PointMm(n[0], n[1]), new PointMm(n[2], n[3]), n[4], n[5], n[6] > 0.5, n[7] > 0.5);
  }

  @Override
  public List<double[][]> rings() {
    return ofBar(radius, roundFrom, roundTo, (atTo, on, r) -> ring(atTo ? to : from, on, r));
  }

  private double[][] ring(PointMm end, double on, double radiusMm) {
    double[] middle = {end.x() + on * along.x(), y, end.z() + on * along.z()};
    double[] square = {-along.z(), 0, along.x()};
    return ring(middle, new double[] {0, 1, 0}, square, radiusMm);
  }

  @Override
  public Piece moved(RigidMotion motion) {
    return new Rod(motion.apply(from), motion.apply(to), y, radius, roundFrom, roundTo);
  }

  @Override
  public Piece across(double mm) {
    return new Rod(from, to, y + mm, radius, roundFrom, roundTo);
  }

  @Override
  public Piece mirrored() {
    return new Rod(from, to, -y, radius, roundFrom, roundTo);
  }

  @Override
  public void farthest(double[] d, double[] out) {
    double length = Math.sqrt(d[0] * d[0] + d[1] * d[1] + d[2] * d[2]);
    double on = d[0] * along.x() + d[2] * along.z();
    double square = Math.sqrt(Math.max(0, length * length - on * on));
    double atFrom = d[0] * from.x() + d[2] * from.z() + radius * (roundFrom ? length : square);
    double atTo = d[0] * to.x() + d[2] * to.z() + radius * (roundTo ? length : square);
    PointMm end = atTo > atFrom ? to : from;
    boolean round = atTo > atFrom ? roundTo : roundFrom;
    double over = round ? length : square;
    double share = over > 0 ? radius / over : 0;
    double less = round ? 0 : on;
    out[0] = end.x() + share * (d[0] - less * along.x());
    out[1] = y + share * d[1];
    out[2] = end.z() + share * (d[2] - less * along.z());
  }
}
