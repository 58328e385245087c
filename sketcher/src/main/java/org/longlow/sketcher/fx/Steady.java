package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/**
 * Leaves marks as they were while they move less than can be seen. A pin that is dragged changes
 * how far the springs sink, and so moves every mark by hundredths of a pixel; only what moves more
 * is to be painted anew. What has come to rest is shown exactly.
 */
final class Steady {

  /** So far a mark may be from where it is, px; less than smoothed edges show. */
  static final double UNSEEN_PX = 0.2;

  private static final double UNSEEN_DEG = 0.05;

  /** A mark's place in the drawing: the how manieth of its subject in its layer it is. */
  private record Place(String layer, String subject, int number) {}

  private Map<Place, Mark> shown = Map.of();

  /** Returns the marks of a drawing in their order, exactly. */
  List<Mark> exact(Drawing drawing) {
    return marks(drawing, -1);
  }

  /**
   * Returns the marks of a drawing in their order, each as it was shown last if it hardly moved.
   */
  List<Mark> moving(Drawing drawing, double pxPerMm) {
    return marks(drawing, UNSEEN_PX / pxPerMm);
  }

  private List<Mark> marks(Drawing drawing, double unseenMm) {
    Map<Place, Mark> next = new HashMap<>();
    List<Mark> marks = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      Map<String, Integer> counts = new HashMap<>();
      for (Mark mark : layer.marks()) {
        int number = counts.merge(mark.subject(), 1, Integer::sum);
        Place place = new Place(layer.id(), mark.subject(), number);
        Mark before = shown.get(place);
        Mark kept = before != null && isLike(before, mark, unseenMm) ? before : mark;
        next.put(place, kept);
        marks.add(kept);
      }
    }
    shown = next;
    return marks;
  }

  private static boolean isLike(Mark before, Mark now, double unseenMm) {
    if (before == now || unseenMm < 0) {
      return before.equals(now);
    }
    if (before instanceof Mark.Words was && now instanceof Mark.Words is) {
      return was.text().equals(is.text())
          && was.heightMm() == is.heightMm()
          && was.anchor() == is.anchor()
          && was.tone() == is.tone()
          && Math.abs(was.rotationDeg() - is.rotationDeg()) <= UNSEEN_DEG
          && Math.abs(was.x() - is.x()) <= unseenMm
          && Math.abs(was.y() - is.y()) <= unseenMm;
    }
    return before instanceof Mark.Shape was
        && now instanceof Mark.Shape is
        && was.style().equals(is.style())
        && isNear(was.geometry(), is.geometry(), unseenMm);
  }

  private static boolean isNear(Geometry was, Geometry is, double unseenMm) {
    if (was.getClass() != is.getClass()) {
      return false;
    }
    if (was instanceof LineString a && is instanceof LineString b) {
      return isNear(a.getCoordinateSequence(), b.getCoordinateSequence(), unseenMm);
    }
    if (was instanceof Polygon a && is instanceof Polygon b) {
      boolean near =
          a.getNumInteriorRing() == b.getNumInteriorRing()
              && isNear(a.getExteriorRing(), b.getExteriorRing(), unseenMm);
      for (int i = 0; near && i < a.getNumInteriorRing(); i++) {
        near = isNear(a.getInteriorRingN(i), b.getInteriorRingN(i), unseenMm);
      }
      return near;
    }
    int n = was.getNumGeometries();
    boolean near = n == is.getNumGeometries();
    for (int i = 0; near && i < n; i++) {
      // a point has itself as its only part, and is not drawn
      Geometry part = was.getGeometryN(i);
      near = part == was || isNear(part, is.getGeometryN(i), unseenMm);
    }
    return near;
  }

  private static boolean isNear(CoordinateSequence a, CoordinateSequence b, double unseenMm) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (!(Math.abs(a.getX(i) - b.getX(i)) <= unseenMm
          && Math.abs(a.getY(i) - b.getY(i)) <= unseenMm)) {
        return false;
      }
    }
    return true;
  }
}
