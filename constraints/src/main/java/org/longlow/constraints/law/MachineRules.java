package org.longlow.constraints.law;

import static org.longlow.constraints.law.Known.CHECKED;
import static org.longlow.constraints.law.Known.FROM_MEMORY;
import static org.longlow.constraints.law.Known.TRANSCRIBED;

import java.util.List;

/** Rules on mirrors, foot rests, stand and handlebar. Lengths mm, areas mm²; 1 in = 25.4 mm. */
public final class MachineRules {

  /** Handlebar height above the seat under the rider in many US states: 15 in. */
  public static final double HANDLEBAR_MM = 381;

  public static final LawSource US_HANDLEBAR =
      new LawSource(
          "state law, varies by state; no federal figure",
          "Connecticut OLR report 2006-R-0537; 32 CFR 636.28(f); Georgia 40-6-314",
          "grips at most 15 in above the seat as depressed by the rider in many states; elsewhere 25"
              + " in, 30 in, shoulder or eye height, or nothing, and changed since 2006",
          CHECKED);

  public static final LawSource US_FOOTRESTS =
      new LawSource(
          "49 CFR 571.123 S5.2.5",
          "quoted in NHTSA letters",
          "a foot rest at each seating position, a board counts; a passenger's folds rearward and"
              + " upward when not in use",
          TRANSCRIBED);

  public static final LawSource US_STAND =
      new LawSource(
          "49 CFR 571.123 S5.2.4",
          "quoted in an NHTSA letter of 4 Dec 1990",
          "the stand folds rearward and upward if it touches the ground while the machine moves"
              + " forward",
          TRANSCRIBED);

  /** Areas are 12.5 in² and 10 in²; COMAR 11.14.03.10 was read, the federal text was not. */
  public static final LawSource US_MIRRORS =
      new LawSource(
          "49 CFR 571.111 S10",
          "areas repeated in COMAR 11.14.03.10, which was read",
          "a mirror of 8064.5 mm2 flat or 6451.6 mm2 convex; its centre 279 mm out from the"
              + " centreline is from memory; Maryland asks two mirrors",
          FROM_MEMORY);

  public static final LawSource UK_STAND =
      new LawSource(
          "SI 1986/1078 reg. 38",
          "edition not noted",
          "a stand that can neither upset the machine nor close by itself if the lean of the parked"
              + " machine changes",
          CHECKED);

  public static final LawSource UK_MIRRORS =
      new LawSource(
          "SI 1986/1078 reg. 33", "copy, date not noted", "no mirror on two wheels", TRANSCRIBED);

  private MachineRules() {}

  /** Returns what these rules ask and nobody could read. */
  public static List<NotCovered> notCovered() {
    return List.of(
        new NotCovered(
            RuleSet.UN_R53,
            "machine",
            "mirrors, foot rests, stand and handlebar: this regulation speaks of lamps only, other"
                + " regulations of the rest",
            new LawSource("UN R53", "contents", "installation of lamps", TRANSCRIBED)),
        new NotCovered(
            RuleSet.UK,
            "machine",
            "foot rests and handlebar: their rules were not read",
            new LawSource(
                "SI 1986/1078", "text not read", "construction and use of vehicles", FROM_MEMORY)));
  }
}
