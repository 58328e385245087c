package org.longlow.constraints.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.check.road.Weights;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** What a part leaves out and nothing else gives. */
class LackingTest {

  static Stream<Layout> machines() {
    return Stream.of(TestMachine.tourer().layout(), TestMachine.runabout().layout());
  }

  private static Layout typed(Layout layout, String part, String key, String text) {
    return Typing.typed(layout, text, List.of("parts", part, key));
  }

  private static String usual(Layout layout, String part, String key) {
    return Forms.of(layout, new Entries.Entry("parts", part)).orElseThrow().rows().stream()
        .filter(r -> r.path().equals(List.of("parts", part, key)))
        .findFirst()
        .orElseThrow()
        .usual();
  }

  /** Held to the bodies that are weighed: those without mass and without weight are named. */
  @ParameterizedTest
  @MethodSource("machines")
  void aMassIsLackingWhereNothingElseGivesIt(Layout machine) {
    Layout bare = machine;
    for (String part : machine.parts().keySet()) {
      bare = typed(bare, part, "mass", "");
    }
    List<String> unknown = Weights.of(Study.of(bare).shapes().values()).unknown();
    assertThat(unknown).isNotEmpty().hasSizeLessThan(bare.parts().size());
    for (String part : bare.parts().keySet()) {
      boolean lacks = Lacking.of(bare.parts().get(part)).contains("mass");
      assertThat(lacks).as(part).isEqualTo(unknown.contains(part));
      assertThat(usual(bare, part, "mass")).as(part).matches(lacks ? "not known.*" : "from the .*");
    }
    for (String part : unknown) {
      assertThat(Lacking.of(typed(bare, part, "mass", "3 kg").parts().get(part)))
          .doesNotContain("mass");
    }
  }

  @Test
  void whatAMaterialFillsAsksForEither() {
    Layout layout = TestMachine.tourer().layout();
    String rail = layout.parts(TubePart.class).findFirst().orElseThrow().name();
    for (String material : List.of("", "unheardOf")) {
      Layout bare = typed(typed(layout, rail, "mass", ""), rail, "material", material);
      assertThat(usual(bare, rail, "mass")).isEqualTo("not known: give it or a material");
    }
    Layout steel = typed(typed(layout, rail, "mass", ""), rail, "material", "steel");
    assertThat(usual(steel, rail, "mass")).isEqualTo("from the material");
  }

  @ParameterizedTest
  @MethodSource("machines")
  void aSpringLacksItsRateOnlyWhereItTravels(Layout machine) {
    Map<String, String> no = Map.of("rate", "", "preload", "");
    Layout bare = machine;
    for (Map.Entry<String, String> key : no.entrySet()) {
      bare = typed(bare, "swingarm", key.getKey(), key.getValue());
    }
    assertThat(Lacking.of(machine.parts().get("swingarm"))).doesNotContain("rate");
    assertThat(Lacking.of(bare.parts().get("swingarm"))).contains("rate");
    Layout stiff = typed(typed(bare, "swingarm", "bump", "0 mm"), "swingarm", "droop", "0 mm");
    assertThat(Lacking.of(stiff.parts().get("swingarm"))).doesNotContain("rate");
    Layout rises = typed(bare, "swingarm", "droop", "0 mm");
    assertThat(Lacking.of(rises.parts().get("swingarm"))).contains("rate");
  }
}
