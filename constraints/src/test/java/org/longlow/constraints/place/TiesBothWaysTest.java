package org.longlow.constraints.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.rider.geom.PointMm;

/** Ties that go by how things are drawn: to the left or the right, this way round or that. */
class TiesBothWaysTest {

  private static final double TRUE_MM = 1e-6;

  private static Placed place(String pins, String parts, String ties) {
    String file =
        String.format(
            Locale.ROOT,
            """
            {"longlow": 1, "name": "t",
             "measures": {"turn": {"is": "0 deg", "free": true, "from": "-80 deg", "to": "80 deg"},
               "wide": {"is": "400 mm", "free": true, "from": "300 mm", "to": "500 mm"}},
             "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true}, %s},
             "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
               "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120}%s},
             "ties": {%s}}
            """,
            pins,
            parts,
            ties);
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    Placed placed = Placer.place(((ReadResult.Read) result).layout());
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    return placed;
  }

  private static String nailed(String name, double x, double z) {
    return String.format(Locale.ROOT, "\"%s\": {\"at\": [%s, %s], \"nailed\": true}", name, x, z);
  }

  /** A wheel of 150 mm beside an upright line: it stays on the side on which it is drawn. */
  @ParameterizedTest(name = "drawn at {0} mm")
  @CsvSource({"420, 350, up", "580, 650, up", "420, 350, down", "580, 650, down"})
  void aTangentStaysOnItsSide(double drawn, double there, String way) {
    boolean up = way.equals("up");
    Placed placed =
        place(
            nailed("a", 500, up ? 100 : 900)
                + ", "
                + nailed("b", 500, up ? 900 : 100)
                + ", \"c\": ["
                + drawn
                + ", 500]",
            "",
            "\"t\": {\"tie\": \"tangent-line\", \"pins\": [\"a\", \"b\", \"c\"], \"radii\": [150]}");
    assertThat(placed.places().pin("c").distance(new PointMm(there, 500))).isLessThan(TRUE_MM);
  }

  /** The larger circle is the outer one, whichever is named first. */
  @ParameterizedTest(name = "radii {0} and {1}")
  @CsvSource({"300, 100", "100, 300", "200, 200"})
  void theLargerCircleIsTheOuterOne(double first, double second) {
    Placed placed =
        place(
            nailed("a", 500, 500) + ", \"c\": [600, 500]",
            "",
            String.format(
                Locale.ROOT,
                "\"t\": {\"tie\": \"tangent-circles\", \"pins\": [\"a\", \"c\"], \"radii\": [%s,"
                    + " %s], \"inside\": true}",
                first,
                second));
    assertThat(placed.places().pin("c").distance(new PointMm(500, 500)))
        .isCloseTo(Math.abs(first - second), within(first == second ? 1e-3 : TRUE_MM));
  }

  /** Round three wheels of 50 mm: the sides of the triangle and one whole wheel. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"leftward", "rightward"})
  void aBeltRunsOutsideWhicheverWayItIsDrawn(String way) {
    String order = way.equals("leftward") ? "\"a\", \"b\", \"c\"" : "\"c\", \"b\", \"a\"";
    Placed placed =
        place(
            nailed("a", 300, 300) + ", " + nailed("b", 900, 300) + ", \"c\": [600, 650]",
            "",
            "\"t\": {\"tie\": \"belt-length\", \"pins\": ["
                + order
                + "], \"radii\": [50, 50, 50], \"is\": 1900}, \"u\": {\"tie\": \"ahead\","
                + " \"pins\": [\"a\", \"c\"], \"is\": 300}");
    PointMm c = placed.places().pin("c");
    double sides = 600 + c.distance(new PointMm(300, 300)) + c.distance(new PointMm(900, 300));
    assertThat(sides + 2 * Math.PI * 50).isCloseTo(1900, within(1e-5));
    assertThat(c.z()).isGreaterThan(300);
  }

  /**
   * A quarter arc of 200 mm, counter-clockwise from its first end: what is beyond goes to an end.
   */
  @ParameterizedTest(name = "drawn at ({0}, {1}) between {6} and its other end")
  @CsvSource({
    // an arc from ahead to above
    "700, 690, 644.999, 637.749, 0, 90, first",
    "720, 400, 700, 500, 0, 90, first",
    "400, 720, 500, 700, 0, 90, first",
    // one that passes behind, where the direction leaps from 180 to -180 degrees
    "290, 510, 300.226, 509.513, 135, 225, behind",
    "400, 720, 358.58, 641.42, 135, 225, behind",
    "400, 280, 358.58, 358.58, 135, 225, behind",
    // from above round to ahead: three quarters, and all of it but a quarter
    "690, 690, 500, 700, 90, 360, most",
  })
  void aPinOnAnArcStaysBetweenItsEnds(
      double x, double z, double atX, double atZ, double from, double to, String arc) {
    PointMm centre = new PointMm(500, 500);
    PointMm start = centre.plus(PointMm.unit(Math.toRadians(from)).times(100));
    PointMm end = centre.plus(PointMm.unit(Math.toRadians(to)).times(130));
    Placed placed =
        place(
            nailed("o", 500, 500)
                + ", "
                + nailed("r", start.x(), start.z())
                + ", "
                + nailed("s", end.x(), end.z())
                + ", \"p\": ["
                + x
                + ", "
                + z
                + "]",
            "",
            "\"t\": {\"tie\": \"on-arc\", \"pins\": [\"p\", \"o\", \"r\", \"s\"], \"radii\": [200]}");
    PointMm p = placed.places().pin("p");
    assertThat(p.distance(centre)).isCloseTo(200, within(TRUE_MM));
    double beyond = p.minus(centre).angleRad() - Math.toRadians(from);
    double along = beyond - 2 * Math.PI * Math.floor((beyond + 1e-7) / (2 * Math.PI));
    assertThat(along).isBetween(-1e-7, Math.toRadians(to - from) + 1e-7);
    if (!arc.equals("most")) {
      assertThat(p.distance(new PointMm(atX, atZ))).isLessThan(0.02);
    }
  }

  private static final String FRAMED =
      ", \"box\": {\"kind\": \"block\", \"frame\": {\"origin\": \"b\", \"angle\": \"turn\"},"
          + " \"left\": 50, \"right\": 50, \"mass\": 5, \"outline\": {\"points\": [[0, 0],"
          + " [\"wide\", 0], [\"wide\", 200], [0, 200]], \"closed\": true}}";

  /** A box about (400, 400) on whose lower edge, 400 mm long, a nailed pin is to lie: it turns. */
  @Test
  void anEdgeTurnsWithTheAngleOfItsFrame() {
    Placed placed =
        place(
            nailed("b", 400, 400) + ", " + nailed("p", 600, 500),
            FRAMED,
            "\"t\": {\"tie\": \"on-edge\", \"pins\": [\"p\"], \"part\": \"box\", \"edge\": 0}");
    assertThat(placed.places().measures().get("turn"))
        .isCloseTo(Math.atan2(100, 200), within(1e-9));
    assertThat(placed.places().measures().get("wide")).isCloseTo(400, within(1e-6));
  }

  /** The fore edge is wherever the free measure puts it: 470 mm ahead. */
  @Test
  void anEdgeFollowsTheMeasureOfItsVertices() {
    Placed placed =
        place(
            nailed("b", 400, 400) + ", " + nailed("p", 870, 500),
            FRAMED,
            "\"t\": {\"tie\": \"on-edge\", \"pins\": [\"p\"], \"part\": \"box\", \"edge\": 1},"
                + " \"u\": {\"tie\": \"formula\", \"is\": \"turn\"}");
    assertThat(placed.places().measures().get("wide")).isCloseTo(470, within(TRUE_MM));
  }

  /** A box has the edges 0 to 3; another is refused by name. */
  @Test
  void onlyEdgesThatAreThereCanBeNamed() {
    Placed placed = place(nailed("b", 400, 400), FRAMED, "");
    Part box = placed.layout().parts().get("box");
    assertThat(EdgePoints.edges(box)).hasSize(4);
    assertThat(EdgePoints.ring(box)).hasSize(4);
    assertThatThrownBy(() -> EdgePoints.edge(box, 4))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("part box has edges 0 to 3, not 4");
    assertThatThrownBy(() -> EdgePoints.edge(box, -1)).isInstanceOf(IllegalArgumentException.class);
    assertThat(EdgePoints.edge(box, 3).vertices()).containsExactly(3, 0);
  }

  /** A triangle of a base of 400 mm and a corner 100 mm along and 250 mm to one side of it. */
  @ParameterizedTest(name = "corner to the {0}")
  @CsvSource({"left, 250", "right, -250"})
  void onePieceIsNotTurnedOver(String side, double off) {
    Placed placed =
        place(
            "\"a\": [300, 600], \"b\": [700, 600], \"c\": [400, " + (600 + off) + "]",
            "",
            "\"t\": {\"tie\": \"one-piece\", \"pins\": [\"a\", \"b\", \"c\"]}, \"u\": {\"tie\":"
                + " \"angle\", \"pins\": [\"a\", \"b\"], \"is\": \"30 deg\"}");
    PointMm a = placed.places().pin("a");
    PointMm along = placed.places().pin("b").minus(a);
    PointMm corner = placed.places().pin("c").minus(a);
    assertThat(along.length()).isCloseTo(400, within(TRUE_MM));
    assertThat(along.dot(corner) / 400).isCloseTo(100, within(TRUE_MM));
    assertThat(along.cross(corner) / 400).isCloseTo(off, within(TRUE_MM));
  }

  static Stream<TieKind> quantitiesOfTwoPins() {
    return Stream.of(TieKind.values())
        .filter(k -> k.fewestPins() == 2 && k.mostPins() == 2 && k.radii() == 0)
        .filter(k -> k.dim().isPresent());
  }

  /** A tie to what is there already moves nothing; every such tie knows what is there. */
  @ParameterizedTest
  @MethodSource("quantitiesOfTwoPins")
  void whatIsBetweenTwoPinsIsWhatTheirTieHoldsThemTo(TieKind kind) {
    double is = kind.between().orElseThrow().applyAsDouble(140, -120);
    Dim dim = kind.dim().orElseThrow();
    Placed placed =
        place(
            nailed("a", 500, 500) + ", \"c\": [640, 380]",
            "",
            String.format(
                Locale.ROOT,
                "\"t\": {\"tie\": \"%s\", \"pins\": [\"a\", \"c\"], \"is\": \"%s\"}",
                kind.word(),
                dim.equals(Dim.LENGTH) ? is + " mm" : Math.toDegrees(is) + " deg"));
    assertThat(placed.places().pin("c").distance(new PointMm(640, 380))).isLessThan(TRUE_MM);
  }
}
