package org.longlow.constraints.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;

/** Vertices for the solver, in axes that turn with pins and measures. */
class EdgePointsTest {

  private static final String TURNED = "{\"origin\": \"o\", \"along\": \"p\", \"angle\": \"tilt\"}";

  private static Layout layout(String axes, boolean closed) {
    String file =
        """
        {"longlow": 1, "name": "t",
         "measures": {"wide": {"is": "90 mm", "free": true}, "tilt": {"is": "20 deg", "free": true}},
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "o": [400, 500], "p": [470, 560]},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
           "plate": {"kind": "%s", "frame": %s, %s"mass": 1, "left": 5, "right": 5,
             "outline": {"points": [[0, 0], ["wide", 10], ["wide", "wide / 2"]], "closed": %s}}}}
        """;
    String cowl = closed ? "" : "\"thickness\": 3, ";
    ReadResult read =
        LayoutReader.read(file.formatted(closed ? "block" : "cowl", axes, cowl, closed), null);
    assertThat(read).as(read.toString()).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) read).layout();
  }

  /** From o to p it is atan(60 / 70) up, and the axes are 20 degrees more. */
  @Test
  void aVertexIsWhereItsAxesHaveIt() {
    Layout layout = layout(TURNED, true);
    Problem.Builder builder = Problem.builder();
    Unknowns unknowns = new Unknowns(layout, builder);
    Pt second = EdgePoints.vertices(layout, unknowns, "plate").get(1);
    double[] x = builder.build().start();
    double turn = Math.atan(60.0 / 70) + Math.toRadians(20);
    assertThat(second.x().value(x, null))
        .isCloseTo(400 + 90 * Math.cos(turn) - 10 * Math.sin(turn), within(1e-9));
    assertThat(second.z().value(x, null))
        .isCloseTo(500 + 90 * Math.sin(turn) + 10 * Math.cos(turn), within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"o\"",
        "{\"origin\": \"o\", \"angle\": \"tilt\"}",
        "{\"origin\": \"o\", \"along\": \"p\"}",
        TURNED
      })
  void slopesAreThoseOfSmallSteps(String axes) {
    Layout layout = layout(axes, true);
    Problem.Builder builder = Problem.builder();
    List<Pt> vertices = EdgePoints.vertices(layout, new Unknowns(layout, builder), "plate");
    double[] x = builder.build().start();
    for (Pt vertex : vertices) {
      for (Quantity q : List.of(vertex.x(), vertex.z())) {
        int[] variables = q.variables();
        double[] slopes = new double[variables.length];
        q.value(x, slopes);
        for (int i = 0; i < variables.length; i++) {
          double[] less = x.clone();
          double[] more = x.clone();
          less[variables[i]] -= 1e-4;
          more[variables[i]] += 1e-4;
          double step = (q.value(more, null) - q.value(less, null)) / 2e-4;
          assertThat(slopes[i]).isCloseTo(step, within(1e-6 * (1 + Math.abs(step))));
        }
      }
    }
  }

  @Test
  void anOpenOutlineHasAnEdgeLessAndAChord() {
    assertThat(EdgePoints.edges(layout("\"o\"", true).parts().get("plate"))).hasSize(3);
    assertThat(EdgePoints.ring(layout("\"o\"", true).parts().get("plate"))).hasSize(3);
    Layout open = layout("\"o\"", false);
    assertThat(EdgePoints.edges(open.parts().get("plate"))).hasSize(2);
    assertThat(EdgePoints.ring(open.parts().get("plate"))).hasSize(3);
    assertThat(EdgePoints.ring(open.parts().get("plate")).get(2).vertices()).containsExactly(2, 0);
  }
}
