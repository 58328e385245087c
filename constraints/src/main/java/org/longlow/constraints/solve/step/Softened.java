package org.longlow.constraints.solve.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverWish;
import org.longlow.constraints.solve.problem.Work;

/**
 * A group whose costly limits have become wishes: ties and the other limits are kept, and of what
 * the costly ones miss the sum of squares is made least.
 *
 * <p>Such a limit, say the room between a knee and a cowl, fails alone then, by as little as the
 * rest lets it, instead of dragging limits of other things along. Its own wishes the group forgets.
 */
public final class Softened {
  private final Problem problem;
  private final GroupSystem system;

  /** For each wish of the group the limit it was and which row of it. */
  private final int[][] limitRows;

  public Softened(Group group, Problem hard, Work work) {
    List<SolverWish> wishes = new ArrayList<>();
    List<int[]> kept = new ArrayList<>();
    List<int[]> soft = new ArrayList<>();
    for (int[] row : group.limitRows()) {
      Relation gap = hard.limits().get(row[0]).gaps().get(row[1]);
      if (gap.costly()) {
        soft.add(row);
        wishes.add(new SolverWish("room " + wishes.size(), 1, new Shortfall(gap)));
      } else {
        kept.add(row);
      }
    }
    limitRows = soft.toArray(int[][]::new);
    int[] indices = new int[wishes.size()];
    Arrays.setAll(indices, i -> i);
    problem = hard.withWishes(wishes);
    system =
        new GroupSystem(
            new Group(group.variables(), group.tieRows(), kept.toArray(int[][]::new), indices),
            problem);
    system.charge(work);
  }

  Problem problem() {
    return problem;
  }

  public GroupSystem system() {
    return system;
  }

  /** The limit that a wish of the group was. */
  public int limitOf(int wish) {
    return limitRows[wish][0];
  }

  /** What a limit misses: its room where that is below zero, else zero. */
  private record Shortfall(Relation gap) implements Relation {
    @Override
    public int[] variables() {
      return gap.variables();
    }

    @Override
    public double evaluate(double[] x, double[] gradient) {
      double room = gap.evaluate(x, gradient);
      if (!(room >= 0)) {
        return room;
      }
      if (gradient != null) {
        Arrays.fill(gradient, 0, gap.variables().length, 0);
      }
      return 0;
    }

    @Override
    public double scale() {
      return gap.scale();
    }

    @Override
    public boolean costly() {
      return true;
    }
  }
}
