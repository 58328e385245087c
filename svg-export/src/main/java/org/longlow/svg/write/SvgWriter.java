package org.longlow.svg.write;

import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;

/**
 * Writes pages as SVG 1.1.
 *
 * <p>{@code width} and {@code height} are in mm and the {@code viewBox} has the same figures, so
 * one user unit is 1 mm. Every layer is a group with the layer's id and a {@code title}; marks with
 * a subject carry it in {@code data-subject}. Words stay words in a sans-serif font. The background
 * is painted only when the palette's paper is not white. Attributes are in alphabetical order.
 */
public final class SvgWriter {

  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String XLINK = "http://www.w3.org/1999/xlink";

  /** Fonts of one common metric first, then whatever sans-serif the reader has. */
  private static final String FONTS = "Liberation Sans, Arial, Helvetica, sans-serif";

  /** The JDK's own, whatever else lies on the class path. */
  private static final XMLOutputFactory XML = XMLOutputFactory.newDefaultFactory();

  private final XMLStreamWriter xml;
  private final Page page;
  private final Palette palette;
  private final SharedOutlines shared;

  private SvgWriter(XMLStreamWriter xml, Page page, Palette palette, SharedOutlines shared) {
    this.xml = xml;
    this.page = page;
    this.palette = palette;
    this.shared = shared;
  }

  /** Writes one page as a complete SVG document in UTF-8; the stream is flushed, not closed. */
  public static void write(Page page, Palette palette, OutputStream out) throws IOException {
    String head = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + MadeHere.SVG + "\n";
    String text = head + element(page, palette, "", null) + "\n";
    out.write(text.getBytes(StandardCharsets.UTF_8));
    out.flush();
  }

  /**
   * Returns pages as {@code svg} elements to be set into an HTML page, one after the other. Ids
   * start with the prefix and {@code 1-}, {@code 2-} ... so that they stay unique.
   *
   * @param shared the outlines of that HTML page, each of which is written once; it takes up more
   */
  public static String inline(
      String prefix, Palette palette, SharedOutlines shared, Page... pages) {
    if (!prefix.matches("[A-Za-z][A-Za-z0-9_-]*")) {
      throw new IllegalArgumentException(
          "id prefix '" + prefix + "' must start with a letter and hold only letters, digits, _ -");
    }
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < pages.length; i++) {
      out.append(element(pages[i], palette, prefix + (i + 1) + "-", shared)).append('\n');
    }
    return out.toString();
  }

  private static String element(
      Page page, Palette palette, String idPrefix, SharedOutlines shared) {
    StringWriter out = new StringWriter();
    try {
      XMLStreamWriter xml = XML.createXMLStreamWriter(out);
      new SvgWriter(xml, page, palette, shared).root(idPrefix);
      xml.flush();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("a page could not be put into words of XML", e);
    }
    return out.toString();
  }

  /** Also spells out the standard's defaults, so that a file is the same to the byte as it was. */
  private void root(String idPrefix) throws XMLStreamException {
    String width = Millimetres.of(page.paper().widthMm());
    String height = Millimetres.of(page.paper().heightMm());
    xml.writeStartElement("svg");
    xml.writeAttribute("contentScriptType", "text/ecmascript");
    xml.writeAttribute("contentStyleType", "text/css");
    xml.writeAttribute("fill-rule", "evenodd");
    xml.writeAttribute("font-family", FONTS);
    xml.writeAttribute("height", height + "mm");
    xml.writeAttribute("preserveAspectRatio", "xMidYMid meet");
    if (!page.title().isEmpty()) {
      xml.writeAttribute("role", "img");
    }
    xml.writeAttribute("stroke-linejoin", "round");
    xml.writeAttribute("version", "1.0");
    xml.writeAttribute("viewBox", "0 0 " + width + " " + height);
    xml.writeAttribute("width", width + "mm");
    xml.writeDefaultNamespace(SVG);
    xml.writeNamespace("xlink", XLINK);
    xml.writeAttribute("zoomAndPan", "magnify");
    if (!page.title().isEmpty()) {
      title(page.title());
    }
    if (!palette.isWhitePaper()) {
      newLine();
      xml.writeEmptyElement("rect");
      xml.writeAttribute("fill", colour(Tone.PAPER));
      xml.writeAttribute("height", height);
      xml.writeAttribute("width", width);
    }
    for (Layer layer : page.layers()) {
      layer(layer, idPrefix);
    }
    newLine();
    xml.writeEndElement();
  }

  private void layer(Layer layer, String idPrefix) throws XMLStreamException {
    newLine();
    xml.writeStartElement("g");
    xml.writeAttribute("id", idPrefix + layer.id());
    title(layer.title());
    for (Mark mark : layer.marks()) {
      if (mark instanceof Mark.Shape shape) {
        shape(shape);
      } else if (mark instanceof Mark.Words words) {
        words(words);
      }
    }
    newLine();
    xml.writeEndElement();
  }

  private void shape(Mark.Shape shape) throws XMLStreamException {
    List<LineString> lines = Lines.of(shape.geometry());
    if (lines.isEmpty()) {
      return;
    }
    if (shared != null) {
      placed(shared.of(lines, page));
    } else {
      StringBuilder d = new StringBuilder();
      for (LineString line : lines) {
        line(d, line);
      }
      newLine();
      xml.writeEmptyElement("path");
      xml.writeAttribute("d", d.toString());
    }
    Style style = shape.style();
    subject(shape.subject());
    xml.writeAttribute("fill", style.fill() == null ? "none" : colour(style.fill()));
    if (style.fill() != null && style.fillOpacity() < 1) {
      xml.writeAttribute("fill-opacity", Millimetres.of(style.fillOpacity()));
    }
    if (style.stroke() != null) {
      xml.writeAttribute("stroke", colour(style.stroke()));
      double[] dashes = style.line().dashes(style.strokeMm());
      if (dashes.length > 0) {
        StringBuilder list = new StringBuilder();
        for (double dash : dashes) {
          Millimetres.append(list.isEmpty() ? list : list.append(' '), dash);
        }
        xml.writeAttribute("stroke-dasharray", list.toString());
      }
      xml.writeAttribute("stroke-width", Millimetres.of(style.strokeMm()));
    }
  }

  /** Begins an outline where it belongs; its style follows. */
  private void placed(SharedOutlines.Placed outline) throws XMLStreamException {
    if (outline.isNew()) {
      newLine();
      xml.writeStartElement("defs");
      xml.writeEmptyElement("path");
      xml.writeAttribute("d", outline.path());
      xml.writeAttribute("id", outline.id());
      xml.writeEndElement();
    }
    newLine();
    if (outline.id().isEmpty()) {
      xml.writeEmptyElement("path");
      xml.writeAttribute("d", outline.path());
    } else {
      xml.writeEmptyElement("use");
      xml.writeAttribute("x", Millimetres.of(outline.x() / 1000.0));
      xml.writeAttribute("xlink:href", "#" + outline.id());
      xml.writeAttribute("y", Millimetres.of(outline.y() / 1000.0));
    }
  }

  private void line(StringBuilder d, LineString line) {
    CoordinateSequence points = line.getCoordinateSequence();
    boolean closed = Lines.isClosed(line);
    int n = closed ? points.size() - 1 : points.size();
    for (int i = 0; i < n; i++) {
      d.append(i == 0 ? 'M' : 'L');
      Millimetres.append(d, points.getX(i)).append(' ');
      Millimetres.append(d, page.down(points.getY(i)));
    }
    if (closed) {
      d.append('Z');
    }
  }

  private void words(Mark.Words words) throws XMLStreamException {
    String text = Lettering.printable(words.text());
    if (text.isBlank()) {
      return;
    }
    // The base line is placed here rather than by alignment properties, which readers treat
    // differently.
    double a = Math.toRadians(words.rotationDeg());
    double drop = words.anchor().up() * words.heightMm();
    String x = Millimetres.of(words.x() + drop * Math.sin(a));
    String y = Millimetres.of(page.down(words.y() - drop * Math.cos(a)));
    newLine();
    xml.writeStartElement("text");
    subject(words.subject());
    xml.writeAttribute("fill", colour(words.tone()));
    xml.writeAttribute("font-size", Millimetres.of(Lettering.fontSize(words.heightMm())));
    if (words.anchor().along() > 0) {
      xml.writeAttribute("text-anchor", words.anchor().along() < 1 ? "middle" : "end");
    }
    String turn = Millimetres.of(-words.rotationDeg());
    if (!turn.equals("0")) {
      xml.writeAttribute("transform", "rotate(" + turn + " " + x + " " + y + ")");
    }
    xml.writeAttribute("x", x);
    xml.writeAttribute("y", y);
    xml.writeCharacters(text);
    xml.writeEndElement();
  }

  private void subject(String subject) throws XMLStreamException {
    if (!subject.isEmpty()) {
      xml.writeAttribute("data-subject", Lettering.printable(subject));
    }
  }

  private void title(String text) throws XMLStreamException {
    newLine();
    xml.writeStartElement("title");
    xml.writeCharacters(Lettering.printable(text));
    xml.writeEndElement();
  }

  private void newLine() throws XMLStreamException {
    xml.writeCharacters("\n");
  }

  private String colour(Tone tone) {
    return palette.of(tone).toHex();
  }
}
