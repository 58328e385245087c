package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.sketcher.edit.Plates.after;
import static org.longlow.sketcher.edit.Plates.handles;
import static org.longlow.sketcher.edit.Plates.places;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Outlines;
import org.longlow.rider.geom.PointMm;

/** Kept dimensions end where they did when an outline gets another point or loses one. */
class KeptPointsTest {

  private static final String FIVE = "[0, 0], [100, 0], [120, 50], [60, 90], [0, 60]";

  /** A plate with a dimension from a pin to each of these points of its outline. */
  static Layout measured(String outline, int... points) {
    String all =
        IntStream.of(points)
            .mapToObj(
                k ->
                    "\"to %d\": {\"along\": \"straight\", \"ends\": [\"p\", {\"part\": \"plate\","
                            .formatted(k)
                        + " \"point\": %d}]}".formatted(k))
            .collect(Collectors.joining(", "));
    return Plates.of("\"o\"", outline, "}, \"dimensions\": {" + all);
  }

  private static Layout five(boolean half) {
    String outline = "{\"points\": [" + FIVE + "]" + (half ? ", \"half\": true}" : "}");
    return measured(outline, IntStream.range(0, half ? 8 : 5).toArray());
  }

  private static List<PointMm> ring(Layout layout) {
    Part.Outlined plate = (Part.Outlined) layout.parts().get("plate");
    return Outlines.vertices(plate.frame(), plate.outline(), places(layout));
  }

  private static PointMm end(Layout layout, int was) {
    return ring(layout)
        .get(layout.dimensions().get("to " + was).ends().get(1).point().orElseThrow());
  }

  @ParameterizedTest(name = "half {0}")
  @ValueSource(booleans = {false, true})
  void anotherPointLeavesThemWhereTheyWere(boolean half) {
    Layout before = five(half);
    List<PointMm> was = ring(before);
    for (int edge = 0; edge < was.size(); edge++) {
      PointMm middle = was.get(edge).towards(was.get((edge + 1) % was.size()), 0.5);
      Layout more = after(before, PointEdits.add("plate", places(before), edge, middle));
      assertThat(ring(more)).hasSize(was.size() + (half ? 2 : 1));
      for (int k = 0; k < was.size(); k++) {
        assertThat(end(more, k).distance(was.get(k)))
            .as("point %d, another on edge %d", k, edge)
            .isCloseTo(0, within(1e-3));
      }
    }
  }

  /** What ended at the point taken out ends at that which follows it as written. */
  @ParameterizedTest(name = "half {0}")
  @ValueSource(booleans = {false, true})
  void aPointLessLeavesTheOthersWhereTheyWere(boolean half) {
    Layout before = five(half);
    List<PointMm> was = ring(before);
    int written = 5;
    // the ends of a half are its axis
    for (int out = half ? 1 : 0; out < (half ? written - 1 : written); out++) {
      Layout fewer = after(before, PointEdits.takeOut(handles(before).get(out)));
      assertThat(ring(fewer)).hasSize(was.size() - (half ? 2 : 1));
      for (int k = 0; k < was.size(); k++) {
        boolean image = k >= written;
        boolean gone = (image ? 2 * written - 2 - k : k) == out;
        // past the last there is only the one before it
        int next = k == written - 1 ? k - 1 : image ? k - 1 : k + 1;
        PointMm wanted = was.get(gone ? next : k);
        assertThat(end(fewer, k).distance(wanted))
            .as("point %d, without %d", k, out)
            .isCloseTo(0, within(1e-3));
      }
    }
  }

  /** A half written out has the points that it had. */
  @Test
  void whatIsWrittenOutKeepsItsNumbers() {
    Layout before = five(true);
    Layout whole = after(before, OutlineShaping.whole("plate", places(before)));
    assertThat(((Outline.Drawn) ((Part.Outlined) whole.parts().get("plate")).outline()).half())
        .isFalse();
    for (int k = 0; k < ring(before).size(); k++) {
      assertThat(end(whole, k).distance(ring(before).get(k))).isCloseTo(0, within(1e-3));
    }
  }
}
