package org.longlow.rider.seat;

/**
 * Choices for seating.
 *
 * @param handsShare part of body weight on the grips, in [0, 0.1]; hands on the thighs carry none
 * @param backCentreShare height of the back's resultant over hip-shoulder length: {@link
 *     #CONTACT_CENTRE} puts it at the middle of the contact that the board really gives (0.60 for a
 *     full-length back) and keeps the trunk parallel to the board; a number in [0.3, 1.2], such as
 *     0.75 for shoulder-blade contact, tilts the trunk in the foam until the pressure acts there
 * @param edgeShare share of the contact's rim with spare foam, in [0, 1], for the hip's height
 * @param brakingG braking, g, in [0, 2]
 * @param bracingN rearward push of braced legs, N, in [0, 5000]
 */
public record SettleOptions(
    double handsShare, double backCentreShare, double edgeShare, double brakingG, double bracingN) {

  /** The back's resultant lies in the middle of its contact. */
  public static final double CONTACT_CENTRE = Double.NaN;

  /** Riding along at ease. */
  public static final SettleOptions DEFAULT =
      new SettleOptions(SeatLoad.DEFAULT_HANDS, CONTACT_CENTRE, FoamContact.EDGE_SHARE, 0, 0);

  public SettleOptions {
    check("handsShare", handsShare, 0, SeatLoad.ARMS);
    if (!Double.isNaN(backCentreShare)) {
      check("backCentreShare", backCentreShare, 0.3, 1.2);
    }
    check("edgeShare", edgeShare, 0, 1);
    check("brakingG", brakingG, 0, 2);
    check("bracingN", bracingN, 0, 5000);
  }

  private static void check(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " must be " + low + " to " + high + ", got " + value);
    }
  }
}
