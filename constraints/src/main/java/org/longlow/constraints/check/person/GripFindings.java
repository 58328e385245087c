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
import org.longlow.rider.words.Words;

/**
 * Whether grips are as long as a hand is broad, and no thicker or thinner than hands close round.
 */
public final class GripFindings {

  /** How long and thick grips are. */
  public static final FindingKind GRIP =
      new FindingKind("grip", FindingGroup.POSTURE, Rests.ON_DRAWING);

  /** Rubber on tubes of 22 to 25.4 mm; common practice without a source. */
  private static final double LEAST_THICK_MM = 26;

  private static final double MOST_THICK_MM = 42;

  private static final Basis HAND =
      Basis.published(Known.CHECKED, "hand breadth of the survey, bare");

  private static final Basis THICK =
      Basis.practice("grips of 26 to 42 mm: common practice, no source");

  private GripFindings() {}

  /** Returns what is found of the grips of somebody who rides; empty where they have none. */
  public static Optional<Finding> of(Sitting sitting, Condition stance, Places places) {
    return sitting
        .parts()
        .hands()
        .filter(grips -> sitting.occupant().rides())
        .map(grips -> grip(sitting, stance, grips, places));
  }

  private static Finding grip(Sitting sitting, Condition stance, RestPart grips, Places places) {
    double length = places.value(grips.length());
    double thick = places.value(grips.diameter());
    double hand =
        sitting.body().measures().get("handbreadth") + 2 * sitting.body().gear().gloveMm();
    Figures fits = Figures.atLeast(length, hand, FigureUnit.MM);
    boolean thin = thick < LEAST_THICK_MM;
    boolean closes = !thin && thick <= MOST_THICK_MM;
    Figures figures =
        fits.margin() < 0 || closes
            ? fits
            : thin
                ? Figures.atLeast(thick, LEAST_THICK_MM, FigureUnit.MM)
                : Figures.atMost(thick, MOST_THICK_MM, FigureUnit.MM);
    Words text =
        Words.of(
            "Each of " + grips.name() + " is ",
            Say.mm(length),
            " long, and the hand of " + sitting.person() + " ",
            Say.mm(hand),
            " broad",
            sitting.body().gear().gloveMm() > 0 ? " in its glove" : "",
            fits.margin() < 0 ? ": make them longer" : "",
            ". They are ",
            Say.mm(thick),
            " thick",
            closes
                ? "."
                : Words.of(
                    thin ? "; at least " : "; at most ",
                    Say.mm(thin ? LEAST_THICK_MM : MOST_THICK_MM),
                    " is what hands close round for long."));
    return new Finding(
            GRIP,
            About.person(sitting.occupant(), grips.name(), grips.name()).on(grips.name()),
            Optional.of(stance),
            fits.margin() >= 0 && closes ? Verdict.PASS : Verdict.CAUTION,
            figures,
            List.of(HAND, THICK),
            text)
        .at(places.pin(grips.at()), places.value(grips.y()));
  }
}
