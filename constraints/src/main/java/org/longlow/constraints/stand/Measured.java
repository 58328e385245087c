package org.longlow.constraints.stand;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/**
 * A dimension as the machine stands; in the axes of the road: x forward of the rear contact point,
 * z up.
 *
 * @param from where it begins
 * @param to where it ends
 * @param at the point that an angle is at; empty for a length
 * @param value mm, or rad from 0 to pi for an angle
 */
public record Measured(PointMm from, PointMm to, Optional<PointMm> at, double value) {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /**
   * Measures a dimension.
   *
   * @param places of the pins, every section shut
   * @param outlines of the parts by name, in the axes of the frame, a section opened
   * @param opened the section that is open, if one is
   * @return empty if it names what is not there, or a part that is nowhere
   */
  public static Optional<Measured> of(
      Dimension d,
      Layout layout,
      Places places,
      Function<String, Geometry> outlines,
      Ground ground,
      Optional<Opened> opened) {
    Finder finder = new Finder(layout, places, outlines, opened);
    List<Dimension.End> ends = d.ends();
    if (ends.isEmpty() || d.along() == Dimension.Along.ANGLE && ends.size() < 3) {
      return Optional.empty();
    }
    if (ends.size() == 1) {
      return finder
          .point(ends.get(0))
          .map(ground::toRoad)
          .map(p -> length(d.along(), p, new PointMm(p.x(), 0)));
    }
    List<PointMm> far =
        finder.ends(ends.get(0), ends.get(ends.size() - 1)).stream().map(ground::toRoad).toList();
    if (far.isEmpty()) {
      return Optional.empty();
    }
    return d.along() == Dimension.Along.ANGLE
        ? finder.point(ends.get(1)).map(ground::toRoad).map(at -> angle(far.get(0), at, far.get(1)))
        : Optional.of(length(d.along(), far.get(0), far.get(1)));
  }

  /** Measures the way between two places. */
  public static Measured length(Dimension.Along along, PointMm from, PointMm to) {
    PointMm way = to.minus(from);
    double mm =
        switch (along) {
          case LEVEL -> Math.abs(way.x());
          case UPRIGHT -> Math.abs(way.z());
          default -> way.length();
        };
    return new Measured(from, to, Optional.empty(), mm);
  }

  /** Measures the angle at a place between the ways to two others. */
  public static Measured angle(PointMm from, PointMm at, PointMm to) {
    PointMm a = from.minus(at);
    PointMm b = to.minus(at);
    return new Measured(from, to, Optional.of(at), Math.abs(Math.atan2(a.cross(b), a.dot(b))));
  }

  /** Returns where two outlines, or places, are nearest to each other. */
  public static List<PointMm> nearest(Geometry one, Geometry other) {
    Coordinate[] c = DistanceOp.nearestPoints(one, other);
    return List.of(new PointMm(c[0].x, c[0].y), new PointMm(c[1].x, c[1].y));
  }

  /** Returns a place as something to be near to. */
  public static Geometry place(PointMm at) {
    return FACTORY.createPoint(new Coordinate(at.x(), at.z()));
  }

  private record Finder(
      Layout layout, Places places, Function<String, Geometry> outlines, Optional<Opened> opened) {

    /** Where the two are nearest to each other; none where one is nowhere. */
    List<PointMm> ends(Dimension.End from, Dimension.End to) {
      Optional<Geometry> a = geometry(from);
      Optional<Geometry> b = geometry(to);
      return a.isEmpty() || b.isEmpty() ? List.of() : nearest(a.get(), b.get());
    }

    private Optional<Geometry> geometry(Dimension.End end) {
      return end.isEdge()
          ? Optional.ofNullable(outlines.apply(end.part())).filter(g -> !g.isEmpty())
          : point(end).map(Measured::place);
    }

    Optional<PointMm> point(Dimension.End end) {
      if (!end.pin().isEmpty()) {
        return Optional.ofNullable(places.pins().get(end.pin()))
            .map(p -> opened.map(o -> o.pin(layout, end.pin(), p)).orElse(p));
      }
      if (end.point().isPresent()
          && layout.parts().get(end.part()) instanceof Part.Outlined outlined
          && end.point().get() < outlined.outline().count()) {
        PointMm shut =
            Outlines.vertices(outlined.frame(), outlined.outline(), places).get(end.point().get());
        return Optional.of(opened.map(o -> o.point(end.part(), shut)).orElse(shut));
      }
      return Optional.empty();
    }
  }
}
