package org.longlow.constraints.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.TestMachine;

/** What a form says in place of a field that says nothing. */
class UsualTest {

  private static final Layout LAYOUT = TestMachine.tourer().layout();

  private static Form.Row row(Form form, String key) {
    return form.rows().stream()
        .filter(r -> r.path().get(r.path().size() - 1).equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static Form part(String kind) {
    String name =
        LAYOUT.parts().values().stream()
            .filter(p -> p.kind().equals(kind))
            .findFirst()
            .orElseThrow()
            .name();
    return Forms.of(LAYOUT, new Entries.Entry("parts", name)).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "wheel, radius, the designation's",
    "wheel, crown, half the width",
    "wheel, tyre, such as 120/70 R17",
    "cushion, mass, from the material",
    "lamp, colour, the usual one of its kind",
    "lamp, y, 0 mm",
    "cushion, seat, rider",
    "wheel, left, not said",
    "wheel, axle, ''"
  })
  void aFieldOfAPartTellsWhatItHasWithoutBeingSaid(String kind, String key, String usual) {
    assertThat(row(part(kind), key).usual()).isEqualTo(usual);
  }

  /** Their defaults are constants of the demands, which the help is not read for. */
  @Test
  void everyDemandTellsItsDefault() {
    Form form = Forms.demands(LAYOUT);
    for (Demands.Key key : Demands.Key.values()) {
      List<Form.Row> rows =
          form.rows().stream().filter(r -> r.path().contains(key.word())).toList();
      assertThat(rows).as(key.word()).hasSize(1);
      assertThat(rows.get(0).usual()).as(key.word()).isEqualTo(key.standard().text());
    }
  }

  @Test
  void helpIsReadToTheEndOfWhatItSays() {
    assertThat(Usual.said("Wide; 3.5 mm where absent.")).isEqualTo("3.5 mm");
    assertThat(Usual.said("One of a, b, such as c; d.")).isEqualTo("such as c");
    assertThat(Usual.said("Absent for the axes of the machine."))
        .isEqualTo("the axes of the machine");
    assertThat(Usual.said("For people.")).isEmpty();
  }
}
