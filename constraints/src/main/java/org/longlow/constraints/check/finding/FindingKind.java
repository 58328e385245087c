package org.longlow.constraints.check.finding;

/** What can be found out about a machine. */
public enum FindingKind {
  /** Whether the ties hold. */
  TIES("ties", FindingGroup.LAYOUT),
  /** A limit of the layout that cannot hold. */
  LIMIT("limit", FindingGroup.LAYOUT),
  /** What a machine must have to be ridden. */
  COMPLETENESS("completeness", FindingGroup.PLACES),
  /** Whether ties and limits can hold could not be decided. */
  UNDECIDED("undecided", FindingGroup.LAYOUT),
  /** What is left free could not be decided. */
  FREEDOMS("freedoms", FindingGroup.LAYOUT),
  /** A tie that says nothing new. */
  REDUNDANT("redundant", FindingGroup.LAYOUT),
  /** A tie near a dead point. */
  DEAD_POINT("dead-point", FindingGroup.LAYOUT),
  /** Nobody is there to ride. */
  CREW("crew", FindingGroup.SEAT),
  /** Somebody cannot sit on a seat, or what to take care of where they can. */
  SEAT("seat", FindingGroup.SEAT),
  /** Somebody whom the body model does not know well. */
  BODY("body", FindingGroup.SEAT),
  /** How deep somebody sinks into a cushion. */
  SINK("sink", FindingGroup.SEAT),
  /** Whether friction holds somebody. */
  HOLD("hold", FindingGroup.SEAT),
  /** Whether the head has a rest. */
  HEAD("head", FindingGroup.SEAT),
  /** Whether hands and feet reach. */
  REACH("reach", FindingGroup.POSTURE),
  /** A joint's angle. */
  POSTURE("posture", FindingGroup.POSTURE),
  /** The nearest road seen. */
  SIGHT("sight", FindingGroup.SIGHT_AND_FOOT, true),
  /** Whether a foot reaches the ground. */
  FOOT("foot", FindingGroup.SIGHT_AND_FOOT, true),
  /** A gap between two parts, or a part and somebody. */
  GAP("gap", FindingGroup.GAPS),
  /** Two parts that share a pin. */
  JOINT("joint", FindingGroup.GAPS),
  /** What a section meets on its way. */
  OPEN("open", FindingGroup.OPENING),
  /** Wheels that cannot be stood on the ground. */
  SUSPENSION("suspension", FindingGroup.PLACES),
  /** Whether an axle is drawn as high as its tyre's radius. */
  AXLE("axle", FindingGroup.PLACES),
  /** A pin where no part of a motorcycle is. */
  PLACE("place", FindingGroup.PLACES),
  /** The links of a chain. */
  CHAIN("chain", FindingGroup.PLACES),
  /** Parts without a known mass. */
  MASS("mass", FindingGroup.LOADS),
  /** The lowest point over the road. */
  CLEARANCE("clearance", FindingGroup.CLEARANCE, true),
  /** How far the springs are pressed at rest. */
  SAG("sag", FindingGroup.SAG, true),
  /** How far the machine leans to a side before something hard touches. */
  LEAN("lean", FindingGroup.LEAN, true),
  /** How far the machine leans before one thing touches. */
  TOUCH("lean", FindingGroup.LEAN, true),
  /** Whether the parked machine stays up. */
  STAND("stand", FindingGroup.STAND, true),
  /** Rake and trail. */
  TRAIL("trail", FindingGroup.STEERING, true),
  /** How far the steering axis leans back. */
  RAKE("rake", FindingGroup.STEERING, true),
  /** Masses and axle loads. */
  LOAD("load", FindingGroup.LOADS, true),
  /** The acceleration that lifts a wheel. */
  LIFT("lift", FindingGroup.LOADS, true),
  /** A rule of law. */
  LAW("law", FindingGroup.LAW),
  /** A rule of law on a height above the road. */
  LAW_HEIGHT("law", FindingGroup.LAW, true),
  /** A rule of law that is met as far as its text is known, which nobody could read again. */
  LAW_FROM_MEMORY("law", FindingGroup.LAW);

  private final String word;
  private final FindingGroup group;
  private final boolean weighed;

  FindingKind(String word, FindingGroup group) {
    this(word, group, false);
  }

  FindingKind(String word, FindingGroup group, boolean weighed) {
    this.word = word;
    this.group = group;
    this.weighed = weighed;
  }

  /** Returns the word that begins the names of such findings. */
  public String word() {
    return word;
  }

  /** Returns what it belongs to, and so the caution that goes with it. */
  public FindingGroup group() {
    return group;
  }

  /** Whether its figures rest on the masses of the parts. */
  public boolean weighed() {
    return weighed;
  }
}
