package org.longlow.constraints.start;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.seat.Sitting;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Comfort;
import org.longlow.rider.pose.PoseResult;

/**
 * What a place for hands or feet costs those who sit, on the scale of {@link Comfort#cost}: 1 is 13
 * degrees outside a comfortable band.
 */
final class Costs {

  /** Discomfort of a millimetre out of reach, or of one that something is in the way. */
  private static final double MM_COST = 0.05;

  /** What must not be costs so much more than what should not. */
  private static final double HARD = 20;

  private static final int LEGS_FROM = 1;
  private static final int LEGS_TO = 3;
  private static final int ARM = 4;
  private static final int ELBOW = 5;
  private static final int HAMSTRING = 8;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Costs() {}

  /** Of hip, knee, ankle and hamstrings, by the strays of {@link Comfort#strays}. */
  static double legs(double[] strays) {
    double cost = strays[HAMSTRING] * strays[HAMSTRING];
    for (int k = LEGS_FROM; k <= LEGS_TO; k++) {
      cost += strays[k] * strays[k];
    }
    return cost;
  }

  static double arms(double[] strays) {
    return strays[ARM] * strays[ARM] + strays[ELBOW] * strays[ELBOW];
  }

  static double shortfall(Sitting s, PoseResult.Limb limb) {
    return s.seated().orElseThrow().pose().shortfalls().stream()
        .filter(f -> f.limb() == limb)
        .mapToDouble(f -> 1 + MM_COST * f.mm())
        .sum();
  }

  /** Of a length that is less than it must be, mm. */
  static double below(double value, double least) {
    return Math.max(0, least - value) * MM_COST;
  }

  /** Of a length that may hardly be less, whatever else it costs, mm. */
  static double must(double value, double least) {
    return HARD * below(value, least);
  }

  /** Of a gap to somebody: wished to be this wide, and hardly ever less than is asked. */
  static double clear(double gapMm, double easyMm) {
    double asked = Draft.mmOf(Demands.Key.PERSON_GAP) + 4;
    return below(gapMm, easyMm) + must(gapMm, asked);
  }

  /** How far a place is from a limb as seen from the side, mm; negative inside. */
  static double away(Sitting s, String limb, PointMm from) {
    Geometry point = FACTORY.createPoint(new Coordinate(from.x(), from.z()));
    return s.flesh().stream()
        .filter(f -> f.name().equals(limb))
        .mapToDouble(
            f -> {
              Geometry flesh = f.outline();
              return flesh.contains(point)
                  ? -flesh.getBoundary().distance(point)
                  : flesh.distance(point);
            })
        .min()
        .orElse(Double.MAX_VALUE);
  }
}
