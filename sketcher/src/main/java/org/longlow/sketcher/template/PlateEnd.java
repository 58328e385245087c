package org.longlow.sketcher.template;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.SpaceMm;
import org.longlow.rider.geom.PointMm;

/**
 * The end of a rail at a bracket: against its edge, where that is as broad as the tube, or slit for
 * it, where it is thin and stands in the middle of the tube.
 */
final class PlateEnd {

  /** An edge as far from an end as this is met by it, mm; judgement. */
  private static final double TOUCH_MM = 2;

  /** As a share of its length a tube that leans less across the machine does not. */
  private static final double LEVEL = 0.01;

  private final PartShape plate;
  private final TemplateFigures figures;
  private final double radius;
  private final double bore;

  PlateEnd(TubePart tube, PartShape plate, Places places, TemplateFigures figures) {
    this.plate = plate;
    this.figures = figures;
    this.radius = places.value(tube.diameter()) / 2;
    this.bore = Math.max(0, radius - places.value(tube.wall()));
  }

  /** Returns how an end meets the plate; empty where it does not. */
  Optional<TubeEnd> end(String pin, SpaceMm end, SpaceMm away) {
    Geometry area = plate.outline();
    if (area.isEmpty() || !(away.length() > 0)) {
      return Optional.empty();
    }
    PointMm at = end.side();
    double y = end.y();
    boolean level = Math.abs(away.y()) < LEVEL * away.length();
    double off = area.getBoundary().distance(Curves.FACTORY.createPoint(Curves.coordinate(at)));
    boolean within = area.contains(Curves.FACTORY.createPoint(Curves.coordinate(at)));
    if (!within && off > TOUCH_MM) {
      return Optional.empty();
    }
    String name = plate.part().name();
    for (Prism prism : plate.prisms()) {
      Interval across = prism.across();
      boolean straddles = across.from() > y - bore && across.to() < y + bore;
      if (within && straddles && off > TOUCH_MM) {
        double deep = inside(area, at, away.side());
        return Optional.of(
            TubeEnd.plain(
                pin,
                List.of(name),
                "slit for "
                    + name
                    + ": "
                    + figures.bare(across.length())
                    + " wide, "
                    + figures.mm(deep)
                    + " deep, through both walls in its plane"
                    + (level ? "" : ", by hand: it leans across it")));
      }
      if (off <= TOUCH_MM && across.from() <= y - radius && across.to() >= y + radius) {
        PointMm edge = edge(area, at);
        // to the plane that stands on the edge, square to the elevation
        double angle =
            Math.asin(
                Math.min(1, Math.abs(edge.cross(away.side())) / (edge.length() * away.length())));
        String how = "against the edge of " + name;
        return Optional.of(
            TubeEnd.isTemplated(angle)
                ? TubeEnd.flat(pin, List.of(name), how, angle, radius)
                : TubeEnd.plain(pin, List.of(name), how + ", by hand: it runs along it"));
      }
    }
    return Optional.empty();
  }

  /** Returns the direction of the edge that is nearest to a place. */
  private static PointMm edge(Geometry area, PointMm at) {
    Coordinate[] ring = area.getBoundary().getCoordinates();
    PointMm best = new PointMm(1, 0);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < ring.length; i++) {
      PointMm a = new PointMm(ring[i - 1].x, ring[i - 1].y);
      PointMm d = new PointMm(ring[i].x, ring[i].y).minus(a);
      if (!(d.dot(d) > 0)) {
        continue;
      }
      double share = Math.max(0, Math.min(1, at.minus(a).dot(d) / d.dot(d)));
      double off = at.distance(a.plus(d.times(share)));
      if (off < least) {
        least = off;
        best = d;
      }
    }
    return best;
  }

  /** Returns how far a straight tube from an end on lies within an area, mm. */
  private static double inside(Geometry area, PointMm at, PointMm away) {
    double far = 2 * Math.hypot(area.getEnvelopeInternal().getDiameter(), 1);
    PointMm to = at.plus(away.times(far / away.length()));
    Geometry run = Curves.line(List.of(at, to)).intersection(area);
    double first = 0;
    for (int i = 0; i < run.getNumGeometries(); i++) {
      Geometry piece = run.getGeometryN(i);
      if (piece.distance(Curves.FACTORY.createPoint(Curves.coordinate(at))) < 1e-6) {
        first = Math.max(first, piece.getLength());
      }
    }
    return first;
  }
}
