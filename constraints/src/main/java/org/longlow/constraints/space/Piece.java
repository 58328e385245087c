package org.longlow.constraints.space;

import java.util.Arrays;
import org.longlow.constraints.machine.linkage.RigidMotion;

/**
 * A convex body that lies still: a few numbers say all of it, and two that have the same are equal.
 * Immutable.
 */
public abstract class Piece implements Convex {

  /** What it is, mm; in what order is its own matter. */
  final double[] numbers;

  Piece(double... numbers) {
    this.numbers = numbers;
  }

  abstract Piece of(double[] numbers);

  /** Returns it moved in the elevation. */
  public abstract Piece moved(RigidMotion motion);

  /** Returns it shifted across the machine, left positive. */
  public abstract Piece across(double mm);

  /** Returns its image on the other side of the middle plane. */
  public abstract Piece mirrored();

  /** Returns it with all its numbers to a grain, so that what is nearly equal is equal. */
  public Piece grained(double grainMm) {
    return of(Arrays.stream(numbers).map(v -> Math.rint(v / grainMm) * grainMm).toArray());
  }

  @Override
  public boolean equals(Object other) {
    return other != null
        && other.getClass() == getClass()
        && Arrays.equals(((Piece) other).numbers, numbers);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(numbers);
  }
}
