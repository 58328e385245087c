package org.longlow.rider.seat;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.OutOfRange;

/**
 * The loaded underside of a body part along a board, as seen from the side.
 *
 * <p>A circle that touches the free foam surface at s = 0, and ahead of it a straight part that
 * lies {@code flatGapMm} above the surface at that moment. s runs along the board, mm.
 *
 * @param radiusMm circle, mm, &gt; 0
 * @param flatGapMm height of the straight part, mm, in (0, radius]; the radius means there is none
 * @param rearMm rear end of the part, mm, ≤ 0
 * @param frontMm front end of the part, mm, ≥ 0
 * @param widthM effective width across the seat, m, &gt; 0
 */
public record Underside(
    double radiusMm, double flatGapMm, double rearMm, double frontMm, double widthM) {

  /** Buttock circle, mm; own calibration against published mean pressures. */
  public static final double BUTTOCK_RADIUS_MM = 130;

  /** Underside of the thigh above the lowest buttock, mm; own calibration. */
  public static final double THIGH_GAP_MM = 25;

  /** Rear end of the buttock, mm; own calibration. */
  public static final double BUTTOCK_REAR_MM = -110;

  /** Seat edge ahead of the lowest buttock, mm; own calibration. */
  public static final double THIGH_FRONT_MM = 300;

  /** Effective width of the seat contact, m; own calibration (546 N on 60 mm of 170 N foam). */
  public static final double SEAT_WIDTH_M = 0.28;

  /**
   * Hip breadth and buttock-popliteal length of the mean man of the survey, mm: the scale's base.
   */
  private static final double MEAN_HIP_BREADTH_MM = 379.3;

  private static final double MEAN_BUTTOCK_POPLITEAL_MM = 502.92;

  /** Effective width of a skull or helmet on a rest, m; judgement. */
  private static final double HEAD_WIDTH_M = 0.10;

  public Underside {
    boolean fits =
        radiusMm > 0
            && radiusMm <= 10_000
            && flatGapMm > 0
            && flatGapMm <= radiusMm
            && rearMm <= 0
            && rearMm >= -10_000
            && frontMm >= 0
            && frontMm <= 10_000
            && widthM > 0
            && widthM <= 10;
    if (!fits) {
      throw new OutOfRange(
          "outline needs radius > 0, flat gap in (0, radius], rear <= 0 <= front (mm) and width > 0"
              + " (m), got "
              + radiusMm
              + ", "
              + flatGapMm
              + ", "
              + rearMm
              + ", "
              + frontMm
              + ", "
              + widthM);
    }
  }

  /**
   * Returns a person's buttock and thigh: width with hip breadth, length with buttock-popliteal
   * length (judgement; the mean man of the survey gets the calibrated outline).
   *
   * @param boardWidthMm the contact is never wider than the board, mm
   */
  public static Underside seatOf(Body body, double boardWidthMm) {
    double width = SEAT_WIDTH_M * body.measures().get("hipbreadthsitting") / MEAN_HIP_BREADTH_MM;
    double length =
        THIGH_FRONT_MM * body.measures().get("buttockpopliteallength") / MEAN_BUTTOCK_POPLITEAL_MM;
    return new Underside(
        BUTTOCK_RADIUS_MM,
        THIGH_GAP_MM,
        BUTTOCK_REAR_MM,
        length,
        Math.min(width, boardWidthMm / 1000));
  }

  /** Returns a person's head, helmet and all, on a rest. */
  public static Underside headOf(Body body, double boardWidthMm) {
    double r = body.head().radiusMm();
    return new Underside(r, r, -r, r, Math.min(HEAD_WIDTH_M, boardWidthMm / 1000));
  }

  /** Returns where circle and straight part meet, mm. */
  double meetMm() {
    double drop = radiusMm - flatGapMm;
    return Math.min(frontMm, Math.sqrt(radiusMm * radiusMm - drop * drop));
  }

  /** Returns the part of this outline between two stations; null when nothing is left. */
  Underside clipped(double rear, double front) {
    double r = Math.max(rearMm, rear);
    double f = Math.min(frontMm, front);
    if (!(r <= 0 && f >= 0 && f > r)) {
      return null;
    }
    return r == rearMm && f == frontMm ? this : new Underside(radiusMm, flatGapMm, r, f, widthM);
  }
}
