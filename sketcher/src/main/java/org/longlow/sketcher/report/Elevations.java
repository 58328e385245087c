package org.longlow.sketcher.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.ElevationPicture;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.View;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;

/**
 * The elevations of a report: one for each stance and company that a marked finding is about, so
 * that every mark stands on the person or part that it means.
 */
final class Elevations {

  static final double MARGIN_MM = 4;

  private Elevations() {}

  /**
   * Writes the elevations.
   *
   * @param order the findings as the table numbers them, from 1
   */
  static void write(Html h, Study study, PictureOptions first, List<Finding> order) {
    int n = 0;
    for (Map.Entry<View, Map<String, Integer>> e : plan(study, first, order).entrySet()) {
      n++;
      PictureOptions options = n == 1 ? first : e.getKey().in(first).withDimensions(false);
      figure(h, study, options.withFindings(e.getValue()), e.getKey().words(), n);
    }
  }

  /** Returns what each elevation marks: findings of the first table, with their numbers. */
  static Map<View, Map<String, Integer>> plan(
      Study study, PictureOptions first, List<Finding> order) {
    View usual = View.shown(study, first);
    Map<View, Map<String, Integer>> plan = new LinkedHashMap<>();
    plan.put(usual, new LinkedHashMap<>());
    for (int i = 0; i < order.size(); i++) {
      Finding f = order.get(i);
      if (f.where().isEmpty()) {
        continue;
      }
      View view = View.of(study, f);
      boolean anywhere = view.stance().isEmpty() && view.seated().isEmpty();
      plan.computeIfAbsent(anywhere ? usual : view, v -> new LinkedHashMap<>()).put(f.id(), i + 1);
    }
    return plan;
  }

  /** A machine too long for any page at the scale asked for is drawn smaller. */
  static Drawing onPage(Drawing drawing, double denominator) {
    double room = Paper.LONGEST_MM - 2 * MARGIN_MM;
    double smaller = denominator;
    Drawing scaled = drawing.scaled(1 / smaller);
    while (Math.max(scaled.paperBoundsMm().getWidth(), scaled.paperBoundsMm().getHeight()) > room
        && smaller < 1e6) {
      smaller *= 2;
      scaled = drawing.scaled(1 / smaller);
    }
    return scaled;
  }

  private static void figure(Html h, Study study, PictureOptions options, String words, int n) {
    Drawing drawing = ElevationPicture.of(study, options);
    Page page = Page.round(onPage(drawing, options.denominator()), MARGIN_MM);
    h.raw("<figure>\n");
    Plate.write(h, "elevation" + (n == 1 ? "" : n), "elevation " + n + ", " + words, page);
    h.element("figcaption", caption(study.layout().units().lengths(), options, words, n));
    h.raw("</figure>\n");
  }

  private static String caption(String lengths, PictureOptions options, String words, int n) {
    List<Integer> numbers = List.copyOf(options.findings().values());
    String marks =
        numbers.isEmpty()
            ? ""
            : (numbers.size() == 1 ? " Finding " : " Findings ")
                + numbers.stream().map(String::valueOf).collect(Collectors.joining(", "))
                + ".";
    String what = "Elevation " + n + ": " + words + "." + marks;
    return n > 1
        ? what
        : what
            + " Forward to the right, lengths in "
            + lengths
            + ". ■ fails, ▲ needs care, numbered as in the"
            + " table. Quartered disc: centre of mass. Quartered ring: H-point. Dashed line from"
            + " the eye: nearest road seen. The cushions are drawn pressed in under whoever sits"
            + " on them. Tap a picture to make it larger, and once more to put it back.";
  }
}
