package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.LeanClearance;
import org.longlow.constraints.machine.Tyre;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Tyres;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;

/** How far the machine leans to each side before each part touches the road, on round tyres. */
final class LeanFindings {

  /** Parts that touch only beyond this lean are not listed, deg. */
  static final double LISTED_TO_DEG = 60;

  private static final String SOURCE =
      "exact contact of two round tyres (support function of the torus); ";

  /** The closed form with the crown interpolated is this close to the exact contact, rad. */
  private static final double ROUGH_RAD = Math.toRadians(0.01);

  private final Layout layout;
  private final Wheels wheels;

  /** Where a part touches, leaning to a side in a stance. */
  private record Touch(PartShape shape, boolean left, String stance, PointMm at, double deg) {}

  /** The touches that come first, by finding; in the order in which they were met. */
  private final Map<String, Touch> worst = new LinkedHashMap<>();

  LeanFindings(Layout layout, Wheels wheels) {
    this.layout = layout;
    this.wheels = wheels;
  }

  List<Finding> of(List<Standing> standings) {
    double limit = Math.toDegrees(wheels.drawn().value(layout.demands().limit(Demands.Key.LEAN)));
    for (Standing standing : standings) {
      if (standing.kind() == Stance.Kind.LADEN) {
        inStance(standing);
      }
    }
    String source = SOURCE + Sources.of(layout, Demands.Key.LEAN);
    List<Finding> findings = new ArrayList<>();
    worst.forEach(
        (id, touch) ->
            findings.add(
                Finding.atLeast(
                        id,
                        touch.shape().part().name(),
                        touch.stance(),
                        touch.deg(),
                        limit,
                        "deg",
                        source,
                        words(touch, id.equals(id(touch.left())), limit))
                    .at(touch.at())));
    return findings;
  }

  private static String words(Touch touch, boolean headline, double limit) {
    String name = touch.shape().part().name();
    String side = touch.left() ? "left" : "right";
    return (headline
            ? "Leaning to the " + side + ", " + name + " touches first, at " + Say.deg(touch.deg())
            : name + " touches the road at " + Say.deg(touch.deg()) + " of lean to the " + side)
        + "; "
        + Say.deg(limit)
        + (touch.deg() < limit ? " are asked: raise it or bring it farther in." : " are asked.");
  }

  private static String id(boolean left) {
    return left ? "lean.left" : "lean.right";
  }

  private void inStance(Standing standing) {
    Tyre front = Tyres.of(wheels.front(), standing.places());
    Tyre rear = Tyres.of(wheels.rear(), standing.places());
    LeanClearance clearance =
        new LeanClearance(
            standing.ground().wheelbaseMm(),
            new LeanClearance.Wheel(front.freeRadiusMm(), front.sectionRadiusMm()),
            new LeanClearance.Wheel(rear.freeRadiusMm(), rear.sectionRadiusMm()));
    for (boolean left : new boolean[] {true, false}) {
      Touch first = null;
      for (PartShape shape : standing.shapes().values()) {
        if (shape.part() instanceof Part.Wheel) {
          continue;
        }
        String id = id(left) + "." + shape.part().name();
        Touch touch = touch(standing, shape, left, clearance, front, rear, worst.get(id));
        if (touch == null) {
          continue;
        }
        keep(id, touch);
        if (first == null || touch.deg() < first.deg()) {
          first = touch;
        }
      }
      if (first != null) {
        keep(id(left), first);
      }
    }
  }

  private void keep(String id, Touch touch) {
    Touch known = worst.get(id);
    if (known == null || touch.deg() < known.deg()) {
      worst.put(id, touch);
    }
  }

  /** Returns where the part touches; null if that is no sooner than what is known already. */
  private static Touch touch(
      Standing standing,
      PartShape shape,
      boolean left,
      LeanClearance clearance,
      Tyre front,
      Tyre rear,
      Touch known) {
    double y = left ? shape.leftMm() : shape.rightMm();
    if (y <= 0) {
      return null;
    }
    double most = Math.toRadians(LISTED_TO_DEG);
    if (known != null) {
      most = Math.min(most, Math.toRadians(known.deg()) + ROUGH_RAD);
    }
    Coordinate at = first(standing, shape, y, front, rear, most);
    if (at == null) {
      return null;
    }
    PointMm point = new PointMm(at.x, at.y);
    PointMm road = standing.ground().toRoad(point);
    LeanClearance.TouchDown touch = clearance.touchDown(road.x(), y, road.z());
    return touch.touches()
        ? new Touch(shape, left, standing.name(), point, Math.toDegrees(touch.rollRad()))
        : null;
  }

  /**
   * Returns the corner that touches first, before a roll of {@code most}, or null. The closed form
   * with the crown interpolated is within 0.001° and picks the corner: at a roll φ a corner is
   * crown + (z − crown) cos φ − y sin φ above the road.
   */
  private static Coordinate first(
      Standing standing, PartShape shape, double y, Tyre front, Tyre rear, double most) {
    PointMm along = standing.ground().along();
    PointMm from = standing.ground().rearContact();
    double slope =
        (front.sectionRadiusMm() - rear.sectionRadiusMm()) / standing.ground().wheelbaseMm();
    double cos = Math.cos(most);
    double sin = Math.sin(most);
    // the height over the road is at least linear in x and z: a corner of the box is lowest
    Envelope box = shape.outline().getEnvelopeInternal();
    double byX = slope * (1 - cos) * along.x() - cos * along.z();
    double byZ = slope * (1 - cos) * along.z() + cos * along.x();
    double lowest =
        rear.sectionRadiusMm() * (1 - cos)
            + byX * ((byX > 0 ? box.getMinX() : box.getMaxX()) - from.x())
            + byZ * ((byZ > 0 ? box.getMinY() : box.getMaxY()) - from.z())
            - y * sin;
    if (lowest > 1e-6) {
      return null;
    }
    Coordinate at = null;
    for (Coordinate c : shape.outline().getCoordinates()) {
      double x = along.x() * (c.x - from.x()) + along.z() * (c.y - from.z());
      double z = along.x() * (c.y - from.z()) - along.z() * (c.x - from.x());
      double crown = Math.max(0, rear.sectionRadiusMm() + slope * x);
      if (crown + (z - crown) * cos - y * sin < 0) {
        double reach = Math.max(crown, Math.hypot(z - crown, y));
        double roll = Math.acos(Math.max(-1, -crown / reach)) - Math.atan2(y, z - crown);
        cos = Math.cos(roll);
        sin = Math.sin(roll);
        at = c;
      }
    }
    return at;
  }
}
