package org.longlow.rider.pose;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.RoundHull.Circle;

/**
 * Flesh, boots and helmet round a posture, for drawing and for gap checks.
 *
 * <p>Each part is the convex hull of a few circles on its segment (a tapered capsule). Limb radii
 * are girth over 2π, trunk and thigh radii half the survey's depths; where the circles sit is a
 * judgement. The trunk's rear touches the back plane, its underside the loaded seat. Good to some
 * 15 mm of flesh: leave gaps accordingly.
 */
public final class Figure {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Radius of the shoulder cap, mm; judgement. */
  private static final double SHOULDER_MM = 62;

  /** Height of belly and chest over hip-shoulder length; judgement. */
  private static final double BELLY_AT = 0.30;

  private static final double CHEST_AT = 0.72;

  /** Boot shaft and upper over the skin, mm; judgement, worn only with boots. */
  private static final double BOOT_WALL_MM = 12;

  private final Body body;
  private final Posture p;
  private final RiderWidth width;
  private final PointMm up;
  private final PointMm behind;

  private Figure(Body body, Posture posture, RiderWidth width) {
    this.body = body;
    this.p = posture;
    this.width = width;
    double recline = posture.angles().recline();
    up = new PointMm(-Math.sin(recline), Math.cos(recline));
    behind = up.left();
  }

  /**
   * Returns the parts of a rider: head, neck, chest, pelvis, thigh, shank, foot, upperArm, forearm.
   *
   * @param width where knees, feet and hands are sideways
   */
  public static List<Flesh> parts(Body body, Posture posture, RiderWidth width) {
    Figure f = new Figure(body, posture, width);
    List<Flesh> out = new ArrayList<>(9);
    f.headAndNeck(out);
    f.trunk(out);
    f.leg(out);
    f.arm(out);
    return out;
  }

  /** Returns one smooth outline of all parts, for drawing; inner corners are rounded. */
  public static Geometry silhouette(List<Flesh> parts) {
    List<Geometry> outlines = new ArrayList<>();
    for (Flesh part : parts) {
      outlines.add(part.outline());
    }
    double fillet = 14;
    return UnaryUnionOp.union(outlines).buffer(fillet, 8).buffer(-fillet, 8);
  }

  private double measure(String name) {
    return body.measures().get(name);
  }

  private double girthRadius(String name) {
    return measure(name) / (2 * Math.PI);
  }

  private void headAndNeck(List<Flesh> out) {
    double r = body.head().radiusMm();
    double pitch = p.angles().headPitch();
    PointMm chin = p.headCentre().plus(new PointMm(0.30 * r, -0.42 * r).turned(pitch));
    double half = 0.5 * measure("headbreadth") + body.gear().helmetMm();
    out.add(hull("head", 0, half, circle(p.headCentre(), r), circle(chin, 0.72 * r)));
    double neck = 0.5 * measure("d_neckdiameter");
    PointMm low = p.neckBase().minus(behind.times(neck));
    out.add(hull("neck", 0, neck, circle(low, neck), circle(p.headCentre(), 0.85 * neck)));
  }

  private void trunk(List<Flesh> out) {
    double back = body.hipToBackMm();
    double seat = body.hipAboveSeatMm();
    double belly = 0.5 * measure("abdominalextensiondepthsitting");
    double chest = 0.5 * measure("chestdepth");
    double length = body.hipToShoulderMm();
    Circle pelvis = circle(p.hip().plus(behind.times(back - seat)), seat);
    Circle bellyRound =
        circle(p.hip().plus(up.times(BELLY_AT * length)).plus(behind.times(back - belly)), belly);
    Circle chestRound =
        circle(p.hip().plus(up.times(CHEST_AT * length)).plus(behind.times(back - chest)), chest);
    double neck = 0.5 * measure("d_neckdiameter");
    out.add(
        hull(
            "chest",
            0,
            0.5 * Math.max(measure("biacromialbreadth"), measure("waistbreadth")),
            bellyRound,
            chestRound,
            circle(p.shoulder(), SHOULDER_MM),
            circle(p.neckBase().minus(behind.times(neck)), neck)));
    out.add(hull("pelvis", 0, 0.5 * measure("hipbreadthsitting"), pelvis, bellyRound));
  }

  private void leg(List<Flesh> out) {
    Gear gear = body.gear();
    double armour = gear.armourMm();
    double hipRound = 0.5 * measure("thighclearance");
    double knee = girthRadius("lowerthighcircumference");
    double calf = girthRadius("calfcircumference");
    double wall = gear.bootLengthMm() > 0 ? BOOT_WALL_MM : 0;
    double ankle = girthRadius("anklecircumference") + wall;
    double hipAcross = 0.25 * measure("hipbreadthsitting");
    double thighAcross = girthRadius("thighcircumference");
    double k = width.kneeHalfMm();
    out.add(
        hull(
            "thigh",
            Math.max(0, Math.min(hipAcross - thighAcross, k - knee)),
            Math.max(0.5 * measure("hipbreadthsitting"), k + knee),
            circle(p.hip(), hipRound),
            circle(p.knee(), knee + armour)));
    PointMm alongShank = p.ankle().minus(p.knee()).times(1 / body.shankMm());
    PointMm calfAt =
        p.knee()
            .plus(alongShank.times(0.3 * body.shankMm()))
            .plus(alongShank.left().times(-0.2 * calf));
    double f = width.footHalfMm();
    out.add(
        hull(
            "shank",
            Math.max(0, Math.min(k - knee, f - ankle)),
            Math.max(k + knee, f + ankle),
            circle(p.knee(), 0.92 * knee + armour),
            circle(calfAt, calf),
            circle(p.ankle(), ankle)));
    foot(out, ankle, wall);
  }

  private void foot(List<Flesh> out, double ankle, double wall) {
    Body.Foot foot = body.foot();
    PointMm along = p.ball().minus(p.heel()).times(1 / foot.ballMm());
    PointMm off = along.left();
    double heelRound = 0.18 * foot.ankle().z();
    double ballRound = 0.5 * (body.gear().ballMm() + 62);
    double toeRound = 0.55 * ballRound;
    PointMm heelAt = p.heel().plus(along.times(heelRound - foot.backMm()));
    PointMm toeAt = p.heel().plus(along.times(foot.frontMm() - toeRound));
    double half = 0.5 * measure("footbreadthhorizontal") + wall;
    double f = width.footHalfMm();
    out.add(
        hull(
            "foot",
            Math.max(0, f - half),
            f + half,
            circle(heelAt.plus(off.times(heelRound)), heelRound),
            circle(p.ball().plus(off.times(ballRound)), ballRound),
            circle(toeAt.plus(off.times(toeRound)), toeRound),
            circle(p.ankle(), ankle)));
  }

  private void arm(List<Flesh> out) {
    double armour = body.gear().armourMm();
    double upper = girthRadius("bicepscircumferenceflexed");
    double fore = girthRadius("forearmcircumferenceflexed");
    double wrist = girthRadius("wristcircumference");
    double hand = 0.5 * measure("handbreadth");
    double shoulderAcross = 0.5 * measure("biacromialbreadth");
    double elbowAcross = 0.5 * measure("forearmforearmbreadth") - fore;
    double g = width.gripHalfMm();
    out.add(
        hull(
            "upperArm",
            Math.max(0, Math.min(shoulderAcross, elbowAcross) - upper),
            Math.max(0.5 * measure("bideltoidbreadth"), elbowAcross + upper),
            circle(p.shoulder(), upper),
            circle(p.elbow(), 0.9 * fore + armour)));
    out.add(
        hull(
            "forearm",
            Math.max(0, Math.min(elbowAcross - fore, g - hand)),
            Math.max(elbowAcross + fore, g + hand),
            circle(p.elbow(), fore),
            circle(p.wrist(), wrist),
            circle(p.grip(), hand)));
  }

  private static Circle circle(PointMm centre, double radius) {
    return new Circle(centre, Math.max(1, radius));
  }

  private static Flesh hull(String name, double inner, double outer, Circle... circles) {
    return new Flesh(name, FACTORY.createPolygon(RoundHull.ring(circles)), inner, outer);
  }
}
