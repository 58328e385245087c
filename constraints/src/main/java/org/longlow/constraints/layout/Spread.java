package org.longlow.constraints.layout;

import org.longlow.constraints.formula.Formula;

/**
 * How far a part reaches to each side of the machine's middle plane.
 *
 * <p>It fills y from −right to +left (y to the left, ISO 8855). A negative value means that the
 * part stays that far clear of the middle plane: a silencer on the left from 120 to 230 mm out has
 * left 230 mm, right −120 mm.
 *
 * @param left reach to the left
 * @param right reach to the right
 * @param both true if a mirror image of it stands on the other side too
 * @param said false where the layout leaves both sides out because stations say them; these are
 *     then those of the first station
 */
public record Spread(Formula left, Formula right, boolean both, boolean said) {

  /** One that the layout says. */
  public Spread(Formula left, Formula right, boolean both) {
    this(left, right, both, true);
  }
}
