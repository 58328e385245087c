package org.longlow.sketcher.picture;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.space.Convex;

/**
 * A convex body as it is seen.
 *
 * @param area its outline on the page
 * @param box the box round that
 * @param body the body: across the page, up it, and towards the viewer
 * @param nearMm how near its nearest point is to the viewer; more is nearer
 * @param farMm how near its farthest point is
 */
record Shadow(Geometry area, Envelope box, Convex body, double nearMm, double farMm) {

  static Shadow of(Geometry area, Convex body) {
    double[] at = new double[3];
    body.farthest(new double[] {0, 0, 1}, at);
    double near = at[2];
    body.farthest(new double[] {0, 0, -1}, at);
    return new Shadow(area, area.getEnvelopeInternal(), body, near, at[2]);
  }
}
