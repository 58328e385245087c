package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.Steering;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.SteeringOnRoad;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** Rake and trail as they come out, unladen and laden, against what machines on the road have. */
public final class SteeringFindings {

  /** Rake and trail. */
  public static final FindingKind TRAIL =
      new FindingKind("trail", FindingGroup.STEERING, Rests.ON_EACH_LOAD);

  /** How far the steering axis leans back. */
  public static final FindingKind RAKE =
      new FindingKind("rake", FindingGroup.STEERING, Rests.ON_EACH_LOAD);

  /**
   * Ground trail of machines on the road over all classes, mm: feet-forward and scooters from 50,
   * cruisers to 175. Typical ranges from memory; no survey was found.
   */
  static final double LEAST_MM = 50;

  /** See {@link #LEAST_MM}. */
  static final double MOST_MM = 175;

  /**
   * Rake of machines on the road over all classes, deg: trials and scooters from about 22, long
   * choppers to about 45; 15 leaves room below. From memory; no survey was found.
   */
  static final double LEAST_RAKE_DEG = 15;

  /** See {@link #LEAST_RAKE_DEG}. */
  static final double MOST_RAKE_DEG = 45;

  private static final List<Basis> SOURCE =
      List.of(
          Basis.model("plane geometry of steering axis and tyre"),
          Basis.published(
              Known.FROM_MEMORY,
              "range over all classes of machine from memory (Cossalter, Motorcycle Dynamics, ch."
                  + " 1-3, among others)"));

  private SteeringFindings() {}

  public static List<Finding> of(Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    if (wheels.fork() == null) {
      return findings;
    }
    for (Standing s : standings) {
      if (s.kind() != Stance.Kind.UNLADEN && s.kind() != Stance.Kind.LADEN) {
        continue;
      }
      SteeringOnRoad on = SteeringOnRoad.of(wheels, s.places(), s.ground()).orElseThrow();
      double rakeDeg = Math.toDegrees(on.rakeRad());
      findings.add(trail(s, rakeDeg, on.steering()));
      findings.add(rake(s, rakeDeg, s.places().pin(wheels.fork().top())));
    }
    return findings;
  }

  private static String with(Standing s) {
    String people = s.condition().people();
    return people.isEmpty() ? "Unladen" : "With " + people;
  }

  /** What is not above 0 fails, what is out of the usual range needs care. */
  private static Finding finding(FindingKind kind, Standing s, Figures figures, Words text) {
    String people = s.condition().people();
    Verdict verdict =
        figures.value() <= 0 ? Verdict.FAIL : figures.margin() < 0 ? Verdict.CAUTION : Verdict.PASS;
    return new Finding(
        kind,
        About.thing("steering", people.isEmpty() ? "unladen" : people),
        Optional.of(s.condition()),
        verdict,
        figures,
        SOURCE,
        text);
  }

  private static Finding rake(Standing s, double deg, PointMm top) {
    Figures figures = Figures.within(deg, LEAST_RAKE_DEG, MOST_RAKE_DEG, FigureUnit.DEG);
    Words more =
        deg <= 0
            ? Words.of(
                ": the steering axis does not lean back, so the wheel falls to one side and cannot"
                    + " be held; lean it back")
            : figures.margin() < 0
                ? Say.format(
                    "; machines on the road have %s to %s: steep steers nervously, flat falls"
                        + " into turns",
                    Words.bare(LEAST_RAKE_DEG, FigureSort.ANGLE), Say.deg(MOST_RAKE_DEG))
                : Words.NONE;
    return finding(
            RAKE,
            s,
            figures,
            Say.format("%s the steering axis leans back %s%s.", with(s), Say.deg(deg), more))
        .at(top);
  }

  private static Finding trail(Standing s, double rakeDeg, Steering steering) {
    double trail = steering.groundTrailMm();
    Figures figures = Figures.within(trail, LEAST_MM, MOST_MM, FigureUnit.MM);
    Words advice =
        trail <= 0
            ? Words.of(
                "; without trail the wheel does not straighten itself: lean the steering axis back"
                    + " more, or set the axle less far ahead of it")
            : figures.margin() < 0
                ? Say.format(
                    "; machines on the road have %s to %s: too little makes it nervous, too"
                        + " much heavy to turn",
                    Words.bare(LEAST_MM, FigureSort.WHOLE_LENGTH), Say.wholeMm(MOST_MM))
                : Words.NONE;
    return finding(
            TRAIL,
            s,
            figures,
            Say.format(
                "%s: rake %s, ground trail %s, normal trail %s, wheel flop %s%s.",
                with(s),
                Say.deg(rakeDeg),
                Say.mm(trail),
                Say.mm(steering.normalTrailMm()),
                Say.mm(steering.flopMm()),
                advice))
        .at(s.ground().frontContact());
  }
}
