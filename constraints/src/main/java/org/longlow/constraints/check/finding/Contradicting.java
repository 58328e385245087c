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

  /**
   * Returns the same findings; those that contradict others of the same person say so. Whether they
   * do is found when their text is read, for some pulls take long to find.
   */
  public static List<Finding> told(List<Finding> findings) {
    Map<Optional<Occupant>, List<Finding>> pulling =
        findings.stream()
            .filter(f -> f.pull() != Tug.NONE && f.who().isPresent())
            .collect(Collectors.groupingBy(Finding::who));
    List<Finding> told = new ArrayList<>();
    for (Finding f : findings) {
      List<Finding> others = pulling.getOrDefault(f.who(), List.of());
      told.add(
          f.pull() == Tug.NONE || others.size() < 2
              ? f
              : f.withText(Words.of(f.words(), Words.later(() -> against(f, others)))));
    }
    return told;
  }

  private static Words against(Finding f, List<Finding> others) {
    Optional<Tug> pull = f.pull().get();
    for (Finding other : others) {
      Optional<Tug> back = pull.isEmpty() ? Optional.empty() : other.pull().get();
      if (back.isPresent() && pull.get().against(back.get())) {
        return against(pull.get(), other, back.get());
      }
    }
    return Words.NONE;
  }

  private static Words against(Tug pull, Finding other, Tug back) {
    List<String> ways = new ArrayList<>();
    if (!pull.instead().isEmpty()) {
      ways.add("do that, and for this " + pull.instead());
    }
    if (!back.instead().isEmpty()) {
      ways.add("do this, and for that " + back.instead());
    }
    return Words.of(
        " But "
            + other.about().words()
            + " ("
            + other.id()
            + ") wants "
            + back.wants()
            + (ways.isEmpty()
                ? ": no place of it serves both, so weigh them against each other."
                : ": " + String.join("; or ", ways) + "."));
  }
}
