package org.longlow.constraints.check.road;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Shock;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/**
 * Care about machines whose springs are not known: the wheels stay as drawn where springs would be
 * in balance, and nothing that rests on that passes outright. Travel counts all the same.
 *
 * @param carriers names of what carries a wheel with travel and no rate
 * @param hung those of them whose shock says its spring, which is not the rate at the wheel
 */
public record SpringCare(List<String> carriers, List<String> hung) {

  public SpringCare {
    carriers = List.copyOf(carriers);
    hung = List.copyOf(hung);
  }

  /** Care about carriers without a shock. */
  public SpringCare(List<String> carriers) {
    this(carriers, List.of());
  }

  public static SpringCare of(Wheels wheels) {
    List<String> carriers = wheels.withoutRate();
    boolean shock =
        wheels.arm() != null
            && carriers.contains(wheels.arm().name())
            && !wheels.arm().shock().equals(Shock.NOT_SAID);
    return new SpringCare(carriers, shock ? List.of(wheels.arm().name()) : List.of());
  }

  /** Returns the finding that names them, if there are any. */
  public Optional<Finding> finding() {
    if (carriers.isEmpty()) {
      return Optional.empty();
    }
    String names = String.join(" and ", carriers);
    return Optional.of(
        Finding.note(
            SagFindings.SAG,
            new About(names, carriers, Optional.empty(), List.of("unknown")),
            Verdict.CAUTION,
            Basis.model("this layout"),
            Words.of(
                "How far the springs of "
                    + names
                    + " are pressed at rest is not known, since the rate at the wheel is missing:"
                    + " write it as \"rate\", such as \"12 N/mm\", and how far the spring is"
                    + " pressed before it moves as \"preload\", such as \"200 N\". "
                    + hung.stream()
                        .map(
                            h ->
                                "The shock of "
                                    + h
                                    + " says its own spring, not what that is at the wheel; what"
                                    + " is found of it says that. ")
                        .collect(Collectors.joining())
                    + "Full bump and droop count; at rest the wheel is taken to be as drawn.")));
  }

  /** Returns a finding that rests on where the springs are at rest: it never passes outright. */
  public Finding held(Finding f) {
    boolean atStops =
        f.stance()
            .filter(c -> c.kind() == Stance.Kind.FULL_BUMP || c.kind() == Stance.Kind.FULL_DROOP)
            .isPresent();
    if (carriers.isEmpty()
        || atStops
        || !f.kind().weighed()
        || f.kind() == SagFindings.SAG
        || f.verdict() == Verdict.NOT_APPLICABLE) {
      return f;
    }
    return (f.verdict() == Verdict.PASS ? f.withVerdict(Verdict.CAUTION) : f)
        .withText(
            Words.of(
                f.words(),
                " Rough: the rate of " + String.join(" and ", carriers) + " is not known."));
  }
}
