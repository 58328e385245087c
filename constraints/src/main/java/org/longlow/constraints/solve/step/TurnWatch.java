package org.longlow.constraints.solve.step;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.solve.problem.Link;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;

/**
 * Watches which way two-link chains bend, so that a step does not jump to the mirror image.
 *
 * <p>A chain is a pair of {@link Link}s with a common pin. Its bend is the sine of the angle at
 * that pin; a step may more than halve it only when it is already nearly straight, so a chain can
 * pass through straight slowly but never leap.
 */
public final class TurnWatch {
  /** Below this sine a chain counts as straight (about a tenth of a degree). */
  private static final double STRAIGHT = 0.002;

  /** Smallest share of its bend that a chain keeps in one step. */
  private static final double KEPT = 0.4;

  /** Of so many links at a pin all pairs are watched, of more each with the next. */
  private static final int MOST_LINKS = 5;

  private record Chain(int px, int pz, Pt first, Pt second) {}

  private final Chain[] chains;

  private TurnWatch(Chain[] chains) {
    this.chains = chains;
  }

  static TurnWatch of(List<Relation> relations) {
    Map<Pt, List<Pt>> ends = new LinkedHashMap<>();
    for (Relation relation : relations) {
      if (relation instanceof Link link) {
        ends.computeIfAbsent(link.first(), k -> new ArrayList<>()).add(link.second());
        ends.computeIfAbsent(link.second(), k -> new ArrayList<>()).add(link.first());
      }
    }
    List<Chain> found = new ArrayList<>();
    Map<Pt, Boolean> plain = new HashMap<>();
    for (Map.Entry<Pt, List<Pt>> entry : ends.entrySet()) {
      List<Pt> others =
          entry.getValue().stream()
              .filter(p -> plain.computeIfAbsent(p, TurnWatch::isPlain))
              .toList();
      if (!(entry.getKey().x() instanceof Quantity.Variable x)
          || !(entry.getKey().z() instanceof Quantity.Variable z)) {
        continue;
      }
      int count = others.size();
      boolean all = count <= MOST_LINKS;
      for (int i = 0; i < count; i++) {
        for (int j = i + 1; j < (all ? count : Math.min(count, i + 2)); j++) {
          if (!others.get(i).equals(others.get(j))) {
            found.add(new Chain(x.index(), z.index(), others.get(i), others.get(j)));
          }
        }
      }
    }
    return new TurnWatch(found.toArray(Chain[]::new));
  }

  private static boolean isPlain(Pt p) {
    return !(p.x() instanceof Quantity.FormulaQuantity)
        && !(p.z() instanceof Quantity.FormulaQuantity);
  }

  public int count() {
    return chains.length;
  }

  /** Bends of all chains at x. */
  public void bends(double[] x, double[] out) {
    for (int i = 0; i < chains.length; i++) {
      Chain c = chains[i];
      double ax = c.first.x().value(x, null) - x[c.px];
      double az = c.first.z().value(x, null) - x[c.pz];
      double bx = c.second.x().value(x, null) - x[c.px];
      double bz = c.second.z().value(x, null) - x[c.pz];
      double size = Math.sqrt((ax * ax + az * az) * (bx * bx + bz * bz));
      out[i] = size > 0 ? (ax * bz - az * bx) / size : 0;
    }
  }

  /** Whether a step from bends {@code before} to {@code after} leaps over straight. */
  boolean leaps(double[] before, double[] after) {
    for (int i = 0; i < chains.length; i++) {
      double b = before[i];
      if (Math.abs(b) > STRAIGHT && after[i] * Math.signum(b) < KEPT * Math.abs(b)) {
        return true;
      }
    }
    return false;
  }

  /** Whether some chain is turned over. */
  public boolean turned(double[] before, double[] after) {
    for (int i = 0; i < chains.length; i++) {
      if (isTurned(before[i], after[i])) {
        return true;
      }
    }
    return false;
  }

  private static boolean isTurned(double before, double after) {
    return Math.abs(before) > STRAIGHT && Math.abs(after) > STRAIGHT && before * after < 0;
  }

  /** Indices of the x variables of the middle pins of the chains that are turned over. */
  public List<Integer> turnedPins(double[] before, double[] after) {
    List<Integer> pins = new ArrayList<>();
    for (int i = 0; i < chains.length; i++) {
      if (isTurned(before[i], after[i]) && !pins.contains(chains[i].px)) {
        pins.add(chains[i].px);
      }
    }
    return pins;
  }
}
