package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.longlow.sketcher.edit.Plates.at;
import static org.longlow.sketcher.edit.Plates.handles;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.words.Units;

/** What is written beside a point, and lengths as they are typed. */
class PointWordsTest {

  @Test
  void aPointSaysItsPlaceAndBothItsEdges() {
    Layout plate = Plates.points("[0, 0], [30, 40], [30, 0]");
    List<Handle> all = handles(plate);
    assertThat(PointWords.of(all, all.get(0), true, all.get(0).at(), Units.MM))
        .containsExactly(
            "x 400.0  z 500.0 mm",
            "30.0 mm from the point before, 180.0\u00b0 from level",
            "50.0 mm to the point after, 53.1\u00b0 from level");
    assertThat(PointWords.of(all, all.get(0), false, at(400, 500), Units.MM))
        .as("an open edge starts there")
        .hasSize(2);
    assertThat(PointWords.before(all, all.get(0), true)).isEqualTo(all.get(2));
    assertThat(PointWords.after(all, all.get(2), false)).isNull();
  }

  @Test
  void aLengthIsTypedKeyByKey() {
    TypedLength typed = TypedLength.NOTHING;
    for (String sign : List.of("-", "1", "2", ",", "5", ".", "x", "-")) {
      typed = typed.with(sign);
    }
    assertThat(typed.text()).isEqualTo("-12.5");
    assertThat(typed.mm(Units.MM)).contains(-12.5);
    assertThat(typed.back().back().mm(Units.MM)).contains(-12.0);
    assertThat(TypedLength.NOTHING.with("-").mm(Units.MM)).isEmpty();
    assertThat(TypedLength.NOTHING.back().isEmpty()).isTrue();
    assertThat(new TypedLength("123456789").with("1").text()).hasSize(9);
  }
}
