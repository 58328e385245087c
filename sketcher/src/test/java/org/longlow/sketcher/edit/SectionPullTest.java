package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;

/** A lid on a hinge is where the hand is, as the angle about the hinge says. */
class SectionPullTest {

  private final Layout heron = Demos.layout("heron");
  private final Places places = Study.of(heron).placed().places();
  private final PointMm hinge = places.pin(heron.sections().get("lid").pivot().orElseThrow());
  private final double angle = places.value(heron.sections().get("lid").angle());

  /** The hand goes round the hinge; the share is the angle it has turned by that of the section. */
  @Test
  void theLidFollowsTheHandRoundItsHinge() {
    Random random = new Random(5);
    for (int i = 0; i < 50; i++) {
      double held = random.nextDouble();
      PointMm at = hinge.plus(new PointMm(300, 0).turned(1 + held * angle));
      SectionPull pull = SectionPull.of(heron, places, "lid", held, at).orElseThrow();
      double share = random.nextDouble();
      double away = 100 + 400 * random.nextDouble();
      PointMm hand = hinge.plus(new PointMm(away, 0).turned(1 + share * angle));
      assertThat(pull.towards(hand)).isCloseTo(share, within(1e-3));
    }
  }

  @Test
  void beyondItsEndsItStops() {
    PointMm at = hinge.plus(new PointMm(0, 250));
    SectionPull pull = SectionPull.of(heron, places, "lid", 0.5, at).orElseThrow();
    assertThat(pull.towards(hinge.plus(new PointMm(0, 250).turned(-0.9 * angle))))
        .isCloseTo(0, within(1e-3));
    assertThat(pull.towards(hinge.plus(new PointMm(0, 250).turned(0.9 * angle))))
        .isCloseTo(1, within(1e-3));
  }

  @Test
  void whatBelongsToNoSectionIsNotPulled() {
    assertThat(SectionPull.sectionOf(heron, "engine")).isEmpty();
    assertThat(SectionPull.sectionOf(heron, "lid")).contains("lid");
    assertThat(SectionPull.of(heron, places, "none", 0, hinge)).isEmpty();
  }
}
