package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.SaidFigures;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;

/** The findings: what fails and needs care with its number in the picture, then what passes. */
final class FindingTables {

  private static final List<String> OPEN =
      List.of("No.", Html.VERDICT, "What", "Figure", "Limit", "Margin", "Stance", "Source");

  private static final List<String> CLOSED =
      List.of("About", Html.VERDICT, "What", "Figure", "Limit", "Margin", "Stance", "Source");

  private FindingTables() {}

  static void write(Html h, Study study, List<Finding> order) {
    Units units = study.layout().units();
    List<Finding> open = new ArrayList<>();
    List<Finding> closed = new ArrayList<>();
    for (Finding f : order) {
      boolean needsWork = f.verdict() == Verdict.FAIL || f.verdict() == Verdict.CAUTION;
      (needsWork ? open : closed).add(f);
    }
    h.element("h2", "Findings");
    for (FindingGroup group : Finding.groupsWithCaution(study.findings())) {
      if (study.findings().stream().anyMatch(f -> f.text().contains(group.caution()))) {
        continue; // it is a finding of its own, in the tables below
      }
      String title =
          group.title().substring(0, 1).toUpperCase(Locale.ROOT) + group.title().substring(1);
      h.element("p class=\"note\"", title + ": " + group.caution());
    }
    if (open.isEmpty()) {
      h.element("p", "Nothing fails and nothing needs care.");
    } else {
      h.table("findings", "What fails or needs care, worst first", OPEN);
      for (int i = 0; i < open.size(); i++) {
        row(h, units, OPEN, Integer.toString(i + 1), open.get(i));
      }
      h.closeTable();
    }
    if (!closed.isEmpty()) {
      h.table(
          "findings passing", "What passes, least margin first, and what does not apply", CLOSED);
      closed.forEach(f -> row(h, units, CLOSED, f.subject(), f));
      h.closeTable();
    }
  }

  private static void row(Html h, Units units, List<String> headings, String first, Finding f) {
    SaidFigures said = f.said(units);
    h.row(
        f.verdict().word(),
        headings,
        List.of(
            first,
            verdict(f.verdict()),
            f.text(units),
            said.value(),
            said.limit(),
            said.margin(),
            f.stance().map(Condition::says).orElse("every"),
            f.source(units)));
  }

  static String verdict(Verdict verdict) {
    String sign =
        switch (verdict) {
          case FAIL -> "■ ";
          case CAUTION -> "▲ ";
          case PASS -> "● ";
          case NOT_APPLICABLE -> "– ";
        };
    return sign + verdict.says();
  }
}
