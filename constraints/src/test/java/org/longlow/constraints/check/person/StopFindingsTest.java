package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.OnRoad;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.GroundLeg.Corner;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** Feet on the road at a stop by lengths of strings, and forces by moments. */
class StopFindingsTest {

  /** Worked numbers of the reference on effort and control, section 6; 1e-6 of its decimals. */
  @ParameterizedTest
  @CsvSource({"450, 299.147053", "550, 365.624175"})
  void aFootHoldsWhatLeansToIt(double height, double force) {
    assertThat(StopFindings.footN(350, height, Math.toRadians(5), 450, 0))
        .isCloseTo(force, within(1e-6));
  }

  /** Moments about the tyres: a centre 20 mm to the side on a flat road. */
  @Test
  void whatHangsToOneSideIsHeldTheMore() {
    assertThat(StopFindings.footN(200, 500, 0, 400, 20)).isCloseTo(98.0665, within(1e-9));
    assertThat(StopFindings.footN(200, 500, 0, 400, -20)).isCloseTo(-98.0665, within(1e-9));
  }

  /** Worked number of the same section; and 3-4-5 triangles over a corner. */
  @Test
  void aStringIsAsLongAsItsStraights() {
    assertThat(GroundLeg.string(new Corner(0, 395), List.of(), new Corner(320, 0), 250))
        .isCloseTo(566.502, within(5e-4));
    Corner from = new Corner(0, 400);
    Corner to = new Corner(600, 0);
    assertThat(GroundLeg.string(from, List.of(new Corner(300, 400)), to, 0))
        .isCloseTo(800, within(1e-9));
    // what lies under the straight line does not matter
    assertThat(GroundLeg.string(from, List.of(new Corner(300, 199)), to, 0))
        .isCloseTo(Math.hypot(600, 400), within(1e-9));
  }

  private static Finding feet(TestMachine machine) {
    return machine.finding("feet-down.Joss.feet").orElseThrow();
  }

  private static Finding besideABox(boolean right) {
    String far = "'330 mm'";
    String near = "'-200 mm'";
    return feet(
        TestMachine.runabout()
            .pin("boxPin", 300, 260)
            .with(
                "parts",
                "pannier",
                "{'kind': 'box', 'frame': 'boxPin', 'outline': {'points': [['0 mm', '0 mm'],"
                    + " ['700 mm', '0 mm'], ['700 mm', '400 mm'], ['0 mm', '400 mm']]}, 'left': "
                    + (right ? near : far)
                    + ", 'right': "
                    + (right ? far : near)
                    + ", 'mass': '0.001 kg'}"));
  }

  /** A box beside the seat, and its image: the same figures, the other side. */
  @Test
  void aBoxBesideTheSeatKeepsThatFootOut() {
    Finding left = besideABox(false);
    Finding right = besideABox(true);
    assertThat(feet(TestMachine.runabout()).verdict()).isEqualTo(Verdict.PASS);
    assertThat(left.verdict()).isNotEqualTo(Verdict.PASS);
    assertThat(left.text()).contains("past pannier").contains("left foot");
    assertThat(right.text()).isEqualTo(left.text().replace("left foot", "right foot"));
    // its outer face at 330 mm, and half a boot of some 120 mm
    assertThat(left.across().orElseThrow()).isBetween(380.0, 400.0);
    assertThat(right.across().orElseThrow()).isCloseTo(-left.across().orElseThrow(), within(1e-9));
    // the machine leans by its milligrams of box
    assertThat(right.value()).isCloseTo(left.value(), within(1e-3));
  }

  /** Both sides of what a leg bears: heavier by what is told. */
  @Test
  void aMachineTooHeavyForALegFallsOver() {
    Finding light =
        TestMachine.runabout().with("demands", "crossSlope", "'2 deg'").finding(ID).orElseThrow();
    Finding steep =
        TestMachine.runabout().with("demands", "crossSlope", "'12 deg'").finding(ID).orElseThrow();
    assertThat(light.verdict()).isEqualTo(Verdict.PASS);
    assertThat(steep.verdict()).isEqualTo(Verdict.FAIL);
    // it goes with the sine of the slope, but for what the stand weighs at its side
    assertThat(steep.value() / light.value())
        .isBetween(5.4, Math.sin(Math.toRadians(12)) / Math.sin(Math.toRadians(2)));
    assertThat(TestMachine.runabout().with("demands", "crossSlope", "'0 deg'").finding(ID))
        .isEmpty();
  }

  /** Moments about the tyres with both aboard, by the masses and places of that standing. */
  @Test
  void whoSitsBehindIsHeldToo() {
    Study study = TestMachine.asFiled("tourer");
    Finding f =
        study.findings().stream()
            .filter(g -> g.id().equals("hold-up.Bram.slope"))
            .findFirst()
            .orElseThrow();
    assertThat(f.stance().orElseThrow().people()).isEqualTo("Bram and Runa");
    Standing both = study.standing(f.stance().orElseThrow()).orElseThrow();
    double up = OnRoad.of(study, both).z(both.load().total().at());
    double out = f.across().orElseThrow();
    double aside = Math.signum(out) * both.load().total().yMm();
    double slope = Math.toRadians(4);
    double kg = both.load().total().massKg();
    assertThat(f.value())
        .isCloseTo(
            kg * 9.80665 * (up * Math.sin(slope) + aside * Math.cos(slope)) / Math.abs(out),
            within(1e-6));
    assertThat(f.text()).contains("with Bram and Runa stands square to it");
    // nobody rides behind Runa
    assertThat(
            study.findings().stream()
                .filter(g -> g.id().equals("hold-up.Runa.slope"))
                .findFirst()
                .orElseThrow()
                .stance()
                .orElseThrow()
                .people())
        .isEqualTo("Runa");
  }

  private static final String ID = "hold-up.Joss.slope";

  /** Each thing that is said brings the force to what most hold. */
  @Test
  void whatIsSaidOfTheMassBringsTheForceDown() {
    Finding steep =
        TestMachine.runabout().with("demands", "crossSlope", "'7 deg'").finding(ID).orElseThrow();
    assertThat(steep.text())
        .contains("set the foot")
        .contains("alone it would take more than a tenth")
        .doesNotContain("off it at the same height");
    // the force goes with the sine of the slope, but for what the stand weighs at its side
    double deg =
        Math.toDegrees(
            Math.asin(1.05 * Math.sin(Math.toRadians(7)) * steep.limit() / steep.value()));
    Finding f =
        TestMachine.runabout()
            .with("demands", "crossSlope", "'" + deg + " deg'")
            .finding(ID)
            .orElseThrow();
    java.util.regex.Matcher said =
        java.util.regex.Pattern.compile(
                "set the foot ([0-9.]+) mm farther out, or its mass ([0-9.]+) mm lower, or take"
                    + " ([0-9.]+) kg off it at the same height[.]")
            .matcher(f.text());
    assertThat(said.find()).as(f.text()).isTrue();
    java.util.regex.Matcher now =
        java.util.regex.Pattern.compile(
                "machine of ([0-9.]+) kg .* holds [0-9]+ N, ([0-9.]+) mm out")
            .matcher(f.text());
    assertThat(now.find()).as(f.text()).isTrue();
    double kg = Double.parseDouble(now.group(1));
    double out = Double.parseDouble(now.group(2));
    double lean = Math.toRadians(deg);
    double up = f.value() * out / (kg * 9.80665 * Math.sin(lean)); // centre in the middle plane
    double lower = Double.parseDouble(said.group(2));
    assertThat(StopFindings.footN(kg, up - lower, lean, out, 0)).isCloseTo(f.limit(), within(1.0));
    double lighter = kg - Double.parseDouble(said.group(3));
    assertThat(StopFindings.footN(lighter, up, lean, out, 0)).isCloseTo(f.limit(), within(1.0));
    double farther = out + Double.parseDouble(said.group(1));
    assertThat(StopFindings.footN(kg, up, lean, farther, 0)).isCloseTo(f.limit(), within(1.0));
  }
}
