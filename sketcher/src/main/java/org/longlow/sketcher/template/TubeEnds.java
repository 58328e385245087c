package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.machine.shop.TubeCope;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.PointMm;

/**
 * What the ends of a rail meet: the side of another rail, the end of another, a plate, the steering
 * head, or nothing.
 *
 * <p>Rails lie in planes parallel to the elevation, so the distance between two axes is the
 * difference of their places across the machine. An end meets a side when it lies within that
 * tube's radius of its centre line, away from that tube's own ends.
 */
final class TubeEnds {

  /** Two axes nearer to each other than this lie in one plane, and two diameters are one, mm. */
  private static final double SAME_MM = 0.5;

  private final TubePart tube;
  private final Map<String, PartShape> shapes;
  private final Places places;
  private final TemplateFigures figures;
  private final double radius;

  private TubeEnds(
      TubePart tube, Map<String, PartShape> shapes, Places places, TemplateFigures figures) {
    this.tube = tube;
    this.shapes = shapes;
    this.places = places;
    this.figures = figures;
    this.radius = places.value(tube.diameter()) / 2;
  }

  /** Returns both ends of a rail, the first first; of what is no rail none. */
  static List<TubeEnd> of(
      TubePart tube, Map<String, PartShape> shapes, Places places, TemplateFigures figures) {
    if (tube.traits().duty() != Duty.FRAME) {
      return List.of();
    }
    TubeEnds ends = new TubeEnds(tube, shapes, places, figures);
    List<PointMm> line = Shapes.centreLine(tube, places);
    int n = line.size();
    return List.of(
        ends.end(tube.path().get(0), line.get(0), line.get(1)),
        ends.end(tube.path().get(tube.path().size() - 1), line.get(n - 1), line.get(n - 2)));
  }

  private TubeEnd end(String pin, PointMm at, PointMm inner) {
    PointMm away = inner.minus(at);
    return side(pin, at, away)
        .or(() -> corner(pin, at, away))
        .or(() -> head(pin, at))
        .or(() -> plate(pin, at, away))
        .orElse(TubeEnd.plain(pin, List.of(), "square"));
  }

  private Stream<TubePart> rails() {
    return shapes.values().stream()
        .map(PartShape::part)
        .filter(TubePart.class::isInstance)
        .map(TubePart.class::cast)
        .filter(o -> o.traits().duty() == Duty.FRAME && !o.name().equals(tube.name()));
  }

  /**
   * Returns how far this rail lies outboard of another on the same side, mm; empty where that one
   * is on the other side.
   */
  private Optional<Double> outboardMm(TubePart other) {
    double mine = places.value(tube.y());
    double its = places.value(other.y());
    double near = other.both() && its * mine < 0 ? -its : its;
    if (near * mine < 0 && !tube.both()) {
      return Optional.empty();
    }
    return Optional.of(Math.abs(mine) - Math.abs(near));
  }

  private Optional<TubeEnd> side(String pin, PointMm at, PointMm away) {
    for (TubePart main : rails().toList()) {
      Optional<Double> offset = outboardMm(main);
      PointMm along = direction(main, at);
      double big = places.value(main.diameter()) / 2;
      if (along == null || offset.isEmpty() || Math.abs(offset.get()) >= big + radius) {
        continue;
      }
      List<String> to = List.of(main.name());
      double acute = TubeEnd.acute(along, away);
      double inside = Math.max(0, radius - places.value(tube.wall()));
      // asked so that what is no number, as of a tube bent back on itself, gets no cope either
      if (!(acute >= TubeEnd.LEAST_RAD && radius + Math.abs(offset.get()) <= big && radius > 0)) {
        String why =
            acute < TubeEnd.LEAST_RAD
                ? "it runs along it"
                : "it is too big or too far to one side for its round";
        return Optional.of(
            TubeEnd.plain(pin, to, "on the side of " + main.name() + ", by hand: " + why));
      }
      return Optional.of(
          new TubeEnd(
              pin,
              to,
              "coped onto the side of " + main.name() + " at " + TubeEnd.degrees(acute),
              Optional.of(new TubeCope(radius, inside, big, acute, offset.get()))));
    }
    return Optional.empty();
  }

  /** Returns the direction of the main tube where an end meets its side, or null. */
  private PointMm direction(TubePart main, PointMm end) {
    double r = places.value(main.diameter()) / 2;
    List<PointMm> line = Shapes.centreLine(main, places);
    if (end.distance(line.get(0)) < 2 * r || end.distance(line.get(line.size() - 1)) < 2 * r) {
      return null;
    }
    for (int i = 1; i < line.size(); i++) {
      PointMm a = line.get(i - 1);
      PointMm d = line.get(i).minus(a);
      if (!(d.dot(d) > 0)) {
        continue; // two pins in one place have no direction
      }
      double share = Math.max(0, Math.min(1, end.minus(a).dot(d) / d.dot(d)));
      if (end.distance(a.plus(d.times(share))) < r) {
        return d;
      }
    }
    return null;
  }

  /** The end of one other rail in the same place: both are sawn along what halves the corner. */
  private Optional<TubeEnd> corner(String pin, PointMm at, PointMm away) {
    List<TubePart> met = new ArrayList<>();
    PointMm other = null;
    for (TubePart o : rails().toList()) {
      double reach = Math.max(radius, places.value(o.diameter()) / 2);
      List<PointMm> line = Shapes.centreLine(o, places);
      int n = line.size();
      boolean first = line.get(0).distance(at) < reach;
      if ((first || line.get(n - 1).distance(at) < reach)
          && outboardMm(o).filter(mm -> Math.abs(mm) < reach + radius).isPresent()) {
        met.add(o);
        other = first ? line.get(1).minus(line.get(0)) : line.get(n - 2).minus(line.get(n - 1));
      }
    }
    if (met.isEmpty()) {
      return Optional.empty();
    }
    List<String> to = met.stream().map(TubePart::name).toList();
    String names = String.join(" and ", to);
    TubePart one = met.get(0);
    double half = Math.abs(Math.atan2(away.cross(other), away.dot(other))) / 2;
    boolean alike =
        met.size() == 1
            && Math.abs(places.value(one.diameter()) / 2 - radius) < SAME_MM / 2
            && Math.abs(outboardMm(one).orElseThrow()) < SAME_MM;
    if (!alike || !(half >= TubeEnd.LEAST_RAD) || !(radius > 0)) {
      String why =
          met.size() > 1
              ? "three ends in one place"
              : alike ? "the corner is too sharp" : "they are not alike, or not in one plane";
      return Optional.of(TubeEnd.plain(pin, to, "at the end of " + names + ", by hand: " + why));
    }
    return Optional.of(
        flat(
            pin,
            to,
            "end to end with " + names + " in a corner of " + TubeEnd.degrees(2 * half),
            half));
  }

  /** The layout does not say how big the tube of the steering head is. */
  private Optional<TubeEnd> head(String pin, PointMm at) {
    double y = places.value(tube.y());
    return shapes.values().stream()
        .map(PartShape::part)
        .filter(FrontPart.class::isInstance)
        .map(FrontPart.class::cast)
        .filter(
            f ->
                Stream.of(f.top(), f.bottom())
                    .anyMatch(p -> places.pin(p).distance(at) <= 2 * radius))
        .findFirst()
        .map(
            f ->
                TubeEnd.plain(
                    pin,
                    List.of(f.name()),
                    Math.abs(y) < radius
                        ? "at the steering head of "
                            + f.name()
                            + ", by hand: cope it to the head tube you have"
                        : figures.mm(Math.abs(y))
                            + " beside the steering head of "
                            + f.name()
                            + ", which a plate or cross tube is to join"));
  }

  private Optional<TubeEnd> plate(String pin, PointMm at, PointMm away) {
    for (PartShape shape : shapes.values()) {
      if (shape.part() instanceof SolidPart p && p.traits().duty() == Duty.FRAME) {
        Optional<TubeEnd> met = new PlateEnd(tube, shape, places, figures).end(pin, at, away);
        if (met.isPresent()) {
          return met;
        }
      }
    }
    return Optional.empty();
  }

  private TubeEnd flat(String pin, List<String> to, String how, double angleRad) {
    return TubeEnd.flat(pin, to, how, angleRad, radius);
  }
}
