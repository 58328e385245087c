package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.machine.ride.LeanClearance.TouchDown;
import org.longlow.constraints.machine.ride.LeanClearance.Wheel;

class LeanClearanceTest {

  // Solved by sampling both tori as surfaces (no support function), printed to 1e-10 deg.
  @ParameterizedTest(name = "case {0}")
  @CsvSource({
    "A, 700, 300, 250, 1500, 300, 0, 300, 0, 39.8055710923, 0.0000000000",
    "B, 700, 300, 250, 1500, 300, 60, 300, 60, 42.0750220508, 0.0000000000",
    "C, 700, 300, 250, 1500, 299.9, 60, 314.9, 90, 42.7725206784, -0.4151776452",
    "D, 1350, 320, 220, 1500, 299.9, 60, 314.9, 90, 36.3142547709, -0.2762101007",
    "E, 200, 280, 300, 1500, 299.9, 60, 314.9, 90, 51.5148263780, -0.6955277789",
    "F, 900, 400, 150, 1650, 330, 40, 330, 120, 21.2527453058, -0.2027158296",
    "G, 1100, 350, 180, 1700, 254, 55, 320.4, 65, 28.2296187047, -0.0454995257",
    "H, 600, 450, 120, 1620, 345, 45, 320, 100, 15.2776409809, -0.0712614195"
  })
  void touchDownMatchesSampledTori(
      String name,
      double x,
      double y,
      double z,
      double p,
      double rf,
      double sf,
      double rr,
      double sr,
      double roll,
      double pitch) {
    LeanClearance lean = new LeanClearance(p, new Wheel(rf, sf), new Wheel(rr, sr));
    TouchDown touch = lean.touchDown(x, y, z);
    assertThat(touch.touches()).isTrue();
    assertThat(Math.toDegrees(touch.rollRad())).isCloseTo(roll, within(2e-10));
    assertThat(Math.toDegrees(touch.pitchRad())).isCloseTo(pitch, within(2e-10));
    assertThat(lean.clearanceMm(x, y, z, touch.rollRad())).isCloseTo(0, within(1e-9));
  }

  // Clearance profile of case C from the sampled tori, printed to 1e-10.
  @ParameterizedTest
  @CsvSource({
    "0, 250.0000000000, 0.0000000000",
    "10, 195.2620984380, -0.0176776226",
    "20, 136.9005178388, -0.0735428022",
    "30, 76.6886602729, -0.1772767841",
    "40, 16.4562776661, -0.3499838398",
    "45, -13.0940493994, -0.4746788716",
    "50, -41.9659897612, -0.6368611053"
  })
  void clearanceProfileMatchesSampledTori(double deg, double clearance, double pitch) {
    LeanClearance lean = caseC();
    double roll = Math.toRadians(deg);
    assertThat(lean.clearanceMm(700, 300, 250, roll)).isCloseTo(clearance, within(2e-10));
    assertThat(Math.toDegrees(lean.pitchRad(roll))).isCloseTo(pitch, within(2e-10));
  }

  private static LeanClearance caseC() {
    return new LeanClearance(1500, new Wheel(299.9, 60), new Wheel(314.9, 90));
  }

  @Test
  void aSaggedMachineAgreesWithToriSampledHere() {
    // Wheels pushed up into the body by different amounts, then both tori laid on one plane by
    // golden search over their surfaces; 1e-6 mm is what the search resolves.
    Wheel front = new Wheel(299.9, 60, 330);
    Wheel rear = new Wheel(314.9, 90, 325);
    LeanClearance lean = new LeanClearance(1500, front, rear);
    for (double deg : new double[] {0, 15, 33}) {
      double roll = Math.toRadians(deg);
      double low = -0.2;
      double high = 0.2;
      for (int i = 0; i < 60; i++) {
        double mid = (low + high) / 2;
        double difference = lowest(front, 1500, mid, roll) - lowest(rear, 0, mid, roll);
        // Nose up lifts the front wheel.
        if (difference > 0) {
          high = mid;
        } else {
          low = mid;
        }
      }
      assertThat(lean.pitchRad(roll)).isCloseTo(low, within(1e-9));
      double point = height(800, -250, 210, low, roll);
      assertThat(lean.clearanceMm(800, 250, 210, roll))
          .isCloseTo(point - lowest(rear, 0, low, roll), within(1e-6));
      LeanClearance.Road road = LeanClearance.road(1500, front, rear, roll);
      assertThat(road.heightMm(800, 250, 210))
          .isCloseTo(point - lowest(rear, 0, low, roll), within(1e-6));
      assertThat(road.heightMm(-90, -310, 470))
          .isCloseTo(height(-90, 310, 470, low, roll) - lowest(rear, 0, low, roll), within(1e-6));
      assertThat(road.rollRad()).isEqualTo(roll);
      assertThat(road.pitchRad()).isCloseTo(low, within(1e-9));
    }
  }

  /** Height of a body point after pitch (nose up) and then roll (to −y) about ground axes. */
  private static double height(double x, double y, double z, double pitch, double roll) {
    double up = x * Math.sin(pitch) + z * Math.cos(pitch);
    return up * Math.cos(roll) + y * Math.sin(roll);
  }

  private static double lowest(Wheel w, double x, double pitch, double roll) {
    double around = -Math.PI / 2;
    double across = 0;
    double best = Double.POSITIVE_INFINITY;
    double window = Math.PI / 2;
    for (int level = 0; level < 40; level++) {
      double bestAround = around;
      double bestAcross = across;
      for (int i = -4; i <= 4; i++) {
        for (int j = -4; j <= 4; j++) {
          double u = around + window * i / 4;
          double v = across + window * j / 4;
          double ring = w.radiusMm() - w.sectionRadiusMm() + w.sectionRadiusMm() * Math.cos(v);
          double h =
              height(
                  x + ring * Math.cos(u),
                  w.sectionRadiusMm() * Math.sin(v),
                  w.centreHeightMm() + ring * Math.sin(u),
                  pitch,
                  roll);
          if (h < best) {
            best = h;
            bestAround = u;
            bestAcross = v;
          }
        }
      }
      around = bestAround;
      across = bestAcross;
      window *= 0.6;
    }
    return best;
  }

  /** One plane touches both tori if, over all pitches, each wheel hangs lower at some of them. */
  @ParameterizedTest
  @CsvSource({
    "400, 300, 20, 320, 150",
    "400, 300, 150, 320, 20",
    "500, 280, 100, 350, 30",
    "500, 350, 30, 280, 100"
  })
  void tyresThisUnequalStandOnOnePlaneUpToTheSteepestRollOnly(
      double base, double rf, double sf, double rr, double sr) {
    Wheel front = new Wheel(rf, sf, rf + 15);
    Wheel rear = new Wheel(rr, sr, rr - 10);
    LeanClearance lean = new LeanClearance(base, front, rear);
    double steepest = lean.steepestRollRad();
    assertThat(Math.toDegrees(steepest)).isBetween(60.0, 89.0);
    assertThat(onePlane(front, rear, base, steepest - Math.toRadians(0.05))).isTrue();
    assertThat(onePlane(front, rear, base, steepest + Math.toRadians(0.05))).isFalse();
    assertThat(lean.pitchRad(steepest)).isFinite();
    assertThatThrownBy(() -> lean.pitchRad(steepest + 1e-6)).hasMessageContaining("roll");
    assertThatThrownBy(() -> lean.pitchRad(-1e-6)).hasMessageContaining("roll");
  }

  private static boolean onePlane(Wheel front, Wheel rear, double base, double roll) {
    boolean frontLower = false;
    boolean rearLower = false;
    for (double deg = -120; deg < 120 && !(frontLower && rearLower); deg += 2) {
      double pitch = Math.toRadians(deg);
      boolean lower = lowest(front, base, pitch, roll) < lowest(rear, 0, pitch, roll);
      frontLower |= lower;
      rearLower |= !lower;
    }
    return frontLower && rearLower;
  }

  @Test
  void equalTyresStandAtAnyRoll() {
    assertThat(new LeanClearance(1500, new Wheel(300, 60), new Wheel(320, 60)).steepestRollRad())
        .isEqualTo(Math.PI / 2);
  }

  @Test
  void axlesMustBeFurtherApartThanTheirRadiiDiffer() {
    // 300 along and 400 up are 500 apart
    Wheel low = new Wheel(200, 60, 100);
    assertThatThrownBy(() -> new LeanClearance(300, new Wheel(700, 60, 500), low))
        .hasMessageContaining("difference of the wheel radii");
    assertThatThrownBy(() -> new LeanClearance(300, low, new Wheel(700, 60, 500)))
        .hasMessageContaining("difference of the wheel radii");
    assertThat(new LeanClearance(300, new Wheel(699, 60, 500), low).pitchRad(0)).isFinite();
    assertThat(new LeanClearance(300, low, new Wheel(699, 60, 500)).pitchRad(0)).isFinite();
  }

  @Test
  void firstOrderFormIsWithinAThousandthOfADegree() {
    // Closed form with the section interpolated along the wheelbase, for ordinary machines.
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 300; i++) {
      double p = random.nextDouble(1400, 2000);
      double sf = random.nextDouble(45, 65);
      double sr = random.nextDouble(60, 95);
      LeanClearance lean =
          new LeanClearance(p, new Wheel(300, sf), new Wheel(random.nextDouble(300, 330), sr));
      double x = random.nextDouble(200, p - 100);
      double y = random.nextDouble(250, 420);
      double z = random.nextDouble(120, 280);
      double s = sr + (sf - sr) * x / p;
      double closed = Math.acos(-s / Math.hypot(z - s, y)) - Math.atan2(y, z - s);
      assertThat(Math.toDegrees(lean.touchDown(x, y, z).rollRad()))
          .isCloseTo(Math.toDegrees(closed), within(1e-3));
    }
  }

  @Test
  void touchDownIsTheFirstCrossingOfAFineScan() {
    SplittableRandom random = new SplittableRandom(11);
    int touching = 0;
    for (int i = 0; i < 400; i++) {
      LeanClearance lean =
          new LeanClearance(
              random.nextDouble(1200, 2200),
              new Wheel(random.nextDouble(200, 350), random.nextDouble(0, 120)),
              new Wheel(random.nextDouble(200, 350), random.nextDouble(0, 120)));
      double x = random.nextDouble(-300, 2300);
      double y = random.nextDouble(0, 500);
      double z = random.nextDouble(1, 500);
      TouchDown touch = lean.touchDown(x, y, z);
      double end = touch.touches() ? touch.rollRad() : lean.steepestRollRad();
      for (int k = 0; k < 2000; k++) {
        assertThat(lean.clearanceMm(x, y, z, end * k / 2000)).isGreaterThan(-1e-9);
      }
      if (touch.touches()) {
        touching++;
        assertThat(lean.clearanceMm(x, y, z, end)).isCloseTo(0, within(1e-8));
      }
    }
    assertThat(touching).isBetween(100, 399);
  }

  @Test
  void aPointInsideTheTyreSectionNeverTouches() {
    assertThat(
            new LeanClearance(1500, new Wheel(300, 60), new Wheel(300, 60)).touchDown(700, 20, 300))
        .isEqualTo(TouchDown.NEVER);
  }

  @Test
  void aPointBelowTheRoadTouchesUpright() {
    assertThat(caseC().touchDown(700, 300, -1).rollRad()).isZero();
    assertThat(caseC().touchDown(700, 300, 0).rollRad()).isZero();
  }

  // Equal tyres: g = ρ + r cos(φ + ψ) has its lowest value ρ − r at φ + ψ = π. Take r − ρ tiny.
  @ParameterizedTest
  @ValueSource(doubles = {0.7, 1, 1.4, 2, 3.1, 44.3, 60, 87.9, 89, 89.6})
  void aShallowDipIsFoundWhereverItLies(double deg) {
    LeanClearance lean = new LeanClearance(1500, new Wheel(300, 60), new Wheel(300, 60));
    double psi = Math.PI - Math.toRadians(deg);
    double r = 60 + 1e-6;
    TouchDown touch = lean.touchDown(700, r * Math.sin(psi), 60 + r * Math.cos(psi));
    assertThat(touch.touches()).isTrue();
    assertThat(touch.rollRad()).isCloseTo(Math.acos(-60 / r) - psi, within(1e-7));
    double less = 60 - 1e-6;
    assertThat(lean.touchDown(700, less * Math.sin(psi), 60 + less * Math.cos(psi)))
        .isEqualTo(TouchDown.NEVER);
  }

  @ParameterizedTest
  @CsvSource({
    "NaN, 300, 60",
    "0, 300, 60",
    "1500, -300, 60",
    "1500, 300, 301",
    "1500, 300, -1",
    "1500, NaN, 60"
  })
  void nonsenseIsRefused(double p, double r, double s) {
    assertThatThrownBy(() -> new LeanClearance(p, new Wheel(r, s), new Wheel(320, 60)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LeanClearance(10, new Wheel(300, 60, 320), new Wheel(320, 60)))
        .hasMessageContaining("difference of the wheel radii");
    assertThatThrownBy(() -> caseC().touchDown(Double.NaN, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
