package org.longlow.constraints.figure;

import java.util.ArrayList;
import java.util.List;
import org.longlow.rider.words.Decimals;

/**
 * Unpacks optional inputs and notes every fault on the way; a faulty number is handed on as NaN so
 * that the rest can be looked at too.
 */
final class Needs {

  /** No length, mass, speed or inertia of a machine is larger in its unit; ours, a sanity bound. */
  static final double MOST = 1e6;

  /** No length, mass or radius that must be there is smaller in its unit. */
  static final double LEAST = 1e-6;

  static final String FINITE = "a number from -1000000 to 1000000";
  static final String POSITIVE = "a number from 0.000001 to 1000000";
  static final String NOT_NEGATIVE = "a number from 0 to 1000000";

  private final List<FigureFault> faults = new ArrayList<>();

  double finite(String name, Double value) {
    return number(name, value, -MOST, FINITE);
  }

  double positive(String name, Double value) {
    return number(name, value, LEAST, POSITIVE);
  }

  double notNegative(String name, Double value) {
    return number(name, value, 0, NOT_NEGATIVE);
  }

  private double number(String name, Double value, double least, String allowed) {
    return value != null && value >= least && value <= MOST ? value : fault(name, value, allowed);
  }

  /** Closed range; both ends are numbers worth showing. */
  double within(String name, Double value, double least, double most) {
    return value != null && value >= least && value <= most
        ? value
        : fault(name, value, Decimals.written(least) + " to " + Decimals.written(most));
  }

  /** A rake short of lying flat: beyond it trail has no meaning. */
  double rakeRad(String name, Double degrees) {
    return Math.toRadians(within(name, degrees, -85, 85));
  }

  /** An axle farther off its axis than the tyre is large is no fork; any where that is unknown. */
  double offset(String name, Double millimetres, double radiusMm) {
    return Double.isNaN(radiusMm)
        ? finite(name, millimetres)
        : within(name, millimetres, -radiusMm, radiusMm);
  }

  /** Notes a missing object; returns true if it is there. */
  boolean there(String name, Object value, String allowed) {
    if (value == null) {
      faults.add(new FigureFault(name, "missing", allowed));
      return false;
    }
    return true;
  }

  double fault(String name, Double value, String allowed) {
    faults.add(new FigureFault(name, value == null ? "missing" : Decimals.written(value), allowed));
    return Double.NaN;
  }

  void add(FigureFault fault) {
    faults.add(fault);
  }

  List<FigureFault> faults() {
    return List.copyOf(faults);
  }

  /** Ends the look-over: throws if anything was wrong. */
  void settle() {
    if (!faults.isEmpty()) {
      throw new FigureFaults(faults);
    }
  }

  /** Refuses a whole input that was not given. */
  static <T> T input(T input) {
    if (input == null) {
      throw new FigureFaults(List.of(new FigureFault("input", "missing", "an object")));
    }
    return input;
  }
}
