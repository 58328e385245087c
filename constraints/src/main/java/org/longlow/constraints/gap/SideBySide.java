package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.shape.Interval;

/**
 * Where two bodies lie beside each other across the machine, as a peg lies beside a cowl: they
 * overlap in side view because that is how they are meant to be, and what is short there is short
 * across. Moves in the elevation are no remedy.
 *
 * <p>The rule: two outlines lie side by side when the way out of each other in the elevation is
 * both more than {@link #LEAST_WAY_MM} and more than {@link #TIMES} what is short across. Two that
 * both stand over the middle of the machine do not, since neither can go aside. Both figures are
 * judgements of this tool.
 */
public final class SideBySide {

  /** A way out in the elevation up to this is always worth going, mm. */
  public static final double LEAST_WAY_MM = 25;

  /** A way out this many times as long as what is short across is not. */
  public static final double TIMES = 5;

  /**
   * Two outlines that lie side by side and are short of their gap.
   *
   * @param first place of the outline among {@link Solid#outlines} of the first body
   * @param second the same of the second
   * @param shortMm how much the gap across the machine is less than asked, mm, &gt; 0
   * @param wayMm how far one would have to move in the elevation to keep the gap there, mm
   */
  public record Pair(int first, int second, double shortMm, double wayMm) {}

  private SideBySide() {}

  /** Returns the pairs of outlines that lie side by side with less than {@code gapMm} across. */
  public static List<Pair> of(Solid a, Solid b, double gapMm) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < a.faces().size(); i++) {
      for (int j = 0; j < b.faces().size(); j++) {
        Face p = a.faces().get(i);
        Face q = b.faces().get(j);
        double across = p.acrossMm(q);
        if (across < gapMm && p.apartMm(q) == 0 && !(inMiddle(p) && inMiddle(q))) {
          double way =
              wayMm(p, q, new Contact(i, j, Contact.Kind.OUT_OF_A, 0, 0, 0, across, 0), gapMm);
          if (way > Math.max(LEAST_WAY_MM, TIMES * (gapMm - across))) {
            pairs.add(new Pair(i, j, gapMm - across, way));
          }
        }
      }
    }
    return pairs;
  }

  private static boolean inMiddle(Face face) {
    return face.across().stream().anyMatch(SideBySide::holdsMiddle);
  }

  private static boolean holdsMiddle(Interval interval) {
    return interval.from() < 0 && interval.to() > 0;
  }

  /** The way in the elevation to where the gap is kept; 0 where the outlines are apart. */
  private static double wayMm(Face p, Face q, Contact shape, double gapMm) {
    if (!p.holdsCornerOf(q)) {
      Nearest near = Nearest.of(p.edges(), q.edges(), Nearest.TOUCH_MM);
      if (near == null || near.distanceMm() > 0) {
        return 0;
      }
    }
    Contact out = shape.overlap(p.edges(), q.edges());
    return out == null ? 0 : out.neededMm(gapMm) - out.sideMm();
  }
}
