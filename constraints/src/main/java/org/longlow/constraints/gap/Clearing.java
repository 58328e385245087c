package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.longlow.constraints.shape.Interval;
import org.longlow.rider.geom.PointMm;

/**
 * What it takes to bring one body away from another by a gap, in every position the two can be in:
 * a shift in the elevation, a shift across the machine, or both sides of it farther out or in.
 *
 * <p>Each figure is the smallest that will do, the gap of a body being that of {@link Solid#to}. In
 * the elevation, corners are kept off along a polygon drawn round their circle, which asks up to
 * {@value #ROUND_SHARE} of the gap too much. Worked out when asked for.
 */
public final class Clearing {

  /** Chords of a quarter circle. */
  private static final int QUADRANT = 16;

  /** Radius of the polygon round a circle, as a share of the circle's: 1/cos(π/64). */
  private static final double ROUND_SHARE = 1.0012060;

  /**
   * A position of two bodies to each other.
   *
   * @param still the body that stays
   * @param moved the body that is to be shifted, in the axes of the shift
   */
  public record Position(Solid still, Solid moved) {}

  private final List<Position> positions;
  private final double gapMm;
  private WayClear elevation;

  /**
   * @param positions every position in which they must keep the gap
   * @param gapMm the gap, mm, &gt;= 0; at 0 they may touch
   */
  public Clearing(List<Position> positions, double gapMm) {
    this.positions = List.copyOf(positions);
    this.gapMm = gapMm;
  }

  /**
   * Returns how deep two bodies are that overlap: the smallest shift that takes one out, mm.
   *
   * @param enoughMm where they are no deeper than this, any depth up to it will do
   */
  static double depthMm(Solid a, Solid b, double enoughMm) {
    Clearing out = new Clearing(List.of(new Position(a, b)), 0);
    return WayClear.mm(out.pairs(), () -> Math.abs(out.acrossMm()), enoughMm);
  }

  /**
   * Returns the smallest shift in the elevation, a ten thousandth of a millimetre beyond where they
   * touch.
   */
  public PointMm elevation() {
    return solved().shift();
  }

  /** Returns the smallest shift in the elevation in tenths of mm, if one near the smallest does. */
  public Optional<PointMm> elevationInTenths() {
    List<WayClear.Pair> pairs = pairs();
    return Tenths.near(elevation(), shift -> WayClear.clears(pairs, shift));
  }

  /** Returns how far they touch in the elevation from where they are, mm. */
  public double elevationMm() {
    return solved().mm();
  }

  private WayClear solved() {
    if (elevation == null) {
      elevation = WayClear.of(pairs());
    }
    return elevation;
  }

  private List<WayClear.Pair> pairs() {
    Map<Edges, Map<Double, Edges>> wider = new IdentityHashMap<>();
    List<WayClear.Pair> pairs = new ArrayList<>();
    for (Position position : positions) {
      for (Face a : position.still().faces()) {
        for (Face b : position.moved().faces()) {
          double across = a.acrossMm(b);
          if (across < gapMm || across < 0) {
            double needed = across > 0 ? Math.sqrt(gapMm * gapMm - across * across) : gapMm;
            pairs.add(
                new WayClear.Pair(
                    a.edges(),
                    wider
                        .computeIfAbsent(b.edges(), e -> new HashMap<>())
                        .computeIfAbsent(needed, n -> wider(b.edges(), n))));
          }
        }
      }
    }
    return pairs;
  }

  /** Returns an outline wider by a distance all round. */
  static Edges wider(Edges edges, double byMm) {
    if (byMm <= 0) {
      return edges;
    }
    Geometry wide = BufferOp.bufferOp(edges.outline(), byMm * ROUND_SHARE, QUADRANT);
    return Edges.of(wide);
  }

  /** Returns the smallest shift across the machine, mm, left positive. */
  public double acrossMm() {
    Across across = new Across();
    tooClose((still, moved, needed) -> forbidSide(across, still, moved, needed));
    return across.least();
  }

  /**
   * Returns how much farther out (positive) or in (negative) both sides of the shifted body must
   * be, mm; infinite where nothing would be left of it. What lies across the middle plane is taken
   * to grow or shrink with them.
   */
  public double apartMm() {
    Across apart = new Across();
    tooClose(
        (still, moved, needed) -> {
          if (moved.from() < 0 && moved.to() > 0) {
            forbidMiddle(apart, still, moved, needed);
          } else if (moved.middle() > 0) {
            forbidSide(apart, still, moved, needed);
          } else {
            forbidSide(apart, still.mirrored(), moved.mirrored(), needed);
          }
        });
    return apart.least();
  }

  /** What grows to both sides never lets go; what shrinks does on the side that is left first. */
  private static void forbidMiddle(Across apart, Interval still, Interval moved, double needed) {
    double narrower = still.gap(moved) - needed;
    boolean gone = narrower <= -moved.length() / 2;
    apart.forbid(gone ? Double.NEGATIVE_INFINITY : narrower, Double.POSITIVE_INFINITY);
  }

  /** Shifts to the left at which they are too close. */
  private static void forbidSide(Across shifts, Interval still, Interval moved, double needed) {
    shifts.forbid(still.from() - moved.to() - needed, still.to() - moved.from() + needed);
  }

  @FunctionalInterface
  private interface Pairs {
    void add(Interval still, Interval moved, double neededMm);
  }

  /** Visits the intervals of outlines that are too close in the elevation to pass each other. */
  private void tooClose(Pairs pairs) {
    for (Position position : positions) {
      for (Face a : position.still().faces()) {
        for (Face b : position.moved().faces()) {
          double side = sideMm(a, b);
          if (side < gapMm || side < 0) {
            double needed = side > 0 ? Math.sqrt(gapMm * gapMm - side * side) : gapMm;
            for (Interval still : a.across()) {
              b.across().forEach(moved -> pairs.add(still, moved, needed));
            }
          }
        }
      }
    }
  }

  /** Returns the distance of two outlines, mm; -1 where they overlap. */
  private double sideMm(Face a, Face b) {
    if (a.apartMm(b) > gapMm) {
      return Double.POSITIVE_INFINITY;
    }
    if (Overlap.isThere(a.edges(), b.edges())) {
      return -1;
    }
    Nearest near = Nearest.of(a.edges(), b.edges(), Math.max(gapMm, Nearest.TOUCH_MM));
    return near == null ? Double.POSITIVE_INFINITY : near.distanceMm();
  }
}
