package org.longlow.constraints.solve.step;

import java.util.Arrays;
import org.longlow.constraints.solve.linear.LimitStep;
import org.longlow.constraints.solve.linear.NormalFactor;
import org.longlow.constraints.solve.linear.WishStep;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Work;

/**
 * The linear algebra of one connected group: factor of its rows, and the least-change step under
 * linearised ties and limits.
 *
 * <p>Holds workspace, so one instance serves one thread.
 */
public final class GroupSystem extends GroupRows {
  /** Compliance of a tie relative to its row: far below what matters, far above rounding. */
  public static final double TIE_COMPLIANCE = 1e-12;

  /** Compliance of the strongest wish; staying near counts this much against it. */
  static final double WISH_COMPLIANCE = 1e-6;

  private static final double OFF = 1e30;

  /** Rounding in the linearised ties below this is left alone, mm. */
  private static final double SHOWS_MM = 1e-10;

  final double[] step;
  final double[] lambda;
  final LimitStep limitStep;

  /**
   * As {@link #limitStep}, for steps that only restore; kept apart so that neither disturbs the
   * other.
   */
  final LimitStep restoringLimits;

  private final double[] restoringLambda;
  private final double[] targetDot;

  /** Made when first needed: a group solved by its blocks may never need it. */
  private NormalFactor factor;

  private WishStep wishStep;

  private final double[] compliance;
  private final double[] right;
  private final double[] push;
  private final double[] pushAnswer;
  private double wishUnit = 1;

  public GroupSystem(Group group, Problem problem) {
    this(group, problem, noneOf(problem));
  }

  /**
   * @param localOf workspace, as many as the problem has variables, all -1; left so
   */
  public GroupSystem(Group group, Problem problem, int[] localOf) {
    super(group, problem, localOf);
    limitStep = new LimitStep(limits, n);
    restoringLimits = new LimitStep(limits, n);
    restoringLambda = new double[rows.count];
    targetDot = new double[rows.count];
    compliance = new double[rows.count];
    right = new double[rows.count];
    lambda = new double[rows.count];
    step = new double[n];
    push = new double[rows.count];
    pushAnswer = new double[rows.count];
  }

  @Override
  public void charge(Work other) {
    super.charge(other);
    limitStep.charge(other);
    restoringLimits.charge(other);
  }

  /** Fixes what "small" means for the compliance of wishes from the Jacobian at hand. */
  void measureWishes() {
    double most = 0;
    for (int i = 0; i < wishWeight.length; i++) {
      most = Math.max(most, wishWeight[i] * rows.square[ties + i]);
    }
    wishUnit = most > 0 ? WISH_COMPLIANCE * most : 1;
  }

  /** The weight of the distance to the anchor in the objective beside the wishes. */
  double nearWeight() {
    return hasWishes() ? wishUnit : 1;
  }

  /** Factorises with the Jacobian at hand. */
  void factor(double damping, boolean withWishes) {
    for (int i = 0; i < ties; i++) {
      compliance[i] = tieOn[i] ? (TIE_COMPLIANCE + damping) * Math.max(rows.square[i], 1e-6) : OFF;
    }
    for (int i = ties; i < rows.count; i++) {
      double w = wishWeight[i - ties];
      compliance[i] = withWishes && w > 0 && rows.square[i] > 0 ? Math.min(OFF, wishUnit / w) : OFF;
    }
    if (factor == null) {
      factor = new NormalFactor(rows, n);
    }
    work().addProducts(factor.products());
    factor.factor(compliance);
  }

  /**
   * Moves the group in {@code now} along with what its ties read of others, to first order and by
   * the least change.
   *
   * @param begin values of all variables before the others moved
   */
  public void carry(double[] begin, double[] now) {
    if (!rows.evaluateCarried(begin, now, ties)) {
      return;
    }
    factor(0, false);
    restoringStep(0, false);
    for (int j = 0; j < n; j++) {
      now[group.variables()[j]] += step[j] * rows.scaleOf(j);
    }
  }

  /** Number of ties of which more than a share of their length is new at x; x must be finite. */
  public int freshTies(double[] x, double share) {
    if (!rows.evaluate(x, ties)) {
      return 0;
    }
    factor(0, false);
    return factor.fresh(share * share, ties);
  }

  /**
   * Shortest step that zeroes the linearised ties and keeps the linearised limits. Leaves p in
   * {@link #step}.
   *
   * @param damping as given to {@link #factor}
   */
  void restoringStep(double damping, boolean withLimits) {
    for (int i = 0; i < rows.count; i++) {
      right[i] = i < ties && tieOn[i] ? rows.value[i] : 0;
    }
    factor.solve(right, restoringLambda);
    Arrays.fill(step, 0);
    for (int i = 0; i < ties; i++) {
      rows.addRow(i, -restoringLambda[i], step);
    }
    if (withLimits && limits.count > 0) {
      restoringLimits.bend(step, damping, false, this::respond);
    }
  }

  /**
   * Step p nearest to {@code target} with ties linearised to zero, wishes pulled in and limits
   * kept. Leaves p in {@link #step} and the multipliers in {@link #lambda}.
   *
   * @param shift whether the multipliers of last time take the load off the compliances (second and
   *     later steps)
   */
  void nearingStep(double[] target, boolean shift) {
    int m = rows.count;
    for (int i = 0; i < m; i++) {
      targetDot[i] = rows.dot(i, target);
      double b = rows.value[i] + targetDot[i];
      if (shift && i < ties) {
        b += compliance[i] * lambda[i];
      }
      right[i] = b;
    }
    factor.solve(right, lambda);
    System.arraycopy(target, 0, step, 0, n);
    for (int i = 0; i < m; i++) {
      rows.addRow(i, -lambda[i], step);
    }
    refine();
    if (limits.count > 0 && limitStep.bend(step, 0, shift, this::respond)) {
      // The multipliers of the ties answer the push of the limits.
      double[] dense = new double[n];
      for (int k = 0; k < limitStep.activeCount(); k++) {
        int limit = limitStep.active(k);
        limits.addRow(limit, limitStep.multipliers()[limit], dense);
      }
      for (int i = 0; i < m; i++) {
        push[i] = rows.dot(i, dense);
      }
      factor.solve(push, pushAnswer);
      for (int i = 0; i < m; i++) {
        lambda[i] += pushAnswer[i];
      }
    }
  }

  /** Whether there are wishes, and few enough to be met outright. */
  boolean hasFewWishes() {
    return hasWishes() && wishWeight.length <= WishStep.FEW && !hasCostlyWishes();
  }

  /**
   * As {@link #nearingStep}, and the wishes come first. Leaves p in {@link #step}.
   *
   * @return false where p would break a limit
   */
  boolean wishingStep(double[] target, boolean shift) {
    factor(0, false);
    for (int i = 0; i < rows.count; i++) {
      targetDot[i] = rows.dot(i, target);
      double load = shift && i < ties ? compliance[i] * lambda[i] : 0;
      right[i] = i < ties ? rows.value[i] + targetDot[i] + load : 0;
    }
    factor.solve(right, lambda);
    System.arraycopy(target, 0, step, 0, n);
    for (int i = 0; i < ties; i++) {
      rows.addRow(i, -lambda[i], step);
    }
    if (wishStep == null) {
      wishStep = new WishStep(rows, ties, wishWeight, n);
    }
    refine();
    wishStep.look(this::project);
    wishStep.bend(step);
    refine();
    for (int i = 0; i < limits.count; i++) {
      if (limits.value[i] + limits.dot(i, step) < 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * One round of iterative refinement: a long way to the target leaves rounding in the linearised
   * ties, which is taken out where it would show.
   */
  private void refine() {
    double worst = 0;
    for (int i = 0; i < rows.count; i++) {
      // What the row still misses; right minus its other parts is value plus shift.
      double left = rows.dot(i, step) + right[i] - targetDot[i] - compliance[i] * lambda[i];
      push[i] = left;
      if (i < ties) {
        worst = Math.max(worst, Math.abs(left));
      }
    }
    if (worst < SHOWS_MM) {
      return;
    }
    factor.solve(push, pushAnswer);
    for (int i = 0; i < rows.count; i++) {
      lambda[i] += pushAnswer[i];
      rows.addRow(i, -pushAnswer[i], step);
    }
  }

  /** Answer of the step to a unit push along the normal of a limit. */
  private void respond(int limit, double[] out) {
    Arrays.fill(out, 0);
    limits.addRow(limit, 1, out);
    project(out, out);
  }

  /** v less its part that ties (and, softly, wishes) hold back, with the factor at hand. */
  void project(double[] v, double[] out) {
    for (int i = 0; i < rows.count; i++) {
      push[i] = rows.dot(i, v);
    }
    work().addProducts(factor.solveProducts() + 2L * rows.entry.length);
    factor.solve(push, pushAnswer);
    if (out != v) {
      System.arraycopy(v, 0, out, 0, n);
    }
    for (int i = 0; i < rows.count; i++) {
      rows.addRow(i, -pushAnswer[i], out);
    }
  }

  /**
   * What holds a push {@code v} back, with the factor at hand: multipliers of ties, then of limits
   * (each &gt;= 0) that have no more room than {@code roomMm}. What they do not hold back is in
   * {@code left}. The values of the limits are used up.
   */
  double[] heldBack(double[] v, double roomMm, double[] left) {
    for (int i = 0; i < limits.count; i++) {
      limits.value[i] = limits.missMm(i) <= roomMm ? 0 : OFF;
    }
    project(v, left);
    restoringLimits.reset();
    restoringLimits.bend(left, 0, false, this::respond);
    double[] held = new double[ties + limits.count];
    double[] pushed = v.clone();
    for (int i = 0; i < limits.count; i++) {
      held[ties + i] = restoringLimits.multipliers()[i];
      limits.addRow(i, held[ties + i], pushed);
    }
    project(pushed, pushed);
    for (int i = 0; i < ties; i++) {
      held[i] = -pushAnswer[i];
    }
    return held;
  }
}
