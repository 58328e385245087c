package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.Outline;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.PartPoints;
import org.longlow.sketcher.edit.PointWords;
import org.longlow.sketcher.edit.TypedLength;

/** What is said while the points of a part are taken. */
final class OutlineWords {

  private OutlineWords() {}

  /**
   * Returns what is told beside the point picked.
   *
   * @param at where it is, or is dragged to
   * @param snapped what it snapped to, in words; empty if nothing
   */
  static List<String> beside(
      PartPoints points, PointMm at, String snapped, TypedLength typed, Units units) {
    List<String> words =
        new ArrayList<>(
            PointWords.of(points.handles(), points.picked(), points.isClosed(), at, units));
    if (!points.picked().pin().isEmpty()) {
      words.add("on pin " + points.picked().pin());
    }
    if (!points.reaches().isEmpty()) {
      words.add(points.reaches());
    }
    if (!snapped.isEmpty()) {
      words.add(snapped);
    }
    if (points.takesHole()) {
      words.add("the whole hole moves");
    }
    if (!typed.isEmpty()) {
      words.add("typed: " + typed.text() + " " + units.word());
    }
    if (!points.asks().isEmpty()) {
      words.add(points.asks());
      words.add("R writes figures instead");
    }
    return words;
  }

  /** Returns which points are taken, and what can be done with them. */
  static String says(PartPoints points) {
    String part = points.part();
    Outline outline = points.outline().orElse(null);
    if (outline == null) {
      return "Bends of " + part + ": drag them, arrows move the one picked; N next bend.";
    }
    if (outline instanceof Outline.Traced traced) {
      return "The outline of "
          + part
          + " comes from "
          + traced.file()
          + ". R writes its points out.";
    }
    return "Points of "
        + part
        + ": drag them, Shift straight, Alt freely; arrows move the one picked, N next."
        + "\nType a length, then Enter for the edge before, O to offset all, B for its reach"
        + " (Shift left, Alt right).";
  }
}
