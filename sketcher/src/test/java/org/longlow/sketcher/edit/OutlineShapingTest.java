package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.sketcher.edit.Plates.after;
import static org.longlow.sketcher.edit.Plates.area;
import static org.longlow.sketcher.edit.Plates.at;
import static org.longlow.sketcher.edit.Plates.handles;
import static org.longlow.sketcher.edit.Plates.places;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Vertex;

/** Whole outlines offset and made symmetrical, against JTS and closed forms; new parts. */
class OutlineShapingTest {

  private static final String BOX = "[0, 0], [100, 0], [100, 60], [0, 60]";

  static LongStream seeds() {
    return LongStream.range(0, 20);
  }

  private static Outline outline(Layout layout) {
    return ((Part.Outlined) layout.parts().get("plate")).outline();
  }

  @Test
  void aBoxGrowsAndShrinksByItsClosedForm() {
    Layout box = Plates.points(BOX);
    for (double by : new double[] {10, 0.5, -10, -29}) {
      Layout other = after(box, OutlineShaping.offset("plate", places(box), by, false));
      assertThat(area(other).getArea()).isCloseTo((100 + 2 * by) * (60 + 2 * by), within(1e-6));
      assertThat(outline(other).vertices()).hasSize(4);
    }
    assertThatThrownBy(() -> OutlineShaping.offset("plate", places(box), -30.1, false).applied(box))
        .hasMessageContaining("nothing of plate is left at -30.1 mm");
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void anOffsetIsThatOfJts(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    StringBuilder points = new StringBuilder();
    boolean clockwise = random.nextBoolean();
    for (int i = 0; i < 7; i++) {
      double angle = (clockwise ? -1 : 1) * 2 * Math.PI * i / 7;
      double r = random.nextDouble(50, 90);
      points
          .append(i == 0 ? "" : ", ")
          .append(Plates.point(r * Math.cos(angle), r * Math.sin(angle)).replace("]", ""))
          .append(random.nextInt(4) == 0 ? ", \"smooth\"]" : "]");
    }
    Layout star = Plates.points(points.toString());
    double by = random.nextDouble(-8, 12);
    Layout other = after(star, OutlineShaping.offset("plate", places(star), by, false));
    BufferParameters mitred =
        new BufferParameters(16, BufferParameters.CAP_ROUND, BufferParameters.JOIN_MITRE, 5);
    mitred.setSimplifyFactor(1e-5);
    Geometry wanted = BufferOp.bufferOp(area(star), by, mitred);
    // everywhere within 0.05 mm of it, and coordinates to a thousandth
    assertThat(area(other).buffer(0.06).contains(wanted)).isTrue();
    assertThat(wanted.buffer(0.06).contains(area(other))).isTrue();
    List<Vertex> made = outline(other).vertices();
    assertThat(made.size()).isLessThan(150);
    assertThat(made).doesNotHaveDuplicates();
  }

  /** A ring of eight smooth points is near enough to its offset to stay one. */
  @ParameterizedTest
  @CsvSource({"1,0.5", "-1,0.5", "1,1.5", "-1,-1"})
  void smoothOutlinesStaySmooth(int way, double byMm) {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < 8; i++) {
      double angle = way * 2 * Math.PI * i / 8;
      points
          .append(i == 0 ? "" : ", ")
          .append(Plates.point(60 * Math.cos(angle), 60 * Math.sin(angle)).replace("]", ""))
          .append(", \"smooth\"]");
    }
    Layout ring = Plates.points(points.toString());
    Layout larger = after(ring, OutlineShaping.offset("plate", places(ring), byMm, false));
    assertThat(outline(larger).vertices()).hasSize(8).allMatch(Vertex::smooth);
    // a smooth point goes straight out by just that much
    assertThat(area(larger).getEnvelopeInternal().getWidth())
        .isCloseTo(2 * (60 + byMm), within(0.001));
    double length = area(ring).getLength();
    assertThat(area(larger).getArea() - area(ring).getArea())
        .isCloseTo(
            byMm * length + Math.PI * byMm * byMm, within(OutlineShaping.OFFSET_MM * length));
  }

  @Test
  void straightOutlinesKeepTheirPoints() {
    Layout plate = Plates.points("[0, 0], [100, 0], [70, 60], [40, 30], [0, 60]");
    assertThat(
            outline(after(plate, OutlineShaping.offset("plate", places(plate), 5, false)))
                .vertices())
        .hasSize(5);
  }

  @Test
  void pinsAndFormulasAreKeptUnlessAskedFor() {
    Layout plate = Plates.points("[0, 0], [\"wide\", 0], \"p\"");
    assertThatThrownBy(() -> OutlineShaping.offset("plate", places(plate), 5, false).applied(plate))
        .hasMessageContaining("2 points of plate are pins or formulas");
    Layout over = after(plate, OutlineShaping.offset("plate", places(plate), 5, true));
    assertThat(area(over).getArea()).isGreaterThan(area(plate).getArea());
  }

  @Test
  void whatFallsApartOrIsNumberedIsRefused() {
    Layout waist = Plates.points("[0, 0], [50, 28], [100, 0], [100, 60], [50, 32], [0, 60]");
    assertThatThrownBy(
            () -> OutlineShaping.offset("plate", places(waist), -4, false).applied(waist))
        .hasMessageContaining("falls apart");
    Layout tied =
        Plates.of(
            "\"o\"",
            "{\"points\": [" + BOX + "]}",
            "\"on\": {\"tie\": \"on-edge\", \"pins\": [\"q\"], \"part\": \"plate\", \"edge\": 0}");
    assertThatThrownBy(
            () ->
                OutlineShaping.symmetrical("plate", places(tied), at(450, 500), at(450, 600))
                    .applied(tied))
        .hasMessageContaining("tie on names one by its number");
    Layout measured = KeptPointsTest.measured("{\"points\": [" + BOX + "]}", 1, 2);
    assertThatThrownBy(
            () ->
                OutlineShaping.symmetrical("plate", places(measured), at(450, 500), at(450, 600))
                    .applied(measured))
        .hasMessageContaining(
            "dimension to 1, dimension to 2 name one by its number; let go of them");
    // point by point all keep their numbers
    Layout larger = after(measured, OutlineShaping.offset("plate", places(measured), 5, false));
    assertThat(larger.dimensions()).isEqualTo(measured.dimensions());
    // a bend offset far is written anew, as straight pieces
    String bent = BOX.replace("[100, 60]", "[100, 60, \"smooth\"]");
    Layout bend = KeptPointsTest.measured("{\"points\": [" + bent + "]}", 3);
    assertThatThrownBy(() -> OutlineShaping.offset("plate", places(bend), 12, false).applied(bend))
        .hasMessageContaining("dimension to 3 names one by its number; let go of it");
    Layout other =
        Plates.of(
            "\"o\"",
            "{\"points\": [" + BOX + "]}",
            "\"at\": {\"tie\": \"together\", \"pins\": [\"q\", \"p\"]}}, \"dimensions\": {\"gap\":"
                + " {\"along\": \"straight\", \"ends\": [\"a\", {\"part\": \"plate\"}]}");
    // what names no edge and no point is in nobody's way
    assertThat(
            outline(
                    OutlineShaping.symmetrical("plate", places(box()), at(450, 500), at(450, 600))
                        .applied(other))
                .half())
        .isTrue();
  }

  private static Layout box() {
    return Plates.points(BOX);
  }

  // --- halves

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whatIsMadeSymmetricalIsItsImageAndKeepsItsLeft(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < 8; i++) {
      double r = random.nextDouble(60, 90);
      double angle = 2 * Math.PI * i / 8;
      points
          .append(i == 0 ? "" : ", ")
          .append(Plates.point(r * Math.cos(angle), r * Math.sin(angle)).replace("]", ""))
          .append(random.nextInt(3) == 0 ? ", \"smooth\"]" : "]");
    }
    Layout before =
        Plates.of(
            "\"o\"",
            "{\"points\": ["
                + points
                + "], \"holes\": [{\"hole\": \"round\", \"at\": [0, 30],"
                + " \"diameter\": 10}, {\"hole\": \"round\", \"at\": [0, -30], \"diameter\": 8}]}",
            "");
    double turn = random.nextDouble(-0.8, 0.8);
    var a = at(400 + 10 * Math.cos(turn), 500 + 10 * Math.sin(turn));
    var b = at(400 + 90 * Math.cos(turn), 500 + 90 * Math.sin(turn));
    Layout half = after(before, OutlineShaping.symmetrical("plate", places(before), a, b));
    assertThat(outline(half).half()).isTrue();
    // the hole to the left stays, seen along the axis
    assertThat(outline(half).holes()).containsExactly(outline(before).holes().get(0));
    assertThat(((Polygon) area(half)).getNumInteriorRing()).isEqualTo(2);
    Geometry image =
        AffineTransformation.reflectionInstance(a.x(), a.z(), b.x(), b.z()).transform(area(half));
    // its ends are written to a thousandth, and arcs flattened from either side
    assertThat(area(half).symDifference(image).getArea()).isLessThan(0.02 * image.getLength());
    Layout whole = after(half, OutlineShaping.whole("plate", places(half)));
    assertThat(outline(whole).half()).isFalse();
    assertThat(outline(whole).holes()).hasSize(2);
    assertThat(area(whole).symDifference(area(half)).getArea())
        .isLessThan(0.002 * image.getLength());
  }

  /** A slot and a cut-out of a half are there on both sides, and written out once it is whole. */
  @Test
  void holesOfAHalfHaveTheirImages() {
    String holes =
        "{\"hole\": \"slot\", \"from\": [30, 8], \"to\": [45, 8], \"width\": 4},"
            + " {\"hole\": \"cut\", \"points\": [[60, 3], [72, 3], [65, 9]]}";
    Layout half =
        Plates.of(
            "\"o\"",
            "{\"points\": [[0, 0], [40, 30], [100, 0]], \"half\": true, \"holes\": ["
                + holes
                + "]}",
            "");
    Layout whole = after(half, OutlineShaping.whole("plate", places(half)));
    assertThat(outline(whole).holes())
        .extracting(hole -> hole.getClass().getSimpleName())
        .containsExactly("Slot", "Slot", "Cut", "Cut");
    assertThat(outline(whole).holes().get(0)).isEqualTo(outline(half).holes().get(0));
    assertThat(area(whole).symDifference(area(half)).getArea()).isLessThan(0.5);
    // 3000 without two slots of 15 by 4 with round ends and two triangles of 36
    assertThat(area(whole).getArea()).isCloseTo(3000 - 2 * (60 + 4 * Math.PI + 36), within(0.3));
    assertThat(((Polygon) area(whole)).getNumInteriorRing()).isEqualTo(4);
  }

  @Test
  void halfABoxIsTheSameBox() {
    Layout box = Plates.points(BOX);
    Layout half =
        after(box, OutlineShaping.symmetrical("plate", places(box), at(450, 400), at(450, 600)));
    assertThat(area(half).equalsTopo(area(box))).isTrue();
    assertThat(outline(half).vertices()).hasSize(4);
    // corners on the axis itself
    Layout kite = Plates.points("[0, 0], [50, -30], [100, 0], [50, 20]");
    Layout both =
        after(kite, OutlineShaping.symmetrical("plate", places(kite), at(400, 500), at(500, 500)));
    assertThat(outline(both).vertices()).hasSize(3);
    assertThat(area(both).getArea()).isCloseTo(2000, within(1e-6));
    assertThatThrownBy(
            () ->
                OutlineShaping.symmetrical("plate", places(box), at(600, 500), at(600, 400))
                    .applied(box))
        .hasMessageContaining("axis");
  }

  /** A cut across a straight edge is a corner, one across a bend is not. */
  @Test
  void whereAnAxisCutsABendTheEdgeStaysSmooth() {
    for (boolean bend : new boolean[] {false, true}) {
      String corner = bend ? "[100, 0, \"smooth\"]" : "[100, 0]";
      Layout plate = Plates.points("[0, 0], " + corner + ", [100, 60], [0, 60]");
      // up through the lower edge, whose end may be smooth, and the upper, which is straight
      Layout half =
          after(
              plate,
              OutlineShaping.symmetrical("plate", places(plate), at(450, 400), at(450, 600)));
      List<Vertex> left = outline(half).vertices();
      assertThat(left).hasSize(4);
      assertThat(left.get(0).smooth()).isFalse();
      assertThat(left.get(3).smooth()).isEqualTo(bend);
      assertThat(left.get(0).x().evaluate(n -> 0)).isCloseTo(50, within(1e-3));
      assertThat(left.get(3).x().evaluate(n -> 0)).isCloseTo(50, within(1e-3));
      assertThat(left.get(0).z().evaluate(n -> 0)).isCloseTo(60, within(1e-3));
    }
  }

  /** What lies on an axis lies on neither side of it. */
  @Test
  void aHoleOnTheAxisStays() {
    Layout plate =
        Plates.of(
            "\"o\"",
            "{\"points\": ["
                + BOX
                + "], \"holes\": [{\"hole\": \"round\", \"at\": [50, 30], \"diameter\": 10},"
                + " {\"hole\": \"round\", \"at\": [80, 30], \"diameter\": 8}]}",
            "");
    Layout half =
        OutlineShaping.symmetrical("plate", places(plate), at(450, 400), at(450, 600))
            .applied(plate);
    assertThat(outline(half).holes()).containsExactly(outline(plate).holes().get(0));
  }

  @Test
  void anAxisThroughAForkIsRefused() {
    Layout fork =
        Plates.points(
            "[0, 0], [100, 0], [100, 60], [70, 60], [70, 20], [30, 20], [30, 60], [0, 60]");
    assertThatThrownBy(
            () ->
                OutlineShaping.symmetrical("plate", places(fork), at(400, 540), at(500, 540))
                    .applied(fork))
        .hasMessageContaining("more than two pieces");
  }

  // --- new parts

  @Test
  void everyKindIsDrawnFromPoints() {
    Layout before = Plates.points(BOX);
    for (String kind : NewPart.kinds()) {
      String name = NewPart.name(before, kind);
      Layout more =
          after(before, NewPart.of(kind, name, List.of(at(100, 900), at(300, 900), at(250, 1000))));
      Part part = more.parts().get(name);
      assertThat(part.kind()).isEqualTo(kind);
      boolean plate = List.of("bracket", "lever", "latch").contains(kind);
      assertThat(part.base().spread().orElseThrow().left().text())
          .isEqualTo(plate ? "2.5 mm" : "100 mm");
      assertThat(handles(more)).isEqualTo(handles(before));
      assertThat(Handle.of(more, places(more), name).stream().map(Handle::at).toList())
          .containsExactly(at(100, 900), at(300, 900), at(250, 1000));
    }
    assertThat(NewPart.kinds())
        .hasSize(SolidPart.Kind.values().length + ShellPart.Kind.values().length)
        .contains("box", "bracket", "cowl");
    assertThat(NewPart.name(before, "plate")).isEqualTo("plate2");
    assertThatThrownBy(() -> NewPart.of("box", "b", List.of(at(0, 0), at(1, 0))).applied(before))
        .hasMessageContaining("at least 3 points, not 2");
  }
}
