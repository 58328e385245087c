package org.longlow.constraints.suit;

import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.longlow.constraints.shape.Prism;

/**
 * How deep two bodies are in each other. A gap says how thick what they share is, which no longer
 * grows once a thin plate is all inside a leg; a search needs to feel which way is out.
 */
final class Depth {

  private Depth() {}

  /** Returns how far the deepest corner of either lies inside the other, mm. */
  static double of(List<Prism> a, List<Prism> b) {
    double deepest = 0;
    for (Prism p : a) {
      for (Prism q : b) {
        Envelope near = p.outline().getEnvelopeInternal();
        if (p.across().gap(q.across()) < 0 && near.intersects(q.outline().getEnvelopeInternal())) {
          deepest = Math.max(deepest, inside(p.outline(), q.outline()));
          deepest = Math.max(deepest, inside(q.outline(), p.outline()));
        }
      }
    }
    return deepest;
  }

  private static double inside(Geometry corners, Geometry area) {
    Envelope bounds = area.getEnvelopeInternal();
    IndexedPointInAreaLocator locator = null;
    Geometry edge = null;
    double deepest = 0;
    for (Coordinate c : corners.getCoordinates()) {
      if (!bounds.contains(c)) {
        continue;
      }
      if (locator == null) {
        locator = new IndexedPointInAreaLocator(area);
        edge = area.getBoundary();
      }
      if (locator.locate(c) == Location.INTERIOR) {
        Point point = area.getFactory().createPoint(c);
        deepest = Math.max(deepest, edge.distance(point));
      }
    }
    return deepest;
  }
}
