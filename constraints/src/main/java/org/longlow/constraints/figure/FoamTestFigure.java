package org.longlow.constraints.figure;

import java.util.ArrayList;
import java.util.List;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.seat.DiscTest;
import org.longlow.rider.seat.Foam;
import org.longlow.rider.seat.FoamSheets;
import org.longlow.rider.seat.SeatLoad;

/** The figure {@code foam-test}: open-cell foam from a builder's own test on a bathroom scale. */
public final class FoamTestFigure {

  /** One press: depth in mm, load on the scale in kg. */
  public record Press(Double depthMm, Double loadKg) {}

  /** Input: the slab and what was read. */
  public record Input(Double densityKgM3, Double thicknessMm, List<Press> presses) {}

  /** What the foam found would show: load in kg, off by that share of what was read. */
  public record PressOutput(double loadKg, double offShare) {}

  /**
   * Output: figures of a data sheet, and how far the presses lie off them; {@code caution} is empty
   * where they lie close.
   */
  public record Output(
      double ifd25N,
      double supportFactor,
      double cv40KPa,
      double residualShare,
      List<PressOutput> presses,
      String caution) {}

  private FoamTestFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    double density = needs.positive("densityKgM3", input.densityKgM3());
    double thickness = needs.positive("thicknessMm", input.thicknessMm());
    List<DiscTest.Press> presses = new ArrayList<>();
    if (needs.there("presses", input.presses(), "a list of depthMm and loadKg")) {
      for (int i = 0; i < input.presses().size(); i++) {
        String name = "presses[" + i + "]";
        Press press = input.presses().get(i);
        if (needs.there(name, press, "an object with depthMm, loadKg")) {
          double depth = needs.positive(name + ".depthMm", press.depthMm());
          double load = needs.positive(name + ".loadKg", press.loadKg());
          presses.add(new DiscTest.Press(depth, load * SeatLoad.GRAVITY));
        }
      }
    }
    needs.settle();
    try {
      return said(DiscTest.fit(density, thickness, presses), thickness, presses);
    } catch (OutOfRange e) {
      needs.add(new FigureFault("presses", "no foam", e.getMessage()));
      needs.settle();
      throw e;
    }
  }

  private static Output said(DiscTest test, double thickness, List<DiscTest.Press> presses) {
    List<PressOutput> shown = new ArrayList<>();
    for (DiscTest.Press p : presses) {
      double newton = test.loadN(p.depthMm(), thickness);
      shown.add(new PressOutput(newton / SeatLoad.GRAVITY, newton / p.loadN() - 1));
    }
    Foam foam = test.foam();
    return new Output(
        test.ifd25N(),
        test.supportFactor(),
        FoamSheets.cv40KPa(foam),
        test.residualShare(),
        shown,
        test.isRough()
            ? "These presses lie far off any foam; test it again before you rely on the figures."
            : "");
  }
}
