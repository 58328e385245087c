package org.longlow.rider.words;

/**
 * Sorts of figures that people read, with how they are said in each units. Values are in the first
 * unit of each sort, those used everywhere inside.
 */
public enum FigureSort {
  /** A length in mm. */
  LENGTH(" mm", 1),
  /** A length in mm that is said in whole ones. */
  WHOLE_LENGTH(" mm", 0),
  /** A length in mm that is said with its tenth, also where that is nought. */
  LENGTH_IN_TENTHS(" mm", 1),
  /** A way along the road, in mm, said in metres. */
  ROAD(" m", 1, 1e-3, " ft", 1, 1 / 304.8),
  /** A day's way, in mm, said in whole kilometres. */
  FAR(" km", 0, 1e-6, " mi", 0, 1 / 1_609_344.0),
  /** A circle to turn in, in mm, said in metres with both hundredths. */
  CIRCLE(" m", 2, 1e-3, " ft", 1, 1 / 304.8),
  /** An area in mm². */
  AREA(" mm2", 0, 1, " in2", 2, 1 / (25.4 * 25.4)),
  MASS(" kg", 1, 1, " lb", 1, 1 / FigureSort.POUND_KG),
  WHOLE_MASS(" kg", 0, 1, " lb", 0, 1 / FigureSort.POUND_KG),
  /** A mass that is said with its tenth, also where that is nought. */
  MASS_IN_TENTHS(" kg", 1, 1, " lb", 1, 1 / FigureSort.POUND_KG),
  /** A mass that is said with both hundredths. */
  MASS_IN_HUNDREDTHS(" kg", 2, 1, " lb", 2, 1 / FigureSort.POUND_KG),
  /** A force in N. */
  FORCE(" N", 0, 1, " lbf", 1, 1 / FigureSort.POUND_N),
  /** A pressure in kPa. */
  PRESSURE(" kPa", 1, 1, " psi", 2, 25.4 * 25.4 / 1000 / FigureSort.POUND_N),
  /** A rate of a spring in N/mm. */
  RATE(" N/mm", 1, 1, " lbf/in", 1, 25.4 / FigureSort.POUND_N),
  /** A density in kg/m³. */
  DENSITY(" kg/m^3", 1, 1, " lb/ft^3", 2, 0.3048 * 0.3048 * 0.3048 / FigureSort.POUND_KG),
  /** A moment in N mm, said in N m. */
  MOMENT(" N m", 0, 1e-3, " lbf ft", 0, 1 / (304.8 * FigureSort.POUND_N)),
  /** A torque of a joint in N m. */
  TORQUE(" N m", 1, 1, " lbf ft", 1, 1 / (0.3048 * FigureSort.POUND_N)),
  /** A moment of inertia in kg m². */
  INERTIA(" kg m²", 1, 1, " lb ft²", 0, 1 / (0.3048 * 0.3048 * FigureSort.POUND_KG)),
  /** A speed in km/h. */
  SPEED(" km/h", 0, 1, " mph", 0, 1 / 1.609344),
  /** An angle in deg, in all units. */
  ANGLE("\u00b0", 1, 1, "\u00b0", 1, 1),
  /** An acceleration in that of gravity, in all units, with both hundredths. */
  GRAVITY(" g", 2, 1, " g", 2, 1),
  /** A number without unit, with both hundredths. */
  NUMBER("", 2, 1, "", 2, 1),
  /** Part of a whole, 0 to 1, said in per cent, in all units. */
  SHARE(" %", 1, 100, " %", 1, 100);

  /** A pound in kg, exactly (international yard and pound agreement, 1959). */
  private static final double POUND_KG = 0.45359237;

  /** A pound-force in N: that pound at standard gravity, 9.80665 m/s², exactly. */
  private static final double POUND_N = 4.4482216152605;

  final String metric;
  final int metricDecimals;
  final double metricFactor;
  final String inch;
  final int inchDecimals;
  final double inchFactor;

  FigureSort(String metric, int decimals) {
    this(metric, decimals, 1, "", 0, Double.NaN);
  }

  FigureSort(
      String metric,
      int metricDecimals,
      double metricFactor,
      String inch,
      int inchDecimals,
      double inchFactor) {
    this.metric = metric;
    this.metricDecimals = metricDecimals;
    this.metricFactor = metricFactor;
    this.inch = inch;
    this.inchDecimals = inchDecimals;
    this.inchFactor = inchFactor;
  }

  /** From here on a length is none of a machine, mm: no pins are farther apart. */
  private static final double OFF_MACHINE_MM = 10_000;

  /**
   * Returns how figures are said of which {@code most} is the greatest: a length that no machine
   * has is one along the road.
   */
  public FigureSort upTo(double most) {
    return this == LENGTH && Math.abs(most) > OFF_MACHINE_MM && Double.isFinite(most) ? ROAD : this;
  }

  /** Whether it is a length to cut by, said in inches as {@link Units} says. */
  boolean isLength() {
    return this == LENGTH || this == WHOLE_LENGTH || this == LENGTH_IN_TENTHS;
  }
}
