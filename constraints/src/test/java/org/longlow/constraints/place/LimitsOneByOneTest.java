package org.longlow.constraints.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.rider.geom.PointMm;

/**
 * Limits and wishes of the file format, one by one: written as a user would, solved, and measured
 * on the solved pins by plane geometry. A limit that is broken as drawn is just kept, one that is
 * not moves nothing.
 */
class LimitsOneByOneTest {

  private static final double TRUE_MM = 1e-6;
  private static final double TRUE_RAD = 1e-9;

  private static Placed place(String more) {
    String file =
        """
        {"longlow": 1, "name": "t",
         "measures": {"len": "300 mm", "loose": {"is": "250 mm", "free": true, "from": "200 mm", "to": "400 mm"},
                      "lean": {"is": "20 deg", "free": true, "from": "10 deg", "to": "40 deg"},
                      "share": {"is": "0.5", "free": true, "from": "0.1", "to": "0.9"}},
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
                  "p": [500, 500], "q": [820, 610], "r": [400, 900], "s": [900, 1000], "b": [500, 420]},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
                   "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
                   "box": {"kind": "block", "frame": "b", "left": 50, "right": 50, "mass": 5,
                     "outline": {"points": [[0, 0], [400, 0], [400, 200], [0, 200]], "closed": true}}},
         %s}
        """
            .formatted(more);
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    return Placer.place(((ReadResult.Read) result).layout());
  }

  private static PointMm between(Places x, String from, String to) {
    return x.pin(to).minus(x.pin(from));
  }

  private static double turn(PointMm from, PointMm to) {
    return Math.atan2(from.cross(to), from.dot(to));
  }

  /** What a kind limits, by its definition in the format; angles in degrees. */
  private static ToDoubleFunction<Places> meant(Limit.Kind kind) {
    return switch (kind) {
      case DISTANCE -> x -> x.pin("p").distance(x.pin("q"));
      case AHEAD -> x -> x.pin("q").x() - x.pin("p").x();
      case ABOVE -> x -> x.pin("q").z() - x.pin("p").z();
      case HEIGHT -> x -> x.pin("p").z();
      case ANGLE -> x -> Math.toDegrees(between(x, "p", "q").angleRad());
      case RAKE ->
          x -> {
            PointMm up = between(x, "p", "q");
            return Math.toDegrees(Math.atan2(-up.x(), up.z()));
          };
      case ANGLE_BETWEEN -> x -> Math.toDegrees(turn(between(x, "p", "q"), between(x, "r", "s")));
      case BESIDE ->
          x -> {
            PointMm along = between(x, "q", "r");
            return along.cross(between(x, "q", "p")) / along.length();
          };
      default -> null;
    };
  }

  private static String pins(Limit.Kind kind) {
    return switch (kind.pins()) {
      case 1 -> "[\"p\"]";
      case 2 -> "[\"p\", \"q\"]";
      case 3 -> "[\"p\", \"q\", \"r\"]";
      default -> "[\"p\", \"q\", \"r\", \"s\"]";
    };
  }

  @ParameterizedTest
  @EnumSource(
      value = Limit.Kind.class,
      names = {"MEASURE", "INSIDE", "GAP"},
      mode = EnumSource.Mode.EXCLUDE)
  void eachKindHoldsAtItsEndsAndLetsGoBetween(Limit.Kind kind) {
    ToDoubleFunction<Places> meant = meant(kind);
    double drawn = meant.applyAsDouble(place("\"ties\": {}").places());
    boolean angle = kind.dim().orElseThrow().equals(Dim.ANGLE);
    double more = angle ? 3 : 30;
    for (int ends = 0; ends < 3; ends++) {
      for (int side : new int[] {-1, 0, 1}) {
        // a band above what is drawn, round it, or below it
        double low = drawn + side * 2 * more - more;
        double high = drawn + side * 2 * more + more;
        String unit = angle ? " deg" : " mm";
        String from = ends == 1 ? "" : ", \"from\": \"" + low + unit + "\"";
        String to = ends == 0 ? "" : ", \"to\": \"" + high + unit + "\"";
        Placed placed =
            place(
                "\"limits\": {\"held\": {\"limit\": \""
                    + kind.word()
                    + "\", \"pins\": "
                    + pins(kind)
                    + from
                    + to
                    + "}}");
        assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
        double now = meant.applyAsDouble(placed.places());
        double should = side > 0 && ends != 1 ? low : side < 0 && ends != 0 ? high : drawn;
        assertThat(now).as("%s side %d ends %d", kind, side, ends).isCloseTo(should, within(1e-6));
        if (should != drawn) {
          String name = ends < 2 ? "held" : side > 0 ? "held (at least)" : "held (at most)";
          assertThat(placed.report().activeLimits()).containsExactly(name);
          assertThat(placed.problem().isOfAngle(name)).isEqualTo(angle);
        } else {
          assertThat(placed.report().activeLimits()).isEmpty();
          assertThat(placed.problem().withPlaces(placed.report().x())).isEqualTo(placed.layout());
        }
        assertThat(placed.problem().across("held")).isEmpty();
      }
    }
  }

  @ParameterizedTest(name = "{0} = {1}")
  @CsvSource({
    "DISTANCE, 500",
    "AHEAD, 250",
    "AHEAD, -40",
    "ABOVE, 300",
    "HEIGHT, 620",
    "ANGLE, 40",
    "RAKE, -50"
  })
  void aWishIsMetWhereNothingIsAgainstIt(Limit.Kind kind, double is) {
    boolean angle = kind == Limit.Kind.ANGLE || kind == Limit.Kind.RAKE;
    String wish =
        "\"wishes\": {\"w\": {\"wish\": \"%s\", \"pins\": %s, \"is\": \"%s %s\", \"weight\": 2}}"
            .formatted(kind.word(), pins(kind), is, angle ? "deg" : "mm");
    Placed placed = place(wish);
    assertThat(meant(kind).applyAsDouble(placed.places())).isCloseTo(is, within(1e-4));
    // ties come first: the same pins nailed by ties do not move for it
    Placed held =
        place(
            wish
                + ", \"ties\": {\"a\": {\"tie\": \"nailed\", \"pins\": [\"p\"]}, \"b\": {\"tie\":"
                + " \"nailed\", \"pins\": [\"q\"]}}");
    assertThat(held.places().pin("p").distance(new PointMm(500, 500))).isLessThan(TRUE_MM);
    assertThat(held.places().pin("q").distance(new PointMm(820, 610))).isLessThan(TRUE_MM);
  }

  /** A wish for a measure within its range, beyond it, and for an angle. */
  @Test
  void wishesForMeasures() {
    String wish =
        "\"wishes\": {\"w\": {\"wish\": \"measure\", \"measure\": \"%s\", \"is\": \"%s\", \"weight\": 1}}";
    assertThat(place(wish.formatted("loose", "333 mm")).places().measures().get("loose"))
        .isCloseTo(333, within(1e-4));
    assertThat(place(wish.formatted("loose", "999 mm")).places().measures().get("loose"))
        .isCloseTo(400, within(TRUE_MM));
    assertThat(place(wish.formatted("loose", "9 mm")).places().measures().get("loose"))
        .isCloseTo(200, within(TRUE_MM));
    assertThat(place(wish.formatted("lean", "33 deg")).places().measures().get("lean"))
        .isCloseTo(Math.toRadians(33), within(1e-7));
    assertThat(place(wish.formatted("lean", "77 deg")).places().measures().get("lean"))
        .isCloseTo(Math.toRadians(40), within(TRUE_RAD));
    assertThat(place(wish.formatted("share", "0.7")).places().measures().get("share"))
        .isCloseTo(0.7, within(1e-6));
  }

  /** 1 mm short of a range of lengths; of angles the arc at 1 m, which is what reports count. */
  @Test
  void rangesAndLimitsOfMeasuresFailByTheirShortfall() {
    Placed tooLong = place("\"ties\": {\"t\": {\"tie\": \"formula\", \"is\": \"loose - 410 mm\"}}");
    assertThat(tooLong.report().failedLimits().get(0).limit()).isEqualTo("loose (at most)");
    assertThat(tooLong.report().failedLimits().get(0).shortfallMm()).isCloseTo(10, within(TRUE_MM));
    assertThat(tooLong.problem().isOfAngle("loose (at most)")).isFalse();
    Placed tooFlat = place("\"ties\": {\"t\": {\"tie\": \"formula\", \"is\": \"lean - 9 deg\"}}");
    assertThat(tooFlat.report().failedLimits().get(0).limit()).isEqualTo("lean (at least)");
    assertThat(tooFlat.report().failedLimits().get(0).shortfallMm())
        .isCloseTo(1000 * Math.toRadians(1), within(1e-4));
    assertThat(tooFlat.problem().isOfAngle("lean (at least)")).isTrue();
    assertThat(tooFlat.problem().isOfAngle("lean (at most)")).isTrue();
    assertThat(tooFlat.problem().isOfAngle("loose (at least)")).isFalse();
    Placed held =
        place(
            "\"limits\": {\"m\": {\"limit\": \"measure\", \"measure\": \"lean\", \"from\": \"25"
                + " deg\", \"to\": \"30 deg\"}}");
    assertThat(held.places().measures().get("lean"))
        .isCloseTo(Math.toRadians(25), within(TRUE_RAD));
    assertThat(held.problem().isOfAngle("m (at least)")).isTrue();
  }

  /** Each free measure is written in its own unit, and only if it moved. */
  @Test
  void whatMovedIsWrittenInItsUnit() {
    Placed placed =
        place(
            "\"ties\": {\"t\": {\"tie\": \"formula\", \"is\": \"loose - 310 mm\"}, \"u\": {\"tie\":"
                + " \"formula\", \"is\": \"lean - 30 deg\"}, \"v\": {\"tie\": \"height\","
                + " \"pins\": [\"p\"], \"is\": 512}}");
    Layout written = placed.problem().withPlaces(placed.report().x());
    assertThat(written.measures().get("loose").is()).isEqualTo(Formula.parse("310 mm"));
    assertThat(written.measures().get("lean").is().evaluate(n -> 0))
        .isCloseTo(Math.toRadians(30), within(TRUE_RAD));
    assertThat(written.measures().get("lean").is().text()).endsWith(" deg");
    assertThat(written.measures().get("lean").free()).isTrue();
    assertThat(written.measures().get("share")).isEqualTo(placed.layout().measures().get("share"));
    assertThat(written.pins().get("p").z()).isEqualTo(Formula.parse("512 mm"));
    assertThat(written.pins().get("p").x()).isEqualTo(placed.layout().pins().get("p").x());
    assertThat(written.pins().get("q")).isEqualTo(placed.layout().pins().get("q"));
    // a ten millionth of a millimetre, or of an arc at 1 m, is no move
    double[] x = placed.problem().problem().start();
    int p = placed.problem().variables("p")[0];
    int lean = placed.problem().problem().indexOf("lean");
    x[p] += 0.9e-7;
    x[lean] += 0.9e-10;
    assertThat(placed.problem().withPlaces(x)).isEqualTo(placed.layout());
    x[p] += 0.2e-7;
    assertThat(placed.problem().withPlaces(x).pins().get("p").x())
        .isNotEqualTo(placed.layout().pins().get("p").x());
    x[lean] += 1e-8;
    assertThat(placed.problem().withPlaces(x).measures().get("lean"))
        .isNotEqualTo(placed.layout().measures().get("lean"));
  }

  /** 20 mm inside, less than inside not at all; which edge is nearest does not matter. */
  @ParameterizedTest(name = "at ({0}, {1}) of the box")
  @CsvSource({
    "5, 100, 20, 100",
    "395, 100, 380, 100",
    "200, 5, 200, 20",
    "200, 199, 200, 180",
    "100, 100, 100, 100"
  })
  void insideIsAsFarAsAsked(double atX, double atZ, double x, double z) {
    String limits =
        "\"ties\": {\"b\": {\"tie\": \"nailed\", \"pins\": [\"b\"]}, \"g\": {\"tie\":"
            + " \"nailed\", \"pins\": [\"q\"]}}, \"limits\": {\"in\": {\"limit\": \"inside\","
            + " \"pins\": [\"p\"], \"parts\": [\"box\"], \"from\": \"20 mm\"}}";
    Layout layout = place(limits).layout();
    Layout drawn =
        layout.withPins(
            Map.of(
                "p",
                layout
                    .pins()
                    .get("p")
                    .at(Formula.parse(500 + atX + " mm"), Formula.parse(420 + atZ + " mm"))));
    Placed placed = Placer.place(drawn);
    assertThat(placed.places().pin("p").distance(new PointMm(500 + x, 420 + z)))
        .isLessThan(TRUE_MM);
  }
}
