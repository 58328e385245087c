package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.constraints.start.Answers.Drive;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.rider.geom.PointMm;

/** What carries the wheels keeps off them by what is asked, and by no more than it must. */
class RollingTest {

  private static final double GAP_MM = Draft.mmOf(Demands.Key.TYRE_GAP);

  private static Brief brief(
      String frontTyre, String rearTyre, Place place, double hubBreadth, FrontPart.Kind front) {
    Answers.Builder say =
        new Answers.Builder().frontTyre(frontTyre).rearTyre(rearTyre).place(place).front(front);
    if (place == Place.HUB) {
      say.drive(Drive.MOTOR).box(new Box(230, 230, hubBreadth, 14));
    }
    return Brief.of(say.answers());
  }

  static Stream<Arguments> briefs() {
    List<Arguments> all = new ArrayList<>();
    for (String[] tyres :
        new String[][] {
          {"110/80-16", "140/70-16"}, {"90/90-14", "110/80-14"}, {"120/70 R17", "180/55 R17"}
        }) {
      for (FrontPart.Kind front : Answers.FRONTS) {
        all.add(Arguments.of(brief(tyres[0], tyres[1], Place.BEFORE, 0, front)));
      }
      all.add(Arguments.of(brief(tyres[0], tyres[1], Place.HUB, 120, FrontPart.Kind.TELESCOPIC)));
      all.add(Arguments.of(brief(tyres[0], tyres[1], Place.HUB, 330, FrontPart.Kind.TELESCOPIC)));
    }
    return all.stream();
  }

  /** At least so much, and not a whole millimetre more. */
  private static void justOver(double value, double least) {
    assertThat(value).isBetween(least - 1e-9, least + 1);
  }

  @ParameterizedTest
  @MethodSource("briefs")
  void forkArmAndRailsLieSideBySide(Brief brief) {
    Rolling r = new Rolling(brief);
    // 36 mm tubes and 18 mm legs beside tyres, with 3 mm in hand
    double tubeInside = r.forkYMm - 18;
    justOver(tubeInside, brief.tyreAhead().widthMm() / 2 + GAP_MM + 3);
    double legInside = r.armHalfMm - 18;
    // beside a motor in the hub a disc of 5 mm, 3 off both
    double hub = brief.place() == Place.HUB ? brief.box().breadthMm() / 2 + 3 + 5 + 3 + 3 : 0;
    // between tyre and leg a chain of 18 mm, 5 off the one and 3 off the other
    double beside = brief.place() == Place.HUB ? GAP_MM + 3 : 5 + 18 + 3;
    justOver(legInside, Math.max(brief.tyreBehind().widthMm() / 2 + beside, hub));
    // rails of 32 mm beside both, with 6
    double railInside = r.railYMm - 16;
    justOver(railInside, Math.max(r.forkYMm + 18, r.armHalfMm) + 6);
  }

  @ParameterizedTest
  @MethodSource("briefs")
  void thePivotIsAnArmsLengthFromTheAxle(Brief brief) {
    Rolling r = new Rolling(brief);
    double radius = brief.tyreBehind().freeRadiusMm();
    assertThat(r.pivot.distance(new PointMm(0, radius))).isCloseTo(r.armMm, within(1e-9));
    assertThat(r.pivot.z() - radius).isBetween(7.5, 8.5);
    assertThat(r.pivot.x()).isPositive();
    // half of an arm of 45 mm and room for its cross tube lie before the tyre
    justOver(r.armMm - 22.5 - 24, radius + GAP_MM);
  }

  /** The steering axis meets the road 90 mm ahead of the contact, at 26 degrees. */
  @ParameterizedTest
  @MethodSource("briefs")
  void theHeadLiesOnTheSteeringAxis(Brief brief) {
    Rolling r = new Rolling(brief);
    for (double wheelbase : new double[] {0, 1600}) {
      PointMm low = r.headBottom(wheelbase);
      PointMm high = r.headTop(wheelbase);
      assertThat(low.z()).isEqualTo(r.headHeightMm);
      assertThat(low.distance(high)).isCloseTo(150, within(1e-9));
      assertThat(Math.toDegrees(Math.atan2(low.x() - high.x(), high.z() - low.z())))
          .isCloseTo(26, within(1e-9));
      double meets = low.x() + (low.x() - high.x()) / (high.z() - low.z()) * low.z();
      assertThat(meets).isCloseTo(wheelbase + 90, within(1e-9));
      assertThat(r.axisAheadMm(low.z())).isCloseTo(low.x() - wheelbase, within(1e-9));
    }
    assertThat(r.axisAheadMm(0)).isEqualTo(90);
  }

  /**
   * At full bump, 64 mm up, the wheel goes back along legs of 26 degrees, or some 12 mm with a
   * link; its guard, 32 mm off, is clear of the stem by half a tube of 36 and 10.
   */
  @ParameterizedTest
  @MethodSource("briefs")
  void theHeadIsJustClearOfTheWheelAtFullBump(Brief brief) {
    Rolling r = new Rolling(brief);
    double radius = brief.tyreAhead().freeRadiusMm();
    double back =
        brief.front() == FrontPart.Kind.TELESCOPIC ? 64 * Math.tan(Math.toRadians(26)) : 12;
    PointMm wheel = new PointMm(-back, radius + 64);
    double least = radius + 32 + 18 + 10;
    assertThat(r.headHeightMm % 5).isZero();
    assertThat(r.headBottom(0).distance(wheel)).isGreaterThanOrEqualTo(least);
    double lower = r.headHeightMm - 6;
    assertThat(new PointMm(r.axisAheadMm(lower), lower).distance(wheel)).isLessThan(least);
    // over the wheel, not under it
    assertThat(r.headHeightMm).isGreaterThan(wheel.z());
  }

  @Test
  void legsStraddleRailsAndTheDriveBetweenThem() {
    for (double breadth : new double[] {200, 460}) {
      for (Place place : new Place[] {Place.BEFORE, Place.BEHIND}) {
        Brief brief =
            Brief.of(
                new Answers.Builder()
                    .place(place)
                    .drive(Drive.ENGINE)
                    .box(new Box(390, 310, breadth, 48))
                    .answers());
        Rolling r = new Rolling(brief);
        double expected = place == Place.BEFORE && breadth == 460 ? 230 : r.railYMm + 16;
        assertThat(r.straddledMm(brief)).isEqualTo(expected);
      }
    }
  }
}
