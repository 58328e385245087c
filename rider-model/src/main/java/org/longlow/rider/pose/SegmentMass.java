package org.longlow.rider.pose;

import java.util.List;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Segment;
import org.longlow.rider.geom.PointMm;

/**
 * A lump of the rider for mass sums, left and right together.
 *
 * @param segment which
 * @param massKg kg, both limbs of a pair
 * @param centre centre of mass, mm
 */
public record SegmentMass(Segment segment, double massKg, PointMm centre) {

  /**
   * Returns the lumps of a posture after de Leva (1996), each with what it wears; they add up to
   * the mass in gear. Gear has its centre where its segment has (judgement; a helmet's lies some 20
   * mm farther from the neck). The hand's centre is put at the grip.
   */
  public static List<SegmentMass> of(Body body, Posture p) {
    PointMm shoulderJoint = p.shoulder().towards(p.elbow(), Body.SHOULDER_JOINT_DOWN);
    PointMm elbowJoint = p.shoulder().towards(p.elbow(), Body.ELBOW_JOINT_DOWN);
    // the trunk is rigid: its centre lies on the line from hip to where C7 is while erect
    PointMm erect = body.spine().neckBase().turned(p.angles().recline());
    return List.of(
        between(body, Segment.HEAD, p.vertex(), p.neckBase()),
        between(body, Segment.TRUNK, p.shoulder().plus(erect), p.hip()),
        between(body, Segment.UPPER_ARM, shoulderJoint, elbowJoint),
        between(body, Segment.FOREARM, p.elbow(), p.wrist()),
        between(body, Segment.HAND, p.grip(), p.grip()),
        between(body, Segment.THIGH, p.hip(), p.knee()),
        between(body, Segment.SHANK, p.knee(), p.ankle()),
        between(body, Segment.FOOT, p.heel(), p.toe()));
  }

  private static SegmentMass between(Body body, Segment segment, PointMm near, PointMm far) {
    double kg = body.massInGearKg(segment) * (segment.paired() ? 2 : 1);
    return new SegmentMass(segment, kg, near.towards(far, segment.centreShare(body.sex())));
  }
}
