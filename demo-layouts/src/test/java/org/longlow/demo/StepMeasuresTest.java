package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.rider.geom.PointMm;

/**
 * Steps every given length of every shipped machine 20 mm up and back down again, as a builder
 * turning a figure over would: nothing leaps to a mirror image on the way, and it ends where it
 * began. By default every seventh length is stepped.
 */
class StepMeasuresTest {

  private static final int STEPS_MM = 20;

  private static final int EACH = Boolean.getBoolean("longlow.long") ? 1 : 7;

  /** A millimetre more of one figure moves no pin farther; a flip would by tens of millimetres. */
  private static final double LEAP_MM = 5;

  /** A pitch or count of chain links is multiplied by some eighty links, so it moves more. */
  private static final double CHAIN_LEAP_MM = 60;

  private static final double BACK_MM = 1e-6;

  static Stream<String> names() {
    return Demos.names().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyLengthStepsThereAndBack(String name) {
    Layout layout = Demos.layout(name);
    Map<String, PointMm> start = Placer.place(layout).places().pins();
    int given = 0;
    int stepped = 0;
    for (Map.Entry<String, Measure> e : layout.measures().entrySet()) {
      Measure measure = e.getValue();
      if (!measure.dim().equals(Dim.LENGTH) || measure.free() || !measure.is().names().isEmpty()) {
        continue;
      }
      if (given++ % EACH != 0) {
        continue;
      }
      double value = measure.is().evaluate(n -> Double.NaN);
      double leap = e.getKey().startsWith("chain") ? CHAIN_LEAP_MM : LEAP_MM;
      Map<String, PointMm> before = start;
      for (int k = 1; k <= 2 * STEPS_MM; k++) {
        int off = k <= STEPS_MM ? k : 2 * STEPS_MM - k;
        Formula is = Formula.of(value + off, Unit.MM);
        Placed placed = Placer.solve(layout.withMeasure(e.getKey(), measure.withIs(is)));
        assertThat(placed.holds()).as("%s + %d mm", e.getKey(), off).isTrue();
        Map<String, PointMm> now = placed.places().pins();
        assertThat(farthest(now, before)).as("%s + %d mm", e.getKey(), off).isLessThan(leap);
        before = now;
      }
      assertThat(farthest(before, start)).as("%s there and back", e.getKey()).isLessThan(BACK_MM);
      stepped++;
    }
    assertThat(stepped).isGreaterThan(5 / EACH);
  }

  private static double farthest(Map<String, PointMm> a, Map<String, PointMm> b) {
    double most = 0;
    for (Map.Entry<String, PointMm> e : a.entrySet()) {
      most = Math.max(most, e.getValue().distance(b.get(e.getKey())));
    }
    return most;
  }
}
