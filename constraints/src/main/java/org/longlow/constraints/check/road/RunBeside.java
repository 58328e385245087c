package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.gap.PersonBody;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.words.Words;

/** Whom the run of a chain or belt comes too near, in any stance: it draws in what it meets. */
final class RunBeside {

  private RunBeside() {}

  static List<Finding> people(
      Layout layout,
      String name,
      FindingKind kind,
      Function<Standing, Solid> runs,
      List<Sitting> sittings,
      List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    for (Sitting sitting : sittings) {
      PersonBody.all(sitting)
          .flatMap(body -> nearest(layout, name, kind, runs, sitting, body, standings))
          .ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Finding> nearest(
      Layout layout,
      String name,
      FindingKind kind,
      Function<Standing, Solid> runs,
      Sitting sitting,
      Solid person,
      List<Standing> standings) {
    double asked = standings.get(0).places().value(layout.demands().limit(Demands.Key.PERSON_GAP));
    Gap worst = null;
    Standing at = null;
    for (Standing s : standings) {
      if (s.kind() == Stance.Kind.OPEN) {
        continue;
      }
      double cut = worst == null ? asked : worst.gapMm();
      Solid run = runs.apply(s);
      for (Gap gap : Gaps.between(List.of(run), List.of(person), asked, (a, b) -> cut)) {
        worst = gap;
        at = s;
      }
    }
    return worst == null
        ? Optional.empty()
        : Optional.of(finding(layout, name, kind, sitting, worst, asked, at));
  }

  private static Finding finding(
      Layout layout,
      String name,
      FindingKind kind,
      Sitting sitting,
      Gap gap,
      double asked,
      Standing at) {
    String who = sitting.occupant().words();
    return Finding.held(
            kind,
            About.beside(name, sitting.occupant()),
            Optional.of(at.condition()),
            Figures.atLeast(gap.gapMm(), asked, FigureUnit.MM),
            List.of(Wrap.HOW, Sources.of(layout, Demands.Key.PERSON_GAP)),
            Words.of(
                gap.gapMm() < 0
                    ? Words.of(name + " runs through " + who + " by ", Say.mm(-gap.gapMm()))
                    : Words.of(name + " runs within ", Say.mm(gap.gapMm()), " of " + who),
                "; ",
                Words.atLeast(asked),
                " are asked: move both sprockets across or down, or the seat, and guard the run."))
        .at(gap.where());
  }
}
