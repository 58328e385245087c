package org.longlow.constraints.check.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.AccessFindings;
import org.longlow.rider.words.Words;

/** A way out that leads through a section is worth no more than the hand that opens it. */
public final class NeededWays {

  private NeededWays() {}

  /**
   * Returns the findings with those on getting out held to what opens the sections without which
   * nobody gets out.
   *
   * @param findings on getting out, with each section jammed too
   * @param wayOuts on sections that are said to be ways out
   */
  public static List<Finding> held(List<Finding> findings, List<Finding> wayOuts) {
    return findings.stream().map(f -> held(f, findings, wayOuts)).toList();
  }

  private static Finding held(Finding way, List<Finding> findings, List<Finding> wayOuts) {
    if (way.kind() != AccessFindings.GET_OUT || way.verdict() == Verdict.FAIL) {
      return way;
    }
    Finding held = way;
    for (Finding jammed : findings) {
      List<String> path = jammed.about().path();
      if (jammed.kind() == way.kind()
          && jammed.verdict() == Verdict.FAIL
          && path.size() == way.about().path().size() + 1
          && path.subList(0, path.size() - 1).equals(way.about().path())) {
        held = through(path.get(path.size() - 1), held, wayOuts);
      }
    }
    return held;
  }

  private static Finding through(String section, Finding way, List<Finding> wayOuts) {
    Optional<Finding> opened =
        wayOuts.stream().filter(f -> f.about().path().equals(List.of(section))).findFirst();
    if (opened.isEmpty()) {
      return (way.verdict() == Verdict.PASS ? way.withVerdict(Verdict.CAUTION) : way)
          .withText(
              Words.of(
                  way.words(),
                  " There is no way but through "
                      + section
                      + ": say wayOut of it, so that the hand which opens it without help is"
                      + " judged."));
    }
    Figures force = opened.get().figures();
    boolean opens = opened.get().verdict() == Verdict.PASS;
    List<Basis> basis = new ArrayList<>(way.basis());
    basis.addAll(opened.get().basis());
    Finding held =
        new Finding(
            way.kind(),
            way.about(),
            way.stance(),
            opens ? way.verdict() : Verdict.FAIL,
            opens ? way.figures() : force,
            basis.stream().distinct().toList(),
            Words.of(
                way.words(),
                " There is no way but through " + section + ", where a hand needs ",
                Say.newton(force.value()),
                " with all that helps it dead; at most ",
                Say.newton(force.limit()),
                opens
                    ? " are asked."
                    : " are asked, so nobody gets out then: make it lighter, or give another way."),
            way.site(),
            way.pull(),
            opens && way.unchecked());
    return held;
  }
}
