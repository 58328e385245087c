package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Ground;
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
 * @param overhead whether all of it ahead is above the eye: it hides no road, one looks under it
 */
record LookingAhead(String part, boolean clear, PointMm corner, PointMm under, boolean overhead) {

  /** Half the width that counts as straight ahead of the rider, mm; judgement. */
  private static final double AHEAD_MM = 40;

  /** Returns each thing straight ahead. */
  static List<LookingAhead> of(PointMm eye, Standing standing) {
    List<LookingAhead> things = new ArrayList<>();
    Interval middle = new Interval(-AHEAD_MM, AHEAD_MM);
    for (PartShape shape : standing.shapes().values()) {
      for (Prism prism : shape.prisms()) {
        if (prism.across().gap(middle) <= 0) {
          of(shape.part(), eye, standing.ground(), prism.outline().getCoordinates())
              .ifPresent(things::add);
        }
      }
    }
    return things;
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

  static boolean clear(Part part) {
    return part instanceof ShellPart s && s.type().seeThrough();
  }

  private static Optional<LookingAhead> of(
      Part part, PointMm eye, Ground ground, Coordinate[] corners) {
    PointMm along = ground.along();
    PointMm from = ground.rearContact();
    double steepest = Double.NEGATIVE_INFINITY;
    double flattest = Double.POSITIVE_INFINITY;
    Coordinate highest = null;
    Coordinate lowest = null;
    boolean over = true;
    double lastX = 0;
    double lastZ = 0;
    for (Coordinate c : corners) {
      double dx = along.x() * (c.x - from.x()) + along.z() * (c.y - from.z()) - eye.x();
      double dz = along.x() * (c.y - from.z()) - along.z() * (c.x - from.x()) - eye.z();
      if (dx > 0) {
        over &= dz >= 0;
        if (dz > steepest * dx) {
          steepest = dz / dx;
          highest = c;
        }
        if (dz < flattest * dx) {
          flattest = dz / dx;
          lowest = c;
        }
      }
      if (lastX * dx < 0) {
        over &= lastZ - lastX * (dz - lastZ) / (dx - lastX) >= 0; // an edge past over the eye
      }
      lastX = dx;
      lastZ = dz;
    }
    return highest == null
        ? Optional.empty()
        : Optional.of(
            new LookingAhead(
                part.name(),
                clear(part),
                ground.toRoad(new PointMm(highest.x, highest.y)),
                ground.toRoad(new PointMm(lowest.x, lowest.y)),
                over));
  }

  /** Returns a way along the road in words. */
  static Words metres(double mm) {
    return Double.isInfinite(mm) ? Words.of("nowhere") : Words.figure(mm, FigureSort.ROAD);
  }
}
