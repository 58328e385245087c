package org.longlow.constraints.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.document.FoamOf;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.rider.seat.Foam;
import org.longlow.rider.words.Units;

/** Each row of the table of grades is a foam that can be, within what its source says. */
class FoamGradesTest {

  private static final double N_PER_LBF = 4.4482216152605;

  private static final Pattern RANGE =
      Pattern.compile("(\\d+(?:\\.\\d+)?) to (\\d+(?:\\.\\d+)?) (lbf|kg/m3|N)\\b");

  private static final Pattern CV40 = Pattern.compile("CV40 (?:of at most )?(\\d\\.\\d) kPa");

  static List<FoamGrade> grades() {
    return FoamGrades.all();
  }

  /** The number before the unit: read from the text, not by the formulas. */
  private static double number(Formula formula) {
    return Double.parseDouble(formula.text().split(" ")[0]);
  }

  private static Foam foam(FoamSpec spec) {
    return FoamOf.of(
        spec,
        f ->
            f == spec.density() || spec.polymerDensity().filter(p -> p == f).isPresent()
                ? number(f) * 1e-9
                : f.text().endsWith("kPa") ? number(f) * 1e-3 : number(f));
  }

  /** Where each may lie, by hand from its use. */
  @ParameterizedTest
  @CsvSource({
    "bonded chip, PAN, 0, 3, 10, false",
    "bonded chip, PAN, 0, 1, 10, false",
    "bonded chip, PAN, 2, 3, 20, true",
    "bonded chip, PAN, 2, 3, 21, false",
    "firm, BACK, 1, 2, 40, true",
    "firm, PAN, 1, 3, 40, false",
    "medium HR, PAN, 1, 3, 40, true",
    "medium HR, PAN, 0, 3, 40, false",
    "HR 45/25, PAN, 0, 1, 40, true",
    "HR 45/25, BACK, 0, 2, 40, false",
    "very soft polyether, BACK, 0, 2, 40, true",
    "very soft polyether, PAN, 0, 2, 40, false",
    "soft HR, BACK, 1, 2, 40, true",
    "polyether for backs, HEAD, 0, 1, 40, true",
    "HR seat, PAN, 1, 2, 40, true",
  })
  void eachLiesWhereItsUseSays(
      String name, CushionPart.Role role, int at, int layers, double mm, boolean belongs) {
    FoamGrade grade =
        grades().stream().filter(g -> g.name().equals(name)).findFirst().orElseThrow();
    assertThat(grade.belongs(role, at, layers, mm)).isEqualTo(belongs);
  }

  @ParameterizedTest
  @MethodSource("grades")
  void eachIsAFoamThatCanBeWithSourceAndStatus(FoamGrade grade) {
    assertThat(foam(grade.foam()).stressPa(0.25)).isPositive();
    assertThat(grade.foam().name()).isEqualTo(grade.name());
    assertThat(grade.source()).hasSizeGreaterThan(20);
    assertThat(grade.use()).isNotBlank();
    boolean readSomewhere = Pattern.compile("\\w\\.(com|eu|it)\\b").matcher(grade.source()).find();
    assertThat(grade.source().contains("memory"))
        .isEqualTo(grade.status() == FoamGrade.Status.MEMORY);
    assertThat(grade.source().contains("common practice"))
        .isEqualTo(grade.status() == FoamGrade.Status.PRACTICE);
    assertThat(readSomewhere || grade.status() != FoamGrade.Status.PUBLISHED).isTrue();
  }

  @ParameterizedTest
  @MethodSource("grades")
  void itsFiguresLieInTheRangesOfItsSource(FoamGrade grade) {
    Matcher range = RANGE.matcher(grade.source());
    while (range.find()) {
      double figure =
          switch (range.group(3)) {
            case "lbf" -> number(grade.foam().ifd25().orElseThrow()) / N_PER_LBF;
            case "N" -> number(grade.foam().ifd25().orElseThrow());
            default -> number(grade.foam().density());
          };
      // sheets round to whole pounds
      assertThat(figure)
          .as(grade.name() + ": " + range.group())
          .isBetween(
              Double.parseDouble(range.group(1)) - 0.5, Double.parseDouble(range.group(2)) + 0.5);
    }
  }

  @Test
  void whereCompressionStressIsGivenTheFoamCarriesWhatIsLeftOfItWhenHeld() {
    int seen = 0;
    for (FoamGrade grade : FoamGrades.all()) {
      Matcher cv40 = CV40.matcher(grade.source());
      if (cv40.find()) {
        seen++;
        assertThat(foam(grade.foam()).stressPa(0.40) / 1000)
            .as(grade.name())
            .isCloseTo(0.87 * Double.parseDouble(cv40.group(1)), within(0.02));
      }
    }
    assertThat(seen).isEqualTo(4);
  }

  @Test
  void polyurethaneComesSoftestFirstAndNamesAreUnlike() {
    assertThat(
            FoamGrades.all().stream()
                .filter(g -> g.name().matches(".*(HR|polyether|firm).*"))
                .map(g -> number(g.foam().ifd25().orElseThrow())))
        .hasSize(13)
        .isSorted();
    assertThat(FoamGrades.all().stream().map(FoamGrade::name)).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @CsvSource({
    "45 kg/m^3, 170 N, 2.5, medium HR",
    "45kg/m^3, 170.0 N, 2.50, medium HR",
    "45 kg/m^3, 171 N, 2.5, ",
    "46 kg/m^3, 170 N, 2.5, ",
    "45 kg/m^3, 170 N, 2.6, "
  })
  void aLayerIsKnownByItsFiguresAlone(
      String density, String ifd25, String supportFactor, String name) {
    FoamSpec medium = FoamGrades.first(false).layer(Formula.parse("77 mm"));
    FoamSpec layer =
        new FoamSpec(
            "mine",
            medium.thickness(),
            Formula.parse(density),
            java.util.Optional.of(Formula.parse(ifd25)),
            java.util.Optional.of(Formula.parse(supportFactor)),
            false,
            medium.wallStress(),
            medium.polymerDensity());
    assertThat(FoamGrades.of(layer).map(FoamGrade::name))
        .isEqualTo(java.util.Optional.ofNullable(name));
  }

  @Test
  void aLayerOfAGradeIsAsThickAsAsked() {
    FoamSpec layer = FoamGrades.first(true).layer(Formula.parse("12 mm"));
    assertThat(layer.thickness().text()).isEqualTo("12 mm");
    assertThat(layer.closedCell()).isTrue();
    assertThat(FoamGrades.of(layer)).contains(FoamGrades.first(true));
    assertThat(FoamGrade.figures(layer, Units.MM)).isEqualTo("45 kg/m\u00b3, cell walls 8 kPa");
    assertThat(FoamGrades.first(false).figures(Units.MM))
        .isEqualTo("45 kg/m\u00b3, 170 N, factor 2.5");
    // 45 / 16.0185, 170 / 4.44822 and 8 / 6.89476
    assertThat(FoamGrades.first(false).figures(Units.IN))
        .isEqualTo("2.81 lb/ft\u00b3, 38.2 lbf, factor 2.5");
    assertThat(FoamGrade.figures(layer, Units.IN))
        .isEqualTo("2.81 lb/ft\u00b3, cell walls 1.16 psi");
  }
}
