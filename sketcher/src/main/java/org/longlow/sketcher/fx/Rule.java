package org.longlow.sketcher.fx;

import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import org.longlow.rider.words.Units;
import org.longlow.svg.drawing.Tone;

/** The rules along the lower and left edge of the card, in mm or inches. */
final class Rule {

  /** How wide a rule is, px. */
  static final double WIDTH_PX = 24;

  private static final double CLOSEST_FIGURES_PX = 62;

  private Rule() {}

  /** Paints both rules. Zero is under the rear wheel, on the road. */
  static void paint(
      GraphicsContext gc,
      DrawingPainter painter,
      ViewFrame frame,
      boolean inches,
      double width,
      double height) {
    double unit = inches ? Units.INCH_MM : 1;
    double step = step(CLOSEST_FIGURES_PX / (frame.pxPerMm() * unit), inches);
    gc.save();
    gc.setFill(painter.colour(Tone.PAPER));
    gc.fillRect(0, height - WIDTH_PX, width, WIDTH_PX);
    gc.fillRect(0, 0, WIDTH_PX, height);
    gc.setStroke(painter.colour(Tone.PENCIL));
    gc.setFill(painter.colour(Tone.PENCIL));
    gc.setLineWidth(1);
    gc.setLineDashes((double[]) null);
    gc.strokeLine(WIDTH_PX, height - WIDTH_PX + 0.5, width, height - WIDTH_PX + 0.5);
    gc.strokeLine(WIDTH_PX - 0.5, 0, WIDTH_PX - 0.5, height - WIDTH_PX);
    gc.setFont(painter.font(7));
    gc.setTextAlign(TextAlignment.CENTER);
    gc.setTextBaseline(VPos.BASELINE);
    int parts = step == 1 && inches ? 8 : 10;
    double tick = step / parts;
    long first = (long) Math.ceil(frame.point(WIDTH_PX, 0).x() / (tick * unit));
    long last = (long) Math.floor(frame.point(width, 0).x() / (tick * unit));
    for (long i = first; i <= last; i++) {
      double x = Math.round(frame.screenX(i * tick * unit)) + 0.5;
      boolean figure = i % parts == 0;
      double top = height - WIDTH_PX;
      gc.strokeLine(x, top, x, top + length(i, parts));
      if (figure && x > WIDTH_PX + 14 && x < width - 20) {
        gc.fillText(figure(i * tick), x, height - 3);
      }
    }
    first = (long) Math.ceil(frame.point(0, height - WIDTH_PX).z() / (tick * unit));
    last = (long) Math.floor(frame.point(0, 0).z() / (tick * unit));
    for (long i = first; i <= last; i++) {
      double y = Math.round(frame.screenY(i * tick * unit)) + 0.5;
      gc.strokeLine(WIDTH_PX, y, WIDTH_PX - length(i, parts), y);
      if (i % parts == 0 && y > 20 && y < height - WIDTH_PX - 14) {
        gc.save();
        gc.translate(10, y);
        gc.rotate(-90);
        gc.fillText(figure(i * tick), 0, 0);
        gc.restore();
      }
    }
    gc.setFill(painter.colour(Tone.PAPER));
    gc.fillRect(0, height - WIDTH_PX, WIDTH_PX, WIDTH_PX);
    gc.setFill(painter.colour(Tone.PENCIL));
    gc.fillText(inches ? "in" : "mm", WIDTH_PX / 2, height - 8);
    gc.restore();
  }

  /** Returns what to say of the units on the drawing; empty if no figure is bare. */
  static String note(boolean dimensions, boolean inches) {
    return dimensions ? "all dimensions in " + (inches ? "inches" : "mm") : "";
  }

  /** Writes a note into the upper left corner, clear of the rules. */
  static void note(GraphicsContext gc, DrawingPainter painter, String note) {
    gc.save();
    gc.setFill(painter.colour(Tone.INK));
    gc.setFont(painter.font(8));
    gc.setTextAlign(TextAlignment.LEFT);
    gc.setTextBaseline(VPos.TOP);
    gc.fillText(note, WIDTH_PX + 8, 8);
    gc.restore();
  }

  private static double length(long i, int parts) {
    if (i % parts == 0) {
      return 10;
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
