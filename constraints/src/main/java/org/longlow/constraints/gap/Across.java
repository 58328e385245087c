package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How far something must go along one line to leave all that it may not meet on it: open intervals
 * of forbidden shifts.
 */
final class Across {

  private record Forbidden(double from, double to) {}

  private final List<Forbidden> forbidden = new ArrayList<>();

  /** Forbids every shift between two, ends allowed. */
  void forbid(double from, double to) {
    if (from < to) {
      forbidden.add(new Forbidden(from, to));
    }
  }

  /**
   * Returns the smallest shift allowed towards one side, mm with its sign; 0 if none is needed.
   *
   * @param way 1 towards growing values, -1 towards the others
   */
  double least(int way) {
    List<Forbidden> inOrder = new ArrayList<>();
    for (Forbidden f : forbidden) {
      inOrder.add(way > 0 ? f : new Forbidden(-f.to(), -f.from()));
    }
    inOrder.sort(Comparator.comparingDouble(Forbidden::from));
    double at = 0;
    if (inOrder.stream().noneMatch(f -> f.from() < 0 && f.to() > 0)) {
      return 0;
    }
    for (Forbidden f : inOrder) {
      if (f.from() < at + WayClear.PAST_MM && f.to() > at) {
        at = f.to();
      }
    }
    return way * at;
  }

  /** Returns the smaller of both ways, mm with its sign; that of growing values where equal. */
  double least() {
    double up = least(1);
    double down = least(-1);
    return up <= -down ? up : down;
  }
}
