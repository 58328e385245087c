package org.longlow.constraints.solve.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.solve.StillPin;
import org.longlow.constraints.solve.block.BlockOrder.Block;
import org.longlow.constraints.solve.block.BlockOrder.Part;
import org.longlow.constraints.solve.graph.Matching;
import org.longlow.constraints.solve.graph.Pattern;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.relation.Relations;

/** The order of blocks against what can be counted without it. */
class BlockOrderTest {
  private static final int GRAPHS = 600;

  /** Reads some variables; the values do not matter here. */
  private record Reads(int[] variables) implements Relation {
    @Override
    public double evaluate(double[] x, double[] gradient) {
      double sum = 0;
      for (int k = 0; k < variables.length; k++) {
        sum += x[variables[k]];
        if (gradient != null) {
          gradient[k] = 1;
        }
      }
      return sum;
    }
  }

  /** Rows of columns, each row with at least one. */
  private static int[][] graph(SplittableRandom random, int rows, int columns) {
    int[][] graph = new int[rows][];
    double dense = random.nextDouble(0.1, 0.5);
    for (int i = 0; i < rows; i++) {
      Set<Integer> some = new TreeSet<>();
      some.add(random.nextInt(columns));
      for (int c = 0; c < columns; c++) {
        if (random.nextDouble() < dense) {
          some.add(c);
        }
      }
      graph[i] = some.stream().mapToInt(Integer::intValue).toArray();
    }
    return graph;
  }

  private static int[][] graph(SplittableRandom random) {
    return graph(random, 1 + random.nextInt(9), 1 + random.nextInt(9));
  }

  private static int columns(int[][] graph) {
    return Arrays.stream(graph).flatMapToInt(Arrays::stream).max().orElse(-1) + 1;
  }

  /** Size of a largest matching without one row and one column (-1 for none), row by row. */
  private static int matched(int[][] graph, int withoutRow, int withoutColumn) {
    int[] owner = new int[columns(graph)];
    Arrays.fill(owner, -1);
    int size = 0;
    for (int i = 0; i < graph.length; i++) {
      if (i != withoutRow && place(graph, i, withoutColumn, owner, new boolean[owner.length])) {
        size++;
      }
    }
    return size;
  }

  private static boolean place(int[][] graph, int row, int without, int[] owner, boolean[] tried) {
    for (int c : graph[row]) {
      if (c != without && !tried[c]) {
        tried[c] = true;
        if (owner[c] < 0 || place(graph, owner[c], without, owner, tried)) {
          owner[c] = row;
          return true;
        }
      }
    }
    return false;
  }

  private static Problem problem(int[][] graph) {
    Problem.Builder b = Problem.builder();
    for (int c = 0; c < columns(graph); c++) {
      b.variable("v" + c, c);
    }
    for (int i = 0; i < graph.length; i++) {
      b.tie("t" + i, new Reads(graph[i]));
    }
    return b.build();
  }

  private static List<Block> blocks(Problem problem) {
    List<Block> all = new ArrayList<>();
    for (Group group : Group.split(problem)) {
      all.addAll(BlockOrder.of(group, problem).blocks());
    }
    return all;
  }

  @Test
  void matchingIsAsLargeAsCanBe() {
    SplittableRandom random = new SplittableRandom(1);
    for (int g = 0; g < GRAPHS; g++) {
      int[][] graph = graph(random, 1 + random.nextInt(30), 1 + random.nextInt(30));
      int[] start = new int[graph.length + 1];
      for (int i = 0; i < graph.length; i++) {
        start[i + 1] = start[i] + graph[i].length;
      }
      int[] column = Arrays.stream(graph).flatMapToInt(Arrays::stream).toArray();
      Matching m = Matching.of(new Pattern(graph.length, columns(graph), start, column));
      assertThat(m.size()).as("graph " + g).isEqualTo(matched(graph, -1, -1));
      for (int i = 0; i < graph.length; i++) {
        int c = m.columnOf[i];
        if (c >= 0) {
          assertThat(graph[i]).contains(c);
          assertThat(m.rowOf[c]).isEqualTo(i);
        }
      }
    }
  }

  @Test
  void coarsePartsAreWhatEveryLargestMatchingHasInCommon() {
    // A tie is one of too many when some largest matching does without it, which is when taking it
    // away costs nothing; a variable is open when some largest matching does without that.
    SplittableRandom random = new SplittableRandom(2);
    int over = 0;
    int under = 0;
    int square = 0;
    for (int g = 0; g < GRAPHS; g++) {
      int[][] graph = graph(random);
      int size = matched(graph, -1, -1);
      Set<Integer> tooMany = new TreeSet<>();
      Set<Integer> settledByThem = new TreeSet<>();
      for (int i = 0; i < graph.length; i++) {
        if (matched(graph, i, -1) == size) {
          tooMany.add(i);
          Arrays.stream(graph[i]).forEach(settledByThem::add);
        }
      }
      Set<Integer> open = new TreeSet<>();
      for (int c = 0; c < columns(graph); c++) {
        int column = c;
        if (matched(graph, -1, c) == size
            && Arrays.stream(graph).anyMatch(r -> Arrays.binarySearch(r, column) >= 0)) {
          open.add(c);
        }
      }
      Set<Integer> touching = new TreeSet<>();
      for (int i = 0; i < graph.length; i++) {
        if (Arrays.stream(graph[i]).anyMatch(open::contains)) {
          touching.add(i);
        }
      }
      List<Block> blocks = blocks(problem(graph));
      assertThat(ties(blocks, Part.OVER)).as("graph " + g).isEqualTo(tooMany);
      assertThat(variables(blocks, Part.OVER)).as("graph " + g).isEqualTo(settledByThem);
      assertThat(variables(blocks, Part.UNDER)).as("graph " + g).isEqualTo(open);
      assertThat(ties(blocks, Part.UNDER)).as("graph " + g).isEqualTo(touching);
      over += tooMany.isEmpty() ? 0 : 1;
      under += open.isEmpty() ? 0 : 1;
      square += ties(blocks, Part.SQUARE).isEmpty() ? 0 : 1;
    }
    assertThat(List.of(over, under, square)).as("graphs with such a part").allMatch(k -> k > 100);
  }

  private static Set<Integer> ties(List<Block> blocks, Part part) {
    Set<Integer> found = new TreeSet<>();
    blocks.stream()
        .filter(b -> b.part() == part)
        .flatMap(b -> Arrays.stream(b.group().tieRows()))
        .forEach(row -> found.add(row[0]));
    return found;
  }

  private static Set<Integer> variables(List<Block> blocks, Part part) {
    Set<Integer> found = new TreeSet<>();
    blocks.stream()
        .filter(b -> b.part() == part)
        .flatMapToInt(b -> Arrays.stream(b.group().variables()))
        .forEach(found::add);
    return found;
  }

  @Test
  void tiesReadTheirBlockAndEarlierOnesAndSquareBlocksCannotBeSplit() {
    SplittableRandom random = new SplittableRandom(3);
    int larger = 0;
    for (int g = 0; g < GRAPHS; g++) {
      int[][] graph = graph(random);
      Problem problem = problem(graph);
      for (Group group : Group.split(problem)) {
        Set<Integer> known = new HashSet<>();
        int ties = 0;
        for (Block block : BlockOrder.of(group, problem).blocks()) {
          int[] own = block.group().variables();
          Arrays.stream(own).forEach(v -> assertThat(known.add(v)).isTrue());
          List<int[]> rows = new ArrayList<>();
          for (int[] row : block.group().tieRows()) {
            for (int v : graph[row[0]]) {
              assertThat(known).as("graph " + g).contains(v);
            }
            rows.add(
                Arrays.stream(graph[row[0]])
                    .filter(v -> Arrays.binarySearch(own, v) >= 0)
                    .toArray());
          }
          ties += rows.size();
          int spare = own.length - rows.size();
          assertThat(Integer.signum(spare)).as("graph " + g).isEqualTo(sign(block.part()));
          if (block.part() == Part.SQUARE) {
            assertCannotBeSplit(rows, "graph " + g);
            larger += rows.size() > 1 ? 1 : 0;
          }
        }
        assertThat(known).hasSize(group.variables().length);
        assertThat(ties).isEqualTo(group.tieRows().length);
      }
    }
    assertThat(larger).isGreaterThan(30);
  }

  private static int sign(Part part) {
    return switch (part) {
      case OVER -> -1;
      case SQUARE -> 0;
      case UNDER -> 1;
    };
  }

  /** No few of the ties could be solved alone: any k of them, not all, read more than k. */
  private static void assertCannotBeSplit(List<int[]> rows, String what) {
    for (int set = 1; set < (1 << rows.size()) - 1; set++) {
      Set<Integer> read = new HashSet<>();
      for (int i = 0; i < rows.size(); i++) {
        if ((set >> i & 1) != 0) {
          Arrays.stream(rows.get(i)).forEach(read::add);
        }
      }
      assertThat(read.size()).as(what).isGreaterThan(Integer.bitCount(set));
    }
  }

  @Test
  void blocksDoNotDependOnTheOrderOfTiesAndVariables() {
    SplittableRandom random = new SplittableRandom(4);
    for (int g = 0; g < GRAPHS; g++) {
      int[][] graph = graph(random);
      List<Integer> rows = new ArrayList<>();
      List<Integer> names = new ArrayList<>();
      for (int i = 0; i < graph.length; i++) {
        rows.add(i);
      }
      for (int c = 0; c < columns(graph); c++) {
        names.add(c);
      }
      Collections.shuffle(rows, new Random(g));
      Collections.shuffle(names, new Random(g + 1));
      int[][] other = new int[graph.length][];
      for (int i = 0; i < graph.length; i++) {
        other[i] = Arrays.stream(graph[rows.get(i)]).map(names::get).sorted().toArray();
      }
      Problem.Builder b = Problem.builder();
      names.forEach(c -> b.variable("v" + c, 0));
      for (int i = 0; i < graph.length; i++) {
        b.tie("t" + rows.get(i), new Reads(other[i]));
      }
      Set<String> plain = new TreeSet<>();
      for (Block block : blocks(problem(graph))) {
        plain.add(described(block, i -> i, v -> v));
      }
      Set<String> shuffled = new TreeSet<>();
      for (Block block : blocks(b.build())) {
        shuffled.add(described(block, rows::get, names::indexOf));
      }
      assertThat(shuffled).as("graph " + g).isEqualTo(plain);
    }
  }

  private static String described(
      Block block,
      java.util.function.IntFunction<Integer> tie,
      java.util.function.IntFunction<Integer> variable) {
    Set<Integer> ties = new TreeSet<>();
    for (int[] row : block.group().tieRows()) {
      ties.add(tie.apply(row[0]));
    }
    Set<Integer> variables = new TreeSet<>();
    for (int v : block.group().variables()) {
      variables.add(variable.apply(v));
    }
    return block.part() + " " + ties + " " + variables;
  }

  @Test
  void pinsOnTwoBarsEachAreSolvedInTurn() {
    Problem.Builder b = Problem.builder();
    Pt last = b.pin("last", 20, 40);
    Pt middle = b.pin("middle", 20, 20);
    Pt near = b.pin("near", 20, 0);
    Pt a = StillPin.in(b, "a", 0, 0);
    Pt c = StillPin.in(b, "b", 0, 20);
    b.tie("5", Relations.distance(near, last, 40));
    b.tie("6", Relations.distance(middle, last, 20));
    b.tie("3", Relations.distance(c, middle, 20));
    b.tie("4", Relations.distance(near, middle, 20));
    b.tie("1", Relations.distance(a, near, 20));
    b.tie("2", Relations.distance(c, near, 28));
    Problem problem = b.build();
    List<Group> groups = Group.split(problem);
    assertThat(groups).hasSize(1);
    List<String> order = new ArrayList<>();
    for (Block block : BlockOrder.of(groups.get(0), problem).blocks()) {
      order.add(described(block, i -> Integer.valueOf(problem.ties().get(i).name()), v -> v));
    }
    assertThat(order)
        .containsExactly("SQUARE [1, 2] [4, 5]", "SQUARE [3, 4] [2, 3]", "SQUARE [5, 6] [0, 1]");
  }

  @Test
  void limitsAndWishesGoToTheLastBlockAndJoinWhatIsOpen() {
    // v0 is settled by t0, v1 by t1 from v0; v2..v5 are open, v2 and v3 joined by a limit only, v4
    // and v5 by nothing but what is settled.
    Problem.Builder b = Problem.builder();
    for (int v = 0; v < 6; v++) {
      b.variable("v" + v, v);
    }
    b.tie("t0", new Reads(new int[] {0}));
    b.tie("t1", new Reads(new int[] {0, 1}));
    b.limit("both gaps", new Reads(new int[] {0, 1}), new Reads(new int[] {1, 3, 2}));
    b.limit("early", new Reads(new int[] {0}));
    b.wish("of v4", 1, new Reads(new int[] {4, 1}));
    b.wish("of v5", 1, new Reads(new int[] {0, 5}));
    b.wish("settled", 1, new Reads(new int[] {1, 0}));
    Problem problem = b.build();
    List<Block> blocks = BlockOrder.of(Group.split(problem).get(0), problem).blocks();
    List<String> found = new ArrayList<>();
    for (Block block : blocks) {
      Group g = block.group();
      found.add(
          block.part()
              + " "
              + Arrays.toString(g.variables())
              + " limits "
              + Arrays.deepToString(g.limitRows())
              + " wishes "
              + Arrays.toString(g.wishes()));
    }
    assertThat(found)
        .containsExactly(
            "SQUARE [0] limits [[1, 0]] wishes []",
            "SQUARE [1] limits [[0, 0]] wishes [2]",
            "UNDER [2, 3] limits [[0, 1]] wishes []",
            "UNDER [4] limits [] wishes [0]",
            "UNDER [5] limits [] wishes [1]");
  }

  @Test
  void hundredThousandTiesInARowAndInARingAreOrdered() {
    int n = 100_000;
    for (boolean ring : new boolean[] {false, true}) {
      Problem.Builder b = Problem.builder();
      for (int v = 0; v < n; v++) {
        b.variable("v" + v, 0);
      }
      for (int v = 0; v + 1 < n; v++) {
        b.tie("t" + v, new Reads(new int[] {v, v + 1}));
      }
      b.tie("end", new Reads(ring ? new int[] {n - 1, 0} : new int[] {n - 1}));
      Problem problem = b.build();
      List<Block> blocks = BlockOrder.of(Group.split(problem).get(0), problem).blocks();
      if (ring) {
        assertThat(blocks).hasSize(1);
        assertThat(blocks.get(0).group().variables()).hasSize(n);
      } else {
        assertThat(blocks).hasSize(n);
        assertThat(blocks.get(0).group().variables()).containsExactly(n - 1);
        assertThat(blocks.get(n - 1).group().variables()).containsExactly(0);
      }
    }
  }
}
