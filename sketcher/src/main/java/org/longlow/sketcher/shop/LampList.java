package org.longlow.sketcher.shop;

import static org.longlow.sketcher.shop.ShopTable.Column.count;
import static org.longlow.sketcher.shop.ShopTable.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.longlow.constraints.law.Asked;
import org.longlow.constraints.law.LawTables;
import org.longlow.constraints.law.Row;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Names;
import org.longlow.rider.words.Decimals;
import org.longlow.sketcher.shop.ShopTable.Cell;

/** Lamps by rule: what the rules in force ask for, and what of it is drawn. */
final class LampList {

  private LampList() {}

  static ShopTable of(Study study) {
    Set<String> rules = Set.copyOf(study.layout().demands().rules());
    List<LampPart> lamps = study.layout().parts(LampPart.class).toList();
    List<List<Cell>> rows = new ArrayList<>();
    for (Row row : LawTables.rows()) {
      if (row.asked() != Asked.COUNT || !rules.contains(row.rules().id())) {
        continue;
      }
      List<LampPart> drawn =
          lamps.stream().filter(l -> l.type() == row.kind() && counts(row, l, study)).toList();
      int number = drawn.stream().mapToInt(l -> l.pair() ? 2 : 1).sum();
      rows.add(
          List.of(
              Cell.of(row.rules().id()),
              Cell.of(row.words()),
              Cell.of(asked(row)),
              Cell.of(number),
              Cell.of(ShopLists.names(drawn.stream().map(Part::name).toList())),
              Cell.of(ShopLists.sorted(drawn.stream().map(l -> Names.word(l.colour())).toList())),
              Cell.of(
                  row.sources().get(0).section() + ", " + row.sources().get(0).status().words())));
    }
    return new ShopTable(
        "lamps",
        "Lamps by rule",
        List.of(
            words("Rules"),
            words("Lamp"),
            words("Asked"),
            count("Drawn"),
            words("Parts"),
            words("Colour"),
            words("Section")),
        rows);
  }

  private static boolean counts(Row row, LampPart lamp, Study study) {
    Places places = study.placed().places();
    double middle =
        study.layout().parts(WheelPart.class).toList().stream()
            .mapToDouble(w -> places.pin(w.axle()).x())
            .average()
            .orElse(0);
    return row.counts(places.pin(lamp.at()).x() > middle);
  }

  private static String asked(Row row) {
    String least = row.hasLeast() ? Decimals.upTo(0, row.least()) : "0";
    if (!row.hasMost()) {
      return "at least " + least;
    }
    return row.least() == row.most() ? least : least + " to " + Decimals.upTo(0, row.most());
  }
}
