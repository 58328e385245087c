package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.seat.Sitting;
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
 * @param slopeMm the same for the ball where the road falls away to that side
 * @param foot where the foot stands
 * @param outMm from the middle plane to the middle of the foot, mm
 * @param past the part that keeps the foot out most; empty where it is none
 */
record GroundLeg(
    double flatMm, double ballMm, double slopeMm, PointMm foot, double outMm, String past) {

  /** Half the length of what a foot needs along the machine, mm. */
  private static final double ROOM_MM = 60;

  /** What is lower a foot stands over or beside; a judgement. */
  private static final double LOW_MM = 60;

  /** Places along the machine that are tried, mm ahead of the hip. */
  private static final double[] AHEAD_MM = {0, 60, 120, 180, 240, 300, 360};

  private static final double BEHIND_MM = 60;

  /** A body beside the legs: its outline and how far out it reaches at each side. */
  private record Beside(
      String part, Coordinate[] edge, double leftMm, double rightMm, boolean seat) {}

  /** A leg on each side. */
  record Pair(GroundLeg left, GroundLeg right) {

    /** The one with more of a leg to spare for a whole foot. */
    GroundLeg better() {
      return left.flatMm <= right.flatMm ? left : right;
    }

    GroundLeg worse() {
      return left.flatMm <= right.flatMm ? right : left;
    }

    String side(GroundLeg leg) {
      return leg == left ? "left" : "right";
    }
  }

  /** A corner of the string, mm: out and up from the road. */
  record Corner(double y, double z) {}

  /**
   * Returns both legs.
   *
   * @param slopeRad how much the road falls away to the side of each
   */
  static Pair of(Sitting sitting, Standing standing, double slopeRad) {
    PointMm hip = sitting.posture().orElseThrow().hip();
    double round = sitting.body().measures().get("calfcircumference") / (2 * Math.PI);
    Envelope window =
        new Envelope(
            hip.x() - BEHIND_MM,
            hip.x() + AHEAD_MM[AHEAD_MM.length - 1] + ROOM_MM,
            hip.z() - 2000,
            hip.z() + 200);
    List<Beside> beside = beside(sitting, standing, window, sitting.body().hipHalfMm() - round);
    GroundLeg left = null;
    GroundLeg right = null;
    for (double ahead : AHEAD_MM) {
      double[][] heights = new double[beside.size()][];
      for (int i = 0; i < heights.length; i++) {
        heights[i] = heights(beside.get(i).edge, hip, ahead, standing);
      }
      GroundLeg atLeft = at(sitting, standing, beside, heights, true, ahead, round, slopeRad);
      GroundLeg atRight = at(sitting, standing, beside, heights, false, ahead, round, slopeRad);
      left = left == null || atLeft.flatMm < left.flatMm ? atLeft : left;
      right = right == null || atRight.flatMm < right.flatMm ? atRight : right;
    }
    return new Pair(left, right);
  }

  private static List<Beside> beside(
      Sitting sitting, Standing standing, Envelope window, double inMm) {
    List<Beside> beside = new ArrayList<>();
    for (PartShape shape : standing.shapes().values()) {
      boolean seat = sitting.parts().pan().equals(shape.part());
      if (shape.part() instanceof StandPart
          || !seat && sitting.parts().parts().contains(shape.part())
          || !shape.outline().getEnvelopeInternal().intersects(window)) {
        continue;
      }
      for (Prism prism : shape.prisms()) {
        double left = prism.across().to();
        double right = -prism.across().from();
        Geometry outline = prism.outline();
        if (Math.max(left, right) > inMm && outline.getEnvelopeInternal().intersects(window)) {
          for (int i = 0; i < outline.getNumGeometries(); i++) {
            beside.add(
                new Beside(
                    shape.part().name(),
                    outline.getGeometryN(i).getCoordinates(),
                    left,
                    right,
                    seat));
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
      double round,
      double slopeRad) {
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
    double flat = string(from, corners, new Corner(out, foot.ankle().z()), aheadMm) - leg;
    double ball = string(from, corners, new Corner(out, raised), aheadMm) - leg;
    double low = raised - out * Math.tan(slopeRad);
    double slope = string(from, corners, new Corner(out, low), aheadMm) - leg;
    PointMm road = standing.ground().toRoad(hip);
    return new GroundLeg(
        flat,
        ball,
        slope,
        standing.ground().toFrame(new PointMm(road.x() + aheadMm, 0)),
        out,
        past);
  }

  /**
   * Lowest and highest place over the road where an outline is beside a leg that goes forward on
   * its way down.
   */
  private static double[] heights(
      Coordinate[] edge, PointMm hip, double aheadMm, Standing standing) {
    double up = standing.ground().heightMm(hip);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double[] before = null;
    for (Coordinate corner : edge) {
      double z = standing.ground().heightMm(new PointMm(corner.x, corner.y));
      double[] now = {corner.x - hip.x() - aheadMm * (1 - z / up), z};
      if (before != null) {
        for (double share :
            new double[] {within(before[0], now[0]), 1 - within(now[0], before[0])}) {
          double off = before[0] + share * (now[0] - before[0]);
          if (Math.abs(off) <= ROOM_MM + 1e-6) {
            double at = before[1] + share * (now[1] - before[1]);
            low = Math.min(low, at);
            high = Math.max(high, at);
          }
        }
      }
      before = now;
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
