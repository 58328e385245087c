package org.longlow.constraints.machine.chassis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longlow.rider.geom.PointMm;

/** Masses that stay are summed once; the total is that of a fresh sum, to the last digit. */
class MassSumTest {

  @Test
  void addingToASumIsSummingAnew() {
    Random random = new Random(4127);
    for (int round = 0; round < 200; round++) {
      List<MassPoint> masses = new ArrayList<>();
      for (int k = random.nextInt(40); k >= 0; k--) {
        masses.add(mass(random));
      }
      MassPoint.Sum carried = MassPoint.Sum.of(masses);
      for (int turn = 0; turn < 3; turn++) {
        MassPoint front = mass(random);
        MassPoint rear = mass(random);
        List<MassPoint> all = new ArrayList<>(masses);
        all.add(front);
        all.add(rear);
        assertThat(carried.plus(front, 1).plus(rear, 1).total()).isEqualTo(MassPoint.total(all));
        assertThat(carried.total()).isEqualTo(MassPoint.total(masses));
      }
    }
  }

  @Test
  void theTotalIsAtTheCentreByHand() {
    MassPoint total =
        MassPoint.Sum.of(List.of(new MassPoint(1, new PointMm(0, 100), 30)))
            .plus(new MassPoint(3, new PointMm(400, 300), -10), 1)
            .total();
    assertThat(total).isEqualTo(new MassPoint(4, new PointMm(300, 250), 0));
  }

  /** Half a mass and half of it taken away leave nothing; a shift moves the centre by itself. */
  @Test
  void sharesAndShiftsAddUp() {
    MassPoint m = new MassPoint(3, new PointMm(400, 300), -10);
    MassPoint.Sum sum = MassPoint.Sum.NONE.plus(m, 1.5).plus(m, -0.5);
    assertThat(sum.total()).isEqualTo(m);
    assertThat(sum.plus(MassPoint.Sum.NONE.plus(m, 1)).total())
        .isEqualTo(new MassPoint(6, m.at(), -10));
    assertThat(sum.shifted(3, new PointMm(20, -100)).total())
        .isEqualTo(new MassPoint(3, new PointMm(420, 200), -10));
  }

  private static MassPoint mass(Random random) {
    PointMm at = new PointMm(2000 * random.nextDouble(), 900 * random.nextDouble());
    return new MassPoint(0.1 + 80 * random.nextDouble(), at, 300 * random.nextGaussian());
  }
}
