package org.longlow.constraints.fit;

import java.util.List;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.rider.body.BodyMeasures;

/**
 * One person of a crowd on the machine.
 *
 * @param index which of the crowd, from 0
 * @param name what they are called
 * @param measures their measures
 * @param verdict the worst of all that depends on their body
 * @param fails why they do not fit, in order; empty where nothing fails
 * @param cares what needs care about them, likewise
 */
public record Judged(
    int index,
    String name,
    BodyMeasures measures,
    Verdict verdict,
    List<Reason> fails,
    List<Reason> cares) {

  public Judged {
    fails = List.copyOf(fails);
    cares = List.copyOf(cares);
  }

  /** Whether nothing about them fails. */
  public boolean fits() {
    return verdict != Verdict.FAIL;
  }

  /** Whether they are outside the survey, or their measures do not go together in it. */
  public boolean outside() {
    return !measures.notes().isEmpty();
  }
}
