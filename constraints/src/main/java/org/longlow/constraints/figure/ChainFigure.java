package org.longlow.constraints.figure;

import java.util.List;
import org.longlow.constraints.machine.chassis.Chain;

/** The figure {@code chain}: links and the centre distance that makes them taut. */
public final class ChainFigure {

  /**
   * Input.
   *
   * @param teeth two sprockets in either order, each a whole number from 5 to 200
   * @param pitchMm &gt; 0
   * @param centreMm at least the sum of the pitch radii
   */
  public record Input(List<Integer> teeth, Double pitchMm, Double centreMm) {}

  /**
   * Output.
   *
   * @param exactLinks before rounding
   * @param links even, rounded up
   * @param centreMm centre distance for that many links
   */
  public record Output(double exactLinks, int links, double centreMm) {}

  private ChainFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    List<Integer> teeth = input.teeth();
    boolean countable = needs.there("teeth", teeth, "two whole numbers");
    if (countable && teeth.size() != 2) {
      needs.add(new FigureFault("teeth", teeth.size() + " numbers", "two whole numbers"));
      countable = false;
    }
    if (countable) {
      for (int i = 0; i < 2; i++) {
        Integer count = teeth.get(i);
        double checked =
            needs.within(
                "teeth[" + i + "]",
                count == null ? null : count.doubleValue(),
                Chain.LEAST_TEETH,
                Chain.MOST_TEETH);
        countable &= !Double.isNaN(checked);
      }
    }
    double pitch = needs.positive("pitchMm", input.pitchMm());
    double centre = needs.positive("centreMm", input.centreMm());
    if (countable && !Double.isNaN(pitch + centre)) {
      double least = Chain.over(teeth.get(0), teeth.get(1), pitch).leastCentreMm();
      if (centre < least) {
        needs.fault("centreMm", centre, least + " (sprockets just apart) up");
      }
    }
    needs.settle();
    Chain chain = Chain.over(teeth.get(0), teeth.get(1), pitch);
    int links = chain.links(centre);
    return new Output(chain.exactLinks(centre), links, chain.centreMm(links));
  }
}
