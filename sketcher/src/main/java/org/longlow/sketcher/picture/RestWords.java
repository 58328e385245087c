package org.longlow.sketcher.picture;

import java.util.List;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.RestPart;

/** What grips, pegs and footboards are called on a drawing, whatever their names in the file. */
final class RestWords {

  private RestWords() {}

  /**
   * Returns what they are for, such as {@code grips}, with the seat where there are several seats;
   * its name in words where two do the same for one seat.
   */
  static String of(Layout layout, RestPart rest) {
    List<RestPart> all = layout.parts(RestPart.class).toList();
    boolean one =
        all.stream().filter(r -> r.type() == rest.type() && r.seat().equals(rest.seat())).count()
            == 1;
    if (!one) {
      return Form.words(rest.name());
    }
    boolean seats = all.stream().anyMatch(r -> !r.seat().equals(rest.seat()));
    String what =
        switch (rest.type()) {
          case GRIP -> "grips";
          case PEG -> "pegs";
          case FOOTBOARD -> "boards";
          case HANDHOLD -> "handholds";
        };
    return seats ? rest.seat() + " " + what : what;
  }
}
