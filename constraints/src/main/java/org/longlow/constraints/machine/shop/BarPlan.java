package org.longlow.constraints.machine.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.longlow.constraints.machine.Values;

/**
 * Which pieces are cut from which bar, so that as few bars are needed as can be found.
 *
 * <p>A cut takes its kerf between two pieces and between the last piece and what is left over; a
 * last piece that ends with the bar needs none. So pieces longer by a kerf fill a bar longer by a
 * kerf. Fewer bars than {@link #leastBars} cannot do (bound L2 of Martello and Toth, 1990, from
 * memory, raised where the search shows that more are needed); more than longest first, each into
 * the first bar with room, are never taken. How long is searched is a count of tries, so that the
 * same pieces give the same plan on any machine.
 *
 * @param barMm length of a bar, mm
 * @param kerfMm what a cut takes away, mm
 * @param bars what is cut from each, longest piece first
 * @param tooLong pieces that are longer than a bar
 * @param leastBars no plan for the others needs fewer
 */
public record BarPlan(
    double barMm, double kerfMm, List<Bar> bars, List<Integer> tooLong, int leastBars) {

  /** Tries in search of a plan with fewer bars. */
  private static final int TRIES = 200_000;

  /** Lengths nearer than this are the same, mm. */
  private static final double SAME_MM = 1e-6;

  public BarPlan {
    bars = List.copyOf(bars);
    tooLong = List.copyOf(tooLong);
  }

  /**
   * One bar.
   *
   * @param pieces their numbers in the list given, from 0
   * @param leftMm what is left over, mm
   */
  public record Bar(List<Integer> pieces, double leftMm) {
    public Bar {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * Returns a plan.
   *
   * @param lengthsMm of the pieces, mm, each more than 0
   * @param barMm length of a bar, mm, more than 0
   * @param kerfMm what a cut takes away, mm, 0 or more
   */
  public static BarPlan of(List<Double> lengthsMm, double barMm, double kerfMm) {
    Values.positive("bar mm", barMm);
    Values.notNegative("kerf mm", kerfMm);
    lengthsMm.forEach(l -> Values.positive("length of a piece mm", l));
    List<Integer> tooLong =
        IntStream.range(0, lengthsMm.size())
            .filter(i -> lengthsMm.get(i) > barMm + SAME_MM)
            .boxed()
            .toList();
    List<Integer> order =
        IntStream.range(0, lengthsMm.size())
            .boxed()
            .filter(i -> lengthsMm.get(i) <= barMm + SAME_MM)
            .sorted(Comparator.comparing((Integer i) -> -lengthsMm.get(i)))
            .toList();
    double[] sizes = order.stream().mapToDouble(i -> lengthsMm.get(i) + kerfMm).toArray();
    double room = barMm + kerfMm;
    int[] best = firstFit(sizes, room);
    int least = least(sizes, room);
    Search search = new Search(sizes, room);
    while (least < count(best) && search.left > 0) {
      int[] fewer = search.into(least);
      if (fewer != null) {
        best = fewer;
      } else if (search.left > 0) {
        least++;
      }
    }
    return new BarPlan(barMm, kerfMm, bars(best, order, lengthsMm, barMm, kerfMm), tooLong, least);
  }

  private static List<Bar> bars(
      int[] bars, List<Integer> order, List<Double> lengthsMm, double barMm, double kerfMm) {
    List<Bar> out = new ArrayList<>();
    for (int b = 0; b < count(bars); b++) {
      List<Integer> pieces = new ArrayList<>();
      double used = 0;
      for (int i = 0; i < bars.length; i++) {
        if (bars[i] == b) {
          pieces.add(order.get(i));
          used += lengthsMm.get(order.get(i)) + kerfMm;
        }
      }
      double left = barMm - used;
      // the saw takes what is shorter than its kerf
      out.add(new Bar(pieces, left < SAME_MM ? 0 : left));
    }
    return out;
  }

  private static int count(int[] bars) {
    return Arrays.stream(bars).max().orElse(-1) + 1;
  }

  /** Returns the bar of each piece: the first with room, longest pieces first. */
  private static int[] firstFit(double[] sizes, double room) {
    int[] bars = new int[sizes.length];
    double[] free = new double[sizes.length];
    Arrays.fill(free, room);
    for (int i = 0; i < sizes.length; i++) {
      while (sizes[i] > free[bars[i]] + SAME_MM) {
        bars[i]++;
      }
      free[bars[i]] -= sizes[i];
    }
    return bars;
  }

  /** Returns how many bars are needed at least. */
  private static int least(double[] sizes, double room) {
    int least = 0;
    for (int k = 0; k <= sizes.length; k++) {
      double small = k == 0 ? 0 : sizes[k - 1];
      if (small > room / 2) {
        continue;
      }
      int large = 0;
      double rest = 0;
      for (double size : sizes) {
        if (size > room / 2 + SAME_MM) {
          large++;
          // beside what is larger than this nothing small has room
          rest -= size > room - small + SAME_MM ? 0 : room - size;
        } else if (size >= small - SAME_MM) {
          rest += size;
        }
      }
      least = Math.max(least, large + (int) Math.ceil(Math.max(0, rest - SAME_MM) / room));
    }
    return least;
  }

  /** Goes through ways to fill so many bars, until the tries are used up. */
  private static final class Search {
    private final double[] sizes;
    private final double room;
    private int left = TRIES;
    private int[] bars;
    private double[] free;

    Search(double[] sizes, double room) {
      this.sizes = sizes;
      this.room = room;
    }

    /** Returns the bar of each piece, or null where none was found. */
    int[] into(int count) {
      bars = new int[sizes.length];
      free = new double[count];
      Arrays.fill(free, room);
      double air = count * room - Arrays.stream(sizes).sum();
      return put(0, air) ? bars : null;
    }

    /**
     * @param air what may be left over in all bars together
     */
    private boolean put(int piece, double air) {
      if (piece == sizes.length) {
        return true;
      }
      // pieces alike go into bars in turn, else each swap of them would be tried
      int from = piece > 0 && sizes[piece] > sizes[piece - 1] - SAME_MM ? bars[piece - 1] : 0;
      for (int b = from; b < free.length; b++) {
        double before = free[b];
        if (sizes[piece] > before + SAME_MM || alike(b, from)) {
          continue;
        }
        if (--left <= 0) {
          return false;
        }
        bars[piece] = b;
        free[b] = before - sizes[piece];
        // what no later piece fits into is lost
        double lost =
            piece + 1 < sizes.length && free[b] < sizes[sizes.length - 1] - SAME_MM ? free[b] : 0;
        if (lost <= air + SAME_MM && put(piece + 1, air - lost)) {
          return true;
        }
        free[b] = before;
      }
      return false;
    }

    /** Whether a bar tried before has the same room. */
    private boolean alike(int bar, int from) {
      for (int b = from; b < bar; b++) {
        if (Math.abs(free[b] - free[bar]) < SAME_MM) {
          return true;
        }
      }
      return false;
    }
  }
}
