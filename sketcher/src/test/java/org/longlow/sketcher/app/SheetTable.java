package org.longlow.sketcher.app;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.sketcher.template.NamedDrawing;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.page.Tiling;

/**
 * Prints how many sheets the templates of the shipped machines take, beside a number that no way of
 * laying goes below; the table in DEVELOPERS.md is made by it.
 *
 * <p>Of a template the larger of its area over that of a sheet and its greatest length over the
 * sheet's diagonal; those that fit on one sheet by area together. Words, strips and bars take no
 * room in it.
 */
final class SheetTable {

  private SheetTable() {}

  public static void main(String[] args) {
    for (String machine : List.of("heron", "dunlin", "curlew")) {
      Study study = Shipped.study(machine);
      for (Paper paper : List.of(Paper.A4, Paper.LETTER, Paper.A3)) {
        TemplateSet set =
            TemplateSet.of(study, Set.of(), TemplateSettings.on(paper), StepWatch.NONE)
                .orElseThrow();
        System.out.printf(
            Locale.ROOT,
            "%s %s: %d (%d)%n",
            machine,
            paper.name(),
            set.pages().size(),
            bound(set, paper));
      }
    }
  }

  private static int bound(TemplateSet set, Paper paper) {
    double wide = paper.widthMm() - 2 * Tiling.MARGIN_MM;
    double high = paper.heightMm() - 2 * Tiling.MARGIN_MM;
    int sheets = 0;
    double together = 0;
    for (TemplateSet.Template t : set.templates()) {
      Geometry cut = cut(t.drawing());
      double area = cut.getArea() / (wide * high);
      double least = Math.max(area, longest(cut) / Math.hypot(wide, high));
      if (least > 1) {
        sheets += (int) Math.ceil(least - 1e-9);
      } else {
        together += area;
      }
    }
    return sheets + (int) Math.ceil(together);
  }

  private static Geometry cut(NamedDrawing drawing) {
    return ((Mark.Shape) drawing.drawing().layers().get(0).marks().get(0)).geometry();
  }

  private static double longest(Geometry g) {
    Coordinate[] hull = g.convexHull().getCoordinates();
    double most = 0;
    for (Coordinate a : hull) {
      for (Coordinate b : hull) {
        most = Math.max(most, a.distance(b));
      }
    }
    return most;
  }
}
