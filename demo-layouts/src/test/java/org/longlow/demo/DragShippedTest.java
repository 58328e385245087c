package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.DragSession;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.rider.geom.PointMm;

/**
 * Leads every pin of every shipped machine round a circle of 200 mm in steps of 1 mm: ties hold to
 * 1e-6 mm at every step, and no two links joined at a pin turn over to their mirror image. By
 * default some pins go half of the way, each to another side.
 */
class DragShippedTest {

  private static final double TIE_MM = 1e-6;

  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  private static final int EACH = LONG ? 1 : 11;

  private static final double RADIUS_MM = 100;
  private static final int ROUND = (int) Math.ceil(2 * Math.PI * RADIUS_MM);
  private static final int STEPS = LONG ? ROUND : ROUND / 2;

  /** Links nearer to one line than this may lie on either side of it by rounding, mm². */
  private static final double IN_LINE_MM2 = 1;

  static Stream<String> names() {
    return Demos.names().stream();
  }

  private record Chain(String a, String middle, String b) {
    double turn(Places places) {
      PointMm m = places.pin(middle);
      return places.pin(a).minus(m).cross(places.pin(b).minus(m));
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyPinGoesRoundWithoutAFlipOrABrokenTie(String name) {
    Placed placed = Placer.place(Demos.layout(name));
    LayoutProblem problem = placed.problem();
    List<Chain> chains = chains(problem.layout().ties());
    assertThat(chains.isEmpty()).isEqualTo(name.equals("dunlin")); // held by one-piece ties alone
    List<String> pins =
        problem.layout().pins().keySet().stream()
            .filter(pin -> problem.variables(pin) != null)
            .toList();
    assertThat(pins).hasSizeGreaterThan(10);
    for (int i = 0; i < pins.size(); i += EACH) {
      goRound(placed, pins.get(i), problem.variables(pins.get(i)), chains, i / EACH);
    }
  }

  /**
   * @param quarter to which side it begins, in quarters of a turn
   */
  private static void goRound(
      Placed placed, String pin, int[] xz, List<Chain> chains, int quarter) {
    LayoutProblem problem = placed.problem();
    DragSession drag =
        Solver.drag(problem.problem(), placed.report().x(), SolverSettings.DEFAULT, xz[0], xz[1]);
    PointMm start = placed.places().pin(pin);
    PointMm centre = start.minus(PointMm.unit(quarter * Math.PI / 2).times(RADIUS_MM));
    double[] before = chains.stream().mapToDouble(c -> c.turn(placed.places())).toArray();
    for (int step = 1; step <= STEPS; step++) {
      PointMm to = start.turnedAbout(centre, 2 * Math.PI * step / ROUND);
      SolveReport report = drag.moveTo(to.x(), to.z());
      assertThat(report.maxResidualMm()).as("%s, step %d", pin, step).isLessThan(TIE_MM);
      assertThat(report.failedLimits()).as("%s, step %d", pin, step).isEmpty();
      Places places = problem.places(report.x());
      for (int i = 0; i < before.length; i++) {
        double now = chains.get(i).turn(places);
        if (Math.abs(now) > IN_LINE_MM2 && Math.abs(before[i]) > IN_LINE_MM2) {
          assertThat(Math.signum(now))
              .as("%s dragging %s, step %d", chains.get(i), pin, step)
              .isEqualTo(Math.signum(before[i]));
        }
        before[i] = now;
      }
    }
  }

  /** Every two distance ties that share a pin. */
  private static List<Chain> chains(Map<String, Tie> ties) {
    List<List<String>> links =
        ties.values().stream().filter(t -> t.kind() == TieKind.DISTANCE).map(Tie::pins).toList();
    List<Chain> chains = new ArrayList<>();
    for (int i = 0; i < links.size(); i++) {
      for (int j = i + 1; j < links.size(); j++) {
        for (String middle : links.get(i)) {
          if (links.get(j).contains(middle)) {
            chains.add(new Chain(other(links.get(i), middle), middle, other(links.get(j), middle)));
          }
        }
      }
    }
    return chains;
  }

  private static String other(List<String> link, String middle) {
    return link.get(0).equals(middle) ? link.get(1) : link.get(0);
  }
}
