package org.longlow.constraints.check.section;

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
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.machine.section.SectionForces.Gas;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.words.Words;

/** Whether gas springs are long enough, and short enough, for the whole way. */
final class StrutFindings {

  /** A gas spring between its shortest and its full length. */
  static final FindingKind GAS_SPRING =
      new FindingKind("gas-spring", FindingGroup.OPENING, Rests.ON_DRAWING);

  private static final Basis HOW = Basis.model("distance of its pins over the whole way");

  /** Places of the way that are looked at. */
  private static final int STEPS = 48;

  private StrutFindings() {}

  static List<Finding> of(Opener opener, double heldAt, Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < opener.forces().springs().size(); i++) {
      String stays = opener.opens().gasSprings().get(i).frame();
      boolean moves = layout.pins().get(stays).with().equals(opener.name());
      findings.add(moves ? idle(opener, i, stays) : of(opener, heldAt, i));
    }
    return findings;
  }

  /** One with both ends on the section pushes nothing. */
  private static Finding idle(Opener opener, int index, String stays) {
    return Finding.note(
            GAS_SPRING,
            about(opener, index),
            Verdict.FAIL,
            HOW,
            Words.of(
                "Gas spring "
                    + (index + 1)
                    + " of section "
                    + opener.name()
                    + " does nothing: "
                    + stays
                    + ", its end that stays, moves with the same section. Name a pin that stays."))
        .in(Condition.open(opener.name()))
        .at(opener.forces().springs().get(index).frame());
  }

  private static About about(Opener opener, int index) {
    return new About(
        opener.name() + ", gas spring " + (index + 1),
        opener.parts(),
        Optional.empty(),
        List.of(opener.name(), Integer.toString(index + 1)));
  }

  private static Finding of(Opener opener, double heldAt, int index) {
    Gas gas = opener.forces().springs().get(index);
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    double leastAt = 0;
    double mostAt = 0;
    for (int k = 0; k <= STEPS; k++) {
      double at = heldAt * k / STEPS;
      double length = opener.motion().at(at).apply(gas.on()).distance(gas.frame());
      if (length < least) {
        least = length;
        leastAt = at;
      }
      if (length > most) {
        most = length;
        mostAt = at;
      }
    }
    double shortest = gas.law().shortestMm();
    double full = gas.law().lengthMm();
    boolean tight = least - shortest <= full - most;
    Figures figures =
        tight
            ? Figures.atLeast(least, shortest, FigureUnit.MM)
            : Figures.atMost(most, full, FigureUnit.MM);
    Words text =
        Words.of(
            "Gas spring " + (index + 1) + " of section " + opener.name() + " goes from ",
            Say.mm(least),
            " to ",
            Say.mm(most),
            " between its eyes; it can be ",
            Say.mm(shortest),
            " to ",
            Say.mm(full),
            figures.margin() >= 0
                ? " long."
                : Words.of(" long: ", advice(least, most, gas, tight)));
    return Finding.held(
            GAS_SPRING,
            about(opener, index),
            Optional.of(Condition.open(opener.name())),
            figures,
            List.of(HOW),
            text)
        .at(gas.frame())
        .openBy(tight ? leastAt : mostAt);
  }

  private static Words advice(double least, double most, Gas gas, boolean tight) {
    if (most - least > gas.law().strokeMm()) {
      return Words.of(
          "take one with a stroke of at least ",
          Words.atLeast(most - least),
          " that is at least ",
          Words.atLeast(most),
          " long drawn out and at most ",
          Words.atMost(least),
          " pushed in, or move an end nearer to the hinge.");
    }
    return Words.of(
        "move its frame end ",
        Words.atLeast(tight ? gas.law().shortestMm() - least : most - gas.law().lengthMm()),
        tight ? " away from its other end." : " towards its other end.");
  }
}
