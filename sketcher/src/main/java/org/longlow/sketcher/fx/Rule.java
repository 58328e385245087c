package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Locale;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.longlow.rider.words.Units;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;

/** The rules along the lower and left edge of the card, in mm or inches. */
final class Rule {

  /** How wide a rule is where letters have their usual size or a smaller one, px. */
  private static final double WIDTH_PX = 24;

  private static final double CLOSEST_FIGURES_PX = 62;
  private static final double CAPITAL_PX = 7;
  private static final double LONGEST_TICK_PX = 10;

  /** From the edges of what is seen to a note, px. */
  static final double NOTE_OFF_PX = 6;

  /** The card itself, a pixel for a millimetre. */
  private static final ViewFrame PIXELS = new ViewFrame(1, 0, 0);

  private Rule() {}

  /**
   * Returns how wide a rule is, px.
   *
   * @param letters how much larger than usual letters are
   */
  static double widthPx(double letters) {
    return WIDTH_PX * Math.max(1, letters);
  }

  /** Returns what keeps a slip in the lower left corner clear of both rules. */
  static Insets clear(double letters) {
    double off = widthPx(letters) + 10;
    return new Insets(0, 40, off, off);
  }

  /** Paints both rules. Zero is under the rear wheel, on the road. */
  static void paint(
      Pen gc,
      DrawingPainter painter,
      ViewFrame frame,
      boolean inches,
      double width,
      double height) {
    double unit = inches ? Units.INCH_MM : 1;
    double larger = Math.max(1, painter.letters());
    double rule = widthPx(painter.letters());
    double step = step(CLOSEST_FIGURES_PX * painter.letters() / (frame.pxPerMm() * unit), inches);
    gc.setFill(painter.colour(Tone.PAPER));
    gc.fillRect(0, height - rule, width, rule);
    gc.fillRect(0, 0, rule, height);
    gc.setStroke(painter.colour(Tone.PENCIL));
    gc.setFill(painter.colour(Tone.PENCIL));
    gc.setLineWidth(1);
    gc.setLineDashes();
    gc.strokeLine(rule, height - rule + 0.5, width, height - rule + 0.5);
    gc.strokeLine(rule - 0.5, 0, rule - 0.5, height - rule);
    gc.setLetters(painter.font(CAPITAL_PX), TextAlignment.CENTER, VPos.BASELINE);
    int parts = step == 1 && inches ? 8 : 10;
    double tick = step / parts;
    long first = (long) Math.ceil(frame.point(rule, 0).x() / (tick * unit));
    long last = (long) Math.floor(frame.point(width, 0).x() / (tick * unit));
    for (long i = first; i <= last; i++) {
      double x = Math.round(frame.screenX(i * tick * unit)) + 0.5;
      boolean figure = i % parts == 0;
      double top = height - rule;
      gc.strokeLine(x, top, x, top + larger * length(i, parts));
      if (figure && x > rule + 14 * larger && x < width - 20 * larger) {
        gc.fillText(figure(i * tick), x, height - 3 * larger);
      }
    }
    first = (long) Math.ceil(frame.point(0, height - rule).z() / (tick * unit));
    last = (long) Math.floor(frame.point(0, 0).z() / (tick * unit));
    for (long i = first; i <= last; i++) {
      double y = Math.round(frame.screenY(i * tick * unit)) + 0.5;
      gc.strokeLine(rule, y, rule - larger * length(i, parts), y);
      if (i % parts == 0 && y > 20 * larger && y < height - rule - 14 * larger) {
        gc.add(upright(painter, figure(i * tick), 10 * larger, y));
      }
    }
    gc.setFill(painter.colour(Tone.PAPER));
    gc.fillRect(0, height - rule, rule, rule);
    gc.setFill(painter.colour(Tone.PENCIL));
    gc.fillText(inches ? "in" : "mm", rule / 2, height - 8 * larger);
  }

  /** Returns a figure that reads upwards, its middle at a place, px. */
  private static Ink upright(DrawingPainter painter, String figure, double x, double y) {
    double capitalMm = CAPITAL_PX / ViewFrame.PX_PER_PAPER_MM;
    Mark words = new Mark.Words("", figure, x, -y, capitalMm, 90, Anchor.MIDDLE, Tone.PENCIL);
    return MarkInk.of(painter, words, PIXELS, 1, 1);
  }

  /** Returns what to say of the units on the drawing; empty if no figure is bare. */
  static String note(boolean dimensions, boolean inches) {
    return dimensions ? "all dimensions in " + (inches ? "inches" : "mm") : "";
  }

  /**
   * Writes a note into the lower right corner of what is seen, or as near to it as nothing else is.
   *
   * @param taken where slips, words and dimensions lie, px
   */
  static void note(
      Pen gc, DrawingPainter painter, String note, Spots.Box seen, List<Spots.Box> taken) {
    Font font = painter.font(CAPITAL_PX);
    double wide = painter.extents(note, font).getWidth();
    double high = 2 * CAPITAL_PX * painter.letters();
    Spots.Box corner =
        new Spots.Box(
            seen.right() - NOTE_OFF_PX - wide, seen.bottom() - NOTE_OFF_PX - high, wide, high);
    Spots.Box at = free(corner, seen, taken);
    gc.setFill(painter.colour(Tone.INK));
    gc.setLetters(font, TextAlignment.RIGHT, VPos.BASELINE);
    gc.fillText(note, at.right(), at.bottom());
  }

  private static Spots.Box free(Spots.Box corner, Spots.Box seen, List<Spots.Box> taken) {
    double step = corner.height();
    for (double y = corner.y(); y >= seen.y(); y -= step) {
      for (double x = corner.x(); x >= seen.x(); x -= step) {
        Spots.Box at = new Spots.Box(x, y, corner.width(), corner.height());
        if (taken.stream().allMatch(t -> t.shared(at) == 0)) {
          return at;
        }
      }
    }
    return corner;
  }

  private static double length(long i, int parts) {
    if (i % parts == 0) {
      return LONGEST_TICK_PX;
    }
    return i * 2 % parts == 0 ? 7 : 4;
  }

  /** Returns the smallest round step that is at least {@code least}. */
  static double step(double least, boolean inches) {
    double[] rounds = inches ? new double[] {1, 2, 4, 5, 10} : new double[] {1, 2, 5, 10};
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double r : rounds) {
      if (r * power >= least * (1 - 1e-9)) {
        return r * power;
      }
    }
    return 10 * power;
  }

  private static String figure(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
