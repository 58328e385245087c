package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.SeatFindings;
import org.longlow.constraints.gap.Clearing;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Resting;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** Gaps between seated people and what they do not rest on, each other too. */
public final class PersonGaps {

  /** People who come nearer than this need care, mm. */
  static final double PEOPLE_MM = 10;

  /** What is nearer by less is as near, so that a part that stays is told as drawn, mm. */
  private static final double SAME_MM = 1e-5;

  /** A seat is not sent farther back than this, mm. */
  private static final int FARTHEST_BACK_MM = 300;

  /** Looked at in such strides first, mm; between two of them nobody gets free and in again. */
  private static final int STRIDE_MM = 10;

  private static final List<Basis> PEOPLE =
      List.of(
          Basis.model("outlines of two bodies, skin to skin, good to some 15 mm of flesh"),
          Basis.judgement(
              "10 mm between two people is a judgement: a passenger's trunk against the rider's"
                  + " back is common, flesh in flesh is not"));

  private final Layout layout;
  private final GapRules rules;
  private final GapFindings parts;
  private final List<PersonBody> people;
  private final List<Standing> standings;

  public PersonGaps(
      Layout layout,
      GapRules rules,
      GapFindings parts,
      List<PersonBody> people,
      List<Standing> standings) {
    this.rules = rules;
    this.parts = parts;
    this.layout = layout;
    this.people = people;
    this.standings = standings;
  }

  public List<Finding> all(Progress progress) {
    List<Finding> findings = new ArrayList<>();
    for (PersonBody person : people) {
      beside(person, findings);
    }
    int done = 0;
    for (Standing standing : standings) {
      progress.at("gaps between people, stance by stance", done++, standings.size());
      if (standing.kind() == Stance.Kind.LADEN) {
        pair(standing.condition()).ifPresent(findings::add);
      }
    }
    return findings;
  }

  /** Whoever steers comes first among those aboard. */
  private Optional<Finding> pair(Condition stance) {
    List<PersonBody> aboard =
        stance.aboard().stream()
            .flatMap(o -> people.stream().filter(p -> p.sitting().occupant().equals(o)))
            .toList();
    return aboard.size() == 2 ? people(stance, aboard.get(0), aboard.get(1)) : Optional.empty();
  }

  private void beside(PersonBody person, List<Finding> findings) {
    Map<Gap, Condition> near = new TreeMap<>(Gaps.ORDER);
    for (Part part : layout.parts().values()) {
      if (rules.clearOfPeople(part.name())) {
        nearest(person, part, near);
      }
    }
    near.forEach((gap, stance) -> findings.add(beside(person, gap, stance)));
  }

  /** Adds where a part comes nearest to somebody: as drawn, or where a wheel takes it. */
  private void nearest(PersonBody person, Part part, Map<Gap, Condition> near) {
    Solid body = person.clearOf(part, rules);
    double listed = listedToMm(person.sitting(), part);
    Gap worst = null;
    Condition at = null;
    for (At there : places(part.name(), person.sitting().occupant())) {
      double cut = worst == null ? listed : worst.gapMm() - SAME_MM;
      for (Gap gap : Gaps.between(List.of(body), List.of(there.body), listed, (a, b) -> cut)) {
        worst = gap;
        at = there.condition;
      }
    }
    if (worst != null) {
      near.put(worst, at);
    }
  }

  /** A part where it is while somebody sits on the machine. */
  private record At(Condition condition, Solid body) {}

  /** People go with the frame: only what goes with a wheel is elsewhere for them in a stance. */
  private List<At> places(String part, Occupant who) {
    List<At> all = new ArrayList<>();
    all.add(new At(Standing.under(who, standings), parts.drawn(part)));
    for (Standing s : standings) {
      boolean ridden =
          switch (s.kind()) {
            case LADEN -> s.condition().aboard().contains(who);
            case FULL_BUMP, FULL_DROOP -> true;
            case UNLADEN, LIGHT, PARKED, OPEN -> false;
          };
      PartShape moved = s.moved().get(part);
      if (ridden && moved != null) {
        all.add(new At(s.condition(), Solid.of(moved)));
      }
    }
    return all;
  }

  private Finding beside(PersonBody person, Gap gap, Condition stance) {
    Sitting sitting = person.sitting();
    String part = gap.second();
    double limit = rules.limitMm(part, sitting);
    Finding f =
        Finding.held(
                GapFindings.GAP,
                About.beside(part, sitting.occupant()),
                Optional.of(stance),
                Figures.atLeast(gap.gapMm(), limit, FigureUnit.MM),
                List.of(rules.source(part, GapRules.RIDER, rules.demandOfPeople(part))),
                GapFindings.words(
                    part,
                    SeatFindings.who(sitting),
                    gap.gapMm(),
                    limit,
                    () -> away(part, person, limit)))
            .at(gap.where());
    return CurveCare.held(f, CurveCare.mm(layout, part));
  }

  /**
   * Returns what comes too near to this person, or needs care, by part: the verdicts of {@link
   * #all}, without figures and what would help, which take long.
   */
  public Map<String, Verdict> verdicts(PersonBody person) {
    Map<String, Verdict> verdicts = new LinkedHashMap<>();
    for (Part part : layout.parts().values()) {
      if (rules.clearOfPeople(part.name())) {
        double limit = rules.limitMm(part.name(), person.sitting());
        double careful = limit + CurveCare.mm(layout, part.name());
        Solid body = person.clearOf(part, rules);
        double mm =
            places(part.name(), person.sitting().occupant()).stream()
                .mapToDouble(there -> body.apartMm(there.body, careful))
                .min()
                .orElseThrow();
        if (mm < careful) {
          boolean fails = Figures.atLeast(mm, limit, FigureUnit.MM).verdict() == Verdict.FAIL;
          verdicts.put(part.name(), fails ? Verdict.FAIL : Verdict.CAUTION);
        }
      }
    }
    return verdicts;
  }

  private Words away(String part, PersonBody person, double limitMm) {
    Solid body = person.clearOf(layout.parts().get(part), rules);
    List<Solid> there = places(part, person.sitting().occupant()).stream().map(At::body).toList();
    Clearing clearing = parts.clearingOf(part, there, body, limitMm);
    return Words.of(
        Advice.move(part, clearing),
        AfterMove.said(Advice.moves(clearing), m -> parts.made(part, m.by()), "; but ", ""));
  }

  /** Own cushions may be touched, so those are told of only where somebody is in them. */
  private double listedToMm(Sitting sitting, Part part) {
    double least = Resting.ownCushion(sitting, part) ? 0 : GapFindings.HORIZON_MM;
    double asked = rules.limitMm(part.name(), sitting) + CurveCare.mm(layout, part.name());
    return Math.max(least, asked);
  }

  /** Whoever rides and somebody behind. */
  private static Optional<Finding> people(Condition stance, PersonBody rider, PersonBody behind) {
    Gap gap = behind.fine().to(rider.fine(), GapFindings.HORIZON_MM);
    if (gap == null) {
      return Optional.empty();
    }
    Occupant one = behind.sitting().occupant();
    Occupant other = rider.sitting().occupant();
    double mm = gap.gapMm();
    List<String> path = List.of("people", one.name(), other.name());
    return Optional.of(
        new Finding(
                GapFindings.GAP,
                new About(one.words() + " and " + other.words(), List.of(), Optional.of(one), path),
                Optional.of(stance),
                mm < 0 ? Verdict.FAIL : mm < PEOPLE_MM ? Verdict.CAUTION : Verdict.PASS,
                Figures.atLeast(mm, PEOPLE_MM, FigureUnit.MM),
                PEOPLE,
                GapFindings.words(
                    one.words(),
                    other.words(),
                    mm,
                    PEOPLE_MM,
                    () -> back(one.seat(), rider, behind)))
            .at(gap.where()));
  }

  /** How far back the seat of somebody must go, whole millimetres; hands and feet go with it. */
  private static Words back(String seat, PersonBody rider, PersonBody behind) {
    String advice = "move the " + seat + "'s seat back";
    for (int far = 0; far < FARTHEST_BACK_MM; far += STRIDE_MM) {
      if (clear(rider, behind, far + STRIDE_MM)) {
        int mm = far;
        while (!clear(rider, behind, mm)) {
          mm++;
        }
        return Words.of(advice + ", by ", Say.mm(mm), " if pegs and grips go with it");
      }
    }
    return Words.of(advice);
  }

  private static boolean clear(PersonBody rider, PersonBody behind, int backMm) {
    Solid moved = behind.fine().moved(Solid.by(new PointMm(-backMm, 0)));
    return moved.apartMm(rider.fine(), PEOPLE_MM) >= PEOPLE_MM;
  }
}
