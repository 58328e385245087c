package org.longlow.sketcher.fx;

import java.util.List;
import java.util.stream.Stream;
import org.longlow.rider.geom.PointMm;

/**
 * Where slips of paper lie on the card so that they hide as little as can be. Pure geometry, px.
 */
final class Spots {

  /** How finely places for a slip are tried, px. */
  private static final double STEP_PX = 24;

  /** Hiding what is picked is this much worse than hiding something else. */
  private static final double PICKED_WEIGHT = 40;

  /** A spot this much further from what is picked is as bad as hiding one square pixel more. */
  private static final double AREA_PER_PX = 18;

  private Spots() {}

  /** A rectangle with its corner at the upper left. */
  record Box(double x, double y, double width, double height) {
    double right() {
      return x + width;
    }

    double bottom() {
      return y + height;
    }

    double centreX() {
      return x + width / 2;
    }

    double centreY() {
      return y + height / 2;
    }

    /** Returns a rectangle that reaches farther by as much on each side. */
    Box grown(double by) {
      return new Box(x - by, y - by, width + 2 * by, height + 2 * by);
    }

    double shared(Box that) {
      double w = Math.min(right(), that.right()) - Math.max(x, that.x);
      double h = Math.min(bottom(), that.bottom()) - Math.max(y, that.y);
      return w > 0 && h > 0 ? w * h : 0;
    }

    /** Returns the shortest way between two rectangles; 0 if they touch. */
    double apart(Box that) {
      double dx = Math.max(0, Math.max(x - that.right(), that.x - right()));
      double dy = Math.max(0, Math.max(y - that.bottom(), that.y - bottom()));
      return Math.hypot(dx, dy);
    }
  }

  /**
   * A shape that a slip may have.
   *
   * @param lost what it costs that the slip shows less in it, in square pixels hidden
   */
  record Size(double width, double height, double lost) {
    Size(double width, double height) {
      this(width, height, 0);
    }
  }

  /**
   * What is better not hidden.
   *
   * @param weight how many times worse than anything else of its size it is to hide
   */
  record Busy(Box box, double weight) {}

  /**
   * Returns where and in which of several shapes a slip best lies: off what is picked, over as
   * little else as can be, near it.
   *
   * @param room where it may lie; a slip too large for it lies at its upper left corner
   * @param sizes the shapes it may have, the one liked best first
   * @param picked what the slip is about, or null
   * @param busy what else is better not hidden
   */
  static Box slip(Box room, List<Size> sizes, Box picked, List<Busy> busy) {
    Box best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Size size : sizes) {
      int across = steps(room.width() - size.width());
      int down = steps(room.height() - size.height());
      for (int i = 0; i <= across; i++) {
        for (int k = 0; k <= down; k++) {
          Box at =
              new Box(
                  room.x() + along(room.width() - size.width(), i, across),
                  room.y() + along(room.height() - size.height(), k, down),
                  size.width(),
                  size.height());
          double cost = cost(at, size.lost(), picked, busy, least);
          if (cost < least) {
            least = cost;
            best = at;
          }
        }
      }
    }
    return best;
  }

  /**
   * Returns a slip made as high as it would like where that hides nothing more: downwards, then
   * upwards.
   *
   * @param high how high it would like to be
   */
  static Box grown(Box at, double high, Box room, Box picked, List<Busy> busy) {
    double low = room.bottom();
    double top = room.y();
    for (Box box :
        Stream.concat(Stream.ofNullable(picked), busy.stream().map(Busy::box)).toList()) {
      if (box.x() < at.right() && box.right() > at.x()) {
        low = box.bottom() > at.bottom() ? Math.min(low, Math.max(at.bottom(), box.y())) : low;
        top = box.y() < at.y() ? Math.max(top, Math.min(at.y(), box.bottom())) : top;
      }
    }
    double down = within(high - at.height(), 0, low - at.bottom());
    double up = within(high - at.height() - down, 0, at.y() - top);
    return new Box(at.x(), at.y() - up, at.width(), at.height() + down + up);
  }

  /** Returns what a place costs; no more of it is reckoned than shows that it costs too much. */
  private static double cost(Box at, double lost, Box picked, List<Busy> busy, double most) {
    double cost = lost;
    if (picked != null) {
      cost += PICKED_WEIGHT * at.shared(picked) + AREA_PER_PX * at.apart(picked);
    }
    for (int i = 0; i < busy.size() && cost < most; i++) {
      cost += busy.get(i).weight() * at.shared(busy.get(i).box());
    }
    return cost;
  }

  /**
   * Returns where words beside a place are best read: to the right of it and below, or else on
   * another side, wherever most of them is seen; inside of the room as far as they fit into it.
   *
   * @param across left free between the place and the words, px
   * @param down likewise above or below it
   * @param room where they are seen at all
   * @param over what lies over them
   */
  static Box beside(
      PointMm place, Size size, double across, double down, Box room, List<Box> over) {
    Box best = null;
    double least = Double.POSITIVE_INFINITY;
    for (boolean above : new boolean[] {false, true}) {
      for (boolean left : new boolean[] {false, true}) {
        double x = left ? place.x() - across - size.width() : place.x() + across;
        double y = above ? place.z() - down - size.height() : place.z() + down;
        Box at = new Box(x, y, size.width(), size.height());
        double unseen = size.width() * size.height() - at.shared(room);
        for (Box slip : over) {
          unseen += at.shared(slip);
        }
        if (unseen < least) {
          least = unseen;
          best = at;
        }
      }
    }
    double x = Math.max(room.x(), Math.min(best.x(), room.right() - size.width()));
    double y = Math.max(room.y(), Math.min(best.y(), room.bottom() - size.height()));
    return new Box(x, y, size.width(), size.height());
  }

  private static int steps(double free) {
    return Math.max(0, (int) Math.ceil(free / STEP_PX));
  }

  private static double along(double free, int i, int steps) {
    return steps == 0 ? 0 : free * i / steps;
  }

  /**
   * Returns the left edges of things hung in a row, in their order, none over another, each as near
   * to where it is wanted as the others allow (least squares; pool of adjacent violators, as Ayer
   * and others gave it in 1955).
   *
   * @param wanted left edges, rising
   * @param widths of the things, &ge; 0
   * @param from where the row may begin
   * @param to where it must end; a row that is too long begins at {@code from}
   * @param gap between two of them
   */
  static double[] row(double[] wanted, double[] widths, double from, double to, double gap) {
    int n = wanted.length;
    double[] before = new double[n];
    for (int i = 1; i < n; i++) {
      before[i] = before[i - 1] + widths[i - 1] + gap;
    }
    double[] mean = new double[n];
    int[] size = new int[n];
    int pools = 0;
    for (int i = 0; i < n; i++) {
      mean[pools] = wanted[i] - before[i];
      size[pools++] = 1;
      while (pools > 1 && mean[pools - 2] > mean[pools - 1]) {
        int both = size[pools - 2] + size[pools - 1];
        mean[pools - 2] =
            (mean[pools - 2] * size[pools - 2] + mean[pools - 1] * size[pools - 1]) / both;
        size[pools - 2] = both;
        pools--;
      }
    }
    double[] left = new double[n];
    double last = n == 0 ? from : Math.max(from, to - before[n - 1] - widths[n - 1]);
    for (int p = 0, i = 0; p < pools; p++) {
      for (int k = 0; k < size[p]; k++, i++) {
        left[i] = Math.max(from, Math.min(last, mean[p])) + before[i];
      }
    }
    return left;
  }

  /** Returns a value as far as it lies between two; the first if they are the wrong way round. */
  static double within(double v, double from, double to) {
    return Math.max(from, Math.min(Math.max(from, to), v));
  }
}
