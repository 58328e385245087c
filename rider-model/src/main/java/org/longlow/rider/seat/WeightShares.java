package org.longlow.rider.seat;

import org.longlow.rider.body.Body;
import org.longlow.rider.body.Segment;
import org.longlow.rider.body.Sex;

/**
 * Which part of the body weighs what, as the load model needs it. Masses over the mass of all;
 * heights of centres above the hip over hip-shoulder length.
 *
 * @param head head and neck
 * @param trunk trunk
 * @param arms both arms
 * @param legs both legs, feet included
 * @param feet what both feet put on their rests, at most {@code legs}
 * @param headHeight centre of the head
 * @param trunkHeight centre of the trunk
 * @param armsHeight centre of the arms
 */
public record WeightShares(
    double head,
    double trunk,
    double arms,
    double legs,
    double feet,
    double headHeight,
    double trunkHeight,
    double armsHeight) {

  /**
   * The shares of the worked model, for an answer about no particular person: Dempster 1955 as
   * adapted in Winter 2009, Table 4.1 (head 0.081, trunk 0.497, arm 0.050, thigh 0.100, shank and
   * foot 0.061 with their centre at 0.606 from the knee); height of the head from memory, of the
   * arms rebuilt from the centre 0.626 of head, arms and trunk.
   */
  public static final WeightShares WORKED =
      new WeightShares(0.081, 0.497, 0.100, 0.322, 0.606 * 0.122, 1.41, 0.5, 0.617);

  /**
   * Returns the shares of a person in gear: the masses that also make their centre of mass ({@link
   * Segment}). The arms' height is the worked model's.
   *
   * @param feet what both feet put on their rests, over weight in gear
   */
  static WeightShares of(Body body, double feet) {
    Sex sex = body.sex();
    double length = body.hipToShoulderMm();
    double neck = body.hipToNeckMm();
    double head = (1 - Segment.HEAD.centreShare(sex)) * body.head().vertex().length();
    return new WeightShares(
        body.shareInGear(Segment.HEAD),
        body.shareInGear(Segment.TRUNK),
        2
            * (body.shareInGear(Segment.UPPER_ARM)
                + body.shareInGear(Segment.FOREARM)
                + body.shareInGear(Segment.HAND)),
        2
            * (body.shareInGear(Segment.THIGH)
                + body.shareInGear(Segment.SHANK)
                + body.shareInGear(Segment.FOOT)),
        feet,
        (neck + head) / length,
        (1 - Segment.TRUNK.centreShare(sex)) * neck / length,
        WORKED.armsHeight);
  }
}
