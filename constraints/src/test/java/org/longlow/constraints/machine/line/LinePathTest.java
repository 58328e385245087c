package org.longlow.constraints.machine.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines by their points: lengths summed from point to point, bends by circles through three. */
class LinePathTest {

  private static final List<double[]> POINTS =
      List.of(
          new double[] {800, 235, 1060},
          new double[] {1130, 150, 1010},
          new double[] {1070, 60, 740},
          new double[] {880, 95, 470});

  @Test
  void itsLengthIsThatOfManySmallSteps() {
    LinePath path = new LinePath(POINTS);
    List<double[]> fine = path.evenly(0.05);
    double sum = 0;
    for (int i = 1; i < fine.size(); i++) {
      sum += distance(fine.get(i - 1), fine.get(i));
    }
    assertThat(path.lengthMm()).isCloseTo(sum, within(1e-3));
  }

  @Test
  void itsSharpestBendIsACircleThroughThreePoints() {
    LinePath path = new LinePath(POINTS);
    List<double[]> fine = path.evenly(0.5);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i + 1 < fine.size(); i++) {
      least = Math.min(least, circle(fine.get(i - 1), fine.get(i), fine.get(i + 1)));
    }
    assertThat(path.tightest().radiusMm()).isCloseTo(least, within(0.5));
  }

  @Test
  void itGoesThroughItsPointsAndIsStraightAtItsEnds() {
    LinePath path = new LinePath(POINTS);
    List<double[]> fine = path.evenly(0.5);
    for (double[] p : POINTS) {
      assertThat(fine.stream().mapToDouble(q -> distance(p, q)).min().orElseThrow())
          .isLessThan(1e-9);
    }
    int last = fine.size() - 1;
    assertThat(circle(fine.get(0), fine.get(1), fine.get(2))).isGreaterThan(10_000);
    assertThat(circle(fine.get(last - 2), fine.get(last - 1), fine.get(last)))
        .isGreaterThan(10_000);
  }

  /** Away from its ends, where it is straight, a line through points of a ring is that ring. */
  @Test
  void throughPointsOfARingItIsNearlyThatRing() {
    List<double[]> ring = new ArrayList<>();
    for (int k = 0; k <= 24; k++) {
      double a = Math.toRadians(10 * k);
      ring.add(new double[] {100 * Math.cos(a), 30, 100 * Math.sin(a)});
    }
    LinePath path = new LinePath(ring);
    assertThat(path.lengthMm()).isCloseTo(Math.toRadians(240) * 100, within(0.5));
    List<double[]> fine = path.evenly(1);
    int middle = fine.size() / 2;
    assertThat(circle(fine.get(middle - 3), fine.get(middle), fine.get(middle + 3)))
        .isCloseTo(100, within(0.5));
  }

  @Test
  void straightIsStraightAndOnePlaceIsNone() {
    LinePath two = new LinePath(List.of(new double[] {0, 0, 0}, new double[] {30, 40, 0}));
    assertThat(two.lengthMm()).isCloseTo(50, within(1e-9));
    assertThat(two.tightest().radiusMm()).isInfinite();
    double[] same = {5, 6, 7};
    LinePath none = new LinePath(List.of(same, same));
    assertThat(none.lengthMm()).isZero();
    assertThat(none.tightest().radiusMm()).isInfinite();
    assertThat(none.evenly(1)).hasSize(1);
  }

  @Test
  void whatIsMirroredIsAsLongAndAsSharp() {
    List<double[]> other = POINTS.stream().map(p -> new double[] {p[0], -p[1], p[2]}).toList();
    LinePath path = new LinePath(POINTS);
    LinePath mirrored = new LinePath(other);
    assertThat(mirrored.lengthMm()).isCloseTo(path.lengthMm(), within(1e-9));
    assertThat(mirrored.tightest().radiusMm()).isCloseTo(path.tightest().radiusMm(), within(1e-9));
    assertThat(mirrored.tightest().at()[1]).isCloseTo(-path.tightest().at()[1], within(1e-9));
  }

  private static double distance(double[] a, double[] b) {
    return Math.hypot(Math.hypot(a[0] - b[0], a[1] - b[1]), a[2] - b[2]);
  }

  /** By its sides and Heron's area of the triangle. */
  private static double circle(double[] a, double[] b, double[] c) {
    double ab = distance(a, b);
    double bc = distance(b, c);
    double ca = distance(c, a);
    double s = (ab + bc + ca) / 2;
    double area = Math.sqrt(Math.max(0, s * (s - ab) * (s - bc) * (s - ca)));
    return area > 0 ? ab * bc * ca / (4 * area) : Double.POSITIVE_INFINITY;
  }
}
