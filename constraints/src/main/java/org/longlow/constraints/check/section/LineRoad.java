package org.longlow.constraints.check.section;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.section.LineWays.Way;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** How low over the road one line comes, the machine upright, in all its states. */
final class LineRoad {

  private static final double APART_MM = 10;

  private final Layout layout;
  private final Wheels wheels;
  private final double radiusMm;
  private final double askedMm;
  private Low lowest;

  private record Low(double mm, Way way, double[] at) {}

  LineRoad(Layout layout, Wheels wheels, Places drawn, double radiusMm) {
    this.layout = layout;
    this.wheels = wheels;
    this.radiusMm = radiusMm;
    askedMm = drawn.value(layout.demands().limit(Demands.Key.GROUND_CLEARANCE));
  }

  /** Looks at one state. */
  void see(Way way) {
    if (!wheels.stands()) {
      return;
    }
    List<double[]> points = way.path().evenly(APART_MM);
    for (Map.Entry<Condition, Places> state : way.alike().entrySet()) {
      Ground ground = wheels.ground(state.getValue());
      for (double[] p : points) {
        double mm = ground.heightMm(new PointMm(p[0], p[2])) - radiusMm;
        if (mm < askedMm && (lowest == null || mm < lowest.mm)) {
          lowest = new Low(mm, way.in(state.getKey()), p);
        }
      }
    }
  }

  /** Returns what is said where it is nearer to the road than may be. */
  Optional<Finding> finding(String name) {
    return Optional.ofNullable(lowest)
        .map(
            low ->
                LineSaid.placed(
                    Finding.held(
                        LineSaid.LINE,
                        About.thing(name, name).named(name, "road"),
                        Optional.of(low.way.condition()),
                        Figures.atLeast(low.mm, askedMm, FigureUnit.MM),
                        List.of(Sources.of(layout, Demands.Key.GROUND_CLEARANCE), LineSaid.HOW),
                        Words.of(
                            low.mm < 0
                                ? Words.of(name + " is in the road by ", Say.mm(-low.mm))
                                : Words.of(name + " comes to ", Say.mm(low.mm), " over the road"),
                            ", " + low.way.condition().says() + "; ",
                            Words.atLeast(askedMm),
                            " are asked: lead it ",
                            Words.atLeast(askedMm - low.mm),
                            " higher.")),
                    low.way,
                    low.at));
  }
}
