package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.machine.linkage.FourBar;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.machine.linkage.RockerLink;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/**
 * A rocker between arm and shock, against the four-bar linkage of sections, against lengths that
 * nothing changes, and against the work that spring and wheel do.
 */
class RockerTest {

  private static TestMachine tourer(String stroke, double rockerX) {
    return TestMachine.tourer()
        .with("pins", "rodEnd", "{'at': ['250 mm', '330 mm'], 'with': 'rear-wheel'}")
        .with("pins", "rockerPivot", "['430 mm', '480 mm']")
        .with("pins", "rodPin", "['" + rockerX + " mm', '500 mm']")
        .with("pins", "shockPin", "['450 mm', '560 mm']")
        .with("pins", "shockTop", "['650 mm', '560 mm']")
        .field(
            "parts",
            "swingarm",
            "shock",
            "{'foot': 'shockPin', 'top': 'shockTop', 'stroke': '"
                + stroke
                + "', 'spring': '120 N/mm', 'rocker': {'pivot': 'rockerPivot', 'rod': 'rodPin',"
                + " 'end': 'rodEnd'}}");
  }

  private static final TestMachine MACHINE = tourer("60 mm", 350).without("swingarm", "rate");

  private static final Places DRAWN = MACHINE.study().placed().places();

  private static Wheels wheels() {
    return Wheels.of(MACHINE.study().layout(), DRAWN);
  }

  /** A point of the elevation. */
  private static PointMm at(double x, double z) {
    return new PointMm(x, z);
  }

  @ParameterizedTest
  @CsvSource({"-0.3, 1", "0.2, 1", "-0.2, -1", "0.3, -1"})
  void itTurnsAsTheOutputLinkOfAFourBarLinkage(double turn, int flip) {
    PointMm arm = at(438, flip * 350);
    PointMm end = at(250, flip * 330);
    PointMm pivot = at(430, flip * 480);
    PointMm rod = at(350, flip * 500);
    PointMm there = new FourBar(arm, pivot, end, rod, 1).pose(turn).outputPin();
    RigidMotion motion = new RockerLink(pivot, rod, end).motion(pivot, end.turnedAbout(arm, turn));
    assertThat(motion.apply(rod).distance(there)).isLessThan(1e-9);
    assertThat(motion.apply(pivot).distance(pivot)).isLessThan(1e-9);
  }

  @Test
  void roundAParallelogramItTurnsAsFarAsItsOtherLever() {
    RockerLink link = new RockerLink(at(0, 0), at(0, 100), at(300, 100));
    PointMm end = at(300, 100).turnedAbout(at(300, 0), 0.7);
    assertThat(link.motion(at(0, 0), end).turnRad()).isCloseTo(0.7, within(1e-12));
    // 300 mm of rod and 100 of lever part at 400 and fold at 200
    assertThat(link.reaches(at(0, 0), at(399.9, 0))).isTrue();
    assertThat(link.reaches(at(0, 0), at(400.1, 0))).isFalse();
    assertThat(link.reaches(at(0, 0), at(0, 200.1))).isTrue();
    assertThat(link.reaches(at(0, 0), at(0, 199.9))).isFalse();
    assertThat(RockerLink.turns(at(0, 0), at(0, 100), at(0, 400))).isFalse();
  }

  @Test
  void rodAndRockerKeepTheirSizesInEveryStance() {
    List<Double> lengths = new ArrayList<>();
    for (Standing s : MACHINE.study().standings()) {
      Places p = s.places();
      for (String[] pair :
          new String[][] {
            {"rodPin", "rodEnd"},
            {"rodPin", "rockerPivot"},
            {"shockPin", "rockerPivot"},
            {"shockPin", "rodPin"}
          }) {
        assertThat(p.pin(pair[0]).distance(p.pin(pair[1])))
            .isCloseTo(DRAWN.pin(pair[0]).distance(DRAWN.pin(pair[1])), within(1e-9));
      }
      lengths.add(p.pin("shockPin").distance(p.pin("shockTop")));
    }
    double spread =
        lengths.stream().mapToDouble(d -> d).max().orElseThrow()
            - lengths.stream().mapToDouble(d -> d).min().orElseThrow();
    Finding stroke = MACHINE.finding("stroke.swingarm").orElseThrow();
    assertThat(stroke.verdict()).isEqualTo(Verdict.PASS);
    // full bump and full droop are two of the stances
    assertThat(stroke.value()).isCloseTo(spread, within(1e-9)).isGreaterThan(30);
    assertThat(
            tourer(spread - 0.01 + " mm", 350).finding("stroke.swingarm").orElseThrow().verdict())
        .isEqualTo(Verdict.FAIL);
  }

  @Test
  void theSpringTakesUpTheWorkOfTheWheel() {
    Suspension rear = wheels().rearSuspension();
    double from = -rear.droopMm();
    double step = (rear.bumpMm() + rear.droopMm()) / 2000;
    double work = 0;
    for (int k = 0; k < 2000; k++) {
      work += step * rear.forceN(from + (k + 0.5) * step);
    }
    double longest = length(from);
    double closes = longest - length(rear.bumpMm());
    // what it presses with at full droop, by the share of the axle's way that it closes there
    double first = rear.preloadN() * 0.02 / (length(from - 0.01) - length(from + 0.01));
    // forces are straight between 48 steps: a part in ten thousand
    assertThat(work).isCloseTo(first * closes + 120 * closes * closes / 2, within(1e-4 * work));
    // and it rests where the spring bears what is on it: any linear spring through that place does
    assertThat(rear.restUnder(rear.forceN(5)).travelMm()).isCloseTo(5, within(1e-9));
  }

  private static double length(double travel) {
    Places p = wheels().moved(0, travel);
    return p.pin("shockPin").distance(p.pin("shockTop"));
  }

  @Test
  void sagIsFoundFromItWhereNobodySaysTheRate() {
    assertThat(MACHINE.finding("sag.unknown")).isEmpty();
    Finding rate = MACHINE.finding("wheel-rate.swingarm").orElseThrow();
    assertThat(rate.verdict()).isEqualTo(Verdict.PASS);
    assertThat(rate.value()).isCloseTo((length(-0.5) - length(0.5)), within(1e-4));
    assertThat(MACHINE.study().findings()).anyMatch(f -> f.id().startsWith("sag.rear"));
  }

  @Test
  void whatCannotTurnIsSaidAndNothingIsWorkedOutFromIt() {
    TestMachine loose =
        tourer("60 mm", 350)
            .without("swingarm", "rate")
            .with("pins", "rodEnd", "['250 mm', '330 mm']");
    Finding f = loose.finding("stroke.swingarm").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).contains("a rocker that no rod turns");
    assertThat(loose.finding("sag.unknown")).isPresent();
    // a lever of 20 mm is drawn into line with its rod before the wheel is up or down
    TestMachine small = tourer("60 mm", 428);
    Finding jams = small.finding("stroke.swingarm").orElseThrow();
    assertThat(jams.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(small.finding("wheel-rate.swingarm")).isEmpty();
    assertThat(jams.text()).contains("in line before its wheel");
  }

  /** Each of the three that no part is drawn for is told. */
  @Test
  void rodAndRockerThatAreNoPartsAreTold() {
    TestMachine machine = tourer("60 mm", 350);
    assertThat(machine.finding("undrawn.swingarm").orElseThrow().text())
        .contains("the shock between shockPin and shockTop")
        .contains("the rod of its rocker between rodPin and rodEnd")
        .contains("its rocker between rockerPivot and rodPin");
    machine.with("parts", "rod", Boxes.rail("rodPin", "rodEnd", 16, 0, ""));
    assertThat(machine.finding("undrawn.swingarm").orElseThrow().text()).doesNotContain("the rod");
  }
}
