package org.longlow.svg.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Dimension lines after ISO 129-1 (from memory of the 2018 edition, its text not seen).
 *
 * <p>The drawing is in real millimetres and will be reduced to 1 : {@code denominator}; every size
 * marked "paper" below comes out at that size on the sheet. Figures are millimetres or degrees
 * without unit text, with a point as decimal mark.
 *
 * @param denominator N of the scale 1:N, greater than 0
 * @param textMm height of figures on paper, mm; ISO 129-1 asks 3.5 on A4 and A3
 * @param arrowMm length of arrowheads on paper, mm
 * @param tone tone of lines and figures
 */
public record Dimensions(double denominator, double textMm, double arrowMm, Tone tone) {

  /** Height of figures, mm, on A4 and A3. */
  public static final double TEXT_MM = 3.5;

  /** Length of a closed 15 degree arrowhead, mm. */
  public static final double ARROW_MM = 3.0;

  /**
   * How far an extension line runs past its dimension line, paper mm: 8 widths of the narrow line.
   */
  public static final double OVERSHOOT_MM = 8 * Style.NARROW_MM;

  /** Gap between the thing measured and its extension line, paper mm. */
  public static final double GAP_MM = 1.0;

  /** Gap between a line and the figure above it, paper mm. */
  private static final double ABOVE_MM = 1.0;

  private static final double HALF_ARROW_RAD = Math.toRadians(7.5);

  public Dimensions {
    if (!(denominator > 0) || !Double.isFinite(denominator)) {
      throw new IllegalArgumentException(
          "scale denominator is " + denominator + "; allowed: finite, greater than 0");
    }
    if (!(textMm > 0) || !(arrowMm > 0)) {
      throw new IllegalArgumentException(
          "text " + textMm + " mm and arrow " + arrowMm + " mm must be greater than 0");
    }
  }

  /** Returns dimensions for a drawing that will be shown at 1 : denominator, in the usual sizes. */
  public static Dimensions at(double denominator) {
    return new Dimensions(denominator, TEXT_MM, ARROW_MM, Tone.DIMENSION);
  }

  /** Returns a figure with at most one decimal and no useless zero. */
  public static String figure(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    String cut = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    return cut.equals("-0") ? "0" : cut;
  }

  /**
   * Dimensions the horizontal distance between two points.
   *
   * @param lineY height of the dimension line, drawing mm
   * @param text what to write, or null for the distance
   */
  public List<Mark> horizontal(
      String subject, double x1, double y1, double x2, double y2, double lineY, String text) {
    return linear(subject, x1, y1, x2, y2, 0, 0, lineY, text);
  }

  /**
   * Dimensions the vertical distance between two points.
   *
   * @param lineX place of the dimension line, drawing mm
   * @param text what to write, or null for the distance
   */
  public List<Mark> vertical(
      String subject, double x1, double y1, double x2, double y2, double lineX, String text) {
    return linear(subject, x1, y1, x2, y2, Math.PI / 2, lineX, 0, text);
  }

  /**
   * Dimensions the distance between two points along a direction.
   *
   * @param angleRad direction of the dimension line, rad
   * @param px a point of the dimension line, drawing mm
   * @param py a point of the dimension line, drawing mm
   * @param text what to write, or null for the distance
   */
  public List<Mark> linear(
      String subject,
      double x1,
      double y1,
      double x2,
      double y2,
      double angleRad,
      double px,
      double py,
      String text) {
    double c = Math.cos(angleRad);
    double s = Math.sin(angleRad);
    double a = (x1 - px) * c + (y1 - py) * s;
    double b = (x2 - px) * c + (y2 - py) * s;
    double ax = px + a * c;
    double ay = py + a * s;
    double bx = px + b * c;
    double by = py + b * s;
    List<Mark> marks = new ArrayList<>();
    extension(marks, subject, x1, y1, ax, ay);
    extension(marks, subject, x2, y2, bx, by);
    String words = text == null ? figure(Math.abs(b - a)) : text;
    between(marks, subject, ax, ay, bx, by, words);
    return List.copyOf(marks);
  }

  /**
   * Dimensions an angle.
   *
   * @param radiusMm radius of the dimension arc, drawing mm
   * @param fromRad direction of the first leg, rad
   * @param toRad direction of the second leg, rad; the arc runs from the first to the second
   * @param text what to write, or null for the angle in degrees
   */
  public List<Mark> angular(
      String subject,
      double cx,
      double cy,
      double radiusMm,
      double fromRad,
      double toRad,
      String text) {
    List<Mark> marks = new ArrayList<>();
    double reach = radiusMm + OVERSHOOT_MM * denominator;
    for (double a : new double[] {fromRad, toRad}) {
      stroke(marks, subject, cx, cy, cx + reach * Math.cos(a), cy + reach * Math.sin(a));
    }
    double way = Math.signum(toRad - fromRad);
    double head = arrowMm * denominator / radiusMm;
    boolean inside = Math.abs(toRad - fromRad) > 2.5 * head;
    double spare = inside ? 0 : 2 * head * way;
    marks.add(
        new Mark.Shape(
            subject,
            Planar.arc(cx, cy, radiusMm, fromRad - spare, toRad + spare),
            Style.narrow(tone)));
    // An arrowhead is straight: it points along the chord, half its own angle off the tangent.
    double turn = inside ? Math.PI / 2 - head / 2 : -Math.PI / 2 + head / 2;
    arrow(
        marks,
        subject,
        cx + radiusMm * Math.cos(fromRad),
        cy + radiusMm * Math.sin(fromRad),
        fromRad - turn * way);
    arrow(
        marks,
        subject,
        cx + radiusMm * Math.cos(toRad),
        cy + radiusMm * Math.sin(toRad),
        toRad + turn * way);
    String words = text == null ? figure(Math.toDegrees(Math.abs(toRad - fromRad))) + "°" : text;
    double mid = (fromRad + toRad) / 2;
    double w = Lettering.widthMm(words, textMm);
    // Far enough out that the box of the words clears the arc whatever the direction.
    double clear =
        radiusMm
            + (ABOVE_MM + Math.abs(Math.cos(mid)) * w / 2 + Math.abs(Math.sin(mid)) * textMm / 2)
                * denominator;
    marks.add(
        new Mark.Words(
            subject,
            words,
            cx + clear * Math.cos(mid),
            cy + clear * Math.sin(mid),
            textMm,
            0,
            Anchor.CENTRE,
            tone));
    return List.copyOf(marks);
  }

  /** A dimension line with two arrowheads and words, turned outside when the room is too small. */
  private void between(
      List<Mark> marks, String subject, double ax, double ay, double bx, double by, String words) {
    double length = Math.hypot(bx - ax, by - ay);
    double angle = length == 0 ? 0 : Math.atan2(by - ay, bx - ax);
    double head = arrowMm * denominator;
    double wide = (Lettering.widthMm(words, textMm) + 1) * denominator;
    boolean arrowsInside = length > 2.5 * head;
    boolean wordsInside = length > (arrowsInside ? wide + 2 * head : wide);
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double before = arrowsInside ? 0 : 2 * head;
    double after = wordsInside ? before : 2 * head + wide;
    stroke(marks, subject, ax - before * c, ay - before * s, bx + after * c, by + after * s);
    arrow(marks, subject, ax, ay, arrowsInside ? angle + Math.PI : angle);
    arrow(marks, subject, bx, by, arrowsInside ? angle : angle + Math.PI);
    double mid = wordsInside ? length / 2 : length + 1.5 * head + wide / 2;
    above(marks, subject, ax + mid * c, ay + mid * s, angle, words);
  }

  /** Words above the line through (x, y), readable from the bottom or from the right. */
  private void above(
      List<Mark> marks, String subject, double x, double y, double angleRad, String words) {
    double deg = readable(Math.toDegrees(angleRad));
    double up = Math.toRadians(deg) + Math.PI / 2;
    double off = ABOVE_MM * denominator;
    marks.add(
        new Mark.Words(
            subject,
            words,
            x + off * Math.cos(up),
            y + off * Math.sin(up),
            textMm,
            deg,
            Anchor.MIDDLE,
            tone));
  }

  /** Returns the same line direction in (-90, 90] deg. */
  static double readable(double deg) {
    double d = deg % 180;
    // A hair of slack so that rounding cannot turn upright words upside down.
    if (d > 90 + 1e-6) {
      d -= 180;
    } else if (d <= -90 + 1e-6) {
      d += 180;
    }
    return d;
  }

  private void extension(
      List<Mark> marks, String subject, double x, double y, double toX, double toY) {
    double length = Math.hypot(toX - x, toY - y);
    double gap = GAP_MM * denominator;
    if (length <= gap) {
      return;
    }
    double c = (toX - x) / length;
    double s = (toY - y) / length;
    double far = length + OVERSHOOT_MM * denominator;
    stroke(marks, subject, x + gap * c, y + gap * s, x + far * c, y + far * s);
  }

  private void stroke(
      List<Mark> marks, String subject, double x1, double y1, double x2, double y2) {
    marks.add(new Mark.Shape(subject, Planar.line(x1, y1, x2, y2), Style.narrow(tone)));
  }

  /** A filled arrowhead with its tip at (x, y), pointing along the given direction. */
  private void arrow(List<Mark> marks, String subject, double x, double y, double towardsRad) {
    double side = arrowMm * denominator / Math.cos(HALF_ARROW_RAD);
    double a = towardsRad + Math.PI - HALF_ARROW_RAD;
    double b = towardsRad + Math.PI + HALF_ARROW_RAD;
    marks.add(
        new Mark.Shape(
            subject,
            Planar.polygon(
                x,
                y,
                x + side * Math.cos(a),
                y + side * Math.sin(a),
                x + side * Math.cos(b),
                y + side * Math.sin(b)),
            Style.area(tone, 1)));
  }
}
