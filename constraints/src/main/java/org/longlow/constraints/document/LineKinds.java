package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.words;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.words.Quoted;

/** Cables, hoses and looms. */
final class LineKinds {

  private static final int MOST_POINTS = 50;

  private static final Formula IN_THE_MIDDLE = Formula.parse("0 mm");

  static final Kind<Line.Point> POINT =
      Kind.of(
              "linePoint",
              "A place where a line is held: a pin, or an object that says how far across too.",
              LineKinds::point)
          .shortAs("pin");

  static final Kind<Line> LINE =
      Kind.of(
              "line",
              "A cable, hose or loom, led through points that may move against each other.",
              LineKinds::line)
          .rule(LineKinds::leads);

  private LineKinds() {}

  private static Line.Point point(Source<Line.Point> s) {
    return new Line.Point(
        s.pin(
            "pin",
            "a place where it is held",
            Line.Point::pin,
            "The pin there; what it moves with moves the line too, and what a steered part hangs on"
                + " turns with the steering."),
        s.or(
            "y",
            PartSizes.REACH,
            IN_THE_MIDDLE,
            Line.Point::y,
            "How far to the left of the middle, right negative."));
  }

  private static Line line(Source<Line> s) {
    return new Line(
        s.need("kind", words(Line.Kind.class), Line::kind, "What it is."),
        s.need("diameter", PartSizes.SIZE, Line::diameter, "Outside diameter."),
        s.need(
            "points",
            new Type.ListOf<>(new Type.Nested<>(POINT), 2, MOST_POINTS),
            "what it is led through",
            Line::points,
            "What it is led through, from end to end; between them it goes its own smooth way."),
        s.may(
            "length",
            PartSizes.SIZE,
            Line::length,
            "What it is cut to between its ends; absent while that is to be found."),
        s.may(
            "bend",
            LENGTH.notNegative(),
            Line::bend,
            "The least radius its maker lets it be bent to, along its middle; absent takes what is"
                + " common for its kind."),
        s.note(Line::note));
  }

  private static void leads(Line line, Spot at) {
    List<Line.Point> points = line.points();
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).pin().equals(points.get(i - 1).pin())) {
        at.itemFault(
            "points",
            i,
            Quoted.of(points.get(i).pin()),
            "is the pin before it again",
            "name the next pin on its way, or drop it");
      }
    }
  }

  /**
   * Returns what is added to the points of a line or tube: the pin of the layout after the last of
   * them.
   */
  static Optional<?> begun(Kind<?> kind, List<String> pins, List<?> there) {
    if (there.isEmpty() || pins.isEmpty()) {
      return Optional.empty();
    }
    Object last = there.get(there.size() - 1);
    if (kind == POINT && last instanceof Line.Point p) {
      return Optional.of(new Line.Point(after(p.pin(), pins), p.y()));
    }
    return kind == PartKinds.CORNER && last instanceof TubePart.Corner c
        ? Optional.of(new TubePart.Corner(after(c.pin(), pins), c.y()))
        : Optional.empty();
  }

  private static String after(String pin, List<String> pins) {
    return pins.get((pins.indexOf(pin) + 1) % pins.size());
  }
}
