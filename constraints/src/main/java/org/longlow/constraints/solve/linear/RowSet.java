package org.longlow.constraints.solve.linear;

import java.util.List;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.Work;

/**
 * Relations of one group with their values and scaled sparse Jacobian at the last point evaluated.
 *
 * <p>Row i has the entries {@code start[i]..start[i+1]} of {@code column} (variable of the group)
 * and {@code entry} (derivative in mm by the scaled variable, times the weight of the row).
 * Structure is fixed; relations may be exchanged for others over the same variables.
 */
public final class RowSet {
  public final int count;
  public final int[] start;
  public final int[] column;
  public final double[] entry;
  public final double[] value;
  public final double[] weight;

  /** Square of the length of each row of the Jacobian, weight included. */
  public final double[] square;

  private final Relation[] relations;
  private final int[] place;
  private final double[] variableScale;
  private final double[] gradient;

  /** Units of work up to each row, with slopes and without. */
  private final long[] slopesWork;

  private final long[] valuesWork;

  private Work work = Work.unbounded();

  /**
   * @param relations in row order
   * @param localOf for each variable of the problem its index in the group, or -1 when it is fixed
   * @param variableScale scale of each variable of the group
   */
  public RowSet(List<Relation> relations, int[] localOf, double[] variableScale) {
    this.relations = relations.toArray(Relation[]::new);
    this.variableScale = variableScale;
    count = this.relations.length;
    start = new int[count + 1];
    int widest = 1;
    int total = 0;
    for (int i = 0; i < count; i++) {
      int[] used = this.relations[i].variables();
      widest = Math.max(widest, used.length);
      for (int v : used) {
        total += localOf[v] >= 0 ? 1 : 0;
      }
      start[i + 1] = total;
    }
    column = new int[total];
    place = new int[total];
    entry = new double[total];
    slopesWork = new long[count + 1];
    valuesWork = new long[count + 1];
    for (int i = 0; i < count; i++) {
      boolean costly = this.relations[i].costly();
      slopesWork[i + 1] = slopesWork[i] + (costly ? Work.COSTLY_SLOPES : 1);
      valuesWork[i + 1] = valuesWork[i] + (costly ? Work.COSTLY_VALUE : 1);
    }
    int next = 0;
    for (Relation relation : this.relations) {
      int[] used = relation.variables();
      for (int k = 0; k < used.length; k++) {
        if (localOf[used[k]] >= 0) {
          column[next] = localOf[used[k]];
          place[next++] = k;
        }
      }
    }
    value = new double[count];
    weight = new double[count];
    square = new double[count];
    java.util.Arrays.fill(weight, 1);
    gradient = new double[widest];
  }

  /** Exchanges the relations for others over the same variables. */
  public void bind(List<Relation> others) {
    for (int i = 0; i < count; i++) {
      relations[i] = others.get(i);
    }
  }

  /** Counts what is evaluated from now on. */
  public void charge(Work other) {
    work = other;
  }

  public double scaleOf(int variable) {
    return variableScale[variable];
  }

  /** Values and Jacobian at x; false when something is not finite. */
  public boolean evaluate(double[] x) {
    return evaluate(x, count);
  }

  /** As {@link #evaluate(double[])} for the first {@code rows} rows only. */
  public boolean evaluate(double[] x, int rows) {
    return evaluate(x, 0, rows);
  }

  /** As {@link #evaluate(double[])} for rows {@code from} to {@code to} only. */
  public boolean evaluate(double[] x, int from, int to) {
    work.add(slopesWork[to] - slopesWork[from]);
    boolean finite = true;
    for (int i = from; i < to; i++) {
      Relation relation = relations[i];
      double factor = relation.scale() * weight[i];
      double v = relation.evaluate(x, gradient) * factor;
      value[i] = v;
      double sum = 0;
      for (int e = start[i]; e < start[i + 1]; e++) {
        double g = gradient[place[e]] * factor * variableScale[column[e]];
        entry[e] = g;
        sum += g * g;
      }
      square[i] = sum;
      if (v - v != 0 || sum - sum != 0) {
        // Nothing that is not a number may reach the factor.
        finite = false;
        square[i] = 0;
        for (int e = start[i]; e < start[i + 1]; e++) {
          entry[e] = 0;
        }
      }
    }
    return finite;
  }

  /**
   * As {@link #evaluate(double[], int)} at {@code begin}, and adds to each value what the way of
   * the variables from there to {@code now} makes of it to first order.
   */
  public boolean evaluateCarried(double[] begin, double[] now, int rows) {
    boolean finite = evaluate(begin, rows);
    for (int i = 0; i < rows && finite; i++) {
      int[] used = relations[i].variables();
      relations[i].evaluate(begin, gradient);
      double carried = 0;
      for (int k = 0; k < used.length; k++) {
        carried += gradient[k] * (now[used[k]] - begin[used[k]]);
      }
      value[i] += carried * relations[i].scale() * weight[i];
      finite = value[i] - value[i] == 0;
    }
    return finite;
  }

  /**
   * Values only of rows {@code from} to {@code to}, into {@code out}; false when something is not
   * finite.
   */
  public boolean values(double[] x, int from, int to, double[] out) {
    work.add(valuesWork[to] - valuesWork[from]);
    boolean finite = true;
    for (int i = from; i < to; i++) {
      double v = relations[i].evaluate(x, null) * relations[i].scale() * weight[i];
      out[i] = v;
      finite &= v - v == 0;
    }
    return finite;
  }

  /**
   * Adds the sum over all rows of multiplier times gradient (scaled variables, weight included) at
   * x to {@code out}.
   */
  public void addGradients(double[] x, double[] multiplier, double[] out) {
    work.add(slopesWork[count]);
    for (int i = 0; i < count; i++) {
      if (multiplier[i] == 0) {
        continue;
      }
      Relation relation = relations[i];
      double factor = relation.scale() * weight[i] * multiplier[i];
      relation.evaluate(x, gradient);
      for (int e = start[i]; e < start[i + 1]; e++) {
        out[column[e]] += gradient[place[e]] * factor * variableScale[column[e]];
      }
    }
  }

  /**
   * Gives each of the first rows a weight that makes its gradient about 1 long at the last point
   * evaluated.
   */
  public void equilibrate(int rows) {
    for (int i = 0; i < rows; i++) {
      double length = Math.sqrt(square[i]) / weight[i];
      double before = weight[i];
      // a row without a slope may get one later: it waits as it is
      weight[i] = length > 0 && length - length == 0 ? 1 / Math.max(length, 0.01) : 1;
      double change = weight[i] / before;
      value[i] *= change;
      square[i] *= change * change;
      for (int e = start[i]; e < start[i + 1]; e++) {
        entry[e] *= change;
      }
    }
  }

  /** What row i gives at the last point evaluated, in its own mm, with its sign. */
  public double ownMm(int i) {
    return value[i] / weight[i];
  }

  /** Distance by which row i misses zero at the last point evaluated, mm, with its sign. */
  public double missMm(int i) {
    return value[i] / Math.max(weight[i], Math.sqrt(square[i]));
  }

  /** Product of row i and a vector of the group. */
  public double dot(int i, double[] p) {
    double sum = 0;
    for (int e = start[i]; e < start[i + 1]; e++) {
      sum += entry[e] * p[column[e]];
    }
    return sum;
  }

  /** Adds factor times row i to {@code out}. */
  public void addRow(int i, double factor, double[] out) {
    for (int e = start[i]; e < start[i + 1]; e++) {
      out[column[e]] += factor * entry[e];
    }
  }
}
