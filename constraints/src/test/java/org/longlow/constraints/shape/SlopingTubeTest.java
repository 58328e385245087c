package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.space.SpaceMm;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/** Tubes whose pins lie at different distances from the middle plane, against plain geometry. */
class SlopingTubeTest {

  private static Layout layout(String path, boolean both) {
    ReadResult read =
        LayoutReader.read(
            """
            {"longlow": 1, "name": "splay",
             "pins": {"r": {"at": [0, 300], "nailed": true}, "f": {"at": [2000, 300], "nailed": true},
                      "a": [600, 500], "b": [900, 500], "c": [900, 800]},
             "parts": {
              "w1": {"kind": "wheel", "end": "rear", "axle": "r", "radius": 300, "width": 100},
              "w2": {"kind": "wheel", "end": "front", "axle": "f", "radius": 300, "width": 90},
              "post": {"kind": "rail", "path": ["b", "c"], "diameter": 20, "wall": 2,
                       "bendRadius": 60, "y": 0, "material": "steel"},
              "one": {"kind": "rail", "path": %s, "diameter": 30, "wall": 2, "bendRadius": 60,
                      "y": 50, "both": %s, "material": "steel"}}}
            """
                .formatted(path, both),
            null);
    assertThat(read).as(read.toString()).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) read).layout();
  }

  private static PartShape shape(String path, boolean both) {
    return Study.of(layout(path, both)).shapes().get("one");
  }

  /** 300 along and 400 across are 500 long: 3, 4 and 5. */
  @Test
  void aStraightTubeThatLeansHasItsTrueLengthAndMass() {
    PartShape one = shape("[\"a\", {\"pin\": \"b\", \"y\": 450}]", false);
    double section = Math.PI * (15 * 15 - 13 * 13);
    assertThat(one.massKg()).isCloseTo(500 * section * 7850e-9, within(1e-9));
    assertThat(one.centreYMm()).isCloseTo(250, within(1e-9));
    assertThat(one.centre().distance(new PointMm(750, 500))).isLessThan(1e-9);
    assertThat(one.leftMm()).isEqualTo(465);
    // a thin rod about its middle: m l²/12 each way, 300² along and 400² across
    double v = one.bulk().volume();
    assertThat(one.bulk().second()[1] - v * 250 * 250).isCloseTo(v * 400 * 400 / 12, within(1e-3));
    assertThat(one.bulk().second()[3] - v * 750 * 250).isCloseTo(v * 300 * 400 / 12, within(1e-3));
  }

  @Test
  void aPairHasTwiceTheMassInTheMiddle() {
    String path = "[\"a\", {\"pin\": \"b\", \"y\": 450}]";
    assertThat(shape(path, true).massKg()).isCloseTo(2 * shape(path, false).massKg(), within(1e-9));
    assertThat(shape(path, true).centreYMm()).isCloseTo(0, within(1e-9));
    assertThat(shape(path, true).rightMm()).isEqualTo(465);
  }

  /**
   * A right angle from level across to upright: its bend in space saves 2 r − r π/2 of the way over
   * the corner, at whatever breadth that is.
   */
  @Test
  void aBendInSpaceTakesAsMuchAsOneInAPlane() {
    TubeLine line =
        TubeLine.of(
            (TubePart)
                layout("[\"a\", {\"pin\": \"b\", \"y\": 450}, {\"pin\": \"c\", \"y\": 450}]", false)
                    .parts()
                    .get("one"),
            Study.of(layout("[\"a\", \"b\"]", false)).placed().places());
    List<SpaceMm> bent = line.bent(60);
    double length = 0;
    for (int i = 1; i < bent.size(); i++) {
      length += bent.get(i).distance(bent.get(i - 1));
    }
    assertThat(length).isCloseTo(500 + 300 - 120 + 30 * Math.PI, within(0.1));
    // all of the arc lies 60 from its middle, which is 60 from both legs
    double[] middle = {900 - 60 * 0.6, 450 - 60 * 0.8, 560};
    for (int i = 1; i + 1 < bent.size(); i++) {
      double x = bent.get(i).x() - middle[0];
      double y = bent.get(i).y() - middle[1];
      double z = bent.get(i).z() - middle[2];
      assertThat(Math.sqrt(x * x + y * y + z * z)).isCloseTo(60, within(1e-9));
    }
  }

  /** The post stands at b in the middle plane; of a line so sloped it keeps 0.6 of its distance. */
  @Test
  void itsGapIsThatInSpace() {
    PartShape one = shape("[{\"pin\": \"a\", \"y\": 0}, {\"pin\": \"b\", \"y\": 400}]", false);
    PartShape post = Study.of(layout("[\"a\", \"b\"]", false)).shapes().get("post");
    // from (300, 0) to the line along (3, 4) through the origin, less both radii
    double apart = 300 * 0.8 - 15 - 10;
    assertThat(Solid.of(one).to(Solid.of(post), 1000).gapMm()).isCloseTo(apart, within(0.01));
    assertThat(Solid.of(post).to(Solid.of(one), 1000).gapMm()).isCloseTo(apart, within(0.01));
  }

  @Test
  void whatIsSaidAcrossIsWrittenAgain() {
    String path = "[\"a\", {\"pin\": \"b\", \"y\": 450}]";
    String written = LayoutWriter.toJson(layout(path, false));
    Layout again = ((ReadResult.Read) LayoutReader.read(written, null)).layout();
    assertThat(again.parts().get("one")).isEqualTo(layout(path, false).parts().get("one"));
    assertThat(written).contains("\"path\": [\"b\", \"c\"]");
  }
}
