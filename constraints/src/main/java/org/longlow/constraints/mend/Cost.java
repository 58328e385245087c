package org.longlow.constraints.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.words.Said;
import org.longlow.rider.words.Units;

/**
 * A finding that comes out worse.
 *
 * @param before how it was; empty where there was none
 * @param after how it is then
 * @param units in which it is said
 */
public record Cost(Optional<Finding> before, Finding after, Units units) {

  /** Returns what is worse in {@code after}, what fails first. */
  static List<Cost> between(List<Finding> before, List<Finding> after, Units units) {
    Map<String, Finding> was = worst(before);
    List<Cost> costs = new ArrayList<>();
    worst(after)
        .forEach(
            (id, now) -> {
              Cost cost = new Cost(Optional.ofNullable(was.get(id)), now, units);
              if (cost.isOne()) {
                costs.add(cost);
              }
            });
    costs.sort(Comparator.comparing(Cost::after, WorstFirst.ORDER));
    return costs;
  }

  private static Map<String, Finding> worst(List<Finding> findings) {
    Map<String, Finding> worst = new LinkedHashMap<>();
    findings.forEach(
        f -> worst.merge(f.id(), f, (a, b) -> WorstFirst.ORDER.compare(b, a) < 0 ? b : a));
    return worst;
  }

  private boolean isOne() {
    Verdict was = before.map(Finding::verdict).orElse(Verdict.PASS);
    return after.verdict().compareTo(was) < 0 || fails() && was == Verdict.FAIL && missesMore();
  }

  /** As far as it is said; a change nobody reads is none. */
  private boolean missesMore() {
    Finding was = before.orElseThrow();
    return after.margin() < was.margin()
        && !after.unit().says(after.margin()).equals(was.unit().says(was.margin()));
  }

  /** Whether it fails then, or misses by more than it did. */
  public boolean fails() {
    return after.verdict() == Verdict.FAIL;
  }

  /** Returns it in words, such as {@code Bram, sight then fails, short by 12 mm}. */
  public String says() {
    String subject = Said.in(after.subject(), after.kind().word());
    if (!fails()) {
      return subject + " then needs care";
    }
    boolean known = after.margin() < 0;
    String by = known ? "short by " + after.unit().says(-after.margin(), units) : "";
    boolean failed = before.filter(b -> b.verdict() == Verdict.FAIL).isPresent();
    return failed
        ? subject
            + " is then "
            + by
            + " instead of "
            + after.unit().says(-before.get().margin(), units)
        : subject + " then fails" + (known ? ", " + by : "");
  }
}
