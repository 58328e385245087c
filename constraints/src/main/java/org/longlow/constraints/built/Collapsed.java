package org.longlow.constraints.built;

import java.util.List;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.shape.Places;

/**
 * Ties that hold only since a line they go by has shrunk to a point: any pin is in line with two
 * that lie in one spot. No machine is built so, and the tie does not hold on it.
 */
final class Collapsed {

  /** Pins nearer to each other give no direction, mm; judgement. */
  private static final double POINT_MM = 1;

  private Collapsed() {}

  /** Returns whether a line of {@code tie} is none any more. */
  static boolean is(Tie tie, Places plan, Places now) {
    List<String> p = tie.pins();
    return switch (tie.kind()) {
      case ANGLE, RAKE, TANGENT_LINE -> isPoint(p.get(0), p.get(1), plan, now);
      case IN_LINE, BESIDE -> isPoint(p.get(1), p.get(2), plan, now);
      case MIRRORED -> isPoint(p.get(2), p.get(3), plan, now);
      case ANGLE_BETWEEN, PARALLEL, SQUARE_TO ->
          isPoint(p.get(0), p.get(1), plan, now) || isPoint(p.get(2), p.get(3), plan, now);
      default -> false;
    };
  }

  private static boolean isPoint(String a, String b, Places plan, Places now) {
    return now.pin(a).distance(now.pin(b)) < POINT_MM
        && plan.pin(a).distance(plan.pin(b)) >= POINT_MM;
  }
}
