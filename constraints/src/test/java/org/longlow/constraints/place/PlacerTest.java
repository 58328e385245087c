package org.longlow.constraints.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.rider.geom.PointMm;

/**
 * Ties of the file format, one by one: each is written as a user would, solved, and measured on the
 * solved pins by plane geometry. 1e-6 mm is the solver's promise.
 */
class PlacerTest {

  private static final double TRUE_MM = 1e-6;
  private static final double TRUE_RAD = 1e-9;

  /** A bare machine that stands on two fixed wheels, with four loose pins and a tie. */
  private static String file(String ties, String more) {
    return """
        {"longlow": 1, "name": "t",
         "measures": {"len": "300 mm", "loose": {"is": "250 mm", "free": true, "from": "200 mm", "to": "400 mm"}},
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
                  "p": [500, 500], "q": [820, 610], "r": [400, 900], "s": [900, 1000], "b": [500, 420]},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
                   "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
                   "box": {"kind": "block", "frame": "b", "left": 50, "right": 50, "mass": 5,
                     "outline": {"points": [[0, 0], [400, 0], [400, 200], [0, 200]], "closed": true}}},
         "ties": {%s}%s}
        """
        .formatted(ties, more);
  }

  private static Placed place(String ties, String more) {
    ReadResult result = LayoutReader.read(file(ties, more), null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    return Placer.place(((ReadResult.Read) result).layout());
  }

  private static Places solved(String tie) {
    Placed placed = place("\"t\": " + tie, "");
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    return placed.places();
  }

  private static void near(double is, double should) {
    assertThat(is).isCloseTo(should, within(TRUE_MM));
  }

  private static double turn(PointMm from, PointMm to) {
    return Math.atan2(from.cross(to), from.dot(to));
  }

  @Test
  void together() {
    Places x = solved("{\"tie\": \"together\", \"pins\": [\"p\", \"q\"]}");
    near(x.pin("p").distance(x.pin("q")), 0);
    // nearest: both come half way
    near(x.pin("p").distance(new PointMm(660, 555)), 0);
  }

  @Test
  void distanceByAFormula() {
    Places x = solved("{\"tie\": \"distance\", \"pins\": [\"p\", \"q\"], \"is\": \"len + 50 mm\"}");
    near(x.pin("p").distance(x.pin("q")), 350);
  }

  @Test
  void horizontalVerticalAndHeight() {
    near(dx(solved("{\"tie\": \"ahead\", \"pins\": [\"p\", \"q\"], \"is\": 100}")), 100);
    Places v = solved("{\"tie\": \"above\", \"pins\": [\"p\", \"q\"], \"is\": -20}");
    near(v.pin("q").z() - v.pin("p").z(), -20);
    near(solved("{\"tie\": \"height\", \"pins\": [\"p\"], \"is\": 444}").pin("p").z(), 444);
  }

  private static double dx(Places x) {
    return x.pin("q").x() - x.pin("p").x();
  }

  @Test
  void anglesAndRake() {
    Places a = solved("{\"tie\": \"angle\", \"pins\": [\"p\", \"q\"], \"is\": \"30 deg\"}");
    assertThat(a.pin("q").minus(a.pin("p")).angleRad())
        .isCloseTo(Math.toRadians(30), within(TRUE_RAD));
    Places k = solved("{\"tie\": \"rake\", \"pins\": [\"p\", \"r\"], \"is\": \"25 deg\"}");
    PointMm up = k.pin("r").minus(k.pin("p"));
    assertThat(Math.atan2(-up.x(), up.z())).isCloseTo(Math.toRadians(25), within(TRUE_RAD));
    Places b =
        solved(
            "{\"tie\": \"angle-between\", \"pins\": [\"p\", \"q\", \"r\", \"s\"], \"is\": \"10"
                + " deg\"}");
    assertThat(turn(b.pin("q").minus(b.pin("p")), b.pin("s").minus(b.pin("r"))))
        .isCloseTo(Math.toRadians(10), within(TRUE_RAD));
  }

  @Test
  void parallelAndPerpendicular() {
    Places a = solved("{\"tie\": \"parallel\", \"pins\": [\"p\", \"q\", \"r\", \"s\"]}");
    assertThat(turn(a.pin("q").minus(a.pin("p")), a.pin("s").minus(a.pin("r"))))
        .isCloseTo(0, within(TRUE_RAD));
    Places b = solved("{\"tie\": \"square-to\", \"pins\": [\"p\", \"q\", \"p\", \"r\"]}");
    assertThat(b.pin("q").minus(b.pin("p")).dot(b.pin("r").minus(b.pin("p"))))
        .isCloseTo(0, within(1e-3));
  }

  @Test
  void onLineAndBesideIt() {
    Places a = solved("{\"tie\": \"in-line\", \"pins\": [\"r\", \"p\", \"q\"]}");
    near(beside(a), 0);
    near(
        beside(solved("{\"tie\": \"beside\", \"pins\": [\"r\", \"p\", \"q\"], \"is\": 120}")), 120);
  }

  /** Distance of r to the left of the line from p to q. */
  private static double beside(Places x) {
    PointMm along = x.pin("q").minus(x.pin("p"));
    return along.cross(x.pin("r").minus(x.pin("p"))) / along.length();
  }

  @Test
  void onCircleAndArc() {
    Places a = solved("{\"tie\": \"on-circle\", \"pins\": [\"p\", \"q\"], \"radii\": [\"len\"]}");
    near(a.pin("p").distance(a.pin("q")), 300);
    Places b =
        solved(
            "{\"tie\": \"on-arc\", \"pins\": [\"p\", \"front\", \"s\", \"r\"], \"radii\": [600]}");
    near(b.pin("p").distance(b.pin("front")), 600);
  }

  @Test
  void onAnEdgeOfAPart() {
    Places x = solved("{\"tie\": \"on-edge\", \"pins\": [\"p\"], \"part\": \"box\", \"edge\": 2}");
    PointMm local = x.pin("p").minus(x.pin("b"));
    near(local.z(), 200);
    assertThat(local.x()).isBetween(-TRUE_MM, 400 + TRUE_MM);
  }

  @Test
  void tangents() {
    Places a =
        solved("{\"tie\": \"tangent-line\", \"pins\": [\"p\", \"q\", \"r\"], \"radii\": [150]}");
    near(Math.abs(beside(a)), 150);
    Places b =
        solved("{\"tie\": \"tangent-circles\", \"pins\": [\"p\", \"q\"], \"radii\": [100, 130]}");
    near(b.pin("p").distance(b.pin("q")), 230);
    Places c =
        solved(
            "{\"tie\": \"tangent-circles\", \"pins\": [\"p\", \"q\"], \"radii\": [100, 430],"
                + " \"inside\": true}");
    near(c.pin("p").distance(c.pin("q")), 330);
  }

  @ParameterizedTest
  @CsvSource({"as-long-as", "as-round-as"})
  void equalLengths(String tie) {
    Places x = solved("{\"tie\": \"" + tie + "\", \"pins\": [\"p\", \"q\", \"r\", \"s\"]}");
    near(x.pin("p").distance(x.pin("q")), x.pin("r").distance(x.pin("s")));
  }

  @Test
  void partWayHalfwayMirroredSameCentre() {
    Places a = solved("{\"tie\": \"part-way\", \"pins\": [\"p\", \"q\", \"r\"], \"is\": \"0.25\"}");
    near(a.pin("p").distance(a.pin("q").towards(a.pin("r"), 0.25)), 0);
    Places b = solved("{\"tie\": \"halfway\", \"pins\": [\"p\", \"q\", \"r\"]}");
    near(b.pin("p").distance(b.pin("q").towards(b.pin("r"), 0.5)), 0);
    Places c = solved("{\"tie\": \"mirrored\", \"pins\": [\"p\", \"q\", \"r\", \"s\"]}");
    PointMm axis = c.pin("s").minus(c.pin("r"));
    PointMm middle = c.pin("p").towards(c.pin("q"), 0.5).minus(c.pin("r"));
    near(axis.cross(middle) / axis.length(), 0);
    near(axis.dot(c.pin("q").minus(c.pin("p"))) / axis.length(), 0);
    Places d = solved("{\"tie\": \"same-centre\", \"pins\": [\"p\", \"q\"]}");
    near(d.pin("p").distance(d.pin("q")), 0);
  }

  @Test
  void lengthsOfTubesAndBelts() {
    Places a =
        solved(
            "{\"tie\": \"path-length\", \"pins\": [\"p\", \"q\", \"s\"], \"radii\": [50], \"is\":"
                + " 800}");
    PointMm u = a.pin("q").minus(a.pin("p"));
    PointMm v = a.pin("s").minus(a.pin("q"));
    double bend = Math.abs(turn(u, v));
    // legs less two tangents, and the arc (tube-bend geometry)
    near(u.length() + v.length() - 100 * Math.tan(bend / 2) + 50 * bend, 800);
    Places b =
        solved(
            "{\"tie\": \"belt-length\", \"pins\": [\"p\", \"q\"], \"radii\": [40, 90], \"is\":"
                + " 1200}");
    double c = b.pin("p").distance(b.pin("q"));
    double wrap = Math.asin(50 / c);
    // open belt round two pulleys (textbook): 2 C cos + r1 (pi - 2 a) + r2 (pi + 2 a)
    near(2 * c * Math.cos(wrap) + 40 * (Math.PI - 2 * wrap) + 90 * (Math.PI + 2 * wrap), 1200);
  }

  @Test
  void rigidKeepsTheShapeAsDrawn() {
    Placed placed =
        place(
            "\"t\": {\"tie\": \"one-piece\", \"pins\": [\"p\", \"q\", \"r\"]}, \"u\": {\"tie\":"
                + " \"height\", \"pins\": [\"q\"], \"is\": 700}",
            "");
    Places x = placed.places();
    near(x.pin("p").distance(x.pin("q")), Math.hypot(320, 110));
    near(x.pin("p").distance(x.pin("r")), Math.hypot(100, 400));
    near(x.pin("q").z(), 700);
  }

  @Test
  void aFormulaTieFindsAFreeMeasure() {
    Placed placed =
        place(
            "\"t\": {\"tie\": \"formula\", \"is\": \"loose - len\"}, \"u\": {\"tie\":"
                + " \"distance\", \"pins\": [\"p\", \"q\"], \"is\": \"loose\"}",
            "");
    near(placed.places().measures().get("loose"), 300);
    near(placed.places().pin("p").distance(placed.places().pin("q")), 300);
  }

  @Test
  void aFreeMeasureStopsAtItsRange() {
    Placed placed = place("\"t\": {\"tie\": \"formula\", \"is\": \"loose - 500 mm\"}", "");
    assertThat(placed.report().status()).isEqualTo(SolveStatus.LIMIT_FAILS);
    assertThat(placed.report().failedLimits().get(0).limit()).startsWith("loose");
    near(placed.report().failedLimits().get(0).shortfallMm(), 100);
  }

  @Test
  void limitsHoldAndPush() {
    Placed gap =
        place(
            "",
            ", \"limits\": {\"room\": {\"limit\": \"gap\", \"parts\": [\"box\", \"w1\"], \"from\":"
                + " \"250 mm\"}}");
    assertThat(gap.holds()).isTrue();
    // The box moved away until its corner is 250 mm from the tyre. Gaps see a disc as a polygon of
    // 192 sides, which lies up to 300 (1 - cos(pi/192)) = 0.04 mm inside the circle.
    assertThat(gap.places().pin("b").distance(gap.places().pin("rear")) - 300)
        .isCloseTo(250, within(0.041));
    Placed inside =
        place(
            "",
            ", \"limits\": {\"in\": {\"limit\": \"inside\", \"pins\": [\"r\"], \"parts\":"
                + " [\"box\"], \"from\": 20}}");
    PointMm local = inside.places().pin("r").minus(inside.places().pin("b"));
    assertThat(local.x()).isBetween(20 - TRUE_MM, 380 + TRUE_MM);
    assertThat(local.z()).isBetween(20 - TRUE_MM, 180 + TRUE_MM);
  }

  @Test
  void whatDidNotMoveKeepsItsText() {
    Placed placed = place("\"t\": {\"tie\": \"height\", \"pins\": [\"p\"], \"is\": \"len\"}", "");
    Layout written = placed.problem().withPlaces(placed.report().x());
    assertThat(written.pins().get("p").x()).isEqualTo(placed.layout().pins().get("p").x());
    assertThat(written.pins().get("p").z()).isEqualTo(Formula.parse("300 mm"));
    assertThat(written.withPins(Map.of("p", placed.layout().pins().get("p"))))
        .isEqualTo(placed.layout());
  }

  /** A pin as it was drawn before does not pull a measure off what somebody wrote since. */
  @Test
  void aFreeMeasureIsWhatItSaysWhereItCan() {
    String far = "\"far\": {\"tie\": \"distance\", \"pins\": [\"p\", \"q\"], \"is\": \"loose\"}";
    Placed placed = place(far, "");
    Places at = placed.places();
    near(at.measures().get("loose"), 250);
    near(at.pin("p").distance(at.pin("q")), 250);
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(placed.gaveWay()).isEmpty();
    // both ends stay: nothing but the measure can give way, as much as it must
    String held = ", \"a\": {\"tie\": \"distance\", \"pins\": [\"p\", \"q\"], \"is\": \"330 mm\"}";
    Placed gave = place(far + held, "");
    near(gave.places().measures().get("loose"), 330);
    assertThat(gave.gaveWay()).containsOnlyKeys("loose");
    near(gave.gaveWay().get("loose"), 330);
  }

  @Test
  void aFreeMeasureBeyondItsRangeComesToItsEnd() {
    ReadResult result =
        LayoutReader.read(
            file(
                    "\"far\": {\"tie\": \"distance\", \"pins\": [\"p\", \"q\"], \"is\": \"loose\"}",
                    "")
                .replace("\"is\": \"250 mm\"", "\"is\": \"180 mm\""),
            null);
    Placed placed = Placer.place(((ReadResult.Read) result).layout());
    near(placed.places().measures().get("loose"), 200);
    assertThat(placed.gaveWay()).containsOnlyKeys("loose");
  }

  /** Of an edit, what was typed stays, be it a measure or a pin that hangs on it. */
  @Test
  void whatAnEditChangedIsKept() {
    Placed before =
        place("\"far\": {\"tie\": \"distance\", \"pins\": [\"p\", \"q\"], \"is\": \"loose\"}", "");
    Layout settled = before.problem().withPlaces(before.report().x());
    Layout moved =
        settled.withPins(
            Map.of(
                "q", settled.pins().get("q").at(Formula.parse("800 mm"), Formula.parse("580 mm"))));
    Places at = Placer.place(moved, AsWritten.between(settled, moved)).places();
    near(at.pin("q").x(), 800);
    near(at.pin("q").z(), 580);
    near(at.pin("p").distance(at.pin("q")), at.measures().get("loose"));
    Layout typed =
        settled.withMeasure(
            "loose", settled.measures().get("loose").withIs(Formula.parse("280 mm")));
    near(
        Placer.place(typed, AsWritten.between(settled, typed)).places().measures().get("loose"),
        280);
  }
}
