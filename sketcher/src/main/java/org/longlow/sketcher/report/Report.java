package org.longlow.sketcher.report;

import java.util.List;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.shop.Shop;
import org.longlow.svg.write.MadeHere;

/** Writes a study as one self-contained HTML page. */
public final class Report {

  private Report() {}

  /** Returns the report with the usual options. */
  public static String html(Study study) {
    return html(study, ReportOptions.PLAIN);
  }

  /** Returns the report. */
  public static String html(Study study, ReportOptions options) {
    List<Finding> led = FindingTables.led(study);
    Html h = new Html();
    Layout layout = study.layout();
    String title = layout.title().isEmpty() ? layout.name() : layout.title();
    h.raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
    h.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
    h.raw(MadeHere.HTML + "\n");
    h.element("title", title + ": report");
    h.raw("<style>\n").raw(PageStyle.CSS).raw("</style>\n</head>\n<body>\n");
    header(h, study, title, options.date());
    h.raw("<main>\n");
    Elevations.write(h, study, options.picture(), led);
    OtherViews.write(h, study, options.picture());
    FindingTables.write(h, study);
    PeopleTables.write(h, study);
    LoadTables.write(h, study);
    BalanceTable.write(h, study);
    KeptTable.write(h, study, options.picture());
    BuiltTable.write(h, options.built(), layout.units());
    Shop shop = Shop.of(study);
    CutList.write(h, study, shop.cuts());
    ShopTables.write(h, shop);
    notes(h, layout);
    h.raw("</main>\n<footer>");
    h.element("p", "Made with Longlow from the layout " + layout.name() + ".");
    h.raw("</footer>\n</body>\n</html>\n");
    return h.toString();
  }

  private static void header(Html h, Study study, String title, String date) {
    h.raw("<header>\n");
    h.element("h1", title);
    String name = study.layout().name();
    h.element("p class=\"quiet\"", date.isEmpty() ? name : name + ", " + date);
    h.raw("<ul class=\"counts\">");
    count(h, study, Verdict.FAIL, "■");
    count(h, study, Verdict.CAUTION, "▲");
    count(h, study, Verdict.PASS, "●");
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

  private static void count(Html h, Study study, Verdict verdict, String sign) {
    long n = study.count(verdict);
    h.raw("<li class=\"" + verdict.word() + "\"><b>").text(sign + " " + n).raw("</b>");
    h.text(verdict.does(n));
    h.raw("</li>");
  }

  private static void notes(Html h, Layout layout) {
    if (layout.notes().isEmpty()) {
      return;
    }
    h.element("h2", "Notes of the layout");
    layout.notes().forEach(n -> h.element("p", n));
  }
}
