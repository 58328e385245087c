package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/**
 * What of a thing straight ahead hides most.
 *
 * @param part which part
 * @param clear whether one may look through it
 * @param corner its corner that hides most, in the road's axes
 */
record LookingAhead(String part, boolean clear, PointMm corner) {

  /** Half the width that counts as straight ahead of the rider, mm; judgement. */
  private static final double AHEAD_MM = 40;

  /** Returns of each thing straight ahead the corner that hides most, in the road's axes. */
  static List<LookingAhead> of(PointMm eye, Standing standing) {
    List<LookingAhead> things = new ArrayList<>();
    Interval middle = new Interval(-AHEAD_MM, AHEAD_MM);
    for (PartShape shape : standing.shapes().values()) {
      boolean clear = shape.part() instanceof ShellPart s && s.type().seeThrough();
      List<PointMm> corners = new ArrayList<>();
      for (Prism prism : shape.prisms()) {
        if (prism.across().gap(middle) <= 0) {
          addHighest(corners, eye, standing.ground(), prism.outline().getCoordinates());
        }
      }
      corners.forEach(c -> things.add(new LookingAhead(shape.part().name(), clear, c)));
    }
    return things;
  }

  private static void addHighest(
      List<PointMm> into, PointMm eye, Ground ground, Coordinate[] corners) {
    PointMm along = ground.along();
    PointMm from = ground.rearContact();
    double steepest = Double.NEGATIVE_INFINITY;
    Coordinate highest = null;
    for (Coordinate c : corners) {
      double dx = along.x() * (c.x - from.x()) + along.z() * (c.y - from.z()) - eye.x();
      double dz = along.x() * (c.y - from.z()) - along.z() * (c.x - from.x()) - eye.z();
      if (dx > 0 && dz > steepest * dx) {
        steepest = dz / dx;
        highest = c;
      }
    }
    if (highest != null) {
      into.add(ground.toRoad(new PointMm(highest.x, highest.y)));
    }
  }

  /** Returns a way along the road in words. */
  static Words metres(double mm) {
    return Double.isInfinite(mm) ? Words.of("nowhere") : Words.figure(mm, FigureSort.ROAD);
  }
}
