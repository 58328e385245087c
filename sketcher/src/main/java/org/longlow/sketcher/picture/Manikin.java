package org.longlow.sketcher.picture;

import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;

/**
 * A seated person as something to draw: joints in the elevation and how thick the limbs are.
 *
 * @param name whose
 * @param seat which seat
 * @param joints where the joints are, axes of the frame
 * @param girths how thick the body is
 * @param helmet whether a helmet is drawn round the head
 */
record Manikin(String name, String seat, Joints joints, Girths girths, boolean helmet) {

  /**
   * Joints and points of the side view, mm.
   *
   * @param hip H-point
   * @param shoulder acromion
   * @param neck neck base (C7)
   * @param head middle of the skull
   * @param headRadiusMm half the head's length, helmet included
   * @param eye seated eye
   * @param heel contact of the heel
   * @param ball contact of the ball of the foot
   * @param toe tip of the boot
   */
  record Joints(
      PointMm hip,
      PointMm shoulder,
      PointMm neck,
      PointMm head,
      double headRadiusMm,
      PointMm eye,
      PointMm elbow,
      PointMm hand,
      PointMm knee,
      PointMm ankle,
      PointMm heel,
      PointMm ball,
      PointMm toe) {}

  /**
   * Thickness in the side view, mm; whole depths, not halves.
   *
   * @param hipToBackMm hip in front of the back plane
   * @param hipAboveSeatMm hip above the seat
   */
  record Girths(
      double chestMm,
      double bellyMm,
      double thighMm,
      double calfMm,
      double armMm,
      double forearmMm,
      double neckMm,
      double hipToBackMm,
      double hipAboveSeatMm) {}

  /** Returns the outline of everything but the near arm, smoothed in the hollows. */
  Geometry trunkAndLeg() {
    Geometry all = trunk().union(leg()).union(neckAndHead());
    // closing fills the hollows at groin, knee and neck as flesh and cloth do
    return all.buffer(CLOSING_MM).buffer(-CLOSING_MM);
  }

  private static final double CLOSING_MM = 26;

  private PointMm up() {
    PointMm d = joints.shoulder().minus(joints.hip());
    return d.times(1 / Math.max(1e-9, d.length()));
  }

  /** Returns the unit vector from the back towards the chest. */
  private PointMm front() {
    return up().left().times(-1);
  }

  private Geometry trunk() {
    PointMm hip = joints.hip();
    double length = hip.distance(joints.shoulder());
    double back = girths.hipToBackMm();
    double seat = girths.hipAboveSeatMm();
    double belly = girths.bellyMm();
    double chest = girths.chestMm();
    Geometry buttock = at(0, -(back - seat), seat);
    Geometry pelvis = at(0, 0, seat);
    Geometry waist = at(0.32 * length, belly / 2 - back, belly / 2);
    Geometry ribs = at(0.68 * length, chest / 2 - back + 4, chest / 2);
    Geometry yoke = at(0.98 * length, 0.36 * chest - back + 16, 0.34 * chest);
    return hull(buttock, pelvis)
        .union(hull(buttock, waist))
        .union(hull(pelvis, waist))
        .union(hull(waist, ribs))
        .union(hull(ribs, yoke));
  }

  /** Returns a disc of the trunk: {@code along} up from the hip, {@code ahead} of its line. */
  private Geometry at(double along, double ahead, double radiusMm) {
    return Curves.disc(joints.hip().plus(up().times(along)).plus(front().times(ahead)), radiusMm);
  }

  private Geometry leg() {
    PointMm knee = joints.knee();
    PointMm ankle = joints.ankle();
    PointMm calf = knee.towards(ankle, 0.32);
    double thigh = girths.thighMm() / 2;
    double kneeRadius = 0.66 * thigh;
    double calfRadius = girths.calfMm() / 2;
    return hull(Curves.disc(joints.hip(), thigh), Curves.disc(knee, kneeRadius))
        .union(hull(Curves.disc(knee, kneeRadius), Curves.disc(calf, calfRadius)))
        .union(hull(Curves.disc(calf, calfRadius), Curves.disc(ankle, 0.68 * calfRadius)))
        .union(boot(0.68 * calfRadius));
  }

  private Geometry boot(double ankleRadius) {
    PointMm heel = joints.heel();
    PointMm sole = joints.ball().minus(heel);
    PointMm along = sole.times(1 / Math.max(1e-9, sole.length()));
    PointMm up = along.left();
    if (up.dot(joints.ankle().minus(heel)) < 0) {
      up = up.times(-1);
    }
    double toe = Math.max(sole.length() + 20, joints.toe().minus(heel).dot(along));
    PointMm toeTip = heel.plus(along.times(toe - 24)).plus(up.times(24));
    Geometry back = Curves.disc(heel.plus(up.times(30)).plus(along.times(18)), 30);
    Geometry ball = Curves.disc(joints.ball().plus(up.times(34)), 34);
    Geometry shaft = Curves.disc(joints.ankle(), ankleRadius + 4);
    return hull(back, shaft)
        .union(hull(shaft, ball))
        .union(hull(back, ball))
        .union(hull(ball, Curves.disc(toeTip, 24)));
  }

  private Geometry neckAndHead() {
    double r = girths.neckMm() / 2;
    PointMm base = joints.neck().towards(joints.shoulder(), 0.35);
    Geometry neck = hull(Curves.disc(base, r * 1.1), Curves.disc(joints.head(), r));
    return neck.union(headOutline());
  }

  /** Returns the head, or the helmet round it. */
  Geometry headOutline() {
    PointMm head = joints.head();
    double r = joints.headRadiusMm();
    PointMm gaze = gaze();
    PointMm down = gaze.left().times(-1);
    Geometry chin =
        Curves.disc(head.plus(down.times(0.62 * r)).plus(gaze.times(0.36 * r)), 0.56 * r);
    return hull(Curves.disc(head, r), chin);
  }

  /** Returns the unit vector the face looks along. */
  PointMm gaze() {
    PointMm eye = joints.eye().minus(joints.head());
    // the eye lies below the middle of the skull and well ahead of it, about 25 deg down
    PointMm turned = eye.turned(Math.toRadians(20));
    return turned.times(1 / Math.max(1e-9, turned.length()));
  }

  /** Returns the near arm with its hand. */
  Geometry arm() {
    double upper = girths.armMm() / 2;
    double fore = girths.forearmMm() / 2;
    Geometry shoulder = Curves.disc(shoulderJoint(), upper * 1.25);
    Geometry elbow = Curves.disc(joints.elbow(), 0.82 * upper);
    Geometry bulge = Curves.disc(joints.elbow().towards(joints.hand(), 0.25), fore);
    Geometry wrist = Curves.disc(joints.elbow().towards(joints.hand(), 0.8), 0.6 * fore);
    Geometry fist = Curves.disc(joints.hand(), 0.86 * fore);
    return hull(shoulder, elbow)
        .union(hull(elbow, bulge))
        .union(hull(bulge, wrist))
        .union(hull(wrist, fist))
        .buffer(8)
        .buffer(-8);
  }

  /** Returns the middle of the shoulder: a tenth of the upper arm below the acromion. */
  PointMm shoulderJoint() {
    return joints.shoulder().towards(joints.elbow(), 0.1);
  }

  private static Geometry hull(Geometry a, Geometry b) {
    return a.union(b).convexHull();
  }
}
