package org.longlow.constraints.solve.block;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.longlow.constraints.solve.linear.LocalBasis;
import org.longlow.constraints.solve.linear.RankFactor;
import org.longlow.constraints.solve.linear.RowSet;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.step.GroupSystem;

/**
 * Freedoms and gains of a group by its blocks, for groups in which every tie counts.
 *
 * <p>With the settled part regular, motions that keep all ties stay within the open blocks, and a
 * change of a tie runs from its block down to those that read it. One factor of the whole costs the
 * cube of its size, so this is far quicker for large groups. Groups with a tie too many, a block
 * near a dead point or a change that grows beyond measure on its way are left to the whole factor:
 * there the tolerance on its pivots decides, and the answer is its.
 */
public final class BlockRank {
  /**
   * Root of the sum of squares of all answers up to which blocks are trusted. Its inverse is a
   * lower bound of the smallest singular value, well above the tolerance of rank.
   */
  private static final double MOST = 1e6;

  private final RowSet rows;
  private final int n;
  private final List<Part> parts = new ArrayList<>();
  private final List<double[]> open = new ArrayList<>();
  private final double[] gains;
  private final boolean regular;

  /**
   * A block with its rows and columns in the group.
   *
   * @param answer for each row the change of each variable that a unit change of it asks for
   */
  private record Part(int[] rows, int[] columns, double[][] answer) {}

  /**
   * @param system the group, its ties evaluated and about 1 long
   * @param problem what the group is of, with ties only
   */
  public BlockRank(GroupSystem system, Problem problem, double rankTolerance) {
    rows = system.rows;
    n = system.n;
    gains = new double[system.ties];
    regular = factor(system.group, problem, rankTolerance) && spread();
  }

  /** Whether all ties count and the answers here can be trusted. */
  public boolean isRegular() {
    return regular;
  }

  /** Basis of the motions that keep all ties, local, one vector of n values each. */
  public List<double[]> open() {
    return open;
  }

  /** For each tie row the most that a unit change of it moves any variable. */
  public double[] gains() {
    return gains;
  }

  private boolean factor(Group group, Problem problem, double rankTolerance) {
    Map<List<Integer>, Integer> rowOf = new HashMap<>();
    for (int i = 0; i < group.tieRows().length; i++) {
      rowOf.put(List.of(group.tieRows()[i][0], group.tieRows()[i][1]), i);
    }
    int[] localOf = GroupSystem.noneOf(problem);
    List<BlockOrder.Block> blocks = BlockOrder.of(group, problem, localOf).blocks();
    for (int j = 0; j < n; j++) {
      localOf[group.variables()[j]] = j;
    }
    int[] place = new int[n];
    Arrays.fill(place, -1);
    for (BlockOrder.Block block : blocks) {
      if (block.part() == BlockOrder.Part.OVER) {
        return false;
      }
      int[] columns = new int[block.group().variables().length];
      for (int j = 0; j < columns.length; j++) {
        columns[j] = localOf[block.group().variables()[j]];
      }
      int[] own = new int[block.group().tieRows().length];
      for (int i = 0; i < own.length; i++) {
        int[] row = block.group().tieRows()[i];
        own[i] = rowOf.get(List.of(row[0], row[1]));
      }
      for (int j = 0; j < columns.length; j++) {
        place[columns[j]] = j;
      }
      DMatrixRMaj a = new DMatrixRMaj(columns.length, own.length);
      for (int i = 0; i < own.length; i++) {
        for (int e = rows.start[own[i]]; e < rows.start[own[i] + 1]; e++) {
          if (place[rows.column[e]] >= 0) {
            a.add(place[rows.column[e]], i, rows.entry[e]);
          }
        }
      }
      for (int c : columns) {
        place[c] = -1;
      }
      if (block.determined()) {
        if (!CommonOps_DDRM.invert(a)) {
          return false;
        }
        // The inverse of the transposed: row i of it answers row i of the block.
        double[][] answer = new double[own.length][columns.length];
        for (int i = 0; i < own.length; i++) {
          for (int j = 0; j < columns.length; j++) {
            answer[i][j] = a.get(i, j);
          }
        }
        parts.add(new Part(own, columns, answer));
      } else {
        RankFactor factor = new RankFactor(a, rankTolerance);
        if (factor.rank() < own.length) {
          return false;
        }
        for (double[] direction : LocalBasis.localise(factor.nullSpace())) {
          double[] motion = new double[n];
          for (int j = 0; j < columns.length; j++) {
            motion[columns[j]] = direction[j];
          }
          open.add(motion);
        }
        parts.add(new Part(own, columns, factor.answers()));
      }
    }
    return true;
  }

  /** Sends a unit change of each row down the blocks; false where it grows too much. */
  private boolean spread() {
    double[] change = new double[n];
    double[] read = new double[n];
    double sum = 0;
    for (int first = 0; first < parts.size(); first++) {
      Part part = parts.get(first);
      for (int i = 0; i < part.rows().length; i++) {
        Arrays.fill(change, 0);
        answer(part, i, 1, change);
        for (int b = first + 1; b < parts.size(); b++) {
          Part later = parts.get(b);
          boolean any = false;
          for (int k = 0; k < later.rows().length; k++) {
            read[k] = rows.dot(later.rows()[k], change);
            any |= read[k] != 0;
          }
          for (int k = 0; any && k < later.rows().length; k++) {
            answer(later, k, -read[k], change);
          }
        }
        double most = 0;
        for (double c : change) {
          most = Math.max(most, Math.abs(c));
          sum += c * c;
        }
        gains[part.rows()[i]] = most;
        if (!(sum <= MOST * MOST)) {
          return false;
        }
      }
    }
    return true;
  }

  private static void answer(Part part, int row, double amount, double[] out) {
    for (int j = 0; j < part.columns().length; j++) {
      out[part.columns()[j]] += amount * part.answer()[row][j];
    }
  }
}
