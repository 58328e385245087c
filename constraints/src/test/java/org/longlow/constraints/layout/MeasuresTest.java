package org.longlow.constraints.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.rider.words.Units;

class MeasuresTest {

  private static Layout layout(String... namesAndFormulas) {
    Map<String, Measure> measures = new LinkedHashMap<>();
    for (int i = 0; i < namesAndFormulas.length; i += 2) {
      String name = namesAndFormulas[i];
      boolean free = name.endsWith("?");
      measures.put(
          free ? name.substring(0, name.length() - 1) : name,
          new Measure(
              Formula.parse(namesAndFormulas[i + 1]),
              Dim.LENGTH,
              free,
              Optional.empty(),
              Optional.empty(),
              ""));
    }
    return new Layout(
        "t",
        "",
        Units.MM,
        List.of(),
        measures,
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        new Demands(List.of(), Map.of()),
        Map.of(),
        Map.of(),
        Map.of(),
        "");
  }

  @Test
  void formulasAreReducedWhateverTheirOrder() {
    Measures m = Measures.of(layout("seat", "board + 60 mm", "board", "12 in"));
    assertThat(m.values(n -> Double.NaN).get("seat")).isCloseTo(364.8, within(1e-12));
  }

  @Test
  void freeMeasuresStayNamesAndStartAtTheirFormula() {
    Measures m = Measures.of(layout("a?", "2*b", "b", "30 mm", "c", "a + b"));
    assertThat(m.start()).containsOnly(Map.entry("a", 60.0));
    assertThat(m.values(n -> 100).get("c")).isEqualTo(130);
  }

  @Test
  void circlesAreNamed() {
    assertThatThrownBy(() -> Measures.of(layout("a", "b + 1 mm", "b", "2*a")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("circle");
  }

  @Test
  void unknownNamesAreNamed() {
    assertThatThrownBy(() -> Measures.of(layout("a", "nothere + 1 mm")))
        .hasMessageContaining("nothere");
  }
}
