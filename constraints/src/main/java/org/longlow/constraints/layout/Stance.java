package org.longlow.constraints.layout;

import org.longlow.constraints.words.Names;

/**
 * A state in which the machine is examined.
 *
 * @param kind which state
 * @param section the section that is open, for {@link Kind#OPEN}; otherwise empty
 */
public record Stance(Kind kind, String section) {

  /** The states. */
  public enum Kind {
    /** Nobody on it, springs carry the machine alone. */
    UNLADEN,
    /** Nobody on it, tanks and boxes empty; only where some part says what it holds. */
    LIGHT,
    /** The crew member sits on it. */
    LADEN,
    /** Both wheels fully up. */
    FULL_BUMP,
    /** Both wheels fully down. */
    FULL_DROOP,
    /** On its stand. */
    PARKED,
    /** A section fully open, machine unladen; the way there is swept. */
    OPEN;

    public String word() {
      return Names.word(this);
    }
  }
}
