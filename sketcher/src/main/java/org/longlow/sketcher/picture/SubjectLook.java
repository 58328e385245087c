package org.longlow.sketcher.picture;

import java.util.HashMap;
import java.util.Map;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * How something looks in the elevation, so that it looks so in other views.
 *
 * @param layer its layer
 * @param style tone and edge of the largest area of it that has a tone of its own
 */
record SubjectLook(PictureLayer layer, Style style) {

  /** Returns the look of each subject of an elevation. */
  static Map<String, SubjectLook> of(Drawing elevation) {
    Map<String, SubjectLook> looks = new HashMap<>();
    Map<String, Double> largest = new HashMap<>();
    for (PictureLayer layer : PictureLayer.values()) {
      for (Layer drawn : elevation.layers()) {
        if (!drawn.id().equals(layer.id()) || layer.compareTo(PictureLayer.HIDDEN) >= 0) {
          continue;
        }
        for (Mark mark : drawn.marks()) {
          if (mark instanceof Mark.Shape shape && tinted(shape.style())) {
            double area = shape.geometry().getArea();
            if (area > largest.getOrDefault(shape.subject(), 0.0)) {
              largest.put(shape.subject(), area);
              looks.put(shape.subject(), new SubjectLook(layer, shape.style()));
            }
          }
        }
      }
    }
    return looks;
  }

  private static boolean tinted(Style style) {
    return style.fill() != null && style.fill() != Tone.PAPER;
  }
}
