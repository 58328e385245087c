package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.check.person.SeatFindings;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.seat.FoamGrade;
import org.longlow.constraints.seat.FoamGrades;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.Support;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/**
 * A cushion with what it does under everybody who sits on it, as the study found it.
 *
 * @param cushion its name
 * @param units in which its figures are said
 * @param boardMm thickness of the board, mm
 * @param layers foam from the top down to the board
 * @param loads everybody who sits on its seat, in the order of the crew
 */
public record CushionStack(
    String cushion, Units units, double boardMm, List<Layer> layers, List<Load> loads) {

  public CushionStack {
    layers = List.copyOf(layers);
    loads = List.copyOf(loads);
  }

  /**
   * A layer of foam as bought.
   *
   * @param name what its owner calls it, or else its grade, or else its number
   * @param figures of its data sheet, in words
   * @param thicknessMm free thickness, mm
   * @param closedCell whether its cells are closed
   */
  public record Layer(String name, String figures, double thicknessMm, boolean closedCell) {}

  /**
   * Somebody on the cushion.
   *
   * @param who in words
   * @param verdict as the finding has it
   * @param carried what the cushion carries; empty where they do not rest on it
   * @param says what it does under them, or why they do not rest on it
   */
  public record Load(String who, Verdict verdict, Optional<CushionLoad> carried, String says) {}

  /** Returns a length in words, in the units of the machine. */
  public String says(double mm) {
    return units.says(mm, FigureSort.LENGTH);
  }

  /** Returns the free thickness of the foam, mm. */
  public double foamMm() {
    return layers.stream().mapToDouble(Layer::thicknessMm).sum();
  }

  /** Returns how high above the board a layer begins, mm; that of the number of layers is 0. */
  public double undersideMm(int layer) {
    return layers.stream().skip(layer + 1L).mapToDouble(Layer::thicknessMm).sum();
  }

  /** Returns the cushion of that name; empty if the machine has none. */
  public static Optional<CushionStack> of(Study study, String cushion) {
    return study.layout().parts().get(cushion) instanceof CushionPart part
        ? Optional.of(of(study, part))
        : Optional.empty();
  }

  private static CushionStack of(Study study, CushionPart part) {
    Places places = study.placed().places();
    List<Layer> layers = new ArrayList<>();
    for (FoamSpec foam : part.layers()) {
      layers.add(
          new Layer(
              name(foam, layers.size() + 1),
              FoamGrade.figures(foam, study.layout().units()),
              places.value(foam.thickness()),
              foam.closedCell()));
    }
    List<Load> loads = new ArrayList<>();
    for (Sitting sitting : study.sittings()) {
      if (sitting.parts().parts().contains(part)) {
        loads.add(load(study, sitting, part));
      }
    }
    return new CushionStack(
        part.name(), study.layout().units(), places.value(part.board()), layers, loads);
  }

  private static String name(FoamSpec foam, int number) {
    return foam.name().isEmpty()
        ? FoamGrades.of(foam).map(FoamGrade::name).orElse("layer " + number)
        : foam.name();
  }

  private static Load load(Study study, Sitting sitting, CushionPart part) {
    String who = sitting.occupant().words();
    if (sitting.outcome() instanceof SeatOutcome.Unseatable none) {
      Verdict verdict = verdict(study, SeatFindings.SEAT, sitting, "").orElse(Verdict.FAIL);
      return new Load(who, verdict, Optional.empty(), "cannot sit: " + none.reason());
    }
    Optional<CushionLoad> carried = carried(sitting, part);
    return carried
        .map(
            load ->
                new Load(
                    who,
                    verdict(study, SeatFindings.SINK, sitting, part.name()).orElseThrow(),
                    carried,
                    Support.of(load).advice()))
        .orElseGet(
            () -> new Load(who, Verdict.NOT_APPLICABLE, Optional.empty(), "does not lean on it"));
  }

  private static Optional<CushionLoad> carried(Sitting sitting, CushionPart part) {
    SeatOutcome.Seated seated = sitting.seated().orElseThrow();
    SeatParts parts = sitting.parts();
    return parts.pan().equals(part)
        ? Optional.of(seated.pan())
        : parts.back().filter(part::equals).isPresent()
            ? Optional.of(seated.back())
            : seated.headRest();
  }

  private static Optional<Verdict> verdict(
      Study study, FindingKind kind, Sitting sitting, String part) {
    return study.findings().stream()
        .filter(f -> f.kind().equals(kind))
        .filter(f -> f.about().who().equals(Optional.of(sitting.occupant())))
        .filter(f -> part.isEmpty() || f.about().parts().contains(part))
        .min(WorstFirst.ORDER)
        .map(Finding::verdict);
  }
}
