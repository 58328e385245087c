package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.machine.linkage.Hinge;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.shape.Interval;
import org.longlow.rider.geom.PointMm;

/**
 * A plate that swings about the origin past a post: its outer corners run on a circle, so that all
 * distances are known.
 */
class FoulingTest {

  private static final Interval WIDE = new Interval(-100, 100);
  private static final double CORNER_MM = Math.hypot(200, 5);
  private static final Hinge QUARTER = new Hinge(PointMm.ORIGIN, Math.PI / 2);

  private static Solid arm(Interval across) {
    return Bodies.body("arm", Bodies.plate(150, -5, 50, 10), across);
  }

  /** A post above, its lower edge so much farther out than the corners run. */
  private static Solid post(double roomMm, Interval across) {
    return Bodies.body("post", Bodies.plate(-20, CORNER_MM + roomMm, 40, 60), across);
  }

  /** What was worked out is kept; a gap that differs by a millionth of a mm is worked out anew. */
  private static final AtomicInteger LOOKS = new AtomicInteger();

  private static Optional<Fouling> fouling(Solid part, Solid other, Fouling.Remedy... remedies) {
    return Fouling.of(QUARTER, part, other, 3 - 1e-6 * LOOKS.getAndIncrement(), List.of(remedies));
  }

  private static double least(SectionMotion motion, Solid part, Solid other) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k <= 4000; k++) {
      least = Math.min(least, part.moved(motion.at(k / 4000.0)).apartMm(other, 1000));
    }
    return least;
  }

  @Test
  void whatKeepsTheGapDoesNotFoul() {
    assertThat(fouling(arm(WIDE), post(3.2, WIDE))).isEmpty();
    // beside it across the machine, however deep in the elevation
    assertThat(fouling(arm(new Interval(-100, -3)), post(-20, new Interval(0, 100)))).isEmpty();
    assertThat(fouling(arm(new Interval(-100, -2.9)), post(-20, new Interval(0, 100)))).isPresent();
  }

  /** The corner is below the post from when it stands 1 mm off; before that it comes from aside. */
  @Test
  void saysWhereItBeginsWhereItIsWorstAndHowMuch() {
    Fouling f = fouling(arm(WIDE), post(1, WIDE)).orElseThrow();
    // the leading corner (200, 5) is at its highest when it stands on the z axis
    double top = (Math.PI / 2 - Math.atan2(5, 200)) / (Math.PI / 2);
    assertThat(f.gapMm()).isCloseTo(1, within(0.1));
    assertThat(f.worst()).isBetween(top - 0.03, 1.0);
    // at first 3 mm off the corner (20, R + 1) of the post
    double first = firstWithin(3, new PointMm(20, CORNER_MM + 1));
    assertThat(f.first()).isCloseTo(first, within(0.02));
    assertThat(f.where().z()).isCloseTo(CORNER_MM + 0.5, within(0.3));
    assertThat(f.shift()).isEmpty();
    assertThat(f.across()).isEmpty();
    assertThat(f.apart()).isEmpty();
    assertThat(f.cutOfPart()).isEmpty();
    assertThat(f.cutOfOther()).isEmpty();
  }

  private static double firstWithin(double gapMm, PointMm from) {
    for (int k = 0; ; k++) {
      double turn = Math.PI / 2 * k / 100_000;
      if (new PointMm(200, 5).turned(turn).distance(from) < gapMm) {
        return k / 100_000.0;
      }
    }
  }

  @Test
  void eachRemedyIsGivenOnlyWhenItMayBeDone() {
    Interval left = new Interval(10, 40);
    Solid arm = arm(WIDE);
    Solid post = post(-4, left);
    Fouling part = fouling(arm, post, Fouling.Remedy.SHIFT_PART).orElseThrow();
    assertThat(part.shift()).isPresent();
    assertThat(part.apart()).isPresent();
    assertThat(part.across()).isEmpty();
    assertThat(part.cutOfPart()).isEmpty();
    assertThat(part.cutOfOther()).isEmpty();
    Fouling other = fouling(arm, post, Fouling.Remedy.SHIFT_OTHER).orElseThrow();
    assertThat(other.shift()).isPresent();
    assertThat(other.apart()).isPresent();
    assertThat(other.across()).isPresent();
    assertThat(other.cutOfPart()).isEmpty();
    assertThat(other.cutOfOther()).isEmpty();
    Fouling cutPart = fouling(arm, post, Fouling.Remedy.CUT_PART).orElseThrow();
    assertThat(cutPart.shift()).isEmpty();
    assertThat(cutPart.apart()).isEmpty();
    assertThat(cutPart.across()).isEmpty();
    assertThat(cutPart.cutOfPart()).isPresent();
    assertThat(cutPart.cutOfOther()).isEmpty();
    Fouling cutOther = fouling(arm, post, Fouling.Remedy.CUT_OTHER).orElseThrow();
    assertThat(cutOther.cutOfPart()).isEmpty();
    assertThat(cutOther.cutOfOther()).isPresent();
  }

  /** 4 mm in, 3 mm asked: 7 mm down or up, and what the sweep does not see, at most 0.3 mm. */
  @Test
  void shiftsAreDoneAndHardlyMoreThanNeeded() {
    Solid post = post(-4, WIDE);
    Solid arm = arm(WIDE);
    PointMm up = fouling(arm, post, Fouling.Remedy.SHIFT_OTHER).orElseThrow().shift().orElseThrow();
    assertThat(up.length()).isBetween(7.0, 7.5);
    assertThat(least(QUARTER, arm, post.moved(Solid.by(up)))).isGreaterThanOrEqualTo(3);
    PointMm in = fouling(arm, post, Fouling.Remedy.SHIFT_PART).orElseThrow().shift().orElseThrow();
    assertThat(in.length()).isBetween(7.0, 7.5);
    assertThat(in.x()).isNegative();
    assertThat(least(QUARTER, arm.moved(Solid.by(in)), post)).isGreaterThanOrEqualTo(3);
  }

  /** Both may be shifted: it is the section that is. */
  @Test
  void theSectionIsShiftedBeforeTheOther() {
    Fouling both =
        fouling(arm(WIDE), post(-4, WIDE), Fouling.Remedy.SHIFT_OTHER, Fouling.Remedy.SHIFT_PART)
            .orElseThrow();
    assertThat(both.shift())
        .isEqualTo(
            fouling(arm(WIDE), post(-4, WIDE), Fouling.Remedy.SHIFT_PART).orElseThrow().shift());
  }

  /** An arm to y = 20 mm under a post from 12 mm: 8 mm and the gap, on either side. */
  @Test
  void acrossAndApartAreTheOverlapAndTheGap() {
    Solid arm = arm(new Interval(-20, 20));
    Fouling left =
        fouling(arm, post(-40, new Interval(12, 60)), Fouling.Remedy.SHIFT_OTHER).orElseThrow();
    assertThat(left.across().orElseThrow()).isBetween(11.0, 11.3);
    assertThat(left.apart().orElseThrow()).isBetween(11.0, 11.3);
    Fouling right =
        fouling(arm, post(-40, new Interval(-60, -12)), Fouling.Remedy.SHIFT_OTHER).orElseThrow();
    assertThat(right.across().orElseThrow()).isBetween(-11.3, -11.0);
    assertThat(right.apart().orElseThrow()).isBetween(11.0, 11.3);
    // an arm on one side only under a narrow post in the middle: itself farther out
    Solid beside = arm(new Interval(5, 20));
    Fouling own =
        fouling(beside, post(-40, new Interval(-9, 9)), Fouling.Remedy.SHIFT_PART).orElseThrow();
    assertThat(own.apart().orElseThrow()).isBetween(7.0, 7.3);
    assertThat(own.across()).isEmpty();
  }

  /** 12 mm too long or a post 12 mm too low: 12 and 3 mm go, and what the sweep does not see. */
  @Test
  void cutsAreStraightAndHardlyDeeperThanNeeded() {
    Solid arm = arm(WIDE);
    Solid post = post(-12, WIDE);
    Fouling f = fouling(arm, post, Fouling.Remedy.CUT_PART, Fouling.Remedy.CUT_OTHER).orElseThrow();
    StraightCut own = f.cutOfPart().orElseThrow();
    assertThat(own.towardsDeg()).isZero();
    assertThat(own.depthMm()).isBetween(14.9, 15.5);
    assertThat(own.share()).isCloseTo(own.depthMm() / 50, within(1e-9));
    assertThat(own.rest().reachMm(PointMm.ORIGIN))
        .isCloseTo(Math.hypot(200 - own.depthMm(), 5), within(1e-6));
    assertThat(least(QUARTER, own.rest(), post)).isGreaterThanOrEqualTo(3);
    StraightCut off = f.cutOfOther().orElseThrow();
    assertThat(off.towardsDeg()).isEqualTo(-90);
    assertThat(off.depthMm()).isBetween(15.0, 15.5);
    assertThat(off.share()).isCloseTo(off.depthMm() / 60, within(1e-9));
    assertThat(least(QUARTER, arm, off.rest())).isGreaterThanOrEqualTo(3);
  }

  /** A post 2 mm beside the arm, 3 mm asked: √5 mm in the elevation are enough. */
  @Test
  void besideEachOtherLessIsNeededInTheElevation() {
    Solid arm = arm(new Interval(-100, 0));
    Solid post = post(1, new Interval(2, 60));
    PointMm up = fouling(arm, post, Fouling.Remedy.SHIFT_OTHER).orElseThrow().shift().orElseThrow();
    // the sweep asks for a tenth more: √(3.11² - 2²) - 1 = 1.38
    assertThat(up.length()).isBetween(Math.sqrt(5) - 1, 1.7);
    assertThat(least(QUARTER, arm, post.moved(Solid.by(up)))).isGreaterThanOrEqualTo(3);
    double across =
        fouling(arm, post, Fouling.Remedy.SHIFT_OTHER).orElseThrow().across().orElseThrow();
    // 1 mm off in the elevation: √(3² - 1²) less the 2 mm there are
    assertThat(across).isBetween(Math.sqrt(8) - 2, 1.2);
  }

  /** Drawn elsewhere, all is the same but the place. */
  @ParameterizedTest(name = "{0} mm ahead")
  @ValueSource(doubles = {100, -1234.5})
  void drawnElsewhereOnlyThePlaceDiffers(double ahead) {
    PointMm by = new PointMm(ahead, 321.25);
    Fouling.Remedy[] all = Fouling.Remedy.values();
    double gap = 3 - 1e-6 * LOOKS.getAndIncrement();
    Fouling here = Fouling.of(QUARTER, arm(WIDE), post(-4, WIDE), gap, List.of(all)).orElseThrow();
    Fouling there =
        Fouling.of(
                new Hinge(by, Math.PI / 2),
                arm(WIDE).moved(Solid.by(by)),
                post(-4, WIDE).moved(Solid.by(by)),
                gap,
                List.of(all))
            .orElseThrow();
    assertThat(there.where().minus(here.where()).distance(by)).isLessThan(1e-5);
    assertThat(there.gapMm()).isEqualTo(here.gapMm());
    assertThat(there.shift()).isEqualTo(here.shift());
    assertThat(there.cutOfPart().orElseThrow().depthMm())
        .isEqualTo(here.cutOfPart().orElseThrow().depthMm());
  }

  @Test
  void aCutTakesTheSideThatCostsLeast() {
    // a bite at the right end: 15 mm of 100 against all of 20 mm
    Solid body = Bodies.body("b", Bodies.plate(0, 0, 100, 20), new Interval(0, 10));
    Geometry bite = Bodies.plate(90, -50, 30, 100);
    Solid level = Bodies.body("o", bite, new Interval(5, 20));
    StraightCut cut = StraightCut.of(body, List.of(level), 5);
    assertThat(cut.towardsDeg()).isZero();
    // 10 and 5 mm, a little for the polygon round the corner and 0.01 mm past: the next tenth
    assertThat(cut.depthMm()).isEqualTo(15.1);
    assertThat(cut.share()).isCloseTo(0.151, within(1e-9));
    assertThat(cut.rest().mostMm(new PointMm(1, 0))).isCloseTo(84.9, within(1e-9));
    assertThat(cut.rest().mostMm(new PointMm(-1, 0))).isCloseTo(0, within(1e-9));
    assertThat(cut.rest().mostMm(new PointMm(0, 1))).isCloseTo(20, within(1e-9));
    assertThat(cut.rest().mostMm(new PointMm(0, -1))).isCloseTo(0, within(1e-9));
    // 3 mm aside across, 4 mm are left to keep in the elevation; 5 mm aside nothing need go
    Solid aside = Bodies.body("o", bite, new Interval(13, 20));
    assertThat(StraightCut.of(body, List.of(aside), 5).depthMm()).isEqualTo(14.1);
    Solid clear = Bodies.body("o", bite, new Interval(15, 20));
    assertThat(StraightCut.of(body, List.of(clear), 5).share()).isLessThan(0.001);
    // the left end, the upper end, and two bites at one end
    AffineTransformation left = AffineTransformation.reflectionInstance(50, 0, 50, 1);
    Solid mirrored = Bodies.body("o", left.transform(bite), new Interval(5, 20));
    StraightCut other = StraightCut.of(body, List.of(mirrored), 5);
    assertThat(other.towardsDeg()).isEqualTo(-180);
    assertThat(other.depthMm()).isEqualTo(15.1);
    Solid lid = Bodies.body("o", Bodies.plate(-50, 18, 200, 20), new Interval(5, 20));
    StraightCut top = StraightCut.of(body, List.of(lid), 5);
    assertThat(top.towardsDeg()).isEqualTo(90);
    assertThat(top.depthMm()).isEqualTo(7.1);
    Solid deeper = Bodies.body("o", Bodies.plate(80, -50, 30, 100), new Interval(5, 20));
    assertThat(StraightCut.of(body, List.of(level, deeper), 5).depthMm()).isEqualTo(25.1);
  }
}
