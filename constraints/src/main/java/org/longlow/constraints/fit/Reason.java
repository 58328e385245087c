package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.check.BodyChecks.Answer;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.check.person.AccessFindings;
import org.longlow.constraints.check.person.ContactFindings;
import org.longlow.constraints.check.person.EffortFindings;
import org.longlow.constraints.check.person.HandFindings;
import org.longlow.constraints.check.person.PoseFindings;
import org.longlow.constraints.check.person.SeatFindings;
import org.longlow.constraints.check.person.SightFindings;
import org.longlow.constraints.check.person.StopFindings;
import org.longlow.constraints.check.road.GroundFindings;
import org.longlow.constraints.check.road.LoadFindings;
import org.longlow.constraints.check.road.SagFindings;
import org.longlow.constraints.check.road.TyreFindings;

/**
 * Why somebody does not fit: a failing finding without the person it is about.
 *
 * @param key the finding's name without the person, such as {@code gap.tank}
 * @param words it in plain words, such as {@code too close to tank}
 */
public record Reason(String key, String words) implements Comparable<Reason> {

  /** Returns the reasons that an answer about somebody gives: one for each cure that it wants. */
  static List<Reason> of(Answer answer, String person) {
    List<String> path = new ArrayList<>(answer.about().path());
    path.removeIf(step -> step.equals(person.replace(".", "..")));
    FindingKind kind = answer.kind();
    String key = path.isEmpty() ? kind.word() : kind.word() + "." + String.join(".", path);
    if (kind == SightFindings.SIGHT && SightFindings.hangs(answer.about())) {
      Reason far = new Reason(key, "sees the road only up to an edge that hangs before it");
      return SightFindings.late(answer.about())
          ? List.of(new Reason(key, words(answer, path)), far)
          : List.of(far);
    }
    return List.of(new Reason(key, words(answer, path)));
  }

  private static String words(Answer answer, List<String> path) {
    FindingKind kind = answer.kind();
    String first = path.isEmpty() ? "" : path.get(0);
    if (kind == GapFindings.GAP) {
      return "too close to " + first;
    }
    if (kind == PoseFindings.REACH) {
      return first + " do not reach";
    }
    if (kind == PoseFindings.POSTURE) {
      return aspect(answer) + " beyond what joints do";
    }
    if (kind == EffortFindings.EFFORT) {
      return aspect(answer); // such as effort of the neck
    }
    if (kind == ContactFindings.CONTACT) {
      return "presses hard on the pan";
    }
    if (kind == ContactFindings.VIBRATION) {
      return "shaken on the pan, which is an estimate";
    }
    if (kind == SeatFindings.SINK) {
      return "sinks to the board of " + first;
    }
    if (kind == SeatFindings.SEAT) {
      return path.isEmpty() ? "cannot be seated" : first + " does not carry them";
    }
    if (kind == SightFindings.SIGHT) {
      return "sees the road too late";
    }
    if (kind == SightFindings.FOOT) {
      return "foot does not reach the road";
    }
    if (kind == HandFindings.HANDS) {
      return "loses a grip before full lock";
    }
    if (kind == StopFindings.FEET_DOWN) {
      return "cannot put both feet down at a stop";
    }
    if (kind == StopFindings.HOLD_UP) {
      return "cannot hold the machine on a slope";
    }
    if (kind == AccessFindings.GET_OUT) {
      return "does not get out";
    }
    if (kind == GroundFindings.CLEARANCE) {
      return "too little clearance under them";
    }
    if (kind == SagFindings.SAG) {
      return first + " springs pressed to their stop";
    }
    if (kind == LoadFindings.LOAD) {
      return "share of the weight on the front wheel";
    }
    if (kind == TyreFindings.TYRE_LOAD) {
      return "too heavy for the tyre of " + first;
    }
    return kind.word() + (first.isEmpty() ? "" : ": " + aspect(answer));
  }

  /** What of them, as it comes after their name. */
  private static String aspect(Answer answer) {
    String words = answer.about().words();
    int comma = words.indexOf(", ");
    return comma < 0 ? words : words.substring(comma + 2);
  }

  @Override
  public int compareTo(Reason other) {
    int first = key.compareTo(other.key);
    return first != 0 ? first : words.compareTo(other.words);
  }
}
