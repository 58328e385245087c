package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.FoamGrade;
import org.longlow.constraints.seat.FoamGrades;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.Wren;

/** Layers of a cushion made thicker, added, taken out, swapped, of another grade. */
class LayerEditsTest {

  private static final Layout WREN = Wren.layout();

  static LongStream seeds() {
    return LongStream.range(0, 30);
  }

  private static List<FoamSpec> layers(Layout layout) {
    return ((CushionPart) layout.parts().get("pan")).layers();
  }

  /** Read from the text, all of them plain millimetres here. */
  private static double mm(FoamSpec layer) {
    return Double.parseDouble(layer.thickness().text().replace(" mm", ""));
  }

  private static double total(Layout layout) {
    return layers(layout).stream().mapToDouble(LayerEditsTest::mm).sum();
  }

  /** A pan of one to eight layers of any grades. */
  private static Layout pan(SplittableRandom random) {
    Layout layout = WREN;
    while (layers(layout).size() > 1) {
      layout = LayerEdits.takeOut("pan", 0).applied(layout);
    }
    layout = LayerEdits.grade("pan", 0, any(random)).applied(layout);
    int more = random.nextInt(8);
    for (int i = 0; i < more; i++) {
      FoamSpec foam = any(random).layer(Formula.parse(5 + random.nextInt(60) + " mm"));
      layout =
          LayerEdits.add("pan", random.nextInt(layers(layout).size() + 1), foam).applied(layout);
    }
    return layout;
  }

  private static FoamGrade any(SplittableRandom random) {
    return FoamGrades.all().get(random.nextInt(FoamGrades.all().size()));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void eachIsUndoneByItsOpposite(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Layout before = pan(random);
    int n = layers(before).size();
    int k = random.nextInt(n);
    double by = random.nextInt(1, 300) / 10.0;

    Layout thick = LayerEdits.thicker("pan", k, by).applied(before);
    assertThat(total(thick)).isCloseTo(total(before) + by, within(1e-9));
    assertThat(LayerEdits.thicker("pan", k, -by).applied(thick)).isEqualTo(before);
    assertThat(LayerEdits.thick("pan", k, mm(layers(before).get(k)), Units.MM).applied(thick))
        .isEqualTo(before);

    FoamSpec foam = any(random).layer(Formula.parse("17 mm"));
    int at = random.nextInt(n + 1);
    Layout more = LayerEdits.add("pan", at, foam).applied(before);
    assertThat(layers(more)).hasSize(n + 1);
    assertThat(layers(more).get(at)).isEqualTo(foam);
    assertThat(total(more)).isCloseTo(total(before) + 17, within(1e-9));
    assertThat(LayerEdits.takeOut("pan", at).applied(more)).isEqualTo(before);

    int j = random.nextInt(n);
    Layout swapped = LayerEdits.swap("pan", k, j).applied(before);
    assertThat(total(swapped)).isCloseTo(total(before), within(1e-9));
    assertThat(layers(swapped).get(j)).isEqualTo(layers(before).get(k));
    assertThat(LayerEdits.swap("pan", j, k).applied(swapped)).isEqualTo(before);

    Layout other = LayerEdits.grade("pan", k, any(random)).applied(before);
    assertThat(layers(other).get(k).thickness()).isEqualTo(layers(before).get(k).thickness());
    FoamGrade was = FoamGrades.of(layers(before).get(k)).orElseThrow();
    assertThat(LayerEdits.grade("pan", k, was).applied(other)).isEqualTo(before);
    assertThat(LayoutReader.checked(other, null)).isInstanceOf(ReadResult.Read.class);
  }

  @Test
  void openAndClosedCellsTakeFiguresToBeginWith() {
    Layout closed = LayerEdits.cells("pan", 0, true).applied(WREN);
    assertThat(layers(closed).get(0).closedCell()).isTrue();
    assertThat(mm(layers(closed).get(0))).isEqualTo(mm(layers(WREN).get(0)));
    assertThat(LayoutReader.checked(closed, null)).isInstanceOf(ReadResult.Read.class);
    Layout open = LayerEdits.cells("pan", 0, false).applied(closed);
    assertThat(layers(open).get(0).closedCell()).isFalse();
    assertThat(layers(open).get(0).ifd25().orElseThrow().text()).isEqualTo("170 N");
    assertThat(LayerEdits.cells("pan", 0, false).applied(WREN)).isEqualTo(WREN);
    assertThat(LayerEdits.cells("pan", 0, true).name())
        .isEqualTo("make layer 1 of pan of closed cells");
    assertThat(LayerEdits.cells("pan", 1, false).name())
        .isEqualTo("make layer 2 of pan of open cells");
  }

  @Test
  void noHandMakesALayerThinnerThanAMillimetre() {
    Layout thin = LayerEdits.thicker("pan", 0, -500).applied(WREN);
    assertThat(mm(layers(thin).get(0))).isEqualTo(1);
    assertThat(mm(layers(LayerEdits.thick("pan", 0, 1.26, Units.MM).applied(WREN)).get(0)))
        .isEqualTo(1.26);
  }

  @Test
  void whatCannotBeIsRefusedInWords() {
    int n = layers(WREN).size();
    assertThat(Tried.refusal(WREN, LayerEdits.takeOut("pan", n)))
        .isEqualTo("pan has no layer " + (n + 1) + "; it has " + n);
    assertThat(Tried.refusal(WREN, LayerEdits.swap("pan", 0, -1))).contains("has no layer 0");
    assertThat(Tried.refusal(WREN, LayerEdits.swap("pan", -1, 0))).contains("has no layer 0");
    assertThat(LayerEdits.swap("pan", 2, 0).name()).isEqualTo("swap layers 1 and 3 of pan");
    assertThat(Tried.refusal(WREN, LayerEdits.add("pan", n + 1, layers(WREN).get(0))))
        .isEqualTo("pan has no place " + (n + 2) + " for a layer");
    Layout one = WREN;
    while (layers(one).size() > 1) {
      one = LayerEdits.takeOut("pan", layers(one).size() - 1).applied(one);
    }
    assertThat(Tried.refusal(one, LayerEdits.takeOut("pan", 0)))
        .startsWith("pan needs a layer of foam");
    assertThat(Tried.refusal(WREN, LayerEdits.thick("fork", 0, 20, Units.MM)))
        .isEqualTo("fork is no cushion");
  }

  @Test
  void whatAMeasureGivesIsNotWrittenOverByHand() {
    Layout held =
        LayerEdits.add("pan", 0, FoamGrades.first(false).layer(Formula.parse("wheelbase / 10")))
            .applied(WREN);
    for (Edit edit :
        List.of(LayerEdits.thick("pan", 0, 20, Units.MM), LayerEdits.thicker("pan", 0, 1))) {
      assertThat(Tried.refusal(held, edit))
          .isEqualTo(
              "the thickness of layer 1 of pan is worked out by wheelbase / 10; change wheelbase"
                  + " or type a thickness over it");
    }
  }
}
