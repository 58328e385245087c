package org.longlow.sketcher.fx;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import javafx.geometry.Bounds;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.longlow.svg.drawing.Colour;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Paints the {@link Drawing} that paper uses on a canvas. Geometry follows the frame; strokes,
 * dashes and letters keep their paper size, so lines are as crisp far out as near by.
 */
final class DrawingPainter {

  /** The typeface of the sheets; it comes with the library that writes them. */
  private static final String LETTERS =
      "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private static final double NARROWEST_PX = 0.7;

  /** Figures that change while a pin is dragged are forgotten again. */
  private static final int MOST_EXTENTS = 1000;

  private record Lettered(String text, Font font) {}

  private final Map<Tone, Color> colours = new HashMap<>();
  private final Map<Integer, Font> fonts = new HashMap<>();
  private final Map<Lettered, Bounds> extents = new HashMap<>();
  private final String family;
  private final Palette palette;
  private final double letters;

  DrawingPainter(Palette palette) {
    this(palette, 1);
  }

  /**
   * @param letters how much larger than on paper strokes and letters are
   */
  DrawingPainter(Palette palette, double letters) {
    this.palette = palette;
    this.letters = letters;
    this.family = Letters.FAMILY;
  }

  /** Loads the letters once. */
  static final class Letters {
    static final String FAMILY = load();

    private Letters() {}

    private static String load() {
      try (InputStream in = DrawingPainter.class.getResourceAsStream(LETTERS)) {
        Font font = in == null ? null : Font.loadFont(in, 12);
        return font == null ? Font.getDefault().getFamily() : font.getFamily();
      } catch (IOException | LinkageError e) {
        // a bare machine may lack the text libraries that loading a font of one's own needs
        return Font.getDefault().getFamily();
      }
    }
  }

  Color colour(Tone tone) {
    return colours.computeIfAbsent(tone, t -> colour(palette.of(t)));
  }

  static Color colour(Colour c) {
    return Color.rgb(c.red(), c.green(), c.blue());
  }

  /** Returns letters whose capitals are so high where letters have their usual size. */
  Font font(double capitalPx) {
    return exactly(capitalPx * letters);
  }

  /** Returns letters as {@link #font}, but with capitals no higher than there is room for. */
  Font font(double capitalPx, double mostPx) {
    return exactly(Math.min(capitalPx * letters, mostPx));
  }

  /** Returns how much larger than usual the letters are. */
  double letters() {
    return letters;
  }

  private double pxPerPaperMm() {
    return ViewFrame.PX_PER_PAPER_MM * letters;
  }

  private Font exactly(double capitalPx) {
    // quarter pixels are as fine as hinting can show
    int key = (int) Math.round(Lettering.fontSize(capitalPx) * 4);
    return fonts.computeIfAbsent(key, k -> Font.font(family, k / 4.0));
  }

  /**
   * Paints the whole drawing; what lies outside of width and height is skipped.
   *
   * @param fills how opaque areas are, as a share of what they are on paper
   */
  void paint(
      GraphicsContext gc,
      Drawing drawing,
      ViewFrame frame,
      double width,
      double height,
      double fills) {
    Envelope seen =
        new Envelope(
            frame.point(-8, -8).x(),
            frame.point(width + 8, 0).x(),
            frame.point(0, height + 8).z(),
            frame.point(0, -8).z());
    gc.save();
    for (Layer layer : drawing.layers()) {
      for (Mark mark : layer.marks()) {
        boolean away =
            mark instanceof Mark.Shape shape
                && !shape.geometry().getEnvelopeInternal().intersects(seen);
        if (!away) {
          mark(gc, mark, frame, fills);
        }
      }
    }
    gc.restore();
  }

  /** Paints one mark. */
  void mark(GraphicsContext gc, Mark mark, ViewFrame frame, double fills) {
    if (mark instanceof Mark.Shape shape) {
      gc.setFillRule(FillRule.EVEN_ODD);
      gc.setLineCap(StrokeLineCap.ROUND);
      gc.setLineJoin(StrokeLineJoin.ROUND);
      shape(gc, shape.geometry(), shape.style(), frame, fills);
    } else if (mark instanceof Mark.Words words) {
      words(gc, words, frame);
    }
  }

  /** Returns how wide a stroke is, px; 0 without one. */
  double strokePx(Style style) {
    return style.stroke() == null
        ? 0
        : Math.max(NARROWEST_PX, style.strokeMm() * ViewFrame.PX_PER_PAPER_MM);
  }

  private void shape(
      GraphicsContext gc, Geometry geometry, Style style, ViewFrame frame, double fills) {
    path(gc, geometry, frame);
    if (style.fill() != null && geometry.getDimension() == 2) {
      gc.setFill(faded(colour(style.fill()), fills * style.fillOpacity()));
      gc.fill();
    }
    if (style.stroke() != null) {
      gc.setStroke(colour(style.stroke()));
      gc.setLineWidth(strokePx(style));
      double[] dashes = style.line().dashes(style.strokeMm() * ViewFrame.PX_PER_PAPER_MM);
      gc.setLineDashes(dashes.length == 0 ? null : dashes);
      gc.stroke();
    }
  }

  private static Color faded(Color c, double opacity) {
    return opacity >= 1 ? c : new Color(c.getRed(), c.getGreen(), c.getBlue(), opacity);
  }

  private static void path(GraphicsContext gc, Geometry geometry, ViewFrame frame) {
    gc.beginPath();
    add(gc, geometry, frame);
  }

  private static void add(GraphicsContext gc, Geometry geometry, ViewFrame frame) {
    if (geometry instanceof Polygon polygon) {
      if (!polygon.isEmpty()) {
        line(gc, polygon.getExteriorRing(), frame, true);
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
          line(gc, polygon.getInteriorRingN(i), frame, true);
        }
      }
    } else if (geometry instanceof LineString string) {
      line(gc, string, frame, false);
    } else {
      for (int i = 0; i < geometry.getNumGeometries(); i++) {
        Geometry inner = geometry.getGeometryN(i);
        if (inner != geometry) {
          add(gc, inner, frame);
        }
      }
    }
  }

  private static void line(GraphicsContext gc, LineString line, ViewFrame frame, boolean closed) {
    CoordinateSequence points = line.getCoordinateSequence();
    int n = points.size();
    double lastX = Double.NaN;
    double lastY = Double.NaN;
    for (int i = 0; i < n; i++) {
      double x = frame.screenX(points.getX(i));
      double y = frame.screenY(points.getY(i));
      if (i == 0) {
        gc.moveTo(x, y);
      } else if (i < n - 1 && Math.abs(x - lastX) + Math.abs(y - lastY) < 0.6) {
        // a step too small to see costs as much as a large one
        continue;
      } else {
        gc.lineTo(x, y);
      }
      lastX = x;
      lastY = y;
    }
    if (closed) {
      gc.closePath();
    }
  }

  /** Returns the box round words as they are painted, px. */
  Spots.Box box(Mark.Words words, ViewFrame frame) {
    double capital = words.heightMm() * pxPerPaperMm();
    Bounds letters = extents(Lettering.printable(words.text()), exactly(capital));
    double left = -words.anchor().along() * letters.getWidth();
    double top = words.anchor().up() * capital + letters.getMinY();
    Envelope box = new Envelope();
    double a = -Math.toRadians(words.rotationDeg());
    for (double x : new double[] {left, left + letters.getWidth()}) {
      for (double y : new double[] {top, top + letters.getHeight()}) {
        box.expandToInclude(x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a));
      }
    }
    return new Spots.Box(
        frame.screenX(words.x()) + box.getMinX(),
        frame.screenY(words.y()) + box.getMinY(),
        box.getWidth(),
        box.getHeight());
  }

  /** Returns how far letters reach from the left end of their base line, px. */
  Bounds extents(String text, Font font) {
    if (extents.size() > MOST_EXTENTS) {
      extents.clear();
    }
    return extents.computeIfAbsent(
        new Lettered(text, font),
        key -> {
          Text measured = new Text(text);
          measured.setFont(font);
          return measured.getLayoutBounds();
        });
  }

  private void words(GraphicsContext gc, Mark.Words words, ViewFrame frame) {
    double capital = words.heightMm() * pxPerPaperMm();
    gc.save();
    gc.translate(frame.screenX(words.x()), frame.screenY(words.y()));
    if (words.rotationDeg() != 0) {
      gc.rotate(-words.rotationDeg());
    }
    gc.setFont(exactly(capital));
    gc.setTextBaseline(VPos.BASELINE);
    double along = words.anchor().along();
    gc.setTextAlign(
        along == 0 ? TextAlignment.LEFT : along == 1 ? TextAlignment.RIGHT : TextAlignment.CENTER);
    gc.setFill(colour(words.tone()));
    gc.fillText(Lettering.printable(words.text()), 0, words.anchor().up() * capital);
    gc.restore();
  }
}
