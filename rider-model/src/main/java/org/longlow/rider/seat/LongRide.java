package org.longlow.rider.seat;

import org.longlow.rider.body.Body;

/** What a pan does to somebody over a long ride, and what its cover must give. */
public final class LongRide {

  /**
   * Pressure under the sit bones over the greatest of the side view, 1: an order of magnitude,
   * common practice.
   */
  public static final double SIT_BONES = 2;

  /**
   * Pressure under the sit bones from which a seat numbs, kPa: drivers' seats are aimed at 10 to 30
   * (Diebschlag 1988, Reed 2000; from memory).
   */
  public static final double MOST_KPA = 30;

  /**
   * Mean pressure on the rear half of seats under 15 able-bodied sitters, kPa: up to 8.1 (BioMed
   * Eng OnLine 2018, s12938-018-0621-2, Table 2).
   */
  public static final double STUDIED_MEAN_KPA = 8.1;

  private LongRide() {}

  /** Returns the pressure under the sit bones on a pan, kPa. */
  public static double sitBonesKPa(CushionLoad pan) {
    return SIT_BONES * pan.peakKPa();
  }

  /**
   * Returns about what it is on another stack of foam, kPa, the person where they are.
   *
   * @param seat of {@code seated}
   */
  public static double sitBonesKPa(
      Body body, SeatGeometry seat, SeatOutcome.Seated seated, FoamStack other) {
    Underside outline = PanRate.outline(body, seat, seated);
    double force = seated.pan().normalN();
    double area = FoamContact.areaCm2(outline, FoamContact.press(other, outline, force).sinkMm());
    double helped = FoamContact.edgeFactor(FoamContact.EDGE_SHARE, other.thicknessMm(), area);
    return SIT_BONES * FoamContact.press(other, outline, force, helped).peakKPa();
  }

  /**
   * Returns by how much a cover must get longer along a pan to lie close to somebody pressed into
   * it, mm: the arc of the buttocks less its chord, on both sides of the lowest point.
   *
   * @param sinkMm how deep they sink
   * @param panWidthMm of the board
   */
  public static double coverGiveMm(Body body, double sinkMm, double panWidthMm) {
    Underside u = Underside.seatOf(body, panWidthMm);
    double r = u.radiusMm();
    double drop = Math.max(0, r - Math.max(0, sinkMm));
    double edge = Math.sqrt(r * r - drop * drop);
    return arcLessChord(r, Math.min(edge, -u.rearMm()))
        + arcLessChord(r, Math.min(edge, u.meetMm()));
  }

  private static double arcLessChord(double radius, double along) {
    return radius * Math.asin(Math.min(1, along / radius)) - along;
  }
}
