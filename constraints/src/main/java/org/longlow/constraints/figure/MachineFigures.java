package org.longlow.constraints.figure;

import java.util.List;
import java.util.function.Function;

/** Every figure, by its published name; whoever answers figures asks here what there is. */
public final class MachineFigures {

  /**
   * A figure.
   *
   * @param name as asked for, such as {@code axle-loads}
   * @param inputType record to bind the input to
   * @param answer the calculation, a record or a map of names; throws {@link FigureFaults}
   */
  public record Kind<I extends Record, O>(String name, Class<I> inputType, Function<I, O> answer) {}

  private MachineFigures() {}

  /** Returns all of them, in the order of the documentation. */
  public static List<Kind<?, ?>> all() {
    return List.of(
        new Kind<>("tyre", TyreFigure.Input.class, TyreFigure::answer),
        new Kind<>("trail", TrailFigure.Input.class, TrailFigure::answer),
        new Kind<>("lean", LeanFigure.Input.class, LeanFigure::answer),
        new Kind<>("turn", TurnFigure.Input.class, TurnFigure::answer),
        new Kind<>("axle-loads", AxleLoadsFigure.Input.class, AxleLoadsFigure::answer),
        new Kind<>("breakover", BreakoverFigure.Input.class, BreakoverFigure::answer),
        new Kind<>("side-wind", SideWindFigure.Input.class, SideWindFigure::answer),
        new Kind<>("stability", StabilityFigure.Input.class, StabilityFigure::answer),
        new Kind<>("chain", ChainFigure.Input.class, ChainFigure::answer),
        new Kind<>("cope", CopeFigure.Input.class, CopeFigure::answer),
        new Kind<>("foam", FoamFigure.Input.class, FoamFigure::answer),
        new Kind<>("foam-test", FoamTestFigure.Input.class, FoamTestFigure::answer),
        new Kind<>("seat-load", SeatLoadFigure.Input.class, SeatLoadFigure::answer),
        new Kind<>("body", BodyFigure.Input.class, BodyFigure::answer));
  }
}
