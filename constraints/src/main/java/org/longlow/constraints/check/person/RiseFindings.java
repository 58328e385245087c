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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.JointLimits;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** Whether whoever sits rises from the seat: knees, and hands that push. */
public final class RiseFindings {

  /** Sitting down and rising. */
  public static final FindingKind RISE =
      new FindingKind("rise", FindingGroup.ACCESS, Rests.ON_MASSES);

  /** Height of a seat that is easy to rise from, mm: common practice without a source. */
  static final double EASY_SEAT_MM = 430;

  /** Lower than this two handholds are needed, mm; likewise. */
  static final double LOW_SEAT_MM = 300;

  /** Where a handhold helps, over the seat, mm; likewise. */
  private static final double HOLD_LEAST_MM = 250;

  private static final double HOLD_MOST_MM = 400;

  /** What weak people push with their hands as they rise, of their weight; from memory. */
  private static final double PUSH_LEAST = 0.2;

  private static final double PUSH_MOST = 0.4;

  private static final List<Basis> BASIS =
      List.of(
          Basis.model("moments about the knee, feet under the knees beside the seat"),
          Basis.practice("430 mm easy, under 300 mm two handholds: common practice, no source"),
          Basis.published(Known.CHECKED, "knee strength of older people, Sarabon 2021"));

  /** That hands help enough. */
  private static final Basis PUSHES =
      Basis.published(Known.FROM_MEMORY, "pushes of 20 to 40 % of weight (from memory)");

  private RiseFindings() {}

  /** Returns it for somebody; nothing where they do not sit or the machine does not stand. */
  public static Optional<Finding> of(
      Layout layout, Sitting sitting, List<Standing> standings, Places places) {
    Condition under = Standing.under(sitting.occupant(), standings);
    return standings.stream()
        .filter(s -> sitting.posture().isPresent() && s.condition().equals(under))
        .findFirst()
        .map(s -> rise(new Handholds(layout, places), sitting, s));
  }

  private static Finding rise(Handholds handholds, Sitting sitting, Standing standing) {
    Body body = sitting.body();
    PointMm hip = sitting.posture().orElseThrow().hip();
    double hipUp = standing.ground().heightMm(hip);
    double seat = hipUp - body.hipAboveSeatMm();
    Rising rising = Rising.of(body, hipUp);
    List<String> holds = handholds.seated(sitting).stream().map(RestPart::name).toList();
    boolean low = seat < LOW_SEAT_MM;
    boolean easy = seat >= EASY_SEAT_MM;
    boolean knees = rising.kneeRad() >= JointLimits.KNEE_LOW;
    GroundLeg leg = GroundLeg.of(sitting, standing).better();
    boolean foot = leg.ballMm() <= 0;
    // one handhold is one on each side, so two hands push where one would do
    Verdict verdict =
        !knees || rising.share() > 1
            ? Verdict.FAIL
            : foot && (easy || !holds.isEmpty()) ? Verdict.PASS : Verdict.CAUTION;
    List<Basis> basis = new ArrayList<>(BASIS);
    if (!easy) {
      basis.add(PUSHES);
    }
    Words text =
        Words.of(
            sitting.occupant().words() + " rises from ",
            Say.mm(seat),
            " over the road with the knees at ",
            Say.deg(Math.toDegrees(rising.kneeRad())),
            Say.format(
                " and %s in each, %s of what weak knees give",
                Words.figure(rising.kneeNm(), FigureSort.TORQUE), Say.percent(rising.share())),
            easy ? "." : Words.of("; ", pushed(body.massKg() * Values.STANDARD_GRAVITY_MS2, holds)),
            foot
                ? Words.NONE
                : Words.of(
                    " That is with the feet on the road beside the seat, and none comes there"
                        + (leg.past().isEmpty() ? "" : " past " + leg.past())
                        + ": it is ",
                    Say.mm(leg.ballMm()),
                    " short. Whether they rise is not known; "
                        + room(leg, standing)
                        + "or try it."),
            knees
                ? Words.NONE
                : Words.of(
                    " Knees bend to ", Say.deg(Math.toDegrees(JointLimits.KNEE_LOW)), " at most."));
    return new Finding(
            RISE,
            About.person(sitting.occupant(), "rising", "rise"),
            Optional.of(standing.condition()),
            verdict,
            Figures.atLeast(seat, low ? LOW_SEAT_MM : EASY_SEAT_MM, FigureUnit.MM),
            basis,
            text)
        .at(hip);
  }

  /** What makes room for the leg: a section opens, a cushion does not. */
  private static String room(GroundLeg leg, Standing standing) {
    PartShape past = standing.shapes().get(leg.past());
    return past == null
        ? "lower the seat, "
        : past.part() instanceof CushionPart
            ? "the edge of "
                + leg.past()
                + " holds the thigh up, so make that narrower or lower at"
                + " its side, "
            : "open a section there, ";
  }

  private static Words pushed(double weightN, List<String> holds) {
    return Words.of(
        "weak people push ",
        Say.newton(PUSH_LEAST * weightN),
        " to ",
        Say.newton(PUSH_MOST * weightN),
        " with their hands",
        holds.isEmpty()
            ? Words.of(
                ", and nothing to push on is within reach: add a handhold, ",
                Say.mm(HOLD_LEAST_MM),
                " to ",
                Say.mm(HOLD_MOST_MM),
                " over the seat, or raise the seat.")
            : Words.of(" on " + String.join(", ", holds) + "."));
  }
}
