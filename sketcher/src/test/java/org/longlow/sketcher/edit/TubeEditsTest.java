package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.longlow.sketcher.edit.Plates.after;
import static org.longlow.sketcher.edit.Plates.at;
import static org.longlow.sketcher.edit.Plates.places;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TubePart;
import org.longlow.rider.geom.PointMm;

/** Bends of a tube, and where points snap to. */
class TubeEditsTest {

  private static final Layout BEFORE = Plates.points("[0, 0], [100, 0], [100, 60]");

  private static TubePart rail(Layout layout) {
    return (TubePart) layout.parts().get("rail");
  }

  @Test
  void aBendIsAddedOnAStraightAndTakenOut() {
    EdgeSpot spot =
        EdgeSpot.nearest(BEFORE, places(BEFORE), "rail", -1, at(500, 710)).orElseThrow();
    assertThat(spot.edge()).isZero();
    assertThat(spot.at()).isEqualTo(at(500, 700));
    Layout bent = after(BEFORE, TubeEdits.addBend("rail", 0, at(500, 720)));
    assertThat(rail(bent).path()).containsExactly("a", "railBend", "b", "c");
    assertThat(places(bent).pin("railBend")).isEqualTo(at(500, 720));
    Layout twice = after(bent, TubeEdits.addBend("rail", 2, at(800, 740)));
    assertThat(rail(twice).path()).containsExactly("a", "railBend", "b", "railBend2", "c");
    Layout once = after(twice, TubeEdits.takeOut("rail", 3));
    assertThat(once).isEqualTo(bent);
    assertThat(after(once, TubeEdits.takeOut("rail", 1))).isEqualTo(BEFORE);
  }

  @Test
  void aPinThatOthersNameOrThatWasThereStays() {
    Layout without = after(BEFORE, TubeEdits.takeOut("rail", 1));
    assertThat(rail(without).path()).containsExactly("a", "c");
    assertThat(without.pins()).containsKey("b");
    assertThatThrownBy(() -> TubeEdits.takeOut("rail", 0).applied(without))
        .hasMessageContaining("a tube needs two ends");
    Layout bent = after(BEFORE, TubeEdits.addBend("rail", 0, at(500, 720)));
    Layout holed =
        after(
            Plates.read(org.longlow.constraints.json.LayoutWriter.toJson(bent)),
            HoleEdits.addOnPin("plate", "railBend", 0.5));
    assertThat(after(holed, TubeEdits.takeOut("rail", 1)).pins()).containsKey("railBend");
  }

  @Test
  void radiusDiameterAndWallAreTypedOver() {
    Layout now = BEFORE;
    for (String[] set :
        new String[][] {{"bendRadius", "80 mm"}, {"diameter", "1 1/4 in"}, {"wall", "1.5 mm"}}) {
      now = after(now, Edits.set(new Target.OfPart("rail", List.of(set[0]), set[0]), set[1]));
    }
    assertThat(rail(now).bendRadius().text()).isEqualTo("80 mm");
    assertThat(rail(now).diameter().text()).isEqualTo("1 1/4 in");
    assertThat(rail(now).wall().text()).isEqualTo("1.5 mm");
  }

  // --- where points snap to

  private static PointSnap snap(PointMm to, PointSnap.Along along) {
    return PointSnap.of(
        to,
        at(3, 4),
        along,
        Map.of("pin", at(200, 200), "far", at(205, 200)),
        List.of(at(50, 80), at(300, 400)),
        6,
        5);
  }

  @Test
  void pinsComeFirstThenOwnPointsThenTheGrid() {
    assertThat(snap(at(202, 201), PointSnap.Along.ANY))
        .isEqualTo(new PointSnap(at(200, 200), "pin", "at pin pin"));
    assertThat(snap(at(203, 200), PointSnap.Along.ANY).pin()).isEqualTo("far");
    assertThat(snap(at(53, 121), PointSnap.Along.ANY))
        .isEqualTo(new PointSnap(at(50, 120), "", "plumb with another point"));
    assertThat(snap(at(122, 396), PointSnap.Along.ANY).at()).isEqualTo(at(120, 400));
    assertThat(snap(at(122, 123.1), PointSnap.Along.ANY))
        .isEqualTo(new PointSnap(at(120, 125), "", ""));
  }

  @Test
  void alongOneAxisTheOtherCoordinateStays() {
    assertThat(snap(at(202, 201), PointSnap.Along.X).at()).isEqualTo(at(200, 4));
    assertThat(snap(at(202, 201), PointSnap.Along.Z).at()).isEqualTo(at(3, 200));
    assertThat(snap(at(48, 201), PointSnap.Along.X))
        .isEqualTo(new PointSnap(at(50, 4), "", "plumb with another point"));
  }

  @Test
  void aLengthTypedKeepsTheWay() {
    assertThat(PointSnap.exactly(at(10, 10), at(13, 14), 10)).isEqualTo(at(16, 18));
    assertThat(PointSnap.exactly(at(10, 10), at(10, 10), 10)).isEqualTo(at(20, 10));
  }
}
