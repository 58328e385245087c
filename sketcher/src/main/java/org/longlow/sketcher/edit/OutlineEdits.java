package org.longlow.sketcher.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.words.Names;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** Edits that take outlines from paths of SVG files. Each is one step. */
public final class OutlineEdits {

  /** How far a new part reaches to each side until that is typed; an assumption. */
  private static final Formula REACH = Formula.parse("100 mm");

  private OutlineEdits() {}

  /**
   * A path of a file and its scale.
   *
   * @param file relative to the folder of the layout
   * @param path its id; empty for the first
   * @param scale how long a user unit is, a quantity or formula
   */
  public record Source(String file, String path, String scale) {
    private Outline outline() {
      return new Outline.Traced(file, path, Formula.parse(scale.strip()), List.of(), true);
    }
  }

  /** Returns the scale at which something so many units wide has a width, as it was typed. */
  public static String scaleOf(String width, double units) {
    if (!(units > 0)) {
      throw new OutOfRange("the path has no width; type how long a unit is");
    }
    Formula typed = Formula.parse(width.strip());
    String length = typed.isBareNumber() ? "(" + typed.text().strip() + " mm)" : typed.bracketed();
    return length + " / " + Formula.of(units, Unit.NONE).text();
  }

  /** Returns the edit that gives a part its outline from a path. */
  public static Edit traced(String part, Source source) {
    return new Edit(
        "outline of " + part + " from " + source.file(),
        layout -> {
          if (!(layout.parts().get(part) instanceof Part.Outlined)) {
            throw new OutOfRange(part + " has no outline of its own that could be another");
          }
          OutlineShaping.counted(layout, part);
          return Change.set(layout, source.outline(), "parts", part, "outline");
        });
  }

  /**
   * Returns the edit that adds a part with its outline from a path, and a pin for the corner of the
   * sheet that the path is drawn on.
   *
   * @param at place of that corner, mm
   */
  public static Edit added(SolidPart.Kind kind, String name, Source source, PointMm at) {
    return new Edit(
        "add " + name + " from " + source.file(),
        layout -> {
          if (layout.parts().containsKey(name)) {
            throw new OutOfRange("there is already a part called " + name);
          }
          String pin = Fresh.name(layout, "pins", name + "Sheet");
          Map<String, Part> parts = new LinkedHashMap<>(layout.parts());
          PartBase base =
              new PartBase(
                  name,
                  Optional.of(new Spread(REACH, REACH, false)),
                  Optional.empty(),
                  "",
                  false,
                  kind.usuallyHot(),
                  List.of(),
                  "");
          LocalAxes frame = new LocalAxes(pin, Optional.empty(), Optional.empty());
          parts.put(name, new SolidPart(base, kind, frame, source.outline()));
          Layout pinned =
              layout.withPins(
                  Map.of(pin, new Pin(tenth(at.x()), tenth(at.z()), false, Pin.FRAME, "")));
          return Change.set(pinned, parts, "parts");
        });
  }

  /** Returns a name for a new part of a kind that nothing has yet. */
  public static String unused(Layout layout, SolidPart.Kind kind) {
    return Fresh.name(layout, "parts", Names.word(kind));
  }

  private static Formula tenth(double mm) {
    return Formula.of(Math.rint(mm * 10) / 10, Unit.MM);
  }
}
