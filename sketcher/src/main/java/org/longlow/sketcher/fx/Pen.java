package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/**
 * Draws what lies over the card: keeps what was drawn as inks, for {@link Tiles} to paint where
 * something changed. Draws what a canvas would, with the same words; lengths are px of the card.
 */
final class Pen {

  private enum Kind {
    LINE,
    OVAL,
    FILLED_OVAL,
    RECTANGLE,
    FILLED_RECTANGLE,
    POLYLINE,
    POLYGON,
    FILLED_POLYGON,
    WORDS
  }

  /** How it draws at the moment. */
  private record Manner(
      Color fill,
      Color stroke,
      double width,
      List<Double> dashes,
      Font font,
      TextAlignment along,
      VPos up) {}

  private static final Manner FIRST =
      new Manner(
          Color.BLACK,
          Color.BLACK,
          1,
          List.of(),
          Font.getDefault(),
          TextAlignment.LEFT,
          VPos.BASELINE);

  private final DrawingPainter painter;
  private final List<Ink> inks = new ArrayList<>();
  private Manner now = FIRST;

  Pen(DrawingPainter painter) {
    this.painter = painter;
  }

  /** Returns what was drawn since the last time, and begins with nothing. */
  List<Ink> taken() {
    List<Ink> all = List.copyOf(inks);
    inks.clear();
    now = FIRST;
    return all;
  }

  void add(Ink ink) {
    inks.add(ink);
  }

  void setFill(Color colour) {
    now = new Manner(colour, now.stroke, now.width, now.dashes, now.font, now.along, now.up);
  }

  void setStroke(Color colour) {
    now = new Manner(now.fill, colour, now.width, now.dashes, now.font, now.along, now.up);
  }

  void setLineWidth(double px) {
    now = new Manner(now.fill, now.stroke, px, now.dashes, now.font, now.along, now.up);
  }

  /** Takes lengths of dashes and gaps, px; none for an unbroken line. */
  void setLineDashes(double... px) {
    now = new Manner(now.fill, now.stroke, now.width, boxed(px), now.font, now.along, now.up);
  }

  /** Takes letters, and where they lie from the place they are written at. */
  void setLetters(Font font, TextAlignment along, VPos up) {
    now = new Manner(now.fill, now.stroke, now.width, now.dashes, font, along, up);
  }

  void strokeLine(double x1, double y1, double x2, double y2) {
    draw(Kind.LINE, new double[] {x1, x2}, new double[] {y1, y2});
  }

  void strokeOval(double x, double y, double wide, double high) {
    draw(Kind.OVAL, new double[] {x, x + wide}, new double[] {y, y + high});
  }

  void fillOval(double x, double y, double wide, double high) {
    draw(Kind.FILLED_OVAL, new double[] {x, x + wide}, new double[] {y, y + high});
  }

  void strokeRect(double x, double y, double wide, double high) {
    draw(Kind.RECTANGLE, new double[] {x, x + wide}, new double[] {y, y + high});
  }

  void fillRect(double x, double y, double wide, double high) {
    draw(Kind.FILLED_RECTANGLE, new double[] {x, x + wide}, new double[] {y, y + high});
  }

  void strokePolyline(double[] x, double[] y, int n) {
    draw(Kind.POLYLINE, Arrays.copyOf(x, n), Arrays.copyOf(y, n));
  }

  void strokePolygon(double[] x, double[] y, int n) {
    draw(Kind.POLYGON, Arrays.copyOf(x, n), Arrays.copyOf(y, n));
  }

  void fillPolygon(double[] x, double[] y, int n) {
    draw(Kind.FILLED_POLYGON, Arrays.copyOf(x, n), Arrays.copyOf(y, n));
  }

  void fillText(String words, double x, double y) {
    Bounds letters = painter.extents(words, now.font);
    double left =
        now.along == TextAlignment.LEFT
            ? 0
            : letters.getWidth() / (now.along == TextAlignment.RIGHT ? 1 : 2);
    // whatever of it lies on the place, it is no farther away than it is high
    double high = letters.getHeight();
    inks.add(
        new Drawn(
            Kind.WORDS,
            now,
            List.of(x),
            List.of(y),
            words,
            new Spots.Box(
                x - left - InkReach.SMOOTHED_PX,
                y - high,
                letters.getWidth() + 2 * InkReach.SMOOTHED_PX,
                2 * high)));
  }

  private void draw(Kind kind, double[] x, double[] y) {
    double left = x[0];
    double top = y[0];
    double right = x[0];
    double bottom = y[0];
    for (int i = 1; i < x.length; i++) {
      left = Math.min(left, x[i]);
      top = Math.min(top, y[i]);
      right = Math.max(right, x[i]);
      bottom = Math.max(bottom, y[i]);
    }
    inks.add(
        new Drawn(
            kind,
            now,
            boxed(x),
            boxed(y),
            "",
            InkReach.grown(new Spots.Box(left, top, right - left, bottom - top), besidePx(now))));
  }

  private static List<Double> boxed(double[] values) {
    Double[] all = new Double[values.length];
    for (int i = 0; i < all.length; i++) {
      all[i] = values[i];
    }
    return List.of(all);
  }

  /** How far a line reaches to a side, square at its ends. */
  private static double besidePx(Manner manner) {
    return manner.width + InkReach.SMOOTHED_PX;
  }

  private record Drawn(
      Kind kind, Manner manner, List<Double> x, List<Double> y, String words, Spots.Box box)
      implements Ink {

    @Override
    public Optional<Spots.Box> within(Spots.Box px) {
      Optional<Spots.Box> part = InkReach.shared(box, px);
      boolean straight = kind == Kind.LINE || kind == Kind.POLYLINE;
      return straight && part.isPresent()
          ? InkReach.ofLine(array(x), array(y), besidePx(manner), px)
          : part;
    }

    @Override
    public void paint(GraphicsContext gc) {
      gc.setGlobalAlpha(1);
      gc.setFill(manner.fill);
      gc.setStroke(manner.stroke);
      gc.setLineWidth(manner.width);
      gc.setLineCap(StrokeLineCap.SQUARE);
      // a mitre of a sharp corner would reach out of the box
      gc.setLineJoin(kind == Kind.RECTANGLE ? StrokeLineJoin.MITER : StrokeLineJoin.ROUND);
      gc.setLineDashes(manner.dashes.isEmpty() ? null : array(manner.dashes));
      double left = x.get(0);
      double top = y.get(0);
      double right = x.get(x.size() - 1);
      double bottom = y.get(y.size() - 1);
      double wide = right - left;
      double high = bottom - top;
      switch (kind) {
        case LINE -> gc.strokeLine(left, top, right, bottom);
        case OVAL -> gc.strokeOval(left, top, wide, high);
        case FILLED_OVAL -> gc.fillOval(left, top, wide, high);
        case RECTANGLE -> gc.strokeRect(left, top, wide, high);
        case FILLED_RECTANGLE -> gc.fillRect(left, top, wide, high);
        case POLYLINE -> gc.strokePolyline(array(x), array(y), x.size());
        case POLYGON -> gc.strokePolygon(array(x), array(y), x.size());
        case FILLED_POLYGON -> gc.fillPolygon(array(x), array(y), x.size());
        case WORDS -> {
          gc.setFont(manner.font);
          gc.setTextAlign(manner.along);
          gc.setTextBaseline(manner.up);
          gc.fillText(words, left, top);
        }
      }
    }

    private static double[] array(List<Double> values) {
      double[] all = new double[values.size()];
      for (int i = 0; i < all.length; i++) {
        all[i] = values.get(i);
      }
      return all;
    }
  }
}
