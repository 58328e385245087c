package org.longlow.rider.pose;

/**
 * How far out the joints of a posture are, mm from the middle plane; left and right mirror each
 * other.
 *
 * @param hipMm hip joint
 * @param kneeMm knee joint
 * @param ankleMm ankle joint
 * @param ballMm ball of the foot
 * @param shoulderMm acromion
 * @param elbowMm elbow joint
 * @param gripMm middle of the grip, or of the hand on the thigh
 */
public record JointOffsets(
    double hipMm,
    double kneeMm,
    double ankleMm,
    double ballMm,
    double shoulderMm,
    double elbowMm,
    double gripMm) {}
