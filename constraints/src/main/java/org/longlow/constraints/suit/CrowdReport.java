package org.longlow.constraints.suit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.fit.BodyJudge;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.fit.Judged;
import org.longlow.constraints.fit.Reason;
import org.longlow.constraints.study.Study;

/**
 * Where moved pins suit a crowd.
 *
 * @param before the layout as it is
 * @param now how the crowd fits it as it is
 * @param places distinct places where more of them fit, the best first; none if none was found
 * @param sample how many of the crowd decided on the way
 * @param decided whether the searches ended by themselves; false where they had looked at as many
 *     places as the settings allow, so that there may be better ones
 */
public record CrowdReport(
    Study before, FitReport now, List<Place> places, int sample, boolean decided) {

  public CrowdReport {
    places = List.copyOf(places);
  }

  /**
   * One place.
   *
   * @param alternative the layout there, and what it means for its own crew
   * @param fit how the crowd fits there
   */
  public record Place(SuitReport.Alternative alternative, FitReport fit) {

    /** Whether something of the machine fails here that did not, whoever sits on it. */
    public boolean breaksTheMachine() {
      return alternative.changes().stream()
          .anyMatch(
              c ->
                  c.after() == Verdict.FAIL
                      && c.before() != Verdict.FAIL
                      && !BodyJudge.KINDS.contains(c.finding().kind().word()));
    }
  }

  /**
   * Of how many something fails, before and after.
   *
   * @param reason what
   */
  public record Trade(Reason reason, int before, int after) {}

  /** Returns what stops more or fewer people at a place than now, what changed most first. */
  public List<Trade> trades(Place place) {
    Map<Reason, int[]> counts = new LinkedHashMap<>();
    now.stopping()
        .forEach(s -> counts.computeIfAbsent(s.reason(), r -> new int[2])[0] = s.all().count());
    place
        .fit()
        .stopping()
        .forEach(s -> counts.computeIfAbsent(s.reason(), r -> new int[2])[1] = s.all().count());
    List<Trade> trades = new ArrayList<>();
    counts.forEach(
        (reason, n) -> {
          if (n[0] != n[1]) {
            trades.add(new Trade(reason, n[0], n[1]));
          }
        });
    trades.sort(Comparator.comparingInt(t -> -Math.abs(t.after() - t.before())));
    return trades;
  }

  /** Returns how many fit at a place who do not fit now. */
  public long takenIn(Place place) {
    return differing(now.people(), place.fit().people());
  }

  /** Returns how many fit now who do not fit at a place. */
  public long lost(Place place) {
    return differing(place.fit().people(), now.people());
  }

  private static long differing(List<Judged> without, List<Judged> with) {
    long count = 0;
    for (int i = 0; i < with.size(); i++) {
      if (with.get(i).fits() && !without.get(i).fits()) {
        count++;
      }
    }
    return count;
  }
}
