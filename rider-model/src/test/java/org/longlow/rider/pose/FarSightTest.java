package org.longlow.rider.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.rider.geom.PointMm;

/** Mirrors, stopping, crests and lights by worked figures; eyes about an eye by sampled people. */
class FarSightTest {

  /** Worked with another program, printed to a millionth of a degree. */
  @Test
  void mirrorsShowTheWorkedAngles() {
    assertThat(deg(MirrorField.angleRad(120, 700, Double.POSITIVE_INFINITY)))
        .isCloseTo(9.798185, within(1e-6));
    assertThat(deg(MirrorField.angleRad(120, 700, 1200))).isCloseTo(21.041569, within(1e-6));
    assertThatThrownBy(() -> MirrorField.angleRad(0, 700, 1200)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> MirrorField.angleRad(120, -1, 1200)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> MirrorField.angleRad(120, 700, Double.NaN))
        .hasMessageContaining("above 0");
  }

  private static double deg(double rad) {
    return Math.toDegrees(rad);
  }

  /** 80 km/h, printed to a micrometre of a metre. */
  @ParameterizedTest
  @CsvSource({"2.5, 3.4, 128.177197", "1, 7, 57.495591", "1, 3.5, 92.768959"})
  void stopsAreTheWorkedOnes(double reaction, double braking, double metres) {
    assertThat(RoadSight.stopMm(80e6 / 3600, reaction, braking) / 1000)
        .isCloseTo(metres, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"1080, 130.796936", "850, 122.340041"})
  void crestsHideAsWorked(double eye, double metres) {
    assertThat(RoadSight.crestMm(2.6e6, eye, 600) / 1000).isCloseTo(metres, within(1e-6));
  }

  /** By steps of 0.1 m: the line to the object's top clears the road and what is nearer. */
  @ParameterizedTest
  @CsvSource({"0.05, 600", "0.0256, 600", "0.02, 600", "0.014, 600", "0.013, 600", "0.05, 0"})
  void overACrestTheSameIsSeenByRaysPastWhatIsNearer(double down, double object) {
    double radius = 2.6e6;
    double farthest = 0;
    for (double s = 100; s < 200_000; s += 100) {
      double slope = (object - s * s / (2 * radius) - 850) / s;
      boolean clear = slope >= -down;
      for (double t = 100; clear && t < s; t += 100) {
        clear = 850 + slope * t + t * t / (2 * radius) >= 0;
      }
      farthest = clear ? s : farthest;
    }
    assertThat(RoadSight.crestMm(radius, 850, object, -Math.atan(down)))
        .isCloseTo(farthest, within(101.0));
  }

  @Test
  void aCrestLaidOutForASightGivesIt() {
    double radius = RoadSight.crestRadiusMm(128_177);
    assertThat(RoadSight.crestMm(radius, 1080, 600)).isCloseTo(128_177, within(1e-6));
  }

  /** Eye at 850 mm, 1800 mm behind the line: a light 25.6 ft up at 53 ft, or 21 ft up at 40 ft. */
  @ParameterizedTest
  @CsvSource({"25.6, 53, 21.169002", "21, 40, 21.638842"})
  void lightsHangNoHigherThanIsAsked(double feetUp, double feetOff, double degrees) {
    double up = Math.atan2(feetUp * 304.8 - 850, feetOff * 304.8 + 1800);
    assertThat(deg(up)).isCloseTo(degrees, within(2e-3));
    assertThat(up).isLessThan(RoadSight.LIGHT_RAD);
    assertThat(deg(RoadSight.LIGHT_RAD) - deg(up)).isLessThan(1);
  }

  /** Of eyes drawn by chance 5 in 100 lie beyond the line, on either side. */
  @ParameterizedTest
  @CsvSource({"900, 700", "400, 1050", "3000, 100"})
  void ninetyFiveOfAHundredEyesLieOnOneSideOfTheLine(double ahead, double high) {
    EyeEllipse e = new EyeEllipse(new PointMm(0, 1000), Math.toRadians(120), 25, 12);
    PointMm corner = new PointMm(ahead, high);
    SplittableRandom random = new SplittableRandom(7);
    int n = 40_000;
    int lower = 0;
    int upper = 0;
    PointMm low = e.touching(corner, true);
    PointMm top = e.touching(corner, false);
    for (int i = 0; i < n; i++) {
      double r = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
      PointMm unit = PointMm.unit(2 * Math.PI * random.nextDouble()).times(r);
      PointMm at =
          e.eye().plus(new PointMm(25 * unit.x(), 12 * unit.z()).turned(Math.toRadians(120)));
      lower += corner.minus(low).cross(at.minus(low)) < 0 ? 1 : 0;
      upper += corner.minus(top).cross(at.minus(top)) > 0 ? 1 : 0;
    }
    // of 40000, 5 % strays by 0.11 % as one standard deviation; four of them are allowed
    assertThat((double) lower / n).isCloseTo(0.05, within(0.0044));
    assertThat((double) upper / n).isCloseTo(0.05, within(0.0044));
    assertThat(low.z()).isLessThan(top.z());
  }

  @Test
  void withinTheEllipseNothingTouches() {
    EyeEllipse e = new EyeEllipse(new PointMm(0, 1000), 0, 25, 12);
    assertThat(e.touching(new PointMm(10, 1000), true)).isEqualTo(e.eye());
    assertThatThrownBy(() -> new EyeEllipse(e.eye(), 0, 0, 1)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> new EyeEllipse(e.eye(), 0, 1, Double.NaN))
        .hasMessageContaining("above 0");
  }
}
