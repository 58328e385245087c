package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.longlow.constraints.check.Finding;
import org.longlow.constraints.check.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.ElevationPicture;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.write.SvgWriter;

/** Writes a study as one self-contained HTML page. */
public final class Report {

  private static final double MARGIN_MM = 4;

  private Report() {}

  /** Returns the report with the usual options. */
  public static String html(Study study) {
    return html(study, ReportOptions.PLAIN);
  }

  /** Returns the report. */
  public static String html(Study study, ReportOptions options) {
    List<Finding> order = worstFirst(study);
    Html h = new Html();
    Layout layout = study.layout();
    String title = layout.title().isEmpty() ? layout.name() : layout.title();
    h.raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
    h.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
    h.element("title", title + ": report");
    h.raw("<style>\n").raw(Look.CSS).raw("</style>\n</head>\n<body>\n");
    header(h, study, title, options.date());
    h.raw("<main>\n");
    elevation(h, study, options, order);
    FindingTables.write(h, study, order);
    PeopleTables.write(h, study);
    LoadTables.write(h, study);
    CutList.write(h, study);
    notes(h, layout);
    h.raw("</main>\n<footer>");
    h.element("p", "Made with Longlow from the layout " + layout.name() + ".");
    h.raw("</footer>\n</body>\n</html>\n");
    return h.toString();
  }

  /**
   * Returns the findings worst first: by verdict, then by how far outside the limit as a share of
   * it, then as they come.
   */
  static List<Finding> worstFirst(Study study) {
    List<Finding> order = new ArrayList<>(study.findings());
    order.sort(Comparator.comparing(Finding::verdict).thenComparingDouble(Report::relativeMargin));
    return order;
  }

  private static double relativeMargin(Finding f) {
    if (Double.isNaN(f.margin())) {
      return Double.MAX_VALUE;
    }
    double limit = Math.abs(f.limit());
    return f.margin() / (limit > 1e-9 && Double.isFinite(limit) ? limit : 1);
  }

  private static void header(Html h, Study study, String title, String date) {
    h.raw("<header>\n");
    h.element("h1", title);
    String name = study.layout().name();
    h.element("p class=\"quiet\"", date.isEmpty() ? name : name + ", " + date);
    h.raw("<ul class=\"counts\">");
    count(h, "fail", study.count(Verdict.FAIL), "■", "fail");
    count(h, "caution", study.count(Verdict.CAUTION), "▲", "need care");
    count(h, "pass", study.count(Verdict.PASS), "●", "pass");
    h.raw("</ul>\n");
    if (study.contradicts()) {
      List<String> blame =
          study.placed().report().diagnosis().map(Diagnosis::contradiction).orElse(List.of());
      h.element(
          "p class=\"warn\"",
          "The layout contradicts itself"
              + (blame.isEmpty()
                  ? "."
                  : ": these cannot all hold: " + String.join(", ", blame) + ".")
              + " What follows is the nearest it could get; change or drop one of them first.");
    }
    h.element(
        "p class=\"note\"",
        "A sketch, not a certificate: local codes and licensed inspection decide what may be"
            + " ridden on the road.");
    h.raw("</header>\n");
  }

  private static void count(Html h, String kind, long n, String sign, String words) {
    h.raw("<li class=\"" + kind + "\"><b>").text(sign + " " + n).raw("</b>").text(words);
    h.raw("</li>");
  }

  private static void elevation(Html h, Study study, ReportOptions options, List<Finding> order) {
    List<String> marked =
        order.stream()
            .filter(f -> f.verdict() == Verdict.FAIL || f.verdict() == Verdict.CAUTION)
            .map(Finding::id)
            .toList();
    PictureOptions picture = options.picture().withFindings(marked);
    Drawing drawing = ElevationPicture.of(study, picture);
    Page page = Page.round(onPage(drawing, picture.denominator()), MARGIN_MM);
    h.raw(
        "<figure>\n<div class=\"sheet\" tabindex=\"0\" role=\"group\" aria-label=\"Elevation\">\n");
    h.raw(SvgWriter.inlineWithPrefix("elevation", Palette.CARD, page));
    h.raw("</div>\n");
    h.element(
        "figcaption",
        "Side elevation, forward to the right, lengths in mm. ■ fails, ▲ needs care, numbered as"
            + " in the table. Quartered disc: centre of mass. Quartered ring: H-point. Dashed line"
            + " from the eye: nearest road seen. The cushions are drawn pressed in under the rider.");
    h.raw("</figure>\n");
  }

  /** A machine too long for any page at the scale asked for is drawn smaller. */
  private static Drawing onPage(Drawing drawing, double denominator) {
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

  private static void notes(Html h, Layout layout) {
    if (layout.notes().isEmpty()) {
      return;
    }
    h.element("h2", "Notes of the layout");
    layout.notes().forEach(n -> h.element("p", n));
  }
}
