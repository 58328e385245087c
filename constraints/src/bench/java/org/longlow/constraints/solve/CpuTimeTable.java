package org.longlow.constraints.solve;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverSettings;

/**
 * The same edits as {@link SolveBenchmark}, in processor time of the thread instead of time on the
 * clock: the figures to use on a machine that others load. Prints a table; best of several rounds.
 */
public final class CpuTimeTable {
  private static final int ROUNDS = 5;

  private CpuTimeTable() {}

  /** Runs; takes {@code blocks} for the table of blocks beside the whole, else nothing. */
  public static void main(String[] args) {
    if (args.length > 0 && args[0].equals("blocks")) {
      BlockTimeTable.print();
      return;
    }
    System.out.println(
        "unknowns  ties  longlow us  steps  hipparchus us  times faster  drag us  prepare us  diagnose us");
    for (int size : new int[] {30, 50, 100, 205, 430, 870}) {
      Problem[] edits = {ChassisLayout.of(size, 300), ChassisLayout.of(size, 302)};
      List<List<Relation>> relations =
          List.of(ChassisLayout.relations(edits[0]), ChassisLayout.relations(edits[1]));
      SolveSession session = new SolveSession(edits[0], SolverSettings.DEFAULT);
      double[][] x = {session.solve().x()};
      int[] steps = {0};
      double ours =
          best(
              Math.max(1000, 300_000 / size),
              k -> {
                SolveReport report = session.solve(edits[k & 1], x[0], x[0]);
                steps[0] = report.iterations();
                x[0] = report.x();
              });
      double[] solved = session.solve(edits[0], x[0], x[0]).x();
      double theirs = Double.NaN;
      if (size < 400) {
        double[][] y = {solved};
        theirs =
            best(
                Math.max(4, 20_000 / (size * size / 10)),
                k -> y[0] = HipparchusReference.solve(relations.get((k + 1) & 1), y[0]).x());
      }
      Problem loose =
          edits[0].withTies(
              edits[0].ties().stream().filter(t -> !t.name().equals("rail 1")).toList());
      int v = loose.indexOf("lower 1.x");
      DragSession drag = Solver.drag(loose, solved, SolverSettings.DEFAULT, v, v + 1);
      double dragged =
          best(
              100,
              k ->
                  drag.moveTo(
                      solved[v] + 10 * Math.cos(k * 0.1), solved[v + 1] + 10 * Math.sin(k * 0.1)));
      double prepared = best(20, k -> new SolveSession(edits[0], SolverSettings.DEFAULT));
      SolveReport report = session.solve(edits[0], solved, solved);
      double diagnosed =
          best(size < 300 ? 10 : 1, k -> Solver.diagnose(edits[0], report, SolverSettings.DEFAULT));
      System.out.println(
          String.format(
              Locale.ROOT,
              "%8d %5d %11.0f %6d %14.0f %13.0f %8.0f %11.0f %12.0f",
              edits[0].size(),
              relations.get(0).size(),
              ours,
              steps[0],
              theirs,
              theirs / ours,
              dragged,
              prepared,
              diagnosed));
    }
  }

  static double best(int times, java.util.function.IntConsumer call) {
    double least = Double.POSITIVE_INFINITY;
    for (int r = 0; r < ROUNDS; r++) {
      long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      for (int k = 0; k < times; k++) {
        call.accept(k);
      }
      long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      least = Math.min(least, (end - begin) / 1e3 / times);
    }
    return least;
  }
}
