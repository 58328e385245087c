package org.longlow.constraints.shape;

import java.util.Map;
import org.longlow.constraints.formula.Formula;
import org.longlow.rider.geom.PointMm;

/**
 * Where the pins are and what the measures are worth.
 *
 * @param pins place of each pin, mm
 * @param measures value of each measure, internal units
 */
public record Places(Map<String, PointMm> pins, Map<String, Double> measures) {

  /**
   * Returns where the pin {@code name} is.
   *
   * @throws IllegalArgumentException if there is none
   */
  public PointMm pin(String name) {
    PointMm p = pins.get(name);
    if (p == null) {
      throw new IllegalArgumentException("no pin is called " + name);
    }
    return p;
  }

  /** Returns the value of {@code formula} in internal units (mm, rad, kg, N). */
  public double value(Formula formula) {
    return formula.evaluate(
        name -> {
          Double value = measures.get(name);
          if (value == null) {
            throw new IllegalArgumentException("no measure is called " + name);
          }
          return value;
        });
  }

  /** Returns a copy with other pins. */
  public Places withPins(Map<String, PointMm> other) {
    return new Places(other, measures);
  }
}
