package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is to be painted anew where other inks are to be seen than before. */
final class Changed {

  /** What a further box costs, as an area that could be painted instead, square px. */
  private static final double BOX_COSTS = 1500;

  private Changed() {}

  /**
   * Returns those inks of both lists that do not lie over and under the same ones in both. Where
   * none of them reaches, both lists paint the same.
   */
  static List<Ink> between(List<Ink> before, List<Ink> now) {
    Map<Ink, Integer> places = new HashMap<>();
    for (int i = 0; i < now.size(); i++) {
      places.put(now.get(i), i);
    }
    List<Ink> changed = new ArrayList<>();
    boolean[] kept = new boolean[now.size()];
    int last = -1;
    for (Ink ink : before) {
      int place = places.getOrDefault(ink, -1);
      if (place > last) {
        kept[place] = true;
        last = place;
      } else {
        changed.add(ink);
      }
    }
    for (int i = 0; i < kept.length; i++) {
      if (!kept[i]) {
        changed.add(now.get(i));
      }
    }
    return changed;
  }

  /** Returns boxes of whole px within {@code px} that hold all that inks paint there. */
  static List<Spots.Box> boxes(List<Ink> inks, Spots.Box px) {
    List<Spots.Box> boxes = new ArrayList<>();
    for (Ink ink : inks) {
      Optional<Spots.Box> part = ink.within(px);
      if (part.isPresent()) {
        take(boxes, whole(part.get(), px));
      }
    }
    return boxes;
  }

  private static void take(List<Spots.Box> boxes, Spots.Box box) {
    Spots.Box grown = box;
    for (int i = 0; i < boxes.size(); i++) {
      Spots.Box both = InkReach.round(grown, boxes.get(i));
      if (area(both) <= area(grown) + area(boxes.get(i)) + BOX_COSTS) {
        boxes.remove(i);
        grown = both;
        // what it did not join before it may join now
        i = -1;
      }
    }
    boxes.add(grown);
  }

  private static double area(Spots.Box box) {
    return box.width() * box.height();
  }

  private static Spots.Box whole(Spots.Box box, Spots.Box px) {
    double x = Math.max(px.x(), Math.floor(box.x()));
    double y = Math.max(px.y(), Math.floor(box.y()));
    return new Spots.Box(
        x,
        y,
        Math.min(px.right(), Math.ceil(box.right())) - x,
        Math.min(px.bottom(), Math.ceil(box.bottom())) - y);
  }
}
