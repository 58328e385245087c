package org.longlow.sketcher.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Stock;
import org.longlow.constraints.layout.UsualStock;
import org.longlow.constraints.words.Names;

/** Stock to begin with: of the usual size, for anything of its form. */
final class NewStock {

  private NewStock() {}

  /** Adds stock of a form. */
  static Edit of(Stock.Form form) {
    String word = Names.word(form);
    return new Edit(
        "add stock " + word,
        layout -> {
          UsualStock usual = UsualStock.of(form, Material.MIXED, layout.units());
          Map<String, Stock> all = new LinkedHashMap<>(layout.stock());
          all.put(
              Fresh.name(layout, "stock", word),
              new Stock(
                  form,
                  "",
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  "",
                  mm(usual.longMm()),
                  usual.wideMm() > 0 ? mm(usual.wideMm()) : Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  Stock.Per.PIECE,
                  ""));
          return Change.set(layout, all, "stock");
        });
  }

  private static Optional<Formula> mm(double mm) {
    return Optional.of(Formula.of(mm, Unit.MM));
  }
}
