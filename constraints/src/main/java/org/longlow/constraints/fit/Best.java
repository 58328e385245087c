package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The least hardware that takes in most people: of choices that take in as many the one with fewer
 * adjusters, then the one with less of their travel. Not for several threads.
 */
final class Best {

  private static final double SAME = 1e-9;

  private List<AdjustReport.Range> ranges = List.of();
  private List<Boolean> taken;
  private double travel;

  /**
   * @param fitting who fits with nothing adjusted
   */
  Best(List<Boolean> fitting) {
    taken = fitting;
  }

  /** Whether everybody is taken in. */
  boolean all() {
    return count(taken) == taken.size();
  }

  /** Returns it; empty where nothing takes in more than the machine as it is. */
  Optional<AdjustReport.Least> least() {
    return ranges.isEmpty() ? Optional.empty() : Optional.of(new AdjustReport.Least(ranges, taken));
  }

  /**
   * Looks at one adjuster alone.
   *
   * @param fits who fits at each of its settings
   */
  void single(Adjuster a, List<boolean[]> fits) {
    for (int from = 0; from < fits.size(); from++) {
      for (int to = from; to < fits.size(); to++) {
        List<Boolean> in = union(fits.subList(from, to + 1));
        offer(in, a.share(from, to), List.of(range(a, from, to)));
      }
    }
  }

  /**
   * Looks at two adjusters together.
   *
   * @param stride how many settings of each one step is
   * @param fits who fits at each pair of settings, those of the second in turn
   */
  void pair(Adjuster a, Adjuster b, int stride, List<boolean[]> fits) {
    int wide = (b.settings().size() + stride - 1) / stride;
    int high = fits.size() / wide;
    for (int i = 0; i < high; i++) {
      for (int j = i; j < high; j++) {
        for (int k = 0; k < wide; k++) {
          for (int l = k; l < wide; l++) {
            List<boolean[]> box = new ArrayList<>();
            for (int row = i; row <= j; row++) {
              box.addAll(fits.subList(row * wide + k, row * wide + l + 1));
            }
            offer(
                union(box),
                a.share(i * stride, j * stride) + b.share(k * stride, l * stride),
                List.of(range(a, i * stride, j * stride), range(b, k * stride, l * stride)));
          }
        }
      }
    }
  }

  private static AdjustReport.Range range(Adjuster a, int from, int to) {
    return new AdjustReport.Range(a, a.settings().get(from), a.settings().get(to));
  }

  private void offer(List<Boolean> in, double itsTravel, List<AdjustReport.Range> its) {
    int more = count(in) - count(taken);
    boolean better =
        more > 0 || more == 0 && its.size() == ranges.size() && itsTravel < travel - SAME;
    if (better) {
      ranges = its;
      taken = in;
      travel = itsTravel;
    }
  }

  private List<Boolean> union(List<boolean[]> of) {
    List<Boolean> in = new ArrayList<>();
    for (int i = 0; i < taken.size(); i++) {
      int person = i;
      in.add(of.stream().anyMatch(f -> f[person]));
    }
    return in;
  }

  private static int count(List<Boolean> of) {
    return (int) of.stream().filter(t -> t).count();
  }
}
