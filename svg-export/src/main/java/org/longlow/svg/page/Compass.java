package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Two arrows that tell which way a template lies, however it is turned; their words upright. */
public final class Compass {

  private static final double LENGTH_MM = 9;
  private static final double TIP_MM = 2.5;
  private static final double WORDS_MM = 2.3;
  private static final double AIR_MM = 1.4;

  /** Words may come out a fifth wider in a font other than the intended one. */
  private static final double FONT_RESERVE = 1.2;

  /** Longer words are shortened, mm. */
  private static final double WIDEST_MM = 14;

  private Compass() {}

  /**
   * Returns the arrows with their words.
   *
   * @param turnRad how far the template is turned, counter-clockwise
   * @param x middle of the arrows, mm
   * @param y middle of the arrows, mm
   */
  public static List<Mark> marks(String up, String right, double turnRad, double x, double y) {
    double c = Math.cos(turnRad);
    double s = Math.sin(turnRad);
    double reach = LENGTH_MM + TIP_MM;
    double x0 = x - reach / 2 * (c - s);
    double y0 = y - reach / 2 * (s + c);
    List<Mark> out = new ArrayList<>();
    // words stand on the outer sides, where neither meets the other arrow
    arrow(right, c, s, s, -c, x0, y0, out);
    arrow(up, -s, c, -c, -s, x0, y0, out);
    return out;
  }

  /** Returns how far a template is turned, in words that go on; empty if it is not. */
  static String turned(TemplatePlan plan) {
    double deg = Math.toDegrees(plan.turnRad());
    return deg == 0
        ? ""
        : String.format(
            Locale.ROOT, ", turned %.1f° %s", Math.abs(deg), deg > 0 ? "left" : "right");
  }

  /** An arrow and its word, which stands beside it on the side that is told by (outX, outY). */
  private static void arrow(
      String word,
      double c,
      double s,
      double outX,
      double outY,
      double x0,
      double y0,
      List<Mark> out) {
    double x = x0 + LENGTH_MM * c;
    double y = y0 + LENGTH_MM * s;
    out.add(new Mark.Shape("", Planar.line(x0, y0, x, y), Style.line(Tone.INK, 0.35)));
    out.add(
        new Mark.Shape(
            "",
            Planar.polygon(
                x + TIP_MM * c,
                y + TIP_MM * s,
                x - 0.5 * c - s,
                y - 0.5 * s + c,
                x - 0.5 * c + s,
                y - 0.5 * s - c),
            Style.area(Tone.INK, 1)));
    String fitted = Lettering.fitted(word, WORDS_MM, WIDEST_MM);
    double half = Lettering.widthMm(fitted, WORDS_MM) * FONT_RESERVE / 2;
    double away = AIR_MM + Math.abs(outX) * half + Math.abs(outY) * WORDS_MM / 2;
    out.add(
        Mark.Words.level(
            fitted,
            x0 + LENGTH_MM / 2 * c + away * outX,
            y0 + LENGTH_MM / 2 * s + away * outY,
            WORDS_MM,
            Anchor.CENTRE,
            Tone.INK));
  }
}
