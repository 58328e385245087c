package org.longlow.constraints.passage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** Ways about a seat are found once for the same bodies, and anew for any others. */
class AccessKeptTest {

  private final Study study = TestMachine.asFiled("runabout");
  private final Places places = study.placed().places();
  private final SeatParts seat = study.sitting("Nell", "rider").orElseThrow().parts();

  private Access of(SeatParts about, List<PartShape> shapes) {
    return Access.of(about, places, shapes).orElseThrow();
  }

  @Test
  void theSameBodiesAreLookedAtOnceAndOthersAnew() {
    List<PartShape> all = new ArrayList<>(study.shapes().values());
    Access first = of(seat, all);
    assertThat(of(seat, new ArrayList<>(all))).isSameAs(first);
    List<PartShape> near =
        all.stream().filter(shape -> Access.concerns(seat, places, shape)).toList();
    assertThat(near).hasSizeBetween(2, all.size());
    assertThat(of(seat, near)).isSameAs(first);
    assertThat(of(seat, near.subList(1, near.size()))).isNotSameAs(first);
    assertThat(of(seat, near.subList(0, near.size() - 1))).isNotSameAs(first);
    List<PartShape> turned = new ArrayList<>(near);
    turned.set(0, near.get(1));
    turned.set(1, near.get(0));
    assertThat(of(seat, turned)).isNotSameAs(first);
  }
}
