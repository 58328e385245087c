package org.longlow.constraints.solve.block;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.Work;
import org.longlow.constraints.solve.step.GroupSolver;
import org.longlow.constraints.solve.step.GroupSystem;

/**
 * Solves a connected group block after block where that gives the plain answer, and whole where it
 * does not.
 *
 * <p>Blocks that ties settle leave no choice, so their order cannot change the answer while each is
 * regular; anchor, limits and wishes only have a say in the open blocks behind them. Everything
 * else is for the whole: ties that do not meet, ties that depend on each other though structure
 * counts them as independent, limits on settled variables that do not hold, starts that must be
 * shaken, chains turned over. The verdict is then that of the whole from the start given.
 */
public final class BlockSolver {
  /**
   * Blocks are used when the largest that is not small has at most this share of the variables; an
   * open block that is nearly all of the group would be solved twice where it does not end well.
   */
  private static final double LARGEST_SHARE = 0.75;

  private final GroupSolver whole;
  private final SmallBlocks small;
  private final List<Stage> stages;
  private final double[] bendAtBegin;
  private final double[] bendAtEnd;
  private Problem problem;
  private int iterations;
  private boolean byBlocks;
  private Work work = Work.unbounded();

  /**
   * Structure deceives here: ties of a block were found to depend on each other, and will be again.
   * From then on the group is solved whole, so that no step of a drag is taken twice.
   */
  private boolean deceived;

  /** One block: a small one has a place among the small ones and gets a solver when it is odd. */
  private static final class Stage {
    final BlockOrder.Part part;
    final Group demands;
    final int small;
    GroupSolver solver;

    Stage(BlockOrder.Block block, int small) {
      part = block.part();
      this.small = small;
      Group g = block.group();
      // Limits and wishes cannot move what ties settle.
      demands =
          block.determined() ? new Group(g.variables(), g.tieRows(), new int[0][], new int[0]) : g;
    }

    boolean determined() {
      return part != BlockOrder.Part.UNDER;
    }
  }

  /**
   * @param localOf workspace, as many as the problem has variables, all -1; left so
   * @param inBlocks false to solve the group whole whatever it is
   */
  public BlockSolver(Group group, Problem problem, int[] localOf, boolean inBlocks) {
    this.problem = problem;
    whole = new GroupSolver(new GroupSystem(group, problem, localOf), problem);
    bendAtBegin = new double[whole.system().watch.count()];
    bendAtEnd = new double[bendAtBegin.length];
    List<BlockOrder.Block> blocks =
        inBlocks && group.variables().length > 0
            ? BlockOrder.of(group, problem, localOf).blocks()
            : List.of();
    if (blocks.isEmpty() || !pays(blocks, group)) {
      stages = List.of();
      small = null;
      return;
    }
    stages = new ArrayList<>(blocks.size());
    List<Group> tiny = new ArrayList<>();
    for (BlockOrder.Block block : blocks) {
      boolean isSmall = isSmall(block);
      Stage stage = new Stage(block, isSmall ? tiny.size() : -1);
      stages.add(stage);
      if (isSmall) {
        tiny.add(stage.demands);
      } else {
        stage.solver = new GroupSolver(new GroupSystem(stage.demands, problem, localOf), problem);
        stage.solver.setBrief(true);
      }
    }
    small = new SmallBlocks(tiny, problem, localOf);
  }

  private static boolean isSmall(BlockOrder.Block block) {
    return block.part() == BlockOrder.Part.SQUARE
        && block.group().variables().length <= SmallBlocks.MOST;
  }

  private static boolean pays(List<BlockOrder.Block> blocks, Group group) {
    int largest = 0;
    for (BlockOrder.Block block : blocks) {
      if (!isSmall(block)) {
        largest = Math.max(largest, block.group().variables().length);
      }
    }
    return largest <= LARGEST_SHARE * group.variables().length;
  }

  /** Counts what is done from now on. */
  public void charge(Work other) {
    work = other;
    whole.system().charge(other);
    for (Stage stage : stages) {
      if (stage.solver != null) {
        stage.solver.system().charge(other);
      }
    }
  }

  /** Asks from now on only whether ties and limits can hold, no matter where. */
  public void holdAnywhere() {
    whole.holdAnywhere();
    for (Stage stage : stages) {
      if (stage.part == BlockOrder.Part.UNDER) {
        stage.solver.holdAnywhere();
      }
    }
  }

  /** Whether from now on quick steps must do, or else nothing is found. */
  public void setHasty(boolean value) {
    whole.setHasty(value);
    for (Stage stage : stages) {
      if (stage.solver != null) {
        stage.solver.setHasty(value);
      }
    }
  }

  /** Takes the relations and weights of another problem of the same structure. */
  public void bind(Problem next) {
    problem = next;
    whole.bind(next);
    if (stages.isEmpty()) {
      return;
    }
    small.bind(next);
    for (Stage stage : stages) {
      if (stage.solver != null) {
        stage.solver.bind(next);
      }
    }
  }

  /** The whole group, for its rows and limits. */
  public GroupSystem system() {
    return whole.system();
  }

  /**
   * Steps taken; blocks have nothing to do with each other's steps, so the most of any block counts
   * as one step of the whole does.
   */
  public int iterations() {
    return iterations;
  }

  /** Whether the last answer is that of the blocks. */
  public boolean wasInBlocks() {
    return byBlocks;
  }

  public boolean wasShaken() {
    return !byBlocks && whole.wasShaken();
  }

  public double[] bendAtBegin() {
    return byBlocks ? bendAtBegin : whole.bendAtBegin();
  }

  /**
   * As {@link GroupSolver#solve(double[], double[], SolverSettings)}.
   *
   * @param begin values of all variables to begin at; {@code x} has the same for the group
   */
  public SolveStatus solve(double[] begin, double[] x, double[] anchor, SolverSettings settings) {
    iterations = 0;
    int[] variables = whole.system().group.variables();
    byBlocks = false;
    if (!stages.isEmpty() && !deceived) {
      double largest = 0;
      for (int v : variables) {
        largest = Math.max(largest, Math.abs(x[v]));
      }
      whole.system().watch.bends(x, bendAtBegin);
      byBlocks = inOrder(begin, x, anchor, settings, largest);
      if (byBlocks) {
        return SolveStatus.SOLVED;
      }
      for (int v : variables) {
        x[v] = begin[v];
      }
    }
    SolveStatus status = whole.solve(x, anchor, settings);
    iterations += whole.iterations();
    return status;
  }

  /** Solves all blocks; whether that is as good as the whole. */
  private boolean inOrder(
      double[] begin, double[] x, double[] anchor, SolverSettings settings, double largest) {
    double aim = GroupSolver.aimMm(settings, largest);
    double near = GroupSolver.nearnessMm(settings, largest);
    SolverSettings gentle = settings.restarts() == 0 ? settings : settings.withRestarts(0);
    for (Stage stage : stages) {
      work.addProducts(stage.small >= 0 ? SmallBlocks.MOST * SmallBlocks.MOST : 0);
      int steps =
          stage.small >= 0 ? small.solve(stage.small, begin, x, aim, near) : SmallBlocks.UNSETTLED;
      if (steps == SmallBlocks.UNSETTLED) {
        steps = thoroughly(stage, begin, x, anchor, gentle, largest);
      }
      if (steps < 0) {
        deceived |= steps == SmallBlocks.SINGULAR;
        return false;
      }
      iterations = Math.max(iterations, steps);
    }
    GroupSystem system = whole.system();
    if (!system.limits.evaluate(x) || !system.rows.evaluate(x, system.ties, system.rows.count)) {
      return false;
    }
    for (int i = 0; i < system.limits.count; i++) {
      if (!(system.limits.missMm(i) >= -aim)) {
        return false;
      }
    }
    system.watch.bends(x, bendAtEnd);
    return !system.watch.turned(bendAtBegin, bendAtEnd);
  }

  /** Solves a block as a group of its own; steps as {@link SmallBlocks#solve} gives them. */
  private int thoroughly(
      Stage stage,
      double[] begin,
      double[] x,
      double[] anchor,
      SolverSettings gentle,
      double largest) {
    if (stage.solver == null) {
      stage.solver =
          new GroupSolver(
              new GroupSystem(stage.demands, problem, GroupSystem.noneOf(problem)), problem);
      stage.solver.system().charge(work);
    }
    GroupSolver solver = stage.solver;
    solver.system().carry(begin, x);
    boolean solved = solver.solve(x, anchor, gentle, largest) == SolveStatus.SOLVED;
    iterations = Math.max(iterations, solver.iterations());
    if (!solved || solver.wasShaken()) {
      return SmallBlocks.UNSETTLED;
    }
    if (stage.determined()
        && solver.system().freshTies(x, SmallBlocks.NEW_SHARE) < solver.system().n) {
      return SmallBlocks.SINGULAR;
    }
    return solver.iterations();
  }
}
