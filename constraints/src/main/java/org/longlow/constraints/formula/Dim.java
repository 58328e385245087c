package org.longlow.constraints.formula;

/**
 * The dimension of a quantity as exponents of length, mass, force and time.
 *
 * <p>Angles are pure numbers, as in the SI, except that a bare angle is told apart from a bare
 * number so that {@code 24} and {@code 24 deg} are not confused.
 *
 * @param length exponent of length (mm)
 * @param mass exponent of mass (kg)
 * @param force exponent of force (N)
 * @param time exponent of time (s)
 * @param angle true for an angle (rad)
 */
public record Dim(int length, int mass, int force, int time, boolean angle) {

  public static final Dim NUMBER = new Dim(0, 0, 0, 0, false);
  public static final Dim ANGLE = new Dim(0, 0, 0, 0, true);
  public static final Dim LENGTH = new Dim(1, 0, 0, 0, false);
  public static final Dim MASS = new Dim(0, 1, 0, 0, false);
  public static final Dim FORCE = new Dim(0, 0, 1, 0, false);

  /** Spring or wheel rate, N/mm. */
  public static final Dim RATE = new Dim(-1, 0, 1, 0, false);

  /** Pressure, N/mm². */
  public static final Dim PRESSURE = new Dim(-2, 0, 1, 0, false);

  /** Density, kg/mm³. */
  public static final Dim DENSITY = new Dim(-3, 1, 0, 0, false);

  /** Mass of a sheet for its area, kg/mm². */
  public static final Dim AREAL_MASS = new Dim(-2, 1, 0, 0, false);

  /** Speed, mm/s. */
  public static final Dim SPEED = new Dim(1, 0, 0, -1, false);

  public Dim {
    angle = angle && length == 0 && mass == 0 && force == 0 && time == 0;
  }

  /** Returns the dimension of a product; an angle times anything else drops the angle. */
  public Dim times(Dim o) {
    return new Dim(
        length + o.length,
        mass + o.mass,
        force + o.force,
        time + o.time,
        (angle && o.equals(NUMBER)) || (o.angle && equals(NUMBER)));
  }

  public Dim over(Dim o) {
    return new Dim(
        length - o.length,
        mass - o.mass,
        force - o.force,
        time - o.time,
        angle && o.equals(NUMBER));
  }

  /** Returns this dimension raised to a whole power. */
  public Dim power(int n) {
    return new Dim(length * n, mass * n, force * n, time * n, angle && n == 1);
  }

  public boolean isPure() {
    return length == 0 && mass == 0 && force == 0 && time == 0;
  }

  /** Returns the dimension in words, with an example of how to write it. */
  public String words() {
    if (equals(NUMBER)) {
      return "a plain number";
    }
    if (equals(ANGLE)) {
      return "an angle (such as 24 deg)";
    }
    if (equals(LENGTH)) {
      return "a length (such as 1600 mm)";
    }
    if (equals(MASS)) {
      return "a mass (such as 80 kg)";
    }
    if (equals(FORCE)) {
      return "a force (such as 120 N)";
    }
    if (equals(RATE)) {
      return "a spring rate (such as 18 N/mm)";
    }
    if (equals(PRESSURE)) {
      return "a pressure (such as 6 kPa)";
    }
    if (equals(DENSITY)) {
      return "a density (such as 45 kg/m^3)";
    }
    if (equals(AREAL_MASS)) {
      return "a mass per area (such as 3 kg/m^2)";
    }
    if (equals(SPEED)) {
      return "a speed (such as 90 km/h)";
    }
    String seconds = time == 0 ? "" : " s^" + time;
    return "mm^" + length + " kg^" + mass + " N^" + force + seconds;
  }
}
