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
  private final int best;

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
    best = tilings.stream().mapToInt(Weighed::weight).sum();
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
    return best;
  }

  /** Words go to the sheet whose cell has their start, so the whole spot must be on that sheet. */
  private static boolean onOneSheet(Tiling t, Envelope spot) {
    Envelope first = t.cell(0, 0);
    double stepX = t.usableWidthMm() - t.overlapMm();
    double stepY = t.usableHeightMm() - t.overlapMm();
    // cells touch, and the outer ones reach as far as their sheets
    double right = (spot.getMinX() - first.getMinX() - t.overlapMm() / 2) / stepX;
    double down = (first.getMaxY() - t.overlapMm() / 2 - spot.getMaxY()) / stepY;
    Envelope cell = t.cell(place(down, t.rows()), place(right, t.columns()));
    Envelope inner = new Envelope(cell);
    inner.expandBy(Tiling.OVERLAP_MM / 2 - 1);
    return inner.contains(spot) && cell.contains(spot.getMinX(), spot.getMaxY());
  }

  private static int place(double steps, int count) {
    return (int) Math.max(0, Math.min(count - 1, Math.floor(steps)));
  }
}
