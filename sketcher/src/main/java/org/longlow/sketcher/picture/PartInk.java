package org.longlow.sketcher.picture;

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
    bar(outline, Materials.tone(arm, Tone.STEEL));
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
    if (rest.type().board()) {
      body(PictureLayer.CONTROLS, Materials.tone(rest, Tone.RUBBER), 0.6);
      ribs(places.pin(rest.to().orElseThrow()).minus(places.pin(rest.at())).angleRad());
      return null;
    }
    body(PictureLayer.CONTROLS, Tone.RUBBER, 0.75);
    roundRest(rest, places.pin(rest.at()), 0.5 * places.value(rest.diameter()));
    return null;
  }

  /** Ribs across a board, for the sole to hold on. */
  private void ribs(double alongRad) {
    canvas.shape(
        PictureLayer.CONTROLS,
        subject,
        Hatch.lines(outline, canvas.paper(0.9), alongRad + Math.PI / 2),
        Canvas.hair(Tone.INK));
  }

  /** The end of a bar in its rubber; a peg's rubber is toothed. */
  private void roundRest(RestPart rest, PointMm at, double r) {
    PictureLayer layer = PictureLayer.CONTROLS;
    boolean peg = rest.type().limb() == RestPart.Limb.FOOT;
    if (peg) {
      for (int i = 0; i < 10; i++) {
        PointMm way = PointMm.unit(2 * Math.PI * i / 10);
        canvas.line(
            layer,
            subject,
            Canvas.hair(Tone.PAPER),
            at.plus(way.times(0.62 * r)),
            at.plus(way.times(r)));
      }
    }
    Style metal = Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1);
    canvas.circle(layer, subject, at, 0.55 * r, metal);
    canvas.circle(layer, subject, at, (peg ? 0.18 : 0.3) * r, Canvas.fine(Tone.INK));
  }

  @Override
  public Void stand(StandPart stand) {
    bar(outline, Tone.STEEL);
    PointMm pivot = places.pin(stand.pivot());
    PointMm foot = places.pin(stand.stowed());
    double d = places.value(stand.diameter());
    pivot(pivot, d);
    PointMm way = foot.minus(pivot);
    double length = way.length();
    if (length > 4 * d) {
      PointMm u = way.times(1 / length);
      PointMm side = u.left().times(0.5 * d);
      PointMm toe = foot.minus(u.times(0.6 * d));
      canvas.line(
          PictureLayer.FRAME, subject, Canvas.fine(Tone.INK), toe.plus(side), toe.minus(side));
      // the coil that holds it up
      ShockInk.coil(
          canvas,
          subject,
          Canvas.hair(Tone.INK),
          pivot.plus(u.times(0.8 * d)),
          u.times(0.4 * length),
          side.times(0.5),
          6);
    }
    return null;
  }

  private Void body(PictureLayer layer, Tone tone, double opacity) {
    canvas.body(layer, subject, outline, tone, opacity, Canvas.edge(Tone.INK));
    return null;
  }

  private void bar(Geometry bar, Tone tone) {
    canvas.body(PictureLayer.FRAME, subject, bar, tone, 0.35, Canvas.edge(Tone.INK));
  }

  private void pivot(PointMm p, double widthMm) {
    double r = Math.max(0.22 * widthMm, canvas.paper(0.4));
    canvas.circle(PictureLayer.FRAME, subject, p, r, Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1));
    canvas.circle(PictureLayer.FRAME, subject, p, 0.3 * r, Style.area(Tone.INK, 1));
  }

  @Override
  public Void front(FrontPart front) {
    Tone tone = Materials.tone(front, Tone.STEEL);
    double d = places.value(front.tube());
    PointMm top = places.pin(front.top());
    PointMm bottom = places.pin(front.bottom());
    PointMm axle = places.pin(front.axle());
    if (front.pivot().isPresent()) {
      if (front.type().turns()) {
        bar(Curves.bar(top, bottom, d), tone);
      }
      for (FrontPart.Piece piece : front.pieces()) {
        bar(Curves.bar(places.pin(piece.from()), places.pin(piece.to()), d), tone);
      }
      pivot(places.pin(front.pivot().get()), d);
      front.links().pins().forEach(pin -> pivot(places.pin(pin), d));
    } else {
      // stanchion from the yokes, slider from half way down
      bar(Curves.bar(top, axle, d), tone);
      bar(Curves.bar(bottom.towards(axle, 0.5), axle, 1.35 * d), tone);
      bar(Curves.bar(top, bottom, 1.5 * d), tone);
      canvas.line(PictureLayer.AXES, subject, Canvas.chain(Tone.PENCIL), bottom, axle);
    }
    pivot(axle, d);
    return null;
  }

  @Override
  public Void tube(TubePart tube) {
    return tube.type() == TubePart.Kind.EXHAUST
        ? tube(tube, PictureLayer.EXHAUST, Tone.EXHAUST)
        : tube(tube, PictureLayer.FRAME, Materials.tone(tube, Tone.STEEL));
  }

  private Void tube(TubePart tube, PictureLayer layer, Tone tone) {
    body(layer, tone, 0.4);
    Geometry line = Curves.line(Shapes.centreLine(tube, places));
    canvas.shape(layer, subject, line, Canvas.chain(Tone.INK));
    return null;
  }

  @Override
  public Void flat(Part.Flat flat) {
    BodyInk.draw(canvas, scene, flat, outline);
    return null;
  }

  /** Shells are see-through, so that what they must clear stays in view. */
  @Override
  public Void shell(ShellPart shell) {
    if (shell.type().seeThrough()) {
      sheet(PictureLayer.SCREEN, Canvas.edge(Tone.INK), Tone.SCREEN, shell.open() ? 0.9 : 0.45);
      if (!shell.open()) {
        shine();
      }
      return null;
    }
    Tone tone = Materials.tone(shell, Tone.COWL);
    sheet(PictureLayer.BODY, Style.line(tone, 0.5), tone, shell.open() ? 0.9 : 0.12);
    return null;
  }

  private void sheet(PictureLayer layer, Style edge, Tone tone, double opacity) {
    canvas.shape(layer, subject, outline, edge.withFill(tone, opacity));
  }

  /** Short slanting strokes, as glass is drawn. */
  private void shine() {
    Grain.Disc room = Grain.roomiest(outline);
    double r = Math.min(0.8 * room.radiusMm(), canvas.paper(4));
    PointMm way = PointMm.unit(Math.PI / 3).times(r);
    for (double off : new double[] {-0.25, 0, 0.25}) {
      PointMm c = room.centre().plus(new PointMm(off * r, 0));
      PointMm half = way.times(off == 0 ? 0.9 : 0.6);
      canvas.line(PictureLayer.SCREEN, subject, Canvas.hair(Tone.INK), c.minus(half), c.plus(half));
    }
  }

  @Override
  public Void lamp(LampPart lamp) {
    LampInk.draw(canvas, scene, lamp, outline);
    return null;
  }
}
