package org.longlow.sketcher.picture;

import java.util.Comparator;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.TyreSize;
import org.longlow.constraints.machine.chassis.TyreSizeReader;
import org.longlow.constraints.shape.Tyres;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws a wheel: tyre, rim, laced spokes, what sits about its axle, hub and centre lines. */
final class WheelInk {

  private static final double HUB_MM = 46;
  private static final double RIM_DEPTH_MM = 20;
  private static final int SPOKES = 36;

  /** Rim share of the outside radius where the size does not say it. */
  private static final double RIM_SHARE = 0.72;

  /** Of a motor or drum, where its cover ends; of a disc or sprocket, where its band begins. */
  private static final double COVER_SHARE = 0.85;

  private static final double BAND_SHARE = 0.65;
  private static final double SPROCKET_SHARE = 0.8;

  private WheelInk() {}

  static void draw(Canvas canvas, Scene scene, WheelPart wheel) {
    String subject = "part:" + wheel.name();
    PictureLayer layer = PictureLayer.WHEELS;
    PointMm c = scene.places().pin(wheel.axle());
    double radius = Tyres.of(wheel, scene.places()).freeRadiusMm();
    double rim = rimRadiusMm(wheel.tyre(), radius);
    double inner = Math.max(0.3 * radius, rim - RIM_DEPTH_MM);
    double hub = Math.min(HUB_MM, 0.4 * inner);
    canvas.shape(layer, subject, ring(c, radius, rim), Style.area(Tone.PAPER, 1));
    canvas.shape(
        layer, subject, ring(c, radius, rim), Canvas.edge(Tone.INK).withFill(Tone.RUBBER, 0.55));
    double tread = radius - 0.13 * (radius - rim);
    canvas.shape(layer, subject, ring(c, radius, tread), Style.area(Tone.RUBBER, 0.8));
    canvas.circle(layer, subject, c, rim + 0.22 * (radius - rim), Canvas.hair(Tone.INK));
    spokes(canvas, subject, c, hub, inner);
    canvas.body(layer, subject, ring(c, rim, inner), Tone.STEEL, 0.3, Canvas.fine(Tone.INK));
    inside(canvas, scene, wheel, c);
    canvas.body(
        layer, subject, Planar.disc(c.x(), c.z(), hub), Tone.STEEL, 0.4, Canvas.fine(Tone.INK));
    canvas.circle(layer, subject, c, 0.4 * hub, Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1));
    cross(canvas, subject, c, radius + canvas.paper(4), scene.ground().along());
  }

  /** What sits about the axle, what is nearer to the viewer, at the right, later. */
  private static void inside(Canvas canvas, Scene scene, WheelPart wheel, PointMm c) {
    wheel.inside().stream()
        .sorted(
            Comparator.comparingDouble((HubBody b) -> -scene.places().value(b.y()))
                .thenComparing(b -> -scene.places().value(b.radius())))
        .forEach(
            b -> inside(canvas, "part:" + wheel.name(), b, c, scene.places().value(b.radius())));
  }

  private static void inside(
      Canvas canvas, String subject, HubBody body, PointMm c, double radius) {
    PictureLayer layer = PictureLayer.WHEELS;
    Style edge = Canvas.fine(Tone.INK);
    switch (body.what()) {
      case MOTOR, DRUM -> {
        Geometry disc = Planar.disc(c.x(), c.z(), radius);
        canvas.body(layer, subject, disc, Tone.ALUMINIUM, 0.5, edge);
        canvas.circle(layer, subject, c, COVER_SHARE * radius, Canvas.hair(Tone.INK));
      }
      case DISC ->
          canvas.body(layer, subject, ring(c, radius, BAND_SHARE * radius), Tone.STEEL, 0.5, edge);
      case SPROCKET ->
          canvas.body(
              layer, subject, ring(c, radius, SPROCKET_SHARE * radius), Tone.STEEL, 0.4, edge);
      // where round the axle it sits is not said, only how far it reaches
      case CALLIPER ->
          canvas.circle(layer, subject, c, radius, edge.withLine(LineType.DOUBLE_CHAIN));
    }
  }

  private static Geometry ring(PointMm c, double outer, double inner) {
    return Planar.FACTORY.createPolygon(
        Planar.disc(c.x(), c.z(), outer).getExteriorRing(),
        new LinearRing[] {Planar.disc(c.x(), c.z(), inner).getExteriorRing()});
  }

  /** Spokes leave the hub near the tangent, every second one the other way, as laced wheels do. */
  private static void spokes(Canvas canvas, String subject, PointMm c, double hub, double rim) {
    LineString[] wires = new LineString[SPOKES];
    for (int i = 0; i < SPOKES; i++) {
      double at = 2 * Math.PI * i / SPOKES;
      double lead = (i % 2 == 0 ? 1 : -1) * Math.toRadians(62);
      PointMm from = c.plus(PointMm.unit(at + lead).times(0.85 * hub));
      PointMm to = c.plus(PointMm.unit(at).times(rim));
      wires[i] = Planar.line(from.x(), from.z(), to.x(), to.z());
    }
    canvas.shape(
        PictureLayer.WHEELS,
        subject,
        Planar.FACTORY.createMultiLineString(wires),
        Canvas.hair(Tone.PENCIL));
  }

  /** Centre lines, level and upright on the road whatever the frame does. */
  private static void cross(Canvas canvas, String subject, PointMm c, double reach, PointMm level) {
    Style chain = Canvas.chain(Tone.PENCIL);
    for (PointMm d : new PointMm[] {level, level.left()}) {
      PointMm half = d.times(reach);
      canvas.line(PictureLayer.AXES, subject, chain, c.minus(half), c.plus(half));
    }
  }

  /** Returns the rim radius that the size names, or a usual one. */
  static double rimRadiusMm(String size, double radiusMm) {
    TyreSize named = size.isBlank() ? null : TyreSizeReader.read(size).size();
    double rim = named == null ? 0 : named.rimCode() * TyreSize.MM_PER_CODE / 2;
    return rim > 0.3 * radiusMm && rim < 0.95 * radiusMm ? rim : RIM_SHARE * radiusMm;
  }
}
