package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Tiling;

/**
 * Where the seams between sheets will run when a template is printed at home, so that words can
 * keep off them. Other paper still prints well, only with words that had to move.
 */
final class SheetSeams {

  /** The two papers of home printers. */
  private static final List<Paper> HOME = List.of(Paper.A4, Paper.LETTER);

  /** The turn of the paper that needs fewer sheets will be used; the other may be. */
  private static final int LIKELY = 10;

  private record Weighed(Tiling tiling, int weight) {}

  private final List<Weighed> tilings = new ArrayList<>();

  /**
   * Works out the seams.
   *
   * @param bounds box round all that will be printed, mm
   */
  SheetSeams(Envelope bounds) {
    for (Paper paper : HOME) {
      if (!Tiling.serves(bounds, paper.portrait()) || !Tiling.serves(bounds, paper.landscape())) {
        continue; // nobody prints it on that paper, so its seams are nobody's trouble
      }
      Tiling upright = tiling(bounds, paper.portrait());
      Tiling across = tiling(bounds, paper.landscape());
      boolean turned = sheets(across) < sheets(upright);
      tilings.add(new Weighed(upright, turned ? 1 : LIKELY));
      tilings.add(new Weighed(across, turned ? LIKELY : 1));
    }
  }

  private static Tiling tiling(Envelope bounds, Paper paper) {
    return Tiling.of(bounds, paper, Tiling.MARGIN_MM, Tiling.OVERLAP_MM);
  }

  private static int sheets(Tiling t) {
    return t.rows() * t.columns();
  }

  /** Returns how well a place keeps off the seams; {@link #best} if it does on every paper. */
  int score(Envelope spot) {
    int score = 0;
    for (Weighed w : tilings) {
      if (onOneSheet(w.tiling(), spot)) {
        score += w.weight();
      }
    }
    return score;
  }

  int best() {
    return tilings.stream().mapToInt(Weighed::weight).sum();
  }

  /** Words go to the sheet whose cell has their start, so the whole spot must be on that sheet. */
  private static boolean onOneSheet(Tiling t, Envelope spot) {
    // the sheet that has its start is one of few: a part may lie on thousands of sheets
    Envelope first = t.tile(0, 0);
    int column = (int) ((spot.getMinX() - first.getMinX()) / (t.usableWidthMm() - t.overlapMm()));
    int row = (int) ((first.getMaxY() - spot.getMaxY()) / (t.usableHeightMm() - t.overlapMm()));
    for (int r = Math.max(0, row - 1); r <= Math.min(t.rows() - 1, row + 1); r++) {
      for (int c = Math.max(0, column - 1); c <= Math.min(t.columns() - 1, column + 1); c++) {
        Envelope inner = new Envelope(t.cell(r, c));
        inner.expandBy(Tiling.OVERLAP_MM / 2 - 1);
        if (inner.contains(spot) && t.cell(r, c).contains(spot.getMinX(), spot.getMaxY())) {
          return true;
        }
      }
    }
    return false;
  }
}
