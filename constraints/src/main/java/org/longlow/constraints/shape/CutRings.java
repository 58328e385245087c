package org.longlow.constraints.shape;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The edges of a body's cuts, kept while sections along it ask for the same ones again. */
final class CutRings {

  /** Cuts kept of one body; each takes some 5 kB. */
  private static final int KEPT = 2_000;

  private static final Memo<Body, CutRings> ALL = new Memo<>(2, CutRings::new);

  private record Body(Loft loft, int pieces) {}

  private final CutAt cuts;
  private final int pieces;
  private final Map<Double, List<double[]>> rings = new ConcurrentHashMap<>();

  private CutRings(Body body) {
    this.cuts = CutAt.of(body.loft());
    this.pieces = body.pieces();
  }

  static CutRings of(Loft loft, int pieces) {
    return ALL.of(new Body(loft, pieces));
  }

  /** Returns the edge of each cut at a place: height and place across in turn, the first again. */
  List<double[]> at(double x) {
    List<double[]> known = rings.get(x);
    if (known != null) {
      return known;
    }
    List<double[]> made = cuts.at(x, pieces).stream().map(CutRings::flat).toList();
    if (rings.size() < KEPT) {
      rings.put(x, made);
    }
    return made;
  }

  private static double[] flat(Cut cut) {
    List<double[]> ring = cut.ring();
    double[] flat = new double[2 * ring.size() + 2];
    for (int i = 0; i <= ring.size(); i++) {
      double[] p = ring.get(i % ring.size());
      flat[2 * i] = p[0];
      flat[2 * i + 1] = p[1];
    }
    return flat;
  }
}
