package org.longlow.constraints.solve;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One edit of a chassis-like layout, answered warm, beside Levenberg-Marquardt of Hipparchus with
 * an analytic dense Jacobian on the same relations from the same start.
 *
 * <p>Each call changes one bar by 2 mm there or back and solves from the last answer.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SolveBenchmark {
  /** About so many unknowns. */
  @Param({"30", "60", "120", "240", "500", "1000"})
  public int unknowns;

  private Problem[] edits;
  private List<List<Relation>> relations;
  private SolveSession session;
  private double[] ours;
  private double[] reference;
  private int turn;
  private DragSession drag;
  private double[] at;

  /** Makes the layout and checks that both solvers agree on it. */
  @Setup
  public void prepare() {
    edits = new Problem[] {ChassisLayout.of(unknowns, 300), ChassisLayout.of(unknowns, 302)};
    relations = List.of(ChassisLayout.relations(edits[0]), ChassisLayout.relations(edits[1]));
    session = new SolveSession(edits[0], SolverSettings.DEFAULT);
    SolveReport report = session.solve();
    if (report.status() != SolveStatus.SOLVED) {
      throw new IllegalStateException("layout is not solved: " + report.status());
    }
    ours = report.x();
    reference = ours.clone();
    double[] there = session.solve(edits[1].withStart(ours)).x();
    double[] theirs = HipparchusReference.solve(relations.get(1), ours).x();
    for (int i = 0; i < there.length; i++) {
      if (Math.abs(there[i] - theirs[i]) > 1e-4) {
        throw new IllegalStateException("solvers disagree on variable " + i);
      }
    }
    // Drag a strut of a layout with its first bar set free.
    Problem loose =
        edits[0].withTies(
            edits[0].ties().stream().filter(t -> !t.name().equals("rail 1")).toList());
    int v = loose.indexOf("lower 1.x");
    drag = Solver.drag(loose, ours, SolverSettings.DEFAULT, v, v + 1);
    at = new double[] {ours[v], ours[v + 1]};
  }

  /** This solver. */
  @Benchmark
  public double[] longlow() {
    turn ^= 1;
    ours = session.solve(edits[turn], ours, ours).x();
    return ours;
  }

  /** The reference. */
  @Benchmark
  public double[] hipparchus() {
    turn ^= 1;
    reference = HipparchusReference.solve(relations.get(turn), reference).x();
    return reference;
  }

  /** One step of a drag in a circle of 10 mm. */
  @Benchmark
  public double[] dragStep() {
    turn++;
    double angle = turn * 0.1;
    return drag.moveTo(at[0] + 10 * Math.cos(angle), at[1] + 10 * Math.sin(angle)).x();
  }

  /** Rank, freedoms and redundancies of the solved layout. */
  @Benchmark
  public Diagnosis diagnose() {
    return Solver.diagnose(edits[0], base(), SolverSettings.DEFAULT);
  }

  private SolveReport base() {
    if (solved == null) {
      solved = Solver.solve(edits[0]);
    }
    return solved;
  }

  private SolveReport solved;
}
