package org.longlow.constraints.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.figure.FirstFiguresTest.faults;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.json.FigureJson;

/** Worked numbers are those of the calculations behind each figure; see their own tests. */
class LaterFiguresTest {

  @Test
  void breakoverAnswersTheWorkedPoint() {
    BreakoverFigure.Output out =
        BreakoverFigure.answer(
            new BreakoverFigure.Input(
                1500.0,
                new BreakoverFigure.Wheel(299.9),
                new BreakoverFigure.Wheel(314.9),
                new BreakoverFigure.Point(700.0, 140.0)));
    assertThat(out.rearDeg()).isCloseTo(11.848431899103, within(1e-9));
    assertThat(out.frontDeg()).isCloseTo(10.264880557460, within(1e-9));
    assertThat(out.breakoverDeg()).isCloseTo(22.113312456563, within(1e-9));
    assertThat(
            faults(
                () ->
                    BreakoverFigure.answer(
                        new BreakoverFigure.Input(
                            -1.0,
                            null,
                            new BreakoverFigure.Wheel(null),
                            new BreakoverFigure.Point(null, 1.0)))))
        .extracting(FigureFault::name)
        .containsExactly("wheelbaseMm", "front", "rear.radiusMm", "point.xMm");
    assertThat(
            faults(
                () ->
                    BreakoverFigure.answer(
                        new BreakoverFigure.Input(
                            1500.0,
                            new BreakoverFigure.Wheel(300.0),
                            new BreakoverFigure.Wheel(300.0),
                            new BreakoverFigure.Point(1499.0, 250.0)))))
        .extracting(FigureFault::value)
        .containsExactly("inside the front tyre");
  }

  @Test
  void sideWindAnswersInWords() {
    SideWindFigure.Output out =
        SideWindFigure.answer(
            new SideWindFigure.Input(
                27.0, 1500.0, 113.525263986177, new SideWindFigure.Point(1650.0, 700.0), 60.0));
    assertThat(out.armMm()).isCloseTo(350.292577574048, within(1e-9));
    assertThat(out.momentNm()).isCloseTo(21.017554654, within(1e-8));
    assertThat(out.steers()).isEqualTo("downwind");
    assertThat(out.leans()).isEqualTo("into wind");
    SideWindFigure.Output low =
        SideWindFigure.answer(
            new SideWindFigure.Input(
                27.0, 1500.0, 113.5, new SideWindFigure.Point(1200.0, 400.0), 60.0));
    assertThat(low.steers()).isEqualTo("upwind");
    assertThat(low.leans()).isEqualTo("with wind");
    SideWindFigure.Output calm =
        SideWindFigure.answer(
            new SideWindFigure.Input(
                27.0, 1500.0, 113.5, new SideWindFigure.Point(1200.0, 400.0), 0.0));
    assertThat(calm.steers()).isEqualTo("neutral");
    assertThat(calm.leans()).isEqualTo("neutral");
    assertThat(
            faults(
                () -> SideWindFigure.answer(new SideWindFigure.Input(99.0, 0.0, null, null, null))))
        .hasSize(5);
  }

  private static StabilityFigure.Input benchmark(Double g, List<Double> speeds) {
    return new StabilityFigure.Input(
        1.02,
        0.08,
        Math.PI / 10,
        g,
        0.3,
        2.0,
        0.0603,
        0.12,
        0.3,
        -0.9,
        85.0,
        9.2,
        2.4,
        11.0,
        2.8,
        0.9,
        -0.7,
        4.0,
        0.05892,
        -0.00756,
        0.06,
        0.00708,
        0.35,
        3.0,
        0.1405,
        0.28,
        speeds);
  }

  @Test
  void stabilityAnswersTheBenchmark() {
    StabilityFigure.Output out = StabilityFigure.answer(benchmark(9.81, List.of(5.0)));
    assertThat(out.M().get(0).get(0)).isCloseTo(80.81722, within(1e-10));
    assertThat(out.C1().get(0).get(1)).isCloseTo(33.86641391492494, within(1e-10));
    assertThat(out.K0().get(1).get(1)).isCloseTo(-0.80329488458618, within(1e-10));
    assertThat(out.K2().get(1).get(1)).isCloseTo(2.65431523794604, within(1e-10));
    assertThat(out.weaveSpeedMs()).isCloseTo(4.29238253634111, within(1e-9));
    assertThat(out.capsizeSpeedMs()).isCloseTo(6.02426201538837, within(1e-9));
    assertThat(out.eigenvalues()).hasSize(1);
    assertThat(out.eigenvalues().get(0).values()).hasSize(4);
    assertThat(out.eigenvalues().get(0).values().get(0).re())
        .isCloseTo(-0.32286642900409, within(1e-10));
    assertThat(StabilityFigure.answer(benchmark(null, null)).weaveSpeedMs())
        .isEqualTo(out.weaveSpeedMs());
  }

  @Test
  void stabilityNamesEveryFaultAndEmptyMachines() {
    StabilityFigure.Input nothing =
        new StabilityFigure.Input(
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            Arrays.asList(-1.0, null));
    // 23 symbols without a default, and two bad speeds.
    assertThat(faults(() -> StabilityFigure.answer(nothing))).hasSize(25);
    StabilityFigure.Input weightless =
        new StabilityFigure.Input(
            1.0, 0.1, 0.3, 9.81, 0.3, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0,
            0.0, 0.0, 0.0, 0.0, 0.0, 0.3, 0.0, 0.0, 0.0, List.of());
    assertThat(faults(() -> StabilityFigure.answer(weightless))).hasSize(1);
  }

  @Test
  void chainAnswersLinksAndCentre() {
    ChainFigure.Output out =
        ChainFigure.answer(new ChainFigure.Input(List.of(15, 42), 15.875, 600.0));
    assertThat(out.exactLinks()).isCloseTo(104.579125094913, within(1e-9));
    assertThat(out.links()).isEqualTo(106);
    assertThat(out.centreMm()).isCloseTo(611.350193686, within(1e-8));
    assertThat(
            faults(
                () ->
                    ChainFigure.answer(
                        new ChainFigure.Input(Arrays.asList(null, 900), -1.0, Double.NaN))))
        .extracting(FigureFault::name)
        .containsExactly("teeth[0]", "teeth[1]", "pitchMm", "centreMm");
    assertThat(faults(() -> ChainFigure.answer(new ChainFigure.Input(List.of(1), 1.0, 1.0))))
        .hasSize(1);
    assertThat(
            faults(() -> ChainFigure.answer(new ChainFigure.Input(List.of(15, 42), 15.875, 9.0))))
        .extracting(FigureFault::name)
        .containsExactly("centreMm");
  }

  @Test
  void copeAnswersItsStations() {
    CopeFigure.Output out =
        CopeFigure.answer(
            new CopeFigure.Input(19.05, 17.05, 22.225, 60.0, 0.0, List.of(0.0, 45.0, 90.0)));
    assertThat(out.stations()).hasSize(3);
    assertThat(out.stations().get(1).xMm()).isCloseTo(14.961835013, within(1e-8));
    assertThat(out.stations().get(1).yMm()).isCloseTo(28.519834791, within(1e-8));
    assertThat(
            CopeFigure.answer(new CopeFigure.Input(19.05, 17.05, 22.225, 60.0, null, null))
                .stations())
        .hasSize(25);
    assertThat(
            faults(
                () ->
                    CopeFigure.answer(
                        new CopeFigure.Input(
                            19.05, 20.0, 18.0, 120.0, 0.0, Arrays.asList(Double.NaN, null)))))
        .extracting(FigureFault::name)
        .containsExactly(
            "branchInnerRadiusMm", "angleDeg", "mainRadiusMm", "stationsDeg[0]", "stationsDeg[1]");
  }

  @Test
  void theBackCentreIsAShare() {
    double[] fine = {0.3, 0.6, 1};
    for (double share : fine) {
      assertThat(
              SeatLoadFigure.answer(new SeatLoadFigure.Input(80.0, 30.0, 15.0, share, true, 0.03))
                  .backN())
          .isPositive();
    }
    for (Double share : new Double[] {0.299, 1.001, 300.0, null}) {
      assertThat(
              faults(
                  () ->
                      SeatLoadFigure.answer(
                          new SeatLoadFigure.Input(80.0, 30.0, 15.0, share, true, 0.03))))
          .extracting(FigureFault::name)
          .containsExactly("backCentreShare");
    }
    FigureJson.Result<SeatLoadFigure.Input> metres =
        FigureJson.read(
            "{\"massKg\":80,\"backDeg\":30,\"panDeg\":15,\"backCentreM\":0.6,\"headRest\":true,"
                + "\"handsShare\":0.03}",
            SeatLoadFigure.Input.class);
    assertThat(((FigureJson.Result.Refused<SeatLoadFigure.Input>) metres).faults())
        .anyMatch(f -> f.path().equals("$.backCentreM") && f.line().contains("backCentreShare"));
  }

  @Test
  void aLoadThatLeavesThePanIsRefused() {
    assertThat(
            faults(
                () ->
                    SeatLoadFigure.answer(
                        new SeatLoadFigure.Input(80.0, 85.0, 0.0, 0.3, false, 0.03))))
        .extracting(FigureFault::name)
        .containsExactly("backDeg");
    SeatLoadFigure.Output held =
        SeatLoadFigure.answer(new SeatLoadFigure.Input(80.0, 40.0, 20.0, 0.6, true, 0.03));
    assertThat(held.panVerticalN()).isCloseTo(519.1525042, within(6e-8));
    assertThat(held.frictionNeeded()).isCloseTo(0.0503221, within(6e-8));
  }

  private static FoamFigure.Output soft(double pressureKPa) {
    FoamFigure.Layer soft = new FoamFigure.Layer(50.0, 28.0, 90.0, 1.9, null, null, null);
    return FoamFigure.answer(new FoamFigure.Input(List.of(soft), pressureKPa));
  }

  @Test
  void foamBeyondItsModelSaysSo() {
    assertThat(soft(2.0).caution()).isEmpty();
    assertThat(soft(4.5).layers().get(0).strain()).isLessThan(0.75);
    assertThat(soft(4.5).caution()).isEmpty();
    FoamFigure.Output deep = soft(6.2);
    assertThat(deep.layers().get(0).strain()).isCloseTo(0.7995716342073774, within(1e-12));
    assertThat(deep.caution()).contains("layer 1 is at 80 %").contains("75 %");
    FoamFigure.Layer closed = new FoamFigure.Layer(10.0, 30.0, null, null, true, 5.0, 930.0);
    assertThat(FoamFigure.answer(new FoamFigure.Input(List.of(closed), 100.0)).caution()).isEmpty();
    assertThat(FoamFigure.answer(new FoamFigure.Input(List.of(closed), 130.0)).caution())
        .contains("50 %");
    assertThat(faults(() -> soft(200_000.0)))
        .extracting(FigureFault::name)
        .containsExactly("pressureKPa");
    assertThat(
            faults(
                () ->
                    FoamFigure.answer(
                        new FoamFigure.Input(java.util.Collections.nCopies(21, closed), 5.0))))
        .extracting(FigureFault::name)
        .containsExactly("layers");
  }

  @Test
  void oneOwnMeasurementMovesTheOthersInTheBodyFigureToo() {
    var usual =
        BodyFigure.answer(new BodyFigure.Input("male", 1748.0, 82.0, java.util.Optional.empty()));
    var own =
        BodyFigure.answer(
            new BodyFigure.Input(
                "male",
                1748.0,
                82.0,
                java.util.Optional.of(java.util.Map.of("sittingheight", 866.0))));
    double lower = (Double) usual.get("eyeheightsitting") - (Double) own.get("eyeheightsitting");
    assertThat(lower).isBetween(41.0, 48.0);
  }
}
