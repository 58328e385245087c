package org.longlow.constraints.solve.block;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.longlow.constraints.solve.graph.Matching;
import org.longlow.constraints.solve.graph.Pattern;
import org.longlow.constraints.solve.graph.StrongComponents;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.step.GroupSystem;

/**
 * The blocks of a connected group in an order in which they can be solved one after the other.
 *
 * <p>From which tie reads which variable alone: parts with more ties than variables, then parts
 * with as many, each as small as can be, then what is left open (A. L. Dulmage and N. S.
 * Mendelsohn, Coverings of bipartite graphs, Can. J. Math. 10, 1958; A. Pothen and C.-J. Fan,
 * Computing the block triangular form of a sparse matrix, ACM TOMS 16, 1990). The ties of a block
 * read its own variables and those of earlier blocks, which are constants to it. Structure cannot
 * see that ties depend on each other by their values; who solves by this order must look whether a
 * block is regular.
 *
 * @param blocks in order; every demand of the group is in just one
 */
public record BlockOrder(List<Block> blocks) {
  /** How the ties of a block stand to its variables, by structure. */
  public enum Part {
    /** More ties than variables. */
    OVER,
    /** As many; none of its ties can be solved before the others. */
    SQUARE,
    /** Fewer: anchor, limits and wishes have a say. */
    UNDER
  }

  /**
   * One block.
   *
   * @param group its variables and demands. A limit or wish is in the last block that holds one of
   *     its variables
   */
  public record Block(Part part, Group group) {
    /** Whether ties alone settle the block, as far as structure goes. */
    boolean determined() {
      return part != Part.UNDER;
    }
  }

  /** Orders a group with at least one variable. The order does not depend on values. */
  public static BlockOrder of(Group group, Problem problem) {
    return of(group, problem, GroupSystem.noneOf(problem));
  }

  /**
   * As {@link #of(Group, Problem)}.
   *
   * @param localOf workspace, as many as the problem has variables, all -1; left so
   */
  public static BlockOrder of(Group group, Problem problem, int[] localOf) {
    BlockOrder order = new Builder(group, problem, localOf).build();
    for (int v : group.variables()) {
      localOf[v] = -1;
    }
    return order;
  }

  /** Collects the blocks of one group; variables are counted within the group. */
  private static final class Builder {
    private final Group group;
    private final Relation[] ties;
    private final Relation[] limits;
    private final Relation[] wishes;
    private final int[] localOf;
    private final int[] blockOf;
    private int blocks;

    /** Last block of each kind so far. */
    private int over;

    private int square;

    Builder(Group group, Problem problem, int[] localOf) {
      this.group = group;
      ties = group.tieRelations(problem).toArray(Relation[]::new);
      limits = group.limitRelations(problem).toArray(Relation[]::new);
      wishes = group.wishRelations(problem).toArray(Relation[]::new);
      this.localOf = localOf;
      for (int j = 0; j < group.variables().length; j++) {
        localOf[group.variables()[j]] = j;
      }
      blockOf = new int[group.variables().length];
      Arrays.fill(blockOf, -1);
    }

    BlockOrder build() {
      Pattern pattern = pattern();
      Matching matching = Matching.of(pattern);
      boolean[] rowOver = new boolean[pattern.rows()];
      boolean[] columnOver = new boolean[pattern.columns()];
      reach(pattern, matching.columnOf, matching.rowOf, rowOver, columnOver);
      boolean[] rowUnder = new boolean[pattern.rows()];
      boolean[] columnUnder = new boolean[pattern.columns()];
      Pattern byColumn = pattern.transposed();
      reach(byColumn, matching.rowOf, matching.columnOf, columnUnder, rowUnder);
      List<Relation> joins = new ArrayList<>();
      for (int i = 0; i < ties.length; i++) {
        if (rowOver[i]) {
          joins.add(ties[i]);
        }
      }
      connect(columnOver, joins);
      over = blocks;
      strong(pattern, matching, rowOver, rowUnder);
      square = blocks;
      joins.clear();
      for (int i = 0; i < ties.length; i++) {
        if (rowUnder[i]) {
          joins.add(ties[i]);
        }
      }
      joins.addAll(List.of(limits));
      joins.addAll(List.of(wishes));
      connect(columnUnder, joins);
      return collect(matching);
    }

    private Pattern pattern() {
      int[] start = new int[ties.length + 1];
      for (int i = 0; i < ties.length; i++) {
        int free = 0;
        for (int v : ties[i].variables()) {
          free += localOf[v] >= 0 ? 1 : 0;
        }
        start[i + 1] = start[i] + free;
      }
      int[] column = new int[start[ties.length]];
      int next = 0;
      for (Relation tie : ties) {
        for (int v : tie.variables()) {
          if (localOf[v] >= 0) {
            column[next++] = localOf[v];
          }
        }
      }
      return new Pattern(ties.length, blockOf.length, start, column);
    }

    /**
     * Marks what alternating ways reach from the nodes without a partner: over any edge to the
     * other side, over a matched one back.
     */
    private static void reach(
        Pattern pattern, int[] partner, int[] back, boolean[] here, boolean[] there) {
      int[] stack = new int[pattern.rows()];
      int size = 0;
      for (int i = 0; i < pattern.rows(); i++) {
        if (partner[i] < 0) {
          here[i] = true;
          stack[size++] = i;
        }
      }
      while (size > 0) {
        int i = stack[--size];
        for (int e = pattern.start()[i]; e < pattern.start()[i + 1]; e++) {
          int c = pattern.column()[e];
          there[c] = true;
          if (!here[back[c]]) {
            here[back[c]] = true;
            stack[size++] = back[c];
          }
        }
      }
    }

    /** Makes a block of each set of marked variables that relations join. */
    private void connect(boolean[] marked, List<Relation> joins) {
      int[] parent = new int[marked.length];
      Arrays.setAll(parent, j -> j);
      for (Relation relation : joins) {
        int first = -1;
        for (int v : relation.variables()) {
          int j = localOf[v];
          if (j < 0 || !marked[j]) {
            continue;
          }
          if (first < 0) {
            first = j;
          } else {
            parent[Group.root(parent, j)] = Group.root(parent, first);
          }
        }
      }
      int[] byRoot = new int[marked.length];
      Arrays.fill(byRoot, -1);
      for (int j = 0; j < marked.length; j++) {
        if (marked[j]) {
          int r = Group.root(parent, j);
          byRoot[r] = byRoot[r] < 0 ? blocks++ : byRoot[r];
          blockOf[j] = byRoot[r];
        }
      }
    }

    /** Splits what is left into the smallest blocks that can be solved in turn. */
    private void strong(Pattern pattern, Matching matching, boolean[] rowOver, boolean[] rowUnder) {
      int[] node = new int[ties.length];
      int[] tie = new int[ties.length];
      int count = 0;
      for (int i = 0; i < ties.length; i++) {
        node[i] = rowOver[i] || rowUnder[i] ? -1 : count;
        if (node[i] >= 0) {
          tie[count++] = i;
        }
      }
      int[] start = new int[count + 1];
      int[] reads = new int[pattern.column().length];
      int next = 0;
      for (int k = 0; k < count; k++) {
        for (int e = pattern.start()[tie[k]]; e < pattern.start()[tie[k] + 1]; e++) {
          // Variables of the over-determined part are settled already.
          reads[next++] = node[matching.rowOf[pattern.column()[e]]];
        }
        start[k + 1] = next;
      }
      int[] component = StrongComponents.of(new Pattern(count, count, start, reads));
      int most = -1;
      for (int k = 0; k < count; k++) {
        blockOf[matching.columnOf[tie[k]]] = blocks + component[k];
        most = Math.max(most, component[k]);
      }
      blocks += most + 1;
    }

    private BlockOrder collect(Matching matching) {
      Group.Parts[] parts = new Group.Parts[blocks];
      Arrays.setAll(parts, b -> new Group.Parts());
      for (int j = 0; j < blockOf.length; j++) {
        parts[blockOf[j]].variables.add(group.variables()[j]);
      }
      for (int i = 0; i < ties.length; i++) {
        // A tie without a variable of its own belongs with the variables it has too many ties for.
        int c = matching.columnOf[i];
        parts[c >= 0 ? blockOf[c] : last(ties[i])].ties.add(group.tieRows()[i]);
      }
      for (int i = 0; i < limits.length; i++) {
        parts[last(limits[i])].limits.add(group.limitRows()[i]);
      }
      for (int i = 0; i < wishes.length; i++) {
        parts[last(wishes[i])].wishes.add(group.wishes()[i]);
      }
      List<Block> list = new ArrayList<>(blocks);
      for (int b = 0; b < blocks; b++) {
        Part part = b < over ? Part.OVER : b < square ? Part.SQUARE : Part.UNDER;
        list.add(new Block(part, parts[b].build()));
      }
      return new BlockOrder(List.copyOf(list));
    }

    /** Last block that holds a variable of a relation. */
    private int last(Relation relation) {
      int most = -1;
      for (int v : relation.variables()) {
        if (localOf[v] >= 0) {
          most = Math.max(most, blockOf[localOf[v]]);
        }
      }
      return most;
    }
  }
}
