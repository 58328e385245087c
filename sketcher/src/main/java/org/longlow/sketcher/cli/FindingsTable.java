package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Stream;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.Gathered;
import org.longlow.constraints.check.finding.SaidFigures;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.layout.Occupant;
import org.longlow.rider.words.Units;

/** Findings as a table of plain text, worst first. */
final class FindingsTable {

  private FindingsTable() {}

  /**
   * Prints them with a row for those alike, and a sentence for each of what there is to do.
   *
   * @param all whether each finding has its row and its sentence
   */
  static void print(List<Finding> findings, boolean all, Units units, PrintWriter out) {
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
    List<Gathered> open = Gathered.open(findings);
    if (all) {
      WorstFirst.of(findings).forEach(f -> row(table, f, f.id(), units));
    } else {
      Stream.of(open, Gathered.aside(findings), Gathered.settled(findings))
          .flatMap(List::stream)
          .forEach(g -> row(table, g.worst(), g.worst().id() + g.count(), units));
    }
    table.print(out);
    out.println();
    if (all) {
      WorstFirst.of(findings).stream()
          .filter(f -> f.open() || f.aside() && !f.kind().fromMemory())
          .forEach(f -> tell(f, "", units, out));
    } else {
      open.forEach(g -> tell(g.worst(), g.others(), units, out));
    }
    for (String aside : Gathered.asides(findings, units)) {
      out.println(Verdict.CAUTION.says() + ": " + aside);
    }
    if (!all) {
      out.println();
      out.println("Findings that are alike share a row and a sentence: --all lists each.");
    }
    out.println();
    for (FindingGroup group : Finding.groupsWithCaution(findings)) {
      out.println("caution, " + group.title() + ": " + group.caution());
    }
    out.println();
  }

  private static void row(TextTable table, Finding f, String name, Units units) {
    SaidFigures said = f.said(units);
    table.row(
        List.of(
            f.verdict().says(),
            name,
            f.who().map(FindingsTable::who).orElse(""),
            said.value(),
            said.limit(),
            said.margin(),
            f.stanceWords()));
  }

  private static void tell(Finding f, String others, Units units, PrintWriter out) {
    out.println(f.verdict().says() + f.when() + ": " + named(f, units) + others);
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
