package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.words.Names;

/**
 * A weighted preference, followed only in the room that ties and limits leave.
 *
 * @param kind which quantity
 * @param pins the pins it speaks of
 * @param measure the measure it speaks of, or empty
 * @param is the value wished for, for kinds that have one
 * @param weight its weight against other wishes, &gt; 0
 * @param note for people, may be empty
 */
public record Wish(
    Kind kind,
    List<String> pins,
    String measure,
    Optional<Formula> is,
    double weight,
    String note) {
  public Wish {
    pins = List.copyOf(pins);
  }

  /** Quantities that can be wished for. */
  public enum Kind {
    /** |PQ| = is. */
    DISTANCE(2, Dim.LENGTH),
    /** Q.x − P.x = is. */
    AHEAD(2, Dim.LENGTH),
    /** Q.z − P.z = is. */
    ABOVE(2, Dim.LENGTH),
    /** Height of P = is. */
    HEIGHT(1, Dim.LENGTH),
    /** Angle of P→Q from +x = is. */
    ANGLE(2, Dim.ANGLE),
    /** Angle of P→Q from vertical, leaning back positive = is. */
    RAKE(2, Dim.ANGLE),
    /** A free measure = is. */
    MEASURE(0, null),
    /** Comfortable joint angles for the crew; used by {@code place}. */
    COMFORT(0, null),
    /** Front wheel's share of the laden weight = is; used by {@code place}. */
    FRONT_SHARE(0, Dim.NUMBER),
    /** The road is seen from is ahead; used by {@code place}. */
    SIGHT(0, Dim.LENGTH);

    private final int pins;
    private final Dim dim;

    Kind(int pins, Dim dim) {
      this.pins = pins;
      this.dim = dim;
    }

    public int pins() {
      return pins;
    }

    /** The dimension of {@code is}; empty means that of the measure, or none. */
    public Optional<Dim> dim() {
      return Optional.ofNullable(dim);
    }

    public String word() {
      return Names.word(this);
    }
  }
}
