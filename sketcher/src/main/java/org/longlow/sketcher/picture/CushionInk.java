package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Cushions;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Hatch;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws cushions: board, layers of foam, and the foam pressed in under whoever sits on it. */
final class CushionInk {

  private static final int STATIONS = 64;

  private CushionInk() {}

  static void draw(Canvas canvas, Scene scene, CushionPart cushion) {
    String subject = "part:" + cushion.name();
    PictureLayer layer = PictureLayer.SEAT;
    List<Geometry> bands = Cushions.bands(cushion, scene.places());
    board(canvas, subject, bands.get(0), cushion, scene.places());
    Scene.Sunk sunk = scene.sunk().get(cushion.name());
    List<Geometry> foam =
        sunk == null || sunk.totalMm() <= 0
            ? bands.subList(1, bands.size())
            : pressed(cushion, scene, sunk);
    for (int i = 0; i < foam.size(); i++) {
      FoamSpec spec = cushion.layers().get(cushion.layers().size() - 1 - i);
      Tone tone = spec.closedCell() || i == 0 && foam.size() > 1 ? Tone.FOAM_FIRM : Tone.FOAM_SOFT;
      canvas.body(layer, subject, foam.get(i), tone, 0.9, Canvas.fine(Tone.INK));
      stipple(canvas, subject, foam.get(i), spec);
    }
    if (sunk != null && bands.size() > 1) {
      Style free = Canvas.hair(Tone.PENCIL).withLine(LineType.DASHED);
      for (Geometry band : bands.subList(1, bands.size())) {
        canvas.shape(layer, subject, band, free);
      }
    }
  }

  private static void board(
      Canvas canvas, String subject, Geometry board, CushionPart cushion, Places places) {
    PointMm along = places.pin(cushion.to()).minus(places.pin(cushion.from()));
    canvas.body(PictureLayer.SEAT, subject, board, Tone.WOOD, 0.75, Canvas.edge(Tone.INK));
    // veneers of the plywood run with the board
    canvas.shape(
        PictureLayer.SEAT,
        subject,
        Hatch.lines(board, Math.max(2.5, canvas.paper(0.3)), along.angleRad()),
        Canvas.hair(Tone.INK));
  }

  /** Cells: crosses for closed-cell foam, wide-set strokes for open cells; firmer is closer. */
  private static void stipple(Canvas canvas, String subject, Geometry foam, FoamSpec spec) {
    double step = canvas.paper(spec.closedCell() ? 0.8 : 1.6);
    Style dots = Canvas.hair(Tone.PENCIL).withLine(LineType.DASHED);
    canvas.shape(PictureLayer.SEAT, subject, Hatch.lines(foam, step, Math.PI / 4), dots);
    if (spec.closedCell()) {
      canvas.shape(PictureLayer.SEAT, subject, Hatch.lines(foam, step, -Math.PI / 4), dots);
    }
  }

  /**
   * Returns the layers from the board up, pressed in where the person is: nowhere deeper than the
   * solved sink, shared among the layers as solved.
   */
  static List<Geometry> pressed(CushionPart cushion, Scene scene, Scene.Sunk sunk) {
    Places places = scene.places();
    PointMm from = places.pin(cushion.from());
    PointMm to = places.pin(cushion.to());
    PointMm n = Cushions.towardsPerson(cushion, from, to);
    List<Double> free = new ArrayList<>();
    double height = 0;
    for (int i = cushion.layers().size() - 1; i >= 0; i--) {
      double t = places.value(cushion.layers().get(i).thickness());
      free.add(t);
      height += t;
    }
    double[] depth = depths(scene, cushion.seat(), from, to, n, height, sunk.totalMm());
    List<Geometry> layers = new ArrayList<>();
    double[] low = new double[STATIONS + 1];
    for (int i = 0; i < free.size(); i++) {
      double share = sunk.layerSinksMm().get(i) / sunk.totalMm();
      List<PointMm> ring = new ArrayList<>();
      double[] high = new double[STATIONS + 1];
      for (int s = 0; s <= STATIONS; s++) {
        high[s] = low[s] + Math.max(0.5, free.get(i) - share * depth[s]);
        ring.add(from.towards(to, (double) s / STATIONS).plus(n.times(low[s])));
      }
      for (int s = STATIONS; s >= 0; s--) {
        ring.add(from.towards(to, (double) s / STATIONS).plus(n.times(high[s])));
      }
      layers.add(Curves.polygon(ring));
      low = high;
    }
    return layers;
  }

  /** Returns how deep the surface is pressed at stations along the board, mm. */
  private static double[] depths(
      Scene scene, String seat, PointMm from, PointMm to, PointMm n, double height, double most) {
    double[] depth = new double[STATIONS + 1];
    for (Manikin m : scene.people()) {
      if (!m.seat().equals(seat)) {
        continue;
      }
      for (int s = 0; s <= STATIONS; s++) {
        PointMm surface = from.towards(to, (double) s / STATIONS).plus(n.times(height));
        depth[s] = Math.max(depth[s], Math.min(most, depthAt(m.withoutArms(), surface, n)));
      }
    }
    return smoothed(smoothed(depth));
  }

  /** Returns how far below {@code surface} the body reaches at that station, at least 0, mm. */
  private static double depthAt(Geometry body, PointMm surface, PointMm n) {
    double deepest = 0;
    double tx = n.z();
    double tz = -n.x();
    for (int g = 0; g < body.getNumGeometries(); g++) {
      CoordinateSequence ring =
          ((Polygon) body.getGeometryN(g)).getExteriorRing().getCoordinateSequence();
      for (int i = 1; i < ring.size(); i++) {
        double ax = ring.getX(i - 1) - surface.x();
        double az = ring.getY(i - 1) - surface.z();
        double bx = ring.getX(i) - surface.x();
        double bz = ring.getY(i) - surface.z();
        double a = ax * tx + az * tz;
        double b = bx * tx + bz * tz;
        if (a > 0 != b > 0) {
          double share = a / (a - b);
          double below = -((ax + share * (bx - ax)) * n.x() + (az + share * (bz - az)) * n.z());
          deepest = Math.max(deepest, below);
        }
      }
    }
    return deepest;
  }

  /** Foam does not step: every station is eased towards its neighbours. */
  private static double[] smoothed(double[] depth) {
    int reach = 2;
    double[] out = new double[depth.length];
    for (int s = 0; s < depth.length; s++) {
      double sum = 0;
      int count = 0;
      for (int k = Math.max(0, s - reach); k <= Math.min(depth.length - 1, s + reach); k++) {
        sum += depth[k];
        count++;
      }
      out[s] = sum / count;
    }
    return out;
  }
}
