package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.geom.PointMm;

/** Kinds to draw are found by their first letters. */
class DrawnKindTest {

  @Test
  void fewLettersFindAKind() {
    assertThat(DrawnKind.matching("ra").get(0)).isEqualTo("radiator");
    assertThat(DrawnKind.matching("rai").get(0)).isEqualTo("rail");
    assertThat(DrawnKind.matching(" TA")).first().isEqualTo("tank");
    assertThat(DrawnKind.matching("xhau")).containsExactly("exhaust");
    assertThat(DrawnKind.matching("nothing so called")).isEmpty();
    assertThat(DrawnKind.matching("")).isEqualTo(DrawnKind.all()).contains(DrawnKind.FIRST);
  }

  @Test
  void thoseThatBeginSoComeFirstAndNoneTwice() {
    for (String letter : List.of("a", "e", "l", "r", "s")) {
      List<String> found = DrawnKind.matching(letter);
      assertThat(found).doesNotHaveDuplicates();
      long begin = found.stream().filter(k -> k.startsWith(letter)).count();
      assertThat(found.subList(0, (int) begin)).allMatch(k -> k.startsWith(letter)).isSorted();
      assertThat(found.subList((int) begin, found.size())).allMatch(k -> k.contains(letter));
    }
  }

  @Test
  void eachCanBeDrawn() {
    List<PointMm> points =
        List.of(new PointMm(400, 700), new PointMm(600, 700), new PointMm(600, 820));
    Layout wren = Tried.wren();
    for (String kind : DrawnKind.all()) {
      Edit edit =
          NewTube.kinds().contains(kind)
              ? NewTube.of(kind, "drawn", points.stream().map(PinSpot::at).toList())
              : NewPart.of(kind, "drawn", points);
      assertThat(edit.applied(wren).parts().get("drawn").kind()).isEqualTo(kind);
    }
  }
}
