package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.longlow.sketcher.edit.Plates.after;
import static org.longlow.sketcher.edit.Plates.at;
import static org.longlow.sketcher.edit.Plates.handles;
import static org.longlow.sketcher.edit.Plates.places;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Vertex;

/** What points are called, what holds them, and what of that a move leaves. */
class PointNamesTest {

  @Test
  void pointsAndHolesAreCountedFromOne() {
    Layout holed =
        Plates.of(
            "\"o\"",
            "{\"points\": [[0, 0], [100, 0], [100, 60], [0, 60]], \"holes\": [{\"hole\": \"round\","
                + " \"at\": [20, 30], \"diameter\": 10}, {\"hole\": \"cut\", \"points\": [[50, 20],"
                + " [80, 20], [80, 40]]}]}",
            "");
    List<String> names = handles(holed).stream().map(PointEdits::name).toList();
    assertThat(names)
        .containsExactly(
            "plate point 1",
            "plate point 2",
            "plate point 3",
            "plate point 4",
            "plate hole 1",
            "plate hole 2 point 1",
            "plate hole 2 point 2",
            "plate hole 2 point 3");
    Handle second = handles(holed).get(1);
    assertThat(PointEdits.smooth(second, true).name()).isEqualTo("smooth plate point 2");
    assertThat(PointEdits.smooth(second, false).name()).isEqualTo("corner at plate point 2");
  }

  @Test
  void editsOfHolesSayWhichTheyAre() {
    Layout plate = Plates.points("[0, 0], [100, 0], [100, 60], [0, 60]");
    assertThat(HoleEdits.add("plate", places(plate), HoleEdits.Sort.SLOT, at(450, 530), 9).name())
        .isEqualTo("add slot to plate");
    assertThat(HoleEdits.Sort.ROUND.words()).isEqualTo("round hole");
    assertThat(HoleEdits.takeOut("plate", 0).name()).isEqualTo("take out hole 1 of plate");
    assertThat(HoleEdits.shift("plate", 1, places(plate), at(1, 0)).name())
        .isEqualTo("shift hole 2 of plate");
    assertThat(HoleEdits.size("plate", 1, "8 mm").name()).isEqualTo("hole 2 of plate to 8 mm");
    Handle first = handles(plate).get(0);
    assertThat(first.at(at(3, 4)).at()).isEqualTo(at(3, 4));
    assertThat(first.at(at(3, 4)).at(first.at())).isEqualTo(first);
  }

  /** A point at 120, 60 in axes at 400, 500, both worked out. */
  @Test
  void onlyWhatAMoveChangesIsWrittenOver() {
    Layout plate = Plates.points("[0, 0], [\"wide\", \"wide / 2\"], \"p\"");
    Handle corner = handles(plate).get(1);
    assertThat(corner.at()).isEqualTo(at(520, 560));
    String held = "this point is worked out by ";
    assertThat(PointEdits.heldBy(corner, plate, places(plate), at(520, 560))).isEmpty();
    assertThat(PointEdits.heldBy(corner, plate, places(plate), at(510, 560)))
        .isEqualTo(held + "x = wide");
    assertThat(PointEdits.heldBy(corner, plate, places(plate), at(520, 550)))
        .isEqualTo(held + "z = wide / 2");
    assertThat(PointEdits.heldBy(corner, plate, places(plate), at(510, 550)))
        .isEqualTo(held + "x = wide and z = wide / 2");
    assertThat(PointEdits.heldBy(handles(plate).get(2), plate, places(plate), at(0, 0)))
        .isEqualTo("this point lies on pin p, which stays where it is");

    Vertex along = moved(plate, corner, 510, 560);
    assertThat(along.x().evaluate(n -> 0)).isEqualTo(110);
    assertThat(along.z().text()).isEqualTo("wide / 2");
    Vertex down = moved(plate, corner, 520, 550.0004);
    assertThat(down.x().text()).isEqualTo("wide");
    // to a thousandth
    assertThat(down.z().text()).isEqualTo("50 mm");
  }

  private static Vertex moved(Layout plate, Handle corner, double x, double z) {
    Layout moved = after(plate, PointEdits.move(corner, places(plate), at(x, z), true));
    return handles(moved).get(1).vertex(moved).orElseThrow();
  }
}
