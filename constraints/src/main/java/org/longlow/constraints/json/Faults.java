package org.longlow.constraints.json;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Collects faults while a file is read.
 *
 * <p>Faults of structure are those that the published schema speaks of; faults of meaning are the
 * rest. A place with a fault of structure gets none of meaning on top.
 */
final class Faults {

  /** Most faults listed; a file with more is not a layout file at all. */
  static final int MOST = 200;

  private final List<Fault> list = new ArrayList<>();
  private final Set<String> broken = new HashSet<>();
  private boolean structure;
  private int left;

  void structure(String path, String value, String message, String remedy) {
    structure = true;
    broken.add(path);
    add(new Fault(path, value, message, remedy));
  }

  void meaning(String path, String value, String message, String remedy) {
    if (!broken.contains(path)) {
      add(new Fault(path, value, message, remedy));
    }
  }

  private void add(Fault fault) {
    if (list.size() < MOST) {
      list.add(fault);
    } else {
      left++;
    }
  }

  int count() {
    return list.size() + left;
  }

  boolean isEmpty() {
    return list.isEmpty();
  }

  /** Returns whether the published schema refuses the file too. */
  boolean breaksStructure() {
    return structure;
  }

  List<Fault> list() {
    if (left == 0) {
      return List.copyOf(list);
    }
    List<Fault> all = new ArrayList<>(list);
    all.add(new Fault("$", "", "has " + left + " more faults", "mend the ones above first"));
    return List.copyOf(all);
  }
}
