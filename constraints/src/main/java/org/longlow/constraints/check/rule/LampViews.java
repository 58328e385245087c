package org.longlow.constraints.check.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.law.FieldOfView;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Lamps;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;

/**
 * How far round the light of a lamp gets past the other parts: from straight ahead of its face to
 * each side the first direction in which something stands before a point of the face, somewhere
 * between the lowest and the highest ray asked for. For one thread.
 */
final class LampViews {

  /** Beyond this nothing is looked for: near a right angle all that is as far ahead is seen. */
  private static final double MOST_DEG = 89;

  private static final double FINE_MM = 0.05;

  /** What reaches no farther ahead than this stands beside a lamp, not before it, mm. */
  private static final double BESIDE_MM = 0.1;

  /** A part farther before a lamp than this is not what the lamp is let into, mm. */
  private static final double DEEPEST_MM = 100;

  private final Iterable<PartShape> shapes;
  private final BiPredicate<String, String> meant;
  private final Ground ground;
  private final Map<LampItem, List<Before>> known = new HashMap<>();

  /**
   * @param shapes of the parts where they stand
   * @param meant whether two parts are meant to meet: such a part has an opening for the lamp
   * @param ground the road under them
   */
  LampViews(Iterable<PartShape> shapes, BiPredicate<String, String> meant, Ground ground) {
    this.shapes = shapes;
    this.meant = meant;
    this.ground = ground;
  }

  /**
   * How far a point of a lamp is seen.
   *
   * @param out degrees outwards; of a lamp that faces sideways, forward
   * @param in degrees inwards
   * @param outBy what hides it there, empty where it is seen as far as was looked
   * @param inBy likewise
   * @param letInMm how far behind the surface of a part the point lies that has an opening for it
   * @param holder which part that is, empty if there is none
   */
  record View(double out, double in, String outBy, String inBy, double letInMm, String holder) {}

  /** A part, or some of it, that may stand before a lamp: corners of the body in a face's axes. */
  private record Before(String part, List<double[]> corners) {

    Tangents from(double ahead, double out, double up) {
      return Tangents.of(
          corners.stream().map(c -> new double[] {c[0] - ahead, c[1] - out, c[2] - up}).toList());
    }

    /** How far before a point of the face it ends, straight ahead, mm; 0 if it is not there. */
    double endMm(double out, double up) {
      double inside = 0;
      double outside = DEEPEST_MM;
      if (!from(0, out, up).straightAhead()) {
        return 0;
      }
      while (outside - inside > FINE_MM) {
        double middle = (inside + outside) / 2;
        if (from(middle, out, up).straightAhead()) {
          inside = middle;
        } else {
          outside = middle;
        }
      }
      return outside;
    }
  }

  /**
   * Returns how far a point of its face is seen.
   *
   * @param out of the point from the centre of the face, mm
   * @param up of the point from the centre, mm
   * @param beyondDeg how much farther than the field asks to look
   */
  View of(LampItem lamp, FieldOfView field, double out, double up, double beyondDeg) {
    List<Before> before = before(lamp);
    double letIn = 0;
    String holder = "";
    for (Before b : before) {
      double end = meant.test(lamp.part(), b.part()) ? b.endMm(out, up) : 0;
      if (end > letIn && end < DEEPEST_MM) {
        letIn = end;
        holder = b.part();
      }
    }
    double[] seen = {
      Math.min(MOST_DEG, field.out() + beyondDeg), Math.min(MOST_DEG, field.in() + beyondDeg)
    };
    String[] by = {"", ""};
    double high = Math.toRadians(field.up());
    double low = Math.toRadians(field.down(lamp.zMm()));
    for (Before b : before) {
      Tangents tangents = b.from(letIn, out, up);
      for (int side = 0; side < 2; side++) {
        double most = Math.toRadians(seen[side]);
        double first = Math.toDegrees(tangents.first(side == 0 ? 1 : -1, most, low, high));
        if (first < seen[side]) {
          seen[side] = first;
          by[side] = b.part();
        }
      }
    }
    return new View(seen[0], seen[1], by[0], by[1], letIn, holder);
  }

  /** Where a face is and which way it looks, in the axes of the frame: x, y, z. */
  private record Axes(double[] at, double[] ahead, double[] out, double[] up) {

    double[] of(double[] p) {
      double[] from = {p[0] - at[0], p[1] - at[1], p[2] - at[2]};
      return new double[] {dot(ahead, from), dot(out, from), dot(up, from)};
    }
  }

  private Axes axes(LampItem lamp) {
    PointMm along = ground.along();
    PointMm at = ground.toFrame(new PointMm(lamp.xMm(), lamp.zMm()));
    int side = lamp.yMm() < 0 ? -1 : 1;
    double[] up = {-along.z(), 0, along.x()};
    double[] outwards = {0, side, 0};
    double[] forward = {along.x(), 0, along.z()};
    if (lamp.kind() == LampPart.Kind.SIDE_REFLECTOR) {
      double face = lamp.yMm() + side * lamp.halfWidthMm();
      return new Axes(new double[] {at.x(), face, at.z()}, outwards, forward, up);
    }
    double[] ahead =
        Lamps.facesForward(lamp.kind()) ? forward : new double[] {-along.x(), 0, -along.z()};
    return new Axes(new double[] {at.x(), lamp.yMm(), at.z()}, ahead, outwards, up);
  }

  /** What reaches farther ahead than the face. */
  private List<Before> before(LampItem lamp) {
    return known.computeIfAbsent(lamp, this::standingBefore);
  }

  private List<Before> standingBefore(LampItem lamp) {
    Axes axes = axes(lamp);
    double nearest = dot(axes.ahead, axes.at) + BESIDE_MM;
    List<Before> before = new ArrayList<>();
    for (PartShape shape : shapes) {
      if (shape.part().name().equals(lamp.part())) {
        continue;
      }
      for (Prism prism : shape.prisms()) {
        if (reachMm(prism, axes.ahead) > nearest) {
          for (Piece piece : prism.convex()) {
            List<double[]> corners = piece.corners().stream().map(axes::of).toList();
            if (corners.stream().anyMatch(c -> c[0] > BESIDE_MM)) {
              before.add(new Before(shape.part().name(), corners));
            }
          }
        }
      }
    }
    return before;
  }

  private static double reachMm(Prism prism, double[] ahead) {
    Envelope box = prism.outline().getEnvelopeInternal();
    Interval across = prism.across();
    return ahead[0] * (ahead[0] > 0 ? box.getMaxX() : box.getMinX())
        + ahead[1] * (ahead[1] > 0 ? across.to() : across.from())
        + ahead[2] * (ahead[2] > 0 ? box.getMaxY() : box.getMinY());
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
