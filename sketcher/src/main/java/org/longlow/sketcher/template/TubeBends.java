package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.machine.shop.TubeBend;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.TubeLine;
import org.longlow.constraints.space.SpaceMm;
import org.longlow.rider.geom.PointMm;

/**
 * How a tube through pins is bent from one straight length.
 *
 * <p>A tube whose pins lie in one plane is turned about its axis by half a turn or not at all from
 * one bend to the next; one that leans across the machine by anything.
 *
 * <p>Centre-line geometry, no stretch: the neutral line of a round tube on a mandrel or die stays
 * near the centre line (shop practice). Each bend is a {@link TubeBend}; cut length = Σ legs − Σ 2t
 * + Σ BA, tangents and arcs (derived).
 *
 * @param legsMm from corner to corner, mm
 * @param bends in order from the first end; corners that are straight have none
 * @param cutMm length to cut, mm
 */
public record TubeBends(List<Double> legsMm, List<Bend> bends, double cutMm) {

  /**
   * One bend.
   *
   * @param pin the corner it rounds
   * @param angleRad how far the tube turns, rad; where it lies in one plane positive to the left
   *     (up, going forward), else always positive
   * @param radiusMm centre-line radius
   * @param reduced whether the radius asked for did not fit between its neighbours
   * @param startMm station of the start along the straight tube, from the first end
   * @param endMm station of the end along the straight tube
   * @param start where it starts, as seen from the side
   * @param end where it ends
   * @param in the way of the tube up to it, as seen from the side
   * @param out the way of the tube after it
   * @param straightMm how much straight tube lies before it, from the bend before or the first end
   * @param turnRad how far the tube is turned about its own axis after the bend before, seen from
   *     its first end, counter-clockwise, in (−π, π]; 0 for the first
   */
  public record Bend(
      String pin,
      double angleRad,
      double radiusMm,
      boolean reduced,
      double startMm,
      double endMm,
      PointMm start,
      PointMm end,
      PointMm in,
      PointMm out,
      double straightMm,
      double turnRad) {

    private TubeBend shape() {
      return new TubeBend(radiusMm, Math.abs(angleRad));
    }

    /** Returns the length of the centre line round the bend, mm. */
    public double arcMm() {
      return shape().allowanceMm();
    }

    /** Returns the distance from the corner to where the bend starts, mm. */
    public double tangentMm() {
      return shape().tangentMm();
    }

    /** Returns by how much the way round the bend is shorter than the way over the corner. */
    public double gainMm() {
      return shape().gainMm();
    }
  }

  /** Returns whether it is bent in space, since it leans across the machine. */
  public boolean leans() {
    return bends.stream()
        .anyMatch(b -> Math.min(b.in().length(), b.out().length()) < 1 - STRAIGHT_RAD);
  }

  /** Turns smaller than this are straight, rad. */
  private static final double STRAIGHT_RAD = 1e-6;

  public TubeBends {
    legsMm = List.copyOf(legsMm);
    bends = List.copyOf(bends);
  }

  /** Returns how {@code tube} is bent. */
  public static TubeBends of(TubePart tube, Places places) {
    return of(tube.path(), TubeLine.of(tube, places), places.value(tube.bendRadius()));
  }

  /**
   * Returns how a tube through {@code pins} of one plane is bent.
   *
   * @param names their names
   * @param pins at least two
   * @param radiusMm centre-line radius asked for
   */
  public static TubeBends of(List<String> names, List<PointMm> pins, double radiusMm) {
    return of(names, new TubeLine(pins.stream().map(p -> SpaceMm.of(p, 0)).toList()), radiusMm);
  }

  /** As the other, of corners in space. */
  static TubeBends of(List<String> names, TubeLine line, double radiusMm) {
    List<PointMm> flat = line.laidOut();
    List<Double> legs = new ArrayList<>();
    for (int i = 1; i < flat.size(); i++) {
      legs.add(flat.get(i - 1).distance(flat.get(i)));
    }
    List<Bend> bends = new ArrayList<>();
    double station = 0;
    double taken = 0;
    double since = 0;
    int before = 0;
    for (int i = 1; i < flat.size() - 1; i++) {
      PointMm in = flat.get(i).minus(flat.get(i - 1));
      PointMm out = flat.get(i + 1).minus(flat.get(i));
      double turn = Math.atan2(in.cross(out), in.dot(out));
      double fits = Curves.fittingRadius(flat, i, radiusMm);
      double straight = legs.get(i - 1) - taken;
      if (Math.abs(turn) < STRAIGHT_RAD || fits < 1e-9) {
        station += straight;
        since += straight;
        taken = 0;
        continue;
      }
      TubeBend bend = new TubeBend(fits, Math.abs(turn));
      double tangent = bend.tangentMm();
      double start = station + straight - tangent;
      double end = start + bend.allowanceMm();
      SpaceMm corner = line.corners().get(i);
      SpaceMm way = line.leg(i - 1).times(1 / legs.get(i - 1));
      SpaceMm on = line.leg(i).times(1 / legs.get(i));
      bends.add(
          new Bend(
              names.get(i),
              turn,
              fits,
              fits < radiusMm - 1e-6,
              start,
              end,
              corner.minus(way.times(tangent)).side(),
              corner.plus(on.times(tangent)).side(),
              way.side(),
              on.side(),
              since + straight - tangent,
              bends.isEmpty() ? 0 : line.planeTurnRad(before, i)));
      station = end;
      since = 0;
      taken = tangent;
      before = i;
    }
    double cut = station + legs.get(legs.size() - 1) - taken;
    return new TubeBends(legs, bends, cut);
  }
}
