package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where a hand on a slider is stopped, and what is told first. */
class SlideTest {

  private static final double NEAR = 0.01;

  private static Slide.Mark mark(double at, Slide.Stop stop, boolean touch) {
    return new Slide.Mark(at, "at " + at, stop, touch, Optional.empty());
  }

  private final Slide way =
      new Slide(
          0,
          1,
          List.of(
              mark(0.1, Slide.Stop.FALLING, true),
              mark(0.2, Slide.Stop.RISING, true),
              mark(0.5, Slide.Stop.RISING, true),
              mark(0.6, Slide.Stop.FALLING, true),
              mark(0.8, Slide.Stop.NOT, false)));

  @Test
  void upwardsItStopsAtTheFirstMarkThatItComesTo() {
    assertThat(way.stop(0, 1, NEAR)).hasValue(0.2);
    assertThat(way.stop(0.18, 1, NEAR)).hasValue(0.2);
    assertThat(way.stop(0.195, 1, NEAR)).as("it is there already").hasValue(0.5);
    assertThat(way.stop(0.2, 0.4, NEAR)).isEmpty();
    assertThat(way.stop(0.3, 0.5, NEAR)).as("just as far").isEmpty();
    assertThat(way.stop(0.55, 1, NEAR)).as("no mark stops it").isEmpty();
  }

  @Test
  void downwardsItStopsAtTheLastOfThoseBelow() {
    assertThat(way.stop(1, 0, NEAR)).hasValue(0.6);
    assertThat(way.stop(0.605, 0, NEAR)).hasValue(0.1);
    assertThat(way.stop(0.4, 0.15, NEAR)).isEmpty();
    assertThat(way.stop(0.4, 0.1, NEAR)).as("just as far").isEmpty();
  }

  @Test
  void theTouchesOfEachSideAreToldFromUprightOn() {
    Slide lean =
        new Slide(
            -50,
            50,
            List.of(
                mark(-40, Slide.Stop.NOT, true),
                mark(-31.26, Slide.Stop.FALLING, true),
                mark(-5, Slide.Stop.NOT, false),
                mark(28, Slide.Stop.RISING, true),
                mark(33, Slide.Stop.NOT, true),
                mark(44, Slide.Stop.NOT, true)));
    assertThat(lean.sides(true, 5)).extracting(Slide.Mark::at).containsExactly(-31.26, -40.0);
    assertThat(lean.sides(false, 2)).extracting(Slide.Mark::at).containsExactly(28.0, 33.0);
    assertThat(lean.sides(true, 1).get(0).degWords()).isEqualTo("at -31.26 at 31.3\u00b0");
  }
}
