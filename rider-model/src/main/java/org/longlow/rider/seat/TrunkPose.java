package org.longlow.rider.seat;

import org.longlow.rider.geom.PointMm;

/**
 * Where hip, trunk and head are: what the seat alone decides of a posture.
 *
 * @param hip hip joint, mm
 * @param reclineRad hip-shoulder line from the vertical, rearward positive, rad
 * @param headPitchRad Frankfurt plane from the horizontal, nose up positive, rad
 */
public record TrunkPose(PointMm hip, double reclineRad, double headPitchRad) {}
