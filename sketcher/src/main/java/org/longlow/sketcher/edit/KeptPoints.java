package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Dimension.End;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;

/** Points of outlines that kept dimensions end at, counted anew when an outline has others. */
final class KeptPoints {

  private KeptPoints() {}

  /**
   * Returns the layout with dimensions that end at the same points as before.
   *
   * @param before the outline of the part before; it has another in the layout
   * @param drawn the new number of a point as drawn; one taken out gives that which follows it
   */
  static Layout counted(Layout layout, String part, Outline before, IntUnaryOperator drawn) {
    Outline after = layout.parts().get(part).edge().orElseThrow();
    Map<String, Dimension> all = new LinkedHashMap<>();
    layout
        .dimensions()
        .forEach(
            (name, d) -> {
              List<End> ends = new ArrayList<>();
              for (End end : d.ends()) {
                ends.add(
                    end.part().equals(part) && end.point().isPresent()
                        ? End.point(part, number(end.point().get(), before, after, drawn))
                        : end);
              }
              all.put(name, new Dimension(d.along(), ends, d.off(), d.note()));
            });
    return all.equals(layout.dimensions()) ? layout : Change.set(layout, all, "dimensions");
  }

  private static int number(int was, Outline before, Outline after, IntUnaryOperator drawn) {
    int written = before.written(was);
    int is = drawn.applyAsInt(written);
    boolean ends = is == 0 || is == after.vertices().size() - 1;
    return was == written || ends ? is : 2 * after.vertices().size() - 2 - is;
  }
}
