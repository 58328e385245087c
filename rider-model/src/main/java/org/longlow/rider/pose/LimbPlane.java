package org.longlow.rider.pose;

import org.longlow.rider.geom.PointMm;

/**
 * The plane that a limb bends in, between its root (hip joint or acromion) and its target (foot
 * rest or grip), which may lie farther out than the root.
 *
 * <p>In the plane, x runs along the straight line from root to target, whose true length is {@link
 * #spanMm()}, and z square to it; a limb solved there keeps its true lengths and angles. {@link
 * #point} gives what the elevation shows of it: links that lead outwards are foreshortened. While
 * the plane is not swivelled, z is also what lies square to the line in the elevation, so that a
 * knee stands over its line and an elbow hangs under it; a limb whose root is as far out as its
 * target lies in the elevation itself.
 */
final class LimbPlane {

  /** A limb swivels no farther about its line, to either side; judgement. */
  static final double MOST_SWIVEL = Math.toRadians(45);

  /**
   * A middle joint nearer to its line than this swivels as if it were this far off, mm; judgement.
   * So a limb that comes to full stretch does not spin.
   */
  private static final double LEAST_LEVER_MM = 100;

  private static final double TINY = 1e-9;

  private final PointMm root;
  private final double rootYMm;
  private final double spanMm;
  private final PointMm seen;
  private final double tiltRad;
  private final PointMm along;
  private final double alongY;
  private final PointMm off;
  private final double offY;

  private LimbPlane(
      PointMm root, double rootYMm, double spanMm, PointMm seen, double tiltRad, double swivelRad) {
    this.root = root;
    this.rootYMm = rootYMm;
    this.spanMm = spanMm;
    this.seen = seen;
    this.tiltRad = tiltRad;
    along = seen.times(Math.cos(tiltRad));
    alongY = Math.sin(tiltRad);
    off = seen.left().times(Math.cos(swivelRad)).plus(seen.times(-alongY * Math.sin(swivelRad)));
    offY = Math.cos(tiltRad) * Math.sin(swivelRad);
  }

  /**
   * Returns the plane of a limb, not swivelled.
   *
   * @param rootYMm middle plane to the root, mm
   * @param targetYMm middle plane to the target on the same side, mm
   * @param fallback where the limb points in the elevation when its ends lie over each other
   */
  static LimbPlane between(
      PointMm root, double rootYMm, PointMm target, double targetYMm, PointMm fallback) {
    PointMm line = target.minus(root);
    double seenMm = line.length();
    double outMm = targetYMm - rootYMm;
    PointMm seen = seenMm > TINY ? line.times(1 / seenMm) : fallback;
    return new LimbPlane(
        root, rootYMm, Math.hypot(seenMm, outMm), seen, Math.atan2(outMm, seenMm), 0);
  }

  /**
   * Returns the plane turned about its line until a point of it is as far out as wished, or as near
   * to that as the limb swivels.
   *
   * @param inPlane with z ≥ 0
   */
  LimbPlane swivelled(PointMm inPlane, double wishYMm) {
    double lever = inPlane.z() * Math.cos(tiltRad);
    double missing = wishYMm - (rootYMm + alongY * inPlane.x());
    double most = Math.sin(MOST_SWIVEL);
    double sine = missing / Math.max(lever, LEAST_LEVER_MM);
    return new LimbPlane(
        root, rootYMm, spanMm, seen, tiltRad, Math.asin(Math.max(-most, Math.min(most, sine))));
  }

  /** Returns the true distance from root to target, mm. */
  double spanMm() {
    return spanMm;
  }

  /** Returns where the elevation shows a point of the plane. */
  PointMm point(PointMm inPlane) {
    return root.plus(along.times(inPlane.x())).plus(off.times(inPlane.z()));
  }

  /** Returns how far from the middle plane a point of the plane lies, mm. */
  double yMm(PointMm inPlane) {
    return rootYMm + alongY * inPlane.x() + offY * inPlane.z();
  }
}
