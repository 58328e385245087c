package org.longlow.constraints.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** A finding's stance is one that the machine has, with whoever it is about on it. */
class StanceOfFindingsTest {

  /** Names that read like two people, like somebody else's seat, or like a stance. */
  private static Study tourer(String bram, String runa) {
    String text =
        LayoutWriter.toJson(TestMachine.tourer().layout())
            .replace("\"Bram\"", '"' + bram + '"')
            .replace("\"Runa\"", '"' + runa + '"');
    return Study.of(((ReadResult.Read) LayoutReader.read(text, null)).layout());
  }

  private static void holds(Study study) {
    assertThat(study.findings())
        .filteredOn(f -> f.stance().isPresent())
        .isNotEmpty()
        .allSatisfy(
            f -> {
              Condition stance = f.stance().orElseThrow();
              assertThat(study.standing(stance)).as(f.id()).isPresent();
              if (stance.kind() == Stance.Kind.LADEN) {
                f.who().ifPresent(w -> assertThat(stance.aboard()).as(f.id()).contains(w));
              }
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout"})
  void ofTheWholeMachines(String name) {
    holds(TestMachine.asFiled(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Tom and Ann", "Runa as passenger", "Runa.passenger", "full bump"})
  void whateverPeopleAreCalled(String name) {
    Study plain = tourer("Bram", "Runa");
    Study odd = tourer(name, "Runa");
    holds(odd);
    assertThat(odd.standings()).hasSameSizeAs(plain.standings());
    assertThat(odd.findings()).hasSameSizeAs(plain.findings());
    assertThat(odd.findings().stream().map(Finding::id)).doesNotHaveDuplicates();
    // whoever rides with them, the stances of both are told apart
    List<Condition> laden =
        odd.standings().stream()
            .map(Standing::condition)
            .filter(c -> c.kind() == Stance.Kind.LADEN)
            .toList();
    assertThat(laden).doesNotHaveDuplicates();
    Optional<Finding> pair =
        odd.findings().stream()
            .filter(f -> f.who().filter(w -> !w.rides()).isPresent())
            .findFirst();
    assertThat(pair.orElseThrow().stance().orElseThrow().aboard()).hasSize(2);
  }
}
