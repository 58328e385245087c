package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.Station;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.space.Rings;
import org.longlow.constraints.space.Rod;
import org.longlow.constraints.space.SpaceMm;
import org.longlow.rider.geom.PointMm;

/** Builds the body of each part from where its pins are. */
public final class Shapes {

  /** As drawn by this edit and the one before. */
  private static final ByPlaces<Part, PartShape> DRAWN =
      new ByPlaces<>(256, 2, (part, places) -> of(part, places, false));

  private Shapes() {}

  /**
   * Returns the shape of every part of {@code layout}, in its order, stands stowed. That of a part
   * which has not moved since it was last asked for is the same object.
   */
  public static Map<String, PartShape> of(Layout layout, Places places) {
    Map<String, PartShape> shapes = new LinkedHashMap<>();
    layout.parts().forEach((name, part) -> shapes.put(name, DRAWN.of(part, places)));
    return shapes;
  }

  /**
   * Returns the shape of one part.
   *
   * @param parked true to draw a stand with its foot on the ground
   */
  public static PartShape of(Part part, Places places, boolean parked) {
    return part.accept(new Shaper(places, parked));
  }

  /** Shapes each kind of part. */
  private record Shaper(Places places, boolean parked) implements Part.Visitor<PartShape> {

    @Override
    public PartShape wheel(WheelPart wheel) {
      Tyre tyre = Tyres.of(wheel, places);
      Geometry disc = Curves.disc(places.pin(wheel.axle()), tyre.freeRadiusMm());
      double half = tyre.widthMm() / 2;
      Interval across = new Interval(-half, half);
      Prism round = new Prism(disc, across, List.of(Rings.wheel(places.pin(wheel.axle()), tyre)));
      return Filled.filled(wheel, disc, List.of(across), places).of(List.of(round));
    }

    @Override
    public PartShape front(FrontPart front) {
      double d = places.value(front.tube());
      List<List<PointMm>> lines = lines(front, places);
      List<Prism> prisms = frontBody(front, places);
      return new PartShape(
          front,
          LateOutline.later(Curves.boxMm(lines, d), () -> Curves.rounded(lines, d)),
          prisms,
          FillMass.mass(front, 0, places),
          ConvexUnion.centre(seenBars(front, prisms)),
          0,
          Optional.empty());
    }

    @Override
    public PartShape swingarm(SwingarmPart arm) {
      Geometry bar =
          Curves.bar(places.pin(arm.pivot()), places.pin(arm.axle()), places.value(arm.depth()));
      return Filled.filled(arm, bar, Spreads.of(arm.base(), places), places);
    }

    @Override
    public PartShape tube(TubePart tube) {
      TubeLine inSpace = TubeLine.of(tube, places);
      if (!inSpace.isLevel()) {
        return SlopingTube.of(tube, inSpace, places);
      }
      List<PointMm> line = centreLine(tube, places);
      double d = places.value(tube.diameter());
      double wall = places.value(tube.wall());
      double y = inSpace.corners().get(0).y();
      Geometry outline = Curves.strip(line, d);
      List<Interval> across = sides(tube, y, d / 2);
      double section = Math.PI / 4 * (d * d - Math.pow(Math.max(0, d - 2 * wall), 2));
      double volume = section * Curves.length(line) * across.size();
      PointMm centre = Filled.centre(Curves.line(line));
      Prism round = new Prism(outline, across.get(0), Filled.rods(line, y, d / 2, false));
      return Filled.filled(tube, outline, across, FillMass.mass(tube, volume, places), centre)
          .of(tube.both() ? List.of(round, round.mirrored()) : List.of(round));
    }

    @Override
    public PartShape flat(Part.Flat flat) {
      return Filled.bodies(flat, places);
    }

    @Override
    public PartShape shell(ShellPart shell) {
      return Shells.of(shell, places);
    }

    @Override
    public PartShape cushion(CushionPart cushion) {
      return Cushions.of(cushion, places);
    }

    @Override
    public PartShape rest(RestPart rest) {
      double d = places.value(rest.diameter());
      double y = places.value(rest.y());
      double half = places.value(rest.length()) / 2;
      PointMm at = places.pin(rest.at());
      Geometry outline =
          rest.to().isPresent()
              ? Curves.bar(at, places.pin(rest.to().get()), d)
              : Curves.disc(at, d / 2);
      List<Interval> across = sides(rest, y, half);
      PartShape shape = Filled.filled(rest, outline, across, places);
      return rest.to().isPresent()
          ? shape
          : shape.of(
              across.stream()
                  .map(
                      i ->
                          new Prism(
                              outline, i, List.of(Rings.cylinder(at, d / 2, i.from(), i.to()))))
                  .toList());
    }

    @Override
    public PartShape lamp(LampPart lamp) {
      PointMm at = places.pin(lamp.at());
      double halfHeight = places.value(lamp.halfHeight());
      double halfWidth = places.value(lamp.halfWidth());
      double depth = places.value(lamp.depth());
      double y = places.value(lamp.y());
      double back = Lamps.facesForward(lamp.type()) ? -depth : depth;
      Geometry outline =
          Curves.polygon(
              List.of(
                  at.plus(new PointMm(0, -halfHeight)),
                  at.plus(new PointMm(back, -halfHeight)),
                  at.plus(new PointMm(back, halfHeight)),
                  at.plus(new PointMm(0, halfHeight))));
      return Filled.filled(lamp, outline, sides(lamp, y, halfWidth), places);
    }

    @Override
    public PartShape stand(StandPart stand) {
      PointMm foot = places.pin(parked ? stand.foot() : stand.stowed());
      double d = places.value(stand.diameter());
      double y = places.value(stand.y());
      Geometry leg = Curves.bar(places.pin(stand.pivot()), foot, d);
      if (stand.base().spread().isPresent()) {
        return Filled.filled(stand, leg, Spreads.of(stand.base(), places), places);
      }
      Prism round = bar(places.pin(stand.pivot()), foot, y, d);
      return stand.paired()
          ? Filled.filled(stand, leg, List.of(round.across(), round.across().mirrored()), places)
              .of(List.of(round, round.mirrored()))
          : Filled.filled(stand, leg, List.of(round.across()), places).of(List.of(round));
    }
  }

  /**
   * Returns how far the curves of a body may lie outside of what stands for it, mm; 0 where it is
   * not curved along the machine, or as broad everywhere.
   */
  public static double curvesWithinMm(Part part) {
    if (!(part instanceof Part.Outlined outlined)) {
      return 0;
    }
    boolean curved =
        curves(outlined.outline(), outlined.breadth())
            || outlined.bodies().stream().anyMatch(b -> curves(b.outline(), b.breadth()));
    return curved ? Fineness.FLATNESS_MM : 0;
  }

  private static boolean curves(Outline outline, Breadth breadth) {
    return !breadth.isEven(outline)
        && (outline.smooth().contains(true)
            || breadth.stations().stream().anyMatch(Station::smooth));
  }

  /** Returns what a part about {@code y} takes across the machine, on one side or on both. */
  private static List<Interval> sides(Part part, double y, double half) {
    Interval one = new Interval(y - half, y + half);
    return part.paired() ? List.of(one, one.mirrored()) : List.of(one);
  }

  /** Returns the body of a part alone, stands stowed: less work than all of its shape. */
  public static List<Prism> body(Part part, Places places) {
    return part instanceof FrontPart front
        ? frontBody(front, places)
        : of(part, places, false).prisms();
  }

  /**
   * Returns how far the body of a part reaches beyond the box of its pins in side view, mm; empty
   * where that does not follow from bars between its pins.
   */
  public static OptionalDouble beyondPinsMm(Part part, Places places) {
    // a bar is what lies within half its width of the line between two pins, which is in their box
    if (part instanceof FrontPart front) {
      return OptionalDouble.of(places.value(front.tube()) / 2);
    }
    if (part instanceof SwingarmPart arm) {
      return OptionalDouble.of(places.value(arm.depth()) / 2);
    }
    return OptionalDouble.empty();
  }

  /**
   * Returns what lies on the steering axis of a front system, if that is not in the hub: the first
   * of its prisms, the others are its legs.
   */
  public static Prism stem(FrontPart front, Places places) {
    double d = places.value(front.tube());
    return bar(places.pin(front.top()), places.pin(front.bottom()), 0, d);
  }

  private static List<Prism> frontBody(FrontPart front, Places places) {
    double d = places.value(front.tube());
    double y = places.value(front.y());
    List<Prism> prisms = new ArrayList<>();
    if (front.type().turns()) {
      prisms.add(stem(front, places));
    }
    for (FrontPart.Piece piece : front.pieces()) {
      Prism bar = bar(places.pin(piece.from()), places.pin(piece.to()), y, d);
      prisms.add(bar);
      prisms.add(bar.mirrored());
    }
    return prisms;
  }

  /** A round bar with round ends. */
  private static Prism bar(PointMm from, PointMm to, double y, double diameter) {
    double radius = diameter / 2;
    return new Prism(
        Curves.bar(from, to, diameter),
        new Interval(y - radius, y + radius),
        List.of(new Rod(from, to, y, radius, true, true)));
  }

  /** Stem, legs and links in side view, down to the axle; a king pin in the hub is in the wheel. */
  private static List<List<PointMm>> lines(FrontPart front, Places places) {
    List<List<PointMm>> lines = new ArrayList<>();
    if (front.type().turns()) {
      lines.add(List.of(places.pin(front.top()), places.pin(front.bottom())));
    }
    front.lines().forEach(line -> lines.add(line.stream().map(places::pin).toList()));
    return lines;
  }

  /** Returns the bars of a front system as seen from the side: the stem if any, then legs once. */
  private static List<Polygon> seenBars(FrontPart front, List<Prism> body) {
    List<Polygon> bars = new ArrayList<>();
    int stems = front.type().turns() ? 1 : 0;
    for (int i = 0; i < body.size(); i++) {
      if (i < stems || (i - stems) % 2 == 0) {
        bars.add((Polygon) body.get(i).outline());
      }
    }
    return bars;
  }

  /** Returns the bent centre line of a tube, as seen from the side. */
  public static List<PointMm> centreLine(TubePart tube, Places places) {
    TubeLine line = TubeLine.of(tube, places);
    double radius = places.value(tube.bendRadius());
    return line.isLevel()
        ? Curves.bent(line.laidOut(), radius)
        : line.bent(radius).stream().map(SpaceMm::side).toList();
  }
}
