package org.longlow.rider.pose;

/**
 * How far the road must be seen to stop, how far it is seen over a crest, and where lights hang.
 */
public final class RoadSight {

  /** Height of what crests are laid out to show, mm: 2.0 ft (TxDOT 4.11.1). */
  public static final double OBJECT_MM = 600;

  /** Height of the driver's eye that they are laid out for, mm: 3.5 ft (likewise). */
  public static final double DESIGN_EYE_MM = 1080;

  /** Time in which drivers are taken to react in that layout, s (likewise). */
  public static final double DESIGN_REACTION_S = 2.5;

  /** Deceleration that is laid out for, m/s² (likewise). */
  public static final double DESIGN_BRAKING = 3.4;

  /** Time in which a rider who looks reacts, s; common practice. */
  public static final double RIDER_REACTION_S = 1;

  /** Deceleration that a rider plans on a wet road, m/s²; liikenneturva.fi. */
  public static final double WET_BRAKING = 3.5;

  /** How far up a light at a stop line may hang, rad: 22° (MUTCD heights, eye 850 mm high). */
  public static final double LIGHT_RAD = Math.toRadians(22);

  /** How far beyond a stop line the nearest light hangs, mm: 40 ft (MUTCD, from memory). */
  private static final double LIGHT_OFF_MM = 12_200;

  /** Height of an eye from which it is up so far, mm. */
  private static final double LIGHT_EYE_MM = 850;

  private RoadSight() {}

  /**
   * Returns how far before such a light an eye has to stop to see it, mm: infinite where it sees no
   * higher than its own level.
   *
   * @param eyeMm height of the eye, mm
   * @param upRad how far up it sees, rad
   */
  public static double lightMm(double eyeMm, double upRad) {
    double over = LIGHT_EYE_MM + LIGHT_OFF_MM * Math.tan(LIGHT_RAD) - eyeMm;
    return upRad > 0 ? Math.max(LIGHT_OFF_MM, over / Math.tan(upRad)) : Double.POSITIVE_INFINITY;
  }

  /**
   * Returns the way to a stop, mm: v t + v² / 2 a.
   *
   * @param mms speed, mm/s
   * @param reactionS s
   * @param braking m/s², &gt; 0
   */
  public static double stopMm(double mms, double reactionS, double braking) {
    return mms * reactionS + mms * mms / (2000 * braking);
  }

  /**
   * Returns how far an object is seen over a crest, mm: √(2 R) (√h₁ + √h₂).
   *
   * @param crestMm radius of the crest, mm
   * @param eyeMm height of the eye, mm, ≥ 0
   */
  public static double crestMm(double crestMm, double eyeMm, double objectMm) {
    return Math.sqrt(2 * crestMm) * (Math.sqrt(eyeMm) + Math.sqrt(objectMm));
  }

  /** Returns how steeply down an eye looks over the top of a crest, rad, from its own level. */
  public static double crestDipRad(double crestMm, double eyeMm) {
    return Math.sqrt(2 * eyeMm / crestMm);
  }

  /**
   * Returns how far the same object is seen past something nearer: where that stands higher than
   * the top of the crest, its line m above which one looks meets the object's top s ahead where h₁
   * − m s = h₂ − s² / 2 R; 0 where it does not.
   *
   * @param lineRad elevation of the line over what is nearer, rad
   */
  public static double crestMm(double crestMm, double eyeMm, double objectMm, double lineRad) {
    double m = -Math.tan(lineRad);
    if (m >= crestDipRad(crestMm, eyeMm)) {
      return crestMm(crestMm, eyeMm, objectMm);
    }
    double inside = m * m - 2 * (eyeMm - objectMm) / crestMm;
    return inside < 0 ? 0 : Math.max(0, crestMm * (m + Math.sqrt(inside)));
  }

  /**
   * Returns how far ahead an object is on such a crest where its top goes up behind an edge that
   * hangs before the eye: with m the fall of the line under that edge, where h₁ − m s = h₂ − s² / 2
   * R first; infinite where it never does, 0 where it is behind it from the eye on.
   *
   * @param edgeRad elevation of the line under the edge, rad
   */
  public static double behindEdgeMm(double crestMm, double eyeMm, double objectMm, double edgeRad) {
    double m = -Math.tan(edgeRad);
    double inside = m * m - 2 * (eyeMm - objectMm) / crestMm;
    return inside < 0 || m < 0
        ? Double.POSITIVE_INFINITY
        : Math.max(0, crestMm * (m - Math.sqrt(inside)));
  }

  /** Returns the radius of the crest over which drivers see as far, mm. */
  public static double crestRadiusMm(double sightMm) {
    double heights = Math.sqrt(DESIGN_EYE_MM) + Math.sqrt(OBJECT_MM);
    return sightMm * sightMm / (2 * heights * heights);
  }
}
