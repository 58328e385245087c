package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.util.List;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.SaidFigures;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.layout.Occupant;
import org.longlow.rider.words.Units;

/** Findings as a table of plain text, worst first. */
final class FindingsTable {

  private FindingsTable() {}

  static void print(List<Finding> findings, Units units, PrintWriter out) {
    TextTable table =
        new TextTable(
            List.of(
                TextTable.Column.of("verdict", 16),
                TextTable.Column.of("finding", 40),
                TextTable.Column.of("who", 20),
                new TextTable.Column("figure", 14, true),
                new TextTable.Column("limit", 14, true),
                new TextTable.Column("margin", 14, true),
                TextTable.Column.of("stance", 22)));
    List<Finding> sorted = WorstFirst.of(findings);
    for (Finding f : sorted) {
      SaidFigures said = f.said(units);
      table.row(
          List.of(
              f.verdict().says(),
              f.id(),
              f.who().map(FindingsTable::who).orElse(""),
              said.value(),
              said.limit(),
              said.margin(),
              f.stanceWords()));
    }
    table.print(out);
    out.println();
    for (Finding f : sorted) {
      boolean told = f.verdict() == Verdict.FAIL || f.verdict() == Verdict.CAUTION;
      if (told && !f.kind().fromMemory()) {
        out.println(f.verdict().says() + f.when() + ": " + named(f, units));
      }
    }
    fromMemory(findings, out);
    out.println();
    for (FindingGroup group : Finding.groupsWithCaution(findings)) {
      out.println("caution, " + group.title() + ": " + group.caution());
    }
    out.println();
  }

  /** Rules that are met, their texts known from memory only, differ in nothing but their names. */
  private static void fromMemory(List<Finding> findings, PrintWriter out) {
    long met = findings.stream().filter(f -> f.kind().fromMemory()).count();
    if (met > 0) {
      out.println(
          Verdict.CAUTION.says()
              + ": "
              + met
              + " rules of law are met as far as their texts are known from memory; each has its"
              + " row above and its source in the report: read the texts before you rely on them.");
    }
  }

  private static String who(Occupant who) {
    return who.rides() ? who.person() : who.person() + ", " + who.seat();
  }

  /** Says whom a finding is about where its sentence does not. */
  private static String named(Finding f, Units units) {
    String text = f.text(units);
    boolean told = f.who().map(w -> text.contains(w.person())).orElse(true);
    return told ? text : who(f.who().orElseThrow()) + ": " + text;
  }
}
