package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.longlow.constraints.layout.Outline;
import org.longlow.sketcher.desk.PartPoints;
import org.longlow.sketcher.edit.HoleEdits;

/** What can be done with the points that are taken, by a button as by its key. */
final class OutlineDeeds {

  private OutlineDeeds() {}

  /**
   * Returns what can be done.
   *
   * @param cut is told which sort of hole the next click cuts
   */
  static List<Deed> of(PartPoints points, Consumer<HoleEdits.Sort> cut) {
    Outline outline = points.outline().orElse(null);
    if (outline instanceof Outline.Traced) {
      return List.of(new Deed("write points out", "R", points::replace));
    }
    List<Deed> deeds = new ArrayList<>();
    deeds.add(new Deed(outline == null ? "add a bend" : "add a point", "J", points::addAfter));
    deeds.add(new Deed("take out", "Delete", points::takeOut));
    if (outline != null) {
      deeds.add(new Deed("smooth or corner", "S", points::smooth));
      deeds.add(hole(HoleEdits.Sort.ROUND, "H", cut));
      deeds.add(hole(HoleEdits.Sort.SLOT, "Shift H", cut));
      deeds.add(hole(HoleEdits.Sort.CUT, "Alt H", cut));
      deeds.add(new Deed("whole holes", "W", points::turnWholeHoles));
      deeds.add(new Deed("mirror up", "M", () -> points.symmetrical(false)));
      deeds.add(new Deed("mirror forward", "Shift M", () -> points.symmetrical(true)));
    }
    return deeds;
  }

  private static Deed hole(HoleEdits.Sort sort, String key, Consumer<HoleEdits.Sort> cut) {
    return new Deed(sort.words(), key, () -> cut.accept(sort));
  }
}
