package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.solve.Freedom;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** What scripts read: each name holds what the study says, in the order of the study. */
class StudyJsonTest {

  private static JsonNode read(Study study) throws JsonProcessingException {
    return new ObjectMapper().readTree(StudyJson.of(study));
  }

  private static void same(JsonNode json, double number) {
    if (Double.isFinite(number)) {
      assertThat(json.isNumber()).isTrue();
      assertThat(json.doubleValue()).isEqualTo(number);
    } else {
      assertThat(json.isNull()).isTrue();
    }
  }

  @Test
  void eachFindingIsThereWithItsFigures() throws JsonProcessingException {
    Study study = TestMachine.asFiled("runabout");
    JsonNode root = read(study);
    assertThat(names(root)).containsExactly("layout", "status", "freedoms", "bodies", "findings");
    assertThat(root.get("layout").textValue()).isEqualTo(study.layout().name());
    assertThat(root.get("findings")).hasSameSizeAs(study.findings());
    int without = 0;
    int cautioned = 0;
    for (int i = 0; i < study.findings().size(); i++) {
      Finding f = study.findings().get(i);
      JsonNode json = root.get("findings").get(i);
      assertThat(json.get("id").textValue()).isEqualTo(f.id());
      assertThat(json.get("subject").textValue()).isEqualTo(f.subject());
      assertThat(json.get("stance").textValue()).isEqualTo(f.stanceWords());
      assertThat(json.get("verdict").textValue())
          .isEqualTo(
              switch (f.verdict()) {
                case PASS -> "pass";
                case FAIL -> "fail";
                case CAUTION -> "caution";
                case NOT_APPLICABLE -> "not-applicable";
              });
      same(json.get("value"), f.value());
      same(json.get("limit"), f.limit());
      same(json.get("margin"), f.margin());
      assertThat(json.get("unit").textValue()).isEqualTo(f.unit().word());
      assertThat(json.get("source").textValue()).isEqualTo(f.source());
      assertThat(json.get("text").textValue()).isEqualTo(f.text());
      assertThat(json.get("group").textValue()).isEqualTo(f.group().title());
      assertThat(json.path("caution").asText("")).isEqualTo(f.group().caution());
      assertThat(json.has("caution")).isEqualTo(!f.group().caution().isEmpty());
      without += Double.isNaN(f.limit()) ? 1 : 0;
      cautioned += json.has("caution") ? 1 : 0;
    }
    assertThat(without).isPositive();
    assertThat(cautioned).isBetween(1, study.findings().size());
  }

  private static List<String> names(JsonNode json) {
    List<String> names = new ArrayList<>();
    json.fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** Two wheels and a loose bar of known length, which has three ways to move. */
  private static Study bar(String ties) {
    String file =
        """
        {"longlow": 1, "name": "bar",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "a": [500, 700], "b": [900, 700]},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120}},
         "ties": {"long": {"tie": "distance", "pins": ["a", "b"], "is": 400}%s}}
        """
            .formatted(ties);
    return Study.of(Plank.layout(file));
  }

  @Test
  void freedomsAreThereWithTheirSpeeds() throws JsonProcessingException {
    Study study = bar("");
    List<Freedom> freedoms = study.placed().report().diagnosis().orElseThrow().freedoms();
    JsonNode json = read(study).get("freedoms");
    assertThat(json).hasSize(3).hasSameSizeAs(freedoms);
    for (int i = 0; i < 3; i++) {
      assertThat(json.get(i).get("lead").textValue()).isEqualTo(freedoms.get(i).lead());
      JsonNode moves = json.get(i).get("moves");
      assertThat(names(moves)).containsExactlyElementsOf(freedoms.get(i).moves().keySet());
      freedoms
          .get(i)
          .moves()
          .forEach(
              (name, speed) ->
                  assertThat(moves.get(name).doubleValue()).isCloseTo(speed, within(0.0)));
    }
  }

  /** Two wheels as tori of 600 over all and 120 thick, of 10 kg each. */
  private static JsonNode wheels(int wheelbase) throws JsonProcessingException {
    String file =
        """
        {"longlow": 1, "name": "wheels",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [%d, 300], "nailed": true}},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120, "mass": 10},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120, "mass": 10}}}
        """
            .formatted(wheelbase);
    return read(Study.of(Plank.layout(file))).get("bodies");
  }

  @Test
  void silhouettesAreThoseOfTwoTori() throws JsonProcessingException {
    JsonNode all = wheels(1500).get("silhouettes");
    assertThat(all).hasSize(3);
    double end = 480 * 120 + Math.PI * 60 * 60;
    silhouette(all.get(0), "side", 2 * Math.PI * 300 * 300, "xMm", 750, "zMm", 300);
    silhouette(all.get(1), "front", end, "yMm", 0, "zMm", 300);
    silhouette(all.get(2), "below", 2 * end, "xMm", 750, "yMm", 0);
  }

  private static void silhouette(
      JsonNode json, String from, double area, String x, double atX, String z, double atZ) {
    assertThat(names(json)).containsExactly("of", "from", "areaMm2", x, z);
    assertThat(json.get("of").textValue()).isEqualTo("machine alone");
    assertThat(json.get("from").textValue()).isEqualTo(from);
    // curves are chords within 0.1 mm
    assertThat(json.get("areaMm2").doubleValue()).isCloseTo(area, within(0.002 * area));
    assertThat(json.get(x).doubleValue()).isCloseTo(atX, within(0.1));
    assertThat(json.get(z).doubleValue()).isCloseTo(atZ, within(0.1));
  }

  /** Farther apart they resist pitching and yawing by 20 kg times the square of their arms more. */
  @Test
  void inertiaIsAboutTheCentreOfMass() throws JsonProcessingException {
    JsonNode near = wheels(1500).get("inertia").get(0);
    JsonNode far = wheels(2000).get("inertia").get(0);
    assertThat(names(near))
        .containsExactly("stance", "massKg", "rollKgM2", "pitchKgM2", "yawKgM2", "productKgM2");
    assertThat(near.get("massKg").doubleValue()).isEqualTo(20);
    for (String about : List.of("pitchKgM2", "yawKgM2")) {
      assertThat(far.get(about).doubleValue() - near.get(about).doubleValue())
          .isCloseTo(20 * (1.0 - 0.75 * 0.75), within(1e-6));
    }
    assertThat(far.get("rollKgM2").doubleValue())
        .isCloseTo(near.get("rollKgM2").doubleValue(), within(1e-9));
    assertThat(near.get("productKgM2").doubleValue()).isCloseTo(0, within(1e-9));
  }

  @Test
  void statusSaysWhetherItPassesFailsOrContradicts() throws JsonProcessingException {
    Study study = bar("");
    assertThat(read(study).get("status").textValue())
        .isEqualTo(
            study.findings().stream().anyMatch(f -> f.verdict().word().equals("fail"))
                ? "fail"
                : "pass");
    Study nothing =
        new Study(
            study.layout(),
            study.placed(),
            study.shapes(),
            study.sittings(),
            study.standings(),
            study.findings().stream().filter(f -> !f.verdict().word().equals("fail")).toList());
    assertThat(read(nothing).get("status").textValue()).isEqualTo("pass");
    Study against =
        bar(", \"short\": {\"tie\": \"distance\", \"pins\": [\"a\", \"b\"], \"is\": 300}");
    assertThat(read(against).get("status").textValue()).isEqualTo("contradicts");
  }
}
