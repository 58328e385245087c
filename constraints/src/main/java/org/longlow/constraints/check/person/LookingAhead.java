package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Sight;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/**
 * A thing straight ahead of the eye, in the road's axes.
 *
 * @param part which part
 * @param clear whether one may look through it
 * @param corner its corner that stands highest before the eye
 * @param under its corner that stands lowest before the eye
 * @param overhead whether one looks under it: it reaches over the level of the eye, and between it
 *     and what stands below there is sight; it hides the road beyond its lower edge, if any
 */
record LookingAhead(String part, boolean clear, PointMm corner, PointMm under, boolean overhead) {

  /** Half the width that counts as straight ahead of the rider, mm; judgement. */
  private static final double AHEAD_MM = 40;

  /** Steeper than this a line of sight is taken as straight up. */
  private static final double STEEP = Math.tan(Math.toRadians(80));

  /** What sight and views ask of the same eyes, one after the other, on several threads. */
  private static final Memo<Eye, List<LookingAhead>> AHEAD =
      new Memo<>(32, at -> ahead(at.eye, at.standing));

  private static final String GLAZING = Material.POLYCARBONATE.word();

  /** An eye over a machine as it stands, which object tells. */
  private record Eye(PointMm eye, Standing standing) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Eye e && e.standing == standing && e.eye.equals(eye);
    }

    @Override
    public int hashCode() {
      return 31 * System.identityHashCode(standing) + eye.hashCode();
    }
  }

  /** Returns each thing straight ahead. */
  static List<LookingAhead> of(PointMm eye, Standing standing) {
    return AHEAD.of(new Eye(eye, standing));
  }

  private static List<LookingAhead> ahead(PointMm eye, Standing standing) {
    UnaryOperator<PointMm> road = standing.ground().ontoRoad();
    List<Chain> chains = new ArrayList<>();
    Interval middle = new Interval(-AHEAD_MM, AHEAD_MM);
    for (PartShape shape : standing.shapes().values()) {
      for (Prism prism : shape.prisms()) {
        if (prism.across().gap(middle) <= 0
            && !isBehind(prism.outline().getEnvelopeInternal(), eye, road)) {
          for (int i = 0; i < prism.outline().getNumGeometries(); i++) {
            Coordinate[] corners = corners(prism.outline().getGeometryN(i));
            Chain.of(shape.part(), eye, standing.ground().onRoad(corners), chains);
          }
        }
      }
    }
    List<Chain> below = chains.stream().filter(c -> c.hi < 0).toList();
    return chains.stream().map(c -> c.thing(eye, below)).toList();
  }

  /** Whether all of a box is behind the eye for sure: no corner in it is ahead. */
  private static boolean isBehind(Envelope box, PointMm eye, UnaryOperator<PointMm> road) {
    double sure = eye.x() - 1;
    return road.apply(new PointMm(box.getMaxX(), box.getMinY())).x() < sure
        && road.apply(new PointMm(box.getMaxX(), box.getMaxY())).x() < sure
        && road.apply(new PointMm(box.getMinX(), box.getMinY())).x() < sure
        && road.apply(new PointMm(box.getMinX(), box.getMaxY())).x() < sure;
  }

  private static Coordinate[] corners(Geometry outline) {
    return outline instanceof Polygon polygon
        ? polygon.getExteriorRing().getCoordinates()
        : outline.getCoordinates();
  }

  /** Returns those of things that may hide the road. */
  static List<LookingAhead> hiding(List<LookingAhead> things) {
    return things.stream().filter(a -> !a.overhead()).toList();
  }

  /** Returns what is seen over those of things that one cannot look through. */
  static Sight through(PointMm eye, List<LookingAhead> things) {
    return Sight.over(
        eye, things.stream().filter(a -> !a.clear()).map(LookingAhead::corner).toList());
  }

  /** Returns the clear parts through which one looks to see no more than {@code through}. */
  static Set<String> clearBefore(PointMm eye, List<LookingAhead> things, Sight through) {
    return things.stream()
        .filter(LookingAhead::clear)
        .filter(a -> Sight.over(eye, List.of(a.corner())).roadMm() > through.roadMm())
        .map(LookingAhead::part)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Returns the lowest of what hangs before the road and cannot be looked through. */
  static Optional<LookingAhead> hanging(PointMm eye, List<LookingAhead> things) {
    return things.stream()
        .filter(a -> a.overhead() && !a.clear() && a.under().z() < eye.z())
        .min(Comparator.comparingDouble(a -> a.under().minus(eye).angleRad()));
  }

  /** Whether one may look through a part: a screen, or sheet of what screens are made of. */
  static boolean clear(Part part) {
    return part instanceof ShellPart s
        && (s.type().seeThrough() || s.base().material().equals(GLAZING));
  }

  /** What of an outline hangs together ahead of the eye, by the slopes under which it is seen. */
  private static final class Chain {
    private final Part part;
    private double hi = Double.NEGATIVE_INFINITY;
    private double lo = Double.POSITIVE_INFINITY;
    private PointMm highest;
    private PointMm lowest;

    /** Whether it goes on behind the eye, under it. */
    private boolean stands;

    private Chain(Part part) {
      this.part = part;
    }

    /**
     * Adds what of a ring is ahead; it is cut where it goes past the eye.
     *
     * @param ring how far ahead and how high each corner is on the road
     */
    static void of(Part part, PointMm eye, double[][] ring, List<Chain> chains) {
      double[] x = ring[0];
      double[] z = ring[1];
      int n = x.length;
      int start = 0;
      for (int k = 0; k < n; k++) {
        x[k] -= eye.x();
        z[k] -= eye.z();
        start = x[k] <= 0 ? k : start;
      }
      Chain chain = null;
      for (int k = 0; k < n; k++) {
        int before = (start + k) % n;
        int now = (start + k + 1) % n;
        if (x[now] > 0) {
          if (chain == null) {
            chain = new Chain(part);
            chains.add(chain);
            chain.past(x[before], z[before], x[now], z[now]);
          }
          chain.add(x[now], z[now]);
        } else if (chain != null) {
          chain.past(x[now], z[now], x[before], z[before]);
          chain = null;
        }
      }
    }

    private void add(double x, double z) {
      double slope = z / x;
      if (slope > hi) {
        hi = slope;
        highest = new PointMm(x, z);
      }
      if (slope < lo) {
        lo = slope;
        lowest = new PointMm(x, z);
      }
    }

    /** An edge that goes past the eye is seen from straight over or under it on. */
    private void past(double behindX, double behindZ, double aheadX, double aheadZ) {
      if (behindX > 0) {
        return; // all of the ring is ahead
      }
      double z = behindZ - behindX * (aheadZ - behindZ) / (aheadX - behindX);
      if (z < 0) {
        stands = true;
      } else if (hi < STEEP) {
        hi = STEEP;
        highest = new PointMm(aheadX, STEEP * aheadX);
      }
    }

    /**
     * Returns it as it is seen.
     *
     * @param below those that end under the level of the eye
     */
    LookingAhead thing(PointMm eye, List<Chain> below) {
      return new LookingAhead(
          part.name(), clear(part), highest.plus(eye), lowest.plus(eye), isOverhead(below));
    }

    private boolean isOverhead(List<Chain> below) {
      if (hi < 0 || stands) {
        return false;
      }
      double line = -Double.MAX_VALUE;
      for (Chain low : below) {
        line = low.lo < lo ? Math.max(line, low.hi) : line;
      }
      return lo > line;
    }
  }

  /** Returns the care that sight through clear parts asks; nothing where there are none. */
  static Words through(Set<String> parts) {
    return parts.isEmpty()
        ? Words.NONE
        : Words.of(
            " That is through "
                + String.join(", ", parts)
                + ", taken as clear: tinted, bent, scratched or wet it hides.");
  }

  /** Returns a way along the road in words. */
  static Words metres(double mm) {
    return Double.isInfinite(mm) ? Words.of("nowhere") : Words.figure(mm, FigureSort.ROAD);
  }
}
