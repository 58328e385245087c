package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/**
 * A body whose breadth varies, in the elevation.
 *
 * @param prisms its pieces; of a pair, all of both
 * @param bulk of all of it
 */
record Shaped(List<Prism> prisms, Bulk bulk) {

  /** Pieces of a quarter of a curved side, for volumes. */
  private static final int FINE = 40;

  /** The same for the area of sheets, which it errs by 0.1 % at most. */
  private static final int SHEET = 16;

  private static final Memo<Loft, Shaped> SOLIDS = new Memo<>(128, Shaped::filled);
  private static final Memo<Sheet, Shaped> SHEETS = new Memo<>(128, Shaped::sheet);

  /** A sheet in its axes. */
  private record Sheet(Loft body, double thicknessMm, boolean closed, boolean sides) {}

  /** Returns a body that fills its outline. */
  static Shaped solid(
      LocalAxes frame, Outline outline, Spread spread, Breadth breadth, Places places) {
    return placed(SOLIDS.of(loft(frame, outline, spread, breadth, places)), frame, spread, places);
  }

  /**
   * Returns a sheet along an outline.
   *
   * @param sides whether it has sides besides the strip along its edge
   */
  static Shaped sheet(
      LocalAxes frame,
      Outline outline,
      Spread spread,
      Breadth breadth,
      double thicknessMm,
      boolean sides,
      Places places) {
    Loft loft = loft(frame, outline, spread, breadth, places);
    Sheet sheet = new Sheet(loft, thicknessMm, outline.closed(), sides);
    return placed(SHEETS.of(sheet), frame, spread, places);
  }

  /** Returns a body in the axes of its outline. */
  static Loft loft(
      LocalAxes frame, Outline outline, Spread spread, Breadth breadth, Places places) {
    return loft(frame, outline, spread, breadth, Fineness.BODY, places);
  }

  /** Returns a body in the axes of its outline, as fine as is asked for. */
  static Loft loft(
      LocalAxes frame,
      Outline outline,
      Spread spread,
      Breadth breadth,
      Fineness fineness,
      Places places) {
    Local local = Local.of(frame, places);
    List<PointMm> vertices =
        Outlines.vertices(frame, outline, places).stream().map(local::within).toList();
    Interval even = Spreads.one(spread, places);
    List<Girth> ring = Girth.of(outline, breadth, vertices, even, fineness, places);
    List<List<Girth>> holes = new ArrayList<>();
    for (Holes.Placed hole : Holes.of(frame, outline, places)) {
      holes.addAll(rings(Holes.area(hole.opening()), local));
    }
    Stations stations = Stations.of(breadth.stations(), places);
    boolean inMiddle =
        stations.all().isEmpty() ? even.from() < 0 && even.to() > 0 : stations.inMiddle();
    return new Loft(
        ring,
        holes,
        stations.places(fineness.stationPieces()),
        Sides.of(breadth.profile(), places),
        inMiddle ? 0 : Double.NaN);
  }

  private static List<List<Girth>> rings(Geometry area, Local local) {
    List<List<Girth>> rings = new ArrayList<>();
    for (int i = 0; i < area.getNumGeometries(); i++) {
      if (area.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        Coordinate[] at = polygon.getExteriorRing().getCoordinates();
        List<Girth> ring = new ArrayList<>();
        for (int k = 0; k + 1 < at.length; k++) {
          PointMm p = local.within(new PointMm(at[k].x, at[k].y));
          ring.add(new Girth(p.x(), p.z(), 0, 0));
        }
        rings.add(List.copyOf(ring));
      }
    }
    return rings;
  }

  private static Shaped filled(Loft loft) {
    return new Shaped(
        Lofted.solid(loft.strips(Lofted.pieces(loft.largestMm()), true)),
        Bulk.of(loft.strips(FINE, false)));
  }

  private static Shaped sheet(Sheet sheet) {
    double t = sheet.thicknessMm();
    Loft body = sheet.body();
    if (!sheet.closed()) {
      Sheeted strip = Sheeted.along(body.ring(), false, t);
      if (!sheet.sides()) {
        return new Shaped(strip.prisms(), strip.bulk());
      }
      int fine = Math.max(SHEET, Lofted.pieces(body.largestMm()));
      Sheeted sides = Sheeted.beside(Twist.without(body.strips(fine, false)), t);
      List<Prism> prisms = new ArrayList<>(strip.prisms());
      prisms.addAll(sides.prisms());
      return new Shaped(List.copyOf(prisms), strip.bulk().plus(sides.bulk()));
    }
    int pieces = Lofted.pieces(body.largestMm());
    double over = body.sides().isCurved() ? Lofted.overMm(body.largestMm(), pieces) : 0;
    Sheeted around = Sheeted.over(Twist.without(body.strips(pieces, true)), t, over, sheet.sides());
    Sheeted along =
        over > 0
            ? Sheeted.over(
                Twist.without(body.strips(Math.max(SHEET, pieces), false)), t, 0, sheet.sides())
            : around;
    return new Shaped(around.prisms(), along.bulk());
  }

  /** Returns the centre of its volume in side view. */
  PointMm centre() {
    double v = bulk.volume();
    return v > 0 ? new PointMm(bulk.first()[0] / v, bulk.first()[2] / v) : PointMm.ORIGIN;
  }

  /** Returns the centre of its volume across the machine, left positive, mm. */
  double centreYMm() {
    return bulk.volume() > 0 ? bulk.first()[1] / bulk.volume() : 0;
  }

  private static Shaped placed(Shaped here, LocalAxes frame, Spread spread, Places places) {
    Local local = Local.of(frame, places);
    RigidMotion motion = new RigidMotion(local.turnRad(), local.origin());
    AffineTransformation move =
        AffineTransformation.rotationInstance(motion.turnRad())
            .translate(motion.shift().x(), motion.shift().z());
    List<Prism> prisms = new ArrayList<>();
    for (Prism p : here.prisms) {
      Prism there =
          new Prism(
              move.transform(p.outline()),
              p.across(),
              p.pieces().stream().map(piece -> piece.moved(motion)).toList());
      prisms.add(there);
      if (spread.both()) {
        prisms.add(there.mirrored());
      }
    }
    Bulk bulk = here.bulk.moved(motion);
    return new Shaped(List.copyOf(prisms), spread.both() ? bulk.plus(bulk.mirrored()) : bulk);
  }
}
