package org.longlow.sketcher.shop;

import java.util.Optional;
import java.util.OptionalDouble;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Stock;
import org.longlow.constraints.layout.Stock.Form;
import org.longlow.constraints.machine.shop.UsualStock;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/**
 * Stock as it is bought: what the layout says of it, and what is usual where it says nothing.
 *
 * @param name in the layout; empty where it has none that fits
 * @param form what it is
 * @param longMm length of a bar or sheet, mm
 * @param wideMm width of a sheet, mm; 0 of a bar
 * @param kerfMm what one cut takes away, mm
 * @param extraMm added to a length of tube, or all round a piece of sheet, mm
 * @param grained whether pieces with a grain keep it along the sheet
 * @param sized whether the layout says how long it is
 * @param price for one unit of {@code per}
 * @param per what the price is for
 */
public record Bought(
    String name,
    Form form,
    double longMm,
    double wideMm,
    double kerfMm,
    double extraMm,
    boolean grained,
    boolean sized,
    OptionalDouble price,
    Stock.Per per) {

  private static final double FOOT_MM = 12 * Units.INCH_MM;

  static Bought usual(Form form, Material material, Units units) {
    return of("", Optional.empty(), UsualStock.of(form, material, units), form, null);
  }

  static Bought of(String name, Stock stock, Material material, Units units, Places places) {
    UsualStock usual = UsualStock.of(stock.form(), material, units);
    return of(name, Optional.of(stock), usual, stock.form(), places);
  }

  private static Bought of(
      String name, Optional<Stock> said, UsualStock usual, Form form, Places places) {
    return new Bought(
        name,
        form,
        said.flatMap(Stock::length).map(places::value).orElse(usual.longMm()),
        form == Form.TUBE
            ? 0
            : said.flatMap(Stock::width).map(places::value).orElse(usual.wideMm()),
        said.flatMap(Stock::kerf).map(places::value).orElse(usual.kerfMm()),
        said.flatMap(Stock::extra).map(places::value).orElse(usual.extraMm()),
        said.flatMap(Stock::grain).map(g -> g == Stock.Grain.ALONG).orElse(usual.grained()),
        said.flatMap(Stock::length).isPresent(),
        said.flatMap(Stock::price)
            .map(p -> OptionalDouble.of(places.value(p)))
            .orElse(OptionalDouble.empty()),
        said.map(Stock::per).orElse(Stock.Per.PIECE));
  }

  /** Returns how much of it one bar or sheet is: mm of tube, mm² of sheet. */
  double size() {
    return form == Form.TUBE ? longMm : longMm * wideMm;
  }

  /**
   * Returns what so much of it costs, NaN where that is not known.
   *
   * @param pieces bars or sheets; 0 of what is not bought in such
   * @param size mm of tube, mm² of sheet, all together
   * @param massKg all together, NaN where not known
   */
  double cost(int pieces, double size, double massKg) {
    if (price.isEmpty()) {
      return Double.NaN;
    }
    boolean tube = form == Form.TUBE;
    double much =
        switch (per) {
          case PIECE -> pieces > 0 ? pieces : Double.NaN;
          case METRE -> tube ? size / 1000 : Double.NaN;
          case FOOT -> tube ? size / FOOT_MM : Double.NaN;
          case SQUARE_METRE -> tube ? Double.NaN : size / 1e6;
          case SQUARE_FOOT -> tube ? Double.NaN : size / (FOOT_MM * FOOT_MM);
          case KILOGRAM -> massKg;
          case POUND -> massKg * Units.IN.factor(FigureSort.MASS);
        };
    return much * price.getAsDouble();
  }
}
