package org.longlow.constraints.check.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.stand.Ground;

/** The lamps of a machine with what stands before each of them. For one thread. */
final class LampViews {

  private static final Memo<Faced, LampView> KNOWN = new Memo<>(64, Faced::view);

  /** What begins no farther before a face than this may hold it; a skin has an opening, mm. */
  private static final double MEETS_MM = 5;

  private final Iterable<PartShape> shapes;
  private final BiPredicate<String, String> meant;
  private final Ground ground;
  private final Map<LampItem, LampView> views = new HashMap<>();

  /**
   * @param shapes of the parts where they stand
   * @param meant whether two parts are meant to meet: such a part has an opening for the lamp, if
   *     it is a skin, or where it meets it
   * @param ground the road under them
   */
  LampViews(Iterable<PartShape> shapes, BiPredicate<String, String> meant, Ground ground) {
    this.shapes = shapes;
    this.meant = meant;
    this.ground = ground;
  }

  /** What stands before a lamp: most of it stays from one edit to the next. */
  private record Faced(LampItem lamp, Ground ground, List<Standing> before) {

    /** A part, whether it has an opening for the lamp, and one of its bodies. */
    record Standing(String part, boolean opened, Piece body) {}

    LampView view() {
      FaceAxes axes = FaceAxes.of(lamp, ground);
      return new LampView(
          lamp, before.stream().map(b -> Before.of(b.part, b.opened, axes.of(b.body))).toList());
    }
  }

  /** Returns how a lamp is seen. */
  LampView of(LampItem lamp) {
    return views.computeIfAbsent(lamp, this::looked);
  }

  private LampView looked(LampItem lamp) {
    FaceAxes axes = FaceAxes.of(lamp, ground);
    double nearest = FaceAxes.dot(axes.ahead(), axes.at()) + Before.BESIDE_MM;
    List<Faced.Standing> before = new ArrayList<>();
    double[] back = {-axes.ahead()[0], -axes.ahead()[1], -axes.ahead()[2]};
    double[] most = new double[3];
    for (PartShape shape : shapes) {
      String name = shape.part().name();
      if (name.equals(lamp.part())) {
        continue;
      }
      boolean opens = meant.test(lamp.part(), name);
      boolean skin = shape.part() instanceof ShellPart;
      for (Prism prism : shape.prisms()) {
        if (reachMm(prism, axes.ahead()) > nearest) {
          for (Piece piece : prism.convex()) {
            piece.farthest(axes.ahead(), most);
            if (FaceAxes.dot(axes.ahead(), most) > nearest) {
              piece.farthest(back, most);
              boolean meets = FaceAxes.dot(axes.ahead(), most) < nearest + MEETS_MM;
              before.add(new Faced.Standing(name, opens && (skin || meets), piece));
            }
          }
        }
      }
    }
    return KNOWN.of(new Faced(lamp, ground, before));
  }

  private static double reachMm(Prism prism, double[] ahead) {
    Envelope box = prism.outline().getEnvelopeInternal();
    Interval across = prism.across();
    return ahead[0] * (ahead[0] > 0 ? box.getMaxX() : box.getMinX())
        + ahead[1] * (ahead[1] > 0 ? across.to() : across.from())
        + ahead[2] * (ahead[2] > 0 ? box.getMaxY() : box.getMinY());
  }
}
