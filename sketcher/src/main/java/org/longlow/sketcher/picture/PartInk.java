package org.longlow.sketcher.picture;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
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
final class PartInk implements Part.Visitor<Void> {

  private final Canvas canvas;
  private final Scene scene;
  private final Geometry outline;
  private final String subject;
  private final Places places;

  private PartInk(Canvas canvas, Scene scene, PartShape shape) {
    this.canvas = canvas;
    this.scene = scene;
    this.outline = shape.outline();
    this.subject = "part:" + shape.part().name();
    this.places = scene.places();
  }

  static void draw(Canvas canvas, Scene scene, PartShape shape) {
    shape.part().accept(new PartInk(canvas, scene, shape));
  }

  @Override
  public Void wheel(WheelPart wheel) {
    WheelInk.draw(canvas, scene, wheel);
    return null;
  }

  @Override
  public Void swingarm(SwingarmPart arm) {
    bar(outline);
    pivot(places.pin(arm.pivot()), places.value(arm.depth()));
    pivot(places.pin(arm.axle()), places.value(arm.depth()));
    return null;
  }

  @Override
  public Void cushion(CushionPart cushion) {
    CushionInk.draw(canvas, scene, cushion);
    return null;
  }

  @Override
  public Void rest(RestPart rest) {
    return body(PictureLayer.CONTROLS, Tone.RUBBER, 0.75);
  }

  @Override
  public Void stand(StandPart stand) {
    bar(outline);
    pivot(places.pin(stand.pivot()), places.value(stand.diameter()));
    return null;
  }

  private Void body(PictureLayer layer, Tone tone, double opacity) {
    canvas.body(layer, subject, outline, tone, opacity, Canvas.edge(Tone.INK));
    return null;
  }

  private void bar(Geometry bar) {
    canvas.body(PictureLayer.FRAME, subject, bar, Tone.STEEL, 0.35, Canvas.edge(Tone.INK));
  }

  private void pivot(PointMm p, double widthMm) {
    double r = Math.max(0.22 * widthMm, canvas.paper(0.4));
    canvas.circle(PictureLayer.FRAME, subject, p, r, Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1));
    canvas.circle(PictureLayer.FRAME, subject, p, 0.3 * r, Style.area(Tone.INK, 1));
  }

  @Override
  public Void front(FrontPart front) {
    double d = places.value(front.tube());
    PointMm top = places.pin(front.top());
    PointMm bottom = places.pin(front.bottom());
    PointMm axle = places.pin(front.axle());
    if (front.pivot().isPresent()) {
      PointMm pivot = places.pin(front.pivot().get());
      bar(Curves.bar(top, bottom, d));
      bar(Curves.bar(bottom, pivot, d));
      bar(Curves.bar(pivot, axle, d));
      pivot(pivot, d);
    } else {
      // stanchion from the yokes, slider from half way down
      bar(Curves.bar(top, axle, d));
      bar(Curves.bar(bottom.towards(axle, 0.5), axle, 1.35 * d));
      bar(Curves.bar(top, bottom, 1.5 * d));
      canvas.line(PictureLayer.AXES, subject, Canvas.chain(Tone.PENCIL), bottom, axle);
    }
    pivot(axle, d);
    return null;
  }

  @Override
  public Void tube(TubePart tube) {
    return switch (tube.type()) {
      case RAIL -> tube(tube, PictureLayer.FRAME, Tone.STEEL);
      case EXHAUST -> tube(tube, PictureLayer.EXHAUST, Tone.EXHAUST);
    };
  }

  private Void tube(TubePart tube, PictureLayer layer, Tone tone) {
    body(layer, tone, 0.4);
    Geometry line = Curves.line(Shapes.centreLine(tube, places));
    canvas.shape(layer, subject, line, Canvas.chain(Tone.INK));
    return null;
  }

  @Override
  public Void flat(Part.Flat flat) {
    return switch (flat.look()) {
      case ENGINE -> hatched(PictureLayer.ENGINE, Tone.ENGINE, 0.3, 1.4, Math.PI / 4, Tone.ENGINE);
      case MOTOR -> {
        hatched(PictureLayer.ENGINE, Tone.ENGINE, 0.3, 1.4, Math.PI / 4, Tone.ENGINE);
        yield hatch(PictureLayer.ENGINE, 1.4, -Math.PI / 4, Tone.ENGINE);
      }
      case TANK -> walled(PictureLayer.TANK, Tone.TANK, 0.45, 0.8);
      case RADIATOR -> hatched(PictureLayer.ENGINE, Tone.STEEL, 0.25, 0.7, 0, Tone.PENCIL);
      case SILENCER -> walled(PictureLayer.EXHAUST, Tone.EXHAUST, 0.5, 0.6);
      case BATTERY -> hatched(PictureLayer.ENGINE, Tone.PENCIL, 0.2, 1.1, Math.PI / 2, Tone.PENCIL);
      case BOX, BLOCK -> body(PictureLayer.ENGINE, Tone.FAINT, 0.35);
      case LATCH, BRACKET, LEVER ->
          hatched(PictureLayer.FRAME, Tone.STEEL, 0.55, 0.8, -Math.PI / 4, Tone.INK);
    };
  }

  private Void hatched(
      PictureLayer layer,
      Tone tone,
      double opacity,
      double spacingMm,
      double angleRad,
      Tone lines) {
    body(layer, tone, opacity);
    return hatch(layer, spacingMm, angleRad, lines);
  }

  private Void hatch(PictureLayer layer, double spacingMm, double angleRad, Tone tone) {
    Geometry lines = Hatch.lines(outline, canvas.paper(spacingMm), angleRad);
    canvas.shape(layer, subject, lines, Canvas.hair(tone));
    return null;
  }

  /** A hollow body, its wall shown by a second line. */
  private Void walled(PictureLayer layer, Tone tone, double opacity, double wallMm) {
    body(layer, tone, opacity);
    canvas.shape(layer, subject, outline.buffer(-canvas.paper(wallMm)), Canvas.hair(Tone.INK));
    return null;
  }

  /** Shells are see-through, so that what they must clear stays in view. */
  @Override
  public Void shell(ShellPart shell) {
    return switch (shell.type()) {
      case COWL -> {
        Style edge = Style.line(Tone.COWL, 0.5);
        yield sheet(PictureLayer.BODY, edge, Tone.COWL, shell.open() ? 0.9 : 0.12);
      }
      case SCREEN -> {
        Style edge = Canvas.edge(Tone.INK);
        yield sheet(PictureLayer.SCREEN, edge, Tone.SCREEN, shell.open() ? 0.9 : 0.45);
      }
    };
  }

  private Void sheet(PictureLayer layer, Style edge, Tone tone, double opacity) {
    canvas.shape(layer, subject, outline, edge.withFill(tone, opacity));
    return null;
  }

  @Override
  public Void lamp(LampPart lamp) {
    boolean plate = lamp.type() == LampPart.Kind.PLATE;
    Tone tone = plate ? Tone.PAPER : lamp.colour() == LampPart.Colour.RED ? Tone.BAD : Tone.LAMP;
    body(PictureLayer.LAMPS, tone, 0.7);
    PointMm at = places.pin(lamp.at());
    double half = places.value(lamp.halfHeight());
    if (lamp.type() == LampPart.Kind.HEADLAMP && half > 0) {
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
    return null;
  }
}
