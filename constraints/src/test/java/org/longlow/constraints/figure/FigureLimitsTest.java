package org.longlow.constraints.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.figure.FirstFiguresTest.faults;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Both sides of the limits of what figures take, and what they say of what they do not. */
class FigureLimitsTest {

  private static BodyFigure.Input person(String sex, double stature, double kg) {
    return new BodyFigure.Input(sex, stature, kg, Optional.empty());
  }

  @Test
  void aPersonIsFemaleOrMaleAndOfAHumanSize() {
    assertThat(BodyFigure.answer(person("Female", 1630, 62)).get("stature")).isEqualTo(1630.0);
    assertThat(BodyFigure.answer(new BodyFigure.Input("male", 1748.0, 82.0, null)))
        .isEqualTo(BodyFigure.answer(person("male", 1748, 82)));
    assertThat(faults(() -> BodyFigure.answer(person("horse", 5000, 500))))
        .extracting(FigureFault::name)
        .containsExactly("sex", "statureMm", "massKg");
    assertThat(faults(() -> BodyFigure.answer(person("horse", 1630, 62))))
        .extracting(FigureFault::value)
        .containsExactly("horse");
    assertThat(faults(() -> BodyFigure.answer(person(null, 1630, 62))))
        .extracting(FigureFault::value)
        .containsExactly("missing");
    assertThat(
            faults(
                () ->
                    BodyFigure.answer(
                        new BodyFigure.Input(
                            "male", 1748.0, 82.0, Optional.of(Map.of("sittingheight", 20.0))))))
        .singleElement()
        .satisfies(f -> assertThat(f.name()).isEqualTo("measured.sittingheight"))
        .satisfies(f -> assertThat(f.line()).contains("sittingheight must be").endsWith("got 20"));
  }

  @Test
  void whatIsNoTyreSizeIsSaidAsItWasTyped() {
    assertThat(faults(() -> TyreFigure.answer(new TyreFigure.Input(null))))
        .extracting(FigureFault::value)
        .containsOnly("missing");
    assertThat(faults(() -> TyreFigure.answer(new TyreFigure.Input("fat"))))
        .extracting(FigureFault::value)
        .containsOnly("\"fat\"");
  }

  private static LeanFigure.Input lean(
      double wheelbase, LeanFigure.Wheel front, LeanFigure.Wheel rear, Double rollDeg) {
    return new LeanFigure.Input(
        wheelbase, front, rear, new LeanFigure.Point(700.0, 300.0, 250.0), rollDeg);
  }

  private static LeanFigure.Wheel wheel(double radius, double section, Double height) {
    return new LeanFigure.Wheel(radius, section, height);
  }

  @Test
  void aMachineLeansFromUprightToJustNotFlat() {
    LeanFigure.Wheel wheel = wheel(300, 60, null);
    // equal tyres have no pitch; upright a point is as high as it is drawn
    LeanFigure.Output upright = LeanFigure.answer(lean(1500, wheel, wheel, 0.0));
    assertThat(upright.clearanceMm()).isCloseTo(250, within(1e-9));
    assertThat(upright.pitchDeg()).isCloseTo(0, within(1e-12));
    assertThat(LeanFigure.answer(lean(1500, wheel, wheel, 89.9)).clearanceMm()).isNegative();
    for (double roll : new double[] {-0.1, 90}) {
      assertThat(faults(() -> LeanFigure.answer(lean(1500, wheel, wheel, roll))))
          .extracting(FigureFault::name)
          .containsExactly("rollDeg");
    }
    // front and rear crown 20 and 150 mm: cos of the steepest roll is 130/(400 + 130 - 20)
    LeanFigure.Wheel thin = wheel(300, 20, null);
    LeanFigure.Wheel fat = wheel(300, 150, null);
    double steepest = Math.toDegrees(Math.acos(130.0 / 530));
    assertThat(LeanFigure.answer(lean(400, thin, fat, steepest - 0.01)).pitchDeg()).isNegative();
    assertThat(faults(() -> LeanFigure.answer(lean(400, thin, fat, steepest + 0.01))))
        .extracting(FigureFault::name)
        .containsExactly("rollDeg");
  }

  @Test
  void axlesAreFurtherApartThanTheirRadiiDiffer() {
    // 60 along and 80 up are 100 apart
    LeanFigure.Wheel big = wheel(400, 60, 380.0);
    LeanFigure.Wheel small = wheel(300, 60, 300.0);
    LeanFigure.Wheel smaller = wheel(299.9, 60, 300.0);
    assertThat(LeanFigure.answer(lean(60.1, big, small, null)).pitchDeg()).isNull();
    for (var pair : List.of(List.of(big, small), List.of(small, big), List.of(big, smaller))) {
      assertThat(faults(() -> LeanFigure.answer(lean(60, pair.get(0), pair.get(1), null))))
          .extracting(FigureFault::name)
          .containsExactly("wheelbaseMm");
    }
  }

  @Test
  void sprocketsMayJustNotTouch() {
    // 12 teeth of 12.7 mm: a pitch radius of 12.7 / (2 sin 15 deg), 24.5344 mm
    double least = 2 * 12.7 / (2 * Math.sin(Math.toRadians(15)));
    ChainFigure.Output out =
        ChainFigure.answer(new ChainFigure.Input(List.of(12, 12), 12.7, least + 1e-9));
    // equal sprockets: straight runs and one sprocket's teeth
    assertThat(out.exactLinks()).isCloseTo(2 * least / 12.7 + 12, within(1e-6));
    assertThat(
            faults(
                () ->
                    ChainFigure.answer(new ChainFigure.Input(List.of(12, 12), 12.7, least - 1e-6))))
        .extracting(FigureFault::name)
        .containsExactly("centreMm");
  }

  private static CopeFigure.Input cope(double angleDeg, double offset) {
    return new CopeFigure.Input(16.0, 14.0, 20.0, angleDeg, offset, List.of(0.0, 90.0));
  }

  @Test
  void tubesMeetFromOneDegreeToSquareAndWithinEachOther() {
    // square: the crown is the main radius away, at the flank 14 mm out of it the bore ends last
    CopeFigure.Output square = CopeFigure.answer(cope(90, 0));
    assertThat(square.stations().get(0).yMm()).isCloseTo(20, within(1e-9));
    assertThat(square.stations().get(1).yMm()).isCloseTo(Math.sqrt(400 - 196), within(1e-9));
    assertThat(CopeFigure.answer(cope(1, 0)).stations()).hasSize(2);
    assertThat(CopeFigure.answer(cope(60, 4)).stations()).hasSize(2);
    assertThat(CopeFigure.answer(cope(60, -4)).stations()).hasSize(2);
    for (double angle : new double[] {0.999, 90.001}) {
      assertThat(faults(() -> CopeFigure.answer(cope(angle, 0))))
          .extracting(FigureFault::name)
          .containsExactly("angleDeg");
    }
    for (double offset : new double[] {4.001, -4.001}) {
      assertThat(faults(() -> CopeFigure.answer(cope(60, offset))))
          .singleElement()
          .satisfies(f -> assertThat(f.name()).isEqualTo("mainRadiusMm"))
          .satisfies(f -> assertThat(f.allowed()).startsWith("20.001"));
    }
  }

  private static BreakoverFigure.Input belly(double x, double z) {
    BreakoverFigure.Wheel wheel = new BreakoverFigure.Wheel(500.0);
    return new BreakoverFigure.Input(1500.0, wheel, wheel, new BreakoverFigure.Point(x, z));
  }

  @Test
  void aBellyPointMayTouchATyre() {
    // 300 along and 400 up from an axle: on the tyre of 500
    assertThat(BreakoverFigure.answer(belly(300, 100)).rearDeg()).isPositive();
    assertThat(BreakoverFigure.answer(belly(1200, 100)).frontDeg()).isPositive();
    assertThat(faults(() -> BreakoverFigure.answer(belly(299, 100))))
        .extracting(FigureFault::value)
        .containsExactly("inside the rear tyre");
    assertThat(faults(() -> BreakoverFigure.answer(belly(1201, 100))))
        .extracting(FigureFault::value)
        .containsExactly("inside the front tyre");
  }

  @Test
  void foamHasUpToTwentyLayersThatCanBe() {
    FoamFigure.Layer layer = new FoamFigure.Layer(5.0, 45.0, 200.0, 2.5, null, null, null);
    assertThat(
            FoamFigure.answer(new FoamFigure.Input(Collections.nCopies(20, layer), 5.0)).layers())
        .hasSize(20);
    // a foam denser than the solid it is blown from
    FoamFigure.Layer lead = new FoamFigure.Layer(10.0, 2000.0, null, null, true, 5.0, 930.0);
    assertThat(faults(() -> FoamFigure.answer(new FoamFigure.Input(List.of(layer, lead), 5.0))))
        .singleElement()
        .satisfies(f -> assertThat(f.name()).startsWith("layers[1]"));
  }

  @Test
  void numbersAreTakenUpToAMillion() {
    AxleLoadsFigure.Mass mass = new AxleLoadsFigure.Mass(1e6, 1e6, -1e6);
    assertThat(AxleLoadsFigure.answer(new AxleLoadsFigure.Input(1e6, List.of(mass))).frontShare())
        .isCloseTo(1, within(1e-12));
    assertThat(
            AxleLoadsFigure.answer(
                    new AxleLoadsFigure.Input(
                        1e-6, List.of(mass, new AxleLoadsFigure.Mass(0.0, -1e6, 1e6))))
                .massKg())
        .isEqualTo(1e6);
    assertThat(
            faults(
                () ->
                    AxleLoadsFigure.answer(
                        new AxleLoadsFigure.Input(
                            1e-7,
                            List.of(new AxleLoadsFigure.Mass(1.0001e6, -1.0001e6, 1.0001e6))))))
        .extracting(FigureFault::name)
        .containsExactly("wheelbaseMm", "masses[0].massKg", "masses[0].xMm", "masses[0].zMm");
  }
}
