package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.sketcher.template.RailJoints.rail;
import static org.longlow.sketcher.template.RailJoints.said;
import static org.longlow.sketcher.template.RailJoints.templates;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.shop.CutPlan;
import org.longlow.sketcher.shop.CutPlans;
import org.longlow.sketcher.shop.Cuts;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.write.SvgWriter;

/**
 * What the ends of rails meet, by name; what is wrapped round an end, read from the written sheet
 * and rolled back onto the tube, lies on what it meets.
 */
class TubeEndsTest {

  /** What a scriber line can tell, mm. */
  private static final double TRUE_TO_MM = 0.05;

  private static final String CORNER =
      "\"a\": [300, 500], \"b\": [700, 500], \"c\": [900, 846.4101615137755], \"d\": [500, 900]";

  private static String of(String pins, String parts) {
    return said(templates(pins, parts, "one").get(0));
  }

  /** Points of the lower edge of a wrap as printed: share of the way round, mm below its top. */
  private static List<double[]> printed(NamedDrawing wrap) throws Exception {
    List<Page> pages = wrap.sheets(TemplateSettings.on(Paper.A4));
    assertThat(pages).hasSize(1);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(pages.get(0), Palette.CARD, out);
    String svg = out.toString(StandardCharsets.UTF_8);
    Matcher path =
        Pattern.compile("<g id=\"outline\">.*?<path d=\"M([^\"]*)\"", Pattern.DOTALL).matcher(svg);
    assertThat(path.find()).isTrue();
    List<double[]> all = new ArrayList<>();
    for (String at : path.group(1).replace("Z", "").split("L")) {
      String[] xy = at.trim().split("[ ,]+");
      all.add(new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])});
    }
    double left = all.stream().mapToDouble(p -> p[0]).min().orElseThrow();
    double right = all.stream().mapToDouble(p -> p[0]).max().orElseThrow();
    double top = all.stream().mapToDouble(p -> p[1]).min().orElseThrow();
    List<double[]> edge = new ArrayList<>();
    for (double[] p : all) {
      if (p[1] > top + 20) {
        edge.add(new double[] {(p[0] - left) / (right - left), p[1] - top});
      }
    }
    assertThat(edge).hasSizeGreaterThan(150);
    return edge;
  }

  /** How far the upper edge is up the tube, as the template says. */
  private static double upperEdge(NamedDrawing wrap) {
    Matcher m = Pattern.compile("upper edge is ([0-9.]+) mm").matcher(said(wrap));
    assertThat(m.find()).isTrue();
    return Double.parseDouble(m.group(1));
  }

  /** A level main tube of 44.45 at y 100, a branch of 38.1 x 2 that leans forward onto it. */
  @ParameterizedTest
  @CsvSource({"60, 100", "60, 102", "90, 100", "35, 98"})
  void aPrintedCopeRolledBackLiesOnTheOtherTube(double deg, double y) throws Exception {
    double t = Math.toRadians(deg);
    List<NamedDrawing> all =
        templates(
            "\"a\": [0, 500], \"b\": [1000, 500], \"foot\": [500, 500], \"top\": [%s, %s]"
                .formatted(500 + 400 * Math.cos(t), 500 + 400 * Math.sin(t)),
            rail("main", "\"a\", \"b\"", 44.45, 100, true)
                + ", "
                + rail("one", "\"foot\", \"top\"", 38.1, y, true),
            "one");
    assertThat(all.stream().map(NamedDrawing::fileName)).containsExactly("one", "one-cope-foot");
    assertThat(said(all.get(0)))
        .contains("first end, foot: coped onto the side of main at", "last end, top: square");
    double upper = upperEdge(all.get(1));
    double exact = exactUpper(t, y - 100);
    assertThat(upper).isCloseTo(exact, within(0.0501));
    for (double[] p : printed(all.get(1))) {
      double phi = 2 * Math.PI * p[0];
      double up = exact - p[1];
      double nearest = Double.POSITIVE_INFINITY;
      for (int k = 0; k <= 40; k++) {
        double r = 17.05 + 2 * k / 40.0;
        // x along the main tube, y outboard, z up; the acute side looks forward and down
        double z = up * Math.sin(t) - r * Math.cos(phi) * Math.cos(t);
        double across = y - 100 + r * Math.sin(phi);
        nearest = Math.min(nearest, Math.hypot(across, z) - 22.225);
      }
      assertThat(nearest).as("at %s of the way round", p[0]).isCloseTo(0, within(TRUE_TO_MM));
    }
  }

  /** A branch that leans outboard too: foot on the middle of the main tube, off it at the top. */
  @ParameterizedTest
  @CsvSource({"300, 200, 300, 100", "-250, 120, 300, 101.5"})
  void aPrintedCopeInSpaceRolledBackLiesOnTheOtherTube(
      double ahead, double out, double up, double y) throws Exception {
    List<NamedDrawing> all =
        templates(
            "\"a\": [0, 500], \"b\": [1000, 500], \"foot\": [500, 500], \"top\": [%s, %s]"
                .formatted(500 + ahead, 500 + up),
            rail("main", "\"a\", \"b\"", 44.45, 100, true)
                + ", "
                + rail(
                    "one",
                    "\"foot\", {\"pin\": \"top\", \"y\": %s}".formatted(y + out),
                    38.1,
                    y,
                    true),
            "one");
    double length = Math.sqrt(ahead * ahead + out * out + up * up);
    double[] a = {ahead / length, out / length, up / length};
    // the main tube runs along x; the acute side of the branch leans to where it goes along that
    double square = Math.hypot(a[1], a[2]);
    double sign = Math.signum(ahead);
    double[] acute = {sign * square, -sign * a[0] * a[1] / square, -sign * a[0] * a[2] / square};
    double[] outboard = {0, a[2] / square, -a[1] / square};
    assertThat(said(all.get(0)))
        .contains("at " + Math.round(Math.toDegrees(Math.acos(Math.abs(a[0]))) * 10) / 10.0 + "°");
    // the axes pass each other beside the pin, where the plane through both is square to the main
    double zero = (100 - y) * a[1] / (square * square);
    double upper = upperEdge(all.get(1));
    double low = printed(all.get(1)).stream().mapToDouble(p -> p[1]).max().orElseThrow();
    double cut =
        Double.parseDouble(said(all.get(0)).replaceAll(".*cut length ([0-9.]+) mm.*", "$1"));
    assertThat(cut).isCloseTo(length - (zero + upper - low), within(0.15));
    for (double[] p : printed(all.get(1))) {
      double phi = 2 * Math.PI * p[0];
      double on = zero + upper - p[1];
      double nearest = Double.POSITIVE_INFINITY;
      for (int k = 0; k <= 40; k++) {
        double r = 17.05 + 2 * k / 40.0;
        double[] at = new double[3];
        for (int i = 0; i < 3; i++) {
          at[i] = on * a[i] + r * (Math.cos(phi) * acute[i] + Math.sin(phi) * outboard[i]);
        }
        nearest = Math.min(nearest, Math.hypot(at[1] + y - 100, at[2]) - 22.225);
      }
      // the edge is said to a tenth of a millimetre
      assertThat(nearest).as("at %s of the way round", p[0]).isCloseTo(0, within(0.1));
    }
  }

  /** The highest cut, by walking up the inside and outside of the tube until it is clear. */
  private static double exactUpper(double t, double off) {
    double most = 0;
    for (int i = 0; i < 720; i++) {
      double phi = i * Math.PI / 360;
      for (double r : new double[] {17.05, 19.05}) {
        double low = 0;
        double high = 200;
        for (int k = 0; k < 60; k++) {
          double up = (low + high) / 2;
          double z = up * Math.sin(t) - r * Math.cos(phi) * Math.cos(t);
          boolean clear = z > 0 && Math.hypot(off + r * Math.sin(phi), z) > 22.225;
          if (clear) {
            high = up;
          } else {
            low = up;
          }
        }
        most = Math.max(most, high);
      }
    }
    return most + 40;
  }

  /**
   * A corner of 120 degrees between equal tubes: both are sawn through the plane that halves it.
   */
  @Test
  void aPrintedMitreRolledBackLiesInThePlaneThatHalvesTheCorner() throws Exception {
    List<NamedDrawing> all =
        templates(
            CORNER,
            rail("one", "\"a\", \"b\"", 30, 90, true)
                + ", "
                + rail("two", "\"b\", \"c\"", 30, 90, true),
            "one");
    assertThat(all.stream().map(NamedDrawing::fileName)).containsExactly("one", "one-mitre-b");
    // both longest points lie 15/tan 60 past the pin
    assertThat(said(all.get(0)))
        .contains("end to end with two in a corner of 120°, sawn flat at 60° to the tube")
        .contains("its longest point 8.7 mm past the pin")
        .contains("cut length 408.7 mm between the longest points of its ends; 400 mm on the");
    double upper = 40 + 15 / Math.tan(Math.toRadians(60));
    assertThat(upperEdge(all.get(1))).isCloseTo(upper, within(0.0501));
    double c = Math.cos(Math.toRadians(60));
    double s = Math.sin(Math.toRadians(60));
    for (double[] p : printed(all.get(1))) {
      double phi = 2 * Math.PI * p[0];
      // the tube runs back from b, the inside of the corner lies above it
      double x = -(upper - p[1]);
      double z = 15 * Math.cos(phi);
      // the plane through b along (cos 120, sin 120), which halves the corner
      assertThat(x * s + z * c).isCloseTo(0, within(TRUE_TO_MM));
    }
  }

  /** What is planned from bars is what the card says: longer than from pin to pin at a mitre. */
  @Test
  void barsAreSawnAsLongAsTheEndsNeed() {
    Study study =
        RailJoints.study(
            "mm",
            CORNER,
            rail("one", "\"a\", \"b\"", 30, 90, true)
                + ", "
                + rail("two", "\"b\", \"c\"", 30, 90, true)
                + ", "
                + rail("thick", "\"a\", \"d\"", 40, 90, false));
    Cuts cuts = Cuts.of(study);
    assertThat(cuts.tubes().get(0).lengthMm())
        .isCloseTo(400 + 15 / Math.tan(Math.toRadians(60)) + 20 / Math.tan(acute()), within(0.01));
    assertThat(cuts.tubes().get(1).lengthMm())
        .isCloseTo(400 + 15 / Math.tan(Math.toRadians(60)), within(0.01));
    CutPlan.Bars bars = (CutPlan.Bars) CutPlans.of(study, cuts).plans().get(0);
    assertThat(bars.pieces().get(0).lengthMm()).isEqualTo(cuts.tubes().get(0).lengthMm());
  }

  /** Half the angle at a between (400, 0) and (200, 400), whose tubes are unlike. */
  private static double acute() {
    return Math.atan2(400, 200) / 2;
  }

  @Test
  void endsThatAreNoPlainCornerAreToldByName() {
    String two = ", " + rail("two", "\"b\", \"c\"", 30, 90, true);
    assertThat(of(CORNER, rail("one", "\"a\", \"b\"", 30.4, 90, true) + two)).contains("sawn flat");
    assertThat(of(CORNER, rail("one", "\"a\", \"b\"", 31, 90, true) + two))
        .contains("at the end of two, by hand: they are not alike");
    assertThat(of(CORNER, rail("one", "\"a\", \"b\"", 30, 91, true) + two)).contains("not alike");
    assertThat(of(CORNER, rail("one", "\"a\", \"b\"", 30, 160, true) + two))
        .contains("last end, b: square");
    assertThat(
            of(
                CORNER,
                rail("one", "\"a\", \"b\"", 30, 90, true)
                    + two
                    + ", "
                    + rail("three", "\"d\", \"b\"", 30, 90, true)))
        .contains("at the end of two and three, by hand: three ends in one place");
  }

  /** One rail on the left alone and one on the right alone do not meet. */
  @Test
  void railsOnTwoSidesDoNotMeet() {
    String one = rail("one", "\"a\", \"b\"", 30, 60, false);
    assertThat(of(CORNER, one + ", " + rail("two", "\"b\", \"c\"", 30, -60, false)))
        .contains("last end, b: square");
    assertThat(of(CORNER, one + ", " + rail("two", "\"b\", \"c\"", 30, -60, true)))
        .contains("end to end with two");
  }

  @Test
  void anEndAtTheSteeringHeadSaysThatItsTubeIsNotKnown() {
    String front =
        ", \"front\": {\"kind\": \"front\", \"type\": \"telescopic\", \"top\": \"c\", \"bottom\":"
            + " \"b\", \"axle\": \"f\", \"tube\": 41, \"y\": 95, \"bump\": 60, \"droop\": 40,"
            + " \"mass\": 12}";
    assertThat(of(CORNER, rail("one", "\"a\", \"b\"", 30, 0, false) + front))
        .contains("at the steering head of front, by hand: cope it to the head tube you have");
    assertThat(of(CORNER, rail("one", "\"a\", \"b\"", 30, 90, true) + front))
        .contains("90 mm beside the steering head of front");
  }

  private static String bracket(double half, String points) {
    return ", \"plate\": {\"kind\": \"bracket\", \"frame\": \"b\", \"left\": "
        + half
        + ", \"right\": "
        + half
        + ", \"mass\": 1, \"outline\": {\"points\": "
        + points
        + "}}";
  }

  /** An edge through b that leans 30 degrees from upright is met at 60. */
  @Test
  void anEndAgainstAPlateIsSawnFlatToItsEdge() {
    String one = rail("one", "\"a\", \"b\"", 30, 0, false);
    String leaning = "[[-57.735, -100], [57.735, 100], [157.735, 100], [42.265, -100]]";
    assertThat(of(CORNER, one + bracket(20, leaning)))
        .contains("against the edge of plate, sawn flat at 60° to the tube");
    String upright = "[[0, -100], [0, 100], [50, 100], [50, -100]]";
    assertThat(of(CORNER, one + bracket(20, upright))).contains("edge of plate, square");
    assertThat(of(CORNER, one + bracket(14, upright))).contains("last end, b: square");
    String gone = "[[3, -100], [3, 100], [50, 100], [50, -100]]";
    assertThat(of(CORNER, one + bracket(20, gone))).contains("last end, b: square");
  }

  @Test
  void anEndThatIsSlitForAPlateSaysHowWideAndDeep() {
    String one = rail("one", "\"a\", \"b\"", 30, 0, false);
    String reaching = "[[-35, -50], [60, -50], [60, 50], [-35, 50]]";
    assertThat(of(CORNER, one + bracket(3, reaching)))
        .contains("slit for plate: 6 wide, 35 mm deep, through both walls in its plane");
  }
}
