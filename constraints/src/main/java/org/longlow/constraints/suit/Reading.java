package org.longlow.constraints.suit;

import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.PoseFindings;
import org.longlow.constraints.check.person.SeatFindings;
import org.longlow.constraints.check.person.SightFindings;
import org.longlow.constraints.check.road.GroundFindings;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.constraints.check.road.LoadFindings;
import org.longlow.constraints.layout.Occupant;

/**
 * One margin as the search sees it.
 *
 * @param id name of the finding it stands for
 * @param who whom it is about, on which seat, if it is about one
 * @param person whom of the crew it counts for, or empty
 * @param kind what kind of margin
 * @param margin how far inside the limit, negative outside, in the unit of the kind
 */
record Reading(String id, Optional<Occupant> who, String person, Kind kind, double margin) {

  /** Kinds of margins. Scales and cushions are judgements of this tool. */
  enum Kind {
    /** Joint angles, deg; 13° either way is how much riders on one machine differ. */
    POSTURE(13, 1, false),
    /** Head off its rest, mm. */
    HEAD(30, 0, false),
    /** Friction that holds the rider. */
    HOLD(0.05, 0.005, false),
    /** Foam left before the board, mm. */
    SINK(5, 0.5, false),
    /** Nobody can sit there at all. */
    SEAT(1, 0, true),
    /** Hands and feet that do not reach, mm. */
    REACH(10, 0, true),
    /** Gaps, mm. */
    GAP(10, 0.5, true),
    /** Height above the road, mm. */
    CLEARANCE(10, 0.5, true),
    /** Heel off the ground at a stop, mm. */
    FOOT(10, 1, true),
    /** Sight line over everything in front, deg below what is asked. */
    SIGHT(1, 0.02, true),
    /** Lean before anything touches, deg. */
    LEAN(1, 0.1, true),
    /** Share of the weight on the front wheel. */
    SHARE(0.01, 0.001, true),
    /** What the layout wishes for the share; no verdict hangs on it. */
    WISHED_SHARE(0.05, 0, false),
    /** What the layout wishes to see of the road, deg. */
    WISHED_SIGHT(5, 0, false);

    private final double scale;
    private final double cushion;
    private final boolean hard;

    Kind(double scale, double cushion, boolean hard) {
      this.scale = scale;
      this.cushion = cushion;
      this.hard = hard;
    }

    /** Whether a finding fails when the margin is negative; the others only need care. */
    boolean hard() {
      return hard;
    }

    double scale() {
      return scale;
    }
  }

  /** Whether it is one of the layout's own wishes, which no finding speaks of. */
  boolean wished() {
    return kind == Kind.WISHED_SHARE || kind == Kind.WISHED_SIGHT;
  }

  /** How a finding that says FAIL without a margin counts. */
  private static final double HOPELESS = -10;

  /** Returns the reading of a finding, or null if nothing is to be searched for. */
  static Reading of(Finding f, String person) {
    Kind kind = kind(f.kind());
    if (kind == null) {
      return null;
    }
    if (kind == Kind.SEAT) {
      return new Reading(f.id(), f.who(), person, kind, f.verdict() == Verdict.FAIL ? HOPELESS : 0);
    }
    double margin = f.margin();
    if (Double.isNaN(margin)) {
      return null;
    }
    return new Reading(f.id(), f.who(), person, kind, margin);
  }

  private static final Map<FindingKind, Kind> KINDS =
      Map.of(
          PoseFindings.POSTURE, Kind.POSTURE,
          SeatFindings.HOLD, Kind.HOLD,
          SeatFindings.SINK, Kind.SINK,
          SeatFindings.SEAT, Kind.SEAT,
          PoseFindings.REACH, Kind.REACH,
          SightFindings.FOOT, Kind.FOOT,
          GroundFindings.CLEARANCE, Kind.CLEARANCE,
          LeanFindings.LEAN, Kind.LEAN,
          LoadFindings.LOAD, Kind.SHARE);

  /** Returns the kind of margin of a finding, or null if nothing is to be searched for. */
  static Kind kind(FindingKind kind) {
    return KINDS.get(kind);
  }

  /** Whether a verdict of fail goes with this margin. */
  boolean fails() {
    return kind.hard() && margin < 0;
  }

  /**
   * How far the margin is from where the search wants it, in scales; 0 where it is content.
   *
   * @param hardWeight how much more a failing finding counts than one spread of discomfort
   */
  double stray(double hardWeight) {
    double miss = Math.max(0, kind.cushion - margin) / kind.scale;
    // squares up to one scale, straight from there: two small misses are worse than one large one
    return kind.hard() ? hardWeight * (miss <= 1 ? miss : Math.sqrt(2 * miss - 1)) : miss;
  }
}
