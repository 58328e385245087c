package org.longlow.constraints.json;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javax.xml.stream.XMLStreamException;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathParser;
import org.longlow.constraints.disk.NamedFile;
import org.longlow.constraints.document.Tracer;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Vertex;

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
    List<Vertex> vertices, boolean closed, String fault, String remedy, boolean aboutPath) {

  static final double FLATNESS_MM = 0.1;

  /** Neighbours closer than this are one vertex. */
  private static final double SAME_MM = 1e-3;

  static final NamedFile.Sort SORT =
      new NamedFile.Sort("SVG file", "an", 16_000_000, "take out embedded pictures");

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
    NamedFile named = NamedFile.in(folder, file, SORT);
    if (named.path() == null) {
      return fault(false, named.fault(), named.remedy());
    }
    try (InputStream in = Files.newInputStream(named.path())) {
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
    List<SvgTrace> found = new ArrayList<>();
    try {
      SvgPaths.walk(
          in,
          AffineTransform.getScaleInstance(scaleMm, -scaleMm),
          (own, d, to) -> {
            if (id.isEmpty() || id.equals(own)) {
              found.add(trace(d, to, box -> FLATNESS_MM));
            }
            return found.isEmpty();
          });
    } catch (ParseException e) {
      return fault(true, "has a transform that cannot be read", "save it as plain SVG");
    }
    return found.isEmpty()
        ? fault(
            true,
            id.isEmpty() ? "finds no path in the SVG file" : "is the id of no path in the SVG file",
            "turn the shape into a path in the drawing program and give it that id")
        : found.get(0);
  }

  /**
   * Returns the outline of path data.
   *
   * @param to from its units to mm, y up
   * @param flatness how far chords may stay from curves, for the box round them
   */
  static SvgTrace trace(String d, AffineTransform to, ToDoubleFunction<Rectangle2D> flatness) {
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
    Shape shape = producer.getShape();
    double chords = flatness.applyAsDouble(to.createTransformedShape(shape).getBounds2D());
    for (PathIterator i = shape.getPathIterator(to, chords); !i.isDone(); i.next()) {
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
    List<Vertex> vertices = new ArrayList<>();
    for (double[] p : points) {
      vertices.add(new Vertex(Formula.of(p[0], Unit.MM), Formula.of(p[1], Unit.MM), null, false));
    }
    return new SvgTrace(List.copyOf(vertices), closed, null, null, false);
  }

  private static boolean same(double[] a, double[] b) {
    return Math.hypot(a[0] - b[0], a[1] - b[1]) < SAME_MM;
  }
}
