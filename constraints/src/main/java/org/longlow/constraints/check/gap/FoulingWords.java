package org.longlow.constraints.check.gap;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.gap.Fouling;
import org.longlow.constraints.gap.Sweep;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.words.Words;

/** How a section comes too close to something on its way, in words. */
public final class FoulingWords {

  /** What a section meets on its way. */
  public static final FindingKind OPEN =
      new FindingKind("open", FindingGroup.OPENING, Rests.ON_DRAWING);

  /** How the way is looked at, in words. */
  static final Basis HOW =
      Basis.model(
          Words.of(
              "the whole way swept, gaps to within ",
              Say.mm(Sweep.BOUND_MM),
              " (conservative advancement)"));

  private FoulingWords() {}

  /** Says what a drive moves with a section; nothing for one that opens alone. */
  static String together(Set<String> with) {
    return with.isEmpty() ? "" : ", driven together with " + String.join(", ", with);
  }

  /**
   * @param with what the same drive moves, if it is that which is fouled
   */
  static Finding finding(
      String section,
      Set<String> with,
      About about,
      Fouling fouling,
      double limitMm,
      Basis source,
      Words ways) {
    double gap = fouling.gapMm();
    boolean deep = fouling.isDeep();
    Words text =
        Words.of(
            "Section "
                + section
                + together(with)
                + ": "
                + about.words()
                + (gap < 0 ? " run into each other" : gap == 0 ? " touch" : " come too close"),
            (fouling.first() == 0
                ? " from shut on"
                : Words.of(" from ", Say.open(fouling.first()), " open on")),
            (deep ? "; where it is " : "; worst at "),
            Say.open(fouling.worst()),
            (deep ? " open they are some " : ", where they are "),
            (gap < 0 ? Words.of(Say.mm(-gap), " in each other") : Words.of(Say.mm(gap), " apart")),
            deep
                ? ". That is more than a shift or a cut mends: change how it opens, or list the"
                    + " other under touches if they are meant to meet."
                : Words.of(". To keep the ", Say.mm(limitMm), " asked all the way, ", ways, "."));
    return Finding.held(
            OPEN,
            about.under(section),
            Optional.of(Condition.open(section)),
            Figures.atLeast(gap, limitMm, FigureUnit.MM),
            fouling.withinMm() > Sweep.BOUND_MM
                ? List.of(source, HOW, coarsely(fouling.withinMm()))
                : List.of(source, HOW),
            text)
        .at(fouling.where())
        .openBy(fouling.worst())
        .openFrom(fouling.first());
  }

  private static Basis coarsely(double withinMm) {
    return Basis.model(Words.of("how close they come here, to within ", Say.mm(withinMm)));
  }
}
