package org.longlow.constraints.fit;

import java.util.Arrays;
import java.util.List;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Sex;

/**
 * One person of a crowd on the machine. Of their measures it keeps no more than {@link BodyTrait}s,
 * for there may be a hundred thousand of them.
 *
 * @param index which of the crowd, from 0
 * @param name what they are called
 * @param sex whose survey
 * @param outside whether they are outside the survey, or their measures do not go together in it
 * @param traits in the order of {@link BodyTrait}
 * @param verdict the worst of all that depends on their body
 * @param fails why they do not fit, in order; empty where nothing fails
 * @param cares what needs care about them, likewise
 */
public record Judged(
    int index,
    String name,
    Sex sex,
    boolean outside,
    double[] traits,
    Verdict verdict,
    List<Reason> fails,
    List<Reason> cares) {

  public Judged {
    fails = List.copyOf(fails);
    cares = List.copyOf(cares);
  }

  /** Returns somebody with these measures. */
  public static Judged of(
      int index,
      String name,
      BodyMeasures measures,
      Verdict verdict,
      List<Reason> fails,
      List<Reason> cares) {
    return new Judged(
        index,
        name,
        measures.sex(),
        measures.isDoubtful(),
        Arrays.stream(BodyTrait.values()).mapToDouble(t -> t.of(measures)).toArray(),
        verdict,
        fails,
        cares);
  }

  /** Whether nothing about them fails. */
  public boolean fits() {
    return verdict != Verdict.FAIL;
  }

  /** Returns what they have of a trait. */
  public double of(BodyTrait trait) {
    return traits[trait.ordinal()];
  }
}
