package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
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

  private final Layout layout;
  private final Wheels wheels;
  private final Map<PartShape, PointMm[]> hulls = new HashMap<>();

  LeanFindings(Layout layout, Wheels wheels) {
    this.layout = layout;
    this.wheels = wheels;
  }

  List<Finding> of(List<Standing> standings) {
    Map<String, Finding> worst = new HashMap<>();
    List<String> order = new ArrayList<>();
    for (Standing standing : standings) {
      if (standing.kind() != Stance.Kind.LADEN) {
        continue;
      }
      for (Finding f : inStance(standing)) {
        Finding known = worst.get(f.id());
        if (known == null) {
          order.add(f.id());
        }
        if (known == null || f.value() < known.value()) {
          worst.put(f.id(), f);
        }
      }
    }
    return order.stream().map(worst::get).toList();
  }

  private List<Finding> inStance(Standing standing) {
    Tyre front = Tyres.of(wheels.front(), standing.places());
    Tyre rear = Tyres.of(wheels.rear(), standing.places());
    double wheelbase = standing.ground().wheelbaseMm();
    LeanClearance clearance =
        new LeanClearance(
            wheelbase,
            new LeanClearance.Wheel(front.freeRadiusMm(), front.sectionRadiusMm()),
            new LeanClearance.Wheel(rear.freeRadiusMm(), rear.sectionRadiusMm()));
    double limit =
        Math.toDegrees(standing.places().value(layout.demands().limit(Demands.Key.LEAN)));
    List<Finding> findings = new ArrayList<>();
    for (boolean left : new boolean[] {true, false}) {
      Finding first = null;
      for (PartShape shape : standing.shapes().values()) {
        if (shape.part() instanceof Part.Wheel) {
          continue;
        }
        Finding f = part(standing, shape, left, clearance, front, rear, wheelbase, limit);
        if (f == null) {
          continue;
        }
        findings.add(f);
        if (first == null || f.value() < first.value()) {
          first = f;
        }
      }
      if (first != null) {
        findings.add(headline(first, left, limit));
      }
    }
    return findings;
  }

  private Finding headline(Finding first, boolean left, double limit) {
    String side = left ? "left" : "right";
    return Finding.atLeast(
            "lean." + side,
            first.subject(),
            first.stance(),
            first.value(),
            limit,
            "deg",
            SOURCE + Sources.of(layout, Demands.Key.LEAN),
            "Leaning to the "
                + side
                + ", "
                + first.subject()
                + " touches first, at "
                + Say.deg(first.value())
                + "; "
                + Say.deg(limit)
                + " are asked.")
        .at(first.where().orElse(PointMm.ORIGIN));
  }

  private Finding part(
      Standing standing,
      PartShape shape,
      boolean left,
      LeanClearance clearance,
      Tyre front,
      Tyre rear,
      double wheelbase,
      double limit) {
    double y = left ? shape.leftMm() : shape.rightMm();
    if (y <= 0) {
      return null;
    }
    PointMm at = null;
    double least = Math.toRadians(LISTED_TO_DEG);
    for (PointMm p : hull(shape)) {
      PointMm road = standing.ground().toRoad(p);
      // the closed form with the crown interpolated is within 0.001° and picks the point
      double share = road.x() / wheelbase;
      double crown =
          Math.max(
              0,
              rear.sectionRadiusMm() + (front.sectionRadiusMm() - rear.sectionRadiusMm()) * share);
      double roll =
          Math.acos(Math.max(-1, -crown / Math.max(crown, Math.hypot(road.z() - crown, y))))
              - Math.atan2(y, road.z() - crown);
      if (roll < least) {
        least = roll;
        at = p;
      }
    }
    if (at == null) {
      return null;
    }
    PointMm road = standing.ground().toRoad(at);
    LeanClearance.TouchDown touch = clearance.touchDown(road.x(), y, road.z());
    if (!touch.touches()) {
      return null;
    }
    double deg = Math.toDegrees(touch.rollRad());
    String side = left ? "left" : "right";
    String name = shape.part().name();
    return Finding.atLeast(
            "lean." + side + "." + name,
            name,
            standing.name(),
            deg,
            limit,
            "deg",
            SOURCE + Sources.of(layout, Demands.Key.LEAN),
            name
                + " touches the road at "
                + Say.deg(deg)
                + " of lean to the "
                + side
                + "; "
                + Say.deg(limit)
                + " are asked.")
        .at(at);
  }

  private PointMm[] hull(PartShape shape) {
    return hulls.computeIfAbsent(
        shape,
        s -> {
          Coordinate[] cs = s.outline().convexHull().getCoordinates();
          PointMm[] points = new PointMm[cs.length];
          for (int i = 0; i < cs.length; i++) {
            points[i] = new PointMm(cs[i].x, cs[i].y);
          }
          return points;
        });
  }
}
