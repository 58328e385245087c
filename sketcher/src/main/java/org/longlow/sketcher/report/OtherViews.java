package org.longlow.sketcher.report;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.Pictures;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.write.SvgWriter;

/** Front view and plan of a report, with what touches first leaning and steering. */
final class OtherViews {

  private OtherViews() {}

  /**
   * Writes both.
   *
   * @param first what the first elevation shows
   */
  static void write(Html h, Study study, PictureOptions first) {
    for (Aspect aspect : List.of(Aspect.FRONT, Aspect.PLAN)) {
      PictureOptions options = first.withAspect(aspect).withFindings(Set.of()).withChosen("");
      Drawing drawing = Pictures.withTouches(study, options);
      if (drawing.boundsMm().isNull()) {
        return; // nothing is drawn yet
      }
      Page page =
          Page.round(Elevations.onPage(drawing, options.denominator()), Elevations.MARGIN_MM);
      String title =
          aspect.says().substring(0, 1).toUpperCase(Locale.ROOT) + aspect.says().substring(1);
      h.raw("<figure>\n<div class=\"sheet\" tabindex=\"0\" role=\"group\" aria-label=\"");
      h.text(title).raw("\">\n");
      h.raw(SvgWriter.inline(aspect.word(), Palette.CARD, page));
      h.raw("</div>\n");
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
    }
  }

  private static String aboard(List<String> people) {
    return people.isEmpty() ? "" : " with " + String.join(" and ", people);
  }
}
