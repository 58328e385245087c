package org.longlow.constraints.machine.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.machine.linkage.Moving.Swing;
import org.longlow.rider.geom.PointMm;

/** Four-bar linkages walked step by step: how far they go, how far they move, where they jam. */
class FourBarTest {

  private static final double STEP_RAD = Math.toRadians(0.05);

  private static PointMm point(SplittableRandom r) {
    return new PointMm(r.nextDouble(-400, 400), r.nextDouble(-400, 400));
  }

  private static FourBar random(SplittableRandom r, double openRad) {
    return new FourBar(point(r), point(r), point(r), point(r), openRad);
  }

  /** Whether section and output link still reach each other with the driving link turned. */
  private static boolean closes(FourBar bar, double turnRad) {
    double between =
        bar.inputPin().turnedAbout(bar.inputPivot(), turnRad).distance(bar.outputPivot());
    double section = bar.outputPin().distance(bar.inputPin());
    double output = bar.outputPin().distance(bar.outputPivot());
    return between <= section + output && between >= Math.abs(section - output);
  }

  /** How far the driving link turns one way, by turning it step by step; infinite all round. */
  private static double walked(FourBar bar, int way) {
    for (int i = 1; i * STEP_RAD < 2 * Math.PI; i++) {
      if (!closes(bar, way * i * STEP_RAD)) {
        return way * (i - 0.5) * STEP_RAD;
      }
    }
    return way * Double.POSITIVE_INFINITY;
  }

  @Test
  void theRangeIsAsFarAsItCanBeWalked() {
    SplittableRandom seeds = new SplittableRandom(41);
    int[] kinds = new int[2];
    for (int i = 0; i < 300; i++) {
      FourBar bar = random(seeds, 1);
      for (int way : new int[] {-1, 1}) {
        double end = way < 0 ? bar.range().leastRad() : bar.range().mostRad();
        double walked = walked(bar, way);
        if (Double.isInfinite(walked)) {
          assertThat(end).isEqualTo(walked);
        } else {
          assertThat(end).isCloseTo(walked, within(0.5001 * STEP_RAD));
        }
        kinds[Double.isInfinite(walked) ? 0 : 1]++;
      }
    }
    assertThat(kinds[0]).isGreaterThan(50);
    assertThat(kinds[1]).isGreaterThan(300);
  }

  @Test
  void itOpensUpToItsDeadPointsAndNoFurther() {
    SplittableRandom seeds = new SplittableRandom(42);
    int ends = 0;
    for (int i = 0; i < 200; i++) {
      FourBar bar = random(seeds, 1);
      for (double end : new double[] {bar.range().leastRad(), bar.range().mostRad()}) {
        if (Double.isInfinite(end)) {
          continue;
        }
        ends++;
        FourBar short0 = opening(bar, end * 0.999);
        assertThat(short0.opens()).isTrue();
        assertThat(short0.at(1).apply(bar.inputPin()))
            .isEqualTo(bar.pose(end * 0.999).motion().apply(bar.inputPin()));
        FourBar far = opening(bar, end * 1.001);
        assertThat(far.opens()).isFalse();
        assertThatThrownBy(() -> far.at(1)).hasMessageContaining("dead points");
        assertThat(far.at(0.99).turnRad()).isFinite();
        assertThat(opening(bar, end).opens()).isTrue();
      }
    }
    assertThat(ends).isGreaterThan(200);
  }

  private static FourBar opening(FourBar bar, double openRad) {
    return new FourBar(
        bar.inputPivot(), bar.outputPivot(), bar.inputPin(), bar.outputPin(), openRad);
  }

  /**
   * Arms of one length lie in line with the body and the section twice a turn, and the section may
   * then leave on either branch: a dead point as any other.
   */
  @ParameterizedTest
  @CsvSource({"60, -60, 120", "-60, -120, 60", "135, -135, 45", "-170, -10, 170"})
  void parallelArmsGoAsFarAsTheLineOfTheirPivots(double atDeg, double leastDeg, double mostDeg) {
    for (double slopeRad : new double[] {0, 0.3, 2.9, -1.7}) {
      PointMm pivot = new PointMm(37, 11);
      PointMm other = pivot.plus(PointMm.unit(slopeRad).times(400));
      PointMm arm = PointMm.unit(slopeRad + Math.toRadians(atDeg)).times(150);
      FourBar bar = new FourBar(pivot, other, pivot.plus(arm), other.plus(arm), 0);
      // the angle at a dead point goes with the root of what lengths are rounded by
      assertThat(Math.toDegrees(bar.range().leastRad())).isCloseTo(leastDeg, within(1e-5));
      assertThat(Math.toDegrees(bar.range().mostRad())).isCloseTo(mostDeg, within(1e-5));
      for (int way : new int[] {-1, 1}) {
        double end = Math.toRadians(way < 0 ? leastDeg : mostDeg);
        assertThat(opening(bar, end - way * 0.01).opens()).isTrue();
        assertThat(opening(bar, end - way * 0.01).at(1).turnRad()).isCloseTo(0, within(1e-6));
        assertThat(opening(bar, end + way * 0.01).opens()).isFalse();
      }
    }
  }

  @Test
  void theAngleBetweenSectionAndOutputLinkIsThatOfItsPins() {
    SplittableRandom seeds = new SplittableRandom(43);
    for (int i = 0; i < 100; i++) {
      FourBar bar = random(seeds, 1);
      double turn = Math.min(bar.range().mostRad(), 6) * seeds.nextDouble();
      FourBar.Pose pose = bar.pose(turn);
      PointMm section = pose.inputPin().minus(pose.outputPin());
      PointMm output = bar.outputPivot().minus(pose.outputPin());
      double angle = Math.abs(Math.atan2(section.cross(output), section.dot(output)));
      assertThat(pose.transmissionRad()).isCloseTo(angle, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.7, -0.7, 2.5, -2.5, 6.0})
  void noPartOfAnOpeningMovesItMoreThanItsSwing(double openRad) {
    SplittableRandom seeds = new SplittableRandom(44);
    int seen = 0;
    for (int i = 0; i < 200; i++) {
      FourBar bar = random(seeds, openRad);
      double from = seeds.nextDouble();
      double to = from + (1 - from) * seeds.nextDouble();
      if (!bar.opens()) {
        continue;
      }
      seen++;
      holds(bar, from, to);
      holds(bar, from, from + 1e-3 * (to - from));
      holds(bar, from, from);
    }
    assertThat(seen).isGreaterThan(10);
  }

  /**
   * The swing bounds every move of the section, and is what its description says: the arc of the
   * driving pin; the turn of the line from that pin to the other pivot, at most the arc over their
   * least distance; and how much the section's angle to that line varies.
   */
  private static void holds(FourBar bar, double from, double to) {
    Swing swing = bar.swing(from, to);
    int steps = 400;
    double near = Double.POSITIVE_INFINITY;
    double leastAngle = Double.POSITIVE_INFINITY;
    double mostAngle = 0;
    double leastTurn = 0;
    double mostTurn = 0;
    double turn = 0;
    double mostShift = 0;
    RigidMotion last = bar.at(from);
    PointMm first = last.apply(bar.inputPin());
    for (int i = 0; i <= steps; i++) {
      RigidMotion motion = bar.at(Math.min(1, from + (to - from) * i / steps));
      turn += Math.IEEEremainder(motion.turnRad() - last.turnRad(), 2 * Math.PI);
      last = motion;
      leastTurn = Math.min(leastTurn, turn);
      mostTurn = Math.max(mostTurn, turn);
      PointMm pin = motion.apply(bar.inputPin());
      mostShift = Math.max(mostShift, pin.distance(first));
      PointMm pivot = bar.outputPivot().minus(pin);
      PointMm section = motion.apply(bar.outputPin()).minus(pin);
      near = Math.min(near, pivot.length());
      double angle = Math.abs(Math.atan2(pivot.cross(section), pivot.dot(section)));
      leastAngle = Math.min(leastAngle, angle);
      mostAngle = Math.max(mostAngle, angle);
    }
    assertThat(mostShift).isLessThanOrEqualTo(swing.shiftMm() + 1e-9);
    assertThat(mostTurn - leastTurn).isLessThanOrEqualTo(swing.turnRad() + 1e-6);
    double arc = bar.inputPin().distance(bar.inputPivot()) * Math.abs(bar.openRad()) * (to - from);
    assertThat(swing.pole()).isEqualTo(bar.inputPin());
    assertThat(swing.shiftMm()).isCloseTo(arc, within(1e-9));
    double described = Math.min(2 * Math.PI, arc / near + mostAngle - leastAngle);
    // least distance and angles fall between the samples
    assertThat(swing.turnRad()).isCloseTo(described, within(5e-3 * described + 1e-9));
  }

  @Test
  void fromAnotherOriginItMovesTheSame() {
    FourBar bar =
        new FourBar(
            new PointMm(10, 20),
            new PointMm(410, 60),
            new PointMm(-30, 240),
            new PointMm(380, 310),
            0.8);
    PointMm origin = new PointMm(-120.25, 75.5);
    FourBar seen = bar.seenFrom(origin, 0.25);
    for (double opening : new double[] {0, 0.3, 1}) {
      for (PointMm p : new PointMm[] {bar.inputPin(), bar.outputPin(), new PointMm(700, -90)}) {
        assertThat(seen.at(opening).apply(p.minus(origin)).plus(origin))
            .satisfies(q -> assertThat(q.distance(bar.at(opening).apply(p))).isLessThan(1e-9));
      }
    }
  }

  @Test
  void theShutPositionMustBeOffItsDeadPoint() {
    PointMm pivot = PointMm.ORIGIN;
    PointMm other = new PointMm(600, 0);
    // the other pin 1e-8 or 1e-10 of the links off the line from pin to pivot
    PointMm pin = new PointMm(0, 100);
    PointMm along = other.minus(pin);
    for (int way : new int[] {-1, 1}) {
      for (double share : new double[] {0.4, 1.5}) {
        PointMm at = pin.plus(along.times(share));
        PointMm off = along.left().times(way);
        assertThat(new FourBar(pivot, other, pin, at.plus(off.times(1e-8)), 0).opens()).isTrue();
        assertThatThrownBy(() -> new FourBar(pivot, other, pin, at.plus(off.times(1e-10)), 0))
            .hasMessageContaining("dead point");
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 400, 100, 100, 300, pivot distance",
    "400, 0, 400, 0, 300, 100, section link",
    "400, 0, 0, 100, 400, 0, output link",
    "400, 0, 0, 0, 300, 100, driving link"
  })
  void linksWithoutLengthAreRefused(
      double px, double pz, double ix, double iz, double ox, double oz, String which) {
    PointMm pivot = PointMm.ORIGIN;
    PointMm out = new PointMm(ox, oz);
    PointMm in = new PointMm(ix, iz);
    PointMm section = which.startsWith("section") ? in : out;
    assertThatThrownBy(() -> new FourBar(pivot, new PointMm(px, pz), in, section, 1))
        .hasMessageContaining(which);
  }
}
