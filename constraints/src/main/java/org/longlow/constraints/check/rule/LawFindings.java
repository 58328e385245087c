package org.longlow.constraints.check.rule;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.rule.Ruling.Outcome;
import org.longlow.constraints.law.Asked;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.LawTables;
import org.longlow.constraints.law.Row;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** The machine, unladen, against the bodies of rules that the layout is held to. */
public final class LawFindings {

  /** The caution that belongs beside every legal finding. */
  private LawFindings() {}

  /** Returns what the rules in force say; nothing if the layout is held to none. */
  public static List<Finding> of(Layout layout, List<Sitting> sittings, List<Standing> standings) {
    Set<RuleSet> inForce = new LinkedHashSet<>();
    LawTables.sets().stream()
        .filter(rules -> layout.demands().rules().contains(rules.id()))
        .forEach(inForce::add);
    if (inForce.isEmpty()) {
      return List.of();
    }
    Optional<Standing> unladen =
        standings.stream().filter(s -> s.kind() == Stance.Kind.UNLADEN).findFirst();
    if (unladen.isEmpty()) {
      return List.of(
          note(
              Verdict.CAUTION,
              "Law was not judged: the machine does not stand. " + FindingGroup.LAW.caution()));
    }
    Standing standing = unladen.get();
    List<LampItem> lamps = LitLamps.of(layout, standing.places(), standing.ground());
    List<Ruling> rulings = new ArrayList<>(lampRulings(inForce, lamps, rearmostXMm(standing)));
    List<Row> seen = rows(inForce, Asked.Subject.VIEW);
    LampViews views =
        new LampViews(
            standing.shapes().values(),
            (a, b) -> meet(layout, a, b),
            standing.ground(),
            seen.stream().map(Row::field).toList());
    for (Row row : seen) {
      rulings.addAll(ViewRulings.of(row, lamps, views));
    }
    MachineRulings machine = new MachineRulings(layout, sittings, standing, standings);
    for (Row row : rows(inForce, Asked.Subject.MACHINE)) {
      rulings.addAll(machine.of(row));
    }
    Map<String, PointMm> places = new LinkedHashMap<>();
    layout
        .parts()
        .forEach((name, part) -> places.put(name, standing.places().pin(part.pins().get(0))));
    List<Finding> findings =
        new ArrayList<>(Rulings.findings(rulings, standing.condition(), places));
    findings.add(note(Verdict.NOT_APPLICABLE, FindingGroup.LAW.caution()).in(standing.condition()));
    return findings;
  }

  private static Finding note(Verdict verdict, String text) {
    return Finding.note(
        Rulings.LAW,
        About.thing("lamps"),
        verdict,
        Basis.model("tables listed with each finding"),
        Words.of(text));
  }

  /**
   * Returns what the tables say of these lamps.
   *
   * @param rearmostXMm rearmost point of the machine, mm
   */
  static List<Ruling> lampRulings(Set<RuleSet> inForce, List<LampItem> lamps, double rearmostXMm) {
    List<Ruling> rulings = new ArrayList<>();
    for (Row row : rows(inForce, Asked.Subject.LAMP)) {
      rulings.addAll(LampRulings.of(row, lamps));
    }
    for (Row row : rows(inForce, Asked.Subject.SPACING)) {
      rulings.addAll(SpacingRulings.of(row, lamps, rearmostXMm));
    }
    inForce.forEach(rules -> rulings.addAll(unlisted(rules, lamps)));
    return rulings;
  }

  private static List<Row> rows(Set<RuleSet> inForce, Asked.Subject about) {
    return LawTables.rows().stream()
        .filter(row -> inForce.contains(row.rules()) && row.asked().about() == about)
        .toList();
  }

  /** A lamp that is given and that no row speaks of is named, not passed over. */
  private static List<Ruling> unlisted(RuleSet rules, List<LampItem> lamps) {
    Set<LampPart.Kind> kinds = EnumSet.noneOf(LampPart.Kind.class);
    lamps.forEach(l -> kinds.add(l.kind()));
    rows(Set.of(rules), Asked.Subject.LAMP).forEach(row -> kinds.remove(row.kind()));
    List<Ruling> rulings = new ArrayList<>();
    for (LampPart.Kind kind : kinds) {
      List<String> parts = LampRulings.parts(lamps.stream().filter(l -> l.kind() == kind).toList());
      String words = Row.words(kind);
      rulings.add(
          new Ruling(
              rules,
              About.lamps(parts).named("not-covered", words.replace(' ', '-')),
              Outcome.NOT_COVERED,
              Figures.NONE,
              Words.of(
                  "Not covered: "
                      + words
                      + " ("
                      + String.join(", ", parts)
                      + "); it is given and the table has no row for it"),
              List.of(),
              false));
    }
    return rulings;
  }

  private static boolean meet(Layout layout, String one, String other) {
    return layout.parts().get(one).base().touches().contains(other)
        || layout.parts().get(other).base().touches().contains(one);
  }

  private static double rearmostXMm(Standing standing) {
    PointMm along = standing.ground().along();
    PointMm from = standing.ground().rearContact();
    double least = Double.POSITIVE_INFINITY;
    for (PartShape shape : standing.shapes().values()) {
      Envelope box = shape.outline().getEnvelopeInternal();
      double corner =
          along.x() * (box.getMinX() - from.x())
              + along.z() * ((along.z() > 0 ? box.getMinY() : box.getMaxY()) - from.z());
      if (corner >= least) {
        continue; // not even a corner of its box is farther back
      }
      for (Coordinate c : shape.outline().getCoordinates()) {
        least = Math.min(least, along.x() * (c.x - from.x()) + along.z() * (c.y - from.z()));
      }
    }
    return least;
  }
}
