package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.sketcher.template.RailJoints.rail;
import static org.longlow.sketcher.template.RailJoints.said;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.shape.TubeLine;
import org.longlow.constraints.space.SpaceMm;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Mark;

/** The card of a bent tube: a tube bent by its figures alone comes back to its pins. */
class BendCardTest {

  /** What a scriber line can tell, mm. */
  private static final double TRUE_TO_MM = 0.05;

  /** One row of a card. */
  private record Row(double straight, double deg, double turnDeg, double radius) {}

  /**
   * Bends a tube in space by rows, one rotation after the other, from the first pin on towards the
   * second; returns where its corners and its end come to lie.
   */
  private static List<PointMm> bent(
      List<PointMm> pins, List<Row> rows, double cut, boolean firstToLeft) {
    PointMm way = pins.get(1).minus(pins.get(0)).times(1 / pins.get(1).distance(pins.get(0)));
    PointMm side = way.left().times(firstToLeft ? 1 : -1);
    List<double[]> laid = bent(flat(pins.get(0)), flat(way), flat(side), rows, cut);
    laid.forEach(p -> assertThat(p[1]).isCloseTo(0, within(TRUE_TO_MM)));
    return laid.stream().map(p -> new PointMm(p[0], p[2])).toList();
  }

  private static double[] flat(PointMm p) {
    return new double[] {p.x(), 0, p.z()};
  }

  /**
   * As the other.
   *
   * @param t the way it sets out, a unit vector
   * @param n the side that its first bend turns to, square to that
   */
  private static List<double[]> bent(
      double[] from, double[] t, double[] n, List<Row> rows, double cut) {
    double[] at = from.clone();
    double used = 0;
    List<double[]> out = new ArrayList<>();
    for (Row row : rows) {
      move(at, t, row.straight());
      double turn = Math.toRadians(row.turnDeg());
      double[] b = cross(t, n);
      n = sum(n, Math.cos(turn), b, Math.sin(turn));
      double a = Math.toRadians(row.deg());
      double[] corner = at.clone();
      move(corner, t, row.radius() * Math.tan(a / 2));
      out.add(corner);
      move(at, t, row.radius() * Math.sin(a));
      move(at, n, row.radius() * (1 - Math.cos(a)));
      double[] along = sum(t, Math.cos(a), n, Math.sin(a));
      n = sum(n, Math.cos(a), t, -Math.sin(a));
      t = along;
      used += row.straight() + row.radius() * a;
    }
    move(at, t, cut - used);
    out.add(at);
    return out;
  }

  private static void move(double[] p, double[] d, double mm) {
    for (int i = 0; i < 3; i++) {
      p[i] += mm * d[i];
    }
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double[] sum(double[] a, double p, double[] b, double q) {
    return new double[] {p * a[0] + q * b[0], p * a[1] + q * b[1], p * a[2] + q * b[2]};
  }

  private static List<Row> rows(TubeBends bends) {
    return bends.bends().stream()
        .map(
            b ->
                new Row(
                    b.straightMm(),
                    Math.abs(Math.toDegrees(b.angleRad())),
                    Math.toDegrees(b.turnRad()),
                    b.radiusMm()))
        .toList();
  }

  private static void comesBack(List<PointMm> pins, double radius) {
    List<String> names = new ArrayList<>();
    pins.forEach(p -> names.add("p" + names.size()));
    TubeBends bends = TubeBends.of(names, pins, radius);
    List<Row> rows = rows(bends);
    List<PointMm> laid = bent(pins, rows, bends.cutMm(), bends.bends().get(0).angleRad() > 0);
    for (int i = 0; i < rows.size(); i++) {
      PointMm pin = pins.get(names.indexOf(bends.bends().get(i).pin()));
      assertThat(laid.get(i).distance(pin)).as("corner %s", i + 1).isLessThan(TRUE_TO_MM);
    }
    assertThat(laid.get(rows.size()).distance(pins.get(pins.size() - 1))).isLessThan(TRUE_TO_MM);
  }

  @Test
  void tubesBentByTheirRowsComeBackToTheirPins() {
    SplittableRandom random = new SplittableRandom(41);
    for (int i = 0; i < 200; i++) {
      List<PointMm> pins = new ArrayList<>(List.of(new PointMm(0, 500)));
      double way = random.nextDouble(-3, 3);
      for (int k = random.nextInt(2, 6); k >= 0; k--) {
        way += random.nextDouble(-2.2, 2.2);
        pins.add(
            pins.get(pins.size() - 1).plus(PointMm.unit(way).times(random.nextDouble(150, 700))));
      }
      comesBack(pins, random.nextDouble(30, 120));
    }
  }

  /** The same where pins lie at different distances from the middle plane. */
  @Test
  void tubesBentInSpaceByTheirRowsComeBackToTheirPins() {
    SplittableRandom random = new SplittableRandom(42);
    for (int i = 0; i < 200; i++) {
      List<SpaceMm> pins = new ArrayList<>(List.of(new SpaceMm(0, 90, 500)));
      List<String> names = new ArrayList<>(List.of("p0"));
      for (int k = random.nextInt(2, 6); k >= 0; k--) {
        SpaceMm way =
            new SpaceMm(
                random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1));
        double far = random.nextDouble(250, 700);
        pins.add(pins.get(pins.size() - 1).plus(way.times(far / way.length())));
        names.add("p" + names.size());
      }
      TubeBends bends = TubeBends.of(names, new TubeLine(pins), random.nextDouble(30, 60));
      List<Row> rows = rows(bends);
      double[] t = unit(pins.get(0), pins.get(1));
      double[] n = unit(pins.get(1), pins.get(2));
      n = sum(n, 1, t, -(n[0] * t[0] + n[1] * t[1] + n[2] * t[2]));
      double size = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
      n = sum(n, 1 / size, t, 0);
      List<double[]> laid = bent(new double[] {0, 90, 500}, t, n, rows, bends.cutMm());
      for (int k = 0; k < laid.size(); k++) {
        SpaceMm pin = pins.get(k + 1);
        double[] p = laid.get(k);
        assertThat(new SpaceMm(p[0], p[1], p[2]).distance(pin)).isLessThan(TRUE_TO_MM);
      }
    }
  }

  private static double[] unit(SpaceMm from, SpaceMm to) {
    SpaceMm d = to.minus(from).times(1 / to.distance(from));
    return new double[] {d.x(), d.y(), d.z()};
  }

  /** A pin on a straight is no bend and counts to the straight. */
  @Test
  void aPinOnAStraightIsNoBend() {
    List<PointMm> pins =
        List.of(
            new PointMm(0, 0),
            new PointMm(300, 0),
            new PointMm(500, 0),
            new PointMm(500, 400),
            new PointMm(900, 400));
    comesBack(pins, 80);
    TubeBends bends = TubeBends.of(List.of("a", "b", "c", "d", "e"), pins, 80);
    assertThat(bends.bends().stream().map(TubeBends.Bend::straightMm))
        .containsExactly(420.0, 240.0);
    assertThat(bends.bends().get(0).turnRad()).isZero();
    assertThat(bends.bends().get(1).turnRad()).isEqualTo(Math.PI);
  }

  private static final String PINS =
      "\"a\": [300, 500], \"b\": [700, 500], \"c\": [800, 700], \"d\": [1200, 760]";

  private static NamedDrawing card(String units, String part) {
    return Templates.of(RailJoints.study(units, PINS, part), Set.of("one")).stream()
        .filter(d -> d.fileName().equals("one-bends"))
        .findFirst()
        .orElseThrow();
  }

  /** What is printed is rounded to tenths, of a degree over a metre and of millimetres. */
  @Test
  void thePrintedCardSaysWhatIsBent() {
    NamedDrawing card = card("mm", rail("one", "\"a\", \"b\", \"c\", \"d\"", 28, 90, true));
    List<String> cells =
        card.drawing().layers().get(2).marks().stream().map(m -> ((Mark.Words) m).text()).toList();
    int first = cells.indexOf("b");
    int second = cells.indexOf("c");
    List<Row> rows = List.of(row(cells, first), row(cells, second));
    String said = said(card);
    double cut = Double.parseDouble(said.replaceAll(".*cut length ([0-9.]+) mm.*", "$1"));
    List<PointMm> pins =
        List.of(
            new PointMm(300, 500),
            new PointMm(700, 500),
            new PointMm(800, 700),
            new PointMm(1200, 760));
    List<PointMm> laid = bent(pins, rows, cut, true);
    double rounding = 2 * Math.toRadians(0.05) * 700 + 4 * 0.05;
    for (int i = 0; i < 3; i++) {
      assertThat(laid.get(i).distance(pins.get(i + 1))).isLessThan(rounding);
    }
    assertThat(rows.get(1).turnDeg()).isEqualTo(180);
    assertThat(said)
        .contains(
            "springback",
            "steel tube 28 x 2 mm, make 2",
            "first end, a: square",
            "common practice");
    // the field to be filled in is left free
    assertThat(cells.get(first + 7)).isEqualTo("2");
  }

  private static Row row(List<String> cells, int at) {
    String turn = cells.get(at + 4).replace("°", "").replace("-", "0");
    return new Row(
        Double.parseDouble(cells.get(at + 1)),
        Double.parseDouble(cells.get(at + 3).replace("°", "")),
        Double.parseDouble(turn),
        Double.parseDouble(cells.get(at + 5)));
  }

  /** Level across, then up, then ahead: each bend a right one, a quarter turn between. */
  @Test
  void thePrintedCardOfATubeInSpaceSaysTurnsAndWhichOneItIs() {
    String path =
        "{\"pin\": \"a\", \"y\": 0}, {\"pin\": \"b\", \"y\": 400}, {\"pin\": \"c\", \"y\": 400},"
            + " {\"pin\": \"d\", \"y\": 400}";
    String pins = "\"a\": [700, 500], \"b\": [700, 501], \"c\": [700, 900], \"d\": [1100, 900]";
    List<NamedDrawing> all = RailJoints.templates(pins, rail("one", path, 28, 90, true), "one");
    String said = said(all.get(1));
    assertThat(said).contains("90°", "this is the left one", "turn it the other way each time");
    assertThat(said)
        .contains("the tube itself", "from its first end, a: + counter-clockwise, - clockwise")
        .contains("the bend plane is turned, each goes the other way round");
    List<String> cells =
        all.get(1).drawing().layers().get(2).marks().stream()
            .map(m -> ((Mark.Words) m).text())
            .toList();
    // bent from left to up, then from up to ahead: the plane turns about up, from left to ahead
    assertThat(cells.get(cells.indexOf("c") + 4)).isEqualTo("90°");
  }

  /**
   * As a bender has it whose die never turns: the tube goes on along x and bends towards z; before
   * each bend all that is bent already turns with it, counter-clockwise looked at along x from its
   * first end, which is by a negative angle about x. Three legs tell a shape from its mirror image.
   */
  @Test
  void theTubeItselfTurnsCounterClockwiseSeenFromItsFirstEnd() {
    SplittableRandom random = new SplittableRandom(43);
    for (int i = 0; i < 50; i++) {
      List<SpaceMm> pins = new ArrayList<>(List.of(new SpaceMm(0, 0, 0)));
      for (int k = 0; k < 3; k++) {
        pins.add(
            pins.get(k)
                .plus(
                    new SpaceMm(
                        random.nextDouble(-300, 300),
                        random.nextDouble(-300, 300),
                        random.nextDouble(-300, 300))));
      }
      TubeBends bends = TubeBends.of(List.of("a", "b", "c", "d"), new TubeLine(pins), 1e-3);
      List<double[]> tube = new ArrayList<>(List.of(new double[3]));
      for (int k = 0; k < 2; k++) {
        double turn = bends.bends().get(k).turnRad();
        double a = Math.abs(bends.bends().get(k).angleRad());
        double leg = bends.legsMm().get(k);
        tube.replaceAll(p -> turned(new double[] {p[0] - leg, p[1], p[2]}, 1, 2, -turn));
        tube.add(new double[3]);
        tube.replaceAll(p -> turned(p, 0, 2, -a));
      }
      tube.add(new double[] {bends.legsMm().get(2), 0, 0});
      double asked = hand(pins.stream().map(p -> new double[] {p.x(), p.y(), p.z()}).toList());
      assertThat(hand(tube)).isCloseTo(asked, within(1e-4 * Math.abs(asked) + 100));
    }
  }

  /** Turned by an angle from one axis towards another. */
  private static double[] turned(double[] p, int from, int to, double rad) {
    double[] out = p.clone();
    out[from] = p[from] * Math.cos(rad) - p[to] * Math.sin(rad);
    out[to] = p[from] * Math.sin(rad) + p[to] * Math.cos(rad);
    return out;
  }

  /** Volume of its three legs, mm³: of the other sign in the mirror. */
  private static double hand(List<double[]> p) {
    double[] c = cross(sum(p.get(1), 1, p.get(0), -1), sum(p.get(2), 1, p.get(1), -1));
    double[] d = sum(p.get(3), 1, p.get(2), -1);
    return c[0] * d[0] + c[1] * d[1] + c[2] * d[2];
  }

  /** 300 along and 400 across: its figures are those of 500. */
  @Test
  void aStraightTubeThatLeansIsDrawnInItsTrueLength() {
    String path = "{\"pin\": \"a\", \"y\": 0}, {\"pin\": \"b\", \"y\": 400}";
    List<NamedDrawing> all =
        RailJoints.templates(
            "\"a\": [400, 500], \"b\": [700, 500]", rail("one", path, 28, 0, false), "one");
    PlainPiece piece = all.get(0).plain().orElseThrow();
    assertThat(piece.longMm()).isCloseTo(500, within(1e-9));
    assertThat(piece.pins().get(1).alongMm()).isCloseTo(500, within(1e-9));
    assertThat(said(all.get(0))).contains("cut length 500 mm", "true length");
  }

  @Test
  void aStraightTubeHasNoCardAndInchesAreInches() {
    String straight = rail("one", "\"a\", \"b\"", 28, 90, true);
    assertThat(RailJoints.templates(PINS, straight, "one")).hasSize(1);
    String said = said(card("in", rail("one", "\"a\", \"b\", \"c\", \"d\"", 28, 90, true)));
    assertThat(said).contains(" in,").doesNotContain(" mm");
  }

  /** Angles past a right one, and long lengths, have more letters than their columns hold. */
  @Test
  void noFigureIsCutShort() {
    String pins = "\"a\": [-9000.4, 500], \"b\": [900.1, 500], \"c\": [679.9, 833.9]";
    for (String units : List.of("mm", "in")) {
      NamedDrawing card =
          Templates.of(
                  RailJoints.study(units, pins, rail("one", "\"a\", \"b\", \"c\"", 28, 90, true)),
                  Set.of("one"))
              .stream()
              .filter(d -> d.fileName().equals("one-bends"))
              .findFirst()
              .orElseThrow();
      List<Mark.Words> cells =
          card.drawing().layers().get(2).marks().stream().map(m -> (Mark.Words) m).toList();
      assertThat(cells).extracting(Mark.Words::text).noneMatch(t -> t.contains("…"));
      // atan2(333.9, -220.2), by another hand
      assertThat(cells).extracting(Mark.Words::text).contains("123.4°");
    }
  }
}
