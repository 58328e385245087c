package org.longlow.sketcher.report;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.Gathered;
import org.longlow.constraints.check.finding.SaidFigures;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;

/**
 * The findings: what fails and needs care with its number in the picture, the worst of those alike;
 * then each group with its caution, and folded away what else there is of it.
 */
final class FindingTables {

  private static final List<String> OPEN =
      List.of("No.", Html.VERDICT, "What", "Figure", "Limit", "Margin", "Stance", "Source");

  private static final List<String> FOLDED =
      List.of("About", Html.VERDICT, "What", "Figure", "Limit", "Margin", "Stance", "Source");

  private FindingTables() {}

  /** Returns the findings of the first table, numbered there from 1: of those alike the worst. */
  static List<Finding> led(Study study) {
    return Gathered.open(study.findings()).stream().map(Gathered::worst).toList();
  }

  /** Writes them. */
  static void write(Html h, Study study) {
    Units units = study.layout().units();
    List<Gathered> open = Gathered.open(study.findings());
    h.element("h2", "Findings");
    if (open.isEmpty()) {
      h.element("p", "Nothing fails, and nothing needs care but that sources are read.");
    } else {
      h.table("findings open", "What fails or needs care, worst first", OPEN);
      for (int i = 0; i < open.size(); i++) {
        Gathered g = open.get(i);
        row(h, units, OPEN, Integer.toString(i + 1), g.worst(), g.others());
      }
      h.closeTable();
    }
    Gathered.asides(study.findings(), units).forEach(a -> h.element("p class=\"note\"", a));
    Set<Finding> led = Set.copyOf(led(study));
    List<Finding> folded =
        WorstFirst.of(study.findings()).stream().filter(f -> !led.contains(f)).toList();
    for (FindingGroup group : FindingGroup.values()) {
      group(h, study, group, folded.stream().filter(f -> f.group() == group).toList());
    }
  }

  private static void group(Html h, Study study, FindingGroup group, List<Finding> folded) {
    // a caution may be a finding of its own
    boolean said =
        group.caution().isEmpty()
            || study.findings().stream().anyMatch(f -> f.text().contains(group.caution()));
    boolean none = study.findings().stream().noneMatch(f -> f.group() == group);
    if (none || said && folded.isEmpty()) {
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
      folded.forEach(f -> row(h, study.layout().units(), FOLDED, f.subject(), f, ""));
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

  private static void row(
      Html h, Units units, List<String> headings, String first, Finding f, String others) {
    SaidFigures said = f.said(units);
    h.row(
        f.verdict().word(),
        headings,
        List.of(
            first,
            verdict(f.verdict()),
            f.text(units) + others,
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
