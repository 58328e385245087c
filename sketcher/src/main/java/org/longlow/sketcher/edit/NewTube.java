package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.words.Names;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * New tubes whose path was drawn point by point on the card. Diameter, wall and radius of the bends
 * are those of the gallery, a beginning to be typed over.
 */
public final class NewTube {

  /** It is bent between two ends. */
  public static final int FEWEST = 2;

  private NewTube() {}

  /** Returns the words of the kinds that can be drawn so. */
  public static List<String> kinds() {
    return Stream.of(TubePart.Kind.values()).map(Names::word).toList();
  }

  /**
   * Returns the edit that adds a tube through points: its ends, and bends between them. A pin that
   * lies there already is shared; the others are the tube's own.
   *
   * @param kind one of {@link #kinds()}
   * @param name of the new part
   * @param spots in the axes of the machine, two or more
   */
  public static Edit of(String kind, String name, List<PinSpot> spots) {
    return new Edit(
        "draw " + name,
        layout -> {
          if (spots.size() < FEWEST) {
            throw new OutOfRange("a tube needs two ends, not " + spots.size());
          }
          Layout with = layout;
          List<String> path = new ArrayList<>();
          for (PinSpot spot : spots) {
            String shared = spot.shared().filter(layout.pins()::containsKey).orElse("");
            String pin =
                shared.isEmpty()
                    ? Fresh.name(with, "pins", name + word(path.size(), spots.size()))
                    : shared;
            if (shared.isEmpty()) {
              PointMm at = spot.at();
              with =
                  with.withPins(
                      Map.of(
                          pin,
                          new Pin(
                              PointEdits.mm(at.x()), PointEdits.mm(at.z()), false, Pin.FRAME, "")));
            }
            path.add(pin);
          }
          return with.withPart(part(kind, name, path));
        });
  }

  private static String word(int index, int all) {
    return index == 0 ? "Begin" : index == all - 1 ? "End" : "Bend";
  }

  /** Returns how it would lie; two points or more. */
  public static Putting.Ghost ghost(String kind, List<PointMm> points) {
    Map<String, PointMm> at = new LinkedHashMap<>();
    points.forEach(p -> at.put(kind + " " + at.size(), p));
    return new Putting.Ghost(
        part(kind, kind, List.copyOf(at.keySet())), Gallery.places().withPins(at));
  }

  private static TubePart part(String kind, String name, List<String> path) {
    TubePart drawn = (TubePart) Gallery.layout().parts().get(kind);
    PartBase b = drawn.base();
    PartBase base =
        new PartBase(
            name, b.spread(), b.mass(), b.material(), b.steered(), b.hot(), b.touches(), b.note());
    return new TubePart(
        base,
        drawn.type(),
        path.stream().map(TubePart.Corner::of).toList(),
        drawn.diameter(),
        drawn.wall(),
        drawn.bendRadius(),
        drawn.y(),
        drawn.both(),
        drawn.bought());
  }
}
