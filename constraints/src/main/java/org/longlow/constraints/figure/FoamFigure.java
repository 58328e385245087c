package org.longlow.constraints.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.seat.Compression;
import org.longlow.rider.seat.Foam;
import org.longlow.rider.seat.FoamLayer;
import org.longlow.rider.seat.FoamStack;

/** The figure {@code foam}: how far a stack of foam sinks under a pressure. */
public final class FoamFigure {

  /**
   * A layer, top first: open-cell foam by its IFD, or closed-cell foam.
   *
   * @param thicknessMm free thickness, &gt; 0
   * @param densityKgM3 of the foam
   * @param ifd25N indentation force at 25 %, open-cell foam
   * @param supportFactor IFD65 over IFD25, open-cell foam
   * @param closedCell true for closed-cell foam
   * @param wallStressKPa cell-wall stress, closed-cell foam
   * @param polymerDensityKgM3 of the solid polymer, closed-cell foam
   */
  public record Layer(
      Double thicknessMm,
      Double densityKgM3,
      Double ifd25N,
      Double supportFactor,
      Boolean closedCell,
      Double wallStressKPa,
      Double polymerDensityKgM3) {}

  /** Input; pressure in kPa, 0 or more. */
  public record Input(List<Layer> layers, Double pressureKPa) {}

  /** A layer under the pressure. */
  public record LayerOutput(double strain, double sinkMm, String verdict) {}

  /**
   * Output: mm and {@code sound}, {@code topper spent} or {@code bottoms}; {@code caution} says of
   * which layers the model no longer holds, and is empty where it holds.
   */
  public record Output(
      List<LayerOutput> layers,
      double sinkMm,
      double remainingMm,
      String verdict,
      String caution) {}

  private FoamFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    List<FoamLayer> layers = new ArrayList<>();
    if (needs.there("layers", input.layers(), "a list of layers, top first")) {
      if (input.layers().isEmpty()) {
        needs.add(new FigureFault("layers", "empty", "at least one layer"));
      }
      for (int i = 0; i < input.layers().size(); i++) {
        FoamLayer layer = layer(needs, "layers[" + i + "]", input.layers().get(i));
        if (layer != null) {
          layers.add(layer);
        }
      }
    }
    double pressure = needs.within("pressureKPa", input.pressureKPa(), 0, FoamStack.MOST_KPA);
    if (layers.size() > FoamStack.MOST_LAYERS) {
      needs.add(
          new FigureFault(
              "layers", layers.size() + " layers", "at most " + FoamStack.MOST_LAYERS + " layers"));
    }
    needs.settle();
    FoamStack stack = new FoamStack(layers);
    Compression c = stack.compress(pressure);
    return new Output(
        c.layers().stream()
            .map(l -> new LayerOutput(l.strain(), l.sinkMm(), l.verdict().words()))
            .toList(),
        c.sinkMm(),
        c.remainingMm(),
        c.verdict().words(),
        caution(stack, c));
  }

  private static String caution(FoamStack stack, Compression c) {
    List<String> beyond = new ArrayList<>();
    for (int i = 0; i < c.layers().size(); i++) {
      double known = stack.layers().get(i).foam().knownStrain();
      if (c.layers().get(i).strain() > known) {
        beyond.add(
            String.format(
                Locale.ROOT,
                "layer %d is at %.0f %% strain, and foam is known to %.0f %% only",
                i + 1,
                100 * c.layers().get(i).strain(),
                100 * known));
      }
    }
    return beyond.isEmpty()
        ? ""
        : "Beyond the model: "
            + String.join("; ", beyond)
            + ". Sink and strain are not to be used.";
  }

  private static FoamLayer layer(Needs needs, String name, Layer layer) {
    if (!needs.there(name, layer, "an object with thicknessMm, densityKgM3")) {
      return null;
    }
    boolean closed = Boolean.TRUE.equals(layer.closedCell());
    double thickness = needs.positive(name + ".thicknessMm", layer.thicknessMm());
    double density = needs.positive(name + ".densityKgM3", layer.densityKgM3());
    double first;
    double second;
    if (closed) {
      first = needs.notNegative(name + ".wallStressKPa", layer.wallStressKPa());
      second = needs.positive(name + ".polymerDensityKgM3", layer.polymerDensityKgM3());
    } else {
      first = needs.positive(name + ".ifd25N", layer.ifd25N());
      second = needs.positive(name + ".supportFactor", layer.supportFactor());
    }
    if (Double.isNaN(thickness + density + first + second)) {
      return null;
    }
    try {
      return new FoamLayer(
          thickness,
          closed ? Foam.closedCell(density, first, second) : Foam.openCell(density, first, second));
    } catch (OutOfRange e) {
      needs.add(new FigureFault(name, "no foam", e.getMessage()));
      return null;
    }
  }
}
