package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** A body cut at any place, holes filled; its edges are sorted once. */
final class CutAt {

  private static final Memo<Loft, CutAt> ALL = new Memo<>(32, CutAt::new);

  /** What differs by less is the same, mm. */
  private static final double SAME_MM = 1e-9;

  private final Loft loft;

  /** Where edges begin and end. */
  private final double[] xs;

  /** Those from each of these to the next, from below to above. */
  private final List<List<Loft.Edge>> across = new ArrayList<>();

  private CutAt(Loft loft) {
    this.loft = loft;
    List<Loft.Edge> edges = loft.edges();
    xs =
        edges.stream()
            .flatMap(e -> List.of(e.a().x(), e.b().x()).stream())
            .mapToDouble(Double::doubleValue)
            .sorted()
            .distinct()
            .toArray();
    for (int i = 0; i + 1 < xs.length; i++) {
      across.add(new ArrayList<>());
    }
    for (Loft.Edge e : edges) {
      int to = Arrays.binarySearch(xs, e.b().x());
      for (int i = Arrays.binarySearch(xs, e.a().x()); i < to; i++) {
        across.get(i).add(e);
      }
    }
    for (int i = 0; i < across.size(); i++) {
      double middle = (xs[i] + xs[i + 1]) / 2;
      across.get(i).sort(Comparator.comparingDouble(e -> e.at(middle).z()));
    }
  }

  static CutAt of(Loft loft) {
    return ALL.of(loft);
  }

  /** Returns where edges begin and end, in turn. */
  double[] places() {
    return xs.clone();
  }

  /**
   * Returns what the body looks like cut at one place; where it steps there, of both sides of the
   * step.
   *
   * @param pieces of a quarter of a curved side
   */
  List<Cut> at(double x, int pieces) {
    int found = Arrays.binarySearch(xs, x);
    if (found < 0) {
      return cuts(x, -found - 2, pieces);
    }
    List<Cut> behind = cuts(x, found - 1, pieces);
    List<Cut> ahead = cuts(x, found, pieces);
    if (same(behind, ahead)) {
      return ahead;
    }
    List<Cut> both = new ArrayList<>(behind);
    both.addAll(ahead);
    return both;
  }

  private List<Cut> cuts(double x, int interval, int pieces) {
    List<Cut> cuts = new ArrayList<>();
    if (interval < 0 || interval >= across.size()) {
      return cuts;
    }
    List<Loft.Edge> edges = across.get(interval);
    for (int i = 0; i + 1 < edges.size(); i += 2) {
      cuts.add(loft.cut(x, edges.get(i), edges.get(i + 1), pieces));
    }
    return cuts;
  }

  private static boolean same(List<Cut> some, List<Cut> others) {
    if (some.size() != others.size()) {
      return false;
    }
    for (int i = 0; i < some.size(); i++) {
      if (!alike(some.get(i).left(), others.get(i).left())
          || !alike(some.get(i).right(), others.get(i).right())) {
        return false;
      }
    }
    return true;
  }

  private static boolean alike(List<double[]> some, List<double[]> others) {
    for (int i = 0; i < some.size(); i++) {
      if (Math.abs(some.get(i)[0] - others.get(i)[0]) > SAME_MM
          || Math.abs(some.get(i)[1] - others.get(i)[1]) > SAME_MM) {
        return false;
      }
    }
    return true;
  }
}
