package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.SpineJoints;
import org.longlow.svg.drawing.Hatch;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Draws people: the seated one in full, others of the crew as dashed outlines. Far limbs are pale
 * and as large as the flesh that gaps are measured to; near ones lie inside them.
 */
final class PersonInk {

  private static final double JOINT_MM = 0.7;
  private static final double H_POINT_MM = 2.2;

  /** Where the belt runs, over the way from hip to shoulder; judgement. */
  private static final double BELT_AT = 0.16;

  private static final int TRUNK_RAYS = 72;

  private final Canvas canvas;
  private final Manikin m;
  private final String subject;
  private final Posture j;

  private PersonInk(Canvas canvas, Manikin m) {
    this.canvas = canvas;
    this.m = m;
    this.subject = "person:" + m.name();
    this.j = m.joints();
  }

  static void seated(Canvas canvas, Manikin m) {
    PersonInk ink = new PersonInk(canvas, m);
    boolean apart = m.far().isPresent(); // else they are hidden but for their edge
    new PersonInk(canvas, m.far().orElse(m))
        .farLimbs(apart ? cloth() : Canvas.fine(Tone.FIGURE), apart ? 0.14 : 0.06);
    ink.trunk();
    HeadInk.draw(canvas, m, ink.subject);
    ink.nearLeg();
    ink.nearArm();
    ink.links();
    ink.hPoint();
  }

  private void shape(Geometry geometry, Style style) {
    canvas.shape(PictureLayer.PERSON, subject, geometry, style);
  }

  private void line(Style style, List<PointMm> points) {
    canvas.line(PictureLayer.PERSON, subject, style, points.toArray(PointMm[]::new));
  }

  private static Style cloth() {
    return Canvas.edge(Tone.FIGURE);
  }

  private void farLimbs(Style fine, double filled) {
    for (Limb limb : List.of(Limb.leg(m, 0), Limb.arm(m, 0))) {
      Geometry area = limb.whole();
      shape(area, Style.area(Tone.PAPER, 0.5));
      shape(area, Style.area(Tone.FIGURE, filled));
      line(fine, limb.outer());
    }
    Boot boot = Boot.of(m, 0);
    shape(boot.upper(), Style.area(Tone.PAPER, 0.5));
    shape(boot.upper(), fine.withFill(Tone.FIGURE, 0.12));
  }

  private void trunk() {
    Geometry neck = m.flesh(Figure.Part.NECK);
    shape(neck, Style.area(Tone.PAPER, 0.72));
    shape(neck, Canvas.fine(Tone.FIGURE).withFill(Tone.FIGURE, 0.12));
    Geometry trunk = trunk(m);
    shape(trunk, Style.area(Tone.PAPER, 0.72));
    shape(trunk, cloth().withFill(Tone.FIGURE, 0.15));
    new Figure(m.body(), j)
        .rucksack()
        .ifPresent(pack -> shape(pack.outline(), cloth().withFill(Tone.FIGURE, 0.3)));
    double across = j.shoulder().minus(j.hip()).left().angleRad();
    Style fine = Canvas.fine(Tone.FIGURE);
    for (double at : new double[] {BELT_AT, BELT_AT + 0.05}) {
      PointMm on = j.hip().towards(j.shoulder(), at);
      shape(Hatch.line(trunk, on.x(), on.z(), across), fine);
    }
  }

  /** Returns chest and pelvis in one; both hold the middle of the belly. */
  static Geometry trunk(Manikin m) {
    PointMm belly = m.joints().hip().towards(m.joints().shoulder(), Figure.BELLY_AT);
    return Flow.polygon(
        Flow.star(
            List.of(m.flesh(Figure.Part.CHEST), m.flesh(Figure.Part.PELVIS)), belly, TRUNK_RAYS));
  }

  private void nearLeg() {
    Limb leg = Limb.leg(m, Limb.FAR_MM);
    Geometry area = leg.area();
    shape(area, Style.area(Tone.PAPER, 0.5));
    shape(area, Style.area(Tone.FIGURE, 0.17));
    line(cloth(), leg.outer());
    line(cloth(), leg.inner());
    Boot boot = Boot.of(m, Limb.FAR_MM);
    shape(boot.upper(), Style.area(Tone.PAPER, 0.6));
    shape(boot.upper(), cloth().withFill(Tone.FIGURE, m.boots() ? 0.34 : 0.17));
    shape(boot.sole(), Canvas.fine(Tone.FIGURE).withFill(Tone.RUBBER, 0.7));
    if (m.boots()) {
      line(Canvas.fine(Tone.FIGURE), boot.strap());
    }
  }

  private void nearArm() {
    Limb sleeve = Limb.arm(m, Limb.FAR_MM);
    Geometry area = sleeve.area();
    shape(area, Style.area(Tone.PAPER, 0.6));
    shape(area, Style.area(Tone.FIGURE, 0.17));
    line(cloth(), sleeve.outer());
    line(cloth(), sleeve.inner());
    Geometry fist = fist(m);
    shape(fist, Style.area(Tone.PAPER, 0.8));
    shape(fist, cloth().withFill(Tone.FIGURE, 0.34));
    line(Canvas.fine(Tone.FIGURE), fingers());
  }

  /** Returns the closed hand with its cuff, round the centre of the grip, inside its flesh. */
  static Geometry fist(Manikin m) {
    Posture j = m.joints();
    PointMm ahead = ahead(j);
    double turn = ahead.angleRad();
    List<PointMm> ring = new ArrayList<>();
    PointMm cuff = j.wrist().minus(ahead.times(0.25 * j.wrist().distance(j.grip())));
    ring.add(edge(m, cuff, turn + Math.PI / 2, 1));
    for (double at = 100; at >= -100; at -= 25) {
      // flat over the back of the hand and the knuckles, round under the fingers
      double share = at > 40 || at < -60 ? 0.92 : 1;
      ring.add(edge(m, j.grip(), turn + Math.toRadians(at), share));
    }
    ring.add(edge(m, cuff, turn - Math.PI / 2, 1));
    return Flow.polygon(ring);
  }

  private static PointMm ahead(Posture j) {
    PointMm way = j.grip().minus(j.wrist());
    return way.length() < 1e-9 ? new PointMm(1, 0) : way.times(1 / way.length());
  }

  private static PointMm edge(Manikin m, PointMm from, double angleRad, double share) {
    PointMm way = PointMm.unit(angleRad);
    double reach = Flow.reachMm(m.flesh(Figure.Part.FOREARM), from, way);
    return from.plus(way.times(share * reach));
  }

  /** The last finger, curled round the grip from the knuckles to the palm. */
  private List<PointMm> fingers() {
    double turn = ahead(j).angleRad();
    List<PointMm> curl = new ArrayList<>();
    for (double at = 130; at >= -150; at -= 35) {
      curl.add(edge(m, j.grip(), turn + Math.toRadians(at), at > 100 || at < -100 ? 0.5 : 0.62));
    }
    return Flow.through(curl);
  }

  private void links() {
    Style bone = Canvas.hair(Tone.FIGURE).withLine(LineType.DOUBLE_CHAIN);
    SpineJoints spine = j.spine();
    line(
        bone,
        List.of(
            j.headCentre(),
            spine.occiput(),
            j.neckBase(),
            spine.thoracolumbar(),
            spine.lumbosacral(),
            j.hip(),
            j.knee(),
            j.ankle()));
    line(bone, List.of(j.shoulder(), j.elbow(), j.grip()));
    Style joint = Canvas.fine(Tone.FIGURE).withFill(Tone.PAPER, 1);
    double r = canvas.paper(JOINT_MM);
    for (PointMm p :
        List.of(
            spine.occiput(),
            j.neckBase(),
            spine.thoracolumbar(),
            spine.lumbosacral(),
            j.shoulder(),
            j.elbow(),
            j.knee(),
            j.ankle())) {
      canvas.circle(PictureLayer.PERSON, subject, p, r, joint);
    }
    canvas.circle(PictureLayer.PERSON, subject, j.eye(), r, Style.area(Tone.FIGURE, 1));
  }

  /** The H-point: a quartered ring. */
  private void hPoint() {
    PointMm p = j.hip();
    double r = canvas.paper(H_POINT_MM);
    PictureLayer layer = PictureLayer.AXES;
    canvas.circle(layer, subject, p, r, Canvas.edge(Tone.FIGURE).withFill(Tone.PAPER, 1));
    Style cross = Canvas.fine(Tone.FIGURE);
    PointMm side = new PointMm(1.4 * r, 0);
    canvas.line(layer, subject, cross, p.minus(side), p.plus(side));
    canvas.line(layer, subject, cross, p.minus(side.left()), p.plus(side.left()));
    canvas.shape(
        layer, subject, Planar.disc(p.x(), p.z(), canvas.paper(0.5)), Style.area(Tone.FIGURE, 1));
  }

  static void ghost(Canvas canvas, Manikin m) {
    String subject = "person:" + m.name();
    Style dashed = Canvas.fine(Tone.FIGURE).withLine(LineType.DASHED);
    canvas.shape(PictureLayer.GHOSTS, subject, m.silhouette(), dashed);
    PointMm p = m.joints().hip();
    double r = canvas.paper(1.2);
    canvas.circle(PictureLayer.GHOSTS, subject, p, r, Canvas.fine(Tone.FIGURE));
  }
}
