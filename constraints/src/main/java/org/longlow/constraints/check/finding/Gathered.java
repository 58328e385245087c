package org.longlow.constraints.check.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.words.Units;

/**
 * Findings that ask for the same care, as people are shown them: the worst, and what else is like
 * it. What fails stands alone, always.
 *
 * @param worst the one that is told in full
 * @param more the others, worst first; may be empty
 */
public record Gathered(Finding worst, List<Finding> more) {

  /** More names than this are counted. */
  private static final int NAMED = 4;

  public Gathered {
    more = List.copyOf(more);
  }

  private record Alike(FindingKind kind, String aspect) {}

  /** Returns what fails, and what needs care for something about the machine; worst first. */
  public static List<Gathered> open(Collection<Finding> findings) {
    return of(findings, Finding::open);
  }

  /** Returns what needs care only until somebody reads what it rests on; see {@link #open}. */
  public static List<Gathered> aside(Collection<Finding> findings) {
    return of(findings, Finding::aside);
  }

  /** Returns what passes and what does not apply, each alone. */
  public static List<Gathered> settled(Collection<Finding> findings) {
    return of(findings, f -> !f.open() && !f.aside());
  }

  /**
   * Returns all of them in the order in which people read them: of what is {@link #open} the worst
   * of each first, then those like it, then what is {@link #aside}, then what passes.
   */
  public static List<Finding> order(Collection<Finding> findings) {
    Set<Finding> ordered = new LinkedHashSet<>();
    open(findings).forEach(g -> ordered.add(g.worst()));
    ordered.addAll(WorstFirst.of(findings));
    return List.copyOf(ordered);
  }

  private static List<Gathered> of(Collection<Finding> findings, Predicate<Finding> which) {
    Map<Object, List<Finding>> alike = new LinkedHashMap<>();
    for (Finding f : WorstFirst.of(findings.stream().filter(which).toList())) {
      alike.computeIfAbsent(key(f), k -> new ArrayList<>()).add(f);
    }
    return alike.values().stream()
        .map(all -> new Gathered(all.get(0), all.subList(1, all.size())))
        .toList();
  }

  private static Object key(Finding f) {
    if (f.kind().fromMemory() || f.kind().notCovered()) {
      return f.kind();
    }
    // each rule of law is another question, whichever lamps it is about
    boolean alone = f.verdict() != Verdict.CAUTION || WorstFirst.leads(f);
    return alone || f.group() == FindingGroup.LAW ? f : new Alike(f.kind(), f.about().question());
  }

  /** Says how many more there are, after its name; nothing where none is. */
  public String count() {
    return more.isEmpty() ? "" : " and " + more.size() + " more";
  }

  /** Says what else is like it, in names, after its sentence; nothing where nothing is. */
  public String others() {
    return more.isEmpty() ? "" : " Also " + more.size() + " more: " + names() + ".";
  }

  /** Returns what else is like each of what is {@link #open}, by its id, where something is. */
  public static Map<String, String> others(Collection<Finding> findings) {
    return open(findings).stream()
        .filter(g -> !g.more.isEmpty())
        .collect(Collectors.toMap(g -> g.worst.id(), Gathered::others));
  }

  private String names() {
    String some =
        more.stream().limit(NAMED).map(Finding::subject).collect(Collectors.joining("; "));
    return more.size() > NAMED ? some + " and others" : some;
  }

  /**
   * Says what needs care only until a source is read: one sentence for figures, law, and the rest.
   */
  public static List<String> asides(Collection<Finding> findings, Units units) {
    List<String> said = new ArrayList<>();
    List<String> figures = new ArrayList<>();
    for (Gathered g : aside(findings)) {
      FindingKind kind = g.worst.kind();
      if (kind.fromMemory()) {
        int rules = 1 + g.more.size();
        said.add(
            Counted.of(rules, "rule")
                + Counted.either(
                    rules,
                    " of law is met as far as its text is known from memory: read the text before"
                        + " you rely on it.",
                    " of law are met as far as their texts are known from memory: read the texts"
                        + " before you rely on them."));
      } else if (kind.notCovered()) {
        said.add(
            Counted.of(1 + g.more.size(), "question")
                + " of law not covered here: ask whoever inspects the machine.");
      } else {
        figures.add(g.inside(units));
      }
    }
    if (!figures.isEmpty()) {
      said.add(
          0,
          "Inside limits that are known from memory only, so look up their sources before you rely"
              + " on them: "
              + String.join("; ", figures)
              + ".");
    }
    return said;
  }

  private String inside(Units units) {
    String figure = Double.isNaN(worst.value()) ? "" : " " + worst.figure(units);
    return worst.id() + figure + count();
  }
}
