package org.longlow.constraints.law;

/** What a row of the law tables asks. */
public enum Asked {
  /** So many lamps of the kind in the zone. */
  COUNT(Subject.LAMP),
  /** Light of one of the row's colours. */
  COLOUR(Subject.LAMP),
  /** Centre so high above the road. */
  HEIGHT_OF_CENTRE(Subject.LAMP),
  /** Lower edge of the lit area at least, upper edge at most so high above the road. */
  HEIGHT_OF_EDGE(Subject.LAMP),
  /** As {@link #HEIGHT_OF_CENTRE}, by one state only; a breach asks for care. */
  STATE_HEIGHT(Subject.LAMP),
  /** Lit area of each lamp. */
  AREA(Subject.LAMP),
  /** Lit area of a lamp that does the work alone. */
  AREA_ALONE(Subject.LAMP),
  /** Lit area of each of several that share the work. */
  AREA_SHARED(Subject.LAMP),
  /** On the centreline, or in pairs symmetric about it. */
  CENTRELINE_OR_PAIR(Subject.LAMP),
  /** On the centreline or on the right, the off side where traffic keeps left. */
  CENTRELINE_OR_OFF_SIDE(Subject.LAMP),
  /** The same number on each side, at the same height. */
  EACH_SIDE(Subject.LAMP),
  /** What of this lamp could not be read. */
  UNREAD(Subject.LAMP),

  /** At least so far between the centres of left and right. */
  CENTRES_APART(Subject.SPACING),
  /** At least so far between the inner edges of left and right. */
  EDGES_APART(Subject.SPACING),
  /** At most so far between the edges of two that stand side by side. */
  PAIR_GAP(Subject.SPACING),
  /** At least so far between the lit areas, seen along the machine. */
  GAP(Subject.SPACING),
  /** As {@link #GAP}; less may be allowed, on what a layout does not say. */
  GAP_OR_LESS(Subject.SPACING),
  /** As {@link #GAP}, for a red lamp beside a single one on the centreline. */
  RED_GAP_TO_SINGLE(Subject.SPACING),
  /** At least so far outside the other's outer edge. */
  OUTSIDE(Subject.SPACING),
  /** At most so far ahead of the machine's rearmost point. */
  AHEAD_OF_REARMOST(Subject.SPACING),
  /** Upper edge at most so far above the other's. */
  NOT_ABOVE(Subject.SPACING),

  /** Seen past the machine from so far to each side, up and down. */
  SEEN(Subject.VIEW),
  /** As {@link #SEEN}, of a lamp that does the work alone. */
  SEEN_ALONE(Subject.VIEW),
  /** As {@link #SEEN}, of each of several that share the work. */
  SEEN_SHARED(Subject.VIEW),

  /** Something that no row can answer; the text is its name in ids, then what it is. */
  NOT_COVERED(Subject.MACHINE),
  FOOT_RESTS(Subject.MACHINE),
  /** The stand folds rearward and upward. */
  STAND_FOLDS(Subject.MACHINE),
  /** The stand neither upsets the machine nor closes by itself. */
  STAND_STAYS(Subject.MACHINE),
  MIRRORS(Subject.MACHINE),
  /** Mirrors are not asked for. */
  NO_MIRRORS(Subject.MACHINE),
  /** Grips at most so high above the seat. */
  HANDLEBAR(Subject.MACHINE);

  /** What of a machine is judged. */
  public enum Subject {
    /** Lamps of one kind by themselves. */
    LAMP,
    /** Distances between lamps. */
    SPACING,
    /** From where lamps are seen. */
    VIEW,
    /** Everything else. */
    MACHINE
  }

  private final Subject about;

  Asked(Subject about) {
    this.about = about;
  }

  public Subject about() {
    return about;
  }

  /** Whether it measures a height above the road, which the springs decide too. */
  public boolean isHeight() {
    return this == HEIGHT_OF_CENTRE || this == HEIGHT_OF_EDGE || this == STATE_HEIGHT;
  }
}
