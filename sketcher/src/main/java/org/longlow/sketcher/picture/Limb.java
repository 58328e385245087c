package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Posture;

/**
 * A clothed arm or leg, drawn inside its flesh. Both of a pair lie in the same place in the
 * elevation; so that the far one can be seen at all, it is drawn as large as the flesh that gaps
 * are measured to, and the near one gives way by {@link #FAR_MM} on the outside of its bend.
 *
 * @param outer edge from root to end on the outside of the bend: knee cap, point of the elbow
 * @param inner the same on the inside of the bend
 * @param root end of the flesh beyond the root, inside the trunk, from inner to outer
 */
record Limb(List<PointMm> outer, List<PointMm> inner, List<PointMm> root) {

  /** How far the far limb shows beside the near one, mm: less than flesh is known to. */
  static final double FAR_MM = 12;

  /** Hollow of cloth over the joint's inside, over the reach of the flesh there. */
  private static final double HOLLOW = 0.92;

  /** Cloth within this of the hollow of a joint lies in one crease, mm. */
  private static final double CREASE_MM = 25;

  /** Returns the leg down to where the boot begins, {@code inset} mm inside the flesh. */
  static Limb leg(Manikin m, double inset) {
    Posture j = m.joints();
    Bone thigh = new Bone(m.flesh(Figure.Part.THIGH), j.hip(), j.knee(), 1);
    Bone shank = new Bone(m.flesh(Figure.Part.SHANK), j.knee(), j.ankle(), 1);
    double end = m.boots() ? Boot.SHAFT_AT + 0.06 : 0.97;
    return bent(thigh, new double[] {0.1, 0.5, 0.82}, shank, new double[] {0.22, 0.45, end}, inset);
  }

  /** Returns the sleeve from the shoulder to the glove, {@code inset} mm inside the flesh. */
  static Limb arm(Manikin m, double inset) {
    Posture j = m.joints();
    Bone upper = new Bone(m.flesh(Figure.Part.UPPER_ARM), j.shoulder(), j.elbow(), -1);
    Bone fore = new Bone(m.flesh(Figure.Part.FOREARM), j.elbow(), j.grip(), -1);
    double wrist = j.elbow().distance(j.wrist()) / Math.max(1, j.elbow().distance(j.grip()));
    return bent(
        upper, new double[] {0.2, 0.5, 0.82}, fore, new double[] {0.2, 0.5, 0.97 * wrist}, inset);
  }

  private static Limb bent(Bone first, double[] along, Bone second, double[] down, double inset) {
    List<PointMm> outer = new ArrayList<>();
    List<PointMm> inner = new ArrayList<>();
    PointMm joint = first.to();
    PointMm back = unit(first.out().plus(second.out())).times(-1);
    PointMm hollow =
        back.times(
            HOLLOW
                * Math.min(
                    Flow.reachMm(first.flesh(), joint, back),
                    Flow.reachMm(second.flesh(), joint, back)));
    for (double at : along) {
      outer.add(first.edge(at, first.out(), inset));
      if (first.clear(at, joint.plus(hollow))) {
        inner.add(first.edge(at, first.out().times(-1), 0));
      }
    }
    boolean folded = first.out().dot(second.out()) < Math.cos(Math.toRadians(25));
    for (double lean : folded ? new double[] {0.75, 0.5, 0.25} : new double[] {0.5}) {
      PointMm way = unit(first.out().times(lean).plus(second.out().times(1 - lean)));
      outer.add(joint.plus(way.times(Math.max(0, most(first, second, way) - inset))));
    }
    inner.add(joint.plus(hollow));
    for (double at : down) {
      outer.add(second.edge(at, second.out(), inset));
      if (second.clear(at, joint.plus(hollow))) {
        inner.add(second.edge(at, second.out().times(-1), 0));
      }
    }
    PointMm behind = unit(first.to().minus(first.from())).times(-1);
    List<PointMm> root = new ArrayList<>();
    for (double lean : new double[] {-0.8, 0, 0.8}) {
      PointMm way = unit(behind.plus(first.out().times(lean)));
      double reach = Flow.reachMm(first.flesh(), first.from(), way) - Math.max(0, inset * lean);
      root.add(first.from().plus(way.times(reach)));
    }
    return new Limb(Flow.through(outer), Flow.through(inner), root);
  }

  private static double most(Bone first, Bone second, PointMm way) {
    return Math.max(
        Flow.reachMm(first.flesh(), first.to(), way),
        Flow.reachMm(second.flesh(), first.to(), way));
  }

  private static PointMm unit(PointMm v) {
    double length = v.length();
    return length < 1e-9 ? new PointMm(0, 1) : v.times(1 / length);
  }

  /** Returns the area between both edges. */
  Geometry area() {
    return Flow.polygon(edges());
  }

  private List<PointMm> edges() {
    List<PointMm> ring = new ArrayList<>(outer);
    for (int i = inner.size() - 1; i >= 0; i--) {
      ring.add(inner.get(i));
    }
    return ring;
  }

  /** As {@link #area}, with the flesh about the root. */
  Geometry whole() {
    List<PointMm> ring = edges();
    List<PointMm> cap = new ArrayList<>(root);
    cap.add(0, inner.get(0));
    cap.add(outer.get(0));
    List<PointMm> round = Flow.through(cap);
    ring.addAll(round.subList(1, round.size() - 1));
    return Flow.polygon(ring);
  }

  /**
   * One link with its flesh.
   *
   * @param side 1 where the outside of the bend lies to the left of the way along it, -1 right
   */
  private record Bone(Polygon flesh, PointMm from, PointMm to, int side) {
    PointMm out() {
      return unit(to.minus(from)).left().times(side);
    }

    /** Returns whether the edge beside a share of the link is past the hollow of the joint. */
    boolean clear(double share, PointMm hollow) {
      PointMm way = unit(to.minus(from));
      return Math.abs(from.towards(to, share).minus(hollow).dot(way)) > CREASE_MM
          && (from.towards(to, share).minus(hollow).dot(way) > 0)
              == (from.towards(to, 0.5).minus(hollow).dot(way) > 0);
    }

    /** Returns the edge of the flesh beside a share of the link, less {@code inset}. */
    PointMm edge(double share, PointMm way, double inset) {
      PointMm at = from.towards(to, share);
      return at.plus(way.times(Math.max(0, Flow.reachMm(flesh, at, way) - inset)));
    }
  }
}
