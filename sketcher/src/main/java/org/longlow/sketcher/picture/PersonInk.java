package org.longlow.sketcher.picture;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws people: the seated one in full, others of the crew as dashed outlines. */
final class PersonInk {

  private static final double JOINT_MM = 0.8;
  private static final double H_POINT_MM = 2.2;

  private PersonInk() {}

  static void seated(Canvas canvas, Manikin m) {
    String subject = "person:" + m.name();
    PictureLayer layer = PictureLayer.PERSON;
    Geometry body = m.body();
    canvas.shape(layer, subject, body, Style.area(Tone.PAPER, 0.72));
    canvas.shape(layer, subject, body, Canvas.edge(Tone.FIGURE).withFill(Tone.FIGURE, 0.16));
    head(canvas, m, subject);
    Geometry arm = m.arm();
    canvas.shape(layer, subject, arm, Style.area(Tone.PAPER, 0.6));
    canvas.shape(layer, subject, arm, Canvas.edge(Tone.FIGURE).withFill(Tone.FIGURE, 0.16));
    links(canvas, m, subject);
  }

  private static void head(Canvas canvas, Manikin m, String subject) {
    Geometry head = m.head();
    canvas.shape(
        PictureLayer.PERSON, subject, head, Canvas.edge(Tone.FIGURE).withFill(Tone.FIGURE, 0.14));
    if (!m.helmet()) {
      return;
    }
    PointMm gaze = m.gaze();
    PointMm up = gaze.left();
    double r = m.headRadiusMm();
    PointMm c = m.joints().headCentre();
    // the opening of the helmet: a band across the face at the height of the eye
    Geometry band =
        Curves.polygon(
            List.of(
                c.plus(gaze.times(0.30 * r)).plus(up.times(0.24 * r)),
                c.plus(gaze.times(1.60 * r)).plus(up.times(0.30 * r)),
                c.plus(gaze.times(1.60 * r)).plus(up.times(-0.44 * r)),
                c.plus(gaze.times(0.42 * r)).plus(up.times(-0.40 * r))));
    canvas.shape(
        PictureLayer.PERSON,
        subject,
        band.intersection(head),
        Canvas.fine(Tone.FIGURE).withFill(Tone.SCREEN, 0.7));
  }

  private static void links(Canvas canvas, Manikin m, String subject) {
    Posture j = m.joints();
    Style bone = Canvas.hair(Tone.FIGURE).withLine(LineType.DOUBLE_CHAIN);
    PictureLayer layer = PictureLayer.PERSON;
    canvas.line(layer, subject, bone, j.neckBase(), j.hip(), j.knee(), j.ankle());
    canvas.line(layer, subject, bone, j.shoulder(), j.elbow(), j.grip());
    canvas.line(layer, subject, bone, j.neckBase(), j.headCentre());
    Style joint = Canvas.fine(Tone.FIGURE).withFill(Tone.PAPER, 1);
    double r = canvas.paper(JOINT_MM);
    for (PointMm p : List.of(j.neckBase(), j.shoulder(), j.elbow(), j.knee(), j.ankle())) {
      canvas.circle(layer, subject, p, r, joint);
    }
    canvas.circle(layer, subject, j.eye(), r * 0.8, Style.area(Tone.FIGURE, 1));
    hPoint(canvas, subject, j.hip());
  }

  /** The H-point: a quartered ring. */
  private static void hPoint(Canvas canvas, String subject, PointMm p) {
    double r = canvas.paper(H_POINT_MM);
    canvas.circle(
        PictureLayer.AXES, subject, p, r, Canvas.edge(Tone.FIGURE).withFill(Tone.PAPER, 1));
    Style cross = Canvas.fine(Tone.FIGURE);
    canvas.line(
        PictureLayer.AXES,
        subject,
        cross,
        p.plus(new PointMm(-1.4 * r, 0)),
        p.plus(new PointMm(1.4 * r, 0)));
    canvas.line(
        PictureLayer.AXES,
        subject,
        cross,
        p.plus(new PointMm(0, -1.4 * r)),
        p.plus(new PointMm(0, 1.4 * r)));
    canvas.shape(
        PictureLayer.AXES,
        subject,
        Planar.disc(p.x(), p.z(), canvas.paper(0.5)),
        Style.area(Tone.FIGURE, 1));
  }

  static void ghost(Canvas canvas, Manikin m) {
    String subject = "person:" + m.name();
    Style dashed = Canvas.fine(Tone.FIGURE).withLine(LineType.DASHED);
    canvas.shape(PictureLayer.GHOSTS, subject, m.body().union(m.arm()), dashed);
    PointMm p = m.joints().hip();
    double r = canvas.paper(1.2);
    canvas.circle(PictureLayer.GHOSTS, subject, p, r, Canvas.fine(Tone.FIGURE));
  }
}
