package org.longlow.sketcher.picture;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Lamps;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Hatch;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws each kind of part on its layer. */
final class PartInk {

  private PartInk() {}

  static void draw(Canvas canvas, Scene scene, PartShape shape) {
    Part part = shape.part();
    String subject = "part:" + part.name();
    Places places = scene.places();
    if (part instanceof Part.Wheel wheel) {
      WheelInk.draw(canvas, scene, wheel);
    } else if (part instanceof Part.Front front) {
      front(canvas, subject, front, places);
    } else if (part instanceof Part.Swingarm arm) {
      bar(canvas, subject, shape.outline(), Tone.STEEL);
      pivot(canvas, subject, places.pin(arm.pivot()), places.value(arm.depth()));
      pivot(canvas, subject, places.pin(arm.axle()), places.value(arm.depth()));
    } else if (part instanceof Part.Tube tube) {
      tube(canvas, subject, tube, shape, places);
    } else if (part instanceof Part.Solid solid) {
      solid(canvas, subject, solid, shape.outline());
    } else if (part instanceof Part.Shell shell) {
      shell(canvas, subject, shell, shape.outline());
    } else if (part instanceof Part.Cushion cushion) {
      CushionInk.draw(canvas, scene, cushion);
    } else if (part instanceof Part.Rest) {
      canvas.body(
          PictureLayer.CONTROLS,
          subject,
          shape.outline(),
          Tone.RUBBER,
          0.75,
          Canvas.edge(Tone.INK));
    } else if (part instanceof Part.Lamp lamp) {
      lamp(canvas, subject, lamp, shape.outline(), places);
    } else if (part instanceof Part.Stand stand) {
      bar(canvas, subject, shape.outline(), Tone.STEEL);
      pivot(canvas, subject, places.pin(stand.pivot()), places.value(stand.diameter()));
    }
  }

  private static void bar(Canvas canvas, String subject, Geometry outline, Tone tone) {
    canvas.body(PictureLayer.FRAME, subject, outline, tone, 0.35, Canvas.edge(Tone.INK));
  }

  private static void pivot(Canvas canvas, String subject, PointMm p, double widthMm) {
    double r = Math.max(0.22 * widthMm, canvas.paper(0.4));
    canvas.circle(PictureLayer.FRAME, subject, p, r, Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1));
    canvas.circle(PictureLayer.FRAME, subject, p, 0.3 * r, Style.area(Tone.INK, 1));
  }

  private static void front(Canvas canvas, String subject, Part.Front front, Places places) {
    double d = places.value(front.tube());
    PointMm top = places.pin(front.top());
    PointMm bottom = places.pin(front.bottom());
    PointMm axle = places.pin(front.axle());
    if (front.pivot().isPresent()) {
      PointMm pivot = places.pin(front.pivot().get());
      bar(canvas, subject, Curves.bar(top, bottom, d), Tone.STEEL);
      bar(canvas, subject, Curves.bar(bottom, pivot, d), Tone.STEEL);
      bar(canvas, subject, Curves.bar(pivot, axle, d), Tone.STEEL);
      pivot(canvas, subject, pivot, d);
    } else {
      // stanchion from the yokes, slider from half way down
      bar(canvas, subject, Curves.bar(top, axle, d), Tone.STEEL);
      bar(canvas, subject, Curves.bar(bottom.towards(axle, 0.5), axle, 1.35 * d), Tone.STEEL);
      bar(canvas, subject, Curves.bar(top, bottom, 1.5 * d), Tone.STEEL);
      canvas.line(PictureLayer.AXES, subject, Canvas.chain(Tone.PENCIL), bottom, axle);
    }
    pivot(canvas, subject, axle, d);
  }

  private static void tube(
      Canvas canvas, String subject, Part.Tube tube, PartShape shape, Places places) {
    boolean exhaust = tube.type() == Part.TubeKind.EXHAUST;
    PictureLayer layer = exhaust ? PictureLayer.EXHAUST : PictureLayer.FRAME;
    Tone tone = exhaust ? Tone.EXHAUST : Tone.STEEL;
    canvas.body(layer, subject, shape.outline(), tone, 0.4, Canvas.edge(Tone.INK));
    List<PointMm> line = Shapes.centreLine(tube, places);
    canvas.shape(layer, subject, Curves.line(line), Canvas.chain(Tone.INK));
  }

  private static void solid(Canvas canvas, String subject, Part.Solid solid, Geometry outline) {
    switch (solid.type()) {
      case ENGINE, MOTOR -> {
        canvas.body(PictureLayer.ENGINE, subject, outline, Tone.ENGINE, 0.3, Canvas.edge(Tone.INK));
        hatch(canvas, PictureLayer.ENGINE, subject, outline, 1.4, Math.PI / 4, Tone.ENGINE);
        if (solid.type() == Part.SolidKind.MOTOR) {
          hatch(canvas, PictureLayer.ENGINE, subject, outline, 1.4, -Math.PI / 4, Tone.ENGINE);
        }
      }
      case TANK -> {
        canvas.body(PictureLayer.TANK, subject, outline, Tone.TANK, 0.45, Canvas.edge(Tone.INK));
        canvas.shape(
            PictureLayer.TANK, subject, outline.buffer(-canvas.paper(0.8)), Canvas.hair(Tone.INK));
      }
      case RADIATOR -> {
        canvas.body(PictureLayer.ENGINE, subject, outline, Tone.STEEL, 0.25, Canvas.edge(Tone.INK));
        hatch(canvas, PictureLayer.ENGINE, subject, outline, 0.7, 0, Tone.PENCIL);
      }
      case SILENCER -> {
        canvas.body(
            PictureLayer.EXHAUST, subject, outline, Tone.EXHAUST, 0.5, Canvas.edge(Tone.INK));
        canvas.shape(
            PictureLayer.EXHAUST,
            subject,
            outline.buffer(-canvas.paper(0.6)),
            Canvas.hair(Tone.INK));
      }
      case BATTERY -> {
        canvas.body(PictureLayer.ENGINE, subject, outline, Tone.PENCIL, 0.2, Canvas.edge(Tone.INK));
        hatch(canvas, PictureLayer.ENGINE, subject, outline, 1.1, Math.PI / 2, Tone.PENCIL);
      }
      case BOX, BLOCK -> {
        canvas.body(PictureLayer.ENGINE, subject, outline, Tone.FAINT, 0.35, Canvas.edge(Tone.INK));
      }
      case LATCH, BRACKET, LEVER -> {
        canvas.body(PictureLayer.FRAME, subject, outline, Tone.STEEL, 0.55, Canvas.edge(Tone.INK));
        hatch(canvas, PictureLayer.FRAME, subject, outline, 0.8, -Math.PI / 4, Tone.INK);
      }
    }
  }

  private static void hatch(
      Canvas canvas,
      PictureLayer layer,
      String subject,
      Geometry outline,
      double spacingMm,
      double angleRad,
      Tone tone) {
    canvas.shape(
        layer, subject, Hatch.lines(outline, canvas.paper(spacingMm), angleRad), Canvas.hair(tone));
  }

  /** Shells are see-through, so that what they must clear stays in view. */
  private static void shell(Canvas canvas, String subject, Part.Shell shell, Geometry outline) {
    if (shell.type() == Part.ShellKind.SCREEN) {
      canvas.shape(
          PictureLayer.SCREEN,
          subject,
          outline,
          Canvas.edge(Tone.INK).withFill(Tone.SCREEN, shell.open() ? 0.9 : 0.45));
      return;
    }
    canvas.shape(
        PictureLayer.BODY,
        subject,
        outline,
        Style.line(Tone.COWL, 0.5).withFill(Tone.COWL, shell.open() ? 0.9 : 0.12));
  }

  private static void lamp(
      Canvas canvas, String subject, Part.Lamp lamp, Geometry outline, Places places) {
    boolean plate = lamp.type() == Part.LampKind.PLATE;
    Tone tone = plate ? Tone.PAPER : lamp.colour() == Part.LampColour.RED ? Tone.BAD : Tone.LAMP;
    canvas.body(PictureLayer.LAMPS, subject, outline, tone, 0.7, Canvas.edge(Tone.INK));
    PointMm at = places.pin(lamp.at());
    double half = places.value(lamp.halfHeight());
    if (lamp.type() == Part.LampKind.HEADLAMP && half > 0) {
      // the lens: a shallow bow on the lit face
      double out = (Lamps.facesForward(lamp.type()) ? 1 : -1) * 0.28 * half;
      Geometry lens =
          Curves.polygon(
              Curves.through(
                  List.of(
                      at.plus(new PointMm(0, -half)),
                      at.plus(new PointMm(out, 0)),
                      at.plus(new PointMm(0, half))),
                  List.of(false, true, false),
                  false));
      canvas.body(PictureLayer.LAMPS, subject, lens, tone, 0.35, Canvas.fine(Tone.INK));
    }
  }
}
