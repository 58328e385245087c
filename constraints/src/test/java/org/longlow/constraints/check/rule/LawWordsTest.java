package org.longlow.constraints.check.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.check.OnRoad;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** What is said of lamps, places and stands in law, and which of several is counted. */
class LawWordsTest {

  private static LampItem lamp(
      String part, LampPart.Kind kind, LampPart.Colour colour, double x, double y, double z) {
    return new LampItem(part, false, kind, colour, x > 800, x, y, z, 40, 30, false);
  }

  private static LampItem tail(String part, double y, double z) {
    return lamp(part, LampPart.Kind.TAIL, LampPart.Colour.RED, -200, y, z);
  }

  private static List<Finding> all(RuleSet rules, LampItem... lamps) {
    return Rulings.findings(
        LawFindings.lampRulings(Set.of(rules), List.of(lamps), -300),
        Condition.empty(Stance.Kind.UNLADEN),
        Map.of());
  }

  private static String text(RuleSet rules, String id, LampItem... lamps) {
    List<Finding> those =
        all(rules, lamps).stream()
            .filter(f -> f.id().equals("law." + rules.id() + "." + id))
            .toList();
    assertThat(those).as(id).hasSize(1);
    return those.get(0).text();
  }

  @Test
  void lampsAreCountedInWords() {
    RuleSet us = Sets.US_FEDERAL;
    assertThat(text(us, "tail.count"))
        .startsWith(
            "tail lamp: none given, 1 to 2 asked; add a part of kind lamp that is a tail (");
    assertThat(text(us, "tail.count", tail("a", 0, 700)))
        .startsWith("tail lamp: 1 given, 1 to 2 asked (");
    assertThat(text(us, "tail.count", tail("a", 0, 700), tail("b", 60, 700), tail("c", -60, 700)))
        .startsWith("tail lamp: 3 given, 1 to 2 asked; leave some out (");
    assertThat(text(us, "front-signal.count"))
        .startsWith(
            "front signal: none given, 2 asked; add a part of kind lamp that is a front-signal");
    LampItem plate = lamp("p", LampPart.Kind.PLATE_LAMP, LampPart.Colour.WHITE, -200, 0, 600);
    LampItem more = lamp("q", LampPart.Kind.PLATE_LAMP, LampPart.Colour.WHITE, -200, 0, 650);
    assertThat(text(us, "plate-lamp.count", plate)).contains("1 given, 1 asked (");
    assertThat(text(us, "plate-lamp.count", plate, more))
        .contains("2 given, 1 asked; whether more are allowed was not read (");
    LampItem fog = lamp("f", LampPart.Kind.FRONT_FOG, LampPart.Colour.WHITE, 1500, 0, 600);
    assertThat(text(Sets.UN_R53, "front-fog.count", fog))
        .startsWith("front fog lamp: 1 given, at most 2 allowed (");
  }

  @Test
  void aLampInTheOtherHalfIsNotCountedAndSaidSo() {
    RuleSet us = Sets.US_FEDERAL;
    LampItem ahead = lamp("a", LampPart.Kind.TAIL, LampPart.Colour.RED, 1500, 0, 700);
    assertThat(text(us, "tail.count", ahead))
        .contains("none given, 1 to 2 asked; add a part")
        .contains("; 1 in the front half not counted (");
    assertThat(text(us, "tail.count", ahead, tail("b", 0, 700)))
        .contains("1 given, 1 to 2 asked; 1 in the front half not counted (");
    LampItem behind = lamp("h", LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 0, 0, 700);
    assertThat(text(us, "headlamp.count", behind)).contains("; 1 in the rear half not counted (");
    // an optional lamp that is astray is told of too
    LampItem fog = lamp("f", LampPart.Kind.FRONT_FOG, LampPart.Colour.WHITE, 0, 0, 600);
    assertThat(text(Sets.UN_R53, "front-fog.count", fog)).contains("1 in the rear half");
  }

  // US: 381 mm to the centre at least; UN: 250 mm to the lower edge, 1500 to the upper
  @Test
  void heightsSayWhichPointAndWhichWay() {
    RuleSet us = Sets.US_FEDERAL;
    assertThat(text(us, "tail.height.a", tail("a", 0, 380)))
        .startsWith(
            "a: the centre is 380 mm above the road, at least 381 mm asked; raise it by 1 mm");
    assertThat(text(us, "tail.height.a", tail("a", 0, 1830)))
        .startsWith(
            "a: the centre is 1830 mm above the road, at most 1828.8 mm asked; lower it by 1.2");
    assertThat(text(us, "tail.height.a", tail("a", 0, 400)))
        .startsWith("a: the centre is 400 mm above the road, at least 381 mm asked (");
    RuleSet un = Sets.UN_R53;
    assertThat(text(un, "tail.height.a", tail("a", 0, 300)))
        .startsWith(
            "a: the lower edge of the lit area is 270 mm above the road, at least 250 mm asked (");
    assertThat(text(un, "tail.height.a", tail("a", 0, 1480)))
        .startsWith("a: the upper edge of the lit area is 1510 mm above the road, at most 1500 mm");
    LampItem steered =
        new LampItem(
            "s",
            false,
            LampPart.Kind.HEADLAMP,
            LampPart.Colour.WHITE,
            true,
            1600,
            0,
            700,
            75,
            60,
            true);
    assertThat(text(us, "headlamp.height.s", steered))
        .contains("above the road, wheel straight ahead, at ");
  }

  /** A pair is one part: it is judged once, and named once. */
  @Test
  void aPairIsSaidOnce() {
    LampItem left = lamp("pair", LampPart.Kind.REAR_SIGNAL, LampPart.Colour.AMBER, -250, 160, 700);
    List<Finding> findings = all(Sets.UN_R53, left, left.mirrored());
    assertThat(findings)
        .filteredOn(f -> f.id().equals("law.un-r53.rear-signal.colour.pair"))
        .hasSize(1);
    assertThat(findings)
        .filteredOn(f -> f.id().startsWith("law.un-r53.rear-signal.ahead"))
        .singleElement()
        .satisfies(f -> assertThat(f.value()).isEqualTo(50));
    assertThat(findings)
        .filteredOn(f -> f.id().equals("law.un-r53.rear-signal.count"))
        .singleElement()
        .satisfies(f -> assertThat(f.subject()).isEqualTo("pair"));
    LampItem other =
        lamp("other", LampPart.Kind.REAR_SIGNAL, LampPart.Colour.AMBER, -250, -160, 700);
    assertThat(all(Sets.UN_R53, left, other))
        .filteredOn(f -> f.id().equals("law.un-r53.rear-signal.count"))
        .singleElement()
        .satisfies(f -> assertThat(f.subject()).isEqualTo("pair, other"));
  }

  @Test
  void distancesSayWhatIsMeasuredAndByHowMuchToMove() {
    LampItem left = lamp("l", LampPart.Kind.FRONT_SIGNAL, LampPart.Colour.AMBER, 1500, 190, 700);
    LampItem right = lamp("r", LampPart.Kind.FRONT_SIGNAL, LampPart.Colour.AMBER, 1500, -190, 700);
    assertThat(text(Sets.US_FEDERAL, "front-signal.apart.l+r", left, right))
        .startsWith(
            "l, r: distance between the centres is 380 mm, at least 406.4 mm asked; move it by 26.4 mm");
    // 380 mm less half of 80 on each side
    assertThat(text(Sets.UN_R53, "front-signal.edges-apart.l+r", left, right))
        .startsWith("l, r: distance between the inner edges is 300 mm, at least 240 mm asked (");
    LampItem far = lamp("b", LampPart.Kind.REAR_SIGNAL, LampPart.Colour.AMBER, 10, 160, 700);
    assertThat(text(Sets.UN_R53, "rear-signal.ahead.b", far))
        .startsWith(
            "b: distance ahead of the rear end is 310 mm, at most 300 mm asked; move it by 10 mm");
  }

  /** The lowest on the left is set against the lowest on the right. */
  @Test
  void sidesAreComparedFromTheLowestUp() {
    RuleSet uk = Sets.UK;
    LampItem a = lamp("a", LampPart.Kind.FRONT_SIGNAL, LampPart.Colour.AMBER, 1500, 200, 800);
    LampItem b = lamp("b", LampPart.Kind.FRONT_SIGNAL, LampPart.Colour.AMBER, 1500, 200, 700);
    LampItem c = lamp("c", LampPart.Kind.FRONT_SIGNAL, LampPart.Colour.AMBER, 1500, -200, 700);
    LampItem d = lamp("d", LampPart.Kind.FRONT_SIGNAL, LampPart.Colour.AMBER, 1500, -200, 803);
    String placement = "front-signal.placement";
    assertThat(text(uk, placement, a, b, c, d))
        .contains("front signal (a, b, c, d): 3 mm between the heights of left and right");
    assertThat(text(uk, placement, a, b, c))
        .contains(
            "front signal: 2 on the left and 1 on the right; the same number belongs on each");
  }

  // --- machines

  private static List<Finding> law(Study study) {
    return study.findings().stream().filter(f -> f.group() == FindingGroup.LAW).toList();
  }

  /** On a machine that slopes the rear end is that along the road. */
  @ParameterizedTest
  @ValueSource(ints = {120, -120, 0})
  void theRearEndIsMeasuredAlongTheRoad(int noseMm) {
    Study study =
        TestMachine.runabout()
            .with("measures", "frontRadius", "'" + (258.8 + noseMm) + " mm'")
            .study();
    Standing s = study.standing(Condition.empty(Stance.Kind.UNLADEN)).orElseThrow();
    OnRoad road = OnRoad.of(study, s);
    double rear = Double.POSITIVE_INFINITY;
    for (var shape : s.shapes().values()) {
      for (Coordinate c : shape.outline().getCoordinates()) {
        rear = Math.min(rear, road.x(new PointMm(c.x, c.y)));
      }
    }
    double ahead = road.x(s.places().pin("rearSignalPin")) - rear;
    assertThat(law(study))
        .filteredOn(f -> f.id().contains("rear-signal.ahead"))
        .singleElement()
        .satisfies(f -> assertThat(f.value()).isCloseTo(ahead, within(1e-6)));
  }

  /** Whatever stance is listed first, it is judged with nobody on it. */
  @Test
  void lawIsAskedOfTheMachineWithNobodyOnIt() {
    Study study = Sat.runabout();
    List<Standing> turned = new ArrayList<>(study.standings());
    Collections.reverse(turned);
    List<Finding> findings = LawFindings.of(study.layout(), study.sittings(), turned);
    assertThat(findings).isEqualTo(law(study).stream().map(f -> f).toList());
    assertThat(findings).allMatch(f -> f.stance().orElseThrow().kind() == Stance.Kind.UNLADEN);
    Finding tail =
        findings.stream()
            .filter(f -> f.id().endsWith("tail.height.tailLamp"))
            .findFirst()
            .orElseThrow();
    assertThat(tail.where()).contains(study.placed().places().pin("tailPin"));
  }

  @Test
  void onlyTheRulesInForceAreAsked() {
    Study us = TestMachine.runabout().with("demands", "rules", "['us']").study();
    assertThat(law(us)).isNotEmpty().noneMatch(f -> f.text().contains("UN R53"));
    assertThat(law(us))
        .filteredOn(f -> f.id().length() > 3)
        .allMatch(f -> f.id().startsWith("law.us."));
  }

  /** Each rider presses the seat and the springs in another way; the highest grips count. */
  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout"})
  void gripsAreMeasuredAboveTheSeatUnderEachRider(String name) {
    Study study = TestMachine.asFiled(name);
    double highest = Double.NEGATIVE_INFINITY;
    String who = "";
    for (Sitting sitting : study.sittings()) {
      if (!sitting.occupant().rides()) {
        continue;
      }
      Standing s = study.standing(Condition.laden(List.of(sitting.occupant()))).orElseThrow();
      OnRoad road = OnRoad.of(study, s);
      var pan = Sat.seated(sitting).pan();
      double diameter = name.equals("tourer") ? 33 : 32;
      double above =
          road.z(s.places().pin("grip")) + diameter / 2 - road.z(pan.centre()) - pan.remainingMm();
      if (above > highest) {
        highest = above;
        who = sitting.person();
      }
    }
    Finding f =
        law(study).stream()
            .filter(x -> x.id().equals("law.us.handlebar"))
            .findFirst()
            .orElseThrow();
    assertThat(f.value()).isCloseTo(highest, within(1e-6));
    assertThat(f.text()).contains("above the seat under " + who + ";");
    assertThat(f.text().contains(", so lower it or ask your state")).isEqualTo(highest > 381);
  }

  @ParameterizedTest
  @CsvSource({"600, false", "900, true"})
  void highGripsAreToldToBeLowered(int barMm, boolean high) {
    Study study =
        TestMachine.runabout()
            .with(
                "limits",
                "gripHeight",
                "{'limit': 'height', 'pins': ['grip'], 'from': '" + barMm + " mm'}")
            .study();
    law(study).stream()
        .filter(x -> x.id().equals("law.us.handlebar"))
        .forEach(
            f ->
                assertThat(f.text().contains(", so lower it or ask your state"))
                    .isEqualTo(f.value() > 381));
    assertThat(law(study)).anyMatch(x -> x.id().equals("law.us.handlebar"));
  }

  // seen from the side the stowed foot must be behind and above where it stands
  @ParameterizedTest
  @CsvSource({"385, 165, true", "700, 165, false", "385, -40, false"})
  void aStandFoldsBackAndUp(double x, double z, boolean folds) {
    Finding f =
        law(TestMachine.runabout().pin("standStowed", x, z).study()).stream()
            .filter(l -> l.id().equals("law.us.stand.sideStand"))
            .findFirst()
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(folds ? Verdict.CAUTION : Verdict.FAIL);
  }

  @Test
  void withoutASeatFootRestsAreNotJudged() {
    Study study = TestMachine.runabout().lacking("pan").study();
    Finding f =
        law(study).stream()
            .filter(l -> l.id().equals("law.us.foot-rest.none"))
            .findFirst()
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).startsWith("Foot rests: no seat is given to judge");
    assertThat(f.subject()).isEqualTo("foot rests");
  }
}
