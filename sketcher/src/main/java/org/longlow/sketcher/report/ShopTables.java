package org.longlow.sketcher.report;

import java.util.List;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.shop.CutPlan;
import org.longlow.sketcher.shop.PageBlock;
import org.longlow.sketcher.shop.PlanWords;
import org.longlow.sketcher.shop.Shop;
import org.longlow.sketcher.shop.ShopTable;
import org.longlow.sketcher.shop.SizeWords;
import org.longlow.svg.page.Page;

/** What to buy, and how it is cut. */
final class ShopTables {

  /** A picture of a plan, as wide as the column and no higher than is seen at once, mm. */
  private static final double WIDE_MM = 240;

  private static final double HIGH_MM = 240;

  private ShopTables() {}

  static void write(Html h, Shop shop) {
    Layout layout = shop.study().layout();
    h.element("h2", "Materials, foam, lamps");
    table(h, shop.materials(), layout);
    table(h, shop.foam(), layout);
    table(h, shop.lamps(), layout);
    if (!shop.plans().plans().isEmpty()) {
      h.element("h2", "Cutting plans");
      h.element(
          "p class=\"note\"",
          "Lengths are net: copes are inside them. The saw's kerf lies between two pieces.");
      int n = 0;
      for (CutPlan plan : shop.plans().plans()) {
        plan(h, shop, plan, ++n);
      }
    }
    if (!shop.basket().table().rows().isEmpty()) {
      h.element("h2", "Shopping list");
      table(h, shop.basket().table(), layout);
      String sum = shop.basket().sum(layout.currency());
      if (!sum.isEmpty()) {
        h.element("p", sum);
      }
      table(h, shop.basket().fasteners(), layout);
    }
  }

  private static void plan(Html h, Shop shop, CutPlan plan, int n) {
    SizeWords sizes = new SizeWords(shop.study().layout().units());
    String words = plan.wanted().words(sizes);
    h.raw("<figure>\n");
    int k = 0;
    for (PageBlock block : shop.pictures(plan, WIDE_MM, HIGH_MM)) {
      Plate.write(
          h,
          "plan" + n + (k == 0 ? "" : "-" + k),
          "cutting plan " + n + ", " + words,
          Page.round(block.drawing(), Elevations.MARGIN_MM));
      k++;
    }
    h.element("figcaption", "Cutting plan " + n + ": " + words + ". " + PlanWords.of(plan, sizes));
    h.raw("</figure>\n");
  }

  private static void table(Html h, ShopTable all, Layout layout) {
    ShopTable table = all.withoutEmpty();
    if (table.rows().isEmpty()) {
      return;
    }
    Units units = layout.units();
    List<String> headings = table.headings(layout.currency());
    h.table(table.name(), table.title(), headings);
    table.rows().forEach(row -> h.row("", headings, table.said(row, units)));
    h.closeTable();
  }
}
