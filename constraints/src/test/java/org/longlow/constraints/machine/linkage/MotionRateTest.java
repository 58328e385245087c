package org.longlow.constraints.machine.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.geom.PointMm;

/** Rates of sections are the differences of where they are a little before and after. */
class MotionRateTest {

  private static final double STEP = 1e-5;

  private static final PointMm POINT = new PointMm(330, -75);

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 0.9})
  void aHingeTurnsEvenly(double opening) {
    isThatOfDifferences(new Hinge(new PointMm(100, 900), Math.toRadians(80)), opening);
    isThatOfDifferences(new Hinge(new PointMm(-250, 40), Math.toRadians(-125)), opening);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 0.9})
  void aLinkageTurnsAsItsLinksLetIt(double opening) {
    isThatOfDifferences(
        new FourBar(
            new PointMm(0, 0),
            new PointMm(120, 30),
            new PointMm(-20, 200),
            new PointMm(150, 260),
            Math.toRadians(-50)),
        opening);
  }

  /** Of links as long and parallel the section shifts and does not turn: its pole is nowhere. */
  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.8})
  void parallelLinksShift(double opening) {
    FourBar parallel =
        new FourBar(
            new PointMm(0, 0),
            new PointMm(100, 0),
            new PointMm(10, 200),
            new PointMm(110, 200),
            Math.toRadians(40));
    isThatOfDifferences(parallel, opening);
    assertThat(parallel.rate(opening).turnRad()).isCloseTo(0, within(1e-9));
  }

  private static void isThatOfDifferences(SectionMotion motion, double opening) {
    PointMm before = motion.at(opening - STEP).apply(POINT);
    PointMm after = motion.at(opening + STEP).apply(POINT);
    PointMm rate = motion.rate(opening).of(motion.at(opening).apply(POINT));
    assertThat(rate.x()).isCloseTo((after.x() - before.x()) / (2 * STEP), within(1e-4));
    assertThat(rate.z()).isCloseTo((after.z() - before.z()) / (2 * STEP), within(1e-4));
  }
}
