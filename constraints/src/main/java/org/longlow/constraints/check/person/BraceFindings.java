package org.longlow.constraints.check.person;

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
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Braking;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.seat.Braced;
import org.longlow.rider.seat.SeatLoad;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.SlideAngles;
import org.longlow.rider.words.Words;

/** Whether somebody slides forward on the pan while braking, and what feet and hands must hold. */
public final class BraceFindings {

  /** What feet and hands hold while braking. */
  static final FindingKind BRACE = new FindingKind("brace", FindingGroup.SEAT, Rests.ON_DRAWING);

  /**
   * Both feet, N: half of 308 each, which all but one in a hundred home users can push with a leg
   * (EN 1005-3, by a summary).
   */
  static final double FEET_N = 308;

  /**
   * Both hands, N: 62, which all but 15 in a hundred adults push with no rest behind them (EN
   * 1005-3, by a summary).
   */
  static final double HANDS_N = 62;

  private static final Basis MODEL =
      Basis.model(
          "statics of a body that the machine pushes against while it slows down steadily; feet"
              + " push straight forward");

  private static final Basis STRENGTH =
      Basis.published(
          Known.TRANSCRIBED, "EN 1005-3 force limits of legs and arms, as a summary has them");

  private static final Basis FRICTION =
      Basis.practice("design friction 0.30 for rain and vibration is common practice");

  private BraceFindings() {}

  /** Returns one for somebody who sits, at the braking that the layout asks about and can be. */
  public static Optional<Finding> of(
      Layout layout, Sitting sitting, List<Standing> standings, Places places) {
    Braking braking = Braking.under(layout, places, sitting.occupant(), standings);
    Condition stance = Standing.under(sitting.occupant(), standings);
    return sitting
        .seated()
        .filter(s -> s.load().carried() && braking.g() > 0)
        .map(s -> finding(layout, sitting, stance, braking, s).at(s.hip()));
  }

  /** What the road holds decides nothing where it holds what is asked. */
  private static Basis grip(Layout layout, Braking braking) {
    Basis grip = Sources.of(layout, Demands.Key.GRIP);
    return braking.most().isEmpty() ? grip.aside() : grip;
  }

  private static Finding finding(
      Layout layout, Sitting sitting, Condition stance, Braking braking, SeatOutcome.Seated s) {
    Braced braced = Braced.of(sitting.body(), s, braking.g());
    boolean byHands = braced.handsN() / HANDS_N > braced.feetN() / FEET_N;
    Figures figures =
        byHands
            ? Figures.atMost(braced.handsN(), HANDS_N, FigureUnit.NEWTON)
            : Figures.atMost(braced.feetN(), FEET_N, FigureUnit.NEWTON);
    Verdict verdict = figures.verdict() == Verdict.PASS ? Verdict.PASS : Verdict.CAUTION;
    return new Finding(
            BRACE,
            About.person(sitting.occupant(), "brace"),
            Optional.of(stance),
            verdict,
            figures,
            List.of(
                MODEL,
                STRENGTH,
                FRICTION,
                Sources.of(layout, Demands.Key.BRAKING),
                grip(layout, braking)),
            Words.of(
                slides(sitting, braking, braced),
                feet(braced),
                hands(braced),
                advice(verdict, byHands),
                angles(verdict, s, braced, braking.g())))
        .pulling(
            verdict == Verdict.PASS
                ? Optional.empty()
                : Optional.of(
                    byHands
                        ? Tug.of(
                            Tug.Thing.BACK,
                            Tug.Way.FLATTER,
                            "give the hands something to push against")
                        : Tug.of(
                            Tug.Thing.PAN, Tug.Way.UP, "give the feet a rest to push against")));
  }

  private static Words slides(Sitting sitting, Braking braking, Braced braced) {
    String who = sitting.occupant().words();
    double g = braking.g();
    String most = braking.where();
    return braced.frictionNeeded() <= SeatLoad.DESIGN_FRICTION
        ? Say.format(
            "At %.2f g of braking%s %s keeps to the pan by a friction of %.2f; 0.30 can be counted on",
            g, most, who, Math.max(0, braced.frictionNeeded()))
        : Double.isInfinite(braced.frictionNeeded())
            ? Say.format("At %.2f g of braking%s no friction keeps %s on the pan", g, most, who)
            : Say.format(
                "At %.2f g of braking%s %s needs a friction of %.2f not to slide forward on the pan,"
                    + " and 0.30 can be counted on",
                g, most, who, braced.frictionNeeded());
  }

  private static Words feet(Braced braced) {
    return braced.feetN() > 0
        ? Say.format(
            "; for the rest both feet must push %s, or %s where the pan holds nothing",
            Say.newton(braced.feetN()), Say.newton(braced.feetOnIceN()))
        : braced.feetOnIceN() > 0
            ? Say.format(
                "; where it holds nothing both feet must push %s", Say.newton(braced.feetOnIceN()))
            : Words.NONE;
  }

  private static Words hands(Braced braced) {
    return braced.handsN() > 0
        ? Say.format(
            "; the trunk leaves the back from %.2f g, and both hands must push %s",
            braced.backLeavesG(), Say.newton(braced.handsN()))
        : Words.NONE;
  }

  /** The pan that holds by friction alone, and the back that keeps the trunk. */
  private static Words angles(
      Verdict verdict, SeatOutcome.Seated s, Braced braced, double braking) {
    if (verdict == Verdict.PASS) {
      return Words.NONE;
    }
    SlideAngles angles = SlideAngles.of(s, braced, braking);
    return Words.of(
        angles.canBe()
            ? Say.format(
                " As they sit now, friction alone holds from a pan of about %s front up; from %s on"
                    + " they slide back at rest.",
                Say.deg(Math.toDegrees(angles.leastPanRad())),
                Say.deg(Math.toDegrees(angles.mostPanRad())))
            : Words.of(" No pan holds by friction alone both then and at rest."),
        braced.handsN() > 0
            ? Say.format(
                " A back of %s keeps the trunk; it takes the shoulders with it, so bring the grips"
                    + " nearer as well.",
                Say.deg(Math.toDegrees(angles.leastBackRad())))
            : Words.NONE);
  }

  private static Words advice(Verdict verdict, boolean byHands) {
    if (verdict == Verdict.PASS) {
      return Words.of(".");
    }
    return byHands
        ? Say.format(
            ". %s are little trouble for most: lean the back farther, or give the hands something"
                + " to push against.",
            Say.newton(HANDS_N))
        : Say.format(
            ". %s are little trouble for most: raise the front of the pan, or give the feet a rest"
                + " to push against.",
            Say.newton(FEET_N));
  }
}
