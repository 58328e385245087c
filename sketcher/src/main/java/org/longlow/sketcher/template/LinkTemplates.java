package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Allowance;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/**
 * What a shop makes of a front with links: leg and link from the side, in their true length, for
 * both lie beside the middle plane. A telescopic fork is bought.
 */
final class LinkTemplates {

  private LinkTemplates() {}

  /** Returns whether a part is a front with links. */
  static boolean has(Part part) {
    return part instanceof FrontPart front && front.linked();
  }

  /** Returns leg and link of a front; none for any other part. */
  static List<NamedDrawing> of(Part part, Places places, TemplateFigures figures) {
    if (!has(part)) {
      return List.of();
    }
    FrontPart front = (FrontPart) part;
    return front.pieces().stream()
        .map(p -> drawn(front, p.what(), p.from(), p.to(), places, figures))
        .toList();
  }

  private static NamedDrawing drawn(
      FrontPart front,
      String what,
      String from,
      String to,
      Places places,
      TemplateFigures figures) {
    List<PointMm> middle = List.of(places.pin(from), places.pin(to));
    Geometry net = Curves.rounded(List.of(middle), places.value(front.tube()));
    Allowance allowance = Allowance.of(front, places);
    TemplateSheet sheet =
        new TemplateSheet(
            front.name(), front.name() + ", " + what, allowance.cut(net), "up", "forward");
    CutWords.mark(allowance, sheet, net);
    sheet.chain(middle);
    sheet.drill(from, middle.get(0));
    sheet.drill(to, middle.get(1));
    List<String> lines = new ArrayList<>();
    lines.add("make 2, the right one as seen here, the left one turned over");
    lines.add(CentreLengths.length(what, from, to, places, figures));
    lines.add(
        "tube Ø"
            + figures.bare(places.value(front.tube()))
            + " or plates as broad, "
            + figures.mm(places.value(front.y()))
            + " to each side of the middle");
    if (front.brakeRod() && to.equals(front.axle())) {
      lines.add("the brake rod beside it is as long, middle to middle, and lies level with it");
    }
    lines.add(CutWords.line(allowance, figures));
    lines.addAll(CutWords.side(allowance, figures));
    return sheet.with(
        TemplateWords.fileName(front.name()) + "-" + what.replace(' ', '-'),
        front.name(),
        lines,
        List.of());
  }
}
