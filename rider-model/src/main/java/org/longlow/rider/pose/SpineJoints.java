package org.longlow.rider.pose;

import org.longlow.rider.geom.PointMm;

/**
 * Where the spine's segments meet, mm in the elevation; the thorax ends at the height of the
 * acromion, where the elevation shows the shoulder.
 *
 * @param lumbosacral L5/S1, between pelvis and lumbar
 * @param thoracolumbar T12/L1, between lumbar and thorax
 * @param occiput between neck and skull
 */
public record SpineJoints(PointMm lumbosacral, PointMm thoracolumbar, PointMm occiput) {

  static SpineJoints of(PointMm hip, Neck neck, double pitchRad) {
    double whole = neck.body().hipToShoulderMm();
    double pelvis = neck.body().spine().pelvisMm();
    double lumbar = neck.body().spine().lumbarMm();
    return new SpineJoints(
        hip.towards(neck.foot(), pelvis / whole),
        hip.towards(neck.foot(), (pelvis + lumbar) / whole),
        neck.occiput(pitchRad));
  }
}
