package org.longlow.sketcher.picture;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.ride.Balanced;
import org.longlow.constraints.machine.ride.WhippleModel;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;
import org.longlow.svg.drawing.Drawing;

/**
 * How a machine balances by itself over its speed, and what small changes do to that: of the crew
 * with which it balances last.
 *
 * @param who it carries, such as {@code with Runa}
 * @param drawing at paper scale
 * @param rows a row for each change: what, from which speed it balances, from which it falls
 */
public record BalanceChart(String who, Drawing drawing, List<List<String>> rows) {

  /** Heads of the rows. */
  public static final List<String> HEADINGS =
      List.of("Changed", "Balances by itself from", "Slowly falls to a side from");

  /** What the signs say, and what the model leaves out. */
  public static final String CAPTION = BalancePicture.KEY + ". " + WhippleModel.CAUTION;

  /** Why there is none. */
  public static final String NONE =
      "How it balances cannot be worked out: that needs two wheels with a mass, a front system, and"
          + " masses both of what is steered and of the rest.";

  private static final String NEVER = "no speed";

  public BalanceChart {
    rows = List.copyOf(rows);
  }

  /** Returns that of a machine; empty where a wheel, the steering or a mass is missing. */
  public static Optional<BalanceChart> of(Study study) {
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    return wheels.stands()
        ? Balanced.last(wheels, study.standings()).map(b -> of(b, study.layout().units()))
        : Optional.empty();
  }

  private static BalanceChart of(Balanced balanced, Units units) {
    String who = "with " + balanced.stance().condition().people();
    return new BalanceChart(
        who,
        BalancePicture.of("Hands off, " + who, balanced.model(), units),
        balanced.changes().stream()
            .map(
                c ->
                    List.of(
                        c.what().in(units),
                        c.weave().map(w -> w.in(units)).orElse(NEVER),
                        c.capsize().map(w -> w.in(units)).orElse(NEVER)))
            .toList());
  }
}
