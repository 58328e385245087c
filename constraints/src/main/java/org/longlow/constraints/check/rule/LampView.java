package org.longlow.constraints.check.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.longlow.constraints.law.FieldOfView;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.layout.LampPart;

/**
 * How far round the light of a lamp gets past what stands before it: from straight ahead of its
 * face to each side the first direction in which something stands before a point of the face,
 * somewhere between the lowest and the highest ray asked for. For any number of threads.
 */
final class LampView {

  /** Beyond this nothing is looked for: near a right angle all that is as far ahead is seen. */
  private static final double MOST_DEG = 89;

  /** So much farther than asked it is looked, for the figure to say what is to spare, degrees. */
  private static final double BEYOND_DEG = 10;

  private final LampItem lamp;
  private final List<Before> before;

  /** So far ahead of the face all of it is clear of what it is let into, mm. */
  private final double letIn;

  private final String holder;
  private final Map<FieldOfView, Seen> known = new ConcurrentHashMap<>();

  LampView(LampItem lamp, List<Before> before) {
    this.lamp = lamp;
    this.before = before;
    List<double[]> points = new ArrayList<>(edges());
    points.add(new double[2]);
    double deepest = 0;
    String in = "";
    for (Before b : before) {
      for (double[] p : points) {
        double end = b.opened() && b.mayHold(p[0], p[1]) ? b.endMm(p[0], p[1], deepest) : 0;
        if (end > deepest && end < Before.DEEPEST_MM) {
          deepest = end;
          in = b.part();
        }
      }
    }
    letIn = deepest;
    holder = in;
  }

  /** Middles of the edges of its face, outwards and up of its centre, mm. */
  private List<double[]> edges() {
    // the face of one that looks sideways is drawn from the side, its length is not told
    boolean sideways = lamp.kind() == LampPart.Kind.SIDE_REFLECTOR;
    double wide = sideways ? 0 : lamp.halfWidthMm();
    double high = lamp.halfHeightMm();
    return List.of(
        new double[] {wide, 0},
        new double[] {-wide, 0},
        new double[] {0, high},
        new double[] {0, -high});
  }

  /**
   * How far a point of a lamp is seen.
   *
   * @param out degrees outwards; of a lamp that faces sideways, forward
   * @param in degrees inwards
   * @param outBy what hides it there, empty where it is seen as far as was looked
   * @param inBy likewise
   */
  record View(double out, double in, String outBy, String inBy) {}

  /**
   * How far a lamp is seen.
   *
   * @param lamp which one
   * @param centre how far the centre of its face is seen
   * @param edgeBy what stands before some of its face within the field, empty if nothing does
   * @param letInMm how far behind the surface of a part some of its face lies that has an opening
   *     for it
   * @param holder which part that is, empty if there is none
   */
  record Seen(LampItem lamp, View centre, String edgeBy, double letInMm, String holder) {}

  /** Returns how far it is seen. */
  Seen seen(FieldOfView field) {
    return known.computeIfAbsent(
        field, f -> new Seen(lamp, at(f, 0, 0, BEYOND_DEG), edgeHiddenBy(f), letIn, holder));
  }

  private String edgeHiddenBy(FieldOfView field) {
    for (double[] edge : edges()) {
      View view = at(field, edge[0], edge[1], 0);
      if (!view.outBy().isEmpty() || !view.inBy().isEmpty()) {
        return view.outBy().isEmpty() ? view.inBy() : view.outBy();
      }
    }
    return "";
  }

  /**
   * Returns how far a point of its face is seen.
   *
   * @param out of the point from the centre of the face, mm
   * @param up of the point from the centre, mm
   * @param beyondDeg how much farther than the field asks to look
   */
  private View at(FieldOfView field, double out, double up, double beyondDeg) {
    double[] seen = {
      Math.min(MOST_DEG, field.out() + beyondDeg), Math.min(MOST_DEG, field.in() + beyondDeg)
    };
    String[] by = {"", ""};
    double high = Math.toRadians(field.up());
    double low = Math.toRadians(field.down(lamp.zMm()));
    double fall = Math.tan(low);
    double rise = Math.tan(high);
    for (Before b : before) {
      if (!b.mayHide(letIn, out, up, fall, rise)) {
        continue;
      }
      Tangents tangents = null;
      for (int side = 0; side < 2; side++) {
        double most = Math.toRadians(seen[side]);
        if (b.leastRad(side == 0 ? 1 : -1, letIn, out) >= most) {
          continue;
        }
        tangents = tangents == null ? b.from(letIn, out, up) : tangents;
        double first = Math.toDegrees(tangents.first(side == 0 ? 1 : -1, most, low, high));
        if (first < seen[side]) {
          seen[side] = first;
          by[side] = b.part();
        }
      }
    }
    return new View(seen[0], seen[1], by[0], by[1]);
  }
}
