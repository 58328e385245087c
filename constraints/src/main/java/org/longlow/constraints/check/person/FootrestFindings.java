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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootHold;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.words.Words;

/** Whether feet stay on boards and pegs by themselves, as surfaces with a slope. */
public final class FootrestFindings {

  /** The friction that a foot needs where it rests. */
  public static final FindingKind FOOTREST =
      new FindingKind("footrest", FindingGroup.POSTURE, Rests.ON_DRAWING);

  /** Of a rubber sole on ribbed metal or rubber in rain; judgement. */
  static final double FRICTION = 0.4;

  /** Beyond this no friction is meant. */
  private static final double MOST_FRICTION = 10;

  private static final List<Basis> BASIS =
      List.of(
          Basis.model(
              "statics of a leg that hangs loose in hip and knee, its thigh carried by the pan or"
                  + " by itself, whichever is worse"),
          Basis.published(Known.CHECKED, "links of the survey, segment masses by de Leva"),
          Basis.judgement("friction 0.4 of a rubber sole on a ribbed rest in rain"));

  private FootrestFindings() {}

  /** Returns it for somebody who sits; nothing for others. */
  public static Optional<Finding> of(Sitting sitting, Condition stance, Places places) {
    if (sitting.posture().isEmpty()) {
      return Optional.empty();
    }
    Posture posture = sitting.posture().get();
    RestPart rest = sitting.parts().feet().orElseThrow();
    boolean board = rest.type().board();
    FootHold hold = FootHold.of(sitting.body(), posture, board);
    double slope = Math.toDegrees(posture.ball().minus(posture.heel()).angleRad());
    About about = About.person(sitting.occupant(), "foot rest", rest.name()).on(rest.name());
    if (board) {
      double length = places.pin(rest.at()).distance(places.pin(rest.to().orElseThrow()));
      double needs = sitting.body().foot().ballMm();
      if (length < needs) {
        return Optional.of(
            new Finding(
                    FOOTREST,
                    about,
                    Optional.of(stance),
                    Verdict.CAUTION,
                    Figures.atLeast(length, needs, FigureUnit.MM),
                    BASIS,
                    Words.of(
                        rest.name() + " is ",
                        Say.mm(length),
                        " long; from the heel of " + sitting.person() + " to the ball are ",
                        Say.mm(needs),
                        ", so the ball of the foot hangs over: make it ",
                        Words.atLeast(needs - length),
                        " longer."))
                .at(posture.ball()));
      }
    }
    boolean back = hold.toHeel();
    boolean none = hold.friction() > MOST_FRICTION;
    Figures figures =
        Figures.atMost(none ? Double.NaN : hold.friction(), FRICTION, FigureUnit.NONE);
    boolean stopped = back && rest.heelStop();
    Verdict verdict = stopped || figures.margin() >= 0 ? Verdict.PASS : Verdict.CAUTION;
    PointMm at = board ? posture.heel() : posture.ball();
    Words needs =
        none
            ? Words.of("no friction keeps it there")
            : Say.format(
                "it needs a friction of %.2f not to slide %s, and %.2f can be counted on",
                hold.friction(), back ? "towards the heel" : "towards the toes", FRICTION);
    return Optional.of(
        new Finding(
                FOOTREST,
                about,
                Optional.of(stance),
                verdict,
                stopped ? Figures.only(figures.value(), FigureUnit.NONE) : figures,
                BASIS,
                Words.of(
                    "The foot of "
                        + sitting.person()
                        + " lies on "
                        + rest.name()
                        + " at a slope of ",
                    Say.deg(slope),
                    "; left to itself ",
                    needs,
                    stopped
                        ? "; its edge holds the heel."
                        : figures.margin() >= 0 ? "." : advice(board, back)))
            .at(at));
  }

  private static String advice(boolean board, boolean back) {
    return !board
        ? ". Muscles would have to hold it all day, and they tire: move the peg so that the foot stands squarer on it, or fit a"
            + " board."
        : back
            ? ". Muscles would have to hold it all day, and they tire: give the board an edge for the heel (heelStop), or less"
                + " slope."
            : ". Muscles would have to hold it all day, and they tire: give the board more slope.";
  }
}
