package org.longlow.constraints.json;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathParser;
import org.apache.batik.parser.TransformListParser;
import org.longlow.constraints.document.Tracer;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Outline;

/**
 * The outline that a path of an SVG file describes.
 *
 * <p>Curves become chords that stay within {@value #FLATNESS_MM} mm of them; transforms of the path
 * and of the groups round it are applied; y is turned from down to up. The file must lie in the
 * folder of the layout file or below, and is parsed without its DTD and without entities from
 * outside.
 *
 * @param vertices the vertices, mm, as read; empty where there is a fault
 * @param closed whether the path closes
 * @param fault what is wrong, or null
 * @param remedy what to do about it
 * @param aboutPath true if the path is at fault rather than the file
 */
record SvgTrace(
    List<Outline.Vertex> vertices, boolean closed, String fault, String remedy, boolean aboutPath) {

  static final double FLATNESS_MM = 0.1;

  /** Neighbours closer than this are one vertex. */
  private static final double SAME_MM = 1e-3;

  private static final long MAX_BYTES = 16_000_000;

  private static SvgTrace fault(boolean aboutPath, String fault, String remedy) {
    return new SvgTrace(List.of(), true, fault, remedy, aboutPath);
  }

  /** Returns what traces outlines from files in {@code folder}, or null for no folder. */
  static Tracer in(Path folder) {
    return (outline, scaleMm, at) -> {
      SvgTrace trace = read(folder, outline.file(), outline.path(), scaleMm);
      if (trace.fault() != null) {
        at.fault(
            trace.aboutPath() ? "path" : "svg",
            Json.quoted(trace.aboutPath() ? outline.path() : outline.file()),
            trace.fault(),
            trace.remedy());
      }
      return outline.as(trace.vertices(), trace.closed());
    };
  }

  /**
   * Reads a path.
   *
   * @param folder of the layout file, or null
   * @param file relative to it
   * @param id of the path; empty takes the first
   * @param scaleMm mm for each user unit, &gt; 0
   */
  static SvgTrace read(Path folder, String file, String id, double scaleMm) {
    if (folder == null) {
      return fault(false, "cannot be found: the layout has no folder yet", "save the layout first");
    }
    Path within;
    try {
      Path relative = Path.of(file);
      within = folder.resolve(relative).normalize();
      if (relative.isAbsolute()
          || file.contains("\\")
          || file.contains(":")
          || !within.startsWith(folder.normalize())) {
        return fault(
            false,
            "lies outside the folder of the layout file",
            "put the SVG file beside the layout file and write its name only");
      }
      if (Files.isDirectory(within)) {
        return fault(false, "is a folder", "write the name of an SVG file");
      }
      if (!Files.isRegularFile(within)) {
        return fault(false, "does not exist", "put the SVG file beside the layout file");
      }
      if (!within.toRealPath().startsWith(folder.toRealPath())) {
        return fault(false, "is a link to a file outside the folder", "copy the file itself there");
      }
      if (Files.size(within) > MAX_BYTES) {
        return fault(false, "is larger than 16 MB", "take out embedded pictures");
      }
    } catch (InvalidPathException e) {
      return fault(false, "is no file name", "write the name of an SVG file");
    } catch (IOException e) {
      return fault(false, "cannot be read", "look at its permissions");
    }
    try (InputStream in = Files.newInputStream(within)) {
      return find(in, id, scaleMm);
    } catch (XMLStreamException e) {
      return fault(
          false,
          "is not well-formed XML"
              + (e.getLocation() == null ? "" : " at line " + e.getLocation().getLineNumber()),
          "save it again as plain SVG");
    } catch (IOException e) {
      return fault(false, "cannot be read", "look at its permissions");
    }
  }

  private static SvgTrace find(InputStream in, String id, double scaleMm)
      throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setXMLResolver((publicId, systemId, base, name) -> InputStream.nullInputStream());
    XMLStreamReader xml = factory.createXMLStreamReader(in);
    Deque<AffineTransform> transforms = new ArrayDeque<>();
    transforms.push(AffineTransform.getScaleInstance(scaleMm, -scaleMm));
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        transforms.pop();
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        AffineTransform here = new AffineTransform(transforms.peek());
        String transform = xml.getAttributeValue(null, "transform");
        try {
          if (transform != null) {
            here.concatenate(transform(transform));
          }
        } catch (ParseException e) {
          return fault(true, "has a transform that cannot be read", "save it as plain SVG");
        }
        transforms.push(here);
        String own = xml.getAttributeValue(null, "id");
        if (xml.getLocalName().equals("path") && (id.isEmpty() || id.equals(own))) {
          return trace(xml.getAttributeValue(null, "d"), here);
        }
      }
    }
    return fault(
        true,
        id.isEmpty() ? "finds no path in the SVG file" : "is the id of no path in the SVG file",
        "turn the shape into a path in the drawing program and give it that id");
  }

  private static AffineTransform transform(String text) {
    AWTTransformProducer producer = new AWTTransformProducer();
    TransformListParser parser = new TransformListParser();
    parser.setTransformListHandler(producer);
    parser.parse(text);
    return producer.getAffineTransform();
  }

  private static SvgTrace trace(String d, AffineTransform to) {
    if (d == null || d.isBlank()) {
      return fault(true, "is a path without points", "draw it again");
    }
    if (Character.toLowerCase(d.strip().charAt(0)) != 'm') {
      // SVG 1.1, 8.3.2: a path data segment must begin with a move
      return fault(true, "is a path that does not begin with a move", "save it as plain SVG");
    }
    ArcPath producer = new ArcPath();
    PathParser parser = new PathParser();
    parser.setPathHandler(producer);
    try {
      parser.parse(d);
    } catch (ParseException e) {
      return fault(true, "is a path that cannot be read", "save it again as plain SVG");
    }
    List<double[]> points = new ArrayList<>();
    boolean closed = false;
    double[] at = new double[6];
    for (PathIterator i = producer.getShape().getPathIterator(to, FLATNESS_MM);
        !i.isDone();
        i.next()) {
      int segment = i.currentSegment(at);
      if (segment == PathIterator.SEG_CLOSE) {
        closed = true;
      } else if (segment == PathIterator.SEG_MOVETO && points.size() > 1) {
        return fault(true, "is in several pieces", "split the path up and name one of them");
      } else {
        if (segment == PathIterator.SEG_MOVETO) {
          points.clear();
        }
        if (Math.abs(at[0]) > 1e5 || Math.abs(at[1]) > 1e5 || at[0] != at[0] || at[1] != at[1]) {
          return fault(true, "reaches beyond 100 m", "look at the scale");
        }
        if (points.isEmpty() || !same(points.get(points.size() - 1), at)) {
          points.add(new double[] {at[0], at[1]});
        }
      }
      if (points.size() > Type.Outlines.MAX_POINTS) {
        return fault(
            true,
            "needs more than " + Type.Outlines.MAX_POINTS + " points",
            "simplify the path in the drawing program");
      }
    }
    if (points.size() > 2 && same(points.get(0), points.get(points.size() - 1))) {
      points.remove(points.size() - 1);
      closed = true;
    }
    if (points.size() < (closed ? 3 : 2)) {
      return fault(true, "is a path with too few points", "draw it again");
    }
    List<Outline.Vertex> vertices = new ArrayList<>();
    for (double[] p : points) {
      vertices.add(
          new Outline.Vertex(Formula.of(p[0], Unit.MM), Formula.of(p[1], Unit.MM), null, false));
    }
    return new SvgTrace(List.copyOf(vertices), closed, null, null, false);
  }

  private static boolean same(double[] a, double[] b) {
    return Math.hypot(a[0] - b[0], a[1] - b[1]) < SAME_MM;
  }
}
