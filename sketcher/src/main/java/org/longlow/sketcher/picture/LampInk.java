package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.shape.Lamps;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Hatch;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Draws lamps, reflectors and plates inside their boxes: the lens on the lit face, the case behind.
 * Where the case is not square, a hairline keeps the box that gaps are measured to.
 */
final class LampInk {

  private final Canvas canvas;
  private final String subject;
  private final LampPart lamp;
  private final Geometry outline;
  private final PointMm at;
  private final PointMm back;
  private final double half;
  private final double depth;

  private LampInk(Canvas canvas, Scene scene, LampPart lamp, Geometry outline) {
    this.canvas = canvas;
    this.subject = "part:" + lamp.name();
    this.lamp = lamp;
    this.outline = outline;
    at = scene.places().pin(lamp.at());
    half = scene.places().value(lamp.halfHeight());
    depth = scene.places().value(lamp.depth());
    back = new PointMm(Lamps.facesForward(lamp.type()) ? -1 : 1, 0);
  }

  static void draw(Canvas canvas, Scene scene, LampPart lamp, Geometry outline) {
    new LampInk(canvas, scene, lamp, outline).draw();
  }

  private void draw() {
    switch (lamp.type()) {
      case PLATE -> box(Tone.PAPER, 0.7);
      case HEADLAMP, DRIVING_BEAM, DAYTIME, FRONT_FOG -> beam();
      case REAR_REFLECTOR, SIDE_REFLECTOR -> reflector();
      case PLATE_LAMP -> downward();
      default -> lens();
    }
  }

  private Tone light() {
    return light(lamp);
  }

  /** Returns the tone of a lamp's lit face. */
  static Tone light(LampPart lamp) {
    return switch (lamp.colour()) {
      case WHITE -> Tone.LAMP;
      case AMBER -> Tone.LAMP_AMBER;
      case RED -> Tone.LAMP_RED;
    };
  }

  private void box(Tone tone, double opacity) {
    canvas.body(PictureLayer.LAMPS, subject, outline, tone, opacity, Canvas.edge(Tone.INK));
  }

  /** Returns a place in the box: share of the depth behind the face, of half the height up. */
  private PointMm in(double behind, double up) {
    return at.plus(back.times(behind * depth)).plus(new PointMm(0, up * half));
  }

  private void shape(List<PointMm> ring, Style style) {
    canvas.shape(PictureLayer.LAMPS, subject, Flow.polygon(ring), style);
  }

  private void hair(double behind, double up, double toBehind, double toUp) {
    PointMm a = in(behind, up);
    PointMm b = in(toBehind, toUp);
    canvas.line(PictureLayer.LAMPS, subject, Canvas.hair(Tone.INK), a, b);
  }

  /** A bowl behind a bowed glass with a rim between them. */
  private void beam() {
    canvas.shape(PictureLayer.LAMPS, subject, outline, Canvas.hair(Tone.INK));
    List<PointMm> bowl =
        new ArrayList<>(
            Flow.through(
                List.of(
                    in(0.2, 1),
                    in(0.55, 0.86),
                    in(0.88, 0.5),
                    in(1, 0),
                    in(0.88, -0.5),
                    in(0.55, -0.86),
                    in(0.2, -1))));
    shape(bowl, Style.area(Tone.PAPER, 1));
    shape(bowl, Canvas.edge(Tone.INK).withFill(Tone.STEEL, 0.45));
    List<PointMm> glass =
        Flow.through(
            List.of(
                in(0.14, 1),
                in(0.05, 0.72),
                in(0, 0.3),
                in(0, -0.3),
                in(0.05, -0.72),
                in(0.14, -1)));
    shape(glass, Style.area(Tone.PAPER, 1));
    shape(glass, Canvas.edge(Tone.INK).withFill(light(), 0.85));
    shape(
        List.of(in(0.14, 1), in(0.22, 1), in(0.22, -1), in(0.14, -1)),
        Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1));
  }

  /** A case with a fluted lens on its lit face. */
  private void lens() {
    box(Tone.RUBBER, 0.45);
    shape(
        List.of(in(0, 1), in(0.5, 1), in(0.5, -1), in(0, -1)),
        Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1));
    shape(
        List.of(in(0, 1), in(0.5, 1), in(0.5, -1), in(0, -1)),
        Canvas.edge(Tone.INK).withFill(light(), 0.85));
    hair(0, 0.34, 0.5, 0.34);
    hair(0, -0.34, 0.5, -0.34);
  }

  /** Crossed lines, as the prisms look. */
  private void reflector() {
    box(light(), 0.85);
    for (double slant : new double[] {Math.PI / 4, -Math.PI / 4}) {
      canvas.shape(
          PictureLayer.LAMPS,
          subject,
          Hatch.lines(outline, canvas.paper(0.8), slant),
          Canvas.hair(Tone.INK));
    }
  }

  /** It shines on the plate below. */
  private void downward() {
    box(Tone.RUBBER, 0.45);
    PointMm a = in(0, -1);
    PointMm b = in(1, -0.3);
    Geometry glass = Planar.rectangle(Math.min(a.x(), b.x()), a.z(), Math.max(a.x(), b.x()), b.z());
    canvas.body(PictureLayer.LAMPS, subject, glass, light(), 0.85, Canvas.fine(Tone.INK));
  }
}
