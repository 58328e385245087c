package org.longlow.constraints.formula;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.longlow.rider.words.Units;

/**
 * The units a file or a field accepts. The first unit of a dimension is the one shown.
 *
 * <p>Exact factors: inch 25.4 mm, pound 0.45359237 kg and pound-force 4.4482216152605 N
 * (international yard and pound agreement 1959, standard gravity 9.80665 m/s²).
 */
public enum Unit {
  NONE("", Dim.NUMBER, 1),
  MM("mm", Dim.LENGTH, 1),
  CM("cm", Dim.LENGTH, 10),
  METRE("m", Dim.LENGTH, 1000),
  INCH("in", Dim.LENGTH, 25.4),
  FOOT("ft", Dim.LENGTH, 304.8),
  DEG("deg", Dim.ANGLE, Math.PI / 180),
  RAD("rad", Dim.ANGLE, 1),
  KG("kg", Dim.MASS, 1),
  GRAM("g", Dim.MASS, 0.001),
  POUND("lb", Dim.MASS, 0.45359237),
  NEWTON("N", Dim.FORCE, 1),
  KILONEWTON("kN", Dim.FORCE, 1000),
  POUND_FORCE("lbf", Dim.FORCE, 4.4482216152605),
  KILOPASCAL("kPa", Dim.PRESSURE, 0.001),
  NEWTON_PER_MM("N/mm", Dim.RATE, 1),
  KG_PER_M3("kg/m^3", Dim.DENSITY, 1e-9),
  KG_PER_M2("kg/m^2", Dim.AREAL_MASS, 1e-6),
  KM_PER_HOUR("km/h", Dim.SPEED, 1e6 / 3600),
  METRE_PER_SECOND("m/s", Dim.SPEED, 1000),
  MILE_PER_HOUR("mph", Dim.SPEED, 1_609_344.0 / 3600),
  PSI("psi", Dim.PRESSURE, 4.4482216152605 / (25.4 * 25.4)),
  POUND_FORCE_PER_INCH("lbf/in", Dim.RATE, 4.4482216152605 / 25.4),
  POUND_PER_FT3("lb/ft^3", Dim.DENSITY, 0.45359237 / (304.8 * 304.8 * 304.8));

  private static final Map<String, Unit> BY_SYMBOL =
      Stream.of(values())
          .filter(u -> u != NONE && u.inFormula().chars().allMatch(Character::isLetter))
          .collect(Collectors.toUnmodifiableMap(Unit::inFormula, Function.identity()));

  private static final Pattern SPEED = Pattern.compile("\\b(km|m)/(h|s)\\b");

  private final String symbol;
  private final Dim dim;
  private final double factor;

  Unit(String symbol, Dim dim, double factor) {
    this.symbol = symbol;
    this.dim = dim;
    this.factor = factor;
  }

  /** Returns the unit in which values of a dimension are typed and shown. */
  public static Unit of(Dim dim) {
    for (Unit unit : values()) {
      if (unit.dim.equals(dim)) {
        return unit;
      }
    }
    return NONE;
  }

  /** Returns the unit in which values of a dimension are typed and shown in these units. */
  public static Unit of(Dim dim, Units units) {
    if (units == Units.IN) {
      for (Unit unit :
          List.of(
              INCH, POUND, POUND_FORCE, PSI, POUND_FORCE_PER_INCH, POUND_PER_FT3, MILE_PER_HOUR)) {
        if (unit.dim.equals(dim)) {
          return unit;
        }
      }
    }
    return of(dim);
  }

  /** Returns the unit that a formula may name by {@code symbol}, such as {@code mm}. */
  public static Optional<Unit> named(String symbol) {
    return Optional.ofNullable(BY_SYMBOL.get(symbol));
  }

  /** Returns the unit written {@code symbol} after a number, such as {@code N/mm}. */
  static Optional<Unit> written(String symbol) {
    for (Unit unit : values()) {
      if (unit != NONE && unit.symbol.equals(symbol)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  public String symbol() {
    return symbol;
  }

  /**
   * Returns how a formula names it. There {@code h} and {@code s} are no units, so that they may
   * name measures, and speeds are one word.
   */
  String inFormula() {
    return dim.equals(Dim.SPEED) ? symbol.replace("/", "p") : symbol;
  }

  /** Returns a formula with speeds as one word each. */
  static String speedsAsWords(String formula) {
    return SPEED.matcher(formula).replaceAll("$1p$2");
  }

  public Dim dim() {
    return dim;
  }

  /** Returns how many internal units (mm, rad, kg, N) one of this unit is. */
  public double factor() {
    return factor;
  }

  /** Converts a value in internal units to this unit. */
  public double fromInternal(double internal) {
    return internal / factor;
  }
}
