package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.JointLimits;

/**
 * A leg put down beside the machine at a stop: a string from the hip over and past what stands
 * beside it to the ankle, in whichever place along the machine it is shortest.
 *
 * @param flatMm leg that is missing for a whole foot on the ground, mm; negative to spare
 * @param ballMm the same for the ball of the foot
 * @param foot where the foot stands
 * @param outMm from the middle plane to the middle of the foot, mm
 * @param past the part that keeps the foot out most; empty where it is none
 * @param over what the string goes over
 */
record GroundLeg(double flatMm, double ballMm, PointMm foot, double outMm, String past, Over over) {

  /** Half the length of what a foot needs along the machine, mm. */
  private static final double ROOM_MM = 60;

  /** An edge between two corners farther off than this on one side is beside no foot, mm. */
  private static final double CLEAR_MM = ROOM_MM + 1;

  /** What is lower a foot stands over or beside; a judgement. */
  private static final double LOW_MM = 60;

  /** Places along the machine that are tried, mm ahead of the hip. */
  private static final double[] AHEAD_MM = {0, 60, 120, 180, 240, 300, 360};

  private static final double BEHIND_MM = 60;

  /** Three findings ask for the same legs. */
  private static final Memo<Same, Pair> KNOWN = new Memo<>(16);

  /** The same person on the same machine: the same objects. */
  private record Same(Sitting sitting, Standing standing) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Same s && s.sitting == sitting && s.standing == standing;
    }

    @Override
    public int hashCode() {
      return 31 * System.identityHashCode(sitting) + System.identityHashCode(standing);
    }
  }

  /**
   * A body beside the legs.
   *
   * @param edges of its outline that a leg may come near to: of each end how far ahead of the hip
   *     and how high over the road it is
   * @param leftMm how far out it reaches at the left side, and at the right
   */
  private record Beside(String part, double[] edges, double leftMm, double rightMm, boolean seat) {}

  /**
   * What a leg goes over on its way down.
   *
   * @param legMm how long it is
   * @param raisedMm how high the ankle is with the foot on its ball
   */
  record Over(Corner from, List<Corner> corners, double aheadMm, double legMm, double raisedMm) {

    /** Returns how much of a leg is missing for its ankle to be somewhere. */
    private double lacksMm(double outMm, double upMm) {
      return string(from, corners, new Corner(outMm, upMm), aheadMm) - legMm;
    }
  }

  /** Returns the leg that is missing for the ball where the road falls away to that side, mm. */
  double slopeMm(double slopeRad) {
    return over.lacksMm(outMm, over.raisedMm - outMm * Math.tan(slopeRad));
  }

  /** A leg on each side. */
  record Pair(GroundLeg left, GroundLeg right) {

    /** The one with more of a leg to spare for a whole foot. */
    GroundLeg better() {
      return left.flatMm <= right.flatMm ? left : right;
    }

    GroundLeg worse() {
      return left.flatMm >= right.flatMm ? left : right;
    }

    String side(GroundLeg leg) {
      return leg == left ? "left" : "right";
    }
  }

  /** A corner of the string, mm: out and up from the road. */
  record Corner(double y, double z) {}

  /** Returns both legs. */
  static Pair of(Sitting sitting, Standing standing) {
    return KNOWN.of(new Same(sitting, standing), () -> found(sitting, standing));
  }

  private static Pair found(Sitting sitting, Standing standing) {
    PointMm hip = sitting.posture().orElseThrow().hip();
    double round = sitting.body().measures().get("calfcircumference") / (2 * Math.PI);
    Envelope window =
        new Envelope(
            hip.x() - BEHIND_MM,
            hip.x() + AHEAD_MM[AHEAD_MM.length - 1] + ROOM_MM,
            hip.z() - 2000,
            hip.z() + 200);
    double up = standing.ground().heightMm(hip);
    List<Beside> beside = beside(sitting, standing, window, sitting.body().hipHalfMm() - round, up);
    GroundLeg left = null;
    GroundLeg right = null;
    for (double ahead : AHEAD_MM) {
      double[][] heights = new double[beside.size()][];
      for (int i = 0; i < heights.length; i++) {
        heights[i] = heights(beside.get(i), ahead, up);
      }
      GroundLeg atLeft = at(sitting, standing, beside, heights, true, ahead, round);
      GroundLeg atRight = at(sitting, standing, beside, heights, false, ahead, round);
      left = left == null || atLeft.flatMm < left.flatMm ? atLeft : left;
      right = right == null || atRight.flatMm < right.flatMm ? atRight : right;
    }
    return new Pair(left.onBall(), right.onBall());
  }

  private static List<Beside> beside(
      Sitting sitting, Standing standing, Envelope window, double inMm, double hipUpMm) {
    double hipX = sitting.posture().orElseThrow().hip().x();
    List<Beside> beside = new ArrayList<>();
    List<Part> own = sitting.parts().parts();
    for (PartShape shape : standing.shapes().values()) {
      boolean seat = sitting.parts().pan().equals(shape.part());
      if (shape.part() instanceof StandPart
          || !seat && own.contains(shape.part())
          || !shape.box().intersects(window)) {
        continue;
      }
      for (Prism prism : shape.prisms()) {
        double left = prism.across().to();
        double right = -prism.across().from();
        Geometry outline = prism.outline();
        if (Math.max(left, right) > inMm && outline.getEnvelopeInternal().intersects(window)) {
          for (int i = 0; i < outline.getNumGeometries(); i++) {
            Coordinate[] ring = outline.getGeometryN(i).getCoordinates();
            double[] edges = edges(ring, standing.ground().heightsMm(ring), hipX, hipUpMm);
            if (edges.length > 0) {
              beside.add(new Beside(shape.part().name(), edges, left, right, seat));
            }
          }
        }
      }
    }
    return beside;
  }

  private static GroundLeg at(
      Sitting sitting,
      Standing standing,
      List<Beside> beside,
      double[][] allHeights,
      boolean left,
      double aheadMm,
      double round) {
    Body body = sitting.body();
    PointMm hip = sitting.posture().orElseThrow().hip();
    double up = standing.ground().heightMm(hip);
    double half = Math.max(Figure.footBreadthMm(body) / 2, round + 1);
    List<Corner> corners = new ArrayList<>();
    double out = body.hipHalfMm();
    String past = "";
    for (int i = 0; i < allHeights.length; i++) {
      Beside b = beside.get(i);
      double[] heights = allHeights[i];
      double outMm = left ? b.leftMm : b.rightMm;
      if (heights[1] < LOW_MM || heights[0] >= up) {
        continue; // stood over, or the leg goes under it
      }
      // the pan gives way under the thigh
      double top = b.seat ? Math.min(heights[1], up - round) : heights[1];
      corners.add(new Corner(outMm + round, top + round));
      if (outMm + half > out) {
        out = outMm + half;
        past = b.part;
      }
    }
    Body.Foot foot = body.foot();
    double leg = body.thighMm() + body.shankMm();
    double point = JointLimits.ANKLE_HIGH - Math.PI / 2;
    double raised =
        foot.ankle().z() * Math.cos(point) + (foot.ballMm() - foot.ankle().x()) * Math.sin(point);
    Corner from = new Corner(body.hipHalfMm(), up);
    Over over = new Over(from, corners, aheadMm, leg, raised);
    PointMm road = standing.ground().toRoad(hip);
    return new GroundLeg(
        over.lacksMm(out, foot.ankle().z()),
        Double.NaN,
        standing.ground().toFrame(new PointMm(road.x() + aheadMm, 0)),
        out,
        past,
        over);
  }

  /** Returns the same with what the ball lacks, which is told of the best place alone. */
  private GroundLeg onBall() {
    return new GroundLeg(flatMm, over.lacksMm(outMm, over.raisedMm), foot, outMm, past, over);
  }

  /** Returns the edges of an outline that are beside a leg in some place along the machine. */
  private static double[] edges(Coordinate[] ring, double[] upMm, double hipX, double hipUpMm) {
    double most = AHEAD_MM[AHEAD_MM.length - 1];
    double[] edges = new double[4 * ring.length];
    int n = 0;
    for (int i = 1; i < ring.length; i++) {
      double x = ring[i - 1].x - hipX;
      double toX = ring[i].x - hipX;
      double at = most * (1 - upMm[i - 1] / hipUpMm);
      double toAt = most * (1 - upMm[i] / hipUpMm);
      boolean ahead = Math.min(x - Math.max(0, at), toX - Math.max(0, toAt)) > CLEAR_MM;
      boolean behind = Math.max(x - Math.min(0, at), toX - Math.min(0, toAt)) < -CLEAR_MM;
      if (!ahead && !behind) {
        edges[n] = x;
        edges[n + 1] = upMm[i - 1];
        edges[n + 2] = toX;
        edges[n + 3] = upMm[i];
        n += 4;
      }
    }
    return Arrays.copyOf(edges, n);
  }

  /**
   * Lowest and highest place over the road where an outline is beside a leg that goes forward on
   * its way down from so high.
   */
  private static double[] heights(Beside beside, double aheadMm, double fromMm) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double[] edges = beside.edges;
    for (int i = 0; i < edges.length; i += 4) {
      double z = edges[i + 1];
      double toZ = edges[i + 3];
      double off = edges[i] - aheadMm * (1 - z / fromMm);
      double toOff = edges[i + 2] - aheadMm * (1 - toZ / fromMm);
      if (Math.min(off, toOff) > CLEAR_MM || Math.max(off, toOff) < -CLEAR_MM) {
        continue;
      }
      for (int end = 0; end < 2; end++) {
        double share = end == 0 ? within(off, toOff) : 1 - within(toOff, off);
        if (Math.abs(off + share * (toOff - off)) <= ROOM_MM + 1e-6) {
          double at = z + share * (toZ - z);
          low = Math.min(low, at);
          high = Math.max(high, at);
        }
      }
    }
    return new double[] {low, high};
  }

  /** How far along an edge, 0 to 1, it comes into the strip beside the leg. */
  private static double within(double from, double to) {
    double edge = from < -ROOM_MM ? -ROOM_MM : ROOM_MM;
    boolean inside = Math.abs(from) <= ROOM_MM;
    return inside || from == to ? 0 : Math.max(0, Math.min(1, (edge - from) / (to - from)));
  }

  /** Length of the shortest string over all corners, with a run along the machine, mm. */
  static double string(Corner from, List<Corner> corners, Corner to, double aheadMm) {
    List<Corner> all = new ArrayList<>(corners);
    all.removeIf(c -> c.y <= from.y || c.y >= to.y);
    all.sort(Comparator.comparingDouble(Corner::y));
    all.add(to);
    List<Corner> hull = new ArrayList<>(List.of(from));
    for (Corner next : all) {
      while (hull.size() > 1 && under(hull.get(hull.size() - 2), hull.get(hull.size() - 1), next)) {
        hull.remove(hull.size() - 1);
      }
      hull.add(next);
    }
    double length = 0;
    for (int i = 0; i + 1 < hull.size(); i++) {
      length += Math.hypot(hull.get(i + 1).y - hull.get(i).y, hull.get(i + 1).z - hull.get(i).z);
    }
    return Math.hypot(length, aheadMm);
  }

  /** Whether the middle one of three lies on or under the line of the others. */
  private static boolean under(Corner a, Corner middle, Corner b) {
    return (middle.y - a.y) * (b.z - a.z) - (middle.z - a.z) * (b.y - a.y) >= 0;
  }
}
