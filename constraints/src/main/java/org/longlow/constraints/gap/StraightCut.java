package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/**
 * A straight cut off a body: all of it that lies farther towards one direction than a line square
 * to that goes away.
 *
 * @param towardsDeg the direction in whole steps of {@value #STEP_DEG}, degrees from forward, up
 *     positive
 * @param depthMm how much of the body's reach towards that direction goes, whole tenths of mm
 * @param share how much of its area in side view goes, 0 to 1
 * @param rest what stays
 */
public record StraightCut(int towardsDeg, double depthMm, double share, Solid rest) {

  private static final int STEP_DEG = 5;

  /** Cut a little past what must go, mm. */
  private static final double PAST_MM = 0.01;

  /**
   * Returns the cut that takes away every part of a body that is too near to others, and the least
   * of the rest: a shallow cut along a sheet would take all of it.
   *
   * @param others where they are in the body's axes
   * @param gapMm what must stay between them, mm
   */
  static StraightCut of(Solid body, List<Solid> others, double gapMm) {
    List<Coordinate> bites = bites(body, others, gapMm);
    double whole = body.faces().stream().mapToDouble(f -> f.edges().areaMm2()).sum();
    int towards = 0;
    double depth = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int deg = -180; deg < 180; deg += STEP_DEG) {
      PointMm u = PointMm.unit(Math.toRadians(deg));
      double most = body.mostMm(u);
      double keep = most;
      for (Coordinate c : bites) {
        keep = Math.min(keep, c.x * u.x() + c.y * u.z());
      }
      double deep = Tenths.away(most - keep + PAST_MM);
      PointMm line = u.times(most - deep);
      double left = body.faces().stream().mapToDouble(f -> f.edges().areaMm2(line, u)).sum();
      double share = 1 - left / whole;
      if (share < least) {
        towards = deg;
        depth = deep;
        least = share;
      }
    }
    return new StraightCut(towards, depth, least, rest(body, towards, depth));
  }

  /** Corners of all that must go. */
  private static List<Coordinate> bites(Solid body, List<Solid> others, double gapMm) {
    List<Coordinate> bites = new ArrayList<>();
    Wider wider = new Wider();
    for (Solid other : others) {
      for (Face a : body.faces()) {
        for (Face b : other.faces()) {
          double across = a.acrossMm(b);
          if (across < gapMm) {
            double needed = across > 0 ? Math.sqrt(gapMm * gapMm - across * across) : gapMm;
            if (a.apartMm(b) <= needed * Wider.ROUND_SHARE) {
              bites.addAll(new Overlap(a.edges(), wider.of(b.edges(), needed)).corners());
            }
          }
        }
      }
    }
    return bites;
  }

  private static Solid rest(Solid body, int towardsDeg, double depthMm) {
    PointMm u = PointMm.unit(Math.toRadians(towardsDeg));
    PointMm line = u.times(body.mostMm(u) - depthMm);
    double far = 2 * (depthMm + body.mostMm(u.times(-1)) + body.mostMm(u) + 1);
    for (PointMm side : List.of(u.left(), u.left().times(-1))) {
      far = Math.max(far, 2 * (Math.abs(body.mostMm(side)) + 1));
    }
    PointMm aside = u.left().times(2 * far);
    PointMm back = u.times(-2 * far);
    Geometry half =
        Curves.polygon(
            List.of(
                line.plus(aside),
                line.plus(aside).plus(back),
                line.minus(aside).plus(back),
                line.minus(aside)));
    List<Prism> rest = new ArrayList<>();
    for (Face face : body.faces()) {
      Geometry kept = face.edges().outline().intersection(half);
      for (Interval across : face.across()) {
        rest.add(new Prism(kept, across));
      }
    }
    return new Solid(body.name(), rest);
  }
}
