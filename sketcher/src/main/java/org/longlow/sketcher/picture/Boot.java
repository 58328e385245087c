package org.longlow.sketcher.picture;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Posture;
import org.longlow.svg.drawing.Planar;

/**
 * A foot in its boot, drawn inside its flesh; the sole runs from heel to toe along the line that
 * rests on pegs and boards.
 *
 * @param upper all of it, shaft and sole included
 * @param sole heel and sole, as thick as the gear has them; empty for a bare foot
 * @param strap line over the instep
 * @param top upper edge of the shaft
 */
record Boot(Geometry upper, Geometry sole, List<PointMm> strap, List<PointMm> top) {

  /** Where the shaft ends, as a share of the shank from the knee: above the ankle by a hand. */
  static final double SHAFT_AT = 0.58;

  /** Length of the heel block and of the waist before the ball, over the whole sole; judgement. */
  private static final double HEEL = 0.26;

  private static final double WAIST = 0.34;

  /** Returns a boot whose instep and shin are {@code inset} mm inside the flesh. */
  static Boot of(Manikin m, double inset) {
    return new Maker(m, inset).boot();
  }

  /** Points of the sole's axes: x from heel to toe, z up from the sole, origin under the heel. */
  private static final class Maker {
    private final Manikin m;
    private final double inset;
    private final Polygon foot;
    private final Polygon shank;
    private final PointMm heel;
    private final PointMm along;
    private final PointMm up;
    private final PointMm toes;
    private final Body.Foot sizes;

    Maker(Manikin m, double inset) {
      this.m = m;
      this.inset = inset;
      foot = m.flesh(Figure.Part.FOOT);
      shank = m.flesh(Figure.Part.SHANK);
      Posture j = m.joints();
      sizes = m.body().foot();
      heel = j.heel();
      PointMm way = j.ball().minus(j.heel());
      along = way.times(1 / Math.max(1e-9, way.length()));
      up = along.left();
      PointMm front = j.toe().minus(j.ball());
      toes = front.times(1 / Math.max(1e-9, front.length()));
    }

    private PointMm at(double x, double z) {
      double ahead = Math.max(0, x - sizes.ballMm());
      PointMm sole = heel.plus(along.times(x - ahead)).plus(toes.times(ahead));
      return sole.plus((ahead > 0 ? toes.left() : up).times(z));
    }

    /** Returns the upper edge of the foot over {@code x}, lower by what shows of the far one. */
    private PointMm over(double x) {
      PointMm low = at(x, 1);
      return low.plus(up.times(Math.max(1, Flow.reachMm(foot, low, up) - inset)));
    }

    /** Returns the edge of the foot from a place in it, deg from the way of the toes, up. */
    private PointMm of(PointMm from, double deg) {
      double rad = Math.toRadians(deg);
      PointMm way = along.times(Math.cos(rad)).plus(up.times(Math.sin(rad)));
      return from.plus(way.times(Flow.reachMm(foot, from, way)));
    }

    private PointMm ofShank(double share, boolean front, double less) {
      Posture j = m.joints();
      PointMm on = j.knee().towards(j.ankle(), share);
      PointMm down = j.ankle().minus(j.knee());
      PointMm way = down.left().times((front ? 1 : -1) / Math.max(1e-9, down.length()));
      return on.plus(way.times(Math.max(0, Flow.reachMm(shank, on, way) - less)));
    }

    Boot boot() {
      double toe = sizes.frontMm();
      double ball = sizes.ballMm();
      double shaft = m.boots() ? SHAFT_AT : 0.9;
      PointMm inToe = at(0.5 * (ball + toe), 16);
      PointMm inHeel = at(8, 20);
      PointMm topFront = ofShank(shaft, true, inset);
      PointMm topBack = ofShank(shaft, false, 0);
      Geometry upper =
          Flow.polygon(
              Flow.through(
                  List.of(
                      topFront,
                      ofShank(0.5 * (shaft + 0.95), true, inset + 2),
                      ofShank(0.95, true, inset + 2),
                      over(0.5 * (sizes.ankle().x() + ball)),
                      over(ball),
                      over(0.5 * (ball + toe)),
                      of(inToe, 15),
                      of(inToe, -15),
                      of(inToe, -45),
                      at(0.5 * toe, 0.5),
                      at(0.1 * toe, 0.5),
                      of(inHeel, -110),
                      of(inHeel, -150),
                      of(inHeel, 170),
                      ofShank(0.94, false, m.boots() ? 3 : 9),
                      ofShank(0.5 * (shaft + 0.94), false, 1),
                      topBack)));
      return new Boot(
          upper,
          sole(),
          List.of(over(0.55 * ball), at(0.28 * ball, m.body().gear().heelMm())),
          List.of(topFront, topBack));
    }

    private Geometry sole() {
      double heelMm = m.body().gear().heelMm();
      double ballMm = m.body().gear().ballMm();
      if (!m.boots() || heelMm <= 0) {
        return Planar.FACTORY.createPolygon();
      }
      double from = -sizes.backMm();
      double to = sizes.frontMm();
      double length = to - from;
      return Flow.inside(
          List.of(
              at(from, 0),
              at(from + HEEL * length, 0),
              at(from + HEEL * length + 4, 0.4 * heelMm),
              at(from + WAIST * length, 0.4 * heelMm),
              at(from + (WAIST + 0.12) * length, 0),
              at(to, 0),
              at(to, 0.7 * ballMm),
              at(from + (WAIST + 0.12) * length, 0.7 * ballMm),
              at(from + HEEL * length, 0.8 * heelMm),
              at(from, 0.8 * heelMm)),
          foot);
    }
  }
}
