package org.longlow.constraints.shape;

import java.util.List;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.Spread;

/** How far parts reach across the machine. */
public final class Spreads {

  private Spreads() {}

  /** Returns the intervals across the machine that a spread stands for. */
  public static List<Interval> of(PartBase base, Places places) {
    if (base.spread().isEmpty()) {
      return List.of(new Interval(0, 0));
    }
    return of(base.spread().get(), places);
  }

  /** Returns the intervals of a spread, that of the mirror image last. */
  static List<Interval> of(Spread spread, Places places) {
    Interval one = one(spread, places);
    return spread.both() ? List.of(one, one.mirrored()) : List.of(one);
  }

  /** Returns the interval of a spread without its mirror image. */
  static Interval one(Spread spread, Places places) {
    double left = places.value(spread.left());
    double right = places.value(spread.right());
    return new Interval(Math.min(-right, left), Math.max(-right, left));
  }

  /** Returns the middle of all intervals together, weighted by their lengths. */
  static double middle(List<Interval> across) {
    double weight = 0;
    double sum = 0;
    for (Interval i : across) {
      weight += i.length();
      sum += i.length() * i.middle();
    }
    return weight > 0 ? sum / weight : 0;
  }
}
