package org.longlow.constraints.space;

import java.util.List;
import org.longlow.constraints.machine.linkage.RigidMotion;

/** A round bar between any two places, its ends round or cut square. */
public final class Strut extends Piece {

  private final SpaceMm from;
  private final SpaceMm to;
  private final SpaceMm along;
  private final double radius;
  private final boolean roundFrom;
  private final boolean roundTo;

  /**
   * @param from one end of its middle line
   * @param to the other end, not in the same place
   */
  public Strut(SpaceMm from, SpaceMm to, double radiusMm, boolean roundFrom, boolean roundTo) {
    super(
        from.x(),
        from.y(),
        from.z(),
        to.x(),
        to.y(),
        to.z(),
        radiusMm,
        roundFrom ? 1 : 0,
        roundTo ? 1 : 0);
    this.from = from;
    this.to = to;
    double length = from.distance(to);
    this.along = length > 0 ? to.minus(from).times(1 / length) : new SpaceMm(1, 0, 0);
    this.radius = radiusMm;
    this.roundFrom = roundFrom;
    this.roundTo = roundTo;
  }

  @Override
  Piece of(double[] n) {
    return new Strut(
        new SpaceMm(n[0], n[1], n[2]), new SpaceMm(n[3], n[4], n[5]), n[6], n[7] > 0.5, n[8] > 0.5);
  }

  @Override
  public List<double[][]> rings() {
    return ofBar(radius, roundFrom, roundTo, (atTo, on, r) -> ring(atTo ? to : from, on, r));
  }

  private double[][] ring(SpaceMm end, double on, double radiusMm) {
    SpaceMm least =
        Math.abs(along.y()) < 0.9 ? new SpaceMm(0, 1, 0) : new SpaceMm(1, 0, 0); // not along it
    SpaceMm a = along.cross(least);
    a = a.times(1 / a.length());
    SpaceMm b = along.cross(a);
    return ring(three(end.plus(along.times(on))), three(a), three(b), radiusMm);
  }

  private static double[] three(SpaceMm p) {
    return new double[] {p.x(), p.y(), p.z()};
  }

  private Strut between(SpaceMm a, SpaceMm b) {
    return new Strut(a, b, radius, roundFrom, roundTo);
  }

  @Override
  public Piece moved(RigidMotion motion) {
    return between(
        SpaceMm.of(motion.apply(from.side()), from.y()),
        SpaceMm.of(motion.apply(to.side()), to.y()));
  }

  @Override
  public Piece across(double mm) {
    SpaceMm by = new SpaceMm(0, mm, 0);
    return between(from.plus(by), to.plus(by));
  }

  @Override
  public Piece mirrored() {
    return between(SpaceMm.of(from.side(), -from.y()), SpaceMm.of(to.side(), -to.y()));
  }

  @Override
  public void farthest(double[] d, double[] out) {
    SpaceMm way = new SpaceMm(d[0], d[1], d[2]);
    double length = way.length();
    double on = way.dot(along);
    double square = Math.sqrt(Math.max(0, length * length - on * on));
    double atFrom = way.dot(from) + radius * (roundFrom ? length : square);
    double atTo = way.dot(to) + radius * (roundTo ? length : square);
    SpaceMm end = atTo > atFrom ? to : from;
    boolean round = atTo > atFrom ? roundTo : roundFrom;
    double over = round ? length : square;
    SpaceMm aside = round ? way : way.minus(along.times(on));
    SpaceMm at = over > 0 ? end.plus(aside.times(radius / over)) : end;
    out[0] = at.x();
    out[1] = at.y();
    out[2] = at.z();
  }
}
