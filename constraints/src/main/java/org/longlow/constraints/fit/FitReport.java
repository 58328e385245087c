package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.rider.body.Sex;

/**
 * How a crowd fits a machine.
 *
 * @param crowd who they are, in words
 * @param people each of them, in their order
 */
public record FitReport(String crowd, List<Judged> people) {

  public FitReport {
    people = List.copyOf(people);
  }

  /**
   * Why some do not fit.
   *
   * @param reason what fails
   * @param all of how many
   * @param alone of how many nothing else fails
   * @param who what sets them apart from all others
   */
  public record Stopping(Reason reason, Share all, Share alone, List<Telling> who) {}

  /** Returns how many have this verdict. */
  public Share share(Verdict verdict) {
    return share(p -> p.verdict() == verdict);
  }

  /** Returns of how many nothing fails. */
  public Share fitting() {
    return share(Judged::fits);
  }

  /** Returns of how many of a sex nothing fails. */
  public Share fitting(Sex sex) {
    List<Judged> own = people.stream().filter(p -> p.sex() == sex).toList();
    return new Share((int) own.stream().filter(Judged::fits).count(), own.size());
  }

  /** Returns how many are outside the survey. */
  public Share outside() {
    return share(Judged::outside);
  }

  private Share share(Predicate<Judged> counts) {
    return new Share((int) people.stream().filter(counts).count(), people.size());
  }

  /** Returns what sets those who do not fit apart from those who do. */
  public List<Telling> failing() {
    return Telling.of(
        people.stream().filter(p -> !p.fits()).toList(),
        people.stream().filter(Judged::fits).toList());
  }

  /** Returns what stops people, most of them first. */
  public List<Stopping> stopping() {
    Map<Reason, List<Judged>> by = new TreeMap<>();
    Map<Reason, Integer> alone = new HashMap<>();
    for (Judged person : people) {
      person.fails().forEach(r -> by.computeIfAbsent(r, x -> new ArrayList<>()).add(person));
      if (person.fails().size() == 1) {
        alone.merge(person.fails().get(0), 1, Integer::sum);
      }
    }
    List<Stopping> all = new ArrayList<>();
    by.forEach(
        (reason, stopped) ->
            all.add(
                new Stopping(
                    reason,
                    new Share(stopped.size(), people.size()),
                    new Share(alone.getOrDefault(reason, 0), people.size()),
                    Telling.of(
                        stopped,
                        people.stream().filter(p -> !p.fails().contains(reason)).toList()))));
    all.sort(Comparator.comparingInt(s -> -s.all().count()));
    return all;
  }

  /** Returns what needs care of how many, most of them first. */
  public Map<Reason, Share> caring() {
    Map<Reason, Integer> by = new TreeMap<>();
    people.forEach(p -> p.cares().forEach(r -> by.merge(r, 1, Integer::sum)));
    Map<Reason, Share> ranked = new LinkedHashMap<>();
    by.entrySet().stream()
        .sorted(Comparator.comparingInt(e -> -e.getValue()))
        .forEach(e -> ranked.put(e.getKey(), new Share(e.getValue(), people.size())));
    return ranked;
  }
}
