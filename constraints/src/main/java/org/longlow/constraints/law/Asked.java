package org.longlow.constraints.law;

/** What a row of the law tables asks. */
public enum Asked {
  /** So many lamps of the kind in the zone. */
  COUNT(About.LAMP),
  /** Light of one of the row's colours. */
  COLOUR(About.LAMP),
  /** Centre so high above the road. */
  HEIGHT_OF_CENTRE(About.LAMP),
  /** Lower edge of the lit area at least, upper edge at most so high above the road. */
  HEIGHT_OF_EDGE(About.LAMP),
  /** As {@link #HEIGHT_OF_CENTRE}, by one state only; a breach asks for care. */
  STATE_HEIGHT(About.LAMP),
  /** Lit area of each lamp. */
  AREA(About.LAMP),
  /** Lit area of a lamp that does the work alone. */
  AREA_ALONE(About.LAMP),
  /** Lit area of each of several that share the work. */
  AREA_SHARED(About.LAMP),
  /** On the centreline, or in pairs symmetric about it. */
  CENTRELINE_OR_PAIR(About.LAMP),
  /** On the centreline or on the right, the off side where traffic keeps left. */
  CENTRELINE_OR_OFF_SIDE(About.LAMP),
  /** The same number on each side, at the same height. */
  EACH_SIDE(About.LAMP),
  /** What of this lamp could not be read. */
  UNREAD(About.LAMP),

  /** At least so far between the centres of left and right. */
  CENTRES_APART(About.SPACING),
  /** At least so far between the inner edges of left and right. */
  EDGES_APART(About.SPACING),
  /** At most so far between the edges of two that stand side by side. */
  PAIR_GAP(About.SPACING),
  /** At least so far between the lit areas, seen along the machine. */
  GAP(About.SPACING),
  /** As {@link #GAP}; less may be allowed, on what a layout does not say. */
  GAP_OR_LESS(About.SPACING),
  /** As {@link #GAP}, for a red lamp beside a single one on the centreline. */
  RED_GAP_TO_SINGLE(About.SPACING),
  /** At least so far outside the other's outer edge. */
  OUTSIDE(About.SPACING),
  /** At most so far ahead of the machine's rearmost point. */
  AHEAD_OF_REARMOST(About.SPACING),
  /** Upper edge at most so far above the other's. */
  NOT_ABOVE(About.SPACING),

  /** Something that no row can answer; the text is its name in ids, then what it is. */
  NOT_COVERED(About.MACHINE),
  FOOT_RESTS(About.MACHINE),
  /** The stand folds rearward and upward. */
  STAND_FOLDS(About.MACHINE),
  /** The stand neither upsets the machine nor closes by itself. */
  STAND_STAYS(About.MACHINE),
  MIRRORS(About.MACHINE),
  /** Mirrors are not asked for. */
  NO_MIRRORS(About.MACHINE),
  /** Grips at most so high above the seat. */
  HANDLEBAR(About.MACHINE);

  /** What of a machine is judged. */
  public enum About {
    /** Lamps of one kind by themselves. */
    LAMP,
    /** Distances between lamps. */
    SPACING,
    /** Everything else. */
    MACHINE
  }

  private final About about;

  Asked(About about) {
    this.about = about;
  }

  public About about() {
    return about;
  }

  /** Whether it measures a height above the road, which the springs decide too. */
  public boolean isHeight() {
    return this == HEIGHT_OF_CENTRE || this == HEIGHT_OF_EDGE || this == STATE_HEIGHT;
  }
}
