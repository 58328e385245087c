package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Figures from JSON to JSON against worked numbers. Those of geometry, statics and lean were
 * computed in double precision by closed forms and confirmed by a second computation (plane
 * intersection, statics, sampled tori); foam from the law fitted to IFD25 and IFD65; body from
 * regressions on the ANSUR II survey (Gordon et al. 2014, NATICK/TR-15/007). 1e-6 is the figure's
 * own promise.
 */
class FigureAnswersTest {

  private static final double PROMISED = 1e-6;

  private static String answer(String kind, String json) {
    FigureAnswers.Answer answer = FigureAnswers.answer(kind, json);
    assertThat(answer.faults()).isEmpty();
    return answer.json();
  }

  /** Returns the {@code nth} number called {@code name}, counted from 0. */
  private static double number(String json, String name, int nth) {
    Matcher m = Pattern.compile('"' + name + "\": (-?[0-9.eE+-]+)").matcher(json);
    for (int i = 0; i <= nth; i++) {
      assertThat(m.find()).as("%s in %s", name, json).isTrue();
    }
    return Double.parseDouble(m.group(1));
  }

  /** What a kind says it takes is what it answers to when its words are filled in. */
  @Test
  void everyKindSaysWhatItTakes() {
    assertThat(FigureAnswers.takes("trail"))
        .isEqualTo("{\"radiusMm\": number, \"rakeDeg\": number, \"offsetMm\": number}");
    for (String kind : FigureAnswers.kinds()) {
      String filled =
          FigureAnswers.takes(kind)
              .replace(" or nothing", "")
              .replace(", ...", "")
              .replace("true or false", "true")
              .replace("{name: number}", "{\"stature\": 1700}")
              .replace("number", "1")
              .replace(": text", ": \"x\"");
      assertThat(FigureAnswers.answer(kind, filled).faults())
          .as(kind + " " + filled)
          .noneMatch(f -> f.contains("is not a known name") || f.contains("must be a"));
    }
  }

  private static void holds(String json, String name, double value) {
    assertThat(number(json, name, 0)).as(name).isCloseTo(value, within(PROMISED));
  }

  @ParameterizedTest
  @CsvSource({
    "120/70 R17, 84.0, 599.8, 299.9, 60",
    "180/55 R17, 99.0, 629.8, 314.9, 90",
    "200/55 R17, 110.0, 651.8, 325.9, 100",
    "130/80-17, 104.0, 639.8, 319.9, 65",
    "130/90-16, 117.0, 640.4, 320.2, 65",
    "100/90-19, 90.0, 662.6, 331.3, 50",
    "90/90-21, 81.0, 695.4, 347.7, 45"
  })
  void tyre(String size, double height, double diameter, double radius, double crown) {
    String json = answer("tyre", "{\"size\": \"" + size + "\"}");
    holds(json, "sectionHeightMm", height);
    holds(json, "diameterMm", diameter);
    holds(json, "freeRadiusMm", radius);
    holds(json, "sectionRadiusMm", crown);
    assertThat(json).contains("\"nearEquivalent\": false");
  }

  @Test
  void alphabeticTyreIsANearEquivalent() {
    String json = answer("tyre", "{\"size\": \"MT90-16\"}");
    holds(json, "freeRadiusMm", 320.2);
    assertThat(json).contains("\"nearEquivalent\": true");
  }

  @ParameterizedTest
  @CsvSource({
    "299.9, 24, 30, 100.684994368849, 91.980319258432, 37.411766284215",
    "299.9, 27, 35, 113.525263986177, 101.151750871890, 45.921933927860",
    "320.2, 32, 45, 147.020138330072, 124.680148407472, 66.070412508574",
    "299.9, 45, 100, 158.478643762690, 112.061323677846, 79.239321881345",
    "254.0, 20, 0, 92.448439503615, 86.873116404720, 29.712355723890"
  })
  void trail(double radius, double rake, double offset, double ground, double normal, double flop) {
    String json =
        answer(
            "trail",
            "{\"radiusMm\":" + radius + ",\"rakeDeg\":" + rake + ",\"offsetMm\":" + offset + "}");
    holds(json, "groundTrailMm", ground);
    holds(json, "normalTrailMm", normal);
    holds(json, "flopMm", flop);
  }

  @ParameterizedTest
  @CsvSource({
    "700, 300, 250, 1500, 300, 0, 300, 0, 39.8055710923, 0",
    "700, 300, 250, 1500, 300, 60, 300, 60, 42.0750220508, 0",
    "700, 300, 250, 1500, 299.9, 60, 314.9, 90, 42.7725206784, -0.4151776452",
    "1350, 320, 220, 1500, 299.9, 60, 314.9, 90, 36.3142547709, -0.2762101007",
    "200, 280, 300, 1500, 299.9, 60, 314.9, 90, 51.5148263780, -0.6955277789",
    "900, 400, 150, 1650, 330, 40, 330, 120, 21.2527453058, -0.2027158296"
  })
  void lean(
      double x,
      double y,
      double z,
      double wheelbase,
      double frontRadius,
      double frontCrown,
      double rearRadius,
      double rearCrown,
      double roll,
      double pitch) {
    String json =
        answer(
            "lean", lean(x, y, z, wheelbase, frontRadius, frontCrown, rearRadius, rearCrown, ""));
    holds(json, "touchRollDeg", roll);
    holds(json, "touchPitchDeg", pitch);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 250.0, 0",
    "10, 195.2620984380, -0.0176776226",
    "20, 136.9005178388, -0.0735428022",
    "30, 76.6886602729, -0.1772767841",
    "40, 16.4562776661, -0.3499838398",
    "45, -13.0940493994, -0.4746788716",
    "50, -41.9659897612, -0.6368611053"
  })
  void clearanceAtARoll(double roll, double clearance, double pitch) {
    String json =
        answer("lean", lean(700, 300, 250, 1500, 299.9, 60, 314.9, 90, ",\"rollDeg\":" + roll));
    holds(json, "clearanceMm", clearance);
    holds(json, "pitchDeg", pitch);
  }

  private static String lean(
      double x,
      double y,
      double z,
      double p,
      double rf,
      double cf,
      double rr,
      double cr,
      String more) {
    return "{\"wheelbaseMm\":"
        + p
        + ",\"front\":{\"radiusMm\":"
        + rf
        + ",\"sectionRadiusMm\":"
        + cf
        + "},\"rear\":{\"radiusMm\":"
        + rr
        + ",\"sectionRadiusMm\":"
        + cr
        + "},\"point\":{\"xMm\":"
        + x
        + ",\"yMm\":"
        + y
        + ",\"zMm\":"
        + z
        + "}"
        + more
        + "}";
  }

  @Test
  void axleLoads() {
    double[][] masses = {
      {38, 620, 420},
      {75, 640, 390},
      {32, 1490, 350},
      {18, 0, 315},
      {22, 760, 640},
      {10, 480, 500},
      {80, 560, 700}
    };
    StringBuilder list = new StringBuilder();
    for (double[] m : masses) {
      list.append(list.length() == 0 ? "" : ",")
          .append("{\"massKg\":" + m[0] + ",\"xMm\":" + m[1] + ",\"zMm\":" + m[2] + "}");
    }
    String json = answer("axle-loads", "{\"wheelbaseMm\":1500,\"masses\":[" + list + "]}");
    holds(json, "massKg", 275);
    holds(json, "cgXMm", 674.763636363636);
    holds(json, "cgZMm", 498.763636363636);
    holds(json, "frontN", 1213.147982666667);
    holds(json, "rearN", 1483.680767333333);
    holds(json, "frontShare", 0.44984242424242);
    holds(json, "brakeLiftG", 1.654564012832);
    holds(json, "driveLiftG", 1.352872557597);
  }

  private static String layer(double mm, double density, double ifd, double factor) {
    return "{\"thicknessMm\":"
        + mm
        + ",\"densityKgM3\":"
        + density
        + ",\"ifd25N\":"
        + ifd
        + ",\"supportFactor\":"
        + factor
        + "}";
  }

  @Test
  void foamOfOneSoftLayerBottoms() {
    String json =
        answer("foam", "{\"layers\":[" + layer(50, 28, 90, 1.9) + "],\"pressureKPa\":6.2}");
    assertThat(number(json, "strain", 0)).isCloseTo(0.7995716342073774, within(PROMISED));
    assertThat(json).contains("\"verdict\": \"bottoms\"");
    holds(json, "remainingMm", 10.021418289631129);
  }

  @Test
  void foamOfThreeLayersIsSound() {
    String layers =
        layer(25, 35, 130, 2.4) + "," + layer(30, 45, 170, 2.5) + "," + layer(40, 48, 245, 2.76);
    String json = answer("foam", "{\"layers\":[" + layers + "],\"pressureKPa\":6.2}");
    double[] strains = {0.6263895553307157, 0.5130176857596809, 0.3254214149534984};
    double[] sinks = {15.659738883267892, 15.390530572790425, 13.016856598139936};
    for (int i = 0; i < 3; i++) {
      assertThat(number(json, "strain", i)).isCloseTo(strains[i], within(PROMISED));
      assertThat(number(json, "sinkMm", i)).isCloseTo(sinks[i], within(PROMISED));
    }
    assertThat(number(json, "sinkMm", 3)).isCloseTo(44.067126054198255, within(PROMISED));
    holds(json, "remainingMm", 50.932873945801745);
    assertThat(json).contains("\"verdict\": \"sound\"");
  }

  @Test
  void foamUnderASpentTopperHolds() {
    String layers =
        layer(20, 28, 90, 1.9) + "," + layer(30, 40, 155, 2.4) + "," + layer(40, 48, 245, 2.76);
    String json = answer("foam", "{\"layers\":[" + layers + "],\"pressureKPa\":6.2}");
    assertThat(number(json, "sinkMm", 3)).isCloseTo(45.87770979, within(PROMISED));
    assertThat(json).contains("\"verdict\": \"topper spent\"");
  }

  @ParameterizedTest
  @CsvSource({
    "male, 1756, 80, 917.499412, 410.222672, 419.346568, 334.788436, 270.19428, 329.088056",
    "female, 1620, 61, 853.32701, 377.6599, 399.83359, 308.25564, 243.67508, 296.88803"
  })
  void body(
      String sex,
      double stature,
      double mass,
      double sitting,
      double thigh,
      double shank,
      double upperArm,
      double foot,
      double elbowToGrip) {
    String json =
        answer(
            "body",
            "{\"sex\":\"" + sex + "\",\"statureMm\":" + stature + ",\"massKg\":" + mass + "}");
    holds(json, "sittingheight", sitting);
    holds(json, "d_thighlink", thigh);
    holds(json, "d_shanklink", shank);
    holds(json, "acromionradialelength", upperArm);
    holds(json, "footlength", foot);
    holds(json, "d_elbowtogrip", elbowToGrip);
    assertThat(json).contains("\"segmentMassesKg\"", "\"segmentCentres\"");
  }

  @ParameterizedTest
  @CsvSource({
    "tyre, {}, size",
    "trail, [], object",
    "foam, {\"layers\":[]}, pressureKPa",
    "body, {\"sex\":\"other\"}, statureMm",
    "lean, {\"wheelbase\":1}, wheelbase"
  })
  void badInputNamesWhatIsWrong(String kind, String json, String says) {
    FigureAnswers.Answer answer = FigureAnswers.answer(kind, json);
    assertThat(answer.json()).isEmpty();
    assertThat(String.join("\n", answer.faults())).contains(says);
  }
}
