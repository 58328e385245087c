package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.words.Names;

/**
 * An inequality that must hold: from ≤ quantity ≤ to.
 *
 * @param kind which quantity
 * @param pins the pins it speaks of
 * @param parts the parts it speaks of
 * @param measure the measure it speaks of, or empty
 * @param from smallest value allowed
 * @param to largest value allowed
 * @param note for people, may be empty
 */
public record Limit(
    Kind kind,
    List<String> pins,
    List<String> parts,
    String measure,
    Optional<Formula> from,
    Optional<Formula> to,
    String note) {
  public Limit {
    pins = List.copyOf(pins);
    parts = List.copyOf(parts);
  }

  /** Quantities that can be limited. */
  public enum Kind {
    /** |PQ|. */
    DISTANCE(2, 0, Dim.LENGTH),
    /** Q.x − P.x. */
    AHEAD(2, 0, Dim.LENGTH),
    /** Q.z − P.z. */
    ABOVE(2, 0, Dim.LENGTH),
    /** Height of P above the ground. */
    HEIGHT(1, 0, Dim.LENGTH),
    /** Angle of P→Q from +x, counter-clockwise. */
    ANGLE(2, 0, Dim.ANGLE),
    /** Angle of P→Q from vertical, leaning back positive. */
    RAKE(2, 0, Dim.ANGLE),
    /** Angle from PQ to RS, counter-clockwise. */
    ANGLE_BETWEEN(4, 0, Dim.ANGLE),
    /** Distance of P to the left of the line Q→R. */
    BESIDE(3, 0, Dim.LENGTH),
    /** A free measure. */
    MEASURE(0, 0, null),
    /** P inside a part's outline, by at least {@code from}. */
    INSIDE(1, 1, Dim.LENGTH),
    /** Smallest gap between two parts, or between a part and {@code rider}. */
    GAP(0, 2, Dim.LENGTH);

    private final int pins;
    private final int parts;
    private final Dim dim;

    Kind(int pins, int parts, Dim dim) {
      this.pins = pins;
      this.parts = parts;
      this.dim = dim;
    }

    public int pins() {
      return pins;
    }

    public int parts() {
      return parts;
    }

    /** The dimension of from and to; empty means that of the measure. */
    public Optional<Dim> dim() {
      return Optional.ofNullable(dim);
    }

    public String word() {
      return Names.word(this);
    }
  }
}
