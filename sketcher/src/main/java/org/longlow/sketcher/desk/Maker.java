package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.longlow.constraints.study.Study;
import org.longlow.svg.page.Paper;

/** Makes files of what is on the board. */
@FunctionalInterface
public interface Maker {

  /** Things that can be made. */
  enum Kind {
    TEMPLATES("templates at full size"),
    DRAWING("dimensioned drawing"),
    REPORT("report");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * What is wanted.
   *
   * @param kinds what to make
   * @param paper for the templates and the drawing
   * @param folder where to put it
   */
  record Order(Set<Kind> kinds, Paper paper, Path folder) {
    public Order {
      kinds = Set.copyOf(kinds);
    }
  }

  /** Hears how far it is; may say stop. */
  @FunctionalInterface
  interface Progress {

    /**
     * Tells that a step begins.
     *
     * @return false to stop; what is finished by then stays
     */
    boolean step(String what, int done, int of);
  }

  /**
   * Makes what is ordered.
   *
   * @return what there is now, one line for each thing
   * @throws IOException if something cannot be written
   */
  List<String> make(Study study, Order order, Progress progress) throws IOException;
}
