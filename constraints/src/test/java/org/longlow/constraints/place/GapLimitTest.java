package org.longlow.constraints.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.solve.problem.SolveStatus;

/**
 * Gaps between parts as the solver keeps them. A bar 30 mm thick and 400 mm long, free to shift and
 * turn, over (or in) a fixed block whose top is at 500 mm; 60 mm are asked between them, so that
 * the bar's pins may not be lower than 575 mm while they are over the block, or not higher than 325
 * under it.
 */
class GapLimitTest {

  private static final double TRUE_MM = 1e-6;

  private static Placed place(double a, double b, String limit) {
    String file =
        String.format(
            Locale.ROOT,
            """
            {"longlow": 1, "name": "t",
             "measures": {"room": {"is": "60 mm", "free": true, "from": "20 mm", "to": "90 mm"}},
             "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
               "a": [500, %s], "b": [900, %s], "o": {"at": [400, 400], "nailed": true}},
             "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
               "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
               "base": {"kind": "block", "frame": "o", "left": 50, "right": 50, "mass": 5,
                 "outline": {"points": [[0, 0], [600, 0], [600, 100], [0, 100]], "closed": true}},
               "bar": {"kind": "rail", "path": ["a", "b"], "diameter": 30, "wall": 2, "bendRadius": 50, "y": 0}},
             "ties": {"len": {"tie": "distance", "pins": ["a", "b"], "is": 400}},
             "limits": {%s}}
            """,
            a,
            b,
            limit);
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    return Placer.place(((ReadResult.Read) result).layout());
  }

  private static Geometry outline(Placed placed, String part) {
    return Shapes.of(placed.layout().parts().get(part), placed.places(), false).outline();
  }

  private static final String ROOM =
      "\"room\": {\"limit\": \"gap\", \"parts\": [\"bar\", \"base\"], \"from\": 60}";

  /** Both ends too low, level or not: the nearest place has both just clear. */
  @ParameterizedTest(name = "from {0} and {1} mm")
  @CsvSource({
    "570, 570",
    "570, 570.5",
    "570, 574",
    "570, 530",
    "540, 560",
    "540, 500",
    "510, 510",
    "510, 530",
    "480, 500",
    "470, 470",
    "470, 475"
  })
  void aBarComesToLieAlongTheBlock(double a, double b) {
    Placed placed = place(a, b, ROOM);
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    Places x = placed.places();
    assertThat(x.pin("a").z()).isCloseTo(575, within(TRUE_MM));
    assertThat(x.pin("b").z()).isCloseTo(575, within(TRUE_MM));
    assertThat((x.pin("a").x() + x.pin("b").x()) / 2).isCloseTo(700, within(TRUE_MM));
  }

  @Test
  void aBarUnderTheMiddleGoesDown() {
    Placed placed = place(420, 424, ROOM);
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(placed.places().pin("a").z()).isCloseTo(325, within(TRUE_MM));
    assertThat(placed.places().pin("b").z()).isCloseTo(325, within(TRUE_MM));
  }

  @Test
  void whatIsFarEnoughStays() {
    Placed placed = place(640, 600, ROOM);
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    // only the length has been put right
    assertThat(placed.places().pin("a").distance(placed.places().pin("b")))
        .isCloseTo(400, within(TRUE_MM));
    assertThat(placed.places().pin("b").z()).isCloseTo(600, within(0.1));
  }

  @Test
  void notMoreThanAGap() {
    String close = "\"near\": {\"limit\": \"gap\", \"parts\": [\"bar\", \"base\"], \"to\": 60}";
    Placed placed = place(700, 700, close);
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    // one place is enough: the bar tips towards the block as little as it must
    Geometry bar = outline(placed, "bar");
    assertThat(bar.distance(outline(placed, "base"))).isCloseTo(60, within(TRUE_MM));
    assertThat(placed.places().pin("a").z() + placed.places().pin("b").z()).isGreaterThan(1260);
    assertThat(placed.report().activeLimits()).contains("near");
  }

  @Test
  void betweenTwoGaps() {
    String both =
        "\"band\": {\"limit\": \"gap\", \"parts\": [\"bar\", \"base\"], \"from\": 40, \"to\": 60}";
    Placed placed = place(520, 520, both);
    assertThat(placed.places().pin("a").z()).isCloseTo(555, within(TRUE_MM));
    assertThat(placed.report().activeLimits()).contains("band (at least)");
  }

  @Test
  void theGapAskedMayBeAFreeMeasure() {
    String free =
        "\"band\": {\"limit\": \"gap\", \"parts\": [\"bar\", \"base\"], \"from\": \"room\"}";
    Placed placed = place(545, 545, free);
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    double room = placed.places().measures().get("room");
    assertThat(placed.places().pin("a").z()).isCloseTo(515 + room, within(TRUE_MM));
    // what the layout says of the measure holds, and the bar goes all the way
    assertThat(room).isCloseTo(60, within(TRUE_MM));
  }
}
