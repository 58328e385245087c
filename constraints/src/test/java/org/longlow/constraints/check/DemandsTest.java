package org.longlow.constraints.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.study.TestMachine;

/** A demand that nothing reads would be a promise that nobody keeps. */
class DemandsTest {

  /** What a finding holds the machine to or finds, without the words that only quote the demand. */
  private record Held(String id, String stance, String verdict, double limit, double value) {
    static Held of(Finding f) {
      return new Held(f.id(), f.stanceWords(), f.verdict().name(), f.limit(), f.value());
    }
  }

  /**
   * With a catch on its lid, a cable and a fuel hose to its bars, levers for the hands, and rails
   * that are hot.
   */
  private static TestMachine machine() {
    return TestMachine.tourer()
        .pin("lidEdge", -290, 820)
        .pin("lidStriker", -290, 820)
        .field("sections", "lid", "wayOut", "true")
        .field(
            "sections",
            "lid",
            "catches",
            "[{'jaw': 'lidEdge', 'striker': 'lidStriker', 'depth': '9 mm', 'play': '5 mm'}]")
        .with(
            "lines",
            "cable",
            "{'kind': 'cable', 'diameter': 5, 'points': [{'pin': 'grip', 'y': 240},"
                + " {'pin': 'barRise', 'y': 240}, 'crank'],"
                + " 'length': '2 m'}")
        .with(
            "lines",
            "fuel",
            "{'kind': 'fuel-hose', 'diameter': 8, 'points': [{'pin': 'grip', 'y': 290},"
                + " {'pin': 'barRise', 'y': 290}]}")
        .pin("leverFront", 1081, 836)
        .with("parts", "lever", lever("fingers"))
        .with("parts", "horn", lever("thumb"))
        .with(
            "parts",
            "centreStand",
            "{'kind': 'stand', 'type': 'centre', 'pivot': 'standPivot', 'foot': 'standFoot',"
                + " 'stowed': 'standStowed', 'y': '150 mm', 'diameter': '20 mm', 'mass': '2 kg'}")
        .part("bars", "hot", "true")
        .part("noseRail", "hot", "true")
        .part("tailRail", "hot", "true");
  }

  private static String lever(String by) {
    return "{'kind': 'lever', 'frame': 'leverFront', 'outline': {'points': [['-9 mm', '-5 mm'],"
        + " ['0 mm', '-5 mm'], ['0 mm', '5 mm']]}, 'left': '300 mm', 'right': '-220 mm', 'mass':"
        + " '0.2 kg', 'worked': {'by': '"
        + by
        + "', 'pad': 'leverFront'}}";
  }

  @ParameterizedTest
  @EnumSource(Demands.Key.class)
  void eachDemandHoldsSomeFinding(Demands.Key key) {
    List<Set<Held>> answers =
        Stream.of("0.8", "1.25")
            .map(factor -> "'" + factor + " * (" + key.standard().text() + ")'")
            .map(value -> machine().with("demands", key.word(), value).findings())
            .map(findings -> findings.stream().map(Held::of).collect(Collectors.toSet()))
            .toList();
    assertThat(answers.get(0)).isNotEqualTo(answers.get(1));
  }
}
