package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.longlow.constraints.check.BodyChecks;
import org.longlow.constraints.check.BodyChecks.Answer;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Gear;
import org.longlow.rider.geom.OutOfRange;

/**
 * Judges people on one machine.
 *
 * @param checks the machine
 * @param gear what all of them wear
 * @param without words of kinds of findings that do not count, such as {@code hands}
 */
public record BodyJudge(BodyChecks checks, Gear gear, Set<String> without) {

  /** Words of the kinds of findings that people are judged by. */
  public static final Set<String> KINDS =
      Collections.unmodifiableSet(
          new TreeSet<>(
              List.of(
                  "board",
                  "body",
                  "clearance",
                  "contact",
                  "effort",
                  "feet-down",
                  "foot",
                  "footrest",
                  "gap",
                  "get-out",
                  "hands",
                  "head",
                  "hold",
                  "hold-up",
                  "legs-in",
                  "lever",
                  "lift",
                  "load",
                  "pedal",
                  "posture",
                  "reach",
                  "rise",
                  "sag",
                  "seat",
                  "seeing-neck",
                  "sight",
                  "sink",
                  "step-over",
                  "switch",
                  "vibration")));

  /** Whom findings are about while they are judged. */
  static final String SOMEBODY = "somebody";

  public BodyJudge {
    without = Set.copyOf(without);
  }

  /** Returns the same people's judge on the same machine adjusted. */
  BodyJudge on(BodyChecks adjusted) {
    return new BodyJudge(adjusted, gear, without);
  }

  /** Returns whether somebody fits. */
  boolean fits(BodyMeasures measures) {
    return judge(0, "", measures).fits();
  }

  /** Returns one of a crowd on the machine. */
  Judged judge(Crowd crowd, int index) {
    return judge(index, crowd.name(index), crowd.person(index));
  }

  private Judged judge(int index, String name, BodyMeasures measures) {
    Set<Reason> fails = new TreeSet<>();
    Set<Reason> cares = new TreeSet<>();
    try {
      for (Answer answer : checks.of(checks.sit(SOMEBODY, Body.of(measures, gear)))) {
        if (without.contains(answer.kind().word())) {
          continue;
        }
        if (answer.verdict() == Verdict.FAIL) {
          fails.addAll(Reason.of(answer, SOMEBODY));
        } else if (answer.verdict() == Verdict.CAUTION) {
          cares.addAll(Reason.of(answer, SOMEBODY));
        }
      }
    } catch (OutOfRange e) {
      fails.add(new Reason("body", "measures that make no body"));
    }
    List<Reason> failing = new ArrayList<>(fails);
    Verdict verdict =
        !failing.isEmpty() ? Verdict.FAIL : cares.isEmpty() ? Verdict.PASS : Verdict.CAUTION;
    return Judged.of(index, name, measures, verdict, failing, List.copyOf(cares));
  }
}
