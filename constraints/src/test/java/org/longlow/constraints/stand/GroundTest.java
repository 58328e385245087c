package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.rider.geom.PointMm;

/** The road under two wheels, level and sloping in the frame's axes; a stance in words. */
class GroundTest {

  private static void near(PointMm p, double x, double z) {
    assertThat(p.x()).isCloseTo(x, within(1e-9));
    assertThat(p.z()).isCloseTo(z, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, -0.07})
  void bothTyresStandOnIt(double slope) {
    // the road turned by the slope about the rear contact, which lies at (20, -40)
    PointMm at = new PointMm(20, -40);
    PointMm along = PointMm.unit(slope);
    PointMm rear = at.plus(along.left().times(300));
    PointMm front = at.plus(along.times(1500)).plus(along.left().times(250));
    Ground ground = Ground.under(rear, 300, front, 250);
    near(ground.rearContact(), 20, -40);
    near(ground.frontContact(), 20 + 1500 * along.x(), -40 + 1500 * along.z());
    near(ground.along(), along.x(), along.z());
    assertThat(ground.wheelbaseMm()).isCloseTo(1500, within(1e-9));
    assertThat(ground.heightMm(rear)).isCloseTo(300, within(1e-9));
    assertThat(ground.heightMm(front)).isCloseTo(250, within(1e-9));
    near(ground.toRoad(rear), 0, 300);
    near(ground.toRoad(front), 1500, 250);
    PointMm road = ground.toFrame(new PointMm(700, 120));
    near(road.minus(at).minus(along.times(700)), 120 * along.left().x(), 120 * along.left().z());
  }

  @Test
  void aStanceInWords() {
    Occupant mara = new Occupant("Mara", Occupant.RIDER);
    Occupant tor = new Occupant("Tor", "passenger");
    Condition both = Condition.laden(List.of(mara, tor));
    assertThat(both.says()).isEqualTo("laden, Mara and Tor");
    assertThat(both.people()).isEqualTo("Mara and Tor");
    assertThat(both.ladenBy(mara)).isFalse();
    assertThat(Condition.laden(List.of(mara)).ladenBy(mara)).isTrue();
    assertThat(Condition.laden(List.of(tor)).ladenBy(mara)).isFalse();
    Condition bump = Condition.empty(Stance.Kind.FULL_BUMP);
    assertThat(bump.says()).isEqualTo("full bump");
    assertThat(bump.ladenBy(mara)).isFalse();
    assertThat(new Condition(bump.stance(), List.of(mara)).ladenBy(mara)).isFalse();
    assertThat(Condition.open("lid").says()).isEqualTo("open, lid");
  }
}
