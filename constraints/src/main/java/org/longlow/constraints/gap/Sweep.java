package org.longlow.constraints.gap;

import java.util.HashMap;
import java.util.Map;
import java.util.WeakHashMap;
import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.machine.linkage.Moving;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/**
 * The gap between a body that moves on a known way and one that stays, over the whole way.
 *
 * <p>Nothing is missed between positions: a gap changes by no more than any point of the body moves
 * (conservative advancement, after Mirtich), which {@link Moving#swing} bounds; a range of openings
 * is split until the gap in its middle exceeds what is asked by that, or no point moves more than
 * {@link #BOUND_MM} from there. Not for several threads.
 */
public final class Sweep {

  /** Gaps are found to within this, mm. */
  public static final double BOUND_MM = 0.1;

  /** Judgement: of what is deeper in each other than this, a millimetre does not matter, mm. */
  public static final double DEEP_MM = 100;

  /** To this share of itself such a depth is found. */
  public static final double DEEP_SHARE = 0.05;

  /** After so many looks for the least gap of two bodies, and again each time, half as closely. */
  private static final int LOOKS = 512;

  private static final int MOST_HALVINGS = 20;

  /** No range of openings is split finer: beside a dead point the section whirls. */
  private static final double LEAST_OPENING = 1e-6;

  /** So many parts of the way are looked at first. */
  private static final int COARSE = 16;

  /** Cuts of two such parts about the least: openings to two thousandths. */
  private static final int FINER = 8;

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /** What is found at whole parts of this is kept; finer openings are too many. */
  private static final int KEPT_PARTS = 64;

  private record Range(double from, double to) {}

  private final Moving motion;
  private final Map<Range, Moving.Swing> swings = new HashMap<>();
  private final Map<Double, RigidMotion> motions = new HashMap<>();
  // bodies tried as remedies come and go
  private final Map<Solid, Map<Double, Solid>> moved = new WeakHashMap<>();
  private final Map<Solid, Double> reach = new WeakHashMap<>();

  public Sweep(Moving motion) {
    this.motion = motion;
  }

  /** Returns the motion from shut to an opening. */
  public RigidMotion motion(double opening) {
    return isKept(opening) ? motions.computeIfAbsent(opening, motion::at) : motion.at(opening);
  }

  /** Returns a body of the section at an opening. */
  public Solid at(Solid body, double opening) {
    if (opening == 0) {
      return body;
    }
    if (!isKept(opening)) {
      return body.moved(motion(opening));
    }
    return moved
        .computeIfAbsent(body, b -> new HashMap<>())
        .computeIfAbsent(opening, o -> body.moved(motion(o)));
  }

  private Moving.Swing swing(double from, double to) {
    return isKept(from) && isKept(to)
        ? swings.computeIfAbsent(new Range(from, to), r -> motion.swing(from, to))
        : motion.swing(from, to);
  }

  private static boolean isKept(double opening) {
    return opening * KEPT_PARTS == Math.rint(opening * KEPT_PARTS);
  }

  /** Returns how far at most a point of the body moves away from the middle of a range, mm. */
  private double mostMm(Solid body, double from, double to) {
    double middle = (from + to) / 2;
    Moving.Swing back = swing(from, middle);
    Moving.Swing on = swing(middle, to);
    double radius = reach.computeIfAbsent(body, b -> b.reachMm(back.pole()));
    return Math.max(back.mostMm(radius), on.mostMm(radius));
  }

  /**
   * Returns the first opening found at which the gap is smaller than asked, or NaN if it is nowhere
   * smaller by more than {@link #BOUND_MM}.
   *
   * @param body of the section, shut
   */
  public double firstBelow(Solid body, Solid other, double gapMm) {
    if (body.leastAcrossMm(other) >= gapMm) {
      return Double.NaN; // the way does not lead across the machine
    }
    if (below(body, other, 0, gapMm)) {
      return 0;
    }
    double found = firstBelow(body, other, gapMm, 0, 1);
    return Double.isNaN(found) && below(body, other, 1, gapMm) ? 1 : found;
  }

  private boolean below(Solid body, Solid other, double opening, double gapMm) {
    return at(body, opening).apartMm(other, Math.max(gapMm, 0)) < gapMm;
  }

  private double firstBelow(Solid body, Solid other, double gapMm, double from, double to) {
    double middle = (from + to) / 2;
    double most = mostMm(body, from, to);
    if (most <= BOUND_MM || to - from < LEAST_OPENING) {
      return below(body, other, middle, gapMm) ? middle : Double.NaN;
    }
    double enough = gapMm + most - BOUND_MM;
    double apart = at(body, middle).apartMm(other, enough);
    if (apart >= enough) {
      return Double.NaN;
    }
    double before = firstBelow(body, other, gapMm, from, middle);
    if (!Double.isNaN(before)) {
      return before;
    }
    return apart < gapMm ? middle : firstBelow(body, other, gapMm, middle, to);
  }

  /**
   * An opening and the gap there.
   *
   * @param withinMm nowhere is the gap smaller by more than this
   */
  public record Worst(double opening, Gap gap, double withinMm) {}

  /**
   * Returns where the gap is smallest, to within {@link #BOUND_MM}; where two bodies are deeper in
   * each other than {@link #DEEP_MM}, to within {@link #DEEP_SHARE} of that, and where very much
   * had to be looked at, to within as much as it says. That holds for depths of overlap as long as
   * the way out stays open: where a pocket shuts, the depth leaps.
   *
   * @param from where to begin, 0 shut to 1 open
   */
  public Worst worst(Solid body, Solid other, double from) {
    return new Least(body, other).of(from);
  }

  /** The search for the least gap of two bodies. */
  private final class Least {

    private final Solid body;
    private final Solid other;
    private Gap gap;
    private double opening;
    private double withinMm = BOUND_MM;
    private int looks;

    Least(Solid body, Solid other) {
      this.body = body;
      this.other = other;
    }

    Worst of(double from) {
      look(from);
      look(1);
      // a coarse look all along the way first, so that most of it need not be looked at again
      for (int k = 1; k < COARSE; k++) {
        look(from + (1 - from) * k / COARSE);
      }
      for (int k = 0; k < COARSE; k++) {
        within(from + (1 - from) * k / COARSE, from + (1 - from) * (k + 1) / COARSE);
      }
      return new Worst(opening, gap, withinMm);
    }

    private void look(double at) {
      better(at, at(body, at).to(other, gap == null ? Double.MAX_VALUE : gap.gapMm()));
    }

    private void better(double at, Gap found) {
      if (found != null && (gap == null || found.gapMm() < gap.gapMm())) {
        gap = found;
        opening = at;
      }
    }

    /** How closely it is looked from here on: less as it gets deep, or takes long. */
    private double boundMm() {
      double deep = gap.gapMm() < -DEEP_MM ? -gap.gapMm() * DEEP_SHARE : 0;
      double bound = Math.max(BOUND_MM, deep) * (1 << Math.min(looks / LOOKS, MOST_HALVINGS));
      withinMm = Math.max(withinMm, bound);
      return bound;
    }

    private void within(double from, double to) {
      double middle = (from + to) / 2;
      double most = mostMm(body, from, to);
      double bound = boundMm();
      double cut = gap.gapMm() + Math.max(0, most - bound);
      looks++;
      Solid there = at(body, middle);
      Gap found = there.near(other, cut) ? there.to(other, cut) : null;
      if (found == null) {
        return;
      }
      better(middle, found);
      if (most <= bound || to - from < LEAST_OPENING) {
        return;
      }
      within(from, middle);
      within(middle, to);
    }
  }

  /**
   * Returns the opening at which a height is least, to within {@link #BOUND_MM}.
   *
   * @param body of the section, shut
   * @param heightMm of its lowest point at an opening, which changes by no more than points move
   */
  public double lowest(Solid body, DoubleUnaryOperator heightMm) {
    double[] best = {0, heightMm.applyAsDouble(0)};
    lower(best, 1, heightMm.applyAsDouble(1));
    lowest(body, heightMm, best, 0, 1);
    return best[0];
  }

  /**
   * Returns a box in the elevation that holds a body all along the way.
   *
   * @param shut one that holds it shut
   */
  public Envelope room(Solid body, Envelope shut) {
    Envelope room = new Envelope(shut);
    for (int k = 0; k < COARSE; k++) {
      double from = (double) k / COARSE;
      double to = (k + 1.0) / COARSE;
      RigidMotion there = motion((from + to) / 2);
      Envelope part = new Envelope();
      for (double x : new double[] {shut.getMinX(), shut.getMaxX()}) {
        for (double z : new double[] {shut.getMinY(), shut.getMaxY()}) {
          PointMm corner = there.apply(new PointMm(x, z));
          part.expandToInclude(corner.x(), corner.z());
        }
      }
      part.expandBy(mostMm(body, from, to));
      room.expandToInclude(part);
    }
    return room;
  }

  private static void lower(double[] best, double at, double mm) {
    if (mm < best[1]) {
      best[0] = at;
      best[1] = mm;
    }
  }

  private void lowest(
      Solid body, DoubleUnaryOperator heightMm, double[] best, double from, double to) {
    double middle = (from + to) / 2;
    double most = mostMm(body, from, to);
    double there = heightMm.applyAsDouble(middle);
    lower(best, middle, there);
    if (there - most < best[1] - BOUND_MM && to - from >= LEAST_OPENING) {
      lowest(body, heightMm, best, from, middle);
      lowest(body, heightMm, best, middle, to);
    }
  }

  /**
   * Returns the opening, 0 shut to 1 open, at which a figure that changes smoothly with it is
   * least: the least of a coarse look all along the way, and between its neighbours.
   */
  public static double least(DoubleUnaryOperator figure) {
    double best = 0;
    double least = figure.applyAsDouble(0);
    for (int k = 1; k <= COARSE; k++) {
      double here = figure.applyAsDouble((double) k / COARSE);
      if (here < least) {
        least = here;
        best = (double) k / COARSE;
      }
    }
    double from = Math.max(0, best - 1.0 / COARSE);
    double to = Math.min(1, best + 1.0 / COARSE);
    double a = to - GOLDEN * (to - from);
    double b = from + GOLDEN * (to - from);
    double atA = figure.applyAsDouble(a);
    double atB = figure.applyAsDouble(b);
    for (int i = 0; i < FINER; i++) {
      if (atA < atB) {
        to = b;
        b = a;
        atB = atA;
        a = to - GOLDEN * (to - from);
        atA = figure.applyAsDouble(a);
      } else {
        from = a;
        a = b;
        atA = atB;
        b = from + GOLDEN * (to - from);
        atB = figure.applyAsDouble(b);
      }
    }
    double between = (from + to) / 2;
    return figure.applyAsDouble(between) < least ? between : best;
  }
}
