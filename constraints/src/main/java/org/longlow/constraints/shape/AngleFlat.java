package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.layout.AngleLeg;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Opening;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.machine.shop.SheetFold;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * A bracket of angle section laid flat: its plate as drawn, and its leg past the edge, shorter by
 * what the fold gives.
 *
 * @param part the bracket
 * @param within the area to cut, holes left out of account, in the elevation
 * @param holes of both legs, those of the second after those of the plate
 * @param from the point of the outline that its edge begins at
 * @param to the point that it ends at
 * @param out from the edge away from the plate, a unit vector
 * @param legMm outside length of the second leg
 * @param sheetMm thickness
 * @param deepMm how deep its plate is, from that edge
 */
public record AngleFlat(
    SolidPart part,
    Polygon within,
    List<Holes.Placed> holes,
    PointMm from,
    PointMm to,
    PointMm out,
    double legMm,
    double sheetMm,
    double deepMm) {

  /** The fold is a right angle. */
  public static final double FOLD_RAD = Math.PI / 2;

  public AngleFlat {
    holes = List.copyOf(holes);
  }

  /** Returns that of a part; empty for one that has no second leg, or no edge to turn it from. */
  public static Optional<AngleFlat> of(Part part, Places places) {
    if (!(part instanceof SolidPart solid)
        || solid.angle().sheet().isEmpty()
        || solid.base().spread().isEmpty()) {
      return Optional.empty();
    }
    AngleLeg angle = solid.angle();
    List<PointMm> corners = Outlines.vertices(solid.frame(), solid.outline(), places);
    PointMm from = corners.get(angle.edge() - 1);
    PointMm to = corners.get(angle.edge() % corners.size());
    Polygon plate = Outlines.within(solid.frame(), solid.outline(), places);
    double length = from.distance(to);
    double leg = Spreads.one(solid.base().spread().get(), places).length();
    double sheet = places.value(angle.sheet().get());
    if (!(length > 0) || !plate.isValid()) {
      return Optional.empty();
    }
    PointMm along = to.minus(from).times(1 / length);
    PointMm left = along.left();
    PointMm beside = from.towards(to, 0.5).plus(left.times(1e-3));
    boolean inside = plate.contains(Curves.FACTORY.createPoint(Curves.coordinate(beside)));
    PointMm out = inside ? left.times(-1) : left;
    double flat = leg - SheetFold.deductionMm(sheet, FOLD_RAD);
    List<Holes.Placed> holes = new ArrayList<>(Holes.of(solid.frame(), solid.outline(), places));
    int number = solid.outline().holes().size();
    for (Hole hole : angle.holes()) {
      List<PointMm> at = new ArrayList<>();
      for (Vertex v : hole.vertices()) {
        double past = places.value(v.z()) - SheetFold.deductionMm(sheet, FOLD_RAD);
        at.add(from.plus(along.times(places.value(v.x()))).plus(out.times(past)));
      }
      holes.add(Holes.placed(number, hole, at, places));
      number++;
    }
    Geometry all = plate;
    if (flat > 0) {
      PointMm by = out.times(flat);
      all = plate.union(Opening.polygon(List.of(from, to, to.plus(by), from.plus(by))));
    }
    double deep = 0;
    for (Coordinate c : plate.getCoordinates()) {
      deep = Math.max(deep, -out.dot(new PointMm(c.x, c.y).minus(from)));
    }
    Polygon within = all instanceof Polygon one ? one : plate;
    return Optional.of(new AngleFlat(solid, within, holes, from, to, out, leg, sheet, deep));
  }

  /** Returns why it cannot be folded so; nothing where it can. */
  public List<Words> faults() {
    Legs legs = new Legs(sheetMm);
    legs.on(deepMm, sheetMm / 2);
    legs.fold(FOLD_RAD);
    legs.on(legMm, sheetMm / 2);
    legs.corner();
    return legs.faults();
  }

  /** Returns whether a part has a second leg whose edge has no length to fold it along. */
  public static boolean lacksEdge(Part part, Places places) {
    if (!(part instanceof SolidPart solid) || solid.angle().sheet().isEmpty()) {
      return false;
    }
    List<PointMm> corners = Outlines.vertices(solid.frame(), solid.outline(), places);
    int edge = solid.angle().edge();
    return !(corners.get(edge - 1).distance(corners.get(edge % corners.size())) > 0);
  }

  /** Returns what stands round its holes, and what between each and the heel. */
  public List<HoleRoom> rooms() {
    List<HoleRoom> all = new ArrayList<>(HoleRoom.of(within, holes, part.base().material()));
    double need = SheetFold.setBackMm(sheetMm, FOLD_RAD);
    holes.forEach(hole -> all.add(HoleRoom.fold(hole, heelMm(hole), need)));
    return all;
  }

  /**
   * How far a hole stays from the heel on its own leg, mm; less than 0 by how far it runs past it.
   */
  private double heelMm(Holes.Placed hole) {
    Geometry core = hole.opening().core();
    double r = hole.opening().radiusMm();
    boolean onLeg = hole.index() >= part.outline().holes().size();
    double length = from.distance(to);
    PointMm along = to.minus(from).times(1 / length);
    double past = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    for (Coordinate c : core.getCoordinates()) {
      PointMm p = new PointMm(c.x, c.y).minus(from);
      least = Math.min(least, out.dot(p));
      if (along.dot(p) > 0 && along.dot(p) < length) {
        past = Math.max(past, out.dot(p));
      }
    }
    if (onLeg) {
      return least + SheetFold.deductionMm(sheetMm, FOLD_RAD) - r;
    }
    return past > 0 ? -past - r : core.distance(line(0)) - r;
  }

  private PointMm at(double mm) {
    return at(mm, from);
  }

  /** Returns a point beside the edge, mm out from it. */
  private PointMm at(double mm, PointMm end) {
    return end.plus(out.times(mm));
  }

  /** Returns where the fold begins, mm out from the edge, less than 0 on the plate. */
  public double bendsFromMm() {
    return -SheetFold.setBackMm(sheetMm, FOLD_RAD);
  }

  /** Returns where it ends. */
  public double bendsToMm() {
    return bendsFromMm() + SheetFold.allowanceMm(sheetMm, FOLD_RAD);
  }

  /** Returns a line along the fold, mm out from the edge. */
  public Geometry line(double mm) {
    return Curves.line(List.of(at(mm), at(mm, to)));
  }

  /** Returns how long the leg is past the edge on the flat, mm. */
  public double flatMm() {
    return legMm - SheetFold.deductionMm(sheetMm, FOLD_RAD);
  }

  /** Returns what is cut. */
  public Geometry outline() {
    return Holes.cutFrom(within, holes.stream().map(Holes.Placed::opening).toList());
  }

  /** Returns its body: the plate at one side, the leg over all of its breadth. */
  static PartShape shape(AngleFlat flat, Geometry outline, Places places) {
    Interval across = Spreads.one(flat.part.base().spread().orElseThrow(), places);
    boolean left = flat.part.angle().turned() == AngleLeg.Side.LEFT;
    double t = Math.min(flat.sheetMm, across.length());
    Interval thin =
        left
            ? new Interval(across.from(), across.from() + t)
            : new Interval(across.to() - t, across.to());
    PointMm in = flat.out.times(-t);
    Geometry leg =
        Curves.polygon(List.of(flat.from, flat.to, flat.to.plus(in), flat.from.plus(in)));
    List<Prism> prisms = new ArrayList<>(List.of(new Prism(outline, thin), new Prism(leg, across)));
    double volume = outline.getArea() * t + flat.from.distance(flat.to) * t * (across.length() - t);
    if (flat.part.paired()) {
      prisms.addAll(prisms.stream().map(Prism::mirrored).toList());
      volume *= 2;
    }
    Bulk bulk = PartShape.bulk(prisms);
    Shaped shaped = new Shaped(prisms, bulk);
    return new PartShape(
        flat.part,
        outline,
        prisms,
        FillMass.massOf(flat.part, volume, places),
        shaped.centre(),
        shaped.centreYMm(),
        Optional.of(bulk));
  }
}
