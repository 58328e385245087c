package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.NUMBER;
import static org.longlow.constraints.document.Type.TEXT;
import static org.longlow.constraints.document.Type.words;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Purchase;
import org.longlow.constraints.layout.Stock;
import org.longlow.constraints.layout.Stock.Form;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;

/** What is bought: stock to cut from, prices, fasteners. */
final class StockKinds {

  /** Judgement: shorter stock is a slip of the unit, mm. */
  private static final double LEAST_STOCK_MM = 50;

  /** Judgement: nothing that cuts takes more, mm. */
  private static final double WIDEST_KERF_MM = 10;

  /** Judgement: more is no allowance but another part, mm. */
  private static final double MOST_EXTRA_MM = 500;

  private static final int MOST_FASTENERS = 1000;

  private static final Type.Quantity PRICE = NUMBER.notNegative();

  private static final Set<Form> FLAT = Set.of(Form.SHEET, Form.FOAM);

  /** Which forms have fields that not all have. */
  private static final Map<String, Set<Form>> OF_FORMS =
      Map.of(
          "material", Set.of(Form.TUBE, Form.SHEET),
          "diameter", Set.of(Form.TUBE),
          "wall", Set.of(Form.TUBE),
          "thickness", FLAT,
          "grade", Set.of(Form.FOAM),
          "width", FLAT,
          "grain", FLAT);

  static final Kind<Stock> STOCK =
      Kind.of(
              "stock",
              "What is bought to cut parts from: bars of tube, sheets, foam. Size, kerf and price of"
                  + " it stand in cutting plans and the shopping list.",
              StockKinds::stock)
          .rule(StockKinds::ofItsForm)
          .rule(StockKinds::known)
          .rule(StockKinds::hollow);

  static final Kind<Purchase.Fastener> FASTENER =
      Kind.of("fastener", "Bolts, nuts or other fasteners of one kind.", StockKinds::fastener);

  private StockKinds() {}

  private static Stock stock(Source<Stock> s) {
    return new Stock(
        s.need(
            "form",
            words(Form.class),
            Stock::form,
            "What it is: tube in bars, sheet of anything, or foam."),
        s.or(
            "material",
            TEXT,
            "",
            Stock::material,
            "Material of tube or sheet, as parts have it; any where absent."),
        size(s, "diameter", Stock::diameter, "Outside diameter of tube; any where absent."),
        size(s, "wall", Stock::wall, "Wall of tube; any where absent."),
        size(s, "thickness", Stock::thickness, "Thickness of sheet or foam; any where absent."),
        s.or(
            "grade",
            TEXT,
            "",
            Stock::grade,
            "Grade of foam, as layers are named; any where absent."),
        s.may(
            "length",
            LENGTH.atLeast(LEAST_STOCK_MM),
            Stock::length,
            "Length of a bar, or of a sheet along its grain; what is usual where absent."),
        s.may(
            "width",
            LENGTH.atLeast(LEAST_STOCK_MM),
            Stock::width,
            "Width of a sheet; what is usual where absent."),
        s.may(
            "kerf",
            LENGTH.between(0, WIDEST_KERF_MM),
            Stock::kerf,
            "What one cut takes away; what is usual where absent."),
        s.may(
            "extra",
            LENGTH.between(0, MOST_EXTRA_MM),
            Stock::extra,
            "Added to each length of tube, for copes or the grip of a bender, or all round each"
                + " piece of sheet or foam; none where absent, 10 mm round foam."),
        s.may(
            "grain",
            words(Stock.Grain.class),
            Stock::grain,
            "With along, pieces that have a grain keep theirs along the length of the sheet, with"
                + " none they may be turned; as the material has it where absent."),
        s.may(
            "price",
            PRICE,
            Stock::price,
            "What it costs, in the currency of the layout, as a bare number."),
        s.or(
            "per",
            words(Stock.Per.class),
            Stock.Per.PIECE,
            Stock::per,
            "What the price is for: a piece is a whole bar or sheet."),
        s.note(Stock::note));
  }

  private static Optional<Formula> size(
      Source<Stock> s, String key, Function<Stock, Optional<Formula>> get, String help) {
    return s.may(key, PartSizes.SHEET, get, help);
  }

  private static Purchase.Fastener fastener(Source<Purchase.Fastener> s) {
    return new Purchase.Fastener(
        s.need(
            "what",
            Type.FILLED,
            "what to ask for in a shop",
            Purchase.Fastener::what,
            "What to ask for in a shop, size and grade."),
        s.or(
            "count",
            new Type.Whole(MOST_FASTENERS),
            1,
            Purchase.Fastener::count,
            "How many, both sides together."),
        s.may(
            "price",
            PRICE,
            Purchase.Fastener::price,
            "What one costs, in the currency of the layout."));
  }

  /** The fields of a part that say what is bought. */
  static Purchase purchase(Optional<Formula> price, List<Purchase.Fastener> fasteners) {
    return price.isEmpty() && fasteners.isEmpty() ? Purchase.NONE : new Purchase(price, fasteners);
  }

  /** Of a part. */
  static Type<Optional<Formula>> price() {
    return new Type.Maybe<>(PRICE);
  }

  /** Of a part. */
  static Type<List<Purchase.Fastener>> fasteners() {
    return new Type.ListOf<>(new Type.Nested<>(FASTENER), 0, 100);
  }

  /** Returns what is added to a list of these first. */
  static Optional<?> begun(Kind<?> kind) {
    return kind == FASTENER
        ? Optional.of(new Purchase.Fastener("M8 bolt", 1, Optional.empty()))
        : Optional.empty();
  }

  private static void ofItsForm(Stock stock, Spot at) {
    if (!at.isSound("form")) {
      return;
    }
    OF_FORMS.forEach(
        (key, forms) -> {
          Object value = STOCK.field(key).of(stock);
          boolean said = value instanceof Optional<?> o ? o.isPresent() : !value.equals("");
          if (said && !forms.contains(stock.form())) {
            at.fault(
                key,
                "",
                "is said of stock of form " + Names.word(stock.form()) + ", which has none",
                "take it out, or change the form");
          }
        });
  }

  private static void known(Stock stock, Spot at) {
    String word = stock.material();
    if (!word.isEmpty() && at.isSound("material") && Material.named(word).isEmpty()) {
      at.fault(
          "material",
          Quoted.cut(word),
          "is no material Longlow knows",
          Names.advice(word, words(Material.class).words(), "material"));
    }
  }

  private static void hollow(Stock stock, Spot at) {
    Optional<Double> diameter = stock.diameter().flatMap(at::fixed);
    Optional<Double> wall = stock.wall().flatMap(at::fixed);
    if (diameter.isPresent() && wall.isPresent() && 2 * wall.get() > diameter.get()) {
      at.fault(
          "wall",
          Quoted.of(stock.wall().get().text()),
          "is more than half the diameter, " + Range.number(diameter.get()) + " mm",
          "make it thinner");
    }
  }
}
