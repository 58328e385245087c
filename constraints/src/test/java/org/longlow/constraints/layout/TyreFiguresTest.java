package org.longlow.constraints.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** What tyres measure, in formulas: the axle follows the size that the wheel says. */
class TyreFiguresTest {

  private static TestMachine following(String tyre) {
    return TestMachine.runabout()
        .field("measures", "rearRadius", "is", "'rearTyre.radius'")
        .part("rearWheel", "tyre", "'" + tyre + "'");
  }

  // half a rim of 25.4 mm an inch, and a section of width times aspect
  @ParameterizedTest
  @CsvSource({"110/80-14, 265.8", "120/80-14, 273.8", "120/70 R15, 274.5", "100/90-14 57P, 267.8"})
  void theAxleFollowsTheSize(String tyre, double radius) {
    Study study = following(tyre).study();
    assertThat(study.placed().places().pin("rearAxle").z()).isCloseTo(radius, within(1e-9));
    assertThat(following(tyre).verdict("axle.rearWheel")).isEqualTo(Verdict.PASS);
  }

  @Test
  void aPlainMeasuredRadiusGoesBeforeTheSize() {
    Study study = following("110/80-14").part("rearWheel", "radius", "'267 mm'").study();
    assertThat(study.placed().places().pin("rearAxle").z()).isCloseTo(267, within(1e-9));
    // a bare number is mm; a formula has no name of its own
    study = following("110/80-14").part("rearWheel", "radius", "'268'").study();
    assertThat(study.placed().places().pin("rearAxle").z()).isCloseTo(268, within(1e-9));
    study = following("110/80-14").part("rearWheel", "radius", "'rearRadius + 1 mm'").study();
    assertThat(study.placed().places().pin("rearAxle").z()).isCloseTo(265.8, within(1e-9));
  }

  @Test
  void theyStandWithinFormulas() {
    Study study =
        TestMachine.runabout()
            .with("measures", "probe", "'2 * frontTyre.radius - rearTyre.width / 2 + 1 in'")
            .study();
    // 90/90-14: 177.8 + 81 mm; 110/80-14: 110 mm wide
    assertThat(study.placed().places().measures().get("probe"))
        .isCloseTo(2 * 258.8 - 55 + 25.4, within(1e-9));
  }

  /** What a wheel measured stays where formulas named it; the other wheel is left alone. */
  @Test
  void aWheelTakenOutLeavesItsFigures() {
    Layout before =
        TestMachine.runabout()
            .with("measures", "probe", "'2 * frontTyre.radius - rearTyre.width'")
            .with("measures", "alone", "'frontTyre.radius'")
            .layout();
    Entries.Without without = Entries.without(before, new Entry("parts", "frontWheel"));
    assertThat(without.changed()).contains(new Entry("measures", "probe"));
    assertThat(without.layout().measures().get("probe").is().names())
        .containsExactly("rearTyre.width");
    assertThat(without.layout().measures().get("alone").is().names()).isEmpty();
    // 90/90-14: 177.8 + 81 mm; 110/80-14: 110 mm wide
    assertThat(without.layout().measures().get("probe").is().evaluate(n -> 110))
        .isCloseTo(2 * 258.8 - 110, within(1e-9));
    assertThat(LayoutFaults.of(without.layout())).noneMatch(f -> f.toString().contains("Tyre."));
  }

  /** Where a wheel says no size its name is none, and the other tyre is not what was meant. */
  @Test
  void theOtherTyreIsNotSuggested() {
    Layout sized =
        TestMachine.runabout().with("measures", "probe", "'frontTyre.radius + 3 mm'").layout();
    Layout layout = Change.set(sized, "", "parts", "frontWheel", "tyre");
    assertThat(LayoutFaults.of(layout))
        .anySatisfy(
            f ->
                assertThat(f.remedy())
                    .isEqualTo(
                        "write the length itself, or give the front wheel a tyre size, or this"
                            + " figure as a plain length"));
  }

  @ParameterizedTest
  @CsvSource({
    "frontTyre.radius",
    "rearTyre.width",
    "frontTyre.radius*2",
    "'max(frontTyre.radius, rearTyre.radius)'"
  })
  void theyAreReadAsTheyAreWritten(String text) {
    Formula formula = Formula.parse(text);
    assertThat(formula.text()).isEqualTo(text);
    assertThat(formula.names()).allMatch(n -> n.matches("(front|rear)Tyre\\.(radius|width)"));
    assertThat(formula.expr().dim(name -> Dim.LENGTH)).isEqualTo(Dim.LENGTH);
    assertThat(Formula.parse("(" + text + ") / 2").evaluate(name -> 10)).isBetween(5.0, 10.0);
  }

  @Test
  void aLayoutWithThemIsReadBackAsWritten() {
    Layout layout = following("110/80-14 59P").layout();
    ReadResult read = LayoutReader.read(LayoutWriter.toJson(layout), null);
    assertThat(read).isInstanceOf(ReadResult.Read.class);
    assertThat(((ReadResult.Read) read).layout()).isEqualTo(layout);
    assertThat(LayoutFaults.of(layout)).isEmpty();
  }

  @Test
  void otherWordsAndMissingWheelsAreNamed() {
    String text = LayoutWriter.toJson(following("110/80-14").layout());
    assertThat(faults(text.replace("rearTyre.radius", "rearTyre.depth")))
        .contains("cannot be read");
    assertThat(faults(text.replace("\"110/80-14\"", "\"round\"")))
        .contains("rearTyre.radius")
        .contains("not understood");
    assertThat(faults(text.replace("\"rearTyre.radius\"", "\"rearTyre.radius * 1 kg\"")))
        .contains("$.");
  }

  private static String faults(String text) {
    ReadResult read = LayoutReader.read(text, null);
    assertThat(read).isInstanceOf(ReadResult.Refused.class);
    return read.toString();
  }
}
