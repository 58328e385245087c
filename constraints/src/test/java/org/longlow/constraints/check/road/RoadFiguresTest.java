package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.check.road.OfStudy.asking;
import static org.longlow.constraints.check.road.OfStudy.finding;
import static org.longlow.constraints.check.road.OfStudy.only;
import static org.longlow.constraints.check.road.OfStudy.people;
import static org.longlow.constraints.check.road.OfStudy.standings;
import static org.longlow.constraints.check.road.OfStudy.tenths;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.check.OnRoad;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/**
 * Figures of whole machines on the road, each worked out again from pins, outlines and masses, and
 * held to limits on both sides of it.
 */
class RoadFiguresTest {

  // --- steering

  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout"})
  void rakeAndTrailAreThoseOfTheLineThroughTheSteeringAxis(String name) {
    Study study = TestMachine.asFiled(name);
    List<Standing> asked = standings(study, Stance.Kind.UNLADEN, Stance.Kind.LADEN);
    assertThat(asked).hasSizeGreaterThan(2);
    for (Standing s : asked) {
      OnRoad road = OnRoad.of(study, s);
      double topX = road.x(s.places().pin("headTop"));
      double topZ = road.z(s.places().pin("headTop"));
      double lowX = road.x(s.places().pin("headBottom"));
      double lowZ = road.z(s.places().pin("headBottom"));
      double meets = lowX + (lowX - topX) * lowZ / (topZ - lowZ);
      double trail = meets - road.wheelbaseMm();
      double rakeDeg = Math.toDegrees(Math.atan((lowX - topX) / (topZ - lowZ)));
      Finding t = finding(study, "trail." + people(s), s);
      assertThat(t.value()).isCloseTo(trail, within(1e-6));
      // ranges of machines on the road: 50 to 175 mm, 15 to 45 deg
      assertThat(t.margin()).isCloseTo(Math.min(trail - 50, 175 - trail), within(1e-6));
      double normal = trail * Math.cos(Math.toRadians(rakeDeg));
      double flop = normal * Math.sin(Math.toRadians(rakeDeg));
      String who = s.kind() == Stance.Kind.UNLADEN ? "Unladen" : "With " + s.condition().people();
      assertThat(t.text())
          .isEqualTo(
              String.format(
                  "%s: rake %s°, ground trail %s mm, normal trail %s mm, wheel flop %s mm."
                      + " That is judged by a source known from memory only.",
                  who, tenths(rakeDeg), tenths(trail), tenths(normal), tenths(flop)));
      PointMm contact = t.where().orElseThrow();
      assertThat(road.x(contact)).isCloseTo(road.wheelbaseMm(), within(1e-6));
      assertThat(road.z(contact)).isCloseTo(0, within(1e-6));
      Finding r = finding(study, "rake." + people(s), s);
      assertThat(r.value()).isCloseTo(rakeDeg, within(1e-9));
      assertThat(r.margin()).isCloseTo(Math.min(rakeDeg - 15, 45 - rakeDeg), within(1e-9));
      assertThat(r.text())
          .startsWith(who + " the steering axis leans back " + tenths(rakeDeg) + "°.");
      assertThat(r.where()).contains(s.places().pin("headTop"));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "-10, 75, the wheel falls to one side",
    "14, 75, machines on the road have 15 to 45°",
    "46, 75, machines on the road have 15 to 45°"
  })
  void anUnusualRakeIsExplained(int rakeDeg, int trailMm, String words) {
    Finding f =
        TestMachine.runabout()
            .with("measures", "rake", "'" + rakeDeg + " deg'")
            .finding("rake.unladen")
            .orElseThrow();
    assertThat(f.text()).contains(words);
  }

  @ParameterizedTest
  @CsvSource({
    "-60, FAIL, without trail the wheel does not straighten itself",
    "20, CAUTION, machines on the road have 50 to 175 mm",
    "250, CAUTION, machines on the road have 50 to 175 mm"
  })
  void anUnusualTrailIsExplained(int trailMm, Verdict verdict, String words) {
    Finding f =
        TestMachine.runabout()
            .with("measures", "trail", "'" + trailMm + " mm'")
            .finding("trail.unladen")
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text()).contains(words);
  }

  // --- loads

  private static MassPoint sum(Study study, Standing s) {
    List<MassPoint> all = new ArrayList<>();
    s.shapes().values().forEach(p -> all.add(new MassPoint(p.massKg(), p.centre(), p.centreYMm())));
    for (Occupant who : s.condition().aboard()) {
      all.addAll(study.sitting(who.person(), who.seat()).orElseThrow().masses());
    }
    double kg = 0;
    double x = 0;
    double z = 0;
    double y = 0;
    for (MassPoint m : all) {
      kg += m.massKg();
      x += m.massKg() * m.at().x();
      z += m.massKg() * m.at().z();
      y += m.massKg() * m.yMm();
    }
    return new MassPoint(kg, new PointMm(x / kg, z / kg), y / kg);
  }

  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout"})
  void loadsAreLeversAboutTheContacts(String name) {
    Study study = TestMachine.asFiled(name);
    for (Standing s : standings(study, Stance.Kind.UNLADEN, Stance.Kind.LADEN)) {
      boolean laden = s.kind() == Stance.Kind.LADEN;
      OnRoad road = OnRoad.of(study, s);
      MassPoint all = sum(study, s);
      double x = road.x(all.at());
      double z = road.z(all.at());
      double share = x / road.wheelbaseMm();
      double newton = all.massKg() * 9.80665;
      Finding f = finding(study, "load." + people(s), s);
      assertThat(f.value()).isCloseTo(share, within(1e-9));
      assertThat(f.where().orElseThrow().distance(all.at())).isLessThan(1e-6);
      assertThat(f.text())
          .startsWith(
              String.format(
                  Locale.ROOT,
                  "%s the machine weighs %s kg%s; front axle %.0f N, rear axle %.0f N, %s %% on the"
                      + " front; centre of mass %.0f mm ahead of the rear contact, %.0f mm up and ",
                  laden ? "With " + s.condition().people() : "With nobody on it",
                  tenths(all.massKg()),
                  laden ? " with gear" : "",
                  newton * share,
                  newton * (1 - share),
                  tenths(100 * share),
                  x,
                  z));
      if (laden) {
        assertThat(f.margin()).isCloseTo(Math.min(share - 0.38, 0.58 - share), within(1e-9));
        Finding lift = finding(study, "lift." + people(s), s);
        assertThat(lift.verdict()).isEqualTo(Verdict.PASS);
        assertThat(lift.value()).isCloseTo((road.wheelbaseMm() - x) / z, within(1e-9));
        assertThat(lift.text())
            .contains(
                String.format(
                    Locale.ROOT,
                    "braking lifts the rear wheel at %.2f g and pulling away lifts the front at"
                        + " %.2f g",
                    (road.wheelbaseMm() - x) / z,
                    x / z));
      } else {
        assertThat(f.margin()).isNaN();
        assertThat(f.verdict()).isEqualTo(Verdict.PASS);
      }
    }
  }

  @Test
  void theFrontWheelsShareIsHeldFromBothSides() {
    Study usual = TestMachine.asFiled("runabout");
    double share =
        usual.findings().stream()
            .filter(f -> f.id().equals("load.Nell"))
            .findFirst()
            .orElseThrow()
            .value();
    Finding enough = only(asking("runabout", "frontShareMin", share - 1e-4, ""), "load.Nell");
    assertThat(enough.verdict()).isEqualTo(Verdict.PASS);
    assertThat(enough.limit()).isCloseTo(share - 1e-4, within(1e-12));
    assertThat(enough.text()).doesNotContain("asked there");
    assertThat(enough.source()).contains("this layout's demand");
    Finding little = only(asking("runabout", "frontShareMin", share + 1e-4, ""), "load.Nell");
    assertThat(little.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(little.text())
        .contains(" At least ")
        .contains("are asked there: move heavy parts or the seat forward.");
    Finding fits = only(asking("runabout", "frontShareMax", share + 1e-4, ""), "load.Nell");
    assertThat(fits.verdict()).isEqualTo(Verdict.PASS);
    assertThat(fits.limit()).isCloseTo(share + 1e-4, within(1e-12));
    assertThat(fits.source()).contains("this layout's demand");
    Finding much = only(asking("runabout", "frontShareMax", share - 1e-4, ""), "load.Nell");
    assertThat(much.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(much.text())
        .contains(" At most ")
        .contains("are asked there: move heavy parts or the seat back.");
  }

  private static TestMachine ballast(int xMm, int zMm, int kg) {
    String box =
        "{'kind': 'box', 'frame': 'bx', 'outline': {'points': [['-20 mm', '-20 mm'], ['20 mm', '-20"
            + " mm'], ['20 mm', '20 mm'], ['-20 mm', '20 mm']]}, 'left': '20 mm', 'right': '20 mm',"
            + " 'mass': '"
            + kg
            + " kg'}";
    return TestMachine.runabout().with("parts", "box", box).pin("bx", xMm, zMm);
  }

  @ParameterizedTest
  @CsvSource({"-900, the front wheel lifts at rest", "2600, the rear wheel lifts at rest"})
  void aCentreBeyondAnAxleLiftsTheOtherWheel(int xMm, String words) {
    Finding f = ballast(xMm, 500, 900).finding("lift.Nell").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isNegative();
    assertThat(f.text()).contains("lies outside the wheels").contains(words);
  }

  @ParameterizedTest
  @CsvSource({"40, 25 mm to the left", "-40, 25 mm to the right"})
  void aLoadAtOneSideMovesTheCentreToThatSide(int sign, String words) {
    // nothing else of it is off the middle but its stand, 1.2 kg at 235 mm on the left
    Study plain = TestMachine.asFiled("runabout");
    Standing empty = standings(plain, Stance.Kind.UNLADEN).get(0);
    MassPoint all = sum(plain, empty);
    double target = Math.signum(sign) * 25;
    double kg = 30;
    double at = (target * (all.massKg() + kg) - all.yMm() * all.massKg()) / kg;
    TestMachine off =
        ballast(600, 400, 30)
            .part("box", "left", "'" + (at + 20) + " mm'")
            .part("box", "right", "'" + (20 - at) + " mm'");
    assertThat(off.finding("load.unladen").orElseThrow().text()).contains(words + " of the middle");
  }

  // --- the lowest point

  private static double lowest(Study study, Standing s, List<String> names) {
    OnRoad road = OnRoad.of(study, s);
    double least = Double.POSITIVE_INFINITY;
    for (PartShape shape : s.shapes().values()) {
      if (shape.part() instanceof WheelPart) {
        continue;
      }
      for (Coordinate c : shape.outline().getCoordinates()) {
        double z = road.z(new PointMm(c.x, c.y));
        if (z < least) {
          least = z;
          names.add(0, shape.part().name());
        }
      }
    }
    return least;
  }

  @ParameterizedTest
  @CsvSource({
    "tourer, LADEN, laden, groundClearance",
    "tourer, FULL_BUMP, bump, bumpClearance",
    "runabout, LADEN, laden, groundClearance",
    "runabout, FULL_BUMP, bump, bumpClearance"
  })
  void clearanceIsThatOfTheLowestCorner(
      String name, Stance.Kind kind, String state, String demand) {
    Study study = TestMachine.asFiled(name);
    double least = Double.POSITIVE_INFINITY;
    Standing where = null;
    String part = "";
    for (Standing s : standings(study, kind)) {
      List<String> names = new ArrayList<>();
      double here = lowest(study, s, names);
      if (here < least) {
        least = here;
        where = s;
        part = names.get(0);
      }
    }
    Finding f = finding(study, "clearance." + state, where);
    assertThat(f.value()).isCloseTo(least, within(1e-6));
    assertThat(f.subject()).isEqualTo(part);
    assertThat(f.limit()).isEqualTo(kind == Stance.Kind.LADEN ? 100 : 40);
    assertThat(OnRoad.of(study, where).z(f.where().orElseThrow())).isCloseTo(least, within(1e-6));
    assertThat(f.text()).startsWith(part + " is the lowest part, " + tenths(least) + " mm above");
    Finding held = only(asking(name, demand, least - 0.01, "mm"), "clearance." + state);
    assertThat(held.verdict()).isEqualTo(Verdict.PASS);
    assertThat(held.text()).doesNotContain("raise it");
    Finding fails = only(asking(name, demand, least + 5, "mm"), "clearance." + state);
    assertThat(fails.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(fails.text()).endsWith(": raise it 5 mm.");
  }

  /** With the nose up or down the lowest corner is not that of the lowest box. */
  @ParameterizedTest
  @ValueSource(ints = {60, -60})
  void clearanceIsMeasuredSquareToTheRoad(int noseMm) {
    String box =
        "{'kind': 'box', 'frame': 'bx', 'outline': {'points': [['0 mm', '0 mm'], ['700 mm', '0"
            + " mm'], ['700 mm', '20 mm'], ['0 mm', '20 mm']]}, 'left': '20 mm', 'right': '20 mm',"
            + " 'mass': '1 kg'}";
    TestMachine sloped =
        TestMachine.runabout()
            .with("parts", "box", box)
            .pin("bx", 500, 150)
            .with("measures", "frontRadius", "'" + (258.8 - noseMm) + " mm'");
    Study study = sloped.study();
    for (Standing s : standings(study, Stance.Kind.FULL_BUMP)) {
      List<String> names = new ArrayList<>();
      double least = lowest(study, s, names);
      Finding f = finding(study, "clearance.bump", s);
      assertThat(f.subject()).isEqualTo("box").isEqualTo(names.get(0));
      assertThat(f.value()).isCloseTo(least, within(1e-6));
      double corner = f.where().orElseThrow().x();
      assertThat(corner).isCloseTo(noseMm > 0 ? 500 : 1200, within(1e-6));
    }
  }
}
