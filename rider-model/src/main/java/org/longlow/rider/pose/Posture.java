package org.longlow.rider.pose;

import org.longlow.rider.geom.PointMm;

/**
 * Where the joints of a person are, mm in the elevation. Left and right limbs lie over each other;
 * links that lead outwards look shorter than they are.
 *
 * @param hip hip joint
 * @param shoulder acromion pin
 * @param neckBase spine of C7
 * @param tragion ear hole
 * @param eye outer corner of the eye
 * @param vertex top of the bare head
 * @param headCentre middle of the skull
 * @param knee knee joint
 * @param ankle ankle joint
 * @param heel heel's contact under the boot
 * @param ball ball of the foot's contact under the boot
 * @param toe toe tip under the boot
 * @param elbow elbow joint
 * @param wrist wrist joint
 * @param grip centre of the grip
 * @param across how far out the joints are
 * @param spine where the segments of the spine meet
 * @param angles the angles that follow, rad
 */
public record Posture(
    PointMm hip,
    PointMm shoulder,
    PointMm neckBase,
    PointMm tragion,
    PointMm eye,
    PointMm vertex,
    PointMm headCentre,
    PointMm knee,
    PointMm ankle,
    PointMm heel,
    PointMm ball,
    PointMm toe,
    PointMm elbow,
    PointMm wrist,
    PointMm grip,
    JointOffsets across,
    SpineJoints spine,
    JointAngles angles) {}
