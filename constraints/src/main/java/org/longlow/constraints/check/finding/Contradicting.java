package org.longlow.constraints.check.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.layout.Occupant;
import org.longlow.rider.words.Words;

/**
 * Says of findings about one person that they pull something opposite ways, and what serves both.
 */
public final class Contradicting {

  private Contradicting() {}

  /** Returns the same findings; those that contradict others of the same person say so. */
  public static List<Finding> told(List<Finding> findings) {
    Map<Optional<Occupant>, List<Finding>> pulling =
        findings.stream()
            .filter(f -> f.pull().isPresent() && f.who().isPresent())
            .collect(Collectors.groupingBy(Finding::who));
    List<Finding> told = new ArrayList<>();
    for (Finding f : findings) {
      told.add(
          pulling.getOrDefault(f.who(), List.of()).stream()
              .filter(other -> against(f, other))
              .findFirst()
              .map(other -> told(f, other))
              .orElse(f));
    }
    return told;
  }

  private static boolean against(Finding f, Finding other) {
    return f.pull().isPresent() && f.pull().get().against(other.pull().orElseThrow());
  }

  private static Finding told(Finding f, Finding other) {
    Tug pull = f.pull().orElseThrow();
    Tug back = other.pull().orElseThrow();
    List<String> ways = new ArrayList<>();
    if (!pull.instead().isEmpty()) {
      ways.add("do that, and for this " + pull.instead());
    }
    if (!back.instead().isEmpty()) {
      ways.add("do this, and for that " + back.instead());
    }
    return f.withText(
        Words.of(
            f.words(),
            " But "
                + other.id()
                + " wants "
                + back.wants()
                + (ways.isEmpty()
                    ? ": no place of it serves both, so weigh them against each other."
                    : ": " + String.join("; or ", ways) + ".")));
  }
}
