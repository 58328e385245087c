package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Dimension.Along;
import org.longlow.constraints.layout.Dimension.End;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;

/** What is measured between two or three things, and what is kept of it. */
class MeasuringTest {

  /** Corners at 400, 500; 610, 500; 590, 650; 420, 620. */
  private static final Layout LAYOUT = Plates.points("[0, 0], [210, 0], [190, 150], [20, 120]");

  private static final Places PLACES = Plates.places(LAYOUT);

  /** 1 px is 1 mm, so that near a pin is within 8 mm, near a line within 4. */
  private static final double SCALE = 1;

  private static MeasureView view(Layout layout) {
    Places places = Plates.places(layout);
    Map<String, Geometry> outlines = new LinkedHashMap<>();
    Shapes.of(layout, places).forEach((name, s) -> outlines.put(name, s.outline()));
    Ground level = new Ground(PointMm.ORIGIN, new PointMm(1500, 0));
    return new MeasureView(layout, places, places, outlines, level);
  }

  private static final MeasureView VIEW = view(LAYOUT);

  private static MeasureSpot at(double x, double z) {
    return VIEW.at(new PointMm(x, z), SCALE, false);
  }

  private static Measuring between(MeasureSpot... spots) {
    Measuring m = Measuring.NOTHING;
    for (MeasureSpot spot : spots) {
      m = m.with(spot, m.isDone());
    }
    return m;
  }

  private static List<String> words(Measuring m) {
    return m.readings(VIEW).stream().map(r -> r.words(Units.MM)).toList();
  }

  private static Dimension kept(Layout after) {
    assertThat(after.dimensions()).hasSize(1);
    return after.dimensions().values().iterator().next();
  }

  @Test
  void aPointerMeansPinsThenPointsThenEdgesThenTheGround() {
    assertThat(at(703, 696).end()).contains(End.pin("b"));
    assertThat(at(4, 303).words()).isEqualTo("axle of w1");
    assertThat(at(612, 503).end()).contains(End.point("plate", 1));
    assertThat(at(612, 503).at()).isEqualTo(new PointMm(610, 500));
    assertThat(at(500, 503).words()).isEqualTo("edge of plate");
    assertThat(at(500, 503).at().distance(new PointMm(500, 500))).isLessThan(1e-9);
    assertThat(at(800, -3).onGround()).isTrue();
    assertThat(at(800, -5).onGround()).isFalse();
    assertThat(at(800, -3).at()).isEqualTo(new PointMm(800, 0));
    assertThat(at(801, 402).words()).isEmpty();
    assertThat(VIEW.at(new PointMm(703, 696), SCALE, true).at()).isEqualTo(new PointMm(703, 696));
  }

  @Test
  void twoPinsTellDistanceAcrossAndUp() {
    // from a at 300, 700 to c at 900, 800
    assertThat(words(between(at(300, 700), at(900, 800))))
        .containsExactly("straight 608.3 mm", "across 600 mm", "up 100 mm");
    assertThat(words(between(at(300, 700)))).isEmpty();
    // 600 / 25.4 is 23.622, nearest to 23 10/16
    assertThat(between(at(300, 700), at(900, 800)).readings(VIEW).get(1).words(Units.IN))
        .isEqualTo("across 23 5/8 in");
  }

  @Test
  void edgesTellWhereTheyAreNearest() {
    // the rail's lower edge at 700 - 15 over the corner at 590, 650
    Measuring m = between(at(500, 500), at(400, 685));
    assertThat(words(m).get(0)).isEqualTo("nearest 35 mm");
    assertThat(words(m)).hasSize(4);
    // from the axle at 0, 300 to the corner at 400, 500
    assertThat(words(between(at(0, 300), at(500, 500))).get(0)).isEqualTo("nearest 447.2 mm");
    assertThat(words(between(at(450, 500), at(550, 500))).get(0)).isEqualTo("straight 100 mm");
  }

  @Test
  void threeTellTheAngleAtTheSecond() {
    // b at 700, 700 between a at 300, 700 and c at 900, 800
    Measuring m = between(at(300, 700), at(700, 700), at(900, 800));
    double deg = 180 - Math.toDegrees(Math.atan(0.5));
    assertThat(m.readings(VIEW).get(0).measured().value())
        .isCloseTo(Math.toRadians(deg), within(1e-12));
    assertThat(words(m)).containsExactly("angle 153.43 deg");
    assertThat(m.with(at(0, 300), false).spots()).as("the next").hasSize(1);
    assertThat(m.back().spots()).hasSize(2);
  }

  @Test
  void pinsAndPointsAreKeptAsTheyAre() {
    Measuring m = between(at(300, 700), at(610, 500));
    for (Measuring.Reading reading : m.readings(VIEW)) {
      assertThat(m.without(reading)).isEmpty();
      Layout after = Plates.after(LAYOUT, Keeping.dimension(m, reading, VIEW));
      assertThat(kept(after))
          .isEqualTo(
              new Dimension(
                  reading.along(),
                  List.of(End.pin("a"), End.point("plate", 1)),
                  Optional.empty(),
                  ""));
      assertThat(after.pins()).isEqualTo(LAYOUT.pins());
    }
    Layout twice =
        Plates.after(
            Plates.after(LAYOUT, Keeping.dimension(m, m.readings(VIEW).get(0), VIEW)),
            Keeping.dimension(m, m.readings(VIEW).get(0), VIEW));
    assertThat(twice.dimensions()).containsOnlyKeys("length", "length2");
  }

  @Test
  void edgesAreKeptAsGapsAndHeightsToTheGround() {
    Measuring gap = between(at(500, 500), at(400, 685));
    Layout after = Plates.after(LAYOUT, Keeping.dimension(gap, gap.readings(VIEW).get(0), VIEW));
    assertThat(kept(after).ends()).containsExactly(End.edge("plate"), End.edge("rail"));
    for (Measuring height :
        List.of(between(at(900, 800), at(650, 3)), between(at(650, 3), at(900, 800)))) {
      Measuring.Reading up = height.readings(VIEW).get(0);
      assertThat(up.words(Units.MM)).isEqualTo("up 800 mm");
      assertThat(height.without(up)).isEmpty();
      Dimension d = kept(Plates.after(LAYOUT, Keeping.dimension(height, up, VIEW)));
      assertThat(d.along()).isEqualTo(Along.UPRIGHT);
      assertThat(d.ends()).containsExactly(End.pin("c"));
    }
  }

  @Test
  void aPinIsNailedWhereThereIsNothingToEndAt() {
    Measuring m = between(at(300, 700), VIEW.at(new PointMm(811.2304, 402), SCALE, true));
    Measuring.Reading straight = m.readings(VIEW).get(0);
    assertThat(m.without(straight)).containsExactly("a bare place");
    Layout after = Plates.after(LAYOUT, Keeping.dimension(m, straight, VIEW));
    Pin mark = after.pins().get("mark");
    assertThat(mark.nailed()).isTrue();
    assertThat(mark.with()).isEqualTo(Pin.FRAME);
    assertThat(mark.x().text()).isEqualTo("811.23 mm");
    assertThat(kept(after).ends()).containsExactly(End.pin("a"), End.pin("mark"));

    // of an edge only the nearest can be kept without one
    Measuring edges = between(at(0, 600), at(500, 500));
    assertThat(edges.readings(VIEW).get(0).along()).isEqualTo(Along.STRAIGHT);
    Measuring.Reading across = edges.readings(VIEW).get(2);
    assertThat(across.along()).isEqualTo(Along.LEVEL);
    assertThat(edges.without(across)).contains("the edge of plate");
  }

  @Test
  void noPinIsNailedToWhatIsElsewhereThanDrawn() {
    // the rear wheel 40 mm up its travel
    Map<String, PointMm> moved = new LinkedHashMap<>(PLACES.pins());
    moved.put("rear", new PointMm(0, 340));
    MeasureView bumped =
        new MeasureView(LAYOUT, PLACES, PLACES.withPins(moved), VIEW.outlines(), VIEW.ground());
    Measuring m = between(at(300, 700), at(300, 300));
    assertThat(m.spots().get(1).words()).isEqualTo("edge of w1");
    Measuring.Reading across = m.readings(bumped).get(2);
    assertThatThrownBy(() -> Keeping.dimension(m, across, bumped))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("w1 is not where it is drawn");
    Layout after = Plates.after(LAYOUT, Keeping.dimension(m, across, VIEW));
    assertThat(after.pins().get("mark").with()).isEqualTo(Pin.REAR_WHEEL);
  }

  @Test
  void pinsCanBeTiedInstead() {
    Measuring m = between(at(300, 700), at(900, 800));
    Map<Along, TieKind> kinds =
        Map.of(
            Along.STRAIGHT,
            TieKind.DISTANCE,
            Along.LEVEL,
            TieKind.AHEAD,
            Along.UPRIGHT,
            TieKind.ABOVE);
    for (Measuring.Reading reading : m.readings(VIEW)) {
      Layout after = Plates.after(LAYOUT, Keeping.tie(m, reading, VIEW).orElseThrow());
      Tie tie = after.ties().values().iterator().next();
      assertThat(tie.kind()).isEqualTo(kinds.get(reading.along()));
      assertThat(PLACES.value(tie.is().orElseThrow()))
          .isCloseTo(reading.measured().value(), within(1e-6));
    }
    Measuring point = between(at(300, 700), at(610, 500));
    assertThat(Keeping.tie(point, point.readings(VIEW).get(0), VIEW)).isEmpty();
  }

  /** Points that are added before or taken out leave a dimension at the point it was at. */
  @Test
  void pointsAreCountedAnew() {
    Measuring m = between(at(300, 700), at(590, 650));
    Layout kept = Plates.after(LAYOUT, Keeping.dimension(m, m.readings(VIEW).get(0), VIEW));
    assertThat(kept(kept).ends()).contains(End.point("plate", 2));
    Layout more = Plates.after(kept, PointEdits.add("plate", PLACES, 0, new PointMm(500, 480)));
    assertThat(kept(more).ends()).contains(End.point("plate", 3));
    Layout after = Plates.after(kept, PointEdits.add("plate", PLACES, 2, new PointMm(500, 660)));
    assertThat(kept(after).ends()).contains(End.point("plate", 2));
    Layout less = Plates.after(more, PointEdits.takeOut(Plates.handles(more).get(1)));
    assertThat(kept(less).ends()).contains(End.point("plate", 2));
  }

  /** Whole or half, wherever a point is added: each dimension ends where it did. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"points\": [[0, 0], [210, 0], [190, 150], [20, 120]]}",
        "{\"points\": [[0, 0], [60, -40], [150, -30], [200, 0]], \"half\": true}"
      })
  void endsStayWhereTheyAreWhenPointsAreAdded(String outline) {
    Layout plain = Plates.of("\"o\"", outline, "");
    Outline whole = plain.parts().get("plate").edge().orElseThrow();
    for (int point = 0; point < whole.count(); point++) {
      Dimension d =
          new Dimension(
              Along.STRAIGHT,
              List.of(End.pin("a"), End.point("plate", point)),
              Optional.empty(),
              "");
      Layout layout = Change.set(plain, Map.of("d", d), "dimensions");
      List<PointMm> corners = corners(layout);
      for (int edge = 0; edge < whole.count(); edge++) {
        PointMm on = corners.get(edge).towards(corners.get((edge + 1) % whole.count()), 0.4);
        Layout more = Plates.after(layout, PointEdits.add("plate", PLACES, edge, on));
        int now = kept(more).ends().get(1).point().orElseThrow();
        assertThat(corners(more).get(now).distance(corners.get(point)))
            .as(point + " with one more on edge " + edge)
            .isLessThan(1e-6);
      }
    }
  }

  private static List<PointMm> corners(Layout layout) {
    Part.Outlined plate = (Part.Outlined) layout.parts().get("plate");
    return Outlines.vertices(plate.frame(), plate.outline(), Plates.places(layout));
  }

  @Test
  void whatWasMeasuredFollowsTheMachineAndIsDroppedWithIt() {
    Measuring m = between(at(300, 700), at(590, 650));
    Layout moved = Plates.points("[0, 0], [210, 0], [100, 170], [20, 120]");
    Measuring now = m.in(view(moved));
    assertThat(now.spots().get(1).at()).isEqualTo(new PointMm(500, 670));
    Measuring fourth = between(at(300, 700), at(420, 620));
    Layout triangle = Plates.points("[0, 0], [210, 0], [100, 170]");
    assertThat(fourth.in(view(triangle)).spots()).isEmpty();
  }
}
