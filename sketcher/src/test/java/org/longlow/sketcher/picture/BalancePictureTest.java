package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.machine.ride.WhippleModel;
import org.longlow.rider.words.Units;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;

/**
 * The chart of the benchmark bicycle: Meijaard, Papadopoulos, Ruina and Schwab, Proc. R. Soc. A 463
 * (2007) 1955-1982, its matrices and its eigenvalues at 5 m/s as published, read back from the
 * marks.
 */
class BalancePictureTest {

  private static final WhippleModel BENCHMARK =
      new WhippleModel(
          List.of(List.of(80.81722, 2.31941332208709), List.of(2.31941332208709, 0.29784188199686)),
          List.of(List.of(0.0, 33.86641391492494), List.of(-0.85035641456978, 1.68540397397560)),
          List.of(
              List.of(-80.95, -2.59951685249872), List.of(-2.59951685249872, -0.80329488458618)),
          List.of(List.of(0.0, 76.59734589573222), List.of(0.0, 2.65431523794604)),
          9.81);

  /** 40 km/h over 76 mm. */
  private static final double MM_FOR_EACH_MS = 76 / (40 / 3.6);

  private static final Drawing CHART = BalancePicture.of("benchmark", BENCHMARK, Units.MM);

  /** Heights of all curves at a speed that is one of the steps. */
  private static List<Double> heightsAt(double ms) {
    List<Double> found = new ArrayList<>();
    for (Mark mark : CHART.layers().get(1).marks()) {
      for (Coordinate c : ((Mark.Shape) mark).geometry().getCoordinates()) {
        if (Math.abs(c.x - ms * MM_FOR_EACH_MS) < 1e-6) {
          found.add(c.y);
        }
      }
    }
    return found;
  }

  @Test
  void curvesGoThroughThePublishedEigenvalues() {
    // 42 mm from -10 to 10 1/s; below, from 38 mm under that, 24 mm for 5 Hz
    double weave = 21 + 2.1 * -0.77534188219585;
    double capsize = 21 + 2.1 * -0.32286642900409;
    double often = -38 + 4.8 * 4.46486771378823 / (2 * Math.PI);
    // the fourth, -14.078 1/s, is cut off
    assertThat(heightsAt(5)).hasSize(3);
    assertThat(heightsAt(5)).anySatisfy(y -> assertThat(y).isCloseTo(weave, within(1e-6)));
    assertThat(heightsAt(5)).anySatisfy(y -> assertThat(y).isCloseTo(capsize, within(1e-6)));
    assertThat(heightsAt(5)).anySatisfy(y -> assertThat(y).isCloseTo(often, within(1e-6)));
  }

  @Test
  void chainLinesStandWhereItBeginsAndEndsToBalanceByItself() {
    List<Double> upright = new ArrayList<>();
    for (Mark mark : CHART.layers().get(0).marks()) {
      if (mark instanceof Mark.Shape s && s.geometry().getNumPoints() == 2) {
        Coordinate[] ends = s.geometry().getCoordinates();
        if (ends[0].x == ends[1].x) {
          upright.add(ends[0].x / MM_FOR_EACH_MS);
        }
      }
    }
    // each in two pieces, above and below its words
    assertThat(upright).hasSize(4);
    assertThat(upright.get(0)).isEqualTo(upright.get(1));
    assertThat(upright.get(0)).isCloseTo(4.29238253634111, within(1e-7));
    assertThat(upright.get(2)).isEqualTo(upright.get(3));
    assertThat(upright.get(2)).isCloseTo(6.02426201538837, within(1e-7));
  }
}
