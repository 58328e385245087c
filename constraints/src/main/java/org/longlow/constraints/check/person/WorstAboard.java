package org.longlow.constraints.check.person;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.stand.Standing;

/** One thing asked of a rider alone and with each passenger, who weighs too. */
final class WorstAboard {

  private WorstAboard() {}

  /**
   * Returns the worst answer, that of the rider alone where others are no worse; nothing where the
   * machine does not stand under them.
   */
  static Optional<Finding> of(
      Occupant rider, List<Standing> standings, Function<Standing, Finding> asked) {
    return standings.stream()
        .filter(s -> s.condition().riddenBy(rider))
        .map(asked)
        .min(WorstFirst.ORDER);
  }
}
