package org.longlow.constraints.check.person;

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
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.words.Words;

/** Both feet on the road at a stop, past what stands beside the legs, and the machine held. */
public final class StopFindings {

  /** More of height or mass than this nobody takes off a machine that is laid out; judgement. */
  private static final double CURED_BY = 0.1;

  /** How far the heels are off the road with both feet down. */
  public static final FindingKind FEET_DOWN =
      new FindingKind("feet-down", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  /** What a foot holds where the road falls to its side. */
  public static final FindingKind HOLD_UP =
      new FindingKind("hold-up", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  /**
   * What all but one in a hundred home users push with a leg, N (EN 1005-3, by a summary; the
   * percentile from memory).
   */
  static final double LEG_N = 308;

  private StopFindings() {}

  /**
   * Returns both for somebody who rides; nothing where they do not sit or the machine does not
   * stand.
   */
  public static List<Finding> of(Layout layout, Sitting sitting, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    if (sitting.posture().isPresent() && sitting.occupant().rides()) {
      WorstAboard.of(sitting.occupant(), standings, s -> down(layout, sitting, s))
          .ifPresent(findings::add);
      List<Standing> weighed =
          standings.stream().filter(s -> s.load() != null && slopeRad(layout, s) > 0).toList();
      WorstAboard.of(sitting.occupant(), weighed, s -> held(layout, sitting, s))
          .ifPresent(findings::add);
    }
    return findings;
  }

  private static double slopeRad(Layout layout, Standing standing) {
    return standing.places().value(layout.demands().limit(Demands.Key.CROSS_SLOPE));
  }

  private static Finding down(Layout layout, Sitting sitting, Standing standing) {
    double slopeRad = slopeRad(layout, standing);
    GroundLeg.Pair legs = GroundLeg.of(sitting, standing);
    GroundLeg worse = legs.worse();
    double limit = standing.places().value(layout.demands().limit(Demands.Key.FOOT_DOWN));
    double off = Math.max(0, worse.flatMm());
    boolean neither = Math.min(legs.left().ballMm(), legs.right().ballMm()) > 0;
    double onSlope = worse.slopeMm(slopeRad);
    boolean slips = onSlope > 0;
    Figures figures = Figures.atMost(off, limit, FigureUnit.MM);
    Verdict verdict =
        neither ? Verdict.FAIL : figures.margin() < 0 || slips ? Verdict.CAUTION : Verdict.PASS;
    String side = legs.side(worse);
    Words how =
        off == 0
            ? Words.of("stands with both soles flat")
            : worse.ballMm() <= 0
                ? Words.of(
                    "stands on the ball of the " + side + " foot, the leg ", Say.mm(off), " short")
                : Words.of(
                    "cannot set down the " + side + " foot, the leg is ",
                    Say.mm(worse.ballMm()),
                    " short for its ball");
    Words past =
        Words.of(
            worse.past().isEmpty() ? "" : " past " + worse.past(),
            ", ",
            Say.mm(worse.outMm()),
            " out");
    Words slope =
        verdict != Verdict.PASS || slips
            ? slips && worse.ballMm() <= 0
                ? Words.of(
                    " Where the road falls ",
                    Say.deg(Math.toDegrees(slopeRad)),
                    " to that side it is ",
                    Say.mm(onSlope),
                    " short for the ball.")
                : Words.NONE
            : Words.of(
                " Where the road falls ",
                Say.deg(Math.toDegrees(slopeRad)),
                " to that side the ball still reaches.");
    Words cure =
        verdict == Verdict.PASS
            ? Words.of(".")
            : Words.of(
                worse.past().isEmpty()
                    ? ": lower the seat."
                    : ": lower the seat, or make " + worse.past() + " narrower or lower there.");
    return new Finding(
            FEET_DOWN,
            About.person(sitting.occupant(), "both feet down", "feet"),
            Optional.of(standing.condition()),
            verdict,
            figures,
            List.of(
                Basis.model("a string from the hip past bodies to the ankle"),
                Basis.published(Known.CHECKED, "body links of the survey"),
                Sources.of(layout, Demands.Key.FOOT_DOWN),
                Sources.of(layout, Demands.Key.CROSS_SLOPE)),
            Words.of(sitting.person() + " ", how, past, cure, slope))
        .at(worse.foot(), (worse == legs.left() ? 1 : -1) * worse.outMm());
  }

  private static Finding held(Layout layout, Sitting sitting, Standing standing) {
    double slopeRad = slopeRad(layout, standing);
    GroundLeg.Pair legs = GroundLeg.of(sitting, standing);
    GroundLeg left = legs.left();
    GroundLeg right = legs.right();
    MassPoint total = standing.load().total();
    double up = standing.ground().heightMm(total.at());
    // what is not in the middle falls to its own side
    double toLeft = footN(total.massKg(), up, slopeRad, left.outMm(), total.yMm());
    double toRight = footN(total.massKg(), up, slopeRad, right.outMm(), -total.yMm());
    // a foot in the air holds nothing, however far out it is
    int lacks = Integer.compare(reach(left, slopeRad), reach(right, slopeRad));
    boolean atLeft = lacks != 0 ? lacks > 0 : toLeft >= toRight;
    double force = Math.max(0, atLeft ? toLeft : toRight);
    GroundLeg foot = atLeft ? left : right;
    int reach = reach(foot, slopeRad);
    double own = sitting.body().massInGearKg() * Values.STANDARD_GRAVITY_MS2;
    Verdict verdict =
        reach == 2 || force > own
            ? Verdict.FAIL
            : reach == 1 || force > LEG_N ? Verdict.CAUTION : Verdict.PASS;
    Figures figures =
        reach > 0
            ? Figures.atMost(reach == 2 ? foot.ballMm() : foot.slopeMm(slopeRad), 0, FigureUnit.MM)
            : Figures.atMost(force, force > own ? own : LEG_N, FigureUnit.NEWTON);
    boolean alike = lacks == 0 && (reach > 0 || Math.abs(toLeft - toRight) < 1);
    Words start =
        Words.of(
            "Where the road falls ",
            Say.deg(Math.toDegrees(slopeRad)),
            alike ? " to either side" : " to the " + (atLeft ? "left" : "right"));
    Words text =
        reach > 0
            ? Words.of(
                start,
                " no foot of " + sitting.person() + " holds the machine of ",
                Say.kg(total.massKg()),
                ": the ball of the foot is ",
                Say.mm(figures.value()),
                " short of the road",
                foot.past().isEmpty() ? "" : " past " + foot.past(),
                reach == 2
                    ? "; lower the seat, or make narrower what is beside it."
                    : " as it stands square to it, so it leans until the foot meets it; lower the"
                        + " seat.")
            : Words.of(
                start,
                " and ",
                holds(sitting, standing, foot, force, own, verdict),
                cure(total, up, slopeRad, foot, force, verdict == Verdict.FAIL ? own : LEG_N));
    return new Finding(
            HOLD_UP,
            About.person(sitting.occupant(), "holding the machine", "slope"),
            Optional.of(standing.condition()),
            verdict,
            figures,
            List.of(
                Basis.model("moments about the line of the tyres, machine square to the road"),
                Sources.of(layout, Demands.Key.CROSS_SLOPE),
                Basis.published(
                    Known.TRANSCRIBED, "EN 1005-3 force limits of legs, as a summary has them"),
                Basis.judgement("a leg that is nearly straight carries its owner")),
            text)
        .at(foot.foot(), (atLeft ? 1 : -1) * foot.outMm());
  }

  /**
   * 0 where the ball of a foot reaches a road that falls to its side, 1 only a level one, else 2.
   */
  private static int reach(GroundLeg leg, double slopeRad) {
    return leg.ballMm() > 0 ? 2 : leg.slopeMm(slopeRad) > 0 ? 1 : 0;
  }

  private static Words holds(
      Sitting sitting,
      Standing standing,
      GroundLeg foot,
      double force,
      double own,
      Verdict verdict) {
    return Words.of(
        "the machine of ",
        Say.kg(standing.load().total().massKg()),
        " with " + standing.condition().people() + " stands square to it, the foot there holds ",
        Say.newton(force),
        ", ",
        Say.mm(foot.outMm()),
        " out; ",
        Say.newton(verdict == Verdict.FAIL ? own : LEG_N),
        verdict == Verdict.PASS
            ? " are little trouble for most."
            : verdict == Verdict.CAUTION
                ? " are little trouble for most. Hold it upright instead"
                : " is as much as " + sitting.person() + " weighs, so it falls over");
  }

  /** What brings the force of a foot down to a limit, each thing alone; nothing where it is. */
  private static Words cure(
      MassPoint total, double upMm, double slopeRad, GroundLeg foot, double force, double limit) {
    if (force <= limit) {
      return Words.NONE;
    }
    double lower =
        (force - limit)
            * foot.outMm()
            / (total.massKg() * Values.STANDARD_GRAVITY_MS2 * Math.sin(slopeRad));
    double off = 1 - limit / force;
    return Words.of(
        ": set the foot ",
        Words.atLeast(foot.outMm() * (force / limit - 1)),
        " farther out",
        lower < CURED_BY * upMm
            ? Words.of(", or its mass ", Words.atLeast(lower), " lower")
            : Words.NONE,
        off < CURED_BY
            ? Words.of(", or take ", Say.kg(total.massKg() * off), " off it at the same height")
            : Words.NONE,
        lower < CURED_BY * upMm || off < CURED_BY
            ? Words.of(".")
            : Words.of("; lower and lighter helps, but alone it would take more than a tenth."));
  }

  /**
   * Returns what a foot holds of a machine that leans to its side, N.
   *
   * @param heightMm of its centre of mass over the road
   * @param outMm from the line of the tyres to the foot
   * @param asideMm how far the centre is to that side of the middle plane already
   */
  static double footN(
      double massKg, double heightMm, double leanRad, double outMm, double asideMm) {
    return massKg
        * Values.STANDARD_GRAVITY_MS2
        * (heightMm * Math.sin(leanRad) + asideMm * Math.cos(leanRad))
        / outMm;
  }
}
