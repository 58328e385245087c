package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.Comparator;
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
import org.longlow.constraints.shape.TubeLine;
import org.longlow.constraints.space.SpaceMm;

/**
 * What the ends of a rail meet: the side of another rail, the end of another, a plate, the steering
 * head, or nothing.
 *
 * <p>An end meets a side when it lies within that tube's radius of its centre line, as seen along
 * what is square to both, away from that tube's own ends.
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
    List<SpaceMm> line = ends.line(tube);
    List<String> path = tube.path();
    int n = line.size();
    return List.of(
        ends.end(path.get(0), line.get(0), line.get(1)),
        ends.end(path.get(path.size() - 1), line.get(n - 1), line.get(n - 2)));
  }

  private List<SpaceMm> line(TubePart of) {
    return TubeLine.of(of, places).bent(places.value(of.bendRadius()));
  }

  private TubeEnd end(String pin, SpaceMm at, SpaceMm inner) {
    SpaceMm away = inner.minus(at);
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
        .filter(
            o -> o.traits().duty() == Duty.FRAME && !o.bought() && !o.name().equals(tube.name()));
  }

  /** Returns the line of another rail, and its image where one of the two has one. */
  private List<List<SpaceMm>> copies(TubePart other) {
    List<SpaceMm> line = line(other);
    return other.both() || tube.both()
        ? List.of(line, line.stream().map(p -> SpaceMm.of(p.side(), -p.y())).toList())
        : List.of(line);
  }

  private Optional<TubeEnd> side(String pin, SpaceMm at, SpaceMm away) {
    for (TubePart main : rails().toList()) {
      double big = places.value(main.diameter()) / 2;
      Optional<TubeCrossing> met =
          copies(main).stream()
              .flatMap(line -> TubeCrossing.of(at, away, line, big).stream())
              .filter(c -> Math.abs(c.offsetMm()) < big + radius)
              .min(Comparator.comparingDouble(c -> Math.abs(c.offsetMm())));
      if (met.isEmpty()) {
        continue;
      }
      List<String> to = List.of(main.name());
      double acute = met.get().acuteRad();
      double offset = met.get().offsetMm();
      double inside = Math.max(0, radius - places.value(tube.wall()));
      // asked so that what is no number, as of a tube bent back on itself, gets no cope either
      if (!(acute >= TubeEnd.LEAST_RAD && radius + Math.abs(offset) <= big && radius > 0)) {
        boolean along = acute < TubeEnd.LEAST_RAD;
        String why =
            along ? "it runs along it" : "it is too big or too far to one side for its round";
        return Optional.of(
            TubeEnd.plain(pin, to, "on the side of " + main.name() + ", by hand: " + why)
                .withSpare(along ? 0 : big));
      }
      return Optional.of(
          new TubeEnd(
              pin,
              to,
              "coped onto the side of " + main.name() + " at " + TubeEnd.degrees(acute),
              Optional.of(new TubeCope(radius, inside, big, acute, offset)),
              met.get().alongMm(),
              met.get().sideWord()));
    }
    return Optional.empty();
  }

  /** The end of one other rail in the same place: both are sawn along what halves the corner. */
  private Optional<TubeEnd> corner(String pin, SpaceMm at, SpaceMm away) {
    List<TubePart> met = new ArrayList<>();
    double off = 0;
    double half = Math.PI / 2;
    double most = radius;
    for (TubePart o : rails().toList()) {
      double big = places.value(o.diameter()) / 2;
      double reach = Math.max(radius, big);
      for (List<SpaceMm> line : copies(o)) {
        int n = line.size();
        boolean first = near(at, line.get(0), reach);
        if ((first || near(at, line.get(n - 1), reach)) && !met.contains(o)) {
          SpaceMm end = first ? line.get(0) : line.get(n - 1);
          SpaceMm other = (first ? line.get(1) : line.get(n - 2)).minus(end);
          met.add(o);
          off = Math.abs(at.y() - end.y());
          half = Math.min(half, away.angleRad(other) / 2);
          most = Math.max(most, big);
        }
      }
    }
    if (met.isEmpty()) {
      return Optional.empty();
    }
    List<String> to = met.stream().map(TubePart::name).toList();
    String names = String.join(" and ", to);
    boolean alike =
        met.size() == 1
            && Math.abs(places.value(met.get(0).diameter()) / 2 - radius) < SAME_MM / 2
            && off < SAME_MM;
    if (!alike || !(half >= TubeEnd.LEAST_RAD) || !(radius > 0)) {
      String why =
          met.size() > 1
              ? "three ends in one place"
              : alike ? "the corner is too sharp" : "they are not alike, or not in one plane";
      return Optional.of(
          TubeEnd.plain(pin, to, "at the end of " + names + ", by hand: " + why)
              .withSpare(most / Math.tan(Math.max(half, TubeEnd.LEAST_RAD))));
    }
    return Optional.of(
        flat(
            pin,
            to,
            "end to end with " + names + " in a corner of " + TubeEnd.degrees(2 * half),
            half));
  }

  private boolean near(SpaceMm at, SpaceMm end, double reach) {
    return end.side().distance(at.side()) < reach && Math.abs(end.y() - at.y()) < reach + radius;
  }

  /** The layout does not say how big the tube of the steering head is. */
  private Optional<TubeEnd> head(String pin, SpaceMm at) {
    double y = at.y();
    return shapes.values().stream()
        .map(PartShape::part)
        .filter(FrontPart.class::isInstance)
        .map(FrontPart.class::cast)
        .filter(
            f ->
                Stream.of(f.top(), f.bottom())
                    .anyMatch(p -> places.pin(p).distance(at.side()) <= 2 * radius))
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

  private Optional<TubeEnd> plate(String pin, SpaceMm at, SpaceMm away) {
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
