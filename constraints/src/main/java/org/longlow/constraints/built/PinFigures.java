package org.longlow.constraints.built;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/** Figures of pins as they lie, such as how far one is ahead of another; mm or rad. */
final class PinFigures {

  private static final Map<Limit.Kind, TieKind> LIMITS = new EnumMap<>(Limit.Kind.class);

  static {
    LIMITS.put(Limit.Kind.DISTANCE, TieKind.DISTANCE);
    LIMITS.put(Limit.Kind.AHEAD, TieKind.AHEAD);
    LIMITS.put(Limit.Kind.ABOVE, TieKind.ABOVE);
    LIMITS.put(Limit.Kind.HEIGHT, TieKind.HEIGHT);
    LIMITS.put(Limit.Kind.ANGLE, TieKind.ANGLE);
    LIMITS.put(Limit.Kind.RAKE, TieKind.RAKE);
  }

  /** What differs by less agrees: no tape shows it, mm. Judgement. */
  private static final double SAME_MM = 0.5;

  /** The same of angles: half a millimetre at 300 mm. Judgement. */
  private static final double SAME_RAD = Math.toRadians(0.1);

  private PinFigures() {}

  static boolean isKnown(TieKind kind) {
    return kind == TieKind.HEIGHT || kind.between().isPresent();
  }

  static boolean isKnown(Limit limit) {
    return LIMITS.containsKey(limit.kind());
  }

  /** Returns the figure that a tie of {@code kind} asks; NaN where it asks none of pins alone. */
  static double of(TieKind kind, List<String> pins, Places places) {
    if (kind == TieKind.IN_LINE || kind == TieKind.BESIDE) {
      PointMm start = places.pin(pins.get(1));
      PointMm line = places.pin(pins.get(2)).minus(start);
      return line.cross(places.pin(pins.get(0)).minus(start)) / line.length();
    }
    if (!isKnown(kind)) {
      return Double.NaN;
    }
    PointMm first = places.pin(pins.get(0));
    if (kind == TieKind.HEIGHT) {
      return first.z();
    }
    PointMm way = places.pin(pins.get(1)).minus(first);
    return kind.between().orElseThrow().applyAsDouble(way.x(), way.z());
  }

  static double of(Limit limit, Places places) {
    return isKnown(limit) ? of(LIMITS.get(limit.kind()), limit.pins(), places) : Double.NaN;
  }

  /** Returns whether two figures agree as well as a shop measures. */
  static boolean same(double a, double b, Dim dim) {
    return Math.abs(a - b) <= (dim.equals(Dim.ANGLE) ? SAME_RAD : SAME_MM);
  }
}
