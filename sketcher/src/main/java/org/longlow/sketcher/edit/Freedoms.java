package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverLimit;
import org.longlow.constraints.solve.problem.SolverTie;
import org.longlow.rider.geom.PointMm;

/**
 * How pins can move at a solution, to first order: the motion of least size that keeps every tie,
 * and the ties that take away the rest.
 *
 * <p>The size of a motion is measured in the scaled variables of the problem, as the solver does,
 * so what is shown before a drag is what the drag then does.
 */
public final class Freedoms {

  /** A pin that keeps less than this of a unit push does not move. */
  private static final double MOVES = 1e-5;

  /** A follower slower than this, mm for each mm, is not worth an arrow. */
  private static final double FOLLOWS = 0.02;

  /** A gap smaller than this stops, mm. */
  private static final double TOUCHES_MM = 1e-4;

  private final Problem problem;
  private final double[] x;
  private final List<double[][]> rows = new ArrayList<>();
  private RowSpace all;

  public Freedoms(Problem problem, double[] x) {
    this.problem = problem;
    this.x = x.clone();
    for (SolverTie tie : problem.ties()) {
      double[][] tieRows = new double[tie.relations().size()][];
      for (int i = 0; i < tieRows.length; i++) {
        tieRows[i] = row(tie.relations().get(i));
      }
      rows.add(tieRows);
    }
  }

  private double[] row(Relation relation) {
    int[] variables = relation.variables();
    double[] gradient = new double[Math.max(1, variables.length)];
    relation.evaluate(x, gradient);
    double[] row = new double[problem.size()];
    for (int i = 0; i < variables.length; i++) {
      Problem.Variable v = problem.variables().get(variables[i]);
      row[variables[i]] = v.fixed() ? 0 : gradient[i] * v.scale();
    }
    return row;
  }

  /** Returns how the pin {@code pin} can move. */
  public PinFreedom of(String pin) {
    int ix = problem.indexOf(pin + ".x");
    int iz = problem.indexOf(pin + ".z");
    if (ix < 0 || iz < 0 || problem.variables().get(ix).fixed()) {
      return new PinFreedom(pin, PinFreedom.Kind.NAILED, List.of(), Map.of(), List.of(), List.of());
    }
    if (all == null) {
      all = new RowSpace(problem.size());
      rows.forEach(tie -> Arrays.stream(tie).forEach(all::add));
    }
    double[] px = all.rest(unit(ix));
    double[] pz = all.rest(unit(iz));
    // principal directions of the 2 x 2 matrix of what pushes along x and z leave
    double a = px[ix];
    double b = px[iz];
    double d = pz[iz];
    double mean = (a + d) / 2;
    double spread = Math.hypot((a - d) / 2, b);
    double turn = 0.5 * Math.atan2(2 * b, a - d);
    PointMm first = PointMm.unit(turn);
    if (mean + spread < MOVES) {
      return new PinFreedom(
          pin,
          PinFreedom.Kind.HELD,
          List.of(),
          Map.of(),
          holders(pin, List.of(unit(ix), unit(iz))),
          List.of());
    }
    boolean plane = mean - spread > MOVES;
    List<PointMm> asked = new ArrayList<>(List.of(first, first.times(-1)));
    if (plane) {
      asked.addAll(List.of(first.left(), first.left().times(-1)));
    }
    List<PointMm> ways = new ArrayList<>();
    Set<String> stops = new LinkedHashSet<>();
    Map<String, PointMm> followers = Map.of();
    for (PointMm way : asked) {
      double[] motion = motion(px, pz, way, ix, iz);
      List<String> stoppedBy = stops(motion);
      stops.addAll(stoppedBy);
      if (stoppedBy.isEmpty()) {
        if (ways.isEmpty()) {
          followers = followers(pin, motion);
        }
        ways.add(way);
      }
    }
    double[] normal = new double[problem.size()];
    normal[ix] = first.left().x();
    normal[iz] = first.left().z();
    return new PinFreedom(
        pin,
        plane ? PinFreedom.Kind.PLANE : PinFreedom.Kind.LINE,
        ways,
        followers,
        plane ? List.of() : holders(pin, List.of(normal)),
        List.copyOf(stops));
  }

  private double[] unit(int i) {
    double[] unit = new double[problem.size()];
    unit[i] = 1;
    return unit;
  }

  /**
   * Returns the smallest motion that takes the pin 1 mm along {@code way}. A push along a principal
   * direction moves the pin along just that.
   */
  private static double[] motion(double[] px, double[] pz, PointMm way, int ix, int iz) {
    double[] motion = new double[px.length];
    for (int i = 0; i < motion.length; i++) {
      motion[i] = way.x() * px[i] + way.z() * pz[i];
    }
    double speed = motion[ix] * way.x() + motion[iz] * way.z();
    for (int i = 0; i < motion.length; i++) {
      motion[i] /= speed;
    }
    return motion;
  }

  private List<String> stops(double[] motion) {
    List<String> names = new ArrayList<>();
    for (SolverLimit limit : problem.limits()) {
      boolean stops =
          limit.gaps().stream()
              .filter(gap -> gap.evaluate(x, null) * gap.scale() < TOUCHES_MM)
              .anyMatch(gap -> RowSpace.dot(row(gap), motion) < -MOVES);
      if (stops) {
        names.add(Trial.shown(limit.name()));
      }
    }
    return names;
  }

  private Map<String, PointMm> followers(String pin, double[] motion) {
    Map<String, PointMm> moves = new LinkedHashMap<>();
    for (int i = 0; i + 1 < motion.length; i++) {
      String name = problem.variables().get(i).name();
      if (!name.endsWith(".x") || name.equals(pin + ".x")) {
        continue;
      }
      String other = name.substring(0, name.length() - 2);
      if (problem.variables().get(i + 1).name().equals(other + ".z")
          && Math.hypot(motion[i], motion[i + 1]) > FOLLOWS) {
        moves.put(other, new PointMm(motion[i], motion[i + 1]));
      }
    }
    return moves;
  }

  /**
   * Returns ties that together forbid {@code targets}, none of which can be spared; ties near the
   * pin are preferred to those far away.
   */
  private List<String> holders(String pin, List<double[]> targets) {
    List<Integer> taken = new ArrayList<>();
    for (int tie : outwardFrom(pin)) {
      taken.add(tie);
      if (spans(taken, targets)) {
        break;
      }
    }
    for (int i = taken.size() - 1; i >= 0; i--) {
      int tie = taken.remove(i);
      if (!spans(taken, targets)) {
        taken.add(i, tie);
      }
    }
    return taken.stream().map(i -> problem.ties().get(i).name()).toList();
  }

  private boolean spans(List<Integer> ties, List<double[]> targets) {
    RowSpace space = new RowSpace(problem.size());
    ties.forEach(t -> Arrays.stream(rows.get(t)).forEach(space::add));
    return targets.stream().allMatch(t -> RowSpace.norm(space.rest(t)) < MOVES);
  }

  /** Returns the ties connected to a pin, the nearest first. */
  private List<Integer> outwardFrom(String pin) {
    Set<Integer> reached = new HashSet<>();
    reached.add(problem.indexOf(pin + ".x"));
    reached.add(problem.indexOf(pin + ".z"));
    List<Integer> order = new ArrayList<>();
    boolean more = true;
    while (more) {
      more = false;
      Set<Integer> next = new HashSet<>(reached);
      for (int t = 0; t < problem.ties().size(); t++) {
        if (!order.contains(t) && touches(problem.ties().get(t), reached)) {
          order.add(t);
          more = true;
          for (Relation r : problem.ties().get(t).relations()) {
            Arrays.stream(r.variables())
                .filter(v -> !problem.variables().get(v).fixed())
                .forEach(next::add);
          }
        }
      }
      reached = next;
    }
    return order;
  }

  private static boolean touches(SolverTie tie, Set<Integer> variables) {
    for (Relation r : tie.relations()) {
      for (int v : r.variables()) {
        if (variables.contains(v)) {
          return true;
        }
      }
    }
    return false;
  }
}
