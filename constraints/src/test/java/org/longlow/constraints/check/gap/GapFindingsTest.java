package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.TestMachine;

/** Gaps between boxes, a wheel that rises and somebody seated, from where they are drawn. */
class GapFindingsTest {

  /** Two boxes far above the machine, side by side with a gap between them. */
  private static TestMachine two(double gapMm, String more) {
    return two("one", "two", gapMm, more);
  }

  private static TestMachine two(String one, String two, double gapMm, String more) {
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, one, Boxes.at(400, 1900, 500, 2000), 50, 50, "");
    return Boxes.add(m, two, Boxes.at(500 + gapMm, 1900, 600 + gapMm, 2000), 50, 50, more);
  }

  @ParameterizedTest
  @CsvSource({
    "39.9, PASS, 'one and two are 39.9 mm apart; 3 mm are asked.'",
    "3, PASS, 'one and two are 3 mm apart; 3 mm are asked.'",
    "2.9, FAIL, 'one and two are 2.9 mm apart; 3 mm are asked between them: move'",
    "0, FAIL, 'one and two touch; 3 mm are asked between them: move'",
    "-5, FAIL, 'one and two run into each other by 5 mm; 3 mm are asked between them: move'"
  })
  void aGapIsHeldToWhatIsAsked(double gap, Verdict verdict, String words) {
    Finding f = two(gap, "").finding("gap.one.two").orElseThrow();
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.value()).isCloseTo(gap, within(1e-9));
    assertThat(f.limit()).isEqualTo(3);
    assertThat(f.text()).startsWith(words);
    assertThat(f.stance()).isEmpty();
    assertThat(f.where().orElseThrow().x()).isBetween(494.0, 545.0);
  }

  @Test
  void whatIsFarApartIsNotListed() {
    assertThat(two(40.1, "").finding("gap.one.two")).isEmpty();
    assertThat(two(-5, ", 'touches': ['one']").finding("gap.one.two")).isEmpty();
  }

  /** However much is asked, what is nearer than that fails. */
  @ParameterizedTest
  @CsvSource({"159.9, true", "160.1, false", "300, false"})
  void whatIsAskedIsLookedForAsFar(double gap, boolean fails) {
    TestMachine m = two(gap, "").with("demands", "gap", "'160 mm'");
    Optional<Finding> f = m.finding("gap.one.two");
    assertThat(f.map(Finding::verdict))
        .isEqualTo(fails ? Optional.of(Verdict.FAIL) : Optional.empty());
  }

  /** Of three parts too close two fail, of none the number of pairs is said. */
  @Test
  void pairsAreCountedWhereNoneIsTooClose() {
    TestMachine machine = two(20, "");
    List<Finding> gaps = machine.findings().stream().filter(f -> f.id().startsWith("gap")).toList();
    int parts = machine.layout().parts().size();
    long near =
        gaps.stream().filter(f -> f.about().parts().size() == 2 && f.who().isEmpty()).count();
    Finding all = gaps.stream().filter(f -> f.id().equals("gap")).findFirst().orElseThrow();
    assertThat(all.verdict()).isEqualTo(Verdict.PASS);
    assertThat(all.text())
        .isEqualTo(
            parts * (parts - 1) / 2
                + " pairs of parts looked at in every stance; "
                + near
                + " come within 40 mm, none of them too close.");
    assertThat(two(1, "").finding("gap")).isEmpty();
  }

  /** Whatever is said to be done does, and a tenth less does not. */
  @ParameterizedTest
  @CsvSource({"2, forward", "-4, forward"})
  void aMoveThatIsSaidClears(double gap, String way) {
    Finding f = two(gap, "").finding("gap.one.two").orElseThrow();
    Matcher m = Pattern.compile("move (\\w+) ([0-9.]+) mm (forward|back)").matcher(f.text());
    assertThat(m.find()).as(f.text()).isTrue();
    double by = Double.parseDouble(m.group(2)) * (m.group(3).equals("forward") ? 1 : -1);
    double apart = m.group(1).equals("two") ? by : -by;
    assertThat(apart).isCloseTo(3 - gap, within(0.11)).isGreaterThanOrEqualTo(3 - gap);
    assertThat(f.text()).contains("; or list it under touches if they are meant to meet.");
  }

  /** The tyre of 265.8 mm rises by 50 mm; what stands over it is looked at there. */
  @ParameterizedTest
  @CsvSource({"aBox, 20, PASS", "aBox, 14, FAIL", "zBox, 20, PASS", "zBox, 14, FAIL"})
  void aWheelIsLookedAtWhereItIsClosest(String name, double gap, Verdict verdict) {
    double z = 2 * 265.8 + 50 + gap;
    TestMachine m =
        Boxes.add(TestMachine.runabout(), name, Boxes.at(-10, z, 10, z + 6), 20, 20, "");
    String id = name.startsWith("a") ? "gap.aBox.rearWheel" : "gap.rearWheel.zBox";
    Finding f = m.finding(id).orElseThrow();
    // the wheel goes up on an arc of the swingarm, some 4 mm aside
    assertThat(f.value()).isCloseTo(gap, within(0.1));
    assertThat(f.limit()).isEqualTo(15);
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.stance()).contains(Condition.empty(Stance.Kind.FULL_BUMP));
    if (verdict == Verdict.FAIL) {
      // a wheel is where its swingarm has it: the box is what can be moved
      assertThat(f.text()).contains("move " + name + " ").contains("1 mm up");
    }
  }

  @ParameterizedTest
  @CsvSource({"pan, true, HOT", "pan, false, GAP", "charger, true, GAP"})
  void heatAsksForMoreOfWhatSuffersFromIt(String other, boolean hot, String key) {
    TestMachine m = TestMachine.runabout().part("controller", "hot", String.valueOf(hot));
    GapRules rules = new GapRules(m.layout(), m.study().placed().places());
    double asked = rules.limitMm("controller", other, rules.demand("controller", other));
    assertThat(asked).isEqualTo(key.equals("HOT") ? 25 : 3);
  }

  @Test
  void aLimitOfTheLayoutGoesBeforeTheDemand() {
    TestMachine m =
        two(20, ", 'touches': ['one']")
            .with("limits", "far", "{'limit': 'gap', 'parts': ['two', 'one'], 'from': '20 mm'}");
    Finding f = m.finding("gap.one.two").orElseThrow();
    assertThat(f.limit()).isEqualTo(20);
    assertThat(f.source()).contains("this layout's own limit");
    assertThat(f.text()).doesNotContain("touches");
  }

  // --- people

  private static double toNell(Geometry box, Interval across) {
    double least = Double.POSITIVE_INFINITY;
    for (Prism p : Sat.nell().prisms()) {
      if (p.across().gap(across) < 0) {
        least = Math.min(least, p.outline().distance(box));
      }
    }
    return least;
  }

  /** A box ahead of the knees: its gap is the distance of two outlines in the elevation. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void peopleKeepTheirDistanceAsDrawn(boolean hot) {
    double asked = hot ? 25 : 10;
    int passed = 0;
    int failed = 0;
    double head = Sat.nell().posture().orElseThrow().vertex().z();
    double x = Sat.nell().posture().orElseThrow().vertex().x();
    for (double up : new double[] {30, 48, 55, 62, 75}) {
      double z = head + up;
      Finding f =
          Boxes.add(
                  TestMachine.runabout(),
                  "roof",
                  Boxes.at(x - 200, z, x + 200, z + 10),
                  150,
                  150,
                  hot ? ", 'hot': true" : "")
              .finding("gap.roof.Nell")
              .orElse(null);
      Geometry box = new GeometryFactory().toGeometry(new Envelope(x - 200, x + 200, z, z + 10));
      double gap = toNell(box, new Interval(-150, 150));
      if (f == null) {
        assertThat(gap).isGreaterThan(40);
        continue;
      }
      if (gap > 0) {
        assertThat(f.value()).isCloseTo(gap, within(1e-6));
      }
      assertThat(f.limit()).isEqualTo(asked);
      assertThat(f.verdict()).isEqualTo(gap >= asked ? Verdict.PASS : Verdict.FAIL);
      assertThat(f.stance()).contains(Sat.STANCE);
      if (f.verdict() == Verdict.FAIL) {
        failed++;
        assertThat(f.text()).contains("move roof ").contains(" up");
      } else {
        passed++;
      }
    }
    assertThat(passed).isPositive();
    assertThat(failed).isPositive();
  }

  @Test
  void eachPersonIsAskedForThemselves() {
    double head = Sat.nell().posture().orElseThrow().vertex().z();
    TestMachine low =
        Boxes.add(
            TestMachine.runabout(), "roof", Boxes.at(0, head + 75, 500, head + 85), 150, 150, "");
    // he is taller by 150 mm
    assertThat(low.finding("gap.roof.Joss").map(Finding::verdict)).contains(Verdict.FAIL);
    assertThat(low.finding("gap.roof.Nell").map(Finding::verdict))
        .isNotEqualTo(Optional.of(Verdict.FAIL));
  }
}
