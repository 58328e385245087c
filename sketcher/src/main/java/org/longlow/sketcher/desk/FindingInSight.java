package org.longlow.sketcher.desk;

import java.util.List;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;

/**
 * Which finding of the list is kept in sight: the one picked, until it is mended. Then it goes down
 * the list alone, and what stands in its place is read next, or the first that fails. Not for
 * several threads.
 */
public final class FindingInSight {

  private List<Finding> before = List.of();
  private String picked = "";
  private String seen = "";

  /**
   * Returns the index of the finding to be kept in sight, -1 for none.
   *
   * @param now the findings as they are listed
   * @param chosen id of the finding picked, or empty
   * @param live whether something still moves: what is picked is watched then, however it goes
   */
  public int index(List<Finding> now, String chosen, boolean live) {
    int at = at(now, chosen);
    if (!chosen.equals(picked) || fails(now, at)) {
      picked = chosen;
      seen = chosen;
    }
    if (live) {
      return at;
    }
    int was = at(before, seen);
    int is = at(now, seen);
    if (fails(before, was) && !fails(now, is) && !now.isEmpty()) {
      is = next(now, Math.min(was, now.size() - 1));
      seen = now.get(is).id();
    }
    before = List.copyOf(now);
    return is;
  }

  /** Returns the first that fails, from a place on and then from the top; else that place. */
  private static int next(List<Finding> now, int place) {
    for (int i = 0; i < now.size(); i++) {
      int at = (place + i) % now.size();
      if (fails(now, at)) {
        return at;
      }
    }
    return place;
  }

  private static boolean fails(List<Finding> all, int i) {
    return i >= 0 && all.get(i).verdict() == Verdict.FAIL;
  }

  private static int at(List<Finding> all, String id) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).id().equals(id)) {
        return i;
      }
    }
    return -1;
  }
}
