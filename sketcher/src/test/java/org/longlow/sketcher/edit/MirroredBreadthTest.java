package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.study.Study;

/**
 * Bodies broader on one side, brought to the other: all that is said of left is meant for right.
 */
class MirroredBreadthTest {

  private static final String EDGE = "[0, 0], [400, 0], [400, 200], [0, 200]";

  private static Layout with(String rest) {
    ReadResult read =
        LayoutReader.read(
            """
            {"longlow": 1, "name": "tail",
             "pins": {"at": {"at": [300, 600], "nailed": true},
               "rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1400, 300], "nailed": true}},
             "parts": {
               "w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 100, "mass": 9},
               "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 90, "mass": 9},
               "tail": {"kind": "box", "mass": "2 kg", "frame": "at", %s}}}
            """
                .formatted(rest),
            Path.of("."));
    assertThat(read).as(String.valueOf(read)).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) read).layout();
  }

  private static PartShape shape(Layout layout) {
    return Study.of(layout).shapes().get("tail");
  }

  /** Returns how far a part reaches in a direction of space. */
  private static double reach(PartShape shape, double x, double y, double z) {
    double[] on = new double[3];
    return shape.prisms().stream()
        .flatMap(p -> p.convex().stream())
        .mapToDouble(
            piece -> {
              piece.farthest(new double[] {x, y, z}, on);
              return x * on[0] + y * on[1] + z * on[2];
            })
        .max()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        // by both sides, by stations beside them and alone, by vertices, by a further body
        "\"left\": 90, \"right\": -40, \"outline\": {\"points\": [EDGE]}",
        "\"left\": 90, \"right\": 40, \"outline\": {\"points\": [EDGE]}, \"stations\":"
            + " [{\"x\": 0, \"left\": 20, \"right\": 70}, {\"x\": 400, \"left\": 90}]",
        "\"outline\": {\"points\": [EDGE]}, \"stations\":"
            + " [{\"x\": 0, \"left\": 20, \"right\": 70}, {\"x\": 400, \"left\": 90}]",
        "\"left\": 60, \"right\": 60, \"outline\": {\"points\": [[0, 0], [400, 0, {\"left\":"
            + " 110, \"right\": 30}], [400, 200], [0, 200, {\"left\": 10, \"right\": 50}]]}",
        "\"left\": 60, \"right\": 60, \"outline\": {\"points\": [EDGE]}, \"bodies\":"
            + " [{\"left\": 130, \"right\": -50, \"outline\": {\"points\": [[50, 150], [90, 150],"
            + " [90, 260]]}}]"
      })
  void whatReachedToTheLeftReachesAsFarToTheRight(String rest) {
    Layout before = with(rest.replace("EDGE", EDGE));
    Edit edit = Mirror.otherSide(List.of("tail"));
    Layout after = Tried.of(before, edit);
    PartShape was = shape(before);
    PartShape is = shape(after);
    boolean alike = true;
    for (double[] way : new double[][] {{0, 1, 0}, {1, 2, 0}, {-1, 2, 0}, {1, 1, 1}, {-2, 3, 1}}) {
      for (int side = -1; side <= 1; side += 2) {
        assertThat(reach(is, way[0], side * way[1], way[2]))
            .isCloseTo(reach(was, way[0], -side * way[1], way[2]), within(1e-6));
      }
      alike &=
          Math.abs(reach(was, way[0], way[1], way[2]) - reach(was, way[0], -way[1], way[2])) < 1;
    }
    assertThat(alike).as("broader on one side").isFalse();
    assertThat(Tried.of(after, edit)).as("brought back").isEqualTo(before);
  }
}
