package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Draws a head: a helmet with visor, chin piece and lower rim where one is worn, else a face in
 * profile. The outline is the flesh's, cut off at the rim; every place is a share of the head's
 * radius, the helmet's allowance in it, in axes that turn with the gaze.
 */
final class HeadInk {

  /** Shares of the radius: where the rim runs from the chin to the nape. */
  private static final double RIM_FRONT = -1.06;

  private static final double RIM_BACK = -0.86;

  private final Canvas canvas;
  private final String subject;
  private final Polygon flesh;
  private final PointMm centre;
  private final PointMm gaze;
  private final PointMm up;
  private final double r;

  private HeadInk(Canvas canvas, Manikin m, String subject) {
    this.canvas = canvas;
    this.subject = subject;
    flesh = m.flesh(Figure.Part.HEAD);
    centre = m.joints().headCentre();
    gaze = m.gaze();
    up = gaze.left();
    r = m.headRadiusMm();
  }

  static void draw(Canvas canvas, Manikin m, String subject) {
    HeadInk ink = new HeadInk(canvas, m, subject);
    if (m.helmet()) {
      ink.helmet();
    } else {
      ink.face();
    }
  }

  /** Returns what is drawn as the helmet, in the axes of the frame. */
  static Geometry shell(Manikin m) {
    return new HeadInk(new Canvas(1), m, "").shell();
  }

  private PointMm at(double forward, double above) {
    return centre.plus(gaze.times(forward * r)).plus(up.times(above * r));
  }

  /** Returns the place on the outline in a direction from {@code forward}, {@code above}. */
  private PointMm on(double forward, double above, double angleRad) {
    PointMm from = at(forward, above);
    PointMm way = gaze.times(Math.cos(angleRad)).plus(up.times(Math.sin(angleRad)));
    return from.plus(way.times(Flow.reachMm(flesh, from, way)));
  }

  private Geometry shell() {
    double slope = (RIM_BACK - RIM_FRONT) / 1.4;
    return Flow.inside(
        List.of(
            at(2, RIM_FRONT - 1.2 * slope), at(2, 2), at(-2, 2), at(-2, RIM_BACK + 1.4 * slope)),
        flesh);
  }

  private void helmet() {
    Geometry shell = shell();
    PictureLayer layer = PictureLayer.PERSON;
    canvas.shape(layer, subject, shell, Style.area(Tone.PAPER, 0.95));
    canvas.shape(layer, subject, shell, Canvas.edge(Tone.FIGURE).withFill(Tone.FIGURE, 0.14));
    Style fine = Canvas.fine(Tone.FIGURE);
    // the opening, its upper edge over the brow and its lower edge on the chin piece
    List<PointMm> visor = new ArrayList<>();
    PointMm pivot = at(0.12, 0.06);
    visor.add(at(0.2, -0.06));
    visor.add(at(0.19, 0.14));
    visor.add(at(0.3, 0.34));
    visor.add(at(0.46, 0.39));
    visor.add(on(0, 0.44, 0));
    visor.add(on(0, 0.2, 0));
    visor.add(on(0, -0.05, 0));
    visor.add(on(0, -0.26, 0));
    visor.add(at(0.56, -0.32));
    visor.add(at(0.36, -0.27));
    canvas.shape(
        layer, subject, Flow.polygon(visor), Canvas.edge(Tone.FIGURE).withFill(Tone.SCREEN, 0.55));
    canvas.circle(layer, subject, pivot, 0.085 * r, fine.withFill(Tone.PAPER, 1));
    // the chin piece runs down from the opening; a trim follows the rim
    canvas.line(
        layer,
        subject,
        fine,
        Flow.through(List.of(at(0.26, -0.2), at(0.2, -0.5), at(0.28, -0.86)))
            .toArray(PointMm[]::new));
    canvas.line(layer, subject, fine, at(-0.52, RIM_BACK + 0.09), at(0.84, RIM_FRONT + 0.17));
    // an air slot in the chin piece
    canvas.line(layer, subject, fine, at(0.66, -0.56), at(0.9, -0.52));
  }

  private void face() {
    PictureLayer layer = PictureLayer.PERSON;
    List<PointMm> profile =
        Flow.round(
            List.of(
                on(0, 0, Math.toRadians(150)),
                on(0, 0, Math.toRadians(120)),
                on(0, 0, Math.toRadians(90)),
                on(0, 0, Math.toRadians(55)),
                at(0.9, 0.28),
                at(0.88, 0.06),
                at(0.86, -0.05),
                at(0.985, -0.3),
                at(0.86, -0.42),
                at(0.88, -0.56),
                at(0.84, -0.66),
                at(0.84, -0.84),
                at(0.7, -0.98),
                at(0.5, -0.96),
                at(0.12, -0.74),
                at(0.0, -1.0),
                at(-0.5, -0.8),
                at(-0.84, -0.4),
                on(0, 0, Math.toRadians(180))));
    Geometry head = Flow.inside(profile, flesh);
    canvas.shape(layer, subject, head, Style.area(Tone.PAPER, 0.95));
    canvas.shape(layer, subject, head, Canvas.edge(Tone.FIGURE).withFill(Tone.FIGURE, 0.14));
    Style fine = Canvas.fine(Tone.FIGURE);
    PointMm[] hair =
        Flow.through(
                List.of(
                    on(0, 0, Math.toRadians(52)),
                    at(0.36, 0.42),
                    at(0.22, 0.1),
                    at(-0.3, -0.3),
                    at(-0.74, -0.5)))
            .toArray(PointMm[]::new);
    canvas.line(layer, subject, fine, hair);
    canvas.line(
        layer,
        subject,
        fine,
        Flow.through(
                List.of(
                    at(0.02, -0.3),
                    at(-0.12, -0.1),
                    at(-0.02, 0.04),
                    at(0.1, -0.04),
                    at(0.0, -0.32)))
            .toArray(PointMm[]::new));
    canvas.line(layer, subject, fine, at(0.7, -0.6), at(0.86, -0.61));
  }
}
