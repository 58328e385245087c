package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.machine.linkage.FourBar;
import org.longlow.constraints.machine.linkage.Hinge;
import org.longlow.constraints.machine.linkage.MotionRate;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.rider.geom.PointMm;

/** Sweeps held against thousands of positions each, remedies by doing them and looking again. */
class SweepTest {

  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  /** Positions looked at: about as far from each other as the bound of a sweep. */
  private static final int DENSE = LONG ? 10_000 : 4_000;

  private static final Interval WIDE = new Interval(-100, 100);

  private static SectionMotion motion(SplittableRandom random) {
    double turn = random.nextDouble(0.5, 1.4) * (random.nextBoolean() ? 1 : -1);
    if (random.nextBoolean()) {
      return new Hinge(new PointMm(random.nextDouble(200), random.nextDouble(200)), turn);
    }
    while (true) {
      PointMm a = new PointMm(random.nextDouble(300), random.nextDouble(200));
      PointMm b = a.plus(new PointMm(random.nextDouble(40, 150), random.nextDouble(-60, 60)));
      PointMm c = a.plus(PointMm.unit(random.nextDouble(6.28)).times(random.nextDouble(80, 250)));
      PointMm d = b.plus(PointMm.unit(random.nextDouble(6.28)).times(random.nextDouble(80, 250)));
      FourBar bar;
      try {
        bar = new FourBar(a, b, c, d, turn);
      } catch (IllegalArgumentException e) {
        continue;
      }
      if (bar.opens()) {
        return bar;
      }
    }
  }

  private static Solid random(SplittableRandom random, String name, double x, double z) {
    return Bodies.body(name, Bodies.outline(random, x, z, random.nextDouble(15, 50)), WIDE);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void swingBoundsEveryPoint(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 200; i++) {
      SectionMotion motion = motion(random);
      double from = random.nextDouble(0.9);
      double to = from + random.nextDouble(1 - from);
      SectionMotion.Swing swing = motion.swing(from, to);
      PointMm off = PointMm.unit(random.nextDouble(6.28)).times(random.nextDouble(300));
      PointMm point = swing.pole().plus(off);
      PointMm start = motion.at(from).apply(point);
      for (int k = 1; k <= 50; k++) {
        double moved = motion.at(from + (to - from) * k / 50).apply(point).distance(start);
        assertThat(moved).isLessThanOrEqualTo(swing.mostMm(off.length()) + 1e-9);
      }
    }
  }

  /** All 8,192 copies of the disc along its way need 1.1 GB, more than a test has. */
  @Test
  void aFineOutlineWhirlingBesideAnotherFitsInMemory() {
    int corners = 2_100;
    List<PointMm> disc = new ArrayList<>();
    for (int k = 0; k < corners; k++) {
      disc.add(PointMm.unit(2 * Math.PI * k / corners).times(100));
    }
    Solid part = Bodies.body("disc", Curves.polygon(disc), WIDE);
    Solid other = Bodies.body("post", Bodies.plate(102, -5, 8, 10), WIDE);
    Sweep sweep = new Sweep(new Hinge(PointMm.ORIGIN, 2 * Math.PI));
    assertThat(sweep.worst(part, other, 0).gap().gapMm()).isCloseTo(2, within(1e-3));
    assertThat(sweep.firstBelow(part, other, 1.9)).isNaN();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12})
  void nothingIsMissedThatThousandsOfPositionsShow(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int fouls = 0;
    int clear = 0;
    for (int i = 0; i < (LONG ? 20 : 10); i++) {
      SectionMotion motion = motion(random);
      Solid part = random(random, "part", 150, 100);
      Solid other = random(random, "other", random.nextDouble(400), random.nextDouble(300));
      Sweep sweep = new Sweep(motion);
      double asked = 3;
      double dense = Double.NaN;
      double least = Double.MAX_VALUE;
      for (int k = 0; k <= DENSE; k++) {
        double apart = part.moved(motion.at((double) k / DENSE)).apartMm(other, 1000);
        least = Math.min(least, apart);
        if (Double.isNaN(dense) && apart < asked) {
          dense = (double) k / DENSE;
        }
      }
      double first = sweep.firstBelow(part, other, asked);
      if (least < asked - Sweep.BOUND_MM) {
        assertThat(first).isNotNaN();
      }
      if (!Double.isNaN(first)) {
        fouls++;
        assertThat(part.moved(motion.at(first)).apartMm(other, 1000)).isLessThan(asked);
        // what comes before is short by less than the bound
        for (int k = 0; k < first * DENSE - 1; k += 7) {
          double apart = part.moved(motion.at((double) k / DENSE)).apartMm(other, 1000);
          assertThat(apart).isGreaterThan(asked - 2 * Sweep.BOUND_MM);
        }
      } else {
        clear++;
        assertThat(least).isGreaterThan(asked - Sweep.BOUND_MM);
      }
      if (least > 0) {
        assertThat(sweep.worst(part, other, 0).gap().gapMm())
            .isCloseTo(least, within(Sweep.BOUND_MM));
      }
    }
    assertThat(fouls).isGreaterThan(LONG ? 2 : 0);
    assertThat(clear).isGreaterThan(LONG ? 2 : 0);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22})
  void depthIsAsDeepAsAnyOfManyPositions(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int overlapping = 0;
    while (overlapping < 6) {
      SectionMotion motion = motion(random);
      double x = random.nextDouble(50, 250);
      Solid part = Bodies.body("p", Bodies.plate(150, 100, 40, random.nextDouble(20, 60)), WIDE);
      Solid other = Bodies.body("o", Bodies.plate(x, random.nextDouble(200), 30, 25), WIDE);
      Sweep.Worst worst = new Sweep(motion).worst(part, other, 0);
      if (worst.gap().gapMm() >= 0) {
        continue;
      }
      overlapping++;
      double deepest = 0;
      for (int k = 0; k <= 2000; k++) {
        Gap gap = part.moved(motion.at(k / 2000.0)).to(other, deepest);
        deepest = gap == null ? deepest : gap.gapMm();
      }
      assertThat(worst.gap().gapMm()).isLessThanOrEqualTo(deepest + Sweep.BOUND_MM);
      assertThat(part.moved(motion.at(worst.opening())).to(other, 0).gapMm())
          .isCloseTo(worst.gap().gapMm(), within(1e-9));
    }
  }

  /** A motion that counts how often it is asked where it is. */
  private static final class Counted implements SectionMotion {

    private final SectionMotion motion;
    private int asked;

    Counted(SectionMotion motion) {
      this.motion = motion;
    }

    @Override
    public RigidMotion at(double opening) {
      asked++;
      return motion.at(opening);
    }

    @Override
    public MotionRate rate(double opening) {
      return motion.rate(opening);
    }

    @Override
    public Swing swing(double from, double to) {
      return motion.swing(from, to);
    }

    @Override
    public SectionMotion seenFrom(PointMm origin, double gridMm) {
      return motion.seenFrom(origin, gridMm);
    }
  }

  /** Far into each other: to a twentieth of what many positions say, in a few looks. */
  @ParameterizedTest
  @ValueSource(doubles = {1.2, -1.2})
  void aDeepOverlapTakesFewLooks(double turn) {
    Counted motion = new Counted(new Hinge(PointMm.ORIGIN, turn));
    Solid part = Bodies.body("p", Bodies.plate(150, -150, 400, 300), WIDE);
    Solid other = Bodies.body("o", Bodies.plate(50, turn > 0 ? 200 : -600, 300, 400), WIDE);
    Sweep.Worst worst = new Sweep(motion).worst(part, other, 0);
    assertThat(motion.asked).isLessThan(100);
    double deepest = 0;
    for (int k = 0; k <= 400; k++) {
      Gap gap = part.moved(motion.at(k / 400.0)).to(other, deepest);
      deepest = gap == null ? deepest : gap.gapMm();
    }
    assertThat(deepest).isLessThan(-Sweep.DEEP_MM);
    assertThat(worst.withinMm()).isLessThanOrEqualTo(-Sweep.DEEP_SHARE * worst.gap().gapMm());
    assertThat(worst.gap().gapMm()).isBetween(deepest, deepest + worst.withinMm());
  }

  /** A disc that turns about its own centre is as deep in a wall all along: 5 mm, and no way. */
  @Test
  void whatStaysAsDeepAllTheWayTakesBoundedLooks() {
    Counted motion = new Counted(new Hinge(PointMm.ORIGIN, 6));
    Solid disc = Bodies.body("p", Curves.disc(PointMm.ORIGIN, 400), WIDE);
    Solid wall = Bodies.body("o", Bodies.plate(395, -50, 60, 100), WIDE);
    Sweep.Worst worst = new Sweep(motion).worst(disc, wall, 0);
    // 24,000 positions are 0.1 mm apart
    assertThat(motion.asked).isLessThan(5_000);
    assertThat(worst.withinMm()).isGreaterThan(Sweep.BOUND_MM);
    assertThat(worst.gap().gapMm()).isCloseTo(-5, within(0.2));
  }

  private static void keeps(SectionMotion motion, Solid part, Solid other, double asked) {
    for (int k = 0; k <= DENSE; k += 2) {
      double apart = part.moved(motion.at((double) k / DENSE)).apartMm(other, asked + 1);
      assertThat(apart).isGreaterThanOrEqualTo(asked);
    }
    assertThat(new Sweep(motion).firstBelow(part, other, asked)).isNaN();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {31, 32})
  void everyRemedyKeepsTheGapAllTheWayWhenItIsDone(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int shifts = 0;
    int cuts = 0;
    for (int i = 0; i < (LONG ? 25 : 10); i++) {
      SectionMotion motion = motion(random);
      Solid part = random(random, "part", 150, 100);
      Solid other = random(random, "other", random.nextDouble(300), random.nextDouble(200));
      List<Fouling.Remedy> all =
          List.of(Fouling.Remedy.SHIFT_OTHER, Fouling.Remedy.CUT_PART, Fouling.Remedy.CUT_OTHER);
      Optional<Fouling> fouling = Fouling.of(motion, part, other, 3, all);
      if (fouling.isEmpty()) {
        continue;
      }
      Fouling f = fouling.get();
      if (f.shift().isPresent()) {
        shifts++;
        keeps(motion, part, other.moved(Solid.by(f.shift().get())), 3);
      }
      f.across().ifPresent(mm -> keeps(motion, part, other.across(mm), 3));
      Sweep sweep = new Sweep(motion);
      SweptClearing clearing = new SweptClearing(sweep, part, other, 3, f.worst());
      Optional<StraightCut> cut = clearing.cutOfPart();
      if (cut.isPresent() && cut.get().rest().hasFaces()) {
        cuts++;
        keeps(motion, cut.get().rest(), other, 3);
        assertThat(f.cutOfPart().map(StraightCut::depthMm)).contains(cut.get().depthMm());
      }
      Optional<PointMm> own = clearing.shiftOfPart();
      own.ifPresent(s -> keeps(motion, part.moved(Solid.by(s)), other, 3));
    }
    assertThat(shifts).isGreaterThan(LONG ? 5 : 1);
    assertThat(cuts).isGreaterThan(LONG ? 3 : 0);
  }

  @Test
  void aThinFinIsNotPassedOver() {
    // 2 mm of steel in a way of 470 mm: a look at 24 positions saw it only by chance
    Solid part = Bodies.body("part", Bodies.plate(298, 0, 2, 2), WIDE);
    int found = 0;
    for (int k = 0; k < 40; k++) {
      PointMm at = PointMm.unit(0.1 + k * 0.03).times(300);
      Solid fin = Bodies.body("fin", Bodies.plate(at.x(), at.z(), 0.5, 0.5), WIDE);
      if (!Double.isNaN(
          new Sweep(new Hinge(PointMm.ORIGIN, Math.PI / 2)).firstBelow(part, fin, 0.5))) {
        found++;
      }
    }
    assertThat(found).isEqualTo(40);
  }

  @Test
  void mirroredSectionHasTheMirroredFouling() {
    AffineTransformation mirror = AffineTransformation.scaleInstance(-1, 1);
    List<Double> depths = new ArrayList<>();
    for (int side : new int[] {1, -1}) {
      Solid part =
          Bodies.body(
              "part",
              side > 0
                  ? Bodies.plate(90, -10, 30, 20)
                  : mirror.transform(Bodies.plate(90, -10, 30, 20)),
              WIDE);
      Solid other =
          Bodies.body(
              "other",
              side > 0
                  ? Bodies.plate(60, 70, 20, 20)
                  : mirror.transform(Bodies.plate(60, 70, 20, 20)),
              WIDE);
      Fouling f =
          Fouling.of(
                  new Hinge(PointMm.ORIGIN, side * 1.5),
                  part,
                  other,
                  3,
                  List.of(Fouling.Remedy.SHIFT_OTHER))
              .orElseThrow();
      depths.add(f.gapMm());
      depths.add(f.shift().orElseThrow().length());
    }
    assertThat(depths.get(0)).isNegative().isCloseTo(depths.get(2), within(1e-3));
    assertThat(depths.get(1)).isCloseTo(depths.get(3), within(0.3));
  }

  /** Dips of known places, at either end and between, and one of two. */
  @Test
  void aSmoothFigureIsLeastWhereItIs() {
    for (double at : new double[] {0, 0.004, 0.03, 0.31, 0.5, 0.77, 0.996, 1}) {
      assertThat(Sweep.least(o -> (o - at) * (o - at))).isCloseTo(at, within(2e-3));
      assertThat(Sweep.least(o -> Math.abs(o - at))).isCloseTo(at, within(2e-3));
    }
    assertThat(Sweep.least(o -> Math.cos(4 * Math.PI * o) - o / 10)).isCloseTo(0.75, within(4e-3));
    assertThat(Sweep.least(o -> 3)).isZero();
  }
}
