package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
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

  private record Placed(int group, int entry, Fault fault) {}

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
    list.add(new Placed(group, entry, new Fault(path, value, message, remedy)));
  }

  public void meaning(String path, String value, String message, String remedy) {
    if (isSound(path)) {
      list.add(new Placed(group, entry, new Fault(path, value, message, remedy)));
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

  /** Returns the faults in the order of the document. */
  public List<Fault> list() {
    List<Fault> all =
        new ArrayList<>(
            list.stream()
                .sorted(Comparator.comparingInt(Placed::group).thenComparingInt(Placed::entry))
                .limit(MOST)
                .map(Placed::fault)
                .toList());
    int left = list.size() - all.size();
    if (left > 0) {
      all.add(
          new Fault("$", "", "has " + Counted.of(left, "more fault"), "mend the ones above first"));
    }
    return List.copyOf(all);
  }
}
