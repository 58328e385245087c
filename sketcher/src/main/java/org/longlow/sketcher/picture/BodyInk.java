package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Part;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Hatch;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Draws bodies that fill an outline of their own, each with the few lines it is known by. The
 * outline stays as it is; a kind without a look of its own gets the lining of its material.
 */
final class BodyInk {

  /** A filler cap, and the head of a bolt, mm; usual sizes, judgement. */
  private static final double CAP_MM = 50;

  private static final double BOLT_MM = 5;

  private final Canvas canvas;
  private final Scene scene;
  private final Part.Flat part;
  private final Geometry outline;
  private final String subject;
  private PictureLayer layer = PictureLayer.ENGINE;

  private BodyInk(Canvas canvas, Scene scene, Part.Flat part, Geometry outline) {
    this.canvas = canvas;
    this.scene = scene;
    this.part = part;
    this.outline = outline;
    this.subject = "part:" + part.name();
  }

  static void draw(Canvas canvas, Scene scene, Part.Flat part, Geometry outline) {
    new BodyInk(canvas, scene, part, outline).draw();
  }

  private void draw() {
    switch (part.look()) {
      case ENGINE -> engine();
      case MOTOR -> motor();
      case TANK -> tank();
      case RADIATOR -> radiator();
      case SILENCER -> silencer();
      case BATTERY -> battery();
      case BOX -> box();
      case LATCH, BRACKET, LEVER, INSTRUMENT, MIRROR -> {
        layer = PictureLayer.FRAME;
        lined();
      }
      default -> lined();
    }
  }

  private void body(Tone tone, double opacity) {
    canvas.body(layer, subject, outline, tone, opacity, Canvas.edge(Tone.INK));
  }

  private void hair(Geometry lines) {
    canvas.shape(layer, subject, lines, Canvas.hair(Tone.INK));
  }

  private void fine(Geometry lines) {
    canvas.shape(layer, subject, lines, Canvas.fine(Tone.INK));
  }

  /** Plate or block: lined, with bolts where its pins are. */
  private void lined() {
    body(Materials.tone(part, Tone.FAINT), 0.4);
    Materials.line(canvas, layer, subject, part, outline);
    Envelope box = outline.getEnvelopeInternal();
    for (String pin : part.pins()) {
      PointMm p = scene.places().pin(pin);
      if (box.contains(p.x(), p.z()) && Grain.roomMm(outline, p) > BOLT_MM) {
        bolt(p);
      }
    }
  }

  private void bolt(PointMm p) {
    canvas.circle(layer, subject, p, BOLT_MM, Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1));
    canvas.circle(layer, subject, p, 0.4 * BOLT_MM, Style.area(Tone.INK, 1));
  }

  /** A cover with its bolts on the crankcase, fins over it. */
  private void engine() {
    body(Materials.tone(part, Tone.ENGINE), 0.3);
    Grain.Disc room = Grain.roomiest(outline);
    PointMm c = room.centre();
    double top = c.z() + 1.05 * room.radiusMm();
    hair(
        Grain.kept(
            Hatch.lines(outline, canvas.paper(1.1), 0, 0), l -> l.getCoordinateN(0).y > top));
    cover(room, 8);
    canvas.circle(layer, subject, c, 0.22 * room.radiusMm(), Canvas.fine(Tone.INK));
  }

  /** A drum: end cover, shaft and cooling ribs. */
  private void motor() {
    body(Materials.tone(part, Tone.ENGINE), 0.35);
    Grain.Disc room = Grain.roomiest(outline);
    double r = room.radiusMm();
    List<Geometry> ribs = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      PointMm way = PointMm.unit(2 * Math.PI * (i + 0.5) / 12);
      PointMm a = room.centre().plus(way.times(0.36 * r));
      PointMm b = room.centre().plus(way.times(0.7 * r));
      ribs.add(Planar.line(a.x(), a.z(), b.x(), b.z()));
    }
    hair(Planar.FACTORY.buildGeometry(ribs));
    cover(room, 6);
    canvas.circle(
        layer, subject, room.centre(), 0.3 * r, Canvas.fine(Tone.INK).withFill(Tone.STEEL, 0.5));
    canvas.circle(
        layer, subject, room.centre(), 0.12 * r, Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1));
  }

  private void cover(Grain.Disc room, int bolts) {
    double r = room.radiusMm();
    canvas.circle(layer, subject, room.centre(), 0.86 * r, Canvas.fine(Tone.INK));
    for (int i = 0; i < bolts; i++) {
      PointMm at = room.centre().plus(PointMm.unit(2 * Math.PI * i / bolts).times(0.76 * r));
      canvas.circle(layer, subject, at, Math.min(0.045 * r, BOLT_MM), Style.area(Tone.INK, 1));
    }
  }

  /** Its seam follows the outline; the filler cap lies in the top. */
  private void tank() {
    layer = PictureLayer.TANK;
    body(Tone.TANK, 0.45);
    hair(outline.buffer(-canvas.paper(0.8), 3));
    PointMm top = top();
    double half = CAP_MM / 2;
    double below = Math.min(under(top.x() - half), under(top.x() + half));
    if (Double.isFinite(below)) {
      double low = below - 0.3 * CAP_MM;
      Geometry cap = Planar.rectangle(top.x() - half, low, top.x() + half, below);
      canvas.body(layer, subject, cap, Tone.STEEL, 0.5, Canvas.fine(Tone.INK));
      double neck = low - 0.35 * CAP_MM;
      double in = 0.75 * half;
      hair(Planar.line(top.x() - in, low, top.x() - in, neck));
      hair(Planar.line(top.x() + in, low, top.x() + in, neck));
    }
  }

  /** Returns the middle of the highest places of the outline. */
  private PointMm top() {
    double high = outline.getEnvelopeInternal().getMaxY();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Coordinate c : outline.getCoordinates()) {
      if (c.y > high - 3) {
        least = Math.min(least, c.x);
        most = Math.max(most, c.x);
      }
    }
    return new PointMm(0.5 * (least + most), high);
  }

  /** Returns how high the outline is over {@code x}; not finite beside it. */
  private double under(double x) {
    Geometry upright = Hatch.line(outline, x, 0, Math.PI / 2);
    return upright.isEmpty()
        ? Double.NEGATIVE_INFINITY
        : upright.getEnvelopeInternal().getMaxY() - 1;
  }

  /** End tanks, and the fins of the core between them. */
  private void radiator() {
    body(Materials.tone(part, Tone.STEEL), 0.3);
    Grain grain = Grain.of(outline);
    Geometry fins = Hatch.lines(outline, canvas.paper(0.55), grain.angleRad() + Math.PI / 2, 0);
    hair(grain.between(fins, 0.14, 0.86));
    fine(grain.across(0.14));
    fine(grain.across(0.86));
  }

  /** Bands at both ends, and the shine along the can. */
  private void silencer() {
    layer = PictureLayer.EXHAUST;
    body(Tone.EXHAUST, 0.5);
    Grain grain = Grain.of(outline);
    for (double at : new double[] {0.1, 0.13, 0.87, 0.9}) {
      fine(grain.across(at));
    }
    Geometry shine = Hatch.lines(outline, canvas.paper(0.9), grain.angleRad(), 0);
    int n = shine.getNumGeometries();
    for (int i = n - 1; i > 0 && i >= n - 3; i--) {
      hair(shine.getGeometryN(i));
    }
  }

  /** A lid with poles let into it, and their signs. */
  private void battery() {
    body(Tone.PENCIL, 0.2);
    Grain up = Grain.up(outline);
    fine(up.across(0.8));
    Envelope box = outline.getEnvelopeInternal();
    double w = box.getWidth();
    double h = box.getHeight();
    double arm = Math.min(0.08 * w, 0.1 * h);
    for (double share : new double[] {0.24, 0.76}) {
      double x = box.getMinX() + share * w;
      double z = box.getMinY() + 0.62 * h;
      canvas.shape(
          layer,
          subject,
          Planar.rectangle(
              x - 0.08 * w, box.getMinY() + 0.8 * h, x + 0.08 * w, box.getMinY() + 0.92 * h),
          Style.area(Tone.INK, 0.75));
      fine(Planar.line(x - arm, z, x + arm, z));
      if (share < 0.5) {
        fine(Planar.line(x, z - arm, x, z + arm));
      }
    }
  }

  /** A case: lid and hasp. */
  private void box() {
    body(Materials.tone(part, Tone.FAINT), 0.35);
    Geometry lid = Grain.up(outline).across(0.78);
    fine(lid);
    Coordinate mid = lid.getEnvelopeInternal().centre();
    if (mid != null) {
      double half = canvas.paper(0.7);
      canvas.shape(
          layer,
          subject,
          Planar.rectangle(mid.x - half, mid.y - 1.4 * half, mid.x + half, mid.y + 0.6 * half),
          Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1));
    }
  }
}
