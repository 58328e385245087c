package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.Moved;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.Pictures;
import org.longlow.sketcher.picture.Touch;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.Page;

/** Front view and plan of a report, with what touches first leaning and steering. */
final class OtherViews {

  private OtherViews() {}

  /**
   * Writes them, and between them the machine leaned to each side as far as it goes.
   *
   * @param first what the first elevation shows
   */
  static void write(Html h, Study study, PictureOptions first) {
    PictureOptions plain = first.withFindings(Set.of()).withChosen("");
    for (Aspect aspect : List.of(Aspect.FRONT, Aspect.PLAN)) {
      PictureOptions options = plain.withAspect(aspect);
      Drawing drawing = Pictures.withTouches(study, options);
      if (drawing.boundsMm().isNull()) {
        return; // nothing is drawn yet
      }
      String title = capital(aspect.says());
      h.raw("<figure>\n");
      Plate.write(h, aspect.word(), title, page(drawing, options));
      String touched = Pictures.touched(study, options);
      h.element(
          "figcaption",
          title
              + aboard(Pictures.people(study, options))
              + (aspect == Aspect.FRONT
                  ? ", seen from ahead: the machine's left is at the right."
                  : ", seen from above.")
              + " Dashed: hidden edges of what carries it."
              + (touched.isEmpty() ? "" : " Rings: " + touched + "."));
      h.raw("</figure>\n");
      if (aspect == Aspect.FRONT) {
        leaned(h, study, plain);
      }
    }
  }

  /** The machine on what touches the road first, to each side. */
  private static void leaned(Html h, Study study, PictureOptions plain) {
    List<String> said = new ArrayList<>();
    List<Touch> touches = Touch.first(Touch.lean(study.findings()), 1);
    for (Touch touch : touches) {
      if (said.isEmpty()) {
        h.raw("<figure>\n<div class=\"row\">\n");
      }
      double roll = Math.toRadians(touch.deg()) * (touch.left() ? 1 : -1);
      PictureOptions options =
          plain
              .withDimensions(false)
              .withNames(false)
              .withStance(touch.stance())
              .withAspect(Aspect.FRONT)
              .withMoved(Optional.of(new Moved.ByTurn(roll)));
      String side = touch.left() ? "left" : "right";
      String people =
          touch.stance().stream()
              .flatMap(c -> c.aboard().stream())
              .map(Occupant::person)
              .collect(Collectors.joining(" and "));
      String words =
          side + ": " + touch.words() + (people.isEmpty() ? "" : ", with " + people + " aboard");
      Plate.write(
          h, "lean-" + side, "leaned to the " + words, page(Pictures.of(study, options), options));
      said.add(words);
    }
    if (!said.isEmpty()) {
      h.raw("</div>\n");
      h.element(
          "figcaption",
          "Leaned in a steady turn until something touches the road, seen from ahead. To the "
              + String.join("; to the ", said)
              + ".");
      h.raw("</figure>\n");
    }
  }

  private static Page page(Drawing drawing, PictureOptions options) {
    return Page.round(Elevations.onPage(drawing, options.denominator()), Elevations.MARGIN_MM);
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String aboard(List<String> people) {
    return people.isEmpty() ? "" : " with " + String.join(" and ", people);
  }
}
