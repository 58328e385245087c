package org.longlow.sketcher.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.words.Names;

/** A cable, hose or loom to begin with: through the pins picked, in the middle of the machine. */
final class NewLine {

  private NewLine() {}

  /** Adds a line of a kind, of a usual diameter. */
  static Edit of(Line.Kind kind, Additions.Picked picked) {
    String word = Names.word(kind);
    return new Edit(
        "add line " + word,
        layout -> {
          List<Line.Point> points =
              picked.allPins(2, "a " + word).stream()
                  .map(pin -> new Line.Point(pin, mm(0)))
                  .toList();
          Map<String, Line> all = new LinkedHashMap<>(layout.lines());
          all.put(
              Fresh.name(layout, "lines", word),
              new Line(kind, usual(kind), points, Optional.empty(), Optional.empty(), ""));
          return Change.set(layout, all, "lines");
        });
  }

  private static Formula usual(Line.Kind kind) {
    return switch (kind) {
      case CABLE -> mm(5);
      case HOSE, FUEL_HOSE -> mm(8);
      case LOOM -> mm(12);
    };
  }

  private static Formula mm(double mm) {
    return Formula.of(mm, Unit.MM);
  }
}
