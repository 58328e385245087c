package org.longlow.sketcher.edit;

import java.util.Collection;
import java.util.Map;
import org.longlow.rider.geom.PointMm;

/**
 * Where a point that is dragged comes to lie: on a pin near by, else level or plumb with other
 * points of its own, else on a grid.
 *
 * @param at the place, in the axes of the machine
 * @param pin that it lies on, or empty
 * @param words what it keeps to, or empty
 */
public record PointSnap(PointMm at, String pin, String words) {

  /** Which ways a point may go. */
  public enum Along {
    ANY,
    X,
    Z
  }

  /**
   * @param to where the pointer is
   * @param begin where the point was; along one axis it keeps the other coordinate of that
   * @param pins places of pins that it may lie on
   * @param own other points of the same outline
   * @param reachMm within which pins and own points draw it
   * @param gridMm of the grid, counted from the origin of the machine; 0 for none
   */
  public static PointSnap of(
      PointMm to,
      PointMm begin,
      Along along,
      Map<String, PointMm> pins,
      Collection<PointMm> own,
      double reachMm,
      double gridMm) {
    if (along == Along.ANY) {
      String pin = "";
      double best = reachMm;
      for (Map.Entry<String, PointMm> e : pins.entrySet()) {
        double d = e.getValue().distance(to);
        if (d < best) {
          best = d;
          pin = e.getKey();
        }
      }
      if (!pin.isEmpty()) {
        return new PointSnap(pins.get(pin), pin, "at pin " + pin);
      }
    }
    double plumb = along == Along.Z ? Double.NaN : near(to.x(), own, true, reachMm);
    double level = along == Along.X ? Double.NaN : near(to.z(), own, false, reachMm);
    double x = !Double.isNaN(plumb) ? plumb : along == Along.Z ? begin.x() : grid(to.x(), gridMm);
    double z = !Double.isNaN(level) ? level : along == Along.X ? begin.z() : grid(to.z(), gridMm);
    String words =
        Double.isNaN(plumb)
            ? Double.isNaN(level) ? "" : "level with another point"
            : Double.isNaN(level) ? "plumb with another point" : "level and plumb with others";
    return new PointSnap(new PointMm(x, z), "", words);
  }

  private static double near(double v, Collection<PointMm> own, boolean x, double reachMm) {
    double best = reachMm;
    double found = Double.NaN;
    for (PointMm p : own) {
      double c = x ? p.x() : p.z();
      if (Math.abs(c - v) < best) {
        best = Math.abs(c - v);
        found = c;
      }
    }
    return found;
  }

  private static double grid(double v, double gridMm) {
    return gridMm > 0 ? Math.rint(v / gridMm) * gridMm : v;
  }

  /** Returns the place a length away from a point, towards another. */
  public static PointMm exactly(PointMm from, PointMm towards, double lengthMm) {
    PointMm way = towards.minus(from);
    double now = way.length();
    return from.plus(now > 0 ? way.times(lengthMm / now) : new PointMm(lengthMm, 0));
  }
}
