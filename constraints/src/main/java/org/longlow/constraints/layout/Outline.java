package org.longlow.constraints.layout;

import java.util.List;
import java.util.stream.IntStream;
import org.longlow.constraints.formula.Formula;

/** The edge of a part, in the axes of its {@link LocalAxes} or through pins. */
public sealed interface Outline {

  /** The vertices as written, in order; a closed outline does not repeat the first. */
  List<Vertex> vertices();

  /** True if the last vertex joins the first. */
  boolean closed();

  /** True if the vertices are one half; the other is its image across {@link #axis()}. */
  boolean half();

  /** The openings through the part; only a closed outline has any. */
  List<Hole> holes();

  /** How many vertices it has with the image of a half: its ends are on the axis, each once. */
  default int count() {
    int written = vertices().size();
    return half() ? Math.max(written, 2 * written - 2) : written;
  }

  /** The vertex as written that vertex {@code i} of {@link #count()} is or is the image of. */
  default int written(int i) {
    return i < vertices().size() ? i : 2 * vertices().size() - 2 - i;
  }

  /** Whether the edge runs smoothly through each of {@link #count()} vertices. */
  default List<Boolean> smooth() {
    return IntStream.range(0, count()).mapToObj(i -> vertices().get(written(i)).smooth()).toList();
  }

  /** The two vertices whose line a half is mirrored across: its first and its last. */
  default List<Vertex> axis() {
    return List.of(vertices().get(0), vertices().get(vertices().size() - 1));
  }

  /** An outline written out in the layout. */
  record Drawn(List<Vertex> vertices, boolean closed, boolean half, List<Hole> holes)
      implements Outline {
    public Drawn {
      vertices = List.copyOf(vertices);
      holes = List.copyOf(holes);
    }

    /** An outline without holes, drawn whole. */
    public Drawn(List<Vertex> vertices, boolean closed) {
      this(vertices, closed, false, List.of());
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
  record Traced(
      String file,
      String path,
      Formula scale,
      List<Vertex> vertices,
      boolean closed,
      List<Hole> holes)
      implements Outline {
    public Traced {
      vertices = List.copyOf(vertices);
      holes = List.copyOf(holes);
    }

    /** A traced outline without holes. */
    public Traced(String file, String path, Formula scale, List<Vertex> vertices, boolean closed) {
      this(file, path, scale, vertices, closed, List.of());
    }

    @Override
    public boolean half() {
      return false;
    }

    /** Returns the same with the path as read. */
    public Traced as(List<Vertex> read, boolean closes) {
      return new Traced(file, path, scale, read, closes, holes);
    }
  }
}
