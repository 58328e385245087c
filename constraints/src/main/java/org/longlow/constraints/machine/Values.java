package org.longlow.constraints.machine;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.seat.SeatLoad;

/** Guards for the numbers that make up a machine; each returns its value or names what is wrong. */
public final class Values {

  /** Standard acceleration of free fall, m/s² (3rd CGPM 1901; ISO 80000-3). */
  public static final double STANDARD_GRAVITY_MS2 = SeatLoad.GRAVITY;

  private Values() {}

  public static double finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw refused(name, value, "a finite number");
    }
    return value;
  }

  public static double positive(String name, double value) {
    if (!Double.isFinite(value) || value <= 0) {
      throw refused(name, value, "a finite number above 0");
    }
    return value;
  }

  public static double notNegative(String name, double value) {
    if (!Double.isFinite(value) || value < 0) {
      throw refused(name, value, "a finite number, 0 or more");
    }
    return value;
  }

  /** Returns {@code value} if it lies in the closed range, else refuses it. */
  public static double within(String name, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw refused(name, value, shown(least) + " to " + shown(most));
    }
    return value;
  }

  /** Returns an angle if it lies in the closed range, else refuses it, in degrees. */
  public static double withinRad(String name, double rad, double leastRad, double mostRad) {
    if (!(rad >= leastRad && rad <= mostRad)) {
      throw refused(
          name,
          tenths(Math.toDegrees(rad)),
          tenths(Math.toDegrees(leastRad)) + " to " + tenths(Math.toDegrees(mostRad)) + " deg");
    }
    return rad;
  }

  private static double tenths(double degrees) {
    return Double.isFinite(degrees) ? Math.round(10 * degrees) / 10.0 : degrees;
  }

  public static OutOfRange refused(String name, double value, String allowed) {
    return new OutOfRange(
        String.format(Locale.ROOT, "%s is %s; allowed is %s", name, shown(value), allowed));
  }

  /** A number as somebody would write it, to five digits. */
  private static String shown(double value) {
    if (!Double.isFinite(value) || Math.abs(value) >= 1e7) {
      return Double.toString(value);
    }
    return new BigDecimal(value)
        .round(new MathContext(5))
        .setScale(6, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
