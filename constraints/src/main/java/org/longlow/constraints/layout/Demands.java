package org.longlow.constraints.layout;

import java.util.List;
import java.util.Map;
import org.longlow.constraints.formula.Formula;

/**
 * What the findings hold the machine to.
 *
 * @param rules whose rules are looked at: {@code us}, {@code un-r53}, {@code uk}
 * @param limits limits of findings by {@link Key}; absent ones take the key's default
 */
public record Demands(List<String> rules, Map<Key, Formula> limits) {
  public Demands {
    rules = List.copyOf(rules);
    limits = Ordered.copy(limits);
  }

  /** A demand with a default. All defaults are common practice with no source unless said. */
  public enum Key {
    GAP("gap", "3 mm", "between parts that do not touch"),
    TYRE_GAP("tyreGap", "15 mm", "round a tyre: 5 mm radial tolerance and 10 mm growth at speed"),
    HOT_GAP(
        "hotGap", "25 mm", "between hot parts and people, cushions, tanks, wiring, tyres or cowls"),
    PERSON_GAP("personGap", "10 mm", "between a person and parts that are not for resting on"),
    GROUND_CLEARANCE("groundClearance", "100 mm", "under the belly, laden"),
    BUMP_CLEARANCE("bumpClearance", "40 mm", "under the belly at full bump"),
    LEAN("lean", "32 deg", 90, "lean to each side before anything but a tyre touches, laden"),
    FRONT_SHARE_MIN("frontShareMin", "0.38", 1, "front wheel's share of the weight, laden"),
    FRONT_SHARE_MAX("frontShareMax", "0.58", 1, "front wheel's share of the weight, laden"),
    SIGHT("sight", "9000 mm", "nearest road seen over everything in front"),
    FOOT_DOWN("footDown", "40 mm", "heel off the ground at a stop, at most"),
    /** Locks of 25 to 38 deg are common on the road; from memory. */
    LOCK(
        "lock",
        "30 deg",
        90,
        "steering turned to each side with both hands on and nothing in its way"),
    LEVER_SPAN(
        "leverSpan",
        "0.45",
        1,
        "from the back of a grip to the front of its lever, in lengths of the hand, at most"),
    THUMB_REACH("thumbReach", "60 mm", "from the inner end of a grip to its switch, at most"),
    /** 7 in a hundred: common camber with a margin for parking places; a judgement. */
    CROSS_SLOPE("crossSlope", "4 deg", 30, "that a road falls to a side where the machine stops"),
    RAMP("ramp", "8 deg", 90, "the steepest ramp or crest to roll over, laden or pushed, at least"),
    KERB(
        "kerb", "50 mm", "the highest kerb or sill to roll over square, laden or pushed, at least"),
    BRAKING(
        "braking", "0.5", 2, "braking, in that of gravity, that the springs are looked at under"),
    /** A single garage door; narrower ones are asked by those who have them. */
    DOORWAY_WIDTH("doorwayWidth", "2000 mm", "of the narrowest doorway it is pushed through"),
    DOORWAY_HEIGHT("doorwayHeight", "1900 mm", "of the lowest doorway it is pushed through"),
    /** Roads of brake tests have 0.9; dry ones some 1.2, wet ones 0.6 to 0.9; from memory. */
    GRIP("grip", "0.9", 2, "peak friction of tyre on road at which wheels are taken to slide"),
    SPEED("speed", "90 km/h", "speed at which wind is looked at"),
    SIDE_WIND("sideWind", "40 km/h", "wind square from the side that is looked at"),
    TIP("tip", "8 deg", 90, "tipping angle on the stand over every edge, at least"),
    HEAVE("heave", "400 N", "force that heaves the machine onto a stand, at most"),
    WORK_LEVER("workLever", "4", "handle of a work stand, as a multiple of its hook"),
    WORK_FEET("workFeet", "350 mm", "between the feet of a work stand"),
    HAND_FORCE("handForce", "60 N", "force of one hand that opens or shuts a section, at most"),
    /** Half of 50 N, which 85 in a hundred adults lift sitting (EN 1005-3, by a summary). */
    WAY_OUT_FORCE(
        "wayOutForce", "25 N", "force of one hand, sitting, that opens a way out, at most"),
    ENGAGEMENT("engagement", "4 mm", "of a catch with all its play against it, at least"),
    LINE_SLACK("lineSlack", "10 mm", "that a cable, hose or loom is longer than its way, at least"),
    OPEN_HEAT_PEOPLE("openHeatPeople", "75 mm", "between people and what burns, nothing between"),
    OPEN_HEAT_FUEL("openHeatFuel", "100 mm", "between tanks and what burns, nothing between"),
    /** 3 in from headers unless metal is between: New Jersey's rules for racing, 13:62-4.16. */
    OPEN_HEAT_FUEL_HOSE(
        "openHeatFuelHose", "76 mm", "between fuel hoses and what burns, nothing between"),
    OPEN_HEAT_WIRING(
        "openHeatWiring",
        "50 mm",
        "between batteries, tyres, cables, hoses or looms and what burns, nothing between"),
    OPEN_HEAT_PANEL(
        "openHeatPanel", "75 mm", "between cowls or cushions and what burns, nothing between");

    private final String word;
    private final Formula standard;
    private final double most;
    private final String meaning;

    Key(String word, String standard, String meaning) {
      this(word, standard, Double.POSITIVE_INFINITY, meaning);
    }

    Key(String word, String standard, double most, String meaning) {
      this.word = word;
      this.standard = Formula.parse(standard);
      this.most = most;
      this.meaning = meaning;
    }

    public String word() {
      return word;
    }

    /** The default limit. */
    public Formula standard() {
      return standard;
    }

    /** Whether the default is only remembered: what is held to that does not pass. */
    public boolean fromMemory() {
      return this == LOCK || this == GRIP;
    }

    /** The most that may be asked, in the unit of the default; the least is 0. */
    public double most() {
      return most;
    }

    public String meaning() {
      return meaning;
    }
  }

  /** Returns the limit in force for {@code key}. */
  public Formula limit(Key key) {
    Formula own = limits.get(key);
    return own == null ? key.standard() : own;
  }
}
