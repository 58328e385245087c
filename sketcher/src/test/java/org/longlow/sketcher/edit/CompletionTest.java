package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.desk.Wren;

/** Names offered while a formula is typed. */
class CompletionTest {

  private static final Layout LAYOUT = Wren.layout();
  private static final Places PLACES = Study.of(LAYOUT).placed().places();

  private static Optional<Completion> at(String text, int caret) {
    return Completion.at(LAYOUT, PLACES, text, caret);
  }

  private static List<String> names(String text) {
    return at(text, text.length()).stream()
        .flatMap(c -> c.names().stream())
        .map(Completion.Name::text)
        .toList();
  }

  @Test
  void measuresAreOfferedByTheirLettersWhateverTheCase() {
    assertThat(names("w")).contains("wheelbase");
    assertThat(names("PANL")).containsExactly("panLength");
    // what begins so comes before what only holds it
    assertThat(names("re")).startsWith("rearRadius", "pegReach");
    // and the shorter before the longer
    assertThat(names("pan")).containsExactly("panSpan", "panLength");
    assertThat(names("length")).contains("panLength");
    assertThat(names("qqq")).isEmpty();
  }

  @Test
  void eachSaysWhatItIsWorth() {
    Completion.Name wheelbase = at("wheelb", 6).orElseThrow().names().get(0);
    assertThat(wheelbase.says())
        .isEqualTo(
            String.format(java.util.Locale.ROOT, "%.0f mm", PLACES.measures().get("wheelbase")));
  }

  @Test
  void functionsAreNamedFromTwoLettersOn() {
    assertThat(names("hyp")).contains("hypot(");
    assertThat(names("h")).doesNotContain("hypot(");
  }

  @Test
  void nothingIsOfferedForUnitsWithinNamesOrForWhatIsTypedOut() {
    assertThat(names("60 m")).isEmpty();
    assertThat(names("60m")).isEmpty();
    assertThat(names("wheelbase")).isEmpty();
    assertThat(at("wheelbase", 3)).isEmpty();
    assertThat(names("")).isEmpty();
    assertThat(names("60 mm + ")).isEmpty();
  }

  @Test
  void whatIsTakenStandsInPlaceOfTheLettersTyped() {
    String text = "2 * (wheelb + 10 mm)";
    Completion offered = at(text, 11).orElseThrow();
    Completion.Name name = offered.names().get(0);
    assertThat(offered.taken(text, name)).isEqualTo("2 * (wheelbase + 10 mm)");
    assertThat(offered.caret(name)).isEqualTo(14);
  }
}
