package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;

/** A material weighs only what it fills: what is hollow has the mass it is given, or none known. */
class HollowMassTest {

  private static final Path FOLDER = Path.of("src/main/resources/org/longlow/demo");
  private static final String TANK = "\"tank\": {\"kind\": \"tank\"";
  private static final String TANK_MASS =
      "\"mass\": \"6 kg\", \"holds\": \"9 kg\", \"material\": \"steel\"";

  private static Study curlew(String... replaced) {
    String text = Demos.text("curlew");
    for (int i = 0; i < replaced.length; i += 2) {
      assertThat(text).contains(replaced[i]);
      text = text.replace(replaced[i], replaced[i + 1]);
    }
    ReadResult result = LayoutReader.read(text, FOLDER);
    assertThat(result).as(String.valueOf(result)).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) result).layout());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "tank",
        "box",
        "engine",
        "motor",
        "battery",
        "silencer",
        "radiator",
        "latch",
        "bracket"
      })
  void hollowKindOfAMaterialHasNoKnownMass(String kind) {
    Study study =
        curlew(TANK, "\"tank\": {\"kind\": \"" + kind + "\"", TANK_MASS, "\"material\": \"steel\"");
    assertThat(study.shapes().get("tank").massKg()).isZero();
    Finding unknown =
        study.findings().stream().filter(f -> f.id().equals("mass.unknown")).findFirst().get();
    assertThat(unknown.text()).contains("tank").contains("give its mass");
    assertThat(study.findings())
        .filteredOn(f -> f.id().startsWith("load."))
        .isNotEmpty()
        .noneMatch(f -> f.verdict() == Verdict.PASS);
  }

  @ParameterizedTest
  @CsvSource({
    "frontWheel, rubber",
    "fork, steel",
    "swingarm, steel",
    "sideStand, steel",
    "headlamp, abs"
  })
  void neitherDoWheelsForksArmsStandsAndLamps(String part, String material) {
    String text = Demos.text("curlew");
    int at = text.indexOf("\"" + part + "\": {\"kind\"");
    assertThat(at).as(part).isPositive();
    int mass = text.indexOf("\"mass\": \"", at);
    int end = text.indexOf("kg\"", mass) + 3;
    String bare = text.substring(0, mass) + "\"note\": \"no mass\"" + text.substring(end);
    String line = bare.substring(at, bare.indexOf("\n    \"", at));
    if (!line.contains("\"material\"")) {
      bare =
          bare.replace(
              "\"note\": \"no mass\"", "\"note\": \"no mass\", \"material\": \"" + material + "\"");
    }
    ReadResult result = LayoutReader.read(bare, FOLDER);
    assertThat(result).as(String.valueOf(result)).isInstanceOf(ReadResult.Read.class);
    Study study = Study.of(((ReadResult.Read) result).layout());
    assertThat(study.shapes().get(part).massKg()).isZero();
    assertThat(study.findings())
        .anyMatch(f -> f.id().equals("mass.unknown") && f.text().contains(part));
  }

  // 7850 kg/m³ times area and breadth
  @Test
  void blockIsWeighedByItsVolume() {
    Study study =
        curlew(
            TANK,
            "\"tank\": {\"kind\": \"block\"",
            TANK_MASS,
            "\"material\": \"steel\"",
            "\"profile\": \"round\"",
            "\"profile\": \"flat\"");
    double area = study.shapes().get("tank").outline().getArea();
    assertThat(study.shapes().get("tank").massKg()).isCloseTo(area * 250 * 7850e-9, within(1e-6));
    assertThat(study.findings()).noneMatch(f -> f.id().equals("mass.unknown"));
  }

  // pi/4 (d² - (d - 2 wall)²) times the length of both, 7850 kg/m³
  @Test
  void tubeIsWeighedByItsWall() {
    Study study = curlew();
    double section = Math.PI / 4 * (22 * 22 - 18.7 * 18.7);
    var places = study.placed().places();
    double length = places.pin("swingPivot").distance(places.pin("strutTop"));
    assertThat(study.shapes().get("strut").massKg())
        .isCloseTo(2 * section * length * 7850e-9, within(1e-6));
  }

  @Test
  void shippedMachinesKnowAllTheirMasses() {
    assertThat(curlew().findings()).noneMatch(f -> f.id().equals("mass.unknown"));
  }
}
