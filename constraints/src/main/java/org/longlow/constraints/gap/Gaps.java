package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.shape.Memo;

/** Gaps of many bodies at once. */
public final class Gaps {

  /** Smallest first, then by name. */
  public static final Comparator<Gap> ORDER =
      Comparator.comparingDouble(Gap::gapMm).thenComparing(Gap::first).thenComparing(Gap::second);

  /** From one edit to the next most bodies, and so the gaps between them, stay as they are. */
  private static final Memo<Asked, Optional<Gap>> KNOWN =
      new Memo<>(2048, asked -> Optional.ofNullable(asked.a.to(asked.b, asked.cutMm)));

  /** Two bodies, told apart by which objects they are, and the gap that must be undercut. */
  private record Asked(Solid a, Solid b, double cutMm) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Asked o
          && o.a == a
          && o.b == b
          && Double.doubleToLongBits(o.cutMm) == Double.doubleToLongBits(cutMm);
    }

    @Override
    public int hashCode() {
      int pair = 31 * System.identityHashCode(a) + System.identityHashCode(b);
      return 31 * pair + Double.hashCode(cutMm);
    }
  }

  private Gaps() {}

  /** Says up to which gap a pair of bodies is of interest. */
  @FunctionalInterface
  public interface Cut {
    /** The pair is of no interest at all. */
    double NEVER = Double.NEGATIVE_INFINITY;

    /** Returns the gap, mm, that must be undercut to be listed, at most the horizon. */
    double mm(Solid first, Solid second);
  }

  /**
   * Returns the gaps among {@code bodies} that are less than {@code horizonMm}, smallest first.
   *
   * @param cut what matters of each pair; asked for each pair whose boxes come near
   */
  public static List<Gap> among(List<Solid> bodies, double horizonMm, Cut cut) {
    int[] order = alongTheMachine(bodies);
    List<Gap> gaps = new ArrayList<>();
    for (int p = 0; p < order.length; p++) {
      Solid body = bodies.get(order[p]);
      double end = body.envelope().getMaxX() + horizonMm;
      for (int q = p + 1; q < order.length; q++) {
        Solid next = bodies.get(order[q]);
        if (next.envelope().getMinX() > end) {
          break;
        }
        boolean inOrder = order[p] < order[q];
        add(gaps, inOrder ? body : next, inOrder ? next : body, horizonMm, cut);
      }
    }
    gaps.sort(ORDER);
    return gaps;
  }

  /** Returns which bodies there are, from the rearmost start to the foremost. */
  private static int[] alongTheMachine(List<Solid> bodies) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      if (!bodies.get(i).envelope().isNull()) {
        order.add(i);
      }
    }
    order.sort(Comparator.comparingDouble(i -> bodies.get(i).envelope().getMinX()));
    return order.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Returns the gaps between {@code some} and {@code others}, as {@link #among} does. */
  public static List<Gap> between(List<Solid> some, List<Solid> others, double horizonMm, Cut cut) {
    List<Gap> gaps = new ArrayList<>();
    for (Solid body : some) {
      for (Solid other : others) {
        add(gaps, body, other, horizonMm, cut);
      }
    }
    gaps.sort(ORDER);
    return gaps;
  }

  private static void add(List<Gap> into, Solid a, Solid b, double horizonMm, Cut cut) {
    if (!a.near(b, horizonMm)) {
      return;
    }
    double cutMm = cut.mm(a, b);
    if (cutMm == Cut.NEVER) {
      return;
    }
    KNOWN.of(new Asked(a, b, Math.min(cutMm, horizonMm))).ifPresent(into::add);
  }
}
