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
        assertThat(carried.plus(front).plus(rear).total()).isEqualTo(MassPoint.total(all));
        assertThat(carried.total()).isEqualTo(MassPoint.total(masses));
      }
    }
  }

  @Test
  void theTotalIsAtTheCentreByHand() {
    MassPoint total =
        MassPoint.Sum.of(List.of(new MassPoint(1, new PointMm(0, 100), 30)))
            .plus(new MassPoint(3, new PointMm(400, 300), -10))
            .total();
    assertThat(total).isEqualTo(new MassPoint(4, new PointMm(300, 250), 0));
  }

  private static MassPoint mass(Random random) {
    PointMm at = new PointMm(2000 * random.nextDouble(), 900 * random.nextDouble());
    return new MassPoint(0.1 + 80 * random.nextDouble(), at, 300 * random.nextGaussian());
  }
}
