package org.longlow.constraints.check.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.longlow.rider.words.Words;

/**
 * Says of findings about one person that they pull something opposite ways, and what serves both.
 */
public final class Contradicting {

  private Contradicting() {}

  /** Returns the same findings; those that contradict others of the same person say so. */
  public static List<Finding> told(List<Finding> findings) {
    List<Finding> pulling =
        findings.stream().filter(f -> f.pull().isPresent() && f.who().isPresent()).toList();
    List<Finding> told = new ArrayList<>();
    for (Finding f : findings) {
      told.add(
          pulling.stream()
              .filter(other -> against(f, other))
              .findFirst()
              .map(other -> told(f, other))
              .orElse(f));
    }
    return told;
  }

  private static boolean against(Finding f, Finding other) {
    return f.pull().isPresent()
        && f.who().equals(other.who())
        && f.pull().get().against(other.pull().orElseThrow());
  }

  private static Finding told(Finding f, Finding other) {
    Pull pull = f.pull().orElseThrow();
    Pull back = other.pull().orElseThrow();
    List<String> both =
        Stream.of(pull.instead(), back.instead()).filter(s -> !s.isEmpty()).distinct().toList();
    return f.withText(
        Words.of(
            f.words(),
            " But "
                + other.id()
                + " wants "
                + back.wants()
                + (both.isEmpty()
                    ? ": no place of it serves both, so weigh them against each other."
                    : "; both are served where you " + String.join(", or ", both) + ".")));
  }
}
