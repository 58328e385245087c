package org.longlow.constraints.solve.step;

import org.longlow.constraints.solve.linear.RowSet;
import org.longlow.constraints.solve.problem.SolverSettings;

/**
 * Moves a group along its ties to where the wishes are least and the anchor is nearest.
 *
 * <p>Every step goes along the linearised ties and limits and is then restored to them, so each
 * point visited is a layout that holds. A step must lower the objective and must not leap a
 * two-link chain over straight; else it is halved. Where plain steps shrink slowly, curvature is
 * taken into account by conjugate gradients on the Lagrangian within the ties ({@link
 * CurvatureStep}).
 */
final class Descent {
  static final int RESTORE_STEPS = 25;
  private static final double SLOW = 0.2;

  /**
   * So many steps that leave more than this share of what is made least show that little is left to
   * gain, where each takes long.
   */
  static final int COSTLY_PATIENCE = 5;

  static final double COSTLY_STALLED = 0.98;

  private static final int COSTLY_HALVINGS = 5;

  /** Share of the objective below which differences are rounding. */
  private static final double NOISE = 1e-13;

  /**
   * Where rounding of the objective ends the search, steps this many times too long still count as
   * arrived.
   */
  private static final double ROUGH = 1e3;

  private final GroupSystem system;
  private final Restoration restoration;
  private final CurvatureStep curvature;
  private final double[] home;
  private final double[] target;
  private final double[] from;
  private final double[] direction;
  private final double[] wishValues;
  private final double[] bendBefore;
  private final double[] bendAfter;
  private int steps;
  private double shareTaken = 1;

  Descent(GroupSystem system, Restoration restoration) {
    this.system = system;
    this.restoration = restoration;
    curvature = new CurvatureStep(system);
    home = new double[system.n];
    target = new double[system.n];
    from = new double[system.n];
    direction = new double[system.n];
    wishValues = new double[system.rows.count];
    bendBefore = new double[system.watch.count()];
    bendAfter = new double[system.watch.count()];
  }

  int steps() {
    return steps;
  }

  /**
   * Runs from a layout that holds.
   *
   * @param anchor scaled values to stay near to
   * @return whether the nearest (most wished) layout was reached
   */
  boolean run(double[] x, double[] anchor, SolverSettings settings, double aimMm) {
    steps = 0;
    System.arraycopy(anchor, 0, home, 0, system.n);
    boolean done = pass(x, settings, aimMm);
    if (!system.hasWishes() || system.hasCostlyWishes()) {
      return done;
    }
    int[] variables = system.group.variables();
    for (int round = 0; round < 8 && done; round++) {
      double moved = 0;
      double[] last = new double[system.n];
      for (int j = 0; j < system.n; j++) {
        last[j] = x[variables[j]] / system.rows.scaleOf(j);
      }
      System.arraycopy(last, 0, home, 0, system.n);
      done = pass(x, settings, aimMm);
      for (int j = 0; j < system.n; j++) {
        moved = Math.max(moved, Math.abs(x[variables[j]] / system.rows.scaleOf(j) - last[j]));
      }
      if (moved <= settings.nearnessMm()) {
        break;
      }
    }
    return done;
  }

  private boolean pass(double[] x, SolverSettings settings, double aimMm) {
    int[] variables = system.group.variables();
    RowSet rows = system.rows;
    int n = system.n;
    double before = Double.POSITIVE_INFINITY;
    boolean first = true;
    boolean newton = false;
    double region = 0;
    int idle = 0;
    double checked = Double.POSITIVE_INFINITY;
    for (int k = 0; k < settings.maxIterations(); k++) {
      if (system.work().isSpent() || !(rows.evaluate(x) & system.limits.evaluate(x))) {
        return false;
      }
      if (first) {
        region = 2 * spread(x);
        system.measureWishes();
        system.limitStep.reset();
      }
      double unit = system.nearWeight();
      for (int j = 0; j < n; j++) {
        from[j] = x[variables[j]];
        target[j] = home[j] - from[j] / rows.scaleOf(j);
      }
      system.factor(0, true);
      system.nearingStep(target, !first);
      first = false;
      double longest = 0;
      for (int j = 0; j < n; j++) {
        direction[j] = system.step[j];
        longest = Math.max(longest, Math.abs(direction[j]));
      }
      if (longest <= settings.nearnessMm()) {
        return true;
      }
      steps++;
      double now = objective(x, unit);
      newton |= longest > SLOW * before && !system.hasCostlyWishes();
      idle = longest > 0.7 * before ? idle + 1 : 0;
      before = longest;
      boolean accepted = false;
      if (newton && curvature.find(x, target, direction, unit, region)) {
        accepted = tryStep(x, curvature.step(), now, unit, aimMm, 3, settings);
      }
      if (!accepted) {
        accepted =
            tryStep(
                x,
                direction,
                now,
                unit,
                aimMm,
                system.hasCostlyWishes() ? COSTLY_HALVINGS : 30,
                settings);
        newton |= accepted && !system.hasCostlyWishes();
      }
      if (accepted && system.hasCostlyWishes() && k % COSTLY_PATIENCE == COSTLY_PATIENCE - 1) {
        double then = objective(x, unit);
        if (then > COSTLY_STALLED * checked) {
          return true; // what is left to gain is not worth it
        }
        checked = then;
      }
      // A step that had to be shortened, or one at the edge that went well, sets how far the next
      // may go.
      double moved = moved(x);
      region = shareTaken < 1 || !accepted ? 2 * moved : Math.max(region, 3 * moved);
      if (!accepted) {
        // At the floor of what the objective can tell apart.
        return system.hasCostlyWishes() || longest <= ROUGH * settings.nearnessMm();
      }
      if (idle >= 8 && now - objective(x, unit) <= NOISE * Math.abs(now)) {
        return longest <= ROUGH * settings.nearnessMm();
      }
    }
    return false;
  }

  /** Length of the way from the beginning of the step, scaled. */
  private double moved(double[] x) {
    double sum = 0;
    for (int j = 0; j < system.n; j++) {
      double d = (x[system.group.variables()[j]] - from[j]) / system.rows.scaleOf(j);
      sum += d * d;
    }
    return Math.sqrt(sum);
  }

  /** How far the values of the group are apart and from home, scaled. */
  private double spread(double[] x) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double away = 0;
    for (int j = 0; j < system.n; j++) {
      double value = x[system.group.variables()[j]] / system.rows.scaleOf(j);
      low = Math.min(low, value);
      high = Math.max(high, value);
      away = Math.max(away, Math.abs(value - home[j]));
    }
    return Math.max(1, Math.sqrt(system.n) * (high - low + away));
  }

  private boolean tryStep(
      double[] x,
      double[] p,
      double now,
      double unit,
      double aimMm,
      int halvings,
      SolverSettings settings) {
    int[] variables = system.group.variables();
    boolean watch = settings.keepTurns() && system.watch.count() > 0;
    if (watch) {
      system.watch.bends(x, bendBefore);
    }
    double share = 1;
    for (int h = 0; h < halvings; h++, share *= 0.5) {
      for (int j = 0; j < system.n; j++) {
        x[variables[j]] = from[j] + share * p[j] * system.rows.scaleOf(j);
      }
      boolean ok = true;
      if (watch) {
        system.watch.bends(x, bendAfter);
        ok = !system.watch.leaps(bendBefore, bendAfter);
      }
      ok = ok && restoration.run(x, aimMm, RESTORE_STEPS, true, false) == Restoration.End.HOLDS;
      if (ok && watch) {
        system.watch.bends(x, bendAfter);
        ok = !system.watch.leaps(bendBefore, bendAfter);
      }
      if (ok && objective(x, unit) <= now + NOISE * Math.abs(now)) {
        shareTaken = share;
        return true;
      }
      if (system.work().isSpent()) {
        break;
      }
    }
    for (int j = 0; j < system.n; j++) {
      x[variables[j]] = from[j];
    }
    return false;
  }

  /**
   * Half the sum of weighted squares of the wishes plus {@code unit} times half the squared
   * distance to home, less what the remaining miss of ties and limits accounts for, at the point
   * evaluated last.
   */
  private double objective(double[] x, double unit) {
    int[] variables = system.group.variables();
    double sum = 0;
    for (int j = 0; j < system.n; j++) {
      double d = x[variables[j]] / system.rows.scaleOf(j) - home[j];
      sum += d * d;
    }
    sum *= unit;
    if (system.hasWishes()) {
      if (!system.rows.values(x, system.ties, system.rows.count, wishValues)) {
        return Double.POSITIVE_INFINITY;
      }
      for (int i = system.ties; i < system.rows.count; i++) {
        sum += system.wishWeight[i - system.ties] * wishValues[i] * wishValues[i];
      }
    }
    double miss = 0;
    for (int i = 0; i < system.ties; i++) {
      miss += system.lambda[i] * system.rows.value[i];
    }
    double[] mu = system.limitStep.multipliers();
    for (int i = 0; i < mu.length; i++) {
      miss -= mu[i] * Math.min(0, system.limits.value[i]);
    }
    return 0.5 * sum + unit * miss;
  }
}
