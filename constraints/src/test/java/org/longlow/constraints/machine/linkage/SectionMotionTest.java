package org.longlow.constraints.machine.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.geom.PointMm;

class SectionMotionTest {

  @Test
  void aHingeSweepsACircleAboutItsPivot() {
    PointMm pivot = new PointMm(300, 800);
    Hinge hinge = new Hinge(pivot, Math.toRadians(60));
    PointMm corner = new PointMm(900, 750);
    assertThat(hinge.at(0).apply(corner).distance(corner)).isLessThan(1e-9);
    for (double f : new double[] {0.25, 0.5, 1}) {
      PointMm moved = hinge.at(f).apply(corner);
      assertThat(moved.distance(pivot)).isCloseTo(corner.distance(pivot), within(1e-9));
      assertThat(moved.minus(pivot).angleRad() - corner.minus(pivot).angleRad())
          .isCloseTo(f * Math.toRadians(60), within(1e-12));
    }
    assertThatThrownBy(() -> hinge.at(1.01)).hasMessageContaining("opening");
    assertThatThrownBy(() -> hinge.at(Double.NaN)).hasMessageContaining("opening");
    assertThatThrownBy(() -> new Hinge(pivot, Double.NaN)).hasMessageContaining("opening turn");
  }

  @ParameterizedTest
  @ValueSource(doubles = {60, -60})
  void aHingeMovesNoPointFurtherThanItsArc(double openDeg) {
    PointMm pivot = new PointMm(300, 800);
    Hinge hinge = new Hinge(pivot, Math.toRadians(openDeg));
    PointMm corner = new PointMm(900, 800);
    SectionMotion.Swing swing = hinge.swing(0.25, 0.75);
    assertThat(swing.pole()).isEqualTo(pivot);
    assertThat(swing.shiftMm()).isZero();
    assertThat(Math.toDegrees(swing.turnRad())).isCloseTo(30, within(1e-9));
    // 600 mm through 30 degrees: an arc of 100 pi, its chord is shorter
    assertThat(swing.mostMm(600)).isCloseTo(100 * Math.PI, within(1e-9));
    assertThat(hinge.at(0.25).apply(corner).distance(hinge.at(0.75).apply(corner)))
        .isCloseTo(1200 * Math.sin(Math.toRadians(15)), within(1e-9));
    assertThat(new SectionMotion.Swing(pivot, 40, 0.5).mostMm(600)).isEqualTo(340);
  }

  @Test
  void aHingeSeenFromElsewhereLiesOnTheGrid() {
    Hinge hinge = new Hinge(new PointMm(310.3, 802.2), 1);
    Hinge seen = hinge.seenFrom(new PointMm(100, 900), 0.5);
    assertThat(seen.pivot().distance(new PointMm(210.5, -98))).isLessThan(1e-12);
    assertThat(seen.openRad()).isEqualTo(1);
  }

  @Test
  void aMotionTurnsThenShifts() {
    RigidMotion quarter = RigidMotion.about(new PointMm(100, 200), Math.PI / 2);
    near(quarter.apply(new PointMm(100, 200)), 100, 200);
    near(quarter.apply(new PointMm(130, 200)), 100, 230);
    near(quarter.turn(new PointMm(30, 0)), 0, 30);
    near(quarter.inverse().apply(new PointMm(100, 230)), 130, 200);
    near(quarter.inverse().turn(new PointMm(0, 30)), 30, 0);
    RigidMotion to = RigidMotion.taking(new PointMm(10, 0), new PointMm(7, 8), Math.PI);
    near(to.apply(new PointMm(10, 0)), 7, 8);
    near(to.apply(new PointMm(11, 0)), 6, 8);
    near(RigidMotion.NONE.apply(new PointMm(3, 4)), 3, 4);
  }

  private static void near(PointMm p, double x, double z) {
    assertThat(p.x()).isCloseTo(x, within(1e-9));
    assertThat(p.z()).isCloseTo(z, within(1e-9));
  }

  private static FourBar random(SplittableRandom r) {
    return new FourBar(
        new PointMm(r.nextDouble(0, 200), r.nextDouble(0, 100)),
        new PointMm(r.nextDouble(300, 600), r.nextDouble(0, 100)),
        new PointMm(r.nextDouble(-100, 200), r.nextDouble(150, 500)),
        new PointMm(r.nextDouble(300, 700), r.nextDouble(150, 500)),
        r.nextDouble(-1, 1));
  }

  // Freudenstein 1954: K1 cos θ4 − K2 cos θ2 + K3 = cos(θ2 − θ4), angles from the line of pivots,
  // K1 = g/a, K2 = g/c, K3 = (a² − b² + c² + g²)/(2ac).
  @Test
  void posesSatisfyFreudensteinsEquationOnOneBranch() {
    SplittableRandom seeds = new SplittableRandom(1954);
    int poses = 0;
    for (int i = 0; i < 300; i++) {
      FourBar bar = random(seeds);
      double a = bar.inputPin().distance(bar.inputPivot());
      double b = bar.outputPin().distance(bar.inputPin());
      double c = bar.outputPin().distance(bar.outputPivot());
      double g = bar.outputPivot().distance(bar.inputPivot());
      double base = bar.outputPivot().minus(bar.inputPivot()).angleRad();
      FourBar.Range range = bar.range();
      double least = Math.max(-Math.PI, range.leastRad());
      double most = Math.min(Math.PI, range.mostRad());
      for (int k = 0; k <= 400; k++) {
        FourBar.Pose pose = bar.pose(least + (most - least) * k / 400);
        double in = pose.inputPin().minus(bar.inputPivot()).angleRad() - base;
        double out = pose.outputPin().minus(bar.outputPivot()).angleRad() - base;
        double left =
            g / a * Math.cos(out)
                - g / c * Math.cos(in)
                + (a * a - b * b + c * c + g * g) / (2 * a * c);
        assertThat(left).isCloseTo(Math.cos(in - out), within(1e-6));
        assertThat(pose.motion().apply(bar.outputPin()).distance(pose.outputPin()))
            .isLessThan(1e-5);
        // One branch: the output pin stays on its side of the line pin to pivot.
        double side = side(pose.inputPin(), bar.outputPivot(), pose.outputPin());
        double shutSide = side(bar.inputPin(), bar.outputPivot(), bar.outputPin());
        assertThat(side * Math.signum(shutSide)).isGreaterThan(-1e-6);
        poses++;
      }
    }
    assertThat(poses).isEqualTo(300 * 401);
  }

  private static double side(PointMm pin, PointMm pivot, PointMm outputPin) {
    return pivot.minus(pin).cross(outputPin.minus(pin));
  }

  @Test
  void shutIsNoMotionAndDeadPointsEndTheRange() {
    SplittableRandom seeds = new SplittableRandom(8);
    int limited = 0;
    for (int i = 0; i < 300; i++) {
      FourBar bar = random(seeds);
      assertThat(bar.at(0).apply(bar.outputPin()).distance(bar.outputPin())).isLessThan(1e-9);
      assertThat(bar.at(0).turnRad()).isCloseTo(0, within(1e-9));
      FourBar.Range range = bar.range();
      for (double end : new double[] {range.leastRad(), range.mostRad()}) {
        if (Double.isInfinite(end)) {
          continue;
        }
        limited++;
        // Coupler and output link in line: sin of the angle between them vanishes.
        assertThat(Math.sin(bar.pose(end).transmissionRad())).isCloseTo(0, within(1e-6));
        assertThatThrownBy(() -> bar.pose(end + Math.copySign(0.01, end)))
            .hasMessageContaining("dead points");
      }
    }
    assertThat(limited).isGreaterThan(100);
  }

  @Test
  void aParallelogramDoesNotTurnItsSection() {
    FourBar bar =
        new FourBar(
            new PointMm(0, 0),
            new PointMm(400, 0),
            new PointMm(0, 200),
            new PointMm(400, 200),
            Math.toRadians(40));
    assertThat(bar.opens()).isTrue();
    RigidMotion open = bar.at(1);
    assertThat(open.turnRad()).isCloseTo(0, within(1e-9));
    assertThat(open.apply(PointMm.ORIGIN).x())
        .isCloseTo(-200 * Math.sin(Math.toRadians(40)), within(1e-9));
  }

  @Test
  void linkagesThatCannotBeAreRefused() {
    PointMm o = PointMm.ORIGIN;
    assertThatThrownBy(() -> new FourBar(o, new PointMm(4, 0), o, new PointMm(4, 4), 1))
        .hasMessageContaining("driving link");
    assertThatThrownBy(
            () ->
                new FourBar(
                    o, new PointMm(400, 100), new PointMm(0, 100), new PointMm(200, 100), 1))
        .hasMessageContaining("dead point");
    assertThatThrownBy(() -> new FourBar(o, null, o, o, 1)).hasMessageContaining("two pivots");
  }
}
