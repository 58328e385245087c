package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.longlow.rider.geom.PointMm;

/** A link carries its own length and no other. */
class ArcLengthTest {

  private static final PointMm PIVOT = new PointMm(1500, 300);
  private static final PointMm AXLE = new PointMm(1620, 350);

  @Test
  void lengthIsTheDistanceOfItsEnds() {
    assertThat(WheelPath.leadingLink(PIVOT, AXLE)).isEqualTo(new WheelPath.Arc(PIVOT, AXLE, 130));
  }

  @Test
  void anotherLengthIsRefused() {
    assertThatThrownBy(() -> new WheelPath.Arc(PIVOT, AXLE, 131))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("length of the link mm");
  }
}
