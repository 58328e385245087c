package org.longlow.constraints.check.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.function.ToDoubleFunction;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.law.FieldOfView;
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

  /** The slope of the steepest ray that any row asks for. */
  private final double steepest;

  private final Map<LampItem, LampView> views = new HashMap<>();

  /**
   * @param shapes of the parts where they stand
   * @param meant whether two parts are meant to meet: such a part has an opening for the lamp, if
   *     it is a skin, or where it meets it
   * @param ground the road under them
   * @param fields within which the lamps are to be seen
   */
  LampViews(
      Iterable<PartShape> shapes,
      BiPredicate<String, String> meant,
      Ground ground,
      Collection<FieldOfView> fields) {
    this.shapes = shapes;
    this.meant = meant;
    this.ground = ground;
    this.steepest =
        Math.tan(
            Math.toRadians(fields.stream().mapToDouble(FieldOfView::steepest).max().orElse(0)));
  }

  /** What stands before a lamp: most of it stays from one edit to the next. */
  private record Faced(LampItem lamp, Ground ground, List<Standing> before) {

    /** A part, whether it has an opening for the lamp, and one of its bodies. */
    record Standing(String part, boolean opened, Piece body) {}

    /** Which lamp on which road tells nearly all apart; what stands before it is only compared. */
    @Override
    public int hashCode() {
      return 31 * lamp.hashCode() + ground.hashCode();
    }

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
    List<Faced.Standing> before = new ArrayList<>();
    for (PartShape shape : shapes) {
      String name = shape.part().name();
      if (name.equals(lamp.part())) {
        continue;
      }
      boolean opens = meant.test(lamp.part(), name);
      boolean skin = shape.part() instanceof ShellPart;
      for (Prism prism : shape.prisms()) {
        if (mayHide(axes, way -> reachMm(prism, way), lamp)) {
          for (Piece piece : prism.convex()) {
            double[] most = new double[3];
            ToDoubleFunction<double[]> reach =
                way -> {
                  piece.farthest(way, most);
                  return FaceAxes.dot(way, most);
                };
            if (mayHide(axes, reach, lamp)) {
              double begins = -axes.reachMm(reach, axes.ahead(), -1);
              boolean meets = begins < Before.BESIDE_MM + MEETS_MM;
              before.add(new Faced.Standing(name, opens && (skin || meets), piece));
            }
          }
        }
      }
    }
    return KNOWN.of(new Faced(lamp, ground, before));
  }

  /** Whether a body reaches ahead of a face, between the steepest rays of any row. */
  private boolean mayHide(FaceAxes axes, ToDoubleFunction<double[]> reach, LampItem lamp) {
    double ahead = axes.reachMm(reach, axes.ahead(), 1);
    if (ahead <= Before.BESIDE_MM) {
      return false;
    }
    double aside =
        Math.max(axes.reachMm(reach, axes.out(), 1), axes.reachMm(reach, axes.out(), -1));
    double rises = steepest * Math.hypot(ahead, aside + lamp.halfWidthMm()) + lamp.halfHeightMm();
    rises += Before.BESIDE_MM;
    return -axes.reachMm(reach, axes.up(), -1) <= rises
        && axes.reachMm(reach, axes.up(), 1) >= -rises;
  }

  private static double reachMm(Prism prism, double[] way) {
    Envelope box = prism.outline().getEnvelopeInternal();
    Interval across = prism.across();
    return way[0] * (way[0] > 0 ? box.getMaxX() : box.getMinX())
        + way[1] * (way[1] > 0 ? across.to() : across.from())
        + way[2] * (way[2] > 0 ? box.getMaxY() : box.getMinY());
  }
}
