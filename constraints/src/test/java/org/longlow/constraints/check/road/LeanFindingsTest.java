package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.OnRoad;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.ride.LeanClearance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** What touches first on each side of a rigid machine, corner by corner, and how that is said. */
class LeanFindingsTest {

  private static TestMachine rigid() {
    return TestMachine.runabout()
        .part("front", "bump", "'0 mm'")
        .part("front", "droop", "'0 mm'")
        .part("swingarm", "bump", "'0 mm'")
        .part("swingarm", "droop", "'0 mm'");
  }

  private static List<Standing> laden(Study study) {
    return study.standings().stream().filter(s -> s.kind() == Stance.Kind.LADEN).toList();
  }

  private static Optional<Finding> maybe(List<Finding> findings, String id) {
    return findings.stream().filter(f -> f.id().equals(id)).findFirst();
  }

  private static Finding of(Study study, String id) {
    return maybe(study.findings(), id).orElseThrow();
  }

  /** The least roll at which a corner of any of these bodies is on the road, deg. */
  private static double touches(Study study, Standing s, List<Prism> body, boolean left) {
    OnRoad road = OnRoad.of(study, s);
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    LeanClearance lean =
        new LeanClearance(
            road.wheelbaseMm(),
            new LeanClearance.Wheel(road.frontRadiusMm(), wheels.frontTyre().sectionRadiusMm()),
            new LeanClearance.Wheel(road.rearRadiusMm(), wheels.rearTyre().sectionRadiusMm()));
    double least = Double.POSITIVE_INFINITY;
    for (Prism prism : body) {
      double y = left ? prism.across().to() : -prism.across().from();
      if (y <= 0) {
        continue;
      }
      if (!prism.isFull()) {
        least = Math.min(least, touches(road, wheels, prism, left));
        continue;
      }
      for (Coordinate c : prism.outline().getCoordinates()) {
        PointMm p = new PointMm(c.x, c.y);
        LeanClearance.TouchDown t = lean.touchDown(road.x(p), y, road.z(p));
        if (t.touches()) {
          least = Math.min(least, Math.toDegrees(t.rollRad()));
        }
      }
    }
    return least;
  }

  /** The least roll at which what is round is on the road, by steps and then by halves, deg. */
  private static double touches(OnRoad on, Wheels wheels, Prism round, boolean left) {
    LeanClearance.Wheel front =
        new LeanClearance.Wheel(on.frontRadiusMm(), wheels.frontTyre().sectionRadiusMm());
    LeanClearance.Wheel rear =
        new LeanClearance.Wheel(on.rearRadiusMm(), wheels.rearTyre().sectionRadiusMm());
    DoublePredicate clear =
        deg -> {
          LeanClearance.Road road =
              LeanClearance.road(on.wheelbaseMm(), front, rear, Math.toRadians(deg));
          return lowest(on, road, round, left ? 1 : -1) > 0;
        };
    double low = 0;
    while (clear.test(low)) {
      low += 0.25;
      if (low > 61) {
        return Double.POSITIVE_INFINITY;
      }
    }
    double under = low - 0.25;
    for (int i = 0; i < 40; i++) {
      double half = (under + low) / 2;
      if (clear.test(half)) {
        under = half;
      } else {
        low = half;
      }
    }
    return Math.max(0, low);
  }

  /** Downwards is where heights of points a millimetre apart say. */
  private static double lowest(OnRoad on, LeanClearance.Road road, Prism round, int side) {
    double here = height(on, road, 0, 0, 0, side);
    double[] down = {
      here - height(on, road, 1, 0, 0, side),
      here - height(on, road, 0, 1, 0, side),
      here - height(on, road, 0, 0, 1, side)
    };
    double least = Double.POSITIVE_INFINITY;
    for (Piece piece : round.pieces()) {
      double[] at = new double[3];
      piece.farthest(down, at);
      least = Math.min(least, height(on, road, at[0], at[1], at[2], side));
    }
    return least;
  }

  private static double height(
      OnRoad on, LeanClearance.Road road, double x, double y, double z, int side) {
    PointMm p = new PointMm(x, z);
    return road.heightMm(on.x(p), side * y, on.z(p));
  }

  @Test
  void eachThingTouchesWithItsFirstCorner() {
    Study study = rigid().study();
    Standing s = laden(study).get(0);
    int listed = 0;
    for (boolean left : new boolean[] {true, false}) {
      String side = left ? "left" : "right";
      double first = Double.POSITIVE_INFINITY;
      for (PartShape shape : s.shapes().values()) {
        String name = shape.part().name();
        Optional<Finding> f = maybe(study.findings(), "lean." + side + "." + name);
        if (shape.part() instanceof WheelPart) {
          assertThat(f).isEmpty();
          continue;
        }
        double deg = touches(study, s, shape.prisms(), left);
        assertThat(f.isPresent()).as(name + " " + deg).isEqualTo(deg <= 60);
        if (f.isPresent()) {
          listed++;
          assertThat(f.get().value()).as(name).isCloseTo(deg, within(1e-4));
          assertThat(f.get().text())
              .startsWith("Leaning to the " + side + ", " + name + " touches the road at ");
        }
        first = Math.min(first, deg);
      }
      for (Standing each : laden(study)) {
        for (Rider.Seated person : each.rider().seated()) {
          double deg = touches(study, each, person.body(), left);
          Optional<Finding> f =
              maybe(study.findings(), "lean." + side + "." + person.who().person() + ".body");
          assertThat(f.isPresent()).isEqualTo(deg <= 60);
          f.ifPresent(x -> assertThat(x.value()).isCloseTo(deg, within(1e-4)));
          first = Math.min(first, deg);
        }
      }
      Finding headline = of(study, "lean." + side);
      assertThat(headline.value()).isCloseTo(first, within(1e-4));
      assertThat(headline.text())
          .startsWith("Leaning to the " + side + ", the first hard thing is " + headline.subject())
          .contains("; 32° are asked");
    }
    assertThat(listed).isGreaterThan(4);
  }

  /** Seat of the corner that touches: on the road at that lean. */
  @Test
  void thePlaceThatIsShownIsTheOneThatTouches() {
    Study study = rigid().study();
    Standing s = laden(study).get(0);
    for (boolean left : new boolean[] {true, false}) {
      Finding f = of(study, left ? "lean.left" : "lean.right");
      PartShape shape = s.shapes().get(f.subject());
      PointMm at = f.where().orElseThrow();
      List<Prism> there = new ArrayList<>();
      for (Prism p : shape.prisms()) {
        Geometry here = p.outline().getFactory().createPoint(new Coordinate(at.x(), at.z()));
        if (!p.isFull() && p.outline().distance(here) < 0.1) { // its arcs are chords
          there.add(p);
          continue;
        }
        for (Coordinate c : p.outline().getCoordinates()) {
          if (Math.hypot(c.x - at.x(), c.y - at.z()) < 1e-9) {
            there.add(p);
          }
        }
      }
      assertThat(there).isNotEmpty();
      assertThat(touches(study, s, there, left)).isCloseTo(f.value(), within(1e-4));
    }
  }

  private static double figure(String text, String pattern) {
    Matcher m = Pattern.compile(pattern).matcher(text);
    assertThat(m.find()).as(text).isTrue();
    return Double.parseDouble(m.group(1));
  }

  /** A turn of 20 m at a speed needs v²/r to the side. */
  @ParameterizedTest
  @ValueSource(strings = {"lean.left", "lean.right"})
  void aLeanIsSaidAsATurn(String id) {
    for (String machine : List.of("tourer", "runabout")) {
      Finding f = of(TestMachine.asFiled(machine), id);
      double kmh = figure(f.text(), "a turn of 20 m radius at ([0-9]+) km/h");
      double g = figure(f.text(), ", ([0-9.]+) g sideways");
      assertThat(3.6 * Math.sqrt(g * 9.80665 * 20)).isCloseTo(kmh, within(0.8));
      // tyres are wide and roll to the side, so the machine leans more than the turn needs
      assertThat(Math.toDegrees(Math.atan(g))).isLessThan(f.value());
      assertThat(Math.toDegrees(Math.atan(g))).isGreaterThan(0.7 * f.value());
    }
  }

  @Test
  void leanIsHeldToWhatIsAsked() {
    Study usual = rigid().study();
    Finding first = of(usual, "lean.left");
    for (double off : new double[] {-0.01, 0.01}) {
      Study study = rigid().with("demands", "lean", "'" + (first.value() + off) + " deg'").study();
      Finding f = of(study, "lean.left");
      assertThat(f.verdict()).isEqualTo(off > 0 ? Verdict.FAIL : Verdict.PASS);
      assertThat(f.limit()).isCloseTo(first.value() + off, within(1e-9));
      assertThat(f.text().matches(".* are asked: raise it .* mm farther in\\..*"))
          .isEqualTo(off > 0);
      assertThat(f.text().contains("are asked. That lean")).isEqualTo(off < 0);
      assertThat(f.source()).contains("this layout's demand");
    }
  }

  /** Of several crews the one that lets it touch first is told, and no other. */
  @Test
  void ofSeveralCrewsTheWorstIsTold() {
    Study study = TestMachine.asFiled("tourer");
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    Map<String, Finding> worst = new LinkedHashMap<>();
    List<Standing> crews = laden(study);
    assertThat(crews).hasSize(3);
    for (Standing s : crews) {
      for (Finding f : new LeanFindings(study.layout(), wheels).of(List.of(s))) {
        worst.merge(f.id(), f, (a, b) -> a.value() <= b.value() ? a : b);
      }
    }
    List<Finding> together = new LeanFindings(study.layout(), wheels).of(crews);
    assertThat(together).hasSameSizeAs(worst.values());
    for (Finding f : together) {
      assertThat(f.value()).as(f.id()).isCloseTo(worst.get(f.id()).value(), within(1e-5));
      assertThat(f.stance()).as(f.id()).isEqualTo(worst.get(f.id()).stance());
    }
    // nobody is on it, so nothing is said
    List<Standing> empty =
        study.standings().stream().filter(s -> s.kind() != Stance.Kind.LADEN).toList();
    assertThat(new LeanFindings(study.layout(), wheels).of(empty)).isEmpty();
  }

  private static Standing with(Standing s, Map<String, PartShape> shapes) {
    return new Standing(
        s.condition(),
        Rider.NOBODY,
        s.frontTravelMm(),
        s.rearTravelMm(),
        s.places(),
        s.ground(),
        shapes,
        Map.of(),
        s.load(),
        s.springs());
  }

  @Test
  void wheelsAloneTouchNothing() {
    Study study = rigid().study();
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    Standing s = laden(study).get(0);
    Map<String, PartShape> bare = new LinkedHashMap<>(s.shapes());
    bare.values().removeIf(p -> !(p.part() instanceof WheelPart));
    List<Finding> clear = new LeanFindings(study.layout(), wheels).of(List.of(with(s, bare)));
    assertThat(clear).extracting(Finding::id).containsExactly("lean.left", "lean.right");
    assertThat(clear).allMatch(f -> f.verdict() == Verdict.PASS);
    assertThat(clear.get(0).text())
        .isEqualTo("Leaning to the left, nothing but tyres touches the road up to 60°.");
    assertThat(clear.get(1).text()).startsWith("Leaning to the right, nothing but tyres");
    // with a stand on the left the right stays clear
    bare.put("sideStand", s.shapes().get("sideStand"));
    List<Finding> one = new LeanFindings(study.layout(), wheels).of(List.of(with(s, bare)));
    assertThat(one)
        .extracting(Finding::id)
        .containsExactlyInAnyOrder("lean.left.sideStand", "lean.left", "lean.right");
    assertThat(maybe(one, "lean.right").orElseThrow().value()).isNaN();
  }

  /** Where only what folds touches, the row on all that is hard does not deny it. */
  @Test
  void whatFoldsIsNotDenied() {
    Study study = rigid().part("boards", "folds", "true").part("boards", "y", "'420 mm'").study();
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    Standing s = laden(study).get(0);
    Map<String, PartShape> bare = new LinkedHashMap<>(s.shapes());
    bare.values().removeIf(p -> !(p.part() instanceof WheelPart));
    bare.put("boards", s.shapes().get("boards"));
    List<Finding> all = new LeanFindings(study.layout(), wheels).of(List.of(with(s, bare)));
    for (String side : List.of("left", "right")) {
      assertThat(maybe(all, "lean." + side + ".boards")).isPresent();
      assertThat(maybe(all, "lean." + side).orElseThrow().text())
          .contains("nothing but tyres and what folds touches");
    }
  }

  /** What lies in the road with the machine upright touches at no lean at all. */
  @Test
  void whatIsInTheRoadTouchesUpright() {
    TestMachine m = rigid();
    Boxes.add(m, "keel", Boxes.at(600, -5, 700, 20), 30, 30, "");
    Study study = m.study();
    for (String side : List.of("left", "right")) {
      Finding f = of(study, "lean." + side);
      assertThat(f.subject()).isEqualTo("keel");
      assertThat(f.value()).isZero();
      assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    }
  }
}
