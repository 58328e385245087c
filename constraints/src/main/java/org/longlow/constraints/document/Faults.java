package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.words.Counted;
import org.longlow.constraints.words.Names;

/**
 * Collects the faults of a document.
 *
 * <p>Faults of structure are those that the published schema speaks of; faults of meaning are the
 * rest. A place with a fault of structure gets none of meaning on top. A file is gone through
 * twice, for its structure and for its meaning; the list follows the order of the document all the
 * same.
 */
public final class Faults {

  /** Most faults listed; a file with more is not a layout file at all. */
  public static final int MOST = 200;

  /**
   * One thing that may be behind faults at several places.
   *
   * @param path where it is, empty where it is nowhere in the file
   * @param value the value found there
   * @param name what it is called
   */
  record Cause(String path, String value, String name) {}

  private record Placed(int group, int entry, Fault fault, Optional<Cause> cause) {}

  private final List<Placed> list = new ArrayList<>();
  private final Set<String> broken = new HashSet<>();
  private boolean structure;
  private int group;
  private int entry;

  /** Says which group of the document, and which entry of it, the next faults are about. */
  public void at(int nextGroup, int nextEntry) {
    group = nextGroup;
    entry = nextEntry;
  }

  public void structure(String path, String value, String message, String remedy) {
    structure = true;
    broken.add(path);
    list.add(new Placed(group, entry, new Fault(path, value, message, remedy), Optional.empty()));
  }

  public void meaning(String path, String value, String message, String remedy) {
    meaning(path, value, message, remedy, Optional.empty());
  }

  /** Reports a fault that is told once with all others of the same cause. */
  void meaning(String path, String value, String message, String remedy, Optional<Cause> cause) {
    if (isSound(path)) {
      list.add(new Placed(group, entry, new Fault(path, value, message, remedy), cause));
    }
  }

  /**
   * Reports a value that is none of {@code words}.
   *
   * @param text the value where it is text, else null
   */
  public void notOneOf(String path, String value, String text, Collection<String> words) {
    structure(
        path,
        value,
        "must be one of " + String.join(", ", words),
        text == null
            ? "write one of these, in quotes"
            : Names.nearest(text, words).map(n -> "did you mean " + n + "?").orElse(""));
  }

  /** Returns whether there is no fault of structure right at {@code path}. */
  boolean isSound(String path) {
    return !broken.contains(path);
  }

  public int count() {
    return list.size();
  }

  public boolean isEmpty() {
    return list.isEmpty();
  }

  /** Returns whether the published schema refuses the file too. */
  public boolean breaksStructure() {
    return structure;
  }

  /** Returns the faults in the order of the document, those of one cause as one. */
  public List<Fault> list() {
    List<Placed> ordered =
        list.stream()
            .sorted(Comparator.comparingInt(Placed::group).thenComparingInt(Placed::entry))
            .toList();
    Map<Object, List<Fault>> causes = new LinkedHashMap<>();
    for (Placed placed : ordered) {
      Object cause = placed.cause().isPresent() ? placed.cause().get() : placed;
      causes.computeIfAbsent(cause, c -> new ArrayList<>()).add(placed.fault());
    }
    List<Fault> all = new ArrayList<>();
    causes.forEach((cause, faults) -> all.add(told(cause, faults)));
    int left = all.size() - MOST;
    if (left > 0) {
      all.subList(MOST, all.size()).clear();
      all.add(
          new Fault("$", "", "has " + Counted.of(left, "more fault"), "mend the ones above first"));
    }
    return List.copyOf(all);
  }

  private static Fault told(Object cause, List<Fault> faults) {
    Fault first = faults.get(0);
    if (faults.size() == 1 || !(cause instanceof Cause one)) {
      return first;
    }
    String others = Counted.of(faults.size() - 1, "more place");
    return one.path().isEmpty()
        ? new Fault(
            first.path(),
            first.value(),
            first.message() + ", and " + others + " use" + (faults.size() == 2 ? "s" : "") + " it",
            first.remedy())
        : new Fault(
            one.path(),
            one.value(),
            "does not suit "
                + faults.size()
                + " places that use "
                + one.name()
                + ": "
                + first.path()
                + ' '
                + first.message(),
            "write another value, or let them use another measure");
  }
}
