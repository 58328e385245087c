package org.longlow.svg.write;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Colour;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;

/**
 * Paints one page into a content stream. PDF and page millimetres both have y up, so only the unit
 * changes.
 */
final class PdfPainter {

  /** Points in a millimetre. */
  static final double POINTS_PER_MM = 72 / 25.4;

  private static final int ROUND_JOIN = 1;

  private final PDPageContentStream content;
  private final PdfFont font;
  private final Palette palette;
  private final PdfLayers layers;
  private final Map<Double, PDExtendedGraphicsState> opacities = new HashMap<>();

  PdfPainter(PDPageContentStream content, PdfFont font, Palette palette, PdfLayers layers) {
    this.content = content;
    this.font = font;
    this.palette = palette;
    this.layers = layers;
  }

  void paint(Page page) throws IOException {
    content.setLineJoinStyle(ROUND_JOIN);
    if (!palette.isWhitePaper()) {
      content.setNonStrokingColor(colour(Tone.PAPER));
      content.addRect(0, 0, points(page.paper().widthMm()), points(page.paper().heightMm()));
      content.fill();
    }
    for (Layer layer : page.layers()) {
      content.beginMarkedContent(COSName.OC, layers.of(layer));
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape shape) {
          paint(shape);
        } else if (mark instanceof Mark.Words words) {
          paint(words);
        }
      }
      content.endMarkedContent();
    }
  }

  private void paint(Mark.Shape shape) throws IOException {
    List<LineString> lines = Lines.of(shape.geometry());
    if (lines.isEmpty()) {
      return;
    }
    Style style = shape.style();
    boolean clear = style.fill() != null && style.fillOpacity() < 1;
    if (clear) {
      content.saveGraphicsState();
      content.setGraphicsStateParameters(
          opacities.computeIfAbsent(style.fillOpacity(), PdfPainter::opacity));
    }
    if (style.fill() != null) {
      content.setNonStrokingColor(colour(style.fill()));
    }
    if (style.stroke() != null) {
      content.setStrokingColor(colour(style.stroke()));
      content.setLineWidth(points(style.strokeMm()));
      double[] dashes = style.line().dashes(style.strokeMm());
      float[] pattern = new float[dashes.length];
      for (int i = 0; i < pattern.length; i++) {
        pattern[i] = points(dashes[i]);
      }
      content.setLineDashPattern(pattern, 0);
    }
    for (LineString line : lines) {
      line(line);
    }
    if (style.fill() != null && style.stroke() != null) {
      content.fillAndStrokeEvenOdd();
    } else if (style.fill() != null) {
      content.fillEvenOdd();
    } else {
      content.stroke();
    }
    if (clear) {
      content.restoreGraphicsState();
    }
  }

  private void line(LineString line) throws IOException {
    CoordinateSequence c = line.getCoordinateSequence();
    boolean closed = Lines.isClosed(line);
    int n = closed ? c.size() - 1 : c.size();
    for (int i = 0; i < n; i++) {
      float x = points(c.getX(i));
      float y = points(c.getY(i));
      if (i == 0) {
        content.moveTo(x, y);
      } else {
        content.lineTo(x, y);
      }
    }
    if (closed) {
      content.closePath();
    }
  }

  private void paint(Mark.Words words) throws IOException {
    String text = font.writable(words.text());
    if (text.isBlank()) {
      return;
    }
    double size = Lettering.fontSize(words.heightMm());
    double back = -words.anchor().along() * font.width(text, size);
    double drop = -words.anchor().up() * words.heightMm();
    double a = Math.toRadians(words.rotationDeg());
    double x = words.x() + back * Math.cos(a) - drop * Math.sin(a);
    double y = words.y() + back * Math.sin(a) + drop * Math.cos(a);
    content.beginText();
    content.setFont(font.font(), points(size));
    content.setNonStrokingColor(colour(words.tone()));
    content.setTextMatrix(Matrix.getRotateInstance(a, points(x), points(y)));
    content.showText(text);
    content.endText();
  }

  private static PDExtendedGraphicsState opacity(double share) {
    PDExtendedGraphicsState state = new PDExtendedGraphicsState();
    state.setNonStrokingAlphaConstant((float) share);
    return state;
  }

  private PDColor colour(Tone tone) {
    Colour c = palette.of(tone);
    return new PDColor(
        new float[] {c.red() / 255f, c.green() / 255f, c.blue() / 255f}, PDDeviceRGB.INSTANCE);
  }

  private static float points(double mm) {
    return (float) (mm * POINTS_PER_MM);
  }
}
