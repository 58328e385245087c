package org.longlow.sketcher.template;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.space.SpaceMm;

/**
 * Where the end of a tube meets the side of another: how their middle lines pass each other.
 *
 * @param acuteRad angle between them, rad
 * @param offsetMm how far they pass each other by, mm, positive where the tube that ends lies to
 *     the side that {@code sideWord} names
 * @param alongMm where they pass, up the tube from its end, mm
 * @param sideWord which side that is on the machine
 */
record TubeCrossing(double acuteRad, double offsetMm, double alongMm, String sideWord) {

  /** Nearer to the middle plane than this a tube has no outboard side, mm. */
  private static final double MIDDLE_MM = 0.5;

  /**
   * Returns how an end meets a line between its own ends; empty where it does not, as seen along
   * what is square to both.
   *
   * @param away up the tube from its end
   * @param line of the other tube
   * @param radiusMm of the other tube
   */
  static Optional<TubeCrossing> of(SpaceMm at, SpaceMm away, List<SpaceMm> line, double radiusMm) {
    SpaceMm up = away.times(1 / away.length());
    for (int i = 1; i < line.size(); i++) {
      SpaceMm from = line.get(i - 1);
      SpaceMm way = line.get(i).minus(from);
      if (!(way.length() > 0)) {
        continue; // two pins in one place have no direction
      }
      SpaceMm d = way.times(1 / way.length());
      SpaceMm across = square(up, d, at);
      if (seen(at.minus(line.get(0)), across) < 2 * radiusMm
          || seen(at.minus(line.get(line.size() - 1)), across) < 2 * radiusMm) {
        continue;
      }
      SpaceMm flat = at.minus(from);
      flat = flat.minus(across.times(flat.dot(across)));
      double share = Math.max(0, Math.min(1, flat.dot(way) / way.dot(way)));
      SpaceMm off = at.minus(from.plus(way.times(share)));
      if (seen(off, across) < radiusMm) {
        double angle = up.angleRad(d);
        double cos = up.dot(d);
        double along = (cos * d.dot(off) - up.dot(off)) / Math.max(1e-9, 1 - cos * cos);
        return Optional.of(
            new TubeCrossing(
                Math.min(angle, Math.PI - angle), off.dot(across), along, word(across, at)));
      }
    }
    return Optional.empty();
  }

  /** How long something is, seen along a direction. */
  private static double seen(SpaceMm v, SpaceMm along) {
    return v.minus(along.times(v.dot(along))).length();
  }

  /** What is square to both, outboard, else forward or up; across where they run the same way. */
  private static SpaceMm square(SpaceMm up, SpaceMm d, SpaceMm at) {
    SpaceMm n = up.cross(d);
    if (!(n.length() > 1e-9)) {
      return new SpaceMm(0, 1, 0);
    }
    n = n.times(1 / n.length());
    double out = Math.abs(at.y()) < MIDDLE_MM ? n.y() : n.y() * at.y();
    double sign = isAcross(n) ? out : Math.abs(n.x()) >= Math.abs(n.z()) ? n.x() : n.z();
    return sign < 0 ? n.times(-1) : n;
  }

  private static boolean isAcross(SpaceMm n) {
    return Math.abs(n.y()) >= Math.max(Math.abs(n.x()), Math.abs(n.z()));
  }

  private static String word(SpaceMm n, SpaceMm at) {
    return isAcross(n)
        ? Math.abs(at.y()) < MIDDLE_MM ? "left" : "outboard"
        : Math.abs(n.x()) >= Math.abs(n.z()) ? "forward" : "up";
  }
}
