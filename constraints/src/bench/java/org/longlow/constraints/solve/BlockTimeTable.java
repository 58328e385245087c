package org.longlow.constraints.solve;

import java.util.List;
import java.util.Locale;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.SolverSettings;

/**
 * Block order beside solving each connected group whole, in processor time of the thread: edits,
 * the first solve of a new session (preparing included) and dragging, on layouts that ties settle
 * and on layouts with freedoms.
 */
final class BlockTimeTable {
  private BlockTimeTable() {}

  static void print() {
    System.out.println(
        "layout      unknowns  ties   whole us  blocks us  first whole us  first blocks us"
            + "  drag whole us  drag blocks us  in blocks");
    for (int size : new int[] {30, 50, 100, 205, 430, 870}) {
      row("settled", size, 302, List.of(), "lower 1", true);
    }
    for (int size : new int[] {30, 50, 100, 205, 430}) {
      // The far end moves by about 5 mm whatever the length. Struts without a foot swing: one
      // freedom each, hung on a settled frame.
      row("struts", size, 300 + 16.0 / size, List.of("foot", "angle"), "strut 1", false);
    }
    for (int size : new int[] {30, 50, 100}) {
      // Without its lean the whole frame turns.
      row("turning", size, 300 + 16.0 / size, List.of("lean"), "lower 1", false);
    }
  }

  private static void row(
      String name, int size, double lengthMm, List<String> without, String dragged, boolean freed) {
    Problem[] edits = {
      less(ChassisLayout.of(size, 300), without), less(ChassisLayout.of(size, lengthMm), without)
    };
    double[] solve = new double[2];
    double[] first = new double[2];
    double[] drag = new double[2];
    int inBlocks = 0;
    for (int way = 0; way < 2; way++) {
      boolean blocks = way == 1;
      SolveSession session = new SolveSession(edits[0], SolverSettings.DEFAULT, blocks);
      double[][] x = {session.solve().x()};
      double[] begin = x[0];
      solve[way] =
          CpuTimeTable.best(
              Math.max(500, 200_000 / size),
              k -> x[0] = session.solve(edits[k & 1], x[0], x[0]).x());
      inBlocks = session.solvedInBlocks();
      first[way] =
          CpuTimeTable.best(
              20, k -> new SolveSession(edits[0], SolverSettings.DEFAULT, blocks).solve());
      Problem loose = freed ? less(edits[0], List.of("rail 1")) : edits[0];
      int v = loose.indexOf(dragged + ".x");
      DragSession d = new DragSession(loose, begin, SolverSettings.DEFAULT, blocks, v, v + 1);
      drag[way] =
          CpuTimeTable.best(
              100,
              k ->
                  d.moveTo(
                      begin[v] + 10 * Math.cos(k * 0.1), begin[v + 1] + 10 * Math.sin(k * 0.1)));
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "%-10s %9d %5d %10.0f %10.0f %15.0f %16.0f %14.0f %15.0f %10d",
            name,
            edits[0].size(),
            ChassisLayout.relations(edits[0]).size(),
            solve[0],
            solve[1],
            first[0],
            first[1],
            drag[0],
            drag[1],
            inBlocks));
  }

  private static Problem less(Problem problem, List<String> without) {
    return problem.withTies(
        problem.ties().stream()
            .filter(t -> without.stream().noneMatch(w -> isCalled(t.name(), w)))
            .toList());
  }

  private static boolean isCalled(String tie, String word) {
    return tie.equals(word) || tie.startsWith(word + " ");
  }
}
