package org.longlow.constraints.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.rider.geom.PointMm;

/** Halves for the solver: the image of what is drawn follows it. */
class HalfOutlineTest {

  static LongStream seeds() {
    return LongStream.range(0, 30);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void slopesOfAnImageAreThoseOfSmallSteps(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] x = random.doubles(6, -300, 300).toArray();
    Pt image = MirroredPoint.of(Pt.variables(0, 1), Pt.variables(2, 3), Pt.variables(4, 5));
    for (Quantity q : List.of(image.x(), image.z())) {
      double[] slopes = new double[6];
      q.value(x, slopes);
      for (int i = 0; i < 6; i++) {
        double[] less = x.clone();
        double[] more = x.clone();
        less[i] -= 1e-4;
        more[i] += 1e-4;
        double step = (q.value(more, null) - q.value(less, null)) / 2e-4;
        // central differences over 1e-4 mm of lengths of some 1000 mm
        assertThat(slopes[q.variables()[i]]).isCloseTo(step, within(1e-5 * (1 + Math.abs(step))));
      }
    }
  }

  @Test
  void aPinIsTiedToAnEdgeOfTheImage() {
    String file =
        """
        {"longlow": 1, "name": "t",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "o": {"at": [400, 500], "nailed": true}, "tip": {"at": [500, 500], "nailed": true}, "p": [450, 470]},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
           "kite": {"kind": "block", "frame": "o", "left": 5, "right": 5, "mass": 1,
             "outline": {"points": ["o", [40, 60], [80, 50], "tip"], "half": true}}},
         "ties": {"on": {"tie": "on-edge", "pins": ["p"], "part": "kite", "edge": %d}}}
        """;
    ReadResult read = LayoutReader.read(file.formatted(4), null);
    assertThat(read).as(read.toString()).isInstanceOf(ReadResult.Read.class);
    Placed placed = Placer.place(((ReadResult.Read) read).layout());
    assertThat(placed.holds()).isTrue();
    Part.Outlined kite = (Part.Outlined) placed.layout().parts().get("kite");
    List<PointMm> ring = Outlines.vertices(kite.frame(), kite.outline(), placed.places());
    assertThat(ring)
        .containsExactly(
            new PointMm(400, 500),
            new PointMm(440, 560),
            new PointMm(480, 550),
            new PointMm(500, 500),
            new PointMm(480, 450),
            new PointMm(440, 440));
    PointMm p = placed.places().pin("p");
    PointMm along = ring.get(5).minus(ring.get(4));
    assertThat(p.minus(ring.get(4)).cross(along) / along.length()).isCloseTo(0, within(1e-6));
    // six edges: 0 to 5
    ReadResult beyond = LayoutReader.read(file.formatted(6), null);
    assertThat(beyond.toString()).contains("which has edges 0 to 5");
  }
}
