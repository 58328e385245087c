package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.space.SpaceMm;
import org.longlow.rider.geom.PointMm;

/**
 * The middle line of a tube in space, from corner to corner.
 *
 * @param corners where its pins are, at least two
 */
public record TubeLine(List<SpaceMm> corners) {

  /** Places across that differ by less are one, mm. */
  private static final double LEVEL_MM = 1e-9;

  /** A turn that is as good as none, or as a half one, has no plane. */
  private static final double NO_PLANE = 1e-9;

  public TubeLine {
    corners = List.copyOf(corners);
  }

  /** Returns that of a tube on the side that its places say. */
  public static TubeLine of(TubePart tube, Places places) {
    List<SpaceMm> corners = new ArrayList<>();
    for (TubePart.Corner c : tube.corners()) {
      corners.add(SpaceMm.of(places.pin(c.pin()), places.value(c.y().orElse(tube.y()))));
    }
    return new TubeLine(corners);
  }

  /** Returns whether all of it lies beside the middle plane at one distance. */
  public boolean isLevel() {
    double y = corners.get(0).y();
    return corners.stream().allMatch(c -> Math.abs(c.y() - y) <= LEVEL_MM);
  }

  /** Returns on which side of the machine most of it is. */
  public String sideWord() {
    return corners.stream().mapToDouble(SpaceMm::y).sum() < 0 ? "right" : "left";
  }

  /** Returns the way from one corner to the next. */
  public SpaceMm leg(int i) {
    return corners.get(i + 1).minus(corners.get(i));
  }

  /**
   * Returns corners in one plane with the same legs and turns: those of the elevation where it lies
   * in one plane beside it, else all turned to the left. Lengths, radii that fit, and where bends
   * start are the same on it.
   */
  public List<PointMm> laidOut() {
    if (isLevel()) {
      return corners.stream().map(SpaceMm::side).toList();
    }
    List<PointMm> flat = new ArrayList<>(List.of(PointMm.ORIGIN));
    double way = 0;
    for (int i = 0; i + 1 < corners.size(); i++) {
      way += i == 0 ? 0 : leg(i - 1).angleRad(leg(i));
      flat.add(flat.get(i).plus(PointMm.unit(way).times(leg(i).length())));
    }
    return flat;
  }

  /**
   * Returns how far the plane of the bend at one corner is turned from that at an earlier one, rad,
   * in (−π, π], right-handed about the leg between them, which must be straight.
   */
  public double planeTurnRad(int earlier, int corner) {
    SpaceMm axis = leg(corner - 1);
    SpaceMm one = leg(earlier - 1).cross(leg(earlier));
    SpaceMm next = leg(corner - 1).cross(leg(corner));
    double turn = Math.atan2(one.cross(next).dot(axis) / axis.length(), one.dot(next));
    return turn <= -Math.PI + NO_PLANE ? Math.PI : turn;
  }

  /** Returns its line with bends of a radius, or of what fits, as chords. */
  public List<SpaceMm> bent(double radiusMm) {
    List<PointMm> flat = laidOut();
    List<SpaceMm> line = new ArrayList<>(List.of(corners.get(0)));
    for (int i = 1; i + 1 < corners.size(); i++) {
      SpaceMm in = leg(i - 1).times(1 / Math.max(LEVEL_MM, leg(i - 1).length()));
      SpaceMm out = leg(i).times(1 / Math.max(LEVEL_MM, leg(i).length()));
      double turn = in.angleRad(out);
      double fits = Curves.fittingRadius(flat, i, radiusMm);
      SpaceMm square = in.cross(out).cross(in);
      if (turn < NO_PLANE || fits < NO_PLANE || turn > Math.PI - NO_PLANE) {
        line.add(corners.get(i));
        continue;
      }
      SpaceMm inward = square.times(1 / square.length());
      SpaceMm start = corners.get(i).minus(in.times(fits * Math.tan(turn / 2)));
      int pieces = Curves.chords(fits, turn);
      for (int k = 0; k <= pieces; k++) {
        double a = turn * k / pieces;
        line.add(
            start.plus(in.times(fits * Math.sin(a))).plus(inward.times(fits * (1 - Math.cos(a)))));
      }
    }
    line.add(corners.get(corners.size() - 1));
    return line;
  }
}
