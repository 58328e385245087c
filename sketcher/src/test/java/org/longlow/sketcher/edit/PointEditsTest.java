package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.sketcher.edit.Plates.after;
import static org.longlow.sketcher.edit.Plates.area;
import static org.longlow.sketcher.edit.Plates.at;
import static org.longlow.sketcher.edit.Plates.handles;
import static org.longlow.sketcher.edit.Plates.places;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * Points of an outline moved, added, taken out, smoothed; holes; what is a pin or formula stays.
 */
class PointEditsTest {

  private static final String BOX =
      "[\"0 mm\", \"0 mm\"], [\"100 mm\", \"0 mm\"], [\"100 mm\", \"60 mm\"], [\"0 mm\", \"60"
          + " mm\"]";

  static LongStream seeds() {
    return LongStream.range(0, 20);
  }

  /** In axes that point from o to p and are turned on top of that. */
  private static Layout turned(String outline, String ties) {
    return Plates.of("{\"origin\": \"o\", \"along\": \"p\", \"angle\": \"20 deg\"}", outline, ties);
  }

  private static List<PointMm> ring(Layout layout) {
    Part.Outlined plate = (Part.Outlined) layout.parts().get("plate");
    return Outlines.vertices(plate.frame(), plate.outline(), places(layout));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aPointMovesToWhereItIsAskedInAnyAxes(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Layout before = turned("{\"points\": [" + BOX + "]}", "");
    Handle handle = handles(before).get(random.nextInt(4));
    PointMm to = handle.at().plus(at(random.nextDouble(-20, 20), random.nextDouble(-20, 20)));
    Layout moved = after(before, PointEdits.move(handle, places(before), to, false));
    for (int i = 0; i < 4; i++) {
      PointMm wanted = i == handle.index() ? to : ring(before).get(i);
      // coordinates are written to a thousandth of a millimetre
      assertThat(ring(moved).get(i).distance(wanted)).isLessThan(0.001);
    }
    Handle there = handles(moved).get(handle.index());
    Layout back = after(moved, PointEdits.move(there, places(moved), handle.at(), false));
    assertThat(back).isEqualTo(before);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void addThenTakeOutIsAsBefore(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    boolean half = random.nextBoolean();
    String tie =
        "\"on\": {\"tie\": \"on-edge\", \"pins\": [\"q\"], \"part\": \"plate\", \"edge\": %d}"
            .formatted(random.nextInt(4));
    Layout before =
        turned(
            half
                ? "{\"points\": [[0, 0], [40, 30, \"smooth\"], [100, 0]], \"half\": true}"
                : "{\"points\": [" + BOX + "]}",
            tie);
    List<PointMm> ring = ring(before);
    int edge = random.nextInt(4);
    PointMm on = ring.get(edge).towards(ring.get((edge + 1) % 4), random.nextDouble(0.3, 0.7));
    Layout more = after(before, PointEdits.add("plate", places(before), edge, on));
    assertThat(ring(more)).hasSize(half ? 6 : 5);
    assertThat(ring(more)).anyMatch(p -> p.distance(on) < 0.001);
    // the edge that the tie means has its start or its end where it had
    int was = before.ties().get("on").edge();
    int is = more.ties().get("on").edge();
    List<PointMm> now = ring(more);
    List<PointMm> ends = List.of(ring.get(was), ring.get((was + 1) % 4));
    assertThat(
            ends.stream().anyMatch(e -> e.distance(now.get(is)) < 0.001)
                || ends.stream().anyMatch(e -> e.distance(now.get((is + 1) % now.size())) < 0.001))
        .isTrue();
    Handle added =
        handles(more).stream()
            .filter(h -> handles(before).stream().noneMatch(o -> o.at().distance(h.at()) < 1e-6))
            .findFirst()
            .orElseThrow();
    assertThat(after(more, PointEdits.takeOut(added))).isEqualTo(before);
  }

  @Test
  void atThreePointsNoneIsTakenOut() {
    Layout three = Plates.points("[0, 0], [50, 40], [100, 0]");
    Trial trial =
        Tried.of(
            org.longlow.constraints.study.Study.of(three),
            PointEdits.takeOut(handles(three).get(1)),
            null);
    assertThat(trial).isInstanceOf(Trial.Refused.class);
    assertThat(((Trial.Refused) trial).words()).contains("needs at least 3");
  }

  @Test
  void smoothAndBackIsAsBefore() {
    Layout before = Plates.points(BOX);
    Layout smooth = after(before, PointEdits.smooth(handles(before).get(2), true));
    assertThat(area(smooth).getArea()).isGreaterThan(area(before).getArea() + 1);
    assertThat(handles(smooth).get(2).smooth()).isTrue();
    assertThat(after(smooth, PointEdits.smooth(handles(smooth).get(2), false))).isEqualTo(before);
  }

  @Test
  void aPointOnAPinOrFormulaIsNotWrittenOver() {
    Layout before = Plates.points("[0, 0], [\"wide\", 0], \"p\", [0, \"60 mm\"]");
    Places places = places(before);
    Handle formula = handles(before).get(1);
    Handle pin = handles(before).get(2);
    assertThatThrownBy(() -> PointEdits.move(formula, places, at(530, 500), false).applied(before))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("worked out by x = wide");
    assertThatThrownBy(() -> PointEdits.move(pin, places, at(470, 540), false).applied(before))
        .hasMessageContaining("lies on pin p");
    // square to its formula it may go, and the formula stays
    Layout up = after(before, PointEdits.move(formula, places, at(520, 510), false));
    Vertex v = ((Part.Outlined) up.parts().get("plate")).outline().vertices().get(1);
    assertThat(v.x().text()).isEqualTo("wide");
    assertThat(v.z().text()).isEqualTo("10 mm");
    // asked for, they are replaced
    Layout over = after(before, PointEdits.move(formula, places, at(530, 500), true));
    assertThat(ring(over).get(1)).isEqualTo(at(530, 500));
    Layout own = after(before, PointEdits.write(pin, places));
    assertThat(handles(own).get(2).pin()).isEmpty();
    assertThat(ring(own).get(2)).isEqualTo(at(460, 540));
    assertThat(handles(after(own, PointEdits.hang(handles(own).get(2), "p"))).get(2).pin())
        .isEqualTo("p");
  }

  // --- holes

  @Test
  void aHoleIsAddedMovedSizedAndTakenOut() {
    Layout before = Plates.points(BOX);
    for (HoleEdits.Sort sort : HoleEdits.Sort.values()) {
      Layout holed = after(before, HoleEdits.add("plate", places(before), sort, at(450, 530), 12));
      double size = area(before).getArea() - area(holed).getArea();
      double wanted =
          switch (sort) {
            case ROUND -> Math.PI * 36;
            case SLOT -> 6 * 6 + Math.PI * 9;
            case CUT -> 144;
          };
      assertThat(size).isCloseTo(wanted, within(0.012 * wanted));
      Layout shifted = after(holed, HoleEdits.shift("plate", 0, places(holed), at(10, -5)));
      assertThat(area(before).getArea() - area(shifted).getArea()).isCloseTo(size, within(1e-6));
      for (int i = 4; i < handles(holed).size(); i++) {
        assertThat(handles(shifted).get(i).at())
            .isEqualTo(handles(holed).get(i).at().plus(at(10, -5)));
      }
      assertThat(after(shifted, HoleEdits.takeOut("plate", 0))).isEqualTo(before);
      if (sort != HoleEdits.Sort.CUT) {
        Layout wide = after(holed, HoleEdits.size("plate", 0, "wide / 6"));
        assertThat(area(before).getArea() - area(wide).getArea()).isGreaterThan(300);
      }
    }
    Layout onPin = after(before, HoleEdits.addOnPin("plate", "p", 9));
    assertThat(handles(onPin).get(4).pin()).isEqualTo("p");
    assertThat(onPin.parts().get("plate").pins()).contains("p");
  }

  // --- places on edges

  @ParameterizedTest
  @CsvSource({
    "450, 503, 0, 450, 500",
    "498, 530, 1, 500, 530",
    "450, 562, 2, 450, 560",
    "401, 520, 3, 400, 520"
  })
  void theNearestEdgeIsCountedAsTiesCount(double x, double z, int edge, double onX, double onZ) {
    Layout box = Plates.points(BOX);
    EdgeSpot spot = EdgeSpot.nearest(box, places(box), "plate", -1, at(x, z)).orElseThrow();
    assertThat(spot.edge()).isEqualTo(edge);
    assertThat(spot.at().distance(at(onX, onZ))).isLessThan(1e-9);
  }

  @Test
  void onSmoothEdgesItIsOnTheCurve() {
    Layout dome = Plates.points("[0, 0], [100, 0], [50, 60, \"smooth\"]");
    EdgeSpot spot = EdgeSpot.nearest(dome, places(dome), "plate", -1, at(490, 560)).orElseThrow();
    assertThat(spot.edge()).isEqualTo(1);
    assertThat(area(dome).getBoundary().distance(point(spot.at()))).isLessThan(1e-9);
  }

  private static org.locationtech.jts.geom.Geometry point(PointMm p) {
    return new org.locationtech.jts.geom.GeometryFactory()
        .createPoint(new org.locationtech.jts.geom.Coordinate(p.x(), p.z()));
  }
}
