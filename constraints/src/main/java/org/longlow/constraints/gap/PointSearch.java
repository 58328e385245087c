package org.longlow.constraints.gap;

/** Searches the edge of an outline that is nearest to a point. For one thread and one search. */
final class PointSearch {

  private final Edges edges;
  private final double x;
  private final double z;
  private double best;

  /** The nearest edge, or -1 if none is within the cut. */
  int edge = -1;

  /** Where on that edge, 0 at its start and 1 at its end. */
  double share;

  private PointSearch(Edges edges, double x, double z, double cutMm) {
    this.edges = edges;
    this.x = x;
    this.z = z;
    best = cutMm * cutMm;
  }

  /** Returns the search, done. Of edges equally near the first counts. */
  static PointSearch of(Edges edges, double x, double z, double cutMm) {
    PointSearch search = new PointSearch(edges, x, z, cutMm);
    if (edges.count() > 0 && search.box(1) < search.best) {
      search.descend(1);
    }
    return search;
  }

  double distanceMm() {
    return Math.sqrt(best);
  }

  private double box(int node) {
    int k = 4 * node;
    double dx = Math.max(edges.boxes[k] - x, x - edges.boxes[k + 2]);
    double dz = Math.max(edges.boxes[k + 1] - z, z - edges.boxes[k + 3]);
    return (dx > 0 ? dx * dx : 0) + (dz > 0 ? dz * dz : 0);
  }

  private void descend(int node) {
    if (node >= edges.firstLeaf) {
      int from = Edges.RUN * (node - edges.firstLeaf);
      for (int e = from; e < Math.min(from + Edges.RUN, edges.count()); e++) {
        edge(e);
      }
      return;
    }
    double left = box(2 * node);
    double right = box(2 * node + 1);
    int near = left <= right ? 2 * node : 2 * node + 1;
    if (Math.min(left, right) < best) {
      descend(near);
    }
    if (Math.max(left, right) < best) {
      descend(near ^ 1);
    }
  }

  private void edge(int e) {
    double x0 = edges.ends[4 * e];
    double z0 = edges.ends[4 * e + 1];
    double ux = edges.ends[4 * e + 2] - x0;
    double uz = edges.ends[4 * e + 3] - z0;
    double square = ux * ux + uz * uz;
    double t = square > 0 ? ((x - x0) * ux + (z - z0) * uz) / square : 0;
    t = t < 0 ? 0 : t > 1 ? 1 : t;
    double dx = x - x0 - t * ux;
    double dz = z - z0 - t * uz;
    double d = dx * dx + dz * dz;
    if (d < best) {
      best = d;
      edge = e;
      share = t;
    }
  }
}
