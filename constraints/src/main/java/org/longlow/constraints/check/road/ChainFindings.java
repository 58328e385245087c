package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.shape.ChainLinks;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Runs;
import org.longlow.rider.words.Words;

/** Whether a chain has an even whole number of links. */
public final class ChainFindings {

  /** The links of a chain. */
  private static final FindingKind CHAIN =
      new FindingKind("chain", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** A count is whole within this. */
  private static final double WHOLE = 1e-6;

  private ChainFindings() {}

  public static List<Finding> of(Placed placed) {
    List<Finding> findings = new ArrayList<>();
    for (Map.Entry<String, Tie> run : Runs.of(placed.layout())) {
      Tie tie = run.getValue();
      ChainLinks.of(placed.layout(), placed.places(), tie)
          .map(l -> links(l, placed.places(), tie))
          .ifPresent(
              links ->
                  findings.add(
                      links.count() < links.least()
                          ? tooShort(run.getKey(), links)
                          : finding(run.getKey(), links.count(), tie.run().halfLink())));
    }
    return findings;
  }

  /**
   * @param least the least even number that goes round the sprockets
   */
  private record Links(double count, long least) {}

  private static Links links(ChainLinks chain, Places places, Tie tie) {
    return new Links(
        chain.count(), 2 * (long) Math.ceil(leastMm(places, tie) / chain.pitchMm() / 2));
  }

  /**
   * The length round two of the sprockets that touch each other, mm: nothing shorter holds both.
   */
  private static double leastMm(Places places, Tie tie) {
    List<Double> radii = tie.radii().stream().map(places::value).sorted().toList();
    double large = radii.get(radii.size() - 1);
    double small = radii.get(radii.size() - 2);
    double lean = Math.asin((large - small) / (large + small));
    return 4 * Math.sqrt(large * small) + Math.PI * (large + small) + 2 * lean * (large - small);
  }

  private static Finding tooShort(String tie, Links links) {
    return new Finding(
        CHAIN,
        About.thing(tie, tie),
        Optional.empty(),
        Verdict.FAIL,
        Figures.only(links.count(), FigureUnit.LINKS),
        List.of(Basis.model("the length round two sprockets that touch each other")),
        Say.format(
            "Chain %s of %s is shorter than its sprockets need, however near they are to each"
                + " other: choose an even number of at least %s links.",
            tie, Say.number(links.count()), links.least()));
  }

  private static Finding finding(String tie, double links, boolean halfLink) {
    long whole = Math.round(links);
    boolean isWhole = Math.abs(links - whole) < WHOLE;
    boolean even = isWhole && whole % 2 == 0;
    return new Finding(
        CHAIN,
        About.thing(tie, tie),
        Optional.empty(),
        even ? Verdict.PASS : isWhole && halfLink ? Verdict.CAUTION : Verdict.FAIL,
        Figures.only(links, FigureUnit.LINKS),
        List.of(
            Basis.practice(
                "inner and outer links take turns, so a chain closes on an even number; that a"
                    + " cranked half link is weaker is common practice, no source")),
        even
            ? Words.of("Chain " + tie + " has " + whole + " links, an even number.")
            : isWhole
                ? Words.of(
                    "Chain "
                        + tie
                        + " has "
                        + whole
                        + " links, an odd number, which needs a cranked half link, the weakest of"
                        + " the chain; choose an even number"
                        + (halfLink ? "." : ", or say \"halfLink\": true of " + tie + "."))
                : Say.format(
                    "Chain %s would have %.2f links; choose an even whole number.", tie, links));
  }
}
