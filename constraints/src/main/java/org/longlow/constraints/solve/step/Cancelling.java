package org.longlow.constraints.solve.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.longlow.constraints.solve.linear.RankFactor;
import org.longlow.constraints.solve.linear.RowSet;

/**
 * Which demands cannot all hold, to first order, at a point where what is missed is least.
 *
 * <p>There the slopes of what is missed, each times a multiplier, add up to nothing (J. Farkas,
 * Theorie der einfachen Ungleichungen, Journal f&uuml;r die reine und angewandte Mathematik 124,
 * 1902): of limits those that fail push, and ties hold against them; of ties those that are missed
 * pull at each other. Where a {@link Softened} group misses wishes, its other limits hold against
 * them as well. Of all such sums the search goes to one with as few members as can be (J. Gleeson
 * and J. Ryan, Identifying minimally infeasible subsystems of inequalities, ORSA Journal on
 * Computing 2, 1990). It costs no more than one look at each demand.
 */
public final class Cancelling {
  /** The sum counts as nothing when it is this share of its longest part. */
  private static final double NOTHING = 1e-2;

  /** A multiplier below this share of the largest only stands for rounding. */
  private static final double COUNTS = 1e-6;

  /** The same where the point is only near that of least misses. */
  private static final double COUNTS_NEAR = 1e-2;

  /** Rows count as dependent when so little of their length is new. */
  private static final double RANK = 1e-4;

  /**
   * A way this short is what rounding leaves of longer ones, and of the search for the point: it
   * ends some 1e-6 of what is missed away from the least.
   */
  private static final double NO_WAY = 1e-4;

  private final GroupSystem system;
  private final double failsMm;

  /** Rows of ties, then of wishes, then of limits, and a multiplier for each. */
  private final int all;

  private final double[] multiplier;

  private Cancelling(GroupSystem system, double failsMm) {
    this.system = system;
    this.failsMm = failsMm;
    all = system.rows.count + system.limits.count;
    multiplier = new double[all];
  }

  /**
   * Which rows cancel: ties and wishes by their row in the system, then limits; none where the
   * point is not one where what is missed is least.
   */
  public static boolean[] rows(GroupSystem system, double[] x, double failsMm) {
    Arrays.fill(system.rows.weight, 1);
    Arrays.fill(system.limits.weight, 1);
    if (!(system.rows.evaluate(x) & system.limits.evaluate(x))) {
      return new boolean[system.rows.count + system.limits.count];
    }
    system.rows.equilibrate(system.ties);
    system.limits.equilibrate(system.limits.count);
    return new Cancelling(system, failsMm).find();
  }

  private boolean[] find() {
    boolean[] used = new boolean[all];
    if (system.hasWishes()) {
      softly();
      mark(used, COUNTS_NEAR);
      return used;
    }
    if (multipliers()) {
      mark(used, COUNTS);
      List<Integer> members = IntStream.range(0, all).filter(i -> used[i]).boxed().toList();
      Arrays.fill(used, false);
      fewest(members).forEach(i -> used[i] = true);
    }
    return used;
  }

  private void mark(boolean[] used, double share) {
    double most = Arrays.stream(multiplier).map(Math::abs).max().orElse(0);
    for (int i = 0; i < all; i++) {
      used[i] = Math.abs(multiplier[i]) > share * most;
    }
  }

  /** What holds back wishes that are missed. */
  private void softly() {
    RowSet rows = system.rows;
    double[] push = new double[system.n];
    for (int i = system.ties; i < rows.count; i++) {
      multiplier[i] = -rows.value[i];
      rows.addRow(i, multiplier[i], push);
    }
    system.factor(0, false);
    double[] held = system.heldBack(push, failsMm, new double[system.n]);
    System.arraycopy(held, 0, multiplier, 0, system.ties);
    System.arraycopy(held, system.ties, multiplier, rows.count, system.limits.count);
  }

  /** Finds multipliers of rows that are missed whose slopes cancel; whether there are any. */
  private boolean multipliers() {
    int ties = system.ties;
    RowSet limits = system.limits;
    double[] left = new double[system.n];
    double longest = 0;
    for (int i = 0; i < limits.count; i++) {
      if (limits.missMm(i) < -failsMm) {
        multiplier[ties + i] = limits.value[i];
        limits.addRow(i, multiplier[ties + i], left);
        longest = Math.max(longest, -limits.value[i]);
      }
    }
    if (longest > 0) {
      double[] push = left.clone();
      double[] values = limits.value.clone();
      system.factor(0, false);
      // limits that just hold have no part in what is least of the sum of squares
      double[] held = system.heldBack(push, Double.NEGATIVE_INFINITY, left);
      System.arraycopy(values, 0, limits.value, 0, values.length);
      System.arraycopy(held, 0, multiplier, 0, ties);
    } else {
      for (int i = 0; i < ties; i++) {
        multiplier[i] = system.rows.value[i];
        system.rows.addRow(i, multiplier[i], left);
        longest = Math.max(longest, Math.abs(multiplier[i]));
      }
    }
    double most = Arrays.stream(left).map(Math::abs).max().orElse(0);
    return longest > 0 && most <= NOTHING * longest;
  }

  /**
   * Takes members out while the rest can cancel without them, limits keeping their sign and the sum
   * of what is missed its size.
   */
  private List<Integer> fewest(List<Integer> members) {
    int k = members.size();
    system.work().addProducts((long) k * system.n * Math.min(k, system.n));
    DMatrixRMaj columns = new DMatrixRMaj(system.n, k);
    double[] missed = new double[k];
    double[] y = new double[k];
    for (int c = 0; c < k; c++) {
      int row = members.get(c);
      RowSet rows = row < system.rows.count ? system.rows : system.limits;
      int i = row < system.rows.count ? row : row - system.rows.count;
      for (int e = rows.start[i]; e < rows.start[i + 1]; e++) {
        columns.add(rows.column[e], c, rows.entry[e]);
      }
      missed[c] = rows.value[i];
      y[c] = multiplier[row];
    }
    List<double[]> ways = new ArrayList<>();
    double whole = dot(y, missed);
    for (double[] way : new RankFactor(columns, RANK).dependencies()) {
      // along such a way the sum of what is missed keeps its size
      double share = dot(way, missed) / whole;
      double[] level = new double[k];
      for (int c = 0; c < k; c++) {
        level[c] = way[c] - share * y[c];
      }
      ways.add(level);
    }
    boolean[] out = new boolean[k];
    while (true) {
      double[] way = longest(ways);
      if (way == null) {
        break;
      }
      int leaves = firstToVanish(y, way, out);
      if (leaves < 0) {
        break;
      }
      double step = -y[leaves] / way[leaves];
      for (int c = 0; c < k; c++) {
        y[c] += step * way[c];
      }
      y[leaves] = 0;
      out[leaves] = true;
      double[] gone = way;
      ways.remove(gone);
      for (double[] other : ways) {
        double share = other[leaves] / gone[leaves];
        for (int c = 0; c < k; c++) {
          other[c] -= share * gone[c];
        }
      }
    }
    double most = Arrays.stream(y).map(Math::abs).max().orElse(0);
    // what a way too short to be told from rounding would take out has no part in it: such a way
    // is as long as the multiplier is of all of them, which are as long as the root of their number
    double counts = Math.max(COUNTS, 2 * NO_WAY * Math.sqrt(k));
    List<Integer> left = new ArrayList<>();
    for (int c = 0; c < k; c++) {
      if (!out[c] && Math.abs(y[c]) > counts * most) {
        left.add(members.get(c));
      }
    }
    return left;
  }

  /** The next way of some length, or null; shorter ones are dropped as rounding. */
  private static double[] longest(List<double[]> ways) {
    ways.removeIf(w -> !(Math.sqrt(dot(w, w)) > NO_WAY));
    return ways.stream().max((a, b) -> Double.compare(dot(a, a), dot(b, b))).orElse(null);
  }

  /** The member whose multiplier is first to reach zero along a way, in either sense. */
  private static int firstToVanish(double[] y, double[] way, boolean[] out) {
    double size = Math.sqrt(dot(way, way));
    int first = -1;
    double nearest = Double.POSITIVE_INFINITY;
    for (int c = 0; c < y.length; c++) {
      double step = Math.abs(way[c]) > COUNTS * size && !out[c] ? Math.abs(y[c] / way[c]) : nearest;
      if (step < nearest) {
        nearest = step;
        first = c;
      }
    }
    return first;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
