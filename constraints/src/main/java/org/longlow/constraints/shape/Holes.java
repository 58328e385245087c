package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Opening;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Vertex;
import org.longlow.rider.geom.PointMm;

/** Holes of an outline in place, those of a half with their images. */
public final class Holes {

  /** Holed areas kept from one edit to the next. */
  private static final Memo<Holed, Geometry> HOLED = new Memo<>(128, Holes::pierce);

  private Holes() {}

  private record Holed(Geometry area, List<Opening> holes) {}

  /**
   * A hole of an outline and where it is.
   *
   * @param index of it among the outline's
   * @param hole as written
   * @param opening where it is
   * @param centres of a round hole, of both ends of a slot, none of a cut
   */
  public record Placed(int index, Hole hole, Opening opening, List<PointMm> centres) {}

  /** Returns the holes of {@code outline} in the elevation, each before its image. */
  public static List<Placed> of(LocalAxes frame, Outline outline, Places places) {
    if (outline.holes().isEmpty()) {
      return List.of();
    }
    Local local = Local.of(frame, places);
    List<Placed> placed = new ArrayList<>();
    for (int i = 0; i < outline.holes().size(); i++) {
      Hole hole = outline.holes().get(i);
      List<PointMm> at = local.places(hole.vertices());
      Placed one = placed(i, hole, at, places);
      placed.add(one);
      if (outline.half()) {
        List<PointMm> axis = local.places(outline.axis());
        PointMm a = axis.get(0);
        PointMm b = axis.get(1);
        int index = i;
        one.opening()
            .image(a, b)
            .ifPresent(
                there ->
                    placed.add(
                        new Placed(
                            index,
                            hole,
                            there,
                            one.centres().stream().map(c -> c.mirrored(a, b)).toList())));
      }
    }
    return placed;
  }

  /** Returns a hole whose vertices lie at some places. */
  static Placed placed(int index, Hole hole, List<PointMm> at, Places places) {
    List<PointMm> centres = hole instanceof Hole.Cut ? List.of() : at;
    return new Placed(index, hole, opening(hole, at, places), centres);
  }

  private static Opening opening(Hole hole, List<PointMm> at, Places places) {
    if (hole instanceof Hole.Round round) {
      return Opening.round(at.get(0), places.value(round.diameter()));
    }
    if (hole instanceof Hole.Slot slot) {
      return Opening.slot(at.get(0), at.get(1), places.value(slot.width()));
    }
    List<Boolean> smooth = hole.vertices().stream().map(Vertex::smooth).toList();
    return Opening.cut(Curves.through(at, smooth, true));
  }

  /**
   * Returns {@code area} without holes. What of a hole lies outside of it takes nothing away.
   *
   * @return the same object where there are none, so that equal outlines stay one
   */
  static Geometry cutFrom(Geometry area, List<Opening> holes) {
    return holes.isEmpty() ? area : HOLED.of(new Holed(area, holes));
  }

  private static Geometry pierce(Holed holed) {
    Geometry rest = holed.area();
    for (Opening hole : holed.holes()) {
      rest = rest.difference(area(hole));
    }
    return rest;
  }

  /**
   * Returns the area of a hole. Round ends are chords within {@link Curves#FLATNESS_MM} and inside
   * of the true circle, so that what just fits is not taken to have room.
   */
  public static Geometry area(Opening opening) {
    if (opening.radiusMm() == 0) {
      Geometry core = opening.core();
      return core.isValid() ? core : core.buffer(0);
    }
    Coordinate[] ends = opening.core().getCoordinates();
    PointMm from = new PointMm(ends[0].x, ends[0].y);
    PointMm to = new PointMm(ends[ends.length - 1].x, ends[ends.length - 1].y);
    double along = ends.length > 1 ? to.minus(from).angleRad() : 0;
    double r = opening.radiusMm();
    int steps =
        (int)
            Math.max(
                12, Math.ceil(Math.PI / (2 * Math.acos(Math.max(0, 1 - Curves.FLATNESS_MM / r)))));
    List<Coordinate> ring = new ArrayList<>();
    halfTurn(ring, to, r, along - Math.PI / 2, steps);
    halfTurn(ring, from, r, along + Math.PI / 2, steps);
    ring.add(ring.get(0).copy());
    return Curves.FACTORY.createPolygon(ring.toArray(new Coordinate[0]));
  }

  private static void halfTurn(
      List<Coordinate> ring, PointMm centre, double r, double fromRad, int steps) {
    for (int k = 0; k <= steps; k++) {
      Coordinate c =
          Curves.coordinate(centre.plus(PointMm.unit(fromRad + Math.PI * k / steps).times(r)));
      if (ring.isEmpty() || !ring.get(ring.size() - 1).equals2D(c, 1e-9)) {
        ring.add(c);
      }
    }
  }
}
