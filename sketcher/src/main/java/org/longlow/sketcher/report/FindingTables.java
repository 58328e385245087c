package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.SaidFigures;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;

/**
 * The findings: what fails and needs care with its number in the picture; then each group with its
 * caution, and folded away what else there is of it.
 */
final class FindingTables {

  private static final List<String> OPEN =
      List.of("No.", Html.VERDICT, "What", "Figure", "Limit", "Margin", "Stance", "Source");

  private static final List<String> FOLDED =
      List.of("About", Html.VERDICT, "What", "Figure", "Limit", "Margin", "Stance", "Source");

  private FindingTables() {}

  /**
   * Returns whether a finding stands in the first table, with a number. Rules of law that need care
   * are many, and most say only that a text was not read again; they stand with their group.
   */
  static boolean leads(Finding f) {
    return f.verdict() == Verdict.FAIL
        || f.verdict() == Verdict.CAUTION && f.group() != FindingGroup.LAW;
  }

  /** Returns the findings with those of the first table first, numbered there from 1. */
  static List<Finding> order(Study study) {
    List<Finding> worst = WorstFirst.of(study.findings());
    List<Finding> order = new ArrayList<>(worst.stream().filter(FindingTables::leads).toList());
    worst.stream().filter(f -> !leads(f)).forEach(order::add);
    return order;
  }

  /**
   * Writes them.
   *
   * @param order as {@link #order} gives them
   */
  static void write(Html h, Study study, List<Finding> order) {
    Units units = study.layout().units();
    List<Finding> open = order.stream().filter(FindingTables::leads).toList();
    h.element("h2", "Findings");
    if (open.isEmpty()) {
      h.element("p", "Nothing fails, and nothing but rules of law needs care.");
    } else {
      h.table("findings open", "What fails or needs care, worst first", OPEN);
      for (int i = 0; i < open.size(); i++) {
        row(h, units, OPEN, Integer.toString(i + 1), open.get(i));
      }
      h.closeTable();
    }
    for (FindingGroup group : FindingGroup.values()) {
      group(h, study, group, order.stream().filter(f -> f.group() == group).toList());
    }
  }

  private static void group(Html h, Study study, FindingGroup group, List<Finding> all) {
    List<Finding> folded = all.stream().filter(f -> !leads(f)).toList();
    // a caution may be a finding of its own
    boolean said =
        group.caution().isEmpty()
            || study.findings().stream().anyMatch(f -> f.text().contains(group.caution()));
    if (all.isEmpty() || said && folded.isEmpty()) {
      return;
    }
    h.raw("<section class=\"group\">\n");
    h.element("h3", capital(group.title()));
    if (!said) {
      h.element("p class=\"note\"", group.caution());
    }
    if (!folded.isEmpty()) {
      h.raw("<details>\n").element("summary", counts(folded));
      h.table("findings folded", capital(group.title()) + ", least margin first", FOLDED);
      folded.forEach(f -> row(h, study.layout().units(), FOLDED, f.subject(), f));
      h.closeTable().raw("</details>\n");
    }
    h.raw("</section>\n");
  }

  /** Returns how many of each verdict there are, such as {@code 3 pass, 1 does not apply}. */
  private static String counts(List<Finding> findings) {
    return Arrays.stream(Verdict.values())
        .map(v -> Map.entry(v, findings.stream().filter(f -> f.verdict() == v).count()))
        .filter(e -> e.getValue() > 0)
        .map(e -> e.getKey().says(e.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
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
