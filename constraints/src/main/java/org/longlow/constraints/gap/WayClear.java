package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.DoubleSupplier;
import org.longlow.rider.geom.PointMm;

/**
 * The smallest shift in the elevation that takes outlines out of others.
 *
 * <p>The shifts at which any of the pairs meets are a union of Minkowski sums. The nearest shift
 * outside it is the foot of a perpendicular on one of the segments of {@link Sums}, or an inner
 * corner, where two of them cross. All these are tried, the smallest first, each by shifting the
 * outlines and looking whether they still overlap; so the answer always clears, and is the smallest
 * that does.
 */
final class WayClear {

  /** How far past the edge of what is forbidden a shift is taken, mm. */
  static final double PAST_MM = 1e-4;

  /** Most segments whose crossings are tried; of more, the nearest. */
  private static final int MOST_SEGMENTS = 2000;

  /** Most shifts tried. */
  private static final int MOST_TRIALS = 20_000;

  /** Places on a segment are off it by less, mm. */
  private static final double ROUNDING_MM = 1e-6;

  /** Directions in which the way out of everything at once is measured first. */
  private static final int ROUND = 32;

  /** Two outlines, the second of which is shifted. */
  record Pair(Edges still, Edges moved) {}

  private final List<Pair> pairs;
  private final Sums sums = new Sums();
  private PointMm best;
  private double bestMm;
  private int trials;
  private int lastMet;

  private WayClear(List<Pair> pairs) {
    this.pairs = pairs;
  }

  /** Returns the smallest shift of the second outlines after which no pair overlaps. */
  static WayClear of(List<Pair> pairs) {
    WayClear search = new WayClear(pairs);
    if (search.clears(PointMm.ORIGIN)) {
      search.best = PointMm.ORIGIN;
      return search;
    }
    search.outOfAll();
    search.inside(0);
    return search;
  }

  /**
   * Returns the length of the smallest such shift of outlines that overlap, mm, or another way out
   * of them if that is shorter.
   *
   * @param another its length, mm; asked only where it matters
   * @param enoughMm where some way of no more than this clears them, any such length will do
   */
  static double mm(List<Pair> pairs, DoubleSupplier another, double enoughMm) {
    WayClear search = new WayClear(pairs);
    search.outOfAll();
    if (search.bestMm > enoughMm) {
      search.bestMm = Math.min(search.bestMm, another.getAsDouble());
    }
    if (search.bestMm > enoughMm) {
      search.inside(enoughMm);
    }
    return search.bestMm;
  }

  /** Returns whether no pair overlaps after a shift of the second outlines. */
  static boolean clears(List<Pair> pairs, PointMm shift) {
    return new WayClear(pairs).clears(shift);
  }

  /** Returns the shift, past what is forbidden by no more than {@link #PAST_MM}. */
  PointMm shift() {
    return best;
  }

  /** Returns how far the edge of what is forbidden is, mm. */
  double mm() {
    return bestMm;
  }

  private boolean clears(PointMm shift) {
    trials++;
    // whatever was met last is likely to be met again
    for (int k = 0; k < pairs.size(); k++) {
      int at = k == 0 ? lastMet : k <= lastMet ? k - 1 : k;
      if (meet(pairs.get(at), shift)) {
        lastMet = at;
        return false;
      }
    }
    return true;
  }

  private static boolean meet(Pair pair, PointMm shift) {
    double[] p = pair.still().boxes;
    double[] q = pair.moved().boxes;
    if (p[4] >= q[6] + shift.x()
        || q[4] + shift.x() >= p[6]
        || p[5] >= q[7] + shift.z()
        || q[5] + shift.z() >= p[7]) {
      return false;
    }
    return Overlap.isThere(pair.still(), pair.moved().shifted(shift));
  }

  /** Beyond everything, in the best of some directions. */
  private void outOfAll() {
    bestMm = Double.POSITIVE_INFINITY;
    for (int k = 0; k < ROUND; k++) {
      PointMm u = PointMm.unit(2 * Math.PI * k / ROUND);
      Map<Edges, Double> still = new IdentityHashMap<>();
      Map<Edges, Double> moved = new IdentityHashMap<>();
      double far = 0;
      for (Pair pair : pairs) {
        far =
            Math.max(
                far,
                still.computeIfAbsent(pair.still(), e -> e.mostMm(u))
                    + moved.computeIfAbsent(pair.moved(), e -> e.mostMm(u.times(-1))));
      }
      if (far < bestMm) {
        bestMm = far;
        best = u.times(far + PAST_MM);
      }
    }
  }

  /** Nearer than the best so far, unless that is enough. */
  private void inside(double enoughMm) {
    for (Pair pair : pairs) {
      sums.add(pair.still(), pair.moved(), bestMm);
    }
    feet();
    if (bestMm > enoughMm) {
      crossings();
    }
  }

  /** A shift on the edge of what is forbidden, its length, and the segments it lies on. */
  private record Trial(double x, double z, double mm, int one, int two, int nth) {
    Trial(double x, double z, int one, int two, int nth) {
      this(x, z, Math.sqrt(x * x + z * z), one, two, nth);
    }
  }

  private static final Comparator<Trial> NEAREST =
      Comparator.comparingDouble(Trial::mm)
          .thenComparingDouble(Trial::x)
          .thenComparingDouble(Trial::z)
          .thenComparingInt(Trial::nth);

  private void feet() {
    List<Trial> feet = new ArrayList<>();
    for (int k = 0; k < sums.count(); k++) {
      double x0 = sums.at(k, 0);
      double z0 = sums.at(k, 1);
      double ux = sums.at(k, 2) - x0;
      double uz = sums.at(k, 3) - z0;
      double length = Math.hypot(ux, uz);
      double along = -(x0 * ux + z0 * uz) / (length * length);
      double off = (x0 * uz - z0 * ux) / length;
      if (along >= 0 && along <= 1 && off >= 0 && off < bestMm) {
        feet.add(new Trial(off * uz / length, -off * ux / length, k, k, k));
      }
    }
    feet.sort(NEAREST);
    for (Trial foot : feet) {
      if (isLast(foot)) {
        return;
      }
    }
  }

  private void crossings() {
    List<Integer> near = new ArrayList<>();
    double[] distance = new double[sums.count()];
    for (int k = 0; k < sums.count(); k++) {
      distance[k] = Sums.toSegmentMm2(sums.at(k, 0), sums.at(k, 1), sums.at(k, 2), sums.at(k, 3));
      if (distance[k] < bestMm * bestMm) {
        near.add(k);
      }
    }
    near.sort(Comparator.comparingDouble(k -> distance[k]));
    int[] order = near.stream().mapToInt(k -> k).limit(MOST_SEGMENTS).toArray();
    PriorityQueue<Trial> waiting = new PriorityQueue<>(NEAREST);
    Bins bins = new Bins(bestMm, ROUNDING_MM);
    for (int i = 0; i < order.length; i++) {
      // no crossing on this segment or on a later one is nearer
      double least = Math.sqrt(distance[order[i]]) - ROUNDING_MM;
      while (!waiting.isEmpty() && waiting.peek().mm() < least) {
        if (isLast(waiting.poll())) {
          return;
        }
      }
      int k = order[i];
      BitSet met = bins.meeting(i, sums.at(k, 0), sums.at(k, 1), sums.at(k, 2), sums.at(k, 3));
      for (int j = met.nextSetBit(0); j >= 0; j = met.nextSetBit(j + 1)) {
        Trial trial = crossing(order[i], order[j], i * MOST_SEGMENTS + j);
        if (trial != null) {
          waiting.add(trial);
        }
      }
    }
    while (!waiting.isEmpty()) {
      if (isLast(waiting.poll())) {
        return;
      }
    }
  }

  /**
   * Where two segments cross at a corner that sticks into the sum: nearest to no shift only if that
   * lies between the two normals.
   */
  private Trial crossing(int i, int j, int nth) {
    double px = sums.at(i, 0);
    double pz = sums.at(i, 1);
    double ux = sums.at(i, 2) - px;
    double uz = sums.at(i, 3) - pz;
    double qx = sums.at(j, 0);
    double qz = sums.at(j, 1);
    double vx = sums.at(j, 2) - qx;
    double vz = sums.at(j, 3) - qz;
    double cross = ux * vz - uz * vx;
    if (cross == 0) {
      return null;
    }
    double t = ((qx - px) * vz - (qz - pz) * vx) / cross;
    if (!(t >= 0 && t <= 1)) {
      return null;
    }
    double s = ((qx - px) * uz - (qz - pz) * ux) / cross;
    if (!(s >= 0 && s <= 1)) {
      return null;
    }
    double x = px + t * ux;
    double z = pz + t * uz;
    if (x * x + z * z >= bestMm * bestMm) {
      return null;
    }
    // outward normals (uz, -ux) and (vz, -vx): x = l1·n1 + l2·n2 with both not negative
    double l1 = (-x * vx - z * vz) / cross;
    double l2 = (x * ux + z * uz) / cross;
    if (l1 < 0 || l2 < 0) {
      return null;
    }
    return new Trial(x, z, i, j, nth);
  }

  /** Returns whether no trial after this one matters: it clears, or is too long or one too many. */
  private boolean isLast(Trial trial) {
    if (trial.mm() >= bestMm || trials > MOST_TRIALS) {
      return true;
    }
    PointMm out = out(trial);
    if (!(out.length() > 0)) {
      return false; // two segments that run against each other
    }
    PointMm shift = new PointMm(trial.x() + PAST_MM * out.x(), trial.z() + PAST_MM * out.z());
    if (!clears(shift)) {
      return false;
    }
    best = shift;
    bestMm = trial.mm();
    return true;
  }

  /** The way from a trial out of what is forbidden, past all its segments. */
  private PointMm out(Trial trial) {
    PointMm out = outwards(trial.one());
    if (trial.one() == trial.two()) {
      return out;
    }
    PointMm both = out.plus(outwards(trial.two()));
    double length = Math.hypot(both.x(), both.z());
    return length > 0 ? new PointMm(both.x() / length, both.z() / length) : PointMm.ORIGIN;
  }

  private PointMm outwards(int k) {
    double ux = sums.at(k, 2) - sums.at(k, 0);
    double uz = sums.at(k, 3) - sums.at(k, 1);
    double length = Math.hypot(ux, uz);
    return new PointMm(uz / length, -ux / length);
  }
}
