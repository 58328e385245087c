package org.longlow.constraints.built;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.mend.Mending;
import org.longlow.constraints.mend.Offer;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.study.Study;

/**
 * A machine as planned and as built.
 *
 * @param plan everything about it as planned
 * @param built everything about it as built, with what only measuring tells among its findings
 * @param letGo what of the plan does not hold any more
 * @param rows everything that was measured, beside what was planned
 */
public record BuiltMachine(Study plan, Study built, List<LetGo> letGo, List<BuiltRow> rows) {

  public BuiltMachine {
    letGo = List.copyOf(letGo);
    rows = List.copyOf(rows);
  }

  /** Returns both of a machine on which something was measured. */
  public static BuiltMachine of(Study plan) {
    return of(plan, Study::of);
  }

  /**
   * Returns both.
   *
   * @param studies answers everything about the machine as built, or refuses
   */
  public static BuiltMachine of(Study plan, Function<Placed, Study> studies) {
    BuiltLayout layout = BuiltLayout.of(plan.placed());
    Study study = studies.apply(layout.placed());
    List<Finding> findings =
        new ArrayList<>(BuiltFindings.of(plan.layout(), study, layout.letGo()));
    findings.addAll(0, study.findings());
    Study built = study.withFindings(findings);
    List<BuiltRow> rows = new BuiltRows(plan, layout.placed().places()).all();
    return new BuiltMachine(plan, built, layout.letGo(), rows);
  }

  /** Returns what fails as built and did not as planned, in order. */
  public List<Finding> newlyFailing() {
    Set<String> before =
        plan.findings().stream()
            .filter(f -> f.verdict() == Verdict.FAIL)
            .map(Finding::id)
            .collect(Collectors.toCollection(HashSet::new));
    return built.findings().stream()
        .filter(f -> f.verdict() == Verdict.FAIL && !before.contains(f.id()))
        .toList();
  }

  /** Returns the least change that mends a finding of the machine as built, if one does. */
  public Optional<Offer> leastMend(Finding finding) {
    return Mending.of(built, finding).stream().findFirst();
  }
}
