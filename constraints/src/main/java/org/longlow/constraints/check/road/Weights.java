package org.longlow.constraints.check.road;

import java.util.Collection;
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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.words.Words;

/**
 * Which parts have a known mass, and what that does to findings that rest on masses.
 *
 * @param unknown names of parts without one, in the order of the layout; they count as nothing
 */
public record Weights(List<String> unknown) {

  /** Parts without a known mass. */
  private static final FindingKind MASS =
      new FindingKind("mass", FindingGroup.LOADS, Rests.ON_DRAWING);

  public Weights {
    unknown = List.copyOf(unknown);
  }

  /** A part is weighed by its own mass, zero too, or by the material that fills it. */
  public static Weights of(Collection<PartShape> shapes) {
    return new Weights(
        shapes.stream()
            .filter(s -> s.part().base().mass().isEmpty() && !(s.massKg() > 0))
            .map(s -> s.part().name())
            .toList());
  }

  /** Returns the finding that names them, if there are any. */
  public Optional<Finding> finding() {
    return unknown.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.note(
                    MASS,
                    new About(
                        String.join(", ", unknown), unknown, Optional.empty(), List.of("unknown")),
                    Verdict.CAUTION,
                    Basis.model("this layout"),
                    Words.of(
                        "Mass not known: "
                            + String.join(", ", unknown)
                            + ". Each counts as nothing in loads, sag, lean, stand and centre of"
                            + " mass; weigh it and give its mass. A material gives one only to what"
                            + " it fills: tube, sheet, cushion, lever, block and what hands or"
                            + " feet rest on."))
                .measured(Figures.only(unknown.size(), FigureUnit.COUNT)));
  }

  /** Returns a finding that rests on masses: it never passes while one of them is not known. */
  public Finding held(Finding f) {
    if (unknown.isEmpty() || !f.kind().weighed() || f.verdict() == Verdict.NOT_APPLICABLE) {
      return f;
    }
    Finding careful = f.verdict() == Verdict.PASS ? f.withVerdict(Verdict.CAUTION) : f;
    return careful.withText(
        Words.of(
            f.words(),
            " Incomplete: the mass of "
                + (unknown.size() == 1 ? unknown.get(0) : unknown.size() + " parts")
                + " is not known."));
  }
}
