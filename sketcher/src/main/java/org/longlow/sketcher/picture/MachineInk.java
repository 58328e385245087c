package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws what belongs to the machine as a whole: road, steering axis, sight, centre of mass. */
final class MachineInk {

  /** How far the road runs past the wheels, mm. */
  static final double ROAD_MM = 180;

  /** How far a sight line runs past the machine: not as far as the heights written there, mm. */
  private static final double SIGHT_MM = 60;

  private MachineInk() {}

  /** Draws the road with strokes of earth below it. */
  static void road(Canvas canvas, Scene scene) {
    Ground g = scene.ground();
    Envelope box = bounds(scene);
    PointMm from = g.toFrame(new PointMm(box.getMinX() - ROAD_MM, 0));
    PointMm to = g.toFrame(new PointMm(box.getMaxX() + ROAD_MM, 0));
    road(canvas, from, to);
  }

  /** Draws the road from one place to another, earth on the right hand of the way. */
  static void road(Canvas canvas, PointMm from, PointMm to) {
    String subject = "ground";
    double step = canvas.paper(2.2);
    double length = from.distance(to);
    PointMm along = to.minus(from).times(1 / length);
    PointMm stroke = along.plus(along.left()).times(-canvas.paper(1.3));
    List<LineString> strokes = new ArrayList<>();
    for (double s = step; s < length; s += step) {
      PointMm top = from.plus(along.times(s));
      PointMm end = top.plus(stroke);
      strokes.add(Planar.line(top.x(), top.z(), end.x(), end.z()));
    }
    canvas.shape(
        PictureLayer.GROUND,
        subject,
        Planar.FACTORY.createMultiLineString(strokes.toArray(new LineString[0])),
        Canvas.hair(Tone.GROUND));
    canvas.line(PictureLayer.GROUND, subject, Style.wide(Tone.GROUND), from, to);
  }

  /** Returns the box round all parts, in road axes. */
  static Envelope bounds(Scene scene) {
    Envelope box = new Envelope();
    corners(scene, box::expandToInclude);
    return box;
  }

  /** A corner of a part, in road axes. */
  private interface Corner {
    void is(double x, double z);
  }

  /** Tells of all corners of all parts. There are thousands, at every move of a pointer. */
  private static void corners(Scene scene, Corner corner) {
    PointMm along = scene.ground().along();
    PointMm rear = scene.ground().rearContact();
    for (PartShape shape : scene.shapes().values()) {
      for (Coordinate c : shape.outline().getCoordinates()) {
        double x = c.x - rear.x();
        double z = c.y - rear.z();
        corner.is(along.x() * x + along.z() * z, along.x() * z - along.z() * x);
      }
    }
  }

  /** Draws the steering axis down to the road, and the plumb line of the front wheel. */
  static void steering(Canvas canvas, Scene scene) {
    if (scene.front().isEmpty()) {
      return;
    }
    FrontPart front = scene.front().get();
    PointMm top = scene.places().pin(front.top());
    PointMm bottom = scene.places().pin(front.bottom());
    PointMm foot = axisFoot(scene, top, bottom);
    if (foot == null) {
      return;
    }
    PointMm up = top.minus(bottom);
    PointMm beyond = top.plus(up.times(canvas.paper(8) / Math.max(1e-9, up.length())));
    String subject = "part:" + front.name();
    canvas.line(
        PictureLayer.AXES,
        subject,
        Style.line(Tone.DIMENSION, 0.25).withLine(LineType.CHAIN),
        beyond,
        foot);
    canvas.circle(
        PictureLayer.AXES, subject, foot, canvas.paper(0.7), Style.area(Tone.DIMENSION, 1));
  }

  /** Returns where the steering axis meets the road, in frame axes, or null if it does not. */
  static PointMm axisFoot(Scene scene, PointMm top, PointMm bottom) {
    double ht = scene.ground().heightMm(top);
    double hb = scene.ground().heightMm(bottom);
    if (Math.abs(ht - hb) < 1e-6) {
      return null;
    }
    return top.towards(bottom, ht / (ht - hb));
  }

  /** Draws the sight line of each person over what stands in front of them. */
  static void sight(Canvas canvas, Scene scene) {
    Envelope box = bounds(scene);
    for (Manikin m : scene.people()) {
      if (m.far().isPresent()) {
        continue; // on the way in nobody looks at the road
      }
      PointMm eye = scene.ground().toRoad(m.joints().eye());
      PointMm over = highest(scene, eye);
      if (over == null) {
        continue;
      }
      double slope = (over.z() - eye.z()) / (over.x() - eye.x());
      double end = box.getMaxX() + SIGHT_MM;
      // down it ends at the road, up a little above the machine: it may be steep
      double rise = slope < 0 ? -eye.z() : box.getMaxY() + SIGHT_MM - eye.z();
      double x = slope == 0 ? end : Math.min(end, eye.x() + rise / slope);
      PointMm last = new PointMm(x, eye.z() + slope * (x - eye.x()));
      String subject = "person:" + m.name();
      Style line = Canvas.fine(Tone.FIGURE).withLine(LineType.DASHED);
      canvas.line(
          PictureLayer.SIGHT, subject, line, m.joints().eye(), scene.ground().toFrame(last));
      double h = canvas.paper(0.9);
      PointMm d = PointMm.unit(Math.atan(slope));
      PointMm back = last.minus(d.times(3 * h));
      canvas.shape(
          PictureLayer.SIGHT,
          subject,
          Curves.polygon(
              List.of(
                  scene.ground().toFrame(last),
                  scene.ground().toFrame(back.plus(d.left().times(0.5 * h))),
                  scene.ground().toFrame(back.minus(d.left().times(0.5 * h))))),
          Style.area(Tone.FIGURE, 1));
    }
  }

  /** Returns the point ahead that stands highest in view, in road axes. */
  private static PointMm highest(Scene scene, PointMm eye) {
    double[] best = {Double.NaN, Double.NaN, Double.NEGATIVE_INFINITY};
    corners(
        scene,
        (x, z) -> {
          double ahead = x - eye.x();
          double steep = (z - eye.z()) / ahead;
          if (ahead > 50 && steep > best[2]) {
            best[0] = x;
            best[1] = z;
            best[2] = steep;
          }
        });
    return Double.isNaN(best[0]) ? null : new PointMm(best[0], best[1]);
  }

  /** Draws the centre of mass: a quartered disc. */
  static void centreOfMass(Canvas canvas, Scene scene) {
    if (scene.load().isEmpty()) {
      return;
    }
    MassPoint total = scene.load().get().total();
    PointMm c = total.at();
    double r = canvas.paper(2.4);
    String subject = "mass";
    canvas.circle(PictureLayer.AXES, subject, c, r, Canvas.edge(Tone.INK).withFill(Tone.PAPER, 1));
    for (double a : new double[] {0, Math.PI}) {
      canvas.shape(PictureLayer.AXES, subject, quarter(c, r, a), Style.area(Tone.INK, 1));
    }
  }

  private static Geometry quarter(PointMm c, double r, double from) {
    Coordinate[] arc = Planar.arc(c.x(), c.z(), r, from, from + Math.PI / 2).getCoordinates();
    double[] xy = new double[2 * arc.length + 2];
    xy[0] = c.x();
    xy[1] = c.z();
    for (int i = 0; i < arc.length; i++) {
      xy[2 * i + 2] = arc[i].x;
      xy[2 * i + 3] = arc[i].y;
    }
    return Planar.polygon(xy);
  }

  /** Draws each pin as a ring with its name. */
  static void pins(Canvas canvas, Scene scene) {
    double r = canvas.paper(0.7);
    scene
        .places()
        .pins()
        .forEach(
            (name, p) -> {
              String subject = "pin:" + name;
              canvas.circle(
                  PictureLayer.PINS,
                  subject,
                  p,
                  r,
                  Canvas.fine(Tone.DIMENSION).withFill(Tone.PAPER, 1));
            });
    List<Mark.Words> names =
        scene.places().pins().entrySet().stream()
            .sorted(Comparator.comparingDouble(e -> -e.getValue().z()))
            .map(
                e ->
                    new Mark.Words(
                        "pin:" + e.getKey(),
                        e.getKey(),
                        e.getValue().x() + 1.6 * r,
                        e.getValue().z() + 1.2 * r,
                        2,
                        0,
                        Anchor.START,
                        Tone.DIMENSION))
            .toList();
    for (Mark.Words w : Labels.spread(names, canvas.denominator())) {
      canvas.shape(
          PictureLayer.PINS,
          w.subject(),
          Planar.rectangle(Labels.box(w, canvas.denominator())),
          Style.area(Tone.PAPER, 0.7));
      canvas.add(PictureLayer.PINS, w);
    }
  }
}
