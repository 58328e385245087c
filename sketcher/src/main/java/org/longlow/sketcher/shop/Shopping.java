package org.longlow.sketcher.shop;

import static org.longlow.sketcher.shop.ShopTable.Column.count;
import static org.longlow.sketcher.shop.ShopTable.Column.money;
import static org.longlow.sketcher.shop.ShopTable.Column.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Purchase;
import org.longlow.constraints.layout.Stock.Form;
import org.longlow.constraints.layout.Stock.Per;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.Traits.Make;
import org.longlow.constraints.shape.ChainLinks;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Runs;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Counted;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Said;
import org.longlow.sketcher.shop.ShopTable.Cell;

/** What is to be bought, with what it costs as far as the layout says. */
public final class Shopping {

  /**
   * The list.
   *
   * @param table line by line
   * @param fasteners by what they are
   * @param known what all lines cost that are priced
   * @param unpriced how many are not
   */
  public record Basket(ShopTable table, ShopTable fasteners, double known, int unpriced) {

    /** Returns what it costs, in a sentence; empty where nothing is priced. */
    public String sum(String currency) {
      int lines = table.rows().size();
      if (unpriced == lines) {
        return "";
      }
      return "Together "
          + ShopTable.money(known)
          + (currency.isEmpty() ? "" : " " + currency)
          + (unpriced == 0 ? "." : "; " + Counted.of(unpriced, "line") + " without a price.");
    }
  }

  private final List<List<Cell>> rows = new ArrayList<>();
  private final SizeWords sizes;
  private double known;
  private int unpriced;

  private Shopping(SizeWords sizes) {
    this.sizes = sizes;
  }

  /** Returns what is to be bought for a machine. */
  public static Basket of(Study study, Cuts cuts, CutPlans plans) {
    Shopping list = new Shopping(new SizeWords(study.layout().units()));
    plans.plans().forEach(list::plan);
    plans.shaped().forEach(list::shaped);
    plans.nothing().forEach(list::nothing);
    ByTemplate.of(study).forEach(list::material);
    Places places = study.placed().places();
    Set<String> ofSheet = cuts.sheet().stream().map(FlatCut::part).collect(Collectors.toSet());
    for (Part part : study.layout().parts().values()) {
      list.part(part, ofSheet.contains(part.name()), places);
    }
    for (Map.Entry<String, Tie> run : Runs.of(study.layout())) {
      list.run(run.getKey(), run.getValue(), study.layout(), places);
    }
    for (Sundries one : Sundries.of(study)) {
      list.line(one.what(), one.size(), one.count(), Double.NaN, Per.PIECE, Double.NaN, one.note());
    }
    ShopTable fasteners = fasteners(study);
    fasteners
        .rows()
        .forEach(
            r ->
                list.line(
                    r.get(0).words(),
                    "",
                    r.get(1).figure(),
                    r.get(2).figure(),
                    Per.PIECE,
                    r.get(3).figure(),
                    r.get(4).words()));
    ShopTable table =
        new ShopTable(
            "shopping",
            "Shopping list",
            List.of(
                words("What"),
                words("Size"),
                count("Quantity"),
                money("Price"),
                words("Per"),
                money("Cost"),
                words("For")),
            list.rows);
    return new Basket(table, fasteners, list.known, list.unpriced);
  }

  private void line(
      String what, String size, double quantity, double price, Per per, double cost, String note) {
    rows.add(
        List.of(
            Cell.of(what),
            Cell.of(size),
            Cell.of(quantity),
            Cell.of(price),
            Cell.of(Double.isNaN(price) ? "" : Names.word(per).replace('-', ' ')),
            Cell.of(cost),
            Cell.of(note)));
    if (Double.isNaN(cost)) {
      unpriced++;
    } else {
      known += cost;
    }
  }

  private void plan(CutPlan plan) {
    Bought stock = plan.stock();
    String size =
        stock.form() == Form.TUBE
            ? "bars of " + sizes.mm(stock.longMm())
            : "sheets of " + sizes.flat(stock.longMm(), stock.wideMm());
    Stream<String> parts =
        plan instanceof CutPlan.Bars bars
            ? bars.pieces().stream().map(CutPlan.Length::part)
            : ((CutPlan.Sheets) plan).pieces().stream().map(CutPlan.Area::part);
    String over =
        plan.tooLarge().isEmpty()
            ? ""
            : "; not counted, since too large: " + PlanWords.tooLarge(plan, sizes);
    line(
        plan.wanted().words(sizes),
        (plan.count() == 0 ? "too small: " : "") + (stock.sized() ? size : size + ", as is usual"),
        plan.count() == 0 ? Double.NaN : plan.count(),
        stock.price().orElse(Double.NaN),
        stock.per(),
        plan.cost(),
        ShopLists.names(parts.toList()) + over);
  }

  private void shaped(CutPlans.Shaped shaped) {
    line(
        shaped.wanted().words(sizes),
        sizes.sheet(shaped.areaMm2())
            + (shaped.wanted().thick() ? ", shaped: net area" : ", net area; give skin of formers"),
        Double.NaN,
        shaped.stock().price().orElse(Double.NaN),
        shaped.stock().per(),
        shaped.cost(),
        ShopLists.names(shaped.parts()));
  }

  private void nothing(String piece) {
    line(
        piece,
        "nothing to cut as it is drawn: look at its sizes",
        Double.NaN,
        Double.NaN,
        Per.PIECE,
        Double.NaN,
        "");
  }

  private void material(ByTemplate made) {
    String known = made.netKg() > 0 ? sizes.kg(made.netKg()) + " net" : "";
    String unknown =
        made.unknown() > 0 ? Counted.of(made.unknown(), "part") + " of unknown mass" : "";
    line(
        (made.material().isEmpty() ? "material not said" : made.material()) + ", by templates",
        known + (known.isEmpty() || unknown.isEmpty() ? "" : ", ") + unknown,
        Double.NaN,
        Double.NaN,
        Per.PIECE,
        Double.NaN,
        ShopLists.names(made.parts()));
  }

  /**
   * @param ofSheet whether its sheet is in the list
   */
  private void part(Part part, boolean ofSheet, Places places) {
    double price = part.base().purchase().price().map(places::value).orElse(Double.NaN);
    boolean either = ByTemplate.isBoughtOrMade(part) && !ofSheet;
    if (part.traits().make() == Make.BOUGHT || either || !Double.isNaN(price)) {
      int pieces = part.paired() ? 2 : 1;
      boolean linked = part instanceof FrontPart front && front.linked();
      String how =
          !Double.isNaN(price)
              ? ""
              : linked
                  ? "bought, or legs and links made to their templates"
                  : either ? "bought, or made to its template" : "";
      line(Said.with(part.name(), part.what()), how, pieces, Double.NaN, Per.PIECE, price, "");
    }
  }

  /** A chain by its links, a belt by its length. */
  private void run(String name, Tie tie, Layout layout, Places places) {
    Optional<ChainLinks> chain = ChainLinks.of(layout, places, tie);
    String size =
        chain
                .map(c -> Say.number(c.count()) + " links of " + sizes.pitch(c.pitchMm()) + ", ")
                .orElse("")
            + sizes.mm(places.value(tie.is().orElseThrow()))
            + " long";
    line(
        Said.with(name, chain.isPresent() ? "chain" : "belt"),
        size,
        1,
        Double.NaN,
        Per.PIECE,
        Double.NaN,
        "round " + ShopLists.names(tie.pins()));
  }

  /** Fasteners of all parts, by what they are. */
  private static ShopTable fasteners(Study study) {
    Places places = study.placed().places();
    Map<String, List<Purchase.Fastener>> of = new LinkedHashMap<>();
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (Part part : study.layout().parts().values()) {
      for (Purchase.Fastener f : part.base().purchase().fasteners()) {
        String what = f.what().strip();
        of.computeIfAbsent(what, w -> new ArrayList<>()).add(f);
        parts.computeIfAbsent(what, w -> new ArrayList<>()).add(part.name());
      }
    }
    List<List<Cell>> rows = new ArrayList<>();
    of.forEach(
        (what, all) -> {
          List<Double> prices =
              all.stream()
                  .map(f -> f.price().map(places::value).orElse(Double.NaN))
                  .distinct()
                  .toList();
          double cost =
              all.stream()
                  .mapToDouble(f -> f.count() * f.price().map(places::value).orElse(Double.NaN))
                  .sum();
          rows.add(
              List.of(
                  Cell.of(what),
                  Cell.of(all.stream().mapToInt(Purchase.Fastener::count).sum()),
                  Cell.of(prices.size() == 1 ? prices.get(0) : Double.NaN),
                  Cell.of(cost),
                  Cell.of(ShopLists.names(parts.get(what)))));
        });
    return new ShopTable(
        "fasteners",
        "Fasteners",
        List.of(words("What"), count("Count"), money("Price of one"), money("Cost"), words("For")),
        rows);
  }
}
