package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * The sign that says how views lie about each other: a blunt cone from the side, its thin end at
 * the left, and as it looks from that end (ISO 5456-2; proportions from memory).
 */
final class ProjectionSymbol {

  private static final double THIN_MM = 3.5;
  private static final double THICK_MM = 7;
  private static final double LONG_MM = 7;
  private static final double APART_MM = 4;

  /** How far centre lines run past the edges, mm. */
  private static final double PAST_MM = 1.5;

  private static final String SUBJECT = "projection";

  private final double n;
  private final List<Mark> marks = new ArrayList<>();

  private ProjectionSymbol(double n) {
    this.n = n;
  }

  /**
   * Returns it for first angle: seen from its left, drawn at its right; from a lower left corner.
   */
  static Layer firstAngle(double left, double bottom, double n) {
    ProjectionSymbol symbol = new ProjectionSymbol(n);
    double x = left + PAST_MM * n;
    double y = bottom + (PAST_MM + THICK_MM / 2) * n;
    symbol.cone(x, y);
    symbol.rings(x + (LONG_MM + APART_MM + THICK_MM / 2) * n, y);
    return symbol.layer();
  }

  /**
   * Returns it for third angle: seen from its left, drawn at its left; from an upper right corner.
   */
  static Layer thirdAngle(double right, double top, double n) {
    ProjectionSymbol symbol = new ProjectionSymbol(n);
    double x = right - (PAST_MM + LONG_MM) * n;
    double y = top - (PAST_MM + THICK_MM / 2) * n;
    symbol.cone(x, y);
    symbol.rings(x - (APART_MM + THICK_MM / 2) * n, y);
    return symbol.layer();
  }

  private void cone(double x, double y) {
    double thin = THIN_MM / 2 * n;
    double thick = THICK_MM / 2 * n;
    double end = x + LONG_MM * n;
    marks.add(
        new Mark.Shape(
            SUBJECT,
            Planar.polygon(x, y - thin, end, y - thick, end, y + thick, x, y + thin),
            Canvas.edge(Tone.INK)));
    centre(x - PAST_MM * n, y, end + PAST_MM * n, y);
  }

  private void rings(double x, double y) {
    for (double across : new double[] {THIN_MM, THICK_MM}) {
      marks.add(
          new Mark.Shape(SUBJECT, Planar.disc(x, y, across / 2 * n, 48), Canvas.edge(Tone.INK)));
    }
    double past = (THICK_MM / 2 + PAST_MM) * n;
    centre(x - past, y, x + past, y);
    centre(x, y - past, x, y + past);
  }

  private void centre(double x1, double y1, double x2, double y2) {
    Style chain = Canvas.hair(Tone.INK).withLine(LineType.CHAIN);
    marks.add(new Mark.Shape(SUBJECT, Planar.line(x1, y1, x2, y2), chain));
  }

  private Layer layer() {
    return new Layer(SUBJECT, "Projection", marks);
  }
}
