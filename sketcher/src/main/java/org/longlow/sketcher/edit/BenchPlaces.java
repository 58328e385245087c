package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Keeps rows of a bench where they were: while a thing is picked, what is filled in stays in its
 * place, and the next field with it.
 */
public final class BenchPlaces {

  private BenchPlaces() {}

  /**
   * Returns {@code now} with the rows that {@code before} had in its groups and order; as it is if
   * that was about something else.
   */
  public static Bench keep(Bench before, Bench now) {
    if (!before.subject().equals(now.subject())) {
      return now;
    }
    Map<Target, Bench.Row> rows = new LinkedHashMap<>();
    now.groups().forEach(g -> g.rows().forEach(r -> rows.put(r.target(), r)));
    Map<String, List<Bench.Row>> groups = new LinkedHashMap<>();
    for (Bench.Group group : before.groups()) {
      List<Bench.Row> kept = new ArrayList<>();
      group.rows().stream()
          .filter(r -> rows.containsKey(r.target()))
          .forEach(r -> kept.add(rows.remove(r.target())));
      if (!kept.isEmpty()) {
        groups.put(group.heading(), kept);
      }
    }
    for (Bench.Group group : now.groups()) {
      List<Bench.Row> there = groups.get(group.heading());
      Bench.Row last = null;
      for (Bench.Row row : group.rows()) {
        if (rows.containsKey(row.target())) {
          if (there == null) {
            there = new ArrayList<>();
            groups = with(groups, group.heading(), there, now);
          }
          there.add(there.indexOf(last) + 1, row);
          last = row;
        } else if (there != null && there.contains(row)) {
          last = row;
        }
      }
    }
    return new Bench(
        now.subject(),
        now.title(),
        now.kind(),
        now.note(),
        groups.entrySet().stream().map(e -> new Bench.Group(e.getKey(), e.getValue())).toList());
  }

  /** Returns the groups with one more, before the first that comes after it in {@code now}. */
  private static Map<String, List<Bench.Row>> with(
      Map<String, List<Bench.Row>> groups, String heading, List<Bench.Row> rows, Bench now) {
    List<String> order = now.groups().stream().map(Bench.Group::heading).toList();
    Map<String, List<Bench.Row>> all = new LinkedHashMap<>();
    groups.forEach(
        (other, its) -> {
          if (order.indexOf(other) > order.indexOf(heading)) {
            all.putIfAbsent(heading, rows);
          }
          all.put(other, its);
        });
    all.putIfAbsent(heading, rows);
    return all;
  }
}
