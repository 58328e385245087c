package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.start.Answers;
import org.longlow.constraints.start.FirstMachine;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;

/** All lamps that the rules ask for, and single ones, as they come out of the drawer. */
class LampSetTest {

  private static final List<List<String>> RULES =
      List.of(List.of("us"), List.of("un-r53"), List.of("uk"), List.of("us", "un-r53", "uk"));

  private static Layout made(FirstMachine.Outcome outcome) {
    return ((FirstMachine.Made) outcome).layout();
  }

  private static Layout wheels(List<String> rules) {
    return made(
        FirstMachine.wheels(
            new Answers.Builder().law(rules).answers(), Optional.empty(), Units.MM));
  }

  /** Returns a machine without its lamps and what only carried them. */
  private static Layout dark(Layout layout) {
    Layout dark = layout;
    for (LampPart lamp : layout.parts(LampPart.class).toList()) {
      dark = Entries.without(dark, new Entries.Entry("parts", lamp.name())).layout();
    }
    return dark;
  }

  private static Set<String> failing(Study study, FindingGroup group) {
    return study.findings().stream()
        .filter(f -> f.group() == group && f.verdict() == Verdict.FAIL)
        .map(Finding::text)
        .collect(Collectors.toSet());
  }

  static Stream<Arguments> machines() {
    List<Arguments> machines = new ArrayList<>();
    for (List<String> rules : RULES) {
      machines.add(Arguments.of("wheels " + rules, wheels(rules)));
      machines.add(
          Arguments.of(
              "first " + rules,
              dark(made(FirstMachine.of(new Answers.Builder().law(rules).answers())))));
    }
    machines.add(Arguments.of("heron", dark(Demos.layout("heron"))));
    return machines.stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("machines")
  void whatIsLackingIsThereAndPassesAtOnce(String name, Layout dark) {
    Study before = Study.of(dark);
    assertThat(failing(before, FindingGroup.LAW)).anyMatch(text -> text.contains("none given"));
    Layout lit = Tried.of(dark, LampSet.edit());
    Study after = Study.of(lit);
    assertThat(failing(after, FindingGroup.LAW))
        .isSubsetOf(failing(before, FindingGroup.LAW))
        .noneMatch(text -> text.contains("given"));
    assertThat(failing(after, FindingGroup.GAPS)).isSubsetOf(failing(before, FindingGroup.GAPS));
    assertThat(LampSet.lacking(lit, after.placed().places())).isEmpty();
    assertThat(Tried.refusal(lit, LampSet.edit())).contains("no lamp that is not there");
  }

  @Test
  void singleIndicatorsGetTheirOtherHalf() {
    Layout bare = wheels(List.of("us"));
    Layout lit = Tried.of(bare, LampSet.edit());
    Layout half = Change.set(lit, false, "parts", "frontSignals", "pair");
    Layout whole = Tried.of(half, LampSet.edit());
    assertThat(whole.parts()).isEqualTo(lit.parts());
  }

  @Test
  void lampsFollowTheirAxle() {
    Layout bare = wheels(List.of("us"));
    Layout lit = Tried.of(bare, LampSet.edit());
    Layout longer = Typing.typed(lit, "1930 mm", List.of("measures", "wheelbase", "is"));
    Map<String, PointMm> was = Study.of(lit).placed().places().pins();
    Map<String, PointMm> is = Study.of(longer).placed().places().pins();
    double by = is.get("frontAxle").x() - was.get("frontAxle").x();
    assertThat(by).isGreaterThan(100);
    assertThat(is.get("headlampPin").x() - was.get("headlampPin").x()).isCloseTo(by, within(1e-6));
    assertThat(is.get("tailLampPin")).isEqualTo(was.get("tailLampPin"));
  }

  @Test
  void nothingIsAskedWithoutRulesAndNothingIsPlacedWithoutWheels() {
    Layout free = wheels(List.of());
    assertThat(Tried.refusal(free, LampSet.edit())).contains("no lamp that is not");
    Layout bare = wheels(List.of("us"));
    Layout one = Entries.without(bare, new Entries.Entry("parts", "rearWheel")).layout();
    assertThat(Tried.refusal(one, LampSet.edit())).contains("add the missing wheel");
  }

  static Stream<Arguments> singles() {
    return RULES.stream()
        .flatMap(
            rules ->
                Gallery.layout()
                    .parts(LampPart.class)
                    .flatMap(
                        l ->
                            Stream.of(
                                Arguments.of(l.name(), rules, 300.0),
                                Arguments.of(l.name(), rules, 1400.0))));
  }

  /**
   * In whichever half it belongs, and in the other one too: that it is not counted there is all.
   */
  @ParameterizedTest(name = "{0} {1} at {2}")
  @MethodSource("singles")
  void whateverIsTakenFromTheDrawerIsOfAllowedSizeAndColour(
      String specimen, List<String> rules, double x) {
    Layout bare = wheels(rules);
    Adding adding = Adding.of(specimen).with(PinSpot.at(new PointMm(x, 700)));
    String name = adding.nameIn(bare);
    Study after = Study.of(Tried.of(bare, adding.edit()));
    assertThat(after.findings())
        .filteredOn(f -> f.group() == FindingGroup.LAW && f.about().parts().contains(name))
        .filteredOn(f -> f.id().contains(".colour.") || f.id().contains(".area."))
        .noneMatch(f -> f.verdict() == Verdict.FAIL || f.margin() < 0);
  }

  @Test
  void aReflectorOfTheSidesIsRedBehindWhereThatIsAsked() {
    for (List<String> rules : RULES) {
      for (double x : new double[] {100, 1500}) {
        Adding adding = Adding.of("sideReflectors").with(PinSpot.at(new PointMm(x, 450)));
        LampPart put =
            (LampPart) adding.edit().applied(wheels(rules)).parts().get("sideReflectors");
        boolean red = rules.contains("us") && x == 100;
        assertThat(put.colour()).isEqualTo(red ? LampPart.Colour.RED : LampPart.Colour.AMBER);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"man", "woman"})
  void theSeatOfTheDrawerCarriesItsPeople(String who) {
    Layout bare = wheels(List.of());
    Edit seat = PuttingOne.SEAT.with(PinSpot.at(new PointMm(550, 520))).edit();
    Sex sex = who.equals("man") ? Sex.MALE : Sex.FEMALE;
    Study seated = Study.of(Tried.of(Tried.of(bare, seat), Additions.person(sex)));
    List<Finding> sinks =
        seated.findings().stream().filter(f -> f.kind().word().equals("sink")).toList();
    assertThat(sinks).hasSizeGreaterThanOrEqualTo(2);
    assertThat(sinks).noneMatch(f -> f.verdict() == Verdict.FAIL);
    assertThat(sinks).noneMatch(f -> f.margin() < 0);
  }
}
