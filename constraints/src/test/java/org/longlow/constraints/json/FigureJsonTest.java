package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Fault;

class FigureJsonTest {

  /** A colour of the test. */
  enum Tone {
    DARK_RED,
    WHITE
  }

  record Point(double xMm, double zMm) {
    Point {
      if (zMm < 0) {
        throw new IllegalArgumentException("zMm is " + zMm + ", must not be below the ground");
      }
    }
  }

  record Input(
      double massKg,
      OptionalDouble backDeg,
      boolean headRest,
      int teeth,
      String size,
      Tone tone,
      Point point,
      Optional<Point> other,
      List<Double> speedsMs,
      List<Point> masses,
      Optional<Map<String, Double>> measured,
      Double handsShare) {}

  record Output(
      double z, double a, OptionalDouble gone, Double nothing, List<Point> list, double[][] m) {}

  private static final String GOOD =
      """
      {"massKg": 80.1, "headRest": true, "teeth": 17, "size": "120/70 R17", "tone": "dark-red",
       "point": {"xMm": 1, "zMm": 2.5}, "speedsMs": [1, 2.5], "masses": [{"xMm": 3, "zMm": 4}]}
      """;

  private static String lines(String json) {
    FigureJson.Result<Input> result = FigureJson.read(json, Input.class);
    return result instanceof FigureJson.Result.Refused<Input> refused
        ? refused.faults().stream().map(Fault::line).reduce("", (a, b) -> a + b + "\n")
        : "";
  }

  private static Input bound(String json) {
    assertThat(lines(json)).isEmpty();
    return ((FigureJson.Result.Bound<Input>) FigureJson.read(json, Input.class)).value();
  }

  @Test
  void recordIsBoundByItsNames() {
    assertThat(bound(GOOD))
        .isEqualTo(
            new Input(
                80.1,
                OptionalDouble.empty(),
                true,
                17,
                "120/70 R17",
                Tone.DARK_RED,
                new Point(1, 2.5),
                Optional.empty(),
                List.of(1.0, 2.5),
                List.of(new Point(3, 4)),
                Optional.empty(),
                null));
  }

  @Test
  void whatMayBeAbsentMayAlsoBeThereOrNull() {
    Input input =
        bound(
            GOOD.replace(
                "{\"massKg\"",
                "{\"backDeg\": 30, \"other\": {\"xMm\": 0, \"zMm\": 0}, \"handsShare\": 0.5,"
                    + " \"measured\": {\"stature\": 1700}, \"massKg\""));
    assertThat(input.backDeg()).hasValue(30);
    assertThat(input.other()).contains(new Point(0, 0));
    assertThat(input.handsShare()).isEqualTo(0.5);
    assertThat(input.measured()).contains(Map.of("stature", 1700.0));
    assertThat(
            bound(
                GOOD.replace(
                    "{\"massKg\"",
                    "{\"backDeg\": null, \"other\": null, \"handsShare\": null, \"measured\": null,"
                        + " \"massKg\"")))
        .isEqualTo(bound(GOOD));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          "massKg": 80.1,  ~ ``                  ~ $.massKg: is missing
          "massKg": 80.1,  ~ "masKg": 80.1,      ~ $.masKg = 80.1: is not a known name here; did you mean massKg?
          "massKg": 80.1,  ~ "massKg": "80.1",   ~ $.massKg = "80.1": must be a finite number
          "massKg": 80.1,  ~ "massKg": null,     ~ $.massKg = null: must be a finite number
          "massKg": 80.1,  ~ "massKg": 1e999,    ~ $.massKg = 1e999: is beyond the range of numbers
          "massKg": 80.1,  ~ "massKg": NaN,      ~ NaN and Infinity are not numbers
          "massKg": 80.1,  ~ "massKg": 80.1, "massKg": 3, ~ $.massKg: is written twice
          "headRest": true ~ "headRest": 1       ~ $.headRest = 1: must be true or false
          "teeth": 17      ~ "teeth": 17.5       ~ $.teeth = 17.5: must be a whole number
          "teeth": 17      ~ "teeth": 1e12       ~ must be a whole number
          "size": "120/70 R17" ~ "size": 3       ~ $.size = 3: must be text
          "dark-red"       ~ "dark-rad"          ~ did you mean dark-red?
          {"xMm": 1, "zMm": 2.5} ~ 7             ~ $.point = 7: must be an object
          {"xMm": 1, "zMm": 2.5} ~ {"xMm": 1}    ~ $.point.zMm: is missing
          {"xMm": 1, "zMm": 2.5} ~ {"xMm": 1, "zMm": -2} ~ $.point: zMm is -2.0, must not be below the ground
          [1, 2.5]         ~ 1                   ~ $.speedsMs = 1: must be a list
          [1, 2.5]         ~ [1, "x"]            ~ $.speedsMs[1] = "x": must be a finite number
          {"xMm": 3, "zMm": 4} ~ {"xMm": 3, "y": 4} ~ $.masses[0].y = 4: is not a known name
          """)
  void wrongInputIsNamed(String piece, String spoilt, String words) {
    assertThat(GOOD).contains(piece);
    assertThat(lines(GOOD.replace(piece, spoilt))).contains(words);
  }

  @Test
  void allFaultsComeAtOnce() {
    assertThat(lines("{\"point\": {}, \"teeth\": true}").lines()).hasSize(9);
    assertThat(lines("[]")).isEqualTo("$ = []: must be an object: { ... }\n");
    assertThat(lines("")).startsWith("$: is empty");
  }

  @Test
  void outputKeepsOrderAndPrecisionInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      Output output =
          new Output(
              0.1 + 0.2,
              1e-30,
              OptionalDouble.empty(),
              null,
              List.of(new Point(1, 2)),
              new double[][] {{1, Double.NaN}, {1e22, -0.5}});
      assertThat(FigureJson.write(output))
          .isEqualTo(
              """
              {
                "z": 0.30000000000000004,
                "a": 1.0E-30,
                "gone": null,
                "nothing": null,
                "list": [{"xMm": 1.0, "zMm": 2.0}],
                "m": [[1.0, null], [1.0E22, -0.5]]
              }
              """);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void numbersReadBackToTheLastBit() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 2000; i++) {
      double x = Double.longBitsToDouble(random.nextLong());
      double z = random.nextDouble();
      if (Double.isFinite(x)) {
        Point point = new Point(x, z);
        assertThat(FigureJson.read(FigureJson.write(point), Point.class))
            .isEqualTo(new FigureJson.Result.Bound<>(point));
      }
    }
  }

  record Unbindable(Object thing) {}

  @Test
  void componentOfAnUnknownTypeIsABrokenCall() {
    assertThatThrownBy(() -> FigureJson.read("{\"thing\": 1}", Unbindable.class))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
