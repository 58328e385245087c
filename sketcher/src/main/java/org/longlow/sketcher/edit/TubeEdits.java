package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TubePart;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** Edits of the bends of a tube: each is at a pin of its path. */
public final class TubeEdits {

  private TubeEdits() {}

  /**
   * Returns the edit that adds a bend on a straight, at a pin of its own that moves with what the
   * end before it moves with.
   *
   * @param straight between which pins of the path, counted from 0
   */
  public static Edit addBend(String tube, int straight, PointMm at) {
    return new Edit(
        "add bend to " + tube,
        layout -> {
          List<TubePart.Corner> path = new ArrayList<>(tube(layout, tube).corners());
          String pin = Fresh.name(layout, "pins", tube + "Bend");
          String with = layout.pins().get(path.get(straight).pin()).with();
          path.add(straight + 1, new TubePart.Corner(pin, path.get(straight).y()));
          Layout pinned =
              layout.withPins(
                  Map.of(
                      pin, new Pin(PointEdits.mm(at.x()), PointEdits.mm(at.z()), false, with, "")));
          return Change.set(pinned, path, "parts", tube, "path");
        });
  }

  /**
   * Returns the edit that takes a bend or an end out. The pin goes too if it was for this alone:
   * nothing else names it.
   *
   * @param index in the path, counted from 0
   */
  public static Edit takeOut(String tube, int index) {
    return new Edit(
        "take out bend " + (index + 1) + " of " + tube,
        layout -> {
          List<TubePart.Corner> path = new ArrayList<>(tube(layout, tube).corners());
          if (path.size() <= 2) {
            throw new OutOfRange("a tube needs two ends; take out the whole of " + tube);
          }
          String pin = path.remove(index).pin();
          Layout without = Change.set(layout, path, "parts", tube, "path");
          Entries.Entry entry = new Entries.Entry("pins", pin);
          boolean own = pin.startsWith(tube + "Bend");
          Entries.Without gone = Entries.without(without, entry);
          return own && gone.also().isEmpty() && gone.changed().isEmpty() ? gone.layout() : without;
        });
  }

  private static TubePart tube(Layout layout, String name) {
    if (layout.parts().get(name) instanceof TubePart tube) {
      return tube;
    }
    throw new OutOfRange(name + " is no tube");
  }
}
