package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Load;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Changed;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/**
 * Figures exactly on their limits and just beyond, which no solved layout hits: a machine stood by
 * hand on a flat road 1024 mm long, so that every figure is exact.
 */
class RoadLimitsTest {

  private static final double WHEELBASE_MM = 1024;
  private static final Ground FLAT = new Ground(new PointMm(0, 0), new PointMm(WHEELBASE_MM, 0));

  private final Study runabout = TestMachine.asFiled("runabout");

  private Standing stood(Stance.Kind kind, Map<String, ?> changes) {
    Standing s = OfStudy.standings(runabout, kind).get(0);
    Map<String, Object> all = new LinkedHashMap<>(Map.of("ground", FLAT));
    all.putAll(changes);
    return Changed.with(s, all);
  }

  // --- steering

  /**
   * A steering axis through a head as long and as far back as this, its foot so far off the axle.
   */
  private Finding steering(String id, double backMm, double upMm, double aheadOfAxleMm) {
    Map<String, PointMm> pins = new LinkedHashMap<>(runabout.placed().places().pins());
    PointMm foot = new PointMm(WHEELBASE_MM + aheadOfAxleMm, 512);
    pins.put("frontAxle", new PointMm(WHEELBASE_MM, 512));
    pins.put("headBottom", foot);
    pins.put("headTop", foot.plus(new PointMm(-backMm, upMm)));
    Standing s =
        stood(Stance.Kind.UNLADEN, Map.of("places", runabout.placed().places().withPins(pins)));
    Wheels wheels = Wheels.of(runabout.layout(), runabout.placed().places());
    return SteeringFindings.of(wheels, List.of(s)).stream()
        .filter(f -> f.id().equals(id + ".unladen"))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    // as far back as high is 45 deg
    "256, 45, CAUTION",
    "256.1, 45.011, CAUTION",
    "-256, -45, FAIL",
    "0, 0, FAIL",
    "0.1, 0.022, CAUTION"
  })
  void rakeIsHeldFrom15To45Degrees(double backMm, double deg, Verdict verdict) {
    Finding f = steering("rake", backMm, 256, 0);
    assertThat(f.value()).isCloseTo(deg, within(5e-4));
    assertThat(f.verdict()).isEqualTo(verdict);
    // the range is from memory, so on its limit it needs care too, for that alone
    assertThat(f.text().contains("That would pass, but")).isEqualTo(deg == 45);
    assertThat(f.text().contains("machines on the road have 15 to 45°"))
        .isEqualTo(verdict == Verdict.CAUTION && deg != 45);
    assertThat(f.text().contains("the steering axis does not lean back"))
        .isEqualTo(verdict == Verdict.FAIL);
  }

  /** Upright, an axis meets the road as far ahead of the contact as it stands ahead of the axle. */
  @ParameterizedTest
  @CsvSource({
    "50, CAUTION",
    "49.99, CAUTION",
    "175, CAUTION",
    "175.01, CAUTION",
    "0.01, CAUTION",
    "0, FAIL"
  })
  void trailIsHeldFrom50To175Mm(double mm, Verdict verdict) {
    Finding f = steering("trail", 0, 256, mm);
    assertThat(f.value()).isCloseTo(mm, within(1e-9));
    assertThat(f.verdict()).isEqualTo(verdict);
    boolean on = mm == 50 || mm == 175;
    assertThat(f.text().contains("That would pass, but")).isEqualTo(on);
    assertThat(f.text().contains("machines on the road have 50 to 175 mm"))
        .isEqualTo(verdict == Verdict.CAUTION && !on);
    assertThat(f.text().contains("without trail")).isEqualTo(verdict == Verdict.FAIL);
  }

  @Test
  void nothingIsSaidOfSteeringWithoutAFrontSystem() {
    Study without = Study.of(Changed.without(runabout.layout(), "front"));
    assertThat(without.findings())
        .noneMatch(f -> f.kind() == SteeringFindings.TRAIL || f.kind() == SteeringFindings.RAKE);
  }

  // --- loads

  private List<Finding> loads(Layout layout, double xMm, double yMm, double zMm) {
    MassPoint total = new MassPoint(200, new PointMm(xMm, zMm), yMm);
    Load load = new Load(total, new AxleLoads(WHEELBASE_MM, total));
    return LoadFindings.of(layout, List.of(stood(Stance.Kind.LADEN, Map.of("load", load))));
  }

  private static Layout asking(String demand, double share) {
    return TestMachine.runabout().with("demands", demand, "'" + share + "'").layout();
  }

  @ParameterizedTest
  @CsvSource({
    // 384 of 1024 is 0.375
    "frontShareMin, 384, PASS", "frontShareMin, 383.9, FAIL",
    "frontShareMax, 384, PASS", "frontShareMax, 384.1, FAIL"
  })
  void aShareOnItsLimitIsKept(String demand, double xMm, Verdict verdict) {
    // the other limit is far off: it is 0.38 at least, 0.58 at most by default
    Layout layout =
        demand.equals("frontShareMin")
            ? asking(demand, 0.375)
            : TestMachine.runabout()
                .with("demands", "frontShareMin", "'0.1'")
                .with("demands", demand, "'0.375'")
                .layout();
    Finding f = loads(layout, xMm, 0, 500).get(0);
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.limit()).isEqualTo(0.375);
    assertThat(f.text().contains("are asked there")).isEqualTo(verdict == Verdict.FAIL);
  }

  @ParameterizedTest
  @CsvSource({
    "0.49, in the middle.",
    "-0.49, in the middle.",
    "0.5, 1 mm to the left of the middle.",
    "-0.5, 1 mm to the right of the middle."
  })
  void halfAMillimetreIsOffTheMiddle(double yMm, String words) {
    assertThat(loads(runabout.layout(), 480, yMm, 500).get(0).text()).endsWith(words);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 500, FAIL, the front wheel lifts at rest",
    "1, 500, PASS, pulling away lifts the front at 0.00 g",
    "1023, 500, PASS, braking lifts the rear wheel at 0.00 g",
    "1024, 500, FAIL, the rear wheel lifts at rest",
    "480, 0, FAIL, lies in the road or under it",
    "480, 1, PASS, braking lifts the rear wheel at 544.00 g"
  })
  void aWheelStaysDownWhileTheCentreIsBetweenThemAndOverTheRoad(
      double xMm, double zMm, Verdict verdict, String words) {
    Finding f = loads(runabout.layout(), xMm, 0, zMm).get(1);
    assertThat(f.kind()).isEqualTo(LoadFindings.LIFT);
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text()).contains(words);
  }

  /** Front shares of such machines are in order: it is the height that nothing has. */
  @ParameterizedTest
  @CsvSource({"0, FAIL", "-300, FAIL", "1, PASS"})
  void loadsOfAMassInTheRoadDoNotPass(double zMm, Verdict verdict) {
    List<Finding> both = loads(runabout.layout(), 480, 0, zMm);
    assertThat(both).extracting(f -> f.kind().word()).containsExactly("load", "lift");
    assertThat(both).extracting(Finding::verdict).containsOnly(verdict);
    assertThat(both.get(0).text().contains("lies in the road or under it"))
        .isEqualTo(verdict == Verdict.FAIL);
  }

  // --- the lowest point

  @ParameterizedTest
  @CsvSource({"0, PASS", "0.25, FAIL"})
  void aClearanceOnItsLimitIsKept(double more, Verdict verdict) {
    double least = lowest(FLAT);
    Layout layout =
        TestMachine.runabout()
            .with("demands", "bumpClearance", "'" + (least + more) + " mm'")
            .layout();
    Finding f = GroundFindings.of(layout, List.of(stood(Stance.Kind.FULL_BUMP, Map.of()))).get(0);
    assertThat(f.value()).isEqualTo(least);
    assertThat(f.margin()).isCloseTo(-more, within(1e-9));
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text().contains("raise it")).isEqualTo(verdict == Verdict.FAIL);
  }

  /** However the road lies, what is lowest is found, though only some boxes are looked into. */
  @Test
  void theLowestCornerIsFoundOverAnyRoad() {
    Random random = new Random(11);
    for (int i = 0; i < 300; i++) {
      PointMm rear =
          new PointMm(400 * (random.nextDouble() - 0.5), 600 * random.nextDouble() - 300);
      double slope = random.nextDouble() - 0.5;
      Ground road =
          new Ground(rear, rear.plus(new PointMm(1600 * Math.cos(slope), 1600 * Math.sin(slope))));
      Standing s = stood(Stance.Kind.FULL_BUMP, Map.of("ground", road));
      Finding f = GroundFindings.of(runabout.layout(), List.of(s)).get(0);
      assertThat(f.value()).as("road %s", road).isCloseTo(lowest(road), within(1e-9));
      assertThat(f.text()).contains(f.value() < 0 ? "mm below the road" : "mm above the road");
      assertThat(f.text()).doesNotContain(", -");
    }
  }

  /** By the area of the triangle that a corner makes with the contacts, over its base. */
  private double lowest(Ground road) {
    Standing s = OfStudy.standings(runabout, Stance.Kind.FULL_BUMP).get(0);
    PointMm a = road.rearContact();
    PointMm b = road.frontContact();
    double least = Double.POSITIVE_INFINITY;
    for (PartShape shape : s.shapes().values()) {
      // of wheels the discs, whose radius is 100 mm
      boolean wheel = shape.part() instanceof WheelPart;
      Coordinate[] places =
          wheel
              ? new Coordinate[] {shape.outline().getCentroid().getCoordinate()}
              : shape.outline().getCoordinates();
      for (Coordinate c : places) {
        double twice = (b.x() - a.x()) * (c.y - a.z()) - (b.z() - a.z()) * (c.x - a.x());
        double high = twice / Math.hypot(b.x() - a.x(), b.z() - a.z());
        least = Math.min(least, high - (wheel ? 100 : 0));
      }
    }
    return least;
  }
}
