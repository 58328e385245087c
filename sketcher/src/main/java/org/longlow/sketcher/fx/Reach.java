package org.longlow.sketcher.fx;

import java.util.Optional;

/** How far what is painted reaches on the card, px. */
final class Reach {

  /** What smoothed edges, and hinted letters, may reach beyond their shape, px. */
  static final double SMOOTHED_PX = 2;

  private Reach() {}

  /** Returns a box that reaches farther to all sides. */
  static Spots.Box grown(Spots.Box box, double by) {
    return new Spots.Box(box.x() - by, box.y() - by, box.width() + 2 * by, box.height() + 2 * by);
  }

  /** Returns what two boxes share; empty if nothing. */
  static Optional<Spots.Box> shared(Spots.Box a, Spots.Box b) {
    double x = Math.max(a.x(), b.x());
    double y = Math.max(a.y(), b.y());
    double wide = Math.min(a.right(), b.right()) - x;
    double high = Math.min(a.bottom(), b.bottom()) - y;
    return wide > 0 && high > 0 ? Optional.of(new Spots.Box(x, y, wide, high)) : Optional.empty();
  }

  /** Returns the box round two boxes. */
  static Spots.Box round(Spots.Box a, Spots.Box b) {
    double x = Math.min(a.x(), b.x());
    double y = Math.min(a.y(), b.y());
    return new Spots.Box(
        x, y, Math.max(a.right(), b.right()) - x, Math.max(a.bottom(), b.bottom()) - y);
  }

  /**
   * Returns a box round what lies within {@code px} of straight pieces between points that follow
   * each other.
   *
   * @param beside how far they are painted to all sides
   */
  static Optional<Spots.Box> ofLine(double[] x, double[] y, double beside, Spots.Box px) {
    Spots.Box wider = grown(px, beside);
    Spots.Box all = null;
    for (int i = 1; i < x.length; i++) {
      Spots.Box piece = piece(x[i - 1], y[i - 1], x[i], y[i], wider);
      if (piece != null) {
        all = all == null ? piece : round(all, piece);
      }
    }
    return all == null ? Optional.empty() : shared(grown(all, beside), px);
  }

  /** Returns the box round the part of a straight line that lies within a box; null if none. */
  private static Spots.Box piece(double x1, double y1, double x2, double y2, Spots.Box box) {
    double[] from = {0, 1};
    if (!cut(x1, x2 - x1, box.x(), box.right(), from)
        || !cut(y1, y2 - y1, box.y(), box.bottom(), from)) {
      return null;
    }
    double ax = x1 + from[0] * (x2 - x1);
    double ay = y1 + from[0] * (y2 - y1);
    double bx = x1 + from[1] * (x2 - x1);
    double by = y1 + from[1] * (y2 - y1);
    return new Spots.Box(Math.min(ax, bx), Math.min(ay, by), Math.abs(bx - ax), Math.abs(by - ay));
  }

  /** Narrows the shares of a line between which it lies between two bounds; false if none does. */
  private static boolean cut(double start, double along, double least, double most, double[] from) {
    if (along == 0) {
      return start >= least && start <= most;
    }
    double a = (least - start) / along;
    double b = (most - start) / along;
    from[0] = Math.max(from[0], Math.min(a, b));
    from[1] = Math.min(from[1], Math.max(a, b));
    return from[0] <= from[1];
  }
}
