package org.longlow.svg.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

class TilingTest {

  private static final Envelope SIDE_VIEW = new Envelope(0, 2200, 0, 1200);

  // Worked by hand from 1 + ceil((W - u) / (u - overlap)) for a side view of 2200 x 1200 mm,
  // overlap 10.
  @ParameterizedTest
  @CsvSource({
    "a4 landscape, 10, 9, 7",
    "a4 portrait, 10, 13, 5",
    "a3 landscape, 10, 6, 5",
    "letter landscape, 12.7, 9, 7"
  })
  void aSideViewNeedsTheWorkedNumberOfSheets(String paper, double margin, int columns, int rows) {
    Tiling t = Tiling.of(SIDE_VIEW, Paper.parse(paper), margin, 10);
    assertThat(t.columns()).isEqualTo(columns);
    assertThat(t.rows()).isEqualTo(rows);
  }

  @Test
  void whatJustFitsNeedsOneSheetAndAHairMoreNeedsTwo() {
    assertThat(Tiling.of(new Envelope(0, 190, 0, 277), Paper.A4, 10, 10).columns()).isEqualTo(1);
    assertThat(Tiling.of(new Envelope(0, 190.01, 0, 277), Paper.A4, 10, 10).columns()).isEqualTo(2);
    // Two sheets cover 190 + 180 mm.
    assertThat(Tiling.of(new Envelope(0, 370, 0, 1), Paper.A4, 10, 10).columns()).isEqualTo(2);
  }

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void tilesCoverTheDrawingAndShareExactlyTheOverlap(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double x = random.nextDouble(-2000, 2000);
    double y = random.nextDouble(-2000, 2000);
    Envelope b = new Envelope(x, x + random.nextDouble(0, 3000), y, y + random.nextDouble(0, 2000));
    double overlap = random.nextDouble(0, 30);
    Tiling t = Tiling.of(b, Paper.A4, random.nextDouble(0, 20), overlap);
    Envelope all = new Envelope();
    double cells = 0;
    for (int r = 0; r < t.rows(); r++) {
      for (int c = 0; c < t.columns(); c++) {
        all.expandToInclude(t.tile(r, c));
        cells += t.cell(r, c).getArea();
        if (c > 0) {
          assertThat(t.tile(r, c - 1).getMaxX() - t.tile(r, c).getMinX())
              .isEqualTo(overlap, within(1e-9));
          assertThat(t.cell(r, c - 1).getMaxX()).isEqualTo(t.cell(r, c).getMinX(), within(1e-9));
        }
        if (r > 0) {
          assertThat(t.tile(r, c).getMaxY() - t.tile(r - 1, c).getMinY())
              .isEqualTo(overlap, within(1e-9));
        }
      }
    }
    Envelope grown = new Envelope(all);
    grown.expandBy(1e-6);
    assertThat(grown.contains(b)).isTrue();
    assertThat(cells).isEqualTo(all.getArea(), within(1e-6 * all.getArea() + 1e-6));
    assertThat(all.centre().distance(b.centre())).isLessThan(1e-6);
  }

  @Test
  void onlySheetsWhoseCellMeetsTheDrawingAreUsed() {
    // An L: two bars along the left and the lower side of 1000 x 1000 mm.
    Geometry ell = Planar.rectangle(0, 0, 1000, 50).union(Planar.rectangle(0, 0, 50, 1000));
    Drawing d =
        Drawing.of(
            "", new Layer("cut", "", List.of(new Mark.Shape("", ell, Style.wide(Tone.INK)))));
    Tiling t = Tiling.of(d.boundsMm(), Paper.A4, 10, 10);
    boolean[][] used = t.used(d);
    for (int r = 0; r < t.rows(); r++) {
      for (int c = 0; c < t.columns(); c++) {
        assertThat(used[r][c])
            .as(Tiling.label(r, c))
            .isEqualTo(Planar.rectangle(t.cell(r, c)).intersects(ell));
      }
    }
    assertThat(used[0][t.columns() - 1]).isFalse();
    assertThat(used[t.rows() - 1][0]).isTrue();
  }

  @Test
  void theInsideOfAPartIsPrintedTooSoThatTheTemplateHoldsTogether() {
    Drawing d =
        Drawing.of(
            "",
            new Layer(
                "cut",
                "",
                List.of(
                    new Mark.Shape("", Planar.rectangle(0, 0, 900, 1200), Style.wide(Tone.INK)))));
    for (boolean[] row : Tiling.of(d.boundsMm(), Paper.A4, 10, 10).used(d)) {
      assertThat(row).containsOnly(true);
    }
  }

  @Test
  void rowsHaveLettersAndColumnsNumbers() {
    assertThat(Tiling.label(0, 0)).isEqualTo("A1");
    assertThat(Tiling.label(25, 9)).isEqualTo("Z10");
    assertThat(Tiling.label(26, 0)).isEqualTo("AA1");
    assertThat(Tiling.label(27, 1)).isEqualTo("AB2");
  }

  @Test
  void nonsenseIsRefusedWithTheRemedy() {
    assertThatThrownBy(() -> Tiling.of(new Envelope(), Paper.A4, 10, 10))
        .hasMessageContaining("empty");
    assertThatThrownBy(() -> Tiling.of(SIDE_VIEW, Paper.A4, 100, 10))
        .hasMessageContaining("larger paper");
    assertThatThrownBy(() -> Tiling.of(SIDE_VIEW, Paper.A4, Double.NaN, 10))
        .hasMessageContaining("margin");
    assertThatThrownBy(() -> Tiling.of(new Envelope(0, 1e7, 0, 1e7), Paper.A4, 10, 10))
        .hasMessageContaining("10000");
    Tiling t = Tiling.of(SIDE_VIEW, Paper.A4, 10, 10);
    assertThatThrownBy(() -> t.tile(0, 99)).hasMessageContaining("99");
  }
}
