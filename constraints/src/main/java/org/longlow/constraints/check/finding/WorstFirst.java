package org.longlow.constraints.check.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * The one order of findings for people: what a machine lacks to be ridden, for it says what to do
 * next; then the verdict, worst to best, what only wants a source read at the end of its verdict,
 * of that what law from memory lets by, for it is much and says little; within one verdict how far
 * outside its limit, in what is much of such a figure; then as they come. A finding that fails
 * without a figure, such as somebody who cannot sit, comes before those that have one.
 */
public final class WorstFirst {

  /** The order. */
  public static final Comparator<Finding> ORDER =
      Comparator.comparing((Finding f) -> !leads(f))
          .thenComparing(Finding::verdict)
          .thenComparing(Finding::aside)
          .thenComparing(f -> f.kind().fromMemory())
          .thenComparingDouble(WorstFirst::room);

  private WorstFirst() {}

  /** Returns them in this order. */
  public static List<Finding> of(Collection<Finding> findings) {
    return findings.stream().sorted(ORDER).toList();
  }

  /** Returns whether it says what to do before anything else. */
  public static boolean leads(Finding f) {
    boolean open = f.verdict() == Verdict.FAIL || f.verdict() == Verdict.CAUTION;
    return f.kind().leads() && open;
  }

  private static double room(Finding f) {
    if (Double.isNaN(f.margin())) {
      return f.verdict() == Verdict.FAIL ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }
    return f.margin() / much(f.unit());
  }

  /** How far outside a limit is much, in the unit: as bad as 10 mm of a gap. Judgement. */
  private static double much(FigureUnit unit) {
    return switch (unit) {
      case MM -> 10;
      case MM2 -> 1000;
      case NEWTON -> 50;
      case KG, KPA, KM_PER_HOUR -> 5;
      case DEG -> 5;
      case G, SHARE, NONE -> 0.05;
      case WATT -> 20;
      case HOUR -> 0.5;
      case COUNT, LINKS -> 1;
    };
  }
}
