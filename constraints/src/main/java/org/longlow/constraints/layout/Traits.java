package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * What the rest of the program asks of every kind of part. A new kind answers all of it here, or it
 * does not compile.
 *
 * @param kind the word for it in files, such as {@code cushion}
 * @param depth how deep it is where it is joined; empty as its outline is
 * @param filled whether its material fills the body drawn for it, so that volume and material give
 *     its mass; what is hollow, or holds something else, has no mass but the one it is given
 */
public record Traits(
    String kind,
    Duty duty,
    Joint joint,
    Optional<Formula> depth,
    Heat heat,
    Make make,
    boolean filled) {

  Traits(String kind, Duty duty, Joint joint, Heat heat, Make make, boolean filled) {
    this(kind, duty, joint, Optional.empty(), heat, make, filled);
  }

  /** What a part does for the machine. */
  public enum Duty {
    /** Rolls on the road; parts keep the gap of tyres to it. */
    WHEEL,
    /** Carries a wheel and moves with it: others give way, and its mass is part unsprung. */
    CARRIER,
    /** Holds what is fixed to it, an axle too. */
    FRAME,
    /** Drives the machine. */
    DRIVE,
    /** Holds it up when it is parked. */
    STAND,
    /** Is worked by hand or foot: the rider's limbs may lie on it. */
    CONTROL,
    /** Is carried. */
    LOAD;

    /** Returns whether it is a wheel or carries one. */
    public boolean atWheel() {
      return this == WHEEL || this == CARRIER;
    }
  }

  /** How a part lies in a joint with another. */
  public enum Joint {
    /** Long: two of them may run beside each other for a while. */
    BAR,
    /** Filled to its outline: two of them may not be in one place. */
    BODY,
    /** Such a body that on an axle is the hub: as near to its tyre as the rim lets it be. */
    HUB,
    OTHER;

    /** Returns whether it is filled to its outline. */
    public boolean filled() {
      return this == BODY || this == HUB;
    }
  }

  /** What heat has to do with a part. */
  public enum Heat {
    /** Exhaust goes through it: it is hot unless something else is said. */
    GIVES,
    /** Must be kept from what is hot. */
    SUFFERS,
    BEARS
  }

  /** How a shop comes by a part. */
  public enum Make {
    /** Bought, no template. */
    BOUGHT,
    /** Made to a template. */
    MADE,
    /** Made to a template, and cut where it is in another's way. */
    FITTED,
    /** Bent from tube: in the cut list. */
    TUBE,
    /** Foam on a board: in the cut list. */
    FOAM,
    /** Sheet, cut where it is in another's way: in the cut list. */
    SHEET;

    /** Returns whether it is the first to be cut where two parts are in each other. */
    public boolean cutToFit() {
      return this == FITTED || this == SHEET;
    }

    /** Returns whether the cut list has rows for it. */
    public boolean listed() {
      return this == TUBE || this == FOAM || this == SHEET;
    }
  }
}
