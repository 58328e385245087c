package org.longlow.constraints.check.finding;

import org.longlow.constraints.machine.ride.Crosswind;
import org.longlow.constraints.machine.ride.WhippleModel;
import org.longlow.rider.pose.ComfortBands;
import org.longlow.rider.seat.FoamStack;

/** What kinds of findings belong together, and the caution that goes with their figures. */
public enum FindingGroup {
  LAYOUT("layout", ""),
  SEAT(
      "seat and hold",
      FoamStack.SINK_CAUTION
          + " Friction is what cloth and vibration leave of it: try the real seat standing still,"
          + " and do not trust friction to hold anybody under braking."),
  POSTURE(
      "posture",
      ComfortBands.CAUTION
          + " Hands are followed to full lock with shoulders at rest; where elbows go is not looked"
          + " at."),
  EFFORT(
      "effort",
      "Effort is a sum of levers: people of one size differ in strength by a factor of two, age and"
          + " training are not known, and most published strength is of young, healthy people. What"
          + " presses and shakes is an estimate. Sit in it for an hour before you trust it; numb"
          + " hands or feet and a stiff neck are a warning."),
  SIGHT_AND_FOOT(
      "sight and foot",
      "Sight and foot are straight lines from a model of the body: try both on the real machine, on"
          + " a slope too, with somebody holding it. A foot that just reaches slips."),
  ACCESS(
      "getting in and out",
      "Ways in and out are those of single limbs through the drawing, good to a thumb's breadth, and how high is"
          + " easy is common practice: try them on the real machine on its stand, in boots and"
          + " helmet, with somebody holding it, and try to get out with each section jammed shut."),
  GAPS(
      "gaps",
      "Gaps are those of the drawing: tubes are bent by hand and tyres grow. Measure them before"
          + " you ride, with the springs pressed to their stops and the steering at full lock: stops"
          + " and sections that are open are not looked at while it turns, and of what cables and"
          + " hoses meet only tyres, the road, people and heat."),
  OPENING(
      "opening",
      "What opens can fall shut on hands and heads: prop it, keep fingers out of its links, and make"
          + " sure that one can get out while it is jammed."),
  PLACES("wheels and places", ""),
  CLEARANCE(
      "clearance",
      "Clearance is that of the springs and masses given, on a flat road: a hump or a kerb needs"
          + " more. Weigh the machine and measure again."),
  SAG("springs", "Springs are taken as straight lines and masses as given: measure the real sag."),
  LEAN(
      "lean",
      "Lean is plain geometry of a steady turn: bumps, braking and a worn tyre take some of it, and"
          + " something hard that touches the road can lever the tyres off it. Come near it slowly."),
  STAND(
      "stand",
      "A machine that tips hurts people: try the stand on the real ground, with somebody holding"
          + " the machine, and never leave it on a soft road or with somebody on it."),
  STEERING(
      "steering",
      "Trail is plain geometry; it does not promise that a machine is stable. Try it at walking pace"
          + " on an empty place first."),
  BALANCE("balance", WhippleModel.CAUTION + " Try the machine at walking pace on an empty place."),
  WIND("side wind", Crosswind.CAUTION),
  LOADS(
      "loads",
      "Loads and lift are plain statics of the masses given: weigh the finished machine on two"
          + " scales before you trust them. Tyres may slide long before a wheel lifts."),
  ELECTRICS(
      "electrics",
      "A plain sum of the figures given: generators give less at idle, batteries less when cold, old"
          + " or emptied fast, and wires and fuses are not looked at. Measure the current before you"
          + " trust it."),
  LAW(
      "law",
      "These are reference figures from law texts and summaries, not legal advice. A one-off machine"
          + " is judged by the local code, the registration authority and a licensed inspection, and"
          + " rules change. A pass means only: inside the figures listed here.");

  private final String title;
  private final String caution;

  FindingGroup(String title, String caution) {
    this.title = title;
    this.caution = caution;
  }

  public String title() {
    return title;
  }

  /** Returns what to be careful about with these figures, in plain words; may be empty. */
  public String caution() {
    return caution;
  }
}
