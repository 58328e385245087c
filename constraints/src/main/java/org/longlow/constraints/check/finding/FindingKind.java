package org.longlow.constraints.check.finding;

/** What can be found out about a machine. */
public enum FindingKind {
  /** Whether the ties hold. */
  TIES("ties", FindingGroup.LAYOUT, Weighed.NO),
  /** A limit of the layout that cannot hold. */
  LIMIT("limit", FindingGroup.LAYOUT, Weighed.NO),
  /** What a machine must have to be ridden. */
  COMPLETENESS("completeness", FindingGroup.PLACES, Weighed.NO),
  /** Whether ties and limits can hold could not be decided. */
  UNDECIDED("undecided", FindingGroup.LAYOUT, Weighed.NO),
  /** What is left free could not be decided. */
  FREEDOMS("freedoms", FindingGroup.LAYOUT, Weighed.NO),
  /** A tie that says nothing new. */
  REDUNDANT("redundant", FindingGroup.LAYOUT, Weighed.NO),
  /** A tie near a dead point. */
  DEAD_POINT("dead-point", FindingGroup.LAYOUT, Weighed.NO),
  /** Nobody is there to ride. */
  CREW("crew", FindingGroup.SEAT, Weighed.NO),
  /** Somebody cannot sit on a seat, or what to take care of where they can. */
  SEAT("seat", FindingGroup.SEAT, Weighed.NO),
  /** Somebody whom the body model does not know well. */
  BODY("body", FindingGroup.SEAT, Weighed.NO),
  /** How deep somebody sinks into a cushion. */
  SINK("sink", FindingGroup.SEAT, Weighed.NO),
  /** Whether friction holds somebody. */
  HOLD("hold", FindingGroup.SEAT, Weighed.NO),
  /** Whether the head has a rest. */
  HEAD("head", FindingGroup.SEAT, Weighed.NO),
  /** Whether hands and feet reach. */
  REACH("reach", FindingGroup.POSTURE, Weighed.NO),
  /** A joint's angle. */
  POSTURE("posture", FindingGroup.POSTURE, Weighed.NO),
  /** The nearest road seen. */
  SIGHT("sight", FindingGroup.SIGHT_AND_FOOT, Weighed.YES),
  /** Whether a foot reaches the ground. */
  FOOT("foot", FindingGroup.SIGHT_AND_FOOT, Weighed.YES),
  /** A gap between two parts, or a part and somebody. */
  GAP("gap", FindingGroup.GAPS, Weighed.NO),
  /** Two parts that share a pin. */
  JOINT("joint", FindingGroup.GAPS, Weighed.NO),
  /** What a section meets on its way. */
  OPEN("open", FindingGroup.OPENING, Weighed.NO),
  /** Wheels that cannot be stood on the ground. */
  SUSPENSION("suspension", FindingGroup.PLACES, Weighed.NO),
  /** Whether an axle is drawn as high as its tyre's radius. */
  AXLE("axle", FindingGroup.PLACES, Weighed.NO),
  /** A pin where no part of a motorcycle is. */
  PLACE("place", FindingGroup.PLACES, Weighed.NO),
  /** The links of a chain. */
  CHAIN("chain", FindingGroup.PLACES, Weighed.NO),
  /** Parts without a known mass. */
  MASS("mass", FindingGroup.LOADS, Weighed.NO),
  /** The lowest point over the road. */
  CLEARANCE("clearance", FindingGroup.CLEARANCE, Weighed.YES),
  /** How far the springs are pressed at rest. */
  SAG("sag", FindingGroup.SAG, Weighed.FOR_EACH),
  /** How far the machine leans to a side before something hard touches. */
  LEAN("lean", FindingGroup.LEAN, Weighed.YES),
  /** How far the machine leans before one thing touches. */
  TOUCH("lean", FindingGroup.LEAN, Weighed.YES),
  /** Whether the parked machine stays up. */
  STAND("stand", FindingGroup.STAND, Weighed.YES),
  /** Rake and trail. */
  TRAIL("trail", FindingGroup.STEERING, Weighed.FOR_EACH),
  /** How far the steering axis leans back. */
  RAKE("rake", FindingGroup.STEERING, Weighed.FOR_EACH),
  /** Masses and axle loads. */
  LOAD("load", FindingGroup.LOADS, Weighed.FOR_EACH),
  /** The acceleration that lifts a wheel. */
  LIFT("lift", FindingGroup.LOADS, Weighed.FOR_EACH),
  /** A rule of law. */
  LAW("law", FindingGroup.LAW, Weighed.NO),
  /** A rule of law on a height above the road. */
  LAW_HEIGHT("law", FindingGroup.LAW, Weighed.YES),
  /** A rule of law that is met as far as its text is known, which nobody could read again. */
  LAW_FROM_MEMORY("law", FindingGroup.LAW, Weighed.NO);

  /** Whether figures rest on the masses of the parts. */
  public enum Weighed {
    NO,
    YES,
    /** Told of the machine once for everybody who rides it. */
    FOR_EACH
  }

  private final String word;
  private final FindingGroup group;
  private final Weighed weighed;

  FindingKind(String word, FindingGroup group, Weighed weighed) {
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
    return weighed != Weighed.NO;
  }

  /** Whether it is said of the machine once for everybody who rides it. */
  public boolean toldForEach() {
    return weighed == Weighed.FOR_EACH;
  }
}
