package org.longlow.sketcher.shop;

import org.longlow.constraints.layout.Stock.Form;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.words.Decimals;

/** What is said of a cutting plan. */
public final class PlanWords {

  private PlanWords() {}

  /** Returns what is bought, how sure the plan is of it, and what is left, in sentences. */
  public static String of(CutPlan plan, SizeWords sizes) {
    Bought stock = plan.stock();
    boolean tube = stock.form() == Form.TUBE;
    String one = tube ? "bar" : "sheet";
    StringBuilder words = new StringBuilder();
    words
        .append(plan.count() == 0 ? "Nothing fits a " + one : Counted.of(plan.count(), one))
        .append(" of ")
        .append(tube ? sizes.mm(stock.longMm()) : sizes.flat(stock.longMm(), stock.wideMm()))
        .append(stock.sized() ? "" : " (usual size, from memory: ask what you can get)")
        .append(", kerf ")
        .append(sizes.mm(stock.kerfMm()));
    if (stock.extraMm() > 0) {
      words
          .append(", ")
          .append(sizes.mm(stock.extraMm()))
          .append(tube ? " added to each length" : " added all round each piece");
    }
    words.append(". ");
    if (plan.count() > plan.least()) {
      words
          .append("No plan can do with fewer than ")
          .append(plan.least())
          .append("; a better one may be there. ");
    } else if (plan.count() > 0) {
      words.append("No plan does with fewer. ");
    }
    if (plan.count() > 0) {
      words
          .append(Decimals.upTo(0, 100 * (1 - used(plan) / plan.bought())))
          .append(" % is cut away or left over.");
    }
    if (!plan.tooLarge().isEmpty()) {
      words
          .append(" Larger than the stock, so not in the plan: ")
          .append(tooLarge(plan, sizes))
          .append("; take stock as large, or join pieces.");
    }
    return words.toString().strip().replace("  ", " ");
  }

  /** Returns what the stock is too small for, each piece with the least stock that does. */
  static String tooLarge(CutPlan plan, SizeWords sizes) {
    return ShopLists.names(
        plan.tooLarge().stream()
            .map(
                i ->
                    plan instanceof CutPlan.Bars bars
                        ? bars.pieces().get(i).part() + " needs " + sizes.mm(longMm(bars, i))
                        : needs(((CutPlan.Sheets) plan).pieces().get(i), sizes))
            .toList());
  }

  private static double longMm(CutPlan.Bars bars, int piece) {
    return bars.pieces().get(piece).lengthMm() + bars.stock().extraMm();
  }

  private static String needs(CutPlan.Area piece, SizeWords sizes) {
    return piece.part() + " needs " + sizes.flat(piece.longMm(), piece.wideMm());
  }

  /** The net size of what is in the plan. */
  private static double used(CutPlan plan) {
    if (plan instanceof CutPlan.Bars bars) {
      return bars.plan().bars().stream()
          .flatMap(b -> b.pieces().stream())
          .mapToDouble(i -> bars.pieces().get(i).lengthMm())
          .sum();
    }
    CutPlan.Sheets sheets = (CutPlan.Sheets) plan;
    return sheets.plan().sheets().stream()
        .flatMap(s -> s.laid().stream())
        .mapToDouble(l -> sheets.pieces().get(l.piece()).areaMm2())
        .sum();
  }
}
