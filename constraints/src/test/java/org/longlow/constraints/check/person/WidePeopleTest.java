package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.pose.Posture;

/**
 * People on a machine: grips and foot rests out at the sides are as far away as they are, gear has
 * its weight, and a seat that lacks something passes nobody.
 */
class WidePeopleTest {

  /** Nell's links, mm, as the figure {@code body} says them (1590 mm, 57 kg). */
  private static final double ARM_MM = 301.7 + 290.7;

  private static Study runabout(UnaryOperator<String> edit) {
    String text = LayoutWriter.toJson(TestMachine.runabout().layout());
    String edited = edit.apply(text);
    assertThat(edited).isNotEqualTo(text);
    return Study.of(((ReadResult.Read) LayoutReader.read(edited, null)).layout());
  }

  private static Study grips(int yMm) {
    return runabout(text -> text.replaceFirst("\"y\": \"310 mm\"", "\"y\": \"" + yMm + " mm\""));
  }

  private static Study boards(int yMm) {
    return runabout(text -> text.replaceFirst("\"y\": \"215 mm\"", "\"y\": \"" + yMm + " mm\""));
  }

  private static Finding byId(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  private static Posture posture(Study study, String person) {
    return study.sittings().stream()
        .filter(s -> s.person().equals(person))
        .findFirst()
        .flatMap(Sitting::posture)
        .orElseThrow();
  }

  /** From the drawn shoulder to the grip's pin, by Pythagoras in space. */
  private static double shortMm(Study study, int yMm) {
    Posture p = posture(study, "Nell");
    double seen = p.shoulder().distance(study.placed().places().pin("grip"));
    return Math.hypot(seen, yMm - p.across().shoulderMm()) - ARM_MM;
  }

  @ParameterizedTest
  @ValueSource(ints = {500, 600})
  void gripsFarOutAreOutOfReach(int yMm) {
    Study study = grips(yMm);
    Finding hands = byId(study, "reach.Nell.hands");
    assertThat(hands.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(hands.figures().value()).isCloseTo(shortMm(study, yMm), within(0.2));
  }

  @Test
  void elbowsOpenWithTheGrips() {
    assertThat(byId(grips(309), "posture.Nell.elbow").verdict()).isEqualTo(Verdict.PASS);
    assertThat(byId(grips(309), "posture.Nell.elbow").figures().value()).isBetween(128.0, 132.0);
    assertThat(byId(grips(400), "posture.Nell.elbow").verdict()).isEqualTo(Verdict.PASS);
    Finding wide = byId(grips(450), "posture.Nell.elbow");
    assertThat(wide.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(wide.figures().value()).isBetween(160.0, 170.0);
    assertThat(byId(grips(450), "reach.Nell.hands").verdict()).isEqualTo(Verdict.PASS);
  }

  @Test
  void boardsFarOutAreOutOfReach() {
    assertThat(byId(boards(230), "reach.Nell.feet").verdict()).isEqualTo(Verdict.PASS);
    Study wide = boards(600);
    assertThat(byId(wide, "reach.Nell.feet").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(byId(wide, "reach.Nell.feet").figures().value()).isBetween(10.0, 200.0);
  }

  private static double ladenKg(Study study) {
    return study.standings().stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN)
        .filter(s -> s.condition().ladenBy(new Occupant("Nell", Occupant.RIDER)))
        .map(Standing::load)
        .findFirst()
        .orElseThrow()
        .total()
        .massKg();
  }

  /** Helmet 1.5, boots 2.0, jacket 2.5, trousers 1.5, gloves 0.3 kg. */
  @Test
  void gearHasItsWeight() {
    Study all = TestMachine.asFiled("runabout");
    Layout layout = TestMachine.runabout().layout();
    double machine =
        all.standings().stream()
            .filter(s -> s.kind() == Stance.Kind.UNLADEN)
            .findFirst()
            .orElseThrow()
            .load()
            .total()
            .massKg();
    assertThat(layout.crew()).containsKey("Nell");
    assertThat(ladenKg(all)).isCloseTo(machine + 57 + 7.8, within(1e-9));
    assertThat(byId(all, "load.Nell").text()).contains("kg with gear;");
    Study bare =
        runabout(
            text ->
                text.replace("\"helmet\": true", "\"helmet\": false")
                    .replace("\"boots\": true", "\"boots\": false")
                    .replace("\"clothes\": true", "\"clothes\": false"));
    assertThat(ladenKg(bare)).isCloseTo(machine + 57, within(1e-9));
    Study head =
        runabout(
            text ->
                text.replace("\"boots\": true", "\"boots\": false")
                    .replace("\"clothes\": true", "\"clothes\": false"));
    assertThat(ladenKg(head)).isCloseTo(machine + 57 + 1.5, within(1e-9));
    assertThat(byId(all, "sag.rear.Nell").figures().value())
        .isGreaterThan(byId(bare, "sag.rear.Nell").figures().value() + 1);
    assertThat(byId(all, "sink.Nell.pan").figures().value())
        .isGreaterThan(byId(bare, "sink.Nell.pan").figures().value() + 1);
  }

  private static Study without(String... parts) {
    return runabout(
        text -> {
          try {
            ObjectNode layout = (ObjectNode) new ObjectMapper().readTree(text);
            ObjectNode all = (ObjectNode) layout.get("parts");
            all.remove(List.of(parts));
            ((ObjectNode) all.get("pan")).remove("touches");
            return layout.toString();
          } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
          }
        });
  }

  @Test
  void aSeatThatLacksSomethingPassesNobodyAndSaysWhat() {
    String noBack = "has no back";
    String noFeet = "nowhere to put the feet";
    lacks(without("back"), List.of(noBack), Verdict.CAUTION, Verdict.CAUTION);
    lacks(without("boards"), List.of(noFeet), Verdict.FAIL, Verdict.CAUTION);
    lacks(without("back", "boards"), List.of(noBack, noFeet), Verdict.FAIL, Verdict.CAUTION);
    lacks(without("back", "grips"), List.of(noBack), Verdict.CAUTION, Verdict.FAIL);
    assertThat(TestMachine.asFiled("runabout").findings())
        .filteredOn(f -> f.kind() == PoseFindings.POSTURE)
        .allMatch(f -> f.verdict() == Verdict.PASS);
  }

  private static void lacks(Study study, List<String> what, Verdict feet, Verdict hands) {
    for (String person : List.of("Nell", "Joss")) {
      assertThat(byId(study, "seat." + person).verdict()).isEqualTo(Verdict.FAIL);
      Finding posture = byId(study, "posture." + person + ".posture");
      assertThat(posture.verdict()).isEqualTo(Verdict.CAUTION);
      assertThat(posture.text()).contains(what);
      assertThat(byId(study, "seat." + person).text()).contains(what);
      assertThat(byId(study, "reach." + person + ".feet").verdict()).isEqualTo(feet);
      assertThat(byId(study, "reach." + person + ".hands").verdict()).isEqualTo(hands);
    }
    assertThat(study.findings())
        .filteredOn(f -> f.kind() == PoseFindings.POSTURE || f.kind() == PoseFindings.REACH)
        .hasSize(6)
        .noneMatch(f -> f.verdict() == Verdict.PASS);
  }
}
