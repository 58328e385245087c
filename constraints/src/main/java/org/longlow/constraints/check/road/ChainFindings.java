package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.LinkedHashSet;
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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.words.Words;

/**
 * Whether a chain has an even whole number of links.
 *
 * <p>A tie of belt length is a chain where its length is a count of links times their pitch: one
 * named number times one named length, each used by its formula or by a measure that it names.
 */
public final class ChainFindings {

  /** The links of a chain. */
  private static final FindingKind CHAIN =
      new FindingKind("chain", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** How far the length may be from count times pitch, mm; rounding of decimals only. */
  private static final double SAME_MM = 1e-6;

  /** A count is whole within this. */
  private static final double WHOLE = 1e-6;

  private ChainFindings() {}

  public static List<Finding> of(Placed placed) {
    List<Finding> findings = new ArrayList<>();
    placed
        .layout()
        .ties()
        .forEach(
            (name, tie) -> {
              if (tie.kind() == TieKind.BELT_LENGTH && tie.is().isPresent()) {
                links(placed.layout(), placed.places(), tie)
                    .ifPresent(
                        links ->
                            findings.add(
                                links.count() < links.least()
                                    ? tooShort(name, links)
                                    : finding(name, links.count(), tie.run().halfLink())));
              }
            });
    return findings;
  }

  /**
   * @param least the least even number that goes round the sprockets
   */
  private record Links(double count, long least) {}

  private static Optional<Links> links(Layout layout, Places places, Tie tie) {
    Set<String> names = new LinkedHashSet<>();
    gather(layout, tie.is().orElseThrow(), names);
    double length = places.value(tie.is().orElseThrow());
    for (String count : names) {
      double n = places.measures().get(count);
      for (String pitch : names) {
        double p = places.measures().get(pitch);
        if (Measures.dim(layout, count).equals(Dim.NUMBER)
            && Measures.dim(layout, pitch).equals(Dim.LENGTH)
            && p > 0
            && Math.abs(n * p - length) < SAME_MM * Math.max(1, n)) {
          return Optional.of(new Links(n, 2 * (long) Math.ceil(leastMm(places, tie) / p / 2)));
        }
      }
    }
    return Optional.empty();
  }

  private static void gather(Layout layout, Formula formula, Set<String> names) {
    for (String name : formula.names()) {
      Measure measure = layout.measures().get(name);
      if (measure != null && names.add(name)) {
        gather(layout, measure.is(), names);
      }
    }
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
