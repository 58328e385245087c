package org.longlow.constraints.layout;

import java.util.List;
import org.longlow.constraints.formula.Formula;

/**
 * An opening through a part from one side to the other, in the axes of its outline. Its places are
 * vertices without a smooth run, save for those of a cut.
 */
public sealed interface Hole {

  /** What it hangs on, in order. */
  List<Vertex> vertices();

  /** A drilled hole. */
  record Round(Vertex at, Formula diameter) implements Hole {
    @Override
    public List<Vertex> vertices() {
      return List.of(at);
    }
  }

  /**
   * A hole with round ends.
   *
   * @param from centre of one end
   * @param to centre of the other
   * @param width across it, the diameter of its ends
   */
  record Slot(Vertex from, Vertex to, Formula width) implements Hole {
    @Override
    public List<Vertex> vertices() {
      return List.of(from, to);
    }
  }

  /** A cut-out with an edge of its own, which closes on itself. */
  record Cut(List<Vertex> vertices) implements Hole {
    public Cut {
      vertices = List.copyOf(vertices);
    }
  }
}
