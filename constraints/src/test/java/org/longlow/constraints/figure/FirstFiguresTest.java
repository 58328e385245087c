package org.longlow.constraints.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked numbers are those of the calculations behind each figure; see their own tests. */
class FirstFiguresTest {

  @Test
  void tyreAnswersItsSize() {
    TyreFigure.Output out = TyreFigure.answer(new TyreFigure.Input("180/55ZR17 M/C 73W"));
    assertThat(out.diameterMm()).isCloseTo(629.8, within(1e-9));
    assertThat(out.sectionRadiusMm()).isEqualTo(90);
    assertThat(out.nearEquivalent()).isFalse();
    assertThat(faults(() -> TyreFigure.answer(new TyreFigure.Input("round")))).hasSize(1);
    assertThat(faults(() -> TyreFigure.answer(new TyreFigure.Input(null)))).hasSize(1);
    assertThat(faults(() -> TyreFigure.answer(null))).hasSize(1);
  }

  @Test
  void trailAnswersInDegreesAndMillimetres() {
    TrailFigure.Output out = TrailFigure.answer(new TrailFigure.Input(299.9, 27.0, 35.0));
    assertThat(out.groundTrailMm()).isCloseTo(113.525263986177, within(1e-9));
    assertThat(faults(() -> TrailFigure.answer(new TrailFigure.Input(-1.0, 90.0, null))))
        .extracting(FigureFault::name)
        .containsExactly("radiusMm", "rakeDeg", "offsetMm");
    assertThat(TrailFigure.answer(new TrailFigure.Input(299.9, 27.0, 299.9)).flopMm()).isFinite();
    assertThat(faults(() -> TrailFigure.answer(new TrailFigure.Input(299.9, 27.0, 300.0))))
        .extracting(FigureFault::name)
        .containsExactly("offsetMm");
  }

  private static LeanFigure.Input caseC(Double roll) {
    return new LeanFigure.Input(
        1500.0,
        new LeanFigure.Wheel(299.9, 60.0, null),
        new LeanFigure.Wheel(314.9, 90.0, null),
        new LeanFigure.Point(700.0, 300.0, 250.0),
        roll);
  }

  @Test
  void leanAnswersTouchDownAndAProfile() {
    LeanFigure.Output out = LeanFigure.answer(caseC(30.0));
    assertThat(out.touchRollDeg()).isCloseTo(42.7725206784, within(1e-9));
    assertThat(out.touchPitchDeg()).isCloseTo(-0.4151776452, within(1e-9));
    assertThat(out.clearanceMm()).isCloseTo(76.6886602729, within(1e-9));
    assertThat(out.pitchDeg()).isCloseTo(-0.1772767841, within(1e-9));
    assertThat(LeanFigure.answer(caseC(null)).clearanceMm()).isNull();
  }

  @Test
  void leanNamesEveryFault() {
    assertThat(
            faults(
                () ->
                    LeanFigure.answer(
                        new LeanFigure.Input(
                            0.0,
                            new LeanFigure.Wheel(300.0, 400.0, Double.NaN),
                            null,
                            new LeanFigure.Point(1.0, -1.0, null),
                            90.0))))
        .extracting(FigureFault::name)
        .containsExactly(
            "wheelbaseMm",
            "front.sectionRadiusMm",
            "front.centreHeightMm",
            "rear",
            "point.yMm",
            "point.zMm",
            "rollDeg");
    // Past the roll at which tyres this unequal share a plane.
    assertThat(faults(() -> LeanFigure.answer(caseC(89.9)))).hasSize(1);
  }

  @Test
  void turnAnswersRollAndLoad() {
    TurnFigure.Output out = TurnFigure.answer(new TurnFigure.Input(60.0, 40.0, 600.0, 75.0));
    assertThat(out.rollDeg()).isCloseTo(40.039343476542, within(1e-9));
    assertThat(out.loadFactor()).isCloseTo(1.225339528999, within(1e-9));
    assertThat(faults(() -> TurnFigure.answer(new TurnFigure.Input(-1.0, 0.0, 100.0, 90.0))))
        .hasSize(3);
  }

  @Test
  void axleLoadsAnswerTheWorkedMachine() {
    AxleLoadsFigure.Output out =
        AxleLoadsFigure.answer(
            new AxleLoadsFigure.Input(
                1500.0,
                List.of(
                    new AxleLoadsFigure.Mass(195.0, 674.0, 498.0),
                    new AxleLoadsFigure.Mass(80.0, 560.0, 700.0))));
    assertThat(out.massKg()).isEqualTo(275);
    assertThat(out.cgXMm()).isCloseTo((195 * 674.0 + 80 * 560.0) / 275, within(1e-9));
    assertThat(out.frontN() + out.rearN()).isCloseTo(275 * 9.80665, within(1e-9));
    assertThat(
            faults(
                () ->
                    AxleLoadsFigure.answer(
                        new AxleLoadsFigure.Input(
                            -1.0, Arrays.asList(null, new AxleLoadsFigure.Mass(-1.0, null, 3.0))))))
        .extracting(FigureFault::name)
        .containsExactly("wheelbaseMm", "masses[0]", "masses[1].massKg", "masses[1].xMm");
    assertThat(faults(() -> AxleLoadsFigure.answer(new AxleLoadsFigure.Input(1500.0, List.of()))))
        .extracting(FigureFault::name)
        .containsExactly("masses");
    AxleLoadsFigure.Output flat =
        AxleLoadsFigure.answer(
            new AxleLoadsFigure.Input(1500.0, List.of(new AxleLoadsFigure.Mass(10.0, 700.0, 0.0))));
    assertThat(flat.brakeLiftG()).isNull();
  }

  static List<FigureFault> faults(Runnable call) {
    FigureFaults caught = catchThrowableOfType(FigureFaults.class, call::run);
    assertThat(caught).as("a refusal").isNotNull();
    assertThat(caught.getMessage().lines()).hasSize(caught.faults().size());
    return caught.faults();
  }
}
