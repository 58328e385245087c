package org.longlow.constraints.check.section;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.section.LineWays.Way;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.lock.Turned;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Rims;
import org.longlow.constraints.shape.Tyres;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * How near one line comes to a tyre, from its bead outward, in the states that move either. What is
 * inside the rim is no tyre: there lines end.
 */
final class LineTyres {

  /** Points so far apart miss less than a millimetre of what is 15 mm off. */
  private static final double APART_MM = 10;

  private final LineWays ways;
  private final double radiusMm;
  private final List<Wheel> wheels = new ArrayList<>();
  private final double askedMm;
  private Near nearest;

  private record Wheel(WheelPart part, Tyre tyre, double beadMm) {}

  private record Near(double mm, Wheel wheel, Way way, double[] at) {}

  LineTyres(Layout layout, LineWays ways, Places drawn, double radiusMm) {
    this.ways = ways;
    this.radiusMm = radiusMm;
    askedMm = drawn.value(layout.demands().limit(Demands.Key.TYRE_GAP));
    layout
        .parts(WheelPart.class)
        .forEach(
            part -> {
              Tyre tyre = Tyres.of(part, drawn);
              wheels.add(new Wheel(part, tyre, Rims.beadMm(part, tyre)));
            });
  }

  /** Looks at one state. */
  void see(Way way) {
    for (Wheel wheel : wheels) {
      Set<PointMm> seen = new HashSet<>();
      way.alike()
          .forEach(
              (condition, places) -> {
                PointMm axle = places.pin(wheel.part.axle());
                if (seen.add(axle) && mayReach(way, wheel, axle)) {
                  see(way.in(condition), wheel, axle);
                }
              });
    }
  }

  private void see(Way way, Wheel wheel, PointMm axle) {
    boolean turns = wheel.part.end() == Part.End.FRONT && ways.head().isPresent();
    double[] by = turns ? ways.wheelTurns(way) : new double[1];
    for (double[] p : way.path().evenly(APART_MM)) {
      for (double turn : by) {
        double[] at = turn == 0 ? p : Turned.point(ways.head().get(), p, -turn);
        double mm = offMm(wheel, Math.hypot(at[0] - axle.x(), at[2] - axle.z()), at[1]);
        if (mm - radiusMm < askedMm && (nearest == null || mm - radiusMm < nearest.mm)) {
          nearest = new Near(mm - radiusMm, wheel, way, p);
        }
      }
    }
  }

  /** Between two of its points a line does not stray farther than they are apart. */
  private boolean mayReach(Way way, Wheel wheel, PointMm axle) {
    List<double[]> points = way.path().evenly(Double.MAX_VALUE);
    double longest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      double[] p = points.get(i);
      least = Math.min(least, Math.hypot(p[0] - axle.x(), p[2] - axle.z()));
      if (i > 0) {
        double[] q = points.get(i - 1);
        longest = Math.max(longest, Math.hypot(Math.hypot(p[0] - q[0], p[1] - q[1]), p[2] - q[2]));
      }
    }
    // a wheel at lock is hardly elsewhere: its axle is near the axis
    return least - longest < 2 * wheel.tyre.freeRadiusMm() + askedMm;
  }

  /**
   * Returns how far a point is off a tyre, mm, negative in it: its crown an arc, its flanks flat.
   *
   * @param r how far it is from the axle in the elevation
   * @param y how far it is from the middle of the tyre
   */
  private static double offMm(Wheel wheel, double r, double y) {
    Tyre tyre = wheel.tyre;
    double half = tyre.widthMm() / 2;
    double crown = tyre.sectionRadiusMm();
    double out = Math.abs(y);
    if (r < wheel.beadMm) {
      return Math.hypot(wheel.beadMm - r, Math.max(0, out - half));
    }
    double low = tyre.freeRadiusMm() - crown;
    double end = crown > half ? Math.asin(half / crown) : Math.PI / 2;
    if (Math.atan2(out, r - low) <= end) {
      return Math.hypot(r - low, out) - crown;
    }
    double edge = low + crown * Math.cos(end);
    return r <= edge ? out - half : Math.hypot(r - edge, Math.max(0, out - half));
  }

  /** Returns what is said where a line is nearer to a tyre than may be. */
  Optional<Finding> finding(Layout layout, String name) {
    return Optional.ofNullable(nearest)
        .map(
            n -> {
              String wheel = n.wheel.part.name();
              Finding f =
                  Finding.held(
                      LineSaid.LINE,
                      About.thing(name, name).named(name, wheel),
                      Optional.of(n.way.condition()),
                      Figures.atLeast(n.mm, askedMm, FigureUnit.MM),
                      List.of(Sources.of(layout, Demands.Key.TYRE_GAP), LineSaid.HOW),
                      Words.of(
                          n.mm < 0
                              ? Words.of(
                                  name + " is in the tyre of " + wheel + " by ", Say.mm(-n.mm))
                              : Words.of(
                                  name + " comes to the tyre of " + wheel + " within ",
                                  Say.mm(n.mm)),
                          LineSaid.state(n.way),
                          "; ",
                          Words.atLeast(askedMm),
                          " are asked: lead it past the tyre by further points that move with what"
                              + " holds them."));
              return LineSaid.placed(f, n.way, n.at);
            });
  }
}
