package org.longlow.constraints.layout;

import java.util.List;
import org.longlow.constraints.formula.Formula;

/** The edge of a part, in the axes of its {@link LocalAxes} or through pins. */
public sealed interface Outline {

  /** The vertices in order; a closed outline does not repeat the first. */
  List<Vertex> vertices();

  /** True if the last vertex joins the first. */
  boolean closed();

  /**
   * A vertex, either at local coordinates or on a pin.
   *
   * @param x along the frame's axis; null where {@code pin} is given
   * @param z square to it, counter-clockwise; null where {@code pin} is given
   * @param pin the pin it sits on, or null
   * @param smooth true if the edge runs through it without a corner
   */
  record Vertex(Formula x, Formula z, String pin, boolean smooth) {
    public Vertex {
      if ((pin == null) == (x == null || z == null)) {
        throw new IllegalArgumentException("a vertex needs either x and z or a pin");
      }
    }
  }

  /** An outline written out in the layout. */
  record Drawn(List<Vertex> vertices, boolean closed) implements Outline {
    public Drawn {
      vertices = List.copyOf(vertices);
    }
  }

  /**
   * An outline taken from a path of an SVG file, such as a traced engine drawing.
   *
   * @param file the SVG file, relative to the layout file
   * @param path the {@code id} of the path; empty takes the first
   * @param scale how long one user unit of the SVG is
   * @param vertices the path in mm, x right, z up, as read
   * @param closed whether the path closes
   */
  record Traced(String file, String path, Formula scale, List<Vertex> vertices, boolean closed)
      implements Outline {
    public Traced {
      vertices = List.copyOf(vertices);
    }
  }
}
