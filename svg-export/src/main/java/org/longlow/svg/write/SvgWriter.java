package org.longlow.svg.write;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Writes pages as SVG 1.1.
 *
 * <p>{@code width} and {@code height} are in mm and the {@code viewBox} has the same figures, so
 * one user unit is 1 mm. Every layer is a group with the layer's id and a {@code title}; marks with
 * a subject carry it in {@code data-subject}. Words stay words in a sans-serif font. The background
 * is painted only when the palette's paper is not white.
 */
public final class SvgWriter {

  private static final String SVG = SVGDOMImplementation.SVG_NAMESPACE_URI;

  /** Fonts of one common metric first, then whatever sans-serif the reader has. */
  private static final String FONTS = "Liberation Sans, Arial, Helvetica, sans-serif";

  private SvgWriter() {}

  /** Writes one page as a complete SVG document in UTF-8; the stream is flushed, not closed. */
  public static void write(Page page, Palette palette, OutputStream out) throws IOException {
    Document document = document(page, palette, "");
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    writer.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    writer.write(XmlText.of(document.getDocumentElement()));
    writer.write("\n");
    writer.flush();
  }

  /**
   * Returns pages as {@code svg} elements to be set into an HTML page, one after the other. Ids
   * start with {@code page1-}, {@code page2-} ... so that they stay unique.
   */
  public static String inline(Palette palette, Page... pages) {
    return inlineWithPrefix("page", palette, pages);
  }

  /**
   * As {@link #inline}, with ids starting with the given prefix, for several calls in one HTML
   * page.
   */
  public static String inlineWithPrefix(String prefix, Palette palette, Page... pages) {
    if (!prefix.matches("[A-Za-z][A-Za-z0-9_-]*")) {
      throw new IllegalArgumentException(
          "id prefix '" + prefix + "' must start with a letter and hold only letters, digits, _ -");
    }
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < pages.length; i++) {
      Document document = document(pages[i], palette, prefix + (i + 1) + "-");
      out.append(XmlText.of(document.getDocumentElement())).append('\n');
    }
    return out.toString();
  }

  private static Document document(Page page, Palette palette, String idPrefix) {
    Document doc = SVGDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
    Element root = doc.getDocumentElement();
    String width = Decimals.of(page.paper().widthMm());
    String height = Decimals.of(page.paper().heightMm());
    root.setAttributeNS(null, "width", width + "mm");
    root.setAttributeNS(null, "height", height + "mm");
    root.setAttributeNS(null, "viewBox", "0 0 " + width + " " + height);
    root.setAttributeNS(null, "font-family", FONTS);
    root.setAttributeNS(null, "fill-rule", "evenodd");
    root.setAttributeNS(null, "stroke-linejoin", "round");
    if (!page.title().isEmpty()) {
      root.setAttributeNS(null, "role", "img");
      title(root, page.title());
    }
    if (!palette.isWhitePaper()) {
      Element back = child(root, "rect");
      back.setAttributeNS(null, "width", width);
      back.setAttributeNS(null, "height", height);
      back.setAttributeNS(null, "fill", colour(palette, Tone.PAPER));
    }
    for (Layer layer : page.layers()) {
      Element group = child(root, "g");
      group.setAttributeNS(null, "id", idPrefix + layer.id());
      title(group, layer.title());
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape shape) {
          shape(group, page, palette, shape);
        } else if (mark instanceof Mark.Words words) {
          words(group, page, palette, words);
        }
      }
      newLine(group);
    }
    newLine(root);
    return doc;
  }

  private static void shape(Element group, Page page, Palette palette, Mark.Shape shape) {
    StringBuilder d = new StringBuilder();
    for (LineString line : Lines.of(shape.geometry())) {
      line(d, line, page);
    }
    if (d.isEmpty()) {
      return;
    }
    Style style = shape.style();
    Element e = child(group, "path");
    subject(e, shape.subject());
    e.setAttributeNS(null, "d", d.toString());
    e.setAttributeNS(null, "fill", style.fill() == null ? "none" : colour(palette, style.fill()));
    if (style.fill() != null && style.fillOpacity() < 1) {
      e.setAttributeNS(null, "fill-opacity", Decimals.of(style.fillOpacity()));
    }
    if (style.stroke() != null) {
      e.setAttributeNS(null, "stroke", colour(palette, style.stroke()));
      e.setAttributeNS(null, "stroke-width", Decimals.of(style.strokeMm()));
      double[] dashes = style.line().dashes(style.strokeMm());
      if (dashes.length > 0) {
        StringBuilder list = new StringBuilder();
        for (double dash : dashes) {
          Decimals.append(list.isEmpty() ? list : list.append(' '), dash);
        }
        e.setAttributeNS(null, "stroke-dasharray", list.toString());
      }
    }
  }

  private static void line(StringBuilder d, LineString line, Page page) {
    CoordinateSequence points = line.getCoordinateSequence();
    boolean closed = Lines.isClosed(line);
    int n = closed ? points.size() - 1 : points.size();
    for (int i = 0; i < n; i++) {
      d.append(i == 0 ? 'M' : 'L');
      Decimals.append(d, points.getX(i)).append(' ');
      Decimals.append(d, page.down(points.getY(i)));
    }
    if (closed) {
      d.append('Z');
    }
  }

  private static void words(Element group, Page page, Palette palette, Mark.Words words) {
    String text = Lettering.printable(words.text());
    if (text.isBlank()) {
      return;
    }
    // The base line is placed here rather than by alignment properties, which readers treat
    // differently.
    double a = Math.toRadians(words.rotationDeg());
    double drop = words.anchor().up() * words.heightMm();
    String x = Decimals.of(words.x() + drop * Math.sin(a));
    String y = Decimals.of(page.down(words.y() - drop * Math.cos(a)));
    Element e = child(group, "text");
    subject(e, words.subject());
    e.setAttributeNS(null, "x", x);
    e.setAttributeNS(null, "y", y);
    e.setAttributeNS(null, "font-size", Decimals.of(Lettering.fontSize(words.heightMm())));
    e.setAttributeNS(null, "fill", colour(palette, words.tone()));
    if (words.anchor().along() > 0) {
      e.setAttributeNS(null, "text-anchor", words.anchor().along() < 1 ? "middle" : "end");
    }
    String turn = Decimals.of(-words.rotationDeg());
    if (!turn.equals("0")) {
      e.setAttributeNS(null, "transform", "rotate(" + turn + " " + x + " " + y + ")");
    }
    e.appendChild(e.getOwnerDocument().createTextNode(text));
  }

  private static void subject(Element e, String subject) {
    if (!subject.isEmpty()) {
      e.setAttributeNS(null, "data-subject", Lettering.printable(subject));
    }
  }

  private static void title(Element parent, String text) {
    child(parent, "title")
        .appendChild(parent.getOwnerDocument().createTextNode(Lettering.printable(text)));
  }

  private static Element child(Element parent, String name) {
    newLine(parent);
    Element e = parent.getOwnerDocument().createElementNS(SVG, name);
    parent.appendChild(e);
    return e;
  }

  private static void newLine(Node parent) {
    parent.appendChild(parent.getOwnerDocument().createTextNode("\n"));
  }

  private static String colour(Palette palette, Tone tone) {
    return palette.of(tone).toHex();
  }
}
